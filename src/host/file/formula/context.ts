/** What a place in a formula wants of a range that stands there. */
import { argumentLetter } from "./trusted.js";

/** Where a range stands in a formula: V one value is wanted, R the range itself, A an array. */
export type Mode = "V" | "R" | "A";
export interface Context {
  readonly mode: Mode;
  /** For an operand of an operator there. */
  readonly operand: Mode;
}
export const VALUE: Context = { mode: "V", operand: "V" };
export const ARRAY: Context = { mode: "A", operand: "A" };

/** What stands between operators wants what the operator is given. */
export const operandOf = ({ operand }: Context): Context => ({ mode: operand, operand });

/** What the argument of a call wants; the further ones of a function repeat its last group. */
export function argumentContext(name: string, place: number, context: Context): Context {
  switch (argumentLetter(name, place)) {
    case "a":
      return ARRAY;
    case "r":
    case "m":
    case "t":
      return { mode: "R", operand: context.operand };
    case "i":
      return context;
    default:
      return operandOf(context);
  }
}
