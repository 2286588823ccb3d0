/** A typed cell of a file as a description's cell: without its formula, in the units of the new book. */
import { type Cell, isCellError, type Quantity } from "../../functions/contract.js";
import { fromSI, toSI, unitOf, type Units } from "../../functions/units.js";
import type { ReadCell } from "../contents.js";
import type { LeftOut } from "./left.js";

/** What a typed column, field or cell measures and how its days are counted. */
export interface CellKind {
  /** Undefined where its unit is the same in every book. */
  readonly quantity: Quantity | undefined;
  readonly from: Units;
  readonly to: Units;
  /** Its numbers are days, and so much is added to each. */
  readonly dayShift: number;
}

const QUANTITIES = ["temperature", "difference", "distance", "length", "speed"] as const;
const BOTH: readonly Units[] = ["C", "F"];

/** What a unit of a metric book measures, where a book in °F has another one. */
export function quantityOf(metricUnit: string | undefined): Quantity | undefined {
  return QUANTITIES.find((quantity) => unitOf(quantity, "C").label === metricUnit);
}

/** The units that a label belongs to, or undefined where it is none of this quantity. */
export function unitsOfLabel(quantity: Quantity, label: string): Units | undefined {
  return BOTH.find((units) => unitOf(quantity, units).label === label.trim());
}

export function isDay(format: string | undefined): boolean {
  return format?.includes("yyyy") === true;
}

/** To a hundredth, which is less than any of it is known to: without the noise of the conversion. */
export function converted(value: number, quantity: Quantity, from: Units, to: Units): number {
  return from === to ? value : Number(fromSI(toSI(value, unitOf(quantity, from)), unitOf(quantity, to)).toFixed(2));
}

/** @param place of the cell in words: "Readings, left in row 7" */
export function taken({ value, isWorkedOut }: ReadCell, kind: CellKind, place: string, left: LeftOut): Cell {
  if (value === null || value === "") return null;
  if (isCellError(value)) {
    left.at(`An error stands in a cell that is typed, so it was left empty`, `${place} (${value.error})`);
    return null;
  }
  if (isWorkedOut) left.at("A formula stands in a cell that is typed: its value was taken, not the formula", place);
  const { quantity, from, to, dayShift } = kind;
  if (typeof value === "number") {
    const days = value + dayShift;
    return quantity === undefined ? days : converted(days, quantity, from, to);
  }
  if (typeof value !== "string") return value;
  if (quantity !== undefined && from !== to && /\d/.test(value))
    left.at(`Text stands where a number with a unit belongs: it was taken as it is, in the old unit`, place);
  const text = staysText(value);
  if (text !== value) left.at("A text that begins with = was given a space before it, so that it stays text", place);
  return text;
}

/** Text of a file never becomes a formula. */
export const staysText = (text: string): string => (text.startsWith("=") ? ` ${text}` : text);
