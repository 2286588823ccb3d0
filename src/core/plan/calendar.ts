import type { Range } from "../errors.js";

/** Days as a sheet counts them, 1 being 1900-01-01: 1980-01-01 to 2199-12-31, which is where surveys lie. */
export const DATE: Range = { min: 29221, max: 109574 };

/** Day 0 of a sheet's count (1899-12-30, which holds from March 1900 on) in days from 0000-03-01. */
const DAY_ZERO = 693_899;
const DAYS_IN_400_YEARS = 146_097;

export interface Day {
  readonly year: number;
  /** 0 is January. */
  readonly month: number;
  /** 1 is the first. */
  readonly date: number;
}

const quotient = (a: number, b: number): number => Math.floor(a / b);

/** Days from 0000-03-01: years are counted from March, so that a leap day is the last of its year. */
function daysFrom({ year, month, date }: Day): number {
  const shifted = year * 12 + month - 2;
  const marchYear = quotient(shifted, 12);
  const marchMonth = shifted - marchYear * 12;
  const leapDays = quotient(marchYear, 4) - quotient(marchYear, 100) + quotient(marchYear, 400);
  return marchYear * 365 + leapDays + quotient(153 * marchMonth + 2, 5) + date - 1;
}

function dayOf(days: number): Day {
  const era = quotient(days, DAYS_IN_400_YEARS);
  const inEra = days - era * DAYS_IN_400_YEARS;
  const yearOfEra = quotient(
    inEra - quotient(inEra, 1460) + quotient(inEra, 36_524) - quotient(inEra, DAYS_IN_400_YEARS - 1),
    365,
  );
  const marchYear = era * 400 + yearOfEra;
  const inYear = days - daysFrom({ year: marchYear, month: 2, date: 1 });
  const marchMonth = quotient(5 * inYear + 2, 153);
  const shifted = marchYear * 12 + marchMonth + 2;
  const year = quotient(shifted, 12);
  return { year, month: shifted - year * 12, date: inYear - quotient(153 * marchMonth + 2, 5) + 1 };
}

/**
 * The same day of the month so many months on; the month's last day where it has no such day. A time of day is dropped.
 * Civil days by the algorithm of H. Hinnant, "chrono-compatible low-level date algorithms" (2013).
 * @param day as a sheet counts days
 * @param months whole
 */
export function addMonths(day: number, months: number): number {
  const from = dayOf(Math.floor(day) + DAY_ZERO);
  const shifted = from.year * 12 + from.month + months;
  const year = quotient(shifted, 12);
  const first = { year, month: shifted - year * 12, date: 1 };
  const length = daysFrom({ ...first, month: first.month + 1 }) - daysFrom(first);
  return daysFrom({ ...first, date: Math.min(from.date, length) }) - DAY_ZERO;
}

/** A civil day as a sheet counts days. Source: as `addMonths`. */
export function sheetDay(day: Day): number {
  return daysFrom(day) - DAY_ZERO;
}

/** The civil day of a sheet's count; a time of day is dropped. Source: as `addMonths`. */
export function civilDay(day: number): Day {
  return dayOf(Math.floor(day) + DAY_ZERO);
}
