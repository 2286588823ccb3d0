import { GreybodyError, inRange, requireInRange } from "../errors.js";
import type { Range } from "../errors.js";
import { COVERAGE, coverageFactor } from "../uncertainty/coverage.js";
import { leastSquares } from "./least-squares.js";

/** Days as a sheet counts them, to the last one that it has. */
export const DAY: Range = { min: 0, minExcluded: true, max: 2_958_465 };
/** A value of any kind: temperatures, rises, shares. */
export const TREND_VALUE: Range = { min: -1e9, max: 1e9 };
/** Mean length of a year [d]. */
export const YEAR = 365.25;
const FEWEST = 3;
/** Whole numbers that are rather years than days (of 1905 and 1906). */
const YEARS: Range = { min: 1950, max: 2199 };

export interface Trend {
  /** Per year of 365.25 days. */
  readonly slope: number;
  /** Expanded uncertainty of the slope: Student's t on the scatter about the line, n − 2 degrees of freedom. */
  readonly uncertainty: number;
  /** Value of the line on the first date. */
  readonly start: number;
  readonly verdict: "rising" | "falling" | "no change beyond uncertainty";
  readonly line: TrendLine;
}

/** The line about the middle of the dates, where place and slope do not depend on each other. */
export interface TrendLine {
  readonly first: number;
  /** Mean date and the line's value there. */
  readonly middle: number;
  readonly level: number;
  /** Per day. */
  readonly slope: number;
  /** Half the width of the coverage interval, of level and slope. */
  readonly levelU: number;
  readonly slopeU: number;
}

/**
 * The straight line through dated values by least squares.
 * @param dates days, as a sheet counts them, in any order
 * @param values as many, in any one unit
 * @param coverage probability, above 0, below 1
 * @throws INVALID (which argument), REFUSED (fewer than three values, all of one date)
 * Source: JCGM 100:2008, H.3 (line, uncertainties from the scatter) and G.3 (Student's t).
 */
export function trend(dates: readonly number[], values: readonly number[], coverage: number): Trend {
  requireInRange("coverage", coverage, COVERAGE);
  for (const date of dates) requireInRange("dates", date, DAY);
  for (const value of values) requireInRange("values", value, TREND_VALUE);
  const count = dates.length;
  if (values.length !== count) throw new GreybodyError({ code: "INVALID", argument: "values", given: values.length });
  if (count < FEWEST) throw refused("trend-too-few", { count, fewest: FEWEST });
  const first = dates.reduce((least, date) => Math.min(least, date));
  const last = dates.reduce((most, date) => Math.max(most, date));
  if (first === last) throw refused("trend-one-date", { count });
  if (dates.every(isYear)) {
    throw new GreybodyError({ code: "INVALID", argument: "dates", given: first, hint: { key: "trend-years" } });
  }

  const middle = dates.reduce((sum, date) => sum + (date - first), 0) / count + first;
  const fit = leastSquares([dates.map(() => 1), dates.map((date) => date - middle)], values);
  const [level = NaN, fitted = NaN] = fit.coefficients;
  const rounding = 8 * Number.EPSILON * values.reduce((most, value) => Math.max(most, Math.abs(value)), 0);
  // What is left of a line that is level, or passes through every value, is rounding and no trend.
  const slope = Math.abs(fitted) * (last - first) <= rounding ? 0 : fitted;
  const factor = fit.residual <= rounding ? 0 : coverageFactor(coverage, fit.freedom);
  const expanded = (i: number): number => (factor === 0 ? 0 : factor * Math.sqrt(fit.covariance[i]?.[i] ?? NaN));
  const line: TrendLine = { first, middle, level, slope, levelU: expanded(0), slopeU: expanded(1) };
  return {
    slope: slope * YEAR,
    uncertainty: line.slopeU * YEAR,
    start: level + slope * (first - middle),
    verdict: Math.abs(slope) > line.slopeU ? (slope > 0 ? "rising" : "falling") : "no change beyond uncertainty",
    line,
  };
}

/** Whether a date is rather a year, typed for a day. */
export function isYear(date: number): boolean {
  return Number.isInteger(date) && inRange(date, YEARS);
}

export function refused(key: string, values: Readonly<Record<string, number | string>>): GreybodyError {
  return new GreybodyError({ code: "REFUSED", argument: "dates", hint: { key, values } });
}
