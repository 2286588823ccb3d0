/** What is said of a cell: our function's own message, or what an error means that brings none. */
import { NAMESPACE } from "../../functions/describe.js";
import type { KeptMessage } from "./messages.js";

const call = new RegExp(String.raw`\b${NAMESPACE}\.[A-Z]|_xldudf_${NAMESPACE}_`, "i");

const meanings: Readonly<Record<string, string>> = {
  "#NAME?":
    "Excel does not know the function in this formula: check its name; if it is right, enter the formula again (F2, Enter).",
  "#SPILL!": "The results need more cells than are free: clear the cells below and to the right.",
  "#BUSY!": "The value is being worked out.",
  "#GETTING_DATA": "The value is being worked out.",
  "#CONNECT!": "Excel does not reach the add-in: check that its address is being served, then open the workbook again.",
};

const unknown =
  "No message is kept for this cell. An error may come in from a cell that the formula refers to; else enter the formula again (F2, Enter) to hear the reason.";

/** True for a formula that calls a function of ours. */
export function isOurs(formula: unknown): formula is string {
  return typeof formula === "string" && formula.startsWith("=") && call.test(formula);
}

/** True where the formula still calls the function that said it: nobody tells us when a formula is replaced. */
export function stillSays({ functionName }: KeptMessage, formula: unknown): boolean {
  return isOurs(formula) && formula.toUpperCase().includes(functionName);
}

/**
 * The sentence for a cell, or undefined where nothing is to be said.
 * @param said what is kept for the cell and still stands
 * @param blankErrors whether our errors show as an empty text
 */
export function explain(
  value: unknown,
  formula: unknown,
  said: KeptMessage | undefined,
  blankErrors: boolean,
): string | undefined {
  if (blankErrors && value === "") return said?.message;
  if (!isErrorValue(value)) return undefined;
  return said?.message ?? (isOurs(formula) ? (meanings[value] ?? unknown) : undefined);
}

/** "#VALUE!", "#N/A", "#NAME?", "#GETTING_DATA": as a range's values have them. */
function isErrorValue(value: unknown): value is string {
  return typeof value === "string" && /^#(?:[A-Z]+[!?]|N\/A|DIV\/0!|GETTING_DATA)$/.test(value);
}
