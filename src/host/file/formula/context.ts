/** What a place in a formula wants of a range that stands there. */
import { argumentsOf } from "./trusted.js";

/** Where a range stands in a formula: V one value is wanted, R the range itself, A an array. */
export type Mode = "V" | "R" | "A";
export interface Context {
  readonly mode: Mode;
  /** For an operand of an operator there. */
  readonly operand: Mode;
}
export const VALUE: Context = { mode: "V", operand: "V" };
export const ARRAY: Context = { mode: "A", operand: "A" };

/** What the argument of a call wants; the further ones of a function repeat its last group. */
export function argumentContext(name: string, place: number, context: Context): Context {
  const { once, again } = patternOf(argumentsOf(name) ?? "r");
  switch (once[place] ?? again[(place - once.length) % again.length]) {
    case "a":
      return ARRAY;
    case "r":
      return { mode: "R", operand: context.operand };
    case "i":
      return context;
    case undefined:
    default:
      return { mode: context.operand, operand: context.operand };
  }
}

/** "r(rv)": one range, then pairs of a range and a value. Without a group the last letter repeats. */
function patternOf(takes: string): { once: string; again: string } {
  const group = takes.indexOf("(");
  return group < 0
    ? { once: takes.slice(0, -1), again: takes.slice(-1) }
    : { once: takes.slice(0, group), again: takes.slice(group + 1, -1) };
}
