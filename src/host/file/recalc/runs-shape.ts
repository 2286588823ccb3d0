/** Which formulas can be worked out as a column, and what they consist of. */
import type { FunctionSpec } from "../../../functions/contract.js";
import { NAMESPACE } from "../../../functions/describe.js";
import { areaOf } from "../formula/areas.js";
import type { Area } from "../formula/areas.js";
import { segmentsOf, sheetName } from "../formula/segments.js";
import { significant, treeOf } from "../formula/tree.js";
import type { Expression, Item } from "../formula/tree.js";

/** A part of such a formula. What it reads is told by its number in the list of areas. */
export type Part =
  | { readonly kind: "literal"; readonly value: number | string | boolean | undefined }
  | { readonly kind: "cell"; readonly place: number }
  | { readonly kind: "range"; readonly place: number }
  | { readonly kind: "call"; readonly name: string; readonly args: readonly Part[] }
  /** IF(a="",then,otherwise), or with several cells in OR. */
  | { readonly kind: "blank"; readonly cells: readonly Part[]; readonly then: Part; readonly otherwise: Part }
  | { readonly kind: "fallback"; readonly value: Part; readonly instead: Part };

export interface Shape {
  readonly part: Part;
  readonly areas: readonly Area[];
}

/** Thrown where a formula is none of them. */
class Other extends Error {}

/** Texts that the engine might take for a date or a number where they stand as a literal. */
const PLAIN_TEXT = /^(?!(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec|true$|false$))[a-z][^"]*$/i;
const BAND = /^\d+(?:\.\d+)?-\d+(?:\.\d+)?$/;

/**
 * The parts of a formula as it is prepared for the engine, or undefined where it holds anything but calls of ours over
 * single cells, fixed ranges and literals, what keeps empty rows calm, and IFERROR. Arithmetic is the engine's own.
 */
export function shapeOf(
  text: string,
  sheet: number,
  sheets: ReadonlyMap<string, number>,
  specs: ReadonlyMap<string, FunctionSpec>,
): Shape | undefined {
  const tree = treeOf(segmentsOf(text, (name) => sheets.has(name.toLowerCase())));
  if (!tree) return undefined;
  const areas: Area[] = [];

  const area = (item: Item & { kind: "reference" }): Area => {
    const { reference } = item;
    const on = reference.sheet === undefined ? sheet : sheets.get(sheetName(reference.sheet).toLowerCase());
    if (on === undefined || reference.lastSheet !== undefined) throw new Other();
    return areaOf(reference, on);
  };
  const isSingle = ({ startRow, endRow, startColumn, endColumn }: Area): boolean =>
    startRow === endRow && startColumn === endColumn;
  const cell = (item: Item | undefined): Part => {
    if (item?.kind !== "reference") throw new Other();
    const found = area(item);
    if (!isSingle(found)) throw new Other();
    return { kind: "cell", place: areas.push(found) - 1 };
  };
  const blankTest = (expression: Expression): Part[] => {
    const items = significant(expression);
    const [first, operator, second] = items;
    if (first?.kind === "call" && first.name.toUpperCase() === "OR" && items.length === 1) {
      return first.args.flatMap(blankTest);
    }
    if (items.length !== 3 || textOf(operator) !== "=" || textOf(second) !== '""') throw new Other();
    return [cell(first)];
  };
  const argument = (expression: Expression, isWhole: boolean): Part => {
    const items = significant(expression);
    const [only] = items;
    if (items.length === 1 && only?.kind === "reference" && isWhole) {
      const found = area(only);
      if (!isSingle(found)) return { kind: "range", place: areas.push(found) - 1 };
    }
    return part(expression);
  };
  const call = (name: string, args: readonly Expression[]): Part => {
    if (name === "IF" && args.length === 3) {
      const [test, then, otherwise] = args as [Expression, Expression, Expression];
      return { kind: "blank", cells: blankTest(test), then: part(then), otherwise: part(otherwise) };
    }
    if (name === "IFERROR" && args.length === 2) {
      return { kind: "fallback", value: part(args[0]!), instead: part(args[1]!) };
    }
    const own = name.startsWith(`${NAMESPACE}.`) ? name.slice(NAMESPACE.length + 1) : "";
    const spec = specs.get(own);
    if (spec?.shape !== "cells" || args.length > spec.args.length) throw new Other();
    return { kind: "call", name: own, args: args.map((arg, i) => argument(arg, spec.args[i]?.whole === true)) };
  };
  const part = (expression: Expression): Part => {
    const items = significant(expression);
    const [first, second] = items;
    if (first === undefined) return { kind: "literal", value: undefined };
    if (items.length === 2 && textOf(first) === "-" && isNumber(second)) {
      return { kind: "literal", value: -Number(textOf(second)) };
    }
    if (items.length !== 1) throw new Other();
    if (first.kind === "call") return call(first.name.toUpperCase(), first.args);
    return first.kind === "reference" ? cell(first) : literal(first);
  };
  try {
    const whole = part(tree);
    return whole.kind === "cell" || whole.kind === "literal" ? undefined : { part: whole, areas };
  } catch (error) {
    if (error instanceof Other) return undefined;
    throw error;
  }
}

const textOf = (item: Item | undefined): string =>
  item !== undefined && (item.kind === "other" || item.kind === "reference") ? item.text : "";
const isNumber = (item: Item | undefined): boolean => item?.kind === "other" && item.token.kind === "number";

function literal(item: Item): Part {
  if (item.kind !== "other") throw new Other();
  const { token, text } = item;
  if (token.kind === "number" && Number.isFinite(Number(text))) return { kind: "literal", value: Number(text) };
  if (token.kind === "name" && /^(?:true|false)$/i.test(text)) {
    return { kind: "literal", value: text.toUpperCase() === "TRUE" };
  }
  if (token.kind !== "text") throw new Other();
  const value = text.slice(1, -1);
  if (value !== "" && !PLAIN_TEXT.test(value) && !BAND.test(value)) throw new Other();
  return { kind: "literal", value };
}
