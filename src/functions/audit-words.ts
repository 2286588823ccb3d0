/** The four verdicts in words. A slip is a possibility: it "would give" a number, never more. */
import type { Defect } from "../core/audit/verdict/method.js";
import type { GradeVerdict } from "../core/audit/verdict/grade.js";
import type { Consequence } from "../core/audit/verdict/consequence.js";
import type { NumberVerdict } from "../core/audit/verdict/number.js";
import type { StatedLine } from "../core/audit/verdict/audit.js";
import { isMethod } from "../core/audit/verdict/method.js";
import type { QuantityStated } from "../core/audit/verdict/claim.js";
import { REPORT_WORDS, RISE_SLIP_WORDS } from "./slip-words.js";
import { fromSI, readable, type Unit, unitOf, type Units } from "./units.js";

/** Slips of rises that only an audit knows, since it has the readings. */
const AUDIT_SLIP_WORDS: Readonly<Record<string, string>> = {
  "subtracted-before-corrected": "subtracted before corrected",
  "only-hot-corrected": "only the hot one corrected",
  "only-reference-corrected": "only the reference corrected",
  "readings-over-emissivity": "difference of the readings / emissivity",
  "of-stated-temperatures": "the difference of the stated temperatures",
  "of-stated-rise": "the stated rise, scaled",
  "air-for-similar": "over air in place of similar",
  "similar-for-air": "over similar in place of air",
  "room-air-for-enclosure": "over the room's air in place of the enclosure's",
  reversed: "reference less hot one",
  "rated-for-maximum": "the rated load in place of the reference load",
  "other-current": "the reference's own load for the hot one",
  "currents-swapped": "the loads of the hot one and its reference swapped",
  "temperature-scaled": "the hot temperature scaled in place of its rise",
};

// Made once: a report of thousands of rows asks for it as often for each of its slips.
const WORDS: Readonly<Record<string, string>> = { ...REPORT_WORDS, ...RISE_SLIP_WORDS, ...AUDIT_SLIP_WORDS };

export function slipWords(key: string): string {
  return WORDS[key] ?? key.replaceAll("-", " ");
}

export function unitFor(what: QuantityStated, units: Units): Unit {
  return unitOf(
    what === "temperature" || what === "reference temperature"
      ? "temperature"
      : what === "grade"
        ? "number"
        : "difference",
    units,
  );
}

const shown = (value: number, unit: Unit): string => fromSI(value, unit).toFixed(1);

/** "58.2 °C". */
const withUnit = (value: number, unit: Unit): string => `${shown(value, unit)} ${unit.label}`;

export function numberWords(verdict: NumberVerdict, what: QuantityStated, units: Units): string {
  const unit = unitFor(what, units);
  const { kind, missing, span, slips, exponent, over, from } = verdict;
  const between = span === undefined ? "" : `; between ${shown(span[0], unit)} and ${withUnit(span[1], unit)}`;
  switch (kind) {
    case "reproduced": {
      const printed = from === undefined ? "" : ` from the stated ${from} as printed`;
      const unsaid = [
        ...(over === undefined ? [] : [`over ${over}`]),
        ...(exponent === undefined ? [] : [`with exponent ${readable(exponent)}`]),
      ];
      const said = unsaid.length === 0 ? "" : ` ${unsaid.join(", ")}, which is not stated`;
      const material = missing.filter((name) => name !== "air_transmission");
      const left = missing.includes("air_transmission") ? "air taken as 1" : "";
      const rest = [...(material.length > 0 ? [`${material.join(", ")} immaterial`] : []), left].filter(Boolean);
      return `reproduced${printed}${said}${rest.length > 0 ? `, ${rest.join(", ")}` : ""}`;
    }
    case "slips": {
      const groups = ["arithmetic", "method"].flatMap((group) => {
        const own = slips.filter(({ key }) => isMethod(key) === (group === "method"));
        return own.length === 0 ? [] : [`${group}: ${own.map(({ key }) => slipWords(key)).join(" or ")} would give it`];
      });
      return groups.join("; ");
    }
    case "unexplained":
      return "not reproduced, no usual slip";
    case "needs":
      return `cannot be reproduced: needs ${missing.join(", ")}${between}`;
    case "outside":
      return `not reproduced for any usual ${missing.join(", ")}${between}`;
    case "limit":
      return "stated of a reading at the camera's limit: not recomputed";
    case "no-answer":
      return "not reproduced: no object gives this reading under these settings";
  }
}

/** What is not reproduced, with both numbers: "rise 4.1 K stated, 1.4 K recomputed: not reproduced, no usual slip". */
export function valueWords({ what, stated, half, number }: StatedLine, units: Units): string {
  if (number === undefined || number.kind === "reproduced") return "";
  const unit = unitFor(what, units);
  const digits = half * unit.back < 0.049 ? 2 : 1;
  const value = (si: number): string => `${fromSI(si, unit).toFixed(digits)} ${unit.label}`;
  const again = number.recomputed === undefined ? "" : `, ${value(number.recomputed)} recomputed`;
  return `${what} ${value(stated)} stated${again}: ${numberWords(number, what, units)}`;
}

/** Each slip with what it would give and how often chance would. */
export function slipsText({ slips }: NumberVerdict, what: QuantityStated, units: Units): string {
  const unit = unitFor(what, units);
  return slips
    .map(({ key, gives, chance }) => {
      const odds = chance === undefined ? "" : `, by chance ${(100 * chance).toFixed(0)} %`;
      return `${slipWords(key)} would give ${withUnit(gives, unit)}${odds}`;
    })
    .join("; ");
}

const DEFECTS: Readonly<Record<Defect, string>> = {
  "no-reference": "reference not stated",
  "no-load": "load not stated",
  "too-little-load": "projected from too little load",
  "unequal-scaled": "unequal currents: scaling the difference would give the number",
  "indirect-in-direct": "no direct view, graded by a table for direct views",
  "subtracted-before-corrected": "subtracting before correcting would give the number",
  "qualitative-only": "emissivity below 0.3 given as a temperature",
  "reflected-is-air-outdoors": "reflected taken as the air, outdoors",
  "window-left-out": "through a window, without its transmission",
  "no-emissivity": "emissivity not stated",
  "no-reflected": "reflected not stated",
  "bare-metal-emissivity": "emissivity above 0.5 on bare metal",
  "limit-reading": "reading at the camera's limit given as a value",
  "slip-of-method": "another method would give the number",
};

export function methodWords(defects: readonly Defect[]): string {
  return defects.length === 0 ? "sound" : defects.map((defect) => DEFECTS[defect]).join("; ");
}

export function gradeWords(verdict: GradeVerdict): string {
  const { kind, reference, roundTo = [], because } = verdict;
  const own = gradeOfRise(verdict);
  switch (kind) {
    case "follows":
      return "follows";
    case "before rounding":
      return `follows only from digits that are not printed${own}`;
    case "rounded":
      return `follows only if rounded first, to ${roundTo.map(roundedTo).join(" or ")}${own}`;
    case "other column":
      return `other column: over ${reference ?? ""} it would follow${own}`;
    case "other numbering":
      return "other numbering: follows where 1 is the worst";
    case "projected":
      return `follows from the rise at load, not from the rise found${own}`;
    case "recomputed":
      return `follows from the recomputed rise, not from the stated one${own}`;
    case "does not follow":
      return `does not follow${own}`;
    case "refused":
      return `does not follow: ${REFUSALS[because ?? ""] ?? "the criteria give no grade"}`;
    case "needs":
      if (because === "criteria") return "cannot be checked: the criteria are none that are known here";
      return `cannot be checked: needs ${because ?? "rise"}${reference === undefined ? "" : `; over ${reference} it would follow`}`;
  }
}

/** ": the stated rise is grade 2 of 4", with the number that the report has for it where it counts the other way. */
function gradeOfRise({ follows, of, numbering }: GradeVerdict): string {
  if (follows === undefined) return "";
  const theirs =
    numbering === "4 = worst" || follows === 0 ? "" : ` (4 = worst), ${5 - follows} as the report counts (1 = worst)`;
  return `: the ${of} rise is grade ${follows} of 4${theirs}`;
}

const REFUSALS: Readonly<Record<string, string>> = {
  "colder-than-reference": "colder than its reference",
  "reference-not-in-criteria": "the criteria have no column for this reference",
  "view-not-in-criteria": "the criteria are not for this view",
  "enclosed-not-graded": "an enclosed part has no grade",
};

function roundedTo(step: number): string {
  return step === 0.1 ? "0.1 K" : step === 1 ? "1 K" : "1 °F";
}

export function consequenceWords({ kind, grade, rise, expanded, edge }: Consequence, units: Units): string {
  const unit = unitOf("difference", units);
  const own = grade === undefined ? "" : `grade ${grade} of 4 at ${rise === undefined ? "" : withUnit(rise, unit)}`;
  const u = expanded === undefined ? "" : ` ± ${withUnit(expanded, unit)}`;
  switch (kind) {
    case "unchanged":
      return `grade unchanged: ${own}${u}`;
    case "changed":
      return `grade changed: ${own}${u}`;
    case "undecided":
      return `undecided: ${own}${u}, edge ${edge === undefined ? "" : withUnit(edge, unit)} inside`;
    case "no grade":
      return grade === undefined ? "no grade by these criteria" : `no grade stated: ${own}${u}`;
    case "not recomputed":
      return "not recomputed";
  }
}
