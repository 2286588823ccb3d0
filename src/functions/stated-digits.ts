/** The last digit that numbers of a report are stated to, as far as the numbers themselves tell. */
import { SLACK } from "../core/audit/judge.js";
import type { Input, Quantity } from "./contract.js";
import { plainNumber } from "./numbers.js";
import type { OneCase } from "./one-case.js";
import { gridOf, isBlank } from "./read.js";
import { fromSI, unitOf } from "./units.js";
import type { Unit, Units } from "./units.js";

export interface StatedDigits {
  /** Of the unit named. */
  readonly digit: 1 | 0.5 | 0.1;
  readonly label: string;
  /** The same as a difference [K]. */
  readonly step: number;
}

/** A number a person typed is on its grid to far better than this; one computed from digits of the other unit too. */
const OFF_GRID = 1e-6;

const onGrid = (si: number, digit: number, unit: Unit): boolean => {
  const places = fromSI(si, unit) / digit;
  return Math.abs(places - Math.round(places)) <= OFF_GRID;
};

const otherThan = (units: Units): Units => (units === "C" ? "F" : "C");

/** The coarsest of these digits of one system of units that all the numbers are stated to; undefined where none fits. */
function digitsIn(
  values: readonly number[],
  quantity: Quantity,
  units: Units,
  digits: readonly StatedDigits["digit"][],
): StatedDigits | undefined {
  const unit = unitOf(quantity, units);
  const digit = digits.find((one) => values.every((value) => onGrid(value, one, unit)));
  return digit === undefined ? undefined : { digit, label: unit.label, step: digit * unit.scale };
}

/**
 * Whole or half degrees that all temperatures of a report are stated to, the coarser of both units: what was printed in
 * whole °C is whole °C in a sheet of °F too. Undefined where there are decimals.
 */
export function digitsOfReport(values: readonly number[], units: Units): StatedDigits | undefined {
  const own = digitsIn(values, "temperature", units, [1, 0.5]);
  const other = digitsIn(values, "temperature", otherThan(units), [1, 0.5]);
  return own === undefined || (other !== undefined && other.step > own.step) ? other : own;
}

/** Tenths that all readings of a report are printed to; the sheet's own where they are tenths of both. */
export function tenthsOfReadings(values: readonly number[], units: Units): StatedDigits | undefined {
  const inUnits = (one: Units): StatedDigits | undefined => digitsIn(values, "temperature", one, [0.1]);
  return inUnits(units) ?? inUnits(otherThan(units));
}

const DIGIT_WORDS: Readonly<Record<StatedDigits["digit"], string>> = { 1: "whole", 0.5: "half", 0.1: "tenths of" };

/** "whole °C", "half °F". */
export const inWords = ({ digit, label }: StatedDigits): string => `${DIGIT_WORDS[digit]} ${label}`;

/** Whether nobody said how far numbers may lie apart; 0 is an empty cell. */
export function toleranceLeftOut(input: Input): boolean {
  const cell = gridOf(input)[0]?.[0] ?? null;
  return isBlank(cell) || cell === 0 || (typeof cell === "string" && plainNumber(cell) === 0);
}

/** What one stated number may have lost in digits: it is whole, and nobody says, or the tolerance means, that it is not. */
export function fewerDigitsOf(
  stated: number,
  quantity: Quantity,
  call: OneCase,
  tolerance: Input,
): { digits: StatedDigits | undefined; leftOut: boolean } {
  const leftOut = toleranceLeftOut(tolerance);
  // A number whole in both units is the sheet's.
  const inUnits = (units: Units): StatedDigits | undefined => digitsIn([stated], quantity, units, [1]);
  const whole = inUnits(call.units) ?? inUnits(otherThan(call.units));
  const fits = whole !== undefined && (leftOut || call.number("tolerance") >= whole.step / 2 - SLACK);
  return { digits: fits ? whole : undefined, leftOut };
}
