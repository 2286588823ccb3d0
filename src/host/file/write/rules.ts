/** Validations and conditional formats of a sheet (ECMA-376 part 1, 18.3.1.18, 18.3.1.32, 18.3.1.33). */
import { numberText } from "../sheet/patch.js";
import { counted, element, xstring } from "./element.js";
import type { Conditional, Validation } from "./model.js";
import { areaName } from "./place.js";
import { storedFormula } from "./stored-formula.js";
import type { Styles } from "./styles.js";

/** What Excel takes: a longer formula or text makes it call the file damaged. */
const MOST = { formula: 255, title: 32, text: 255 } as const;

export function validationsXml(validations: readonly Validation[]): string {
  return counted("dataValidations", validations.map(validationXml));
}

function validationXml({ area, rule, strict = false, refusal, prompt }: Validation): string {
  const { attributes, formulas } = ruleXml(rule);
  return element(
    "dataValidation",
    {
      ...attributes,
      errorStyle: rule.kind === "any" || strict ? undefined : "warning",
      allowBlank: true,
      showInputMessage: prompt === undefined ? undefined : true,
      showErrorMessage: refusal === undefined ? undefined : true,
      errorTitle: limited(refusal?.title, MOST.title),
      error: limited(refusal?.text, MOST.text),
      promptTitle: limited(prompt?.title, MOST.title),
      prompt: limited(prompt?.text, MOST.text),
      sqref: areaName(area),
    },
    ...formulas.map((formula, at) => element(`formula${at + 1}`, {}, xstring(formula))),
  );
}

function ruleXml(rule: Validation["rule"]): {
  attributes: Readonly<Record<string, string>>;
  formulas: readonly string[];
} {
  switch (rule.kind) {
    case "list": {
      const list = `"${rule.choices.join(",").replaceAll('"', '""')}"`;
      // A fault of the description: better no file than one that Excel repairs.
      if (list.length > MOST.formula || rule.choices.some((choice) => choice.includes(",")))
        throw new Error(`These choices do not fit into a validation: ${list}`);
      return { attributes: { type: "list" }, formulas: [list] };
    }
    case "between":
      return { attributes: { type: "decimal" }, formulas: [rule.low, rule.high].map(numberText) };
    case "formula": {
      const formula = storedFormula(rule.formula);
      if (formula.length > MOST.formula) throw new Error(`This formula does not fit into a validation: ${formula}`);
      return { attributes: { type: "custom" }, formulas: [formula] };
    }
    case "any":
      return { attributes: {}, formulas: [] };
  }
}

/** Cut between words where it is too long. */
function limited(text: string | undefined, most: number): string | undefined {
  if (text === undefined || text.length <= most) return text;
  return `${text.slice(0, most - 1).replace(/\s+\S*$/, "")}…`;
}

/** Those of one area in one element, the first the strongest. */
export function conditionalsXml(conditionals: readonly Conditional[], styles: Styles): string {
  const byArea = new Map<string, string[]>();
  conditionals.forEach(({ area, formula, look }, place) => {
    const rule = element(
      "cfRule",
      { type: "expression", dxfId: styles.lookIndex(look), priority: place + 1 },
      element("formula", {}, xstring(storedFormula(formula))),
    );
    const key = areaName(area);
    byArea.set(key, [...(byArea.get(key) ?? []), rule]);
  });
  return [...byArea].map(([sqref, rules]) => element("conditionalFormatting", { sqref }, ...rules)).join("");
}
