/** Writes a formula's tree as the engine is to read it: what it misreads is written in another way of the same meaning. */
import { NUMBERS, AS_DAY, AS_NUMBER, AS_SHOWN, AS_TEXT, AS_TRUTH, NOT } from "../worksheet/helpers.js";
import { writeCall } from "./calls.js";
import type { CallWriter } from "./calls.js";
import { argumentContext, operandOf } from "./context.js";
import type { Context } from "./context.js";
import type { Area } from "./areas.js";
import type { Places } from "./places.js";
import { isBoolean, isOperator, significant, tokenOf } from "./tree.js";
import type { Call, Expression, Item } from "./tree.js";
import { argumentLetter } from "./trusted.js";

const COMPARISONS = new Set(["=", "<", ">", "<=", ">=", "<>"]);
const SIGNS = new Set(["+", "-"]);
const ARITHMETIC = new Set(["+", "-", "*", "/", "^"]);

export class Writer implements CallWriter {
  readonly rising: Area[] = [];
  readonly searched: (Area | undefined)[] = [];
  /** Areas that stand in arithmetic by themselves. */
  readonly operands: Area[] = [];

  constructor(
    readonly places: Places,
    readonly is1904: boolean,
    readonly doubt: (reason: string) => void,
  ) {}

  write(expression: Expression, context: Context): string {
    const items = significant(expression);
    const [first, second] = items;
    if (first === undefined) return "";
    if (items.length === 1) return this.item(first, context);
    if (items.length === 2 && first.kind === "reference" && second?.kind === "reference") {
      return this.places.intersection(first.reference, second.reference, context);
    }
    const inner = operandOf(context);
    const { sides, between } = split(items, (item) => item.kind === "other" && COMPARISONS.has(item.text));
    return sides
      .map((side) => this.joined(side, inner))
      .reduce((left, right, i) => {
        const sign = between[i - 1] ?? "=";
        // The engine compares truths with other values wrongly by <>.
        return sign === "<>" ? `${NOT}(${left}=${right})` : `${i > 1 ? `(${left})` : left}${sign}${right}`;
      });
  }

  /** Texts joined by &; the engine writes numbers with more digits than a worksheet. */
  private joined(items: readonly Item[], context: Context): string {
    const { sides } = split(items, (item) => isOperator(item, "&"));
    if (sides.length === 1) return this.arithmetic(items, context);
    return sides
      .map((side) => {
        const text = this.arithmetic(side, context);
        return side.length === 1 && tokenOf(side[0]) === "text" ? text : `${AS_TEXT}(${text})`;
      })
      .join("&");
  }

  private arithmetic(items: readonly Item[], context: Context): string {
    let written = "";
    /** The last operand with its percent signs, not yet written. */
    let operand: string | undefined;
    for (const [i, item] of items.entries()) {
      const text = item.kind === "other" && item.token.kind === "operator" ? item.text : undefined;
      if (text === "%" && operand !== undefined) operand = operand.endsWith("%") ? `(${operand})%` : `${operand}%`;
      else if (text !== undefined) {
        const isSign = operand === undefined && SIGNS.has(text);
        if (!isSign && (operand === undefined || !ARITHMETIC.has(text))) this.doubt(`the operator ${text} is not read`);
        written += (operand ?? "") + text;
        operand = undefined;
      } else {
        if (operand !== undefined) this.doubt("two values stand side by side");
        const before = this.places.areas.length;
        const value = this.item(item, context);
        if (items.length > 1 && item.kind === "reference") this.operands.push(...this.places.areas.slice(before));
        const isSigned = isOperator(items[i - 1], "+", "-") && (i === 1 || tokenOf(items[i - 2]) === "operator");
        const isOdd =
          (items.length > 1 && tokenOf(item) === "text") || (isSigned && isBoolean(item)) || isBeforePower(items, i);
        written += operand ?? "";
        operand = isOdd ? `${AS_NUMBER}(${value})` : value;
      }
    }
    if (operand === undefined) this.doubt("an operator stands without its value");
    return written + (operand ?? "");
  }

  private item(item: Item, context: Context): string {
    switch (item.kind) {
      case "reference":
        return this.places.write(item.reference, item.text, context);
      case "call":
        return writeCall(this, item, context);
      case "group":
        if (item.inside.length > 1) this.doubt("a union of ranges is not read");
        return `(${item.inside.map((one) => this.write(one, context)).join(",")})`;
      case "constant":
      case "other":
        return item.text;
    }
  }

  /** An argument of a call, made what the function wants where the engine would not. */
  argument({ name, args }: Call, place: number, context: Context): string {
    const called = name.toUpperCase();
    const arg = args[place] ?? [];
    const text = this.write(arg, argumentContext(called, place, context));
    return text === "" ? "" : wrapped(text, significant(arg), argumentLetter(called, place));
  }
}

function isBeforePower(items: readonly Item[], at: number): boolean {
  return isOperator(items[at + 1], "^") && tokenOf(items[at]) !== "number";
}

function wrapped(text: string, items: readonly Item[], letter: string): string {
  const kind = items.length === 1 ? tokenOf(items[0]) : undefined;
  const isComparison = items.some((item) => item.kind === "other" && COMPARISONS.has(item.text));
  const isSum = !isComparison && items.some((item) => isOperator(item, "*", "/", "^", "%"));
  switch (letter) {
    case "n":
      return kind === "number" || isSum || isBoolean(items[0]) ? text : `${AS_NUMBER}(${text})`;
    case "s":
    case "t":
      // A text that reads as a number or a date is a number to the engine.
      return kind === "text" && !/\d/.test(text) ? text : `${AS_TEXT}(${text})`;
    case "b":
      return isComparison || kind === "number" || (items.length === 1 && isBoolean(items[0]))
        ? text
        : `${AS_TRUTH}(${text})`;
    case "d":
      return `${AS_DAY}(${text})`;
    case "m":
      return `${NUMBERS}(${text})`;
    case "x":
      return `${AS_SHOWN}(${text})`;
    default:
      return text;
  }
}

function split(items: readonly Item[], at: (item: Item) => boolean): { sides: Item[][]; between: string[] } {
  const sides: Item[][] = [[]];
  const between: string[] = [];
  for (const item of items) {
    if (item.kind === "other" && item.token.kind === "operator" && at(item)) {
      between.push(item.text);
      sides.push([]);
    } else sides[sides.length - 1]!.push(item);
  }
  return { sides, between };
}
