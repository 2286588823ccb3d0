/**
 * Days as a workbook counts them. In the count from 1900 there is a 29 February 1900 (day 60) that the calendar does not
 * have: ECMA-376 part 1, 18.17.4.1. In the count from 1904 day 0 is 1 January 1904.
 */
import type { Cell } from "../../../functions/contract.js";
import { isCellError } from "../../../functions/contract.js";
import type { PlainArgument, PlainFunction } from "../../embedded/plain-functions.js";
import { each, errorCell, firstError } from "./coerce.js";
import type { Doubt } from "./coerce.js";

interface Day {
  readonly year: number;
  /** From 1. */
  readonly month: number;
  readonly day: number;
}

const MILLISECONDS = 86_400_000;
const BEFORE_1900 = Date.UTC(1899, 11, 31) / MILLISECONDS;
const LEAP_DAY = 60;
const LAST_DAY = 2_958_465;
/** Days between the two counts. */
const FROM_1904 = 1462;

/** The calendar's day of a count from 1900; undefined outside it. */
function dayOf(count: number): Day | undefined {
  if (count < 0 || count > LAST_DAY) return undefined;
  if (count === 0) return { year: 1900, month: 1, day: 0 };
  if (count === LEAP_DAY) return { year: 1900, month: 2, day: 29 };
  const date = new Date((BEFORE_1900 + count - (count > LEAP_DAY ? 1 : 0)) * MILLISECONDS);
  return { year: date.getUTCFullYear(), month: date.getUTCMonth() + 1, day: date.getUTCDate() };
}

/** Days since 1900 of a day of a month; a month beyond the year belongs to another one. */
function countOf(year: number, month: number, day: number): number | undefined {
  const first = new Date(Date.UTC(year, month - 1, 1));
  if (first.getUTCFullYear() < 1900) return undefined;
  const plain = first.getTime() / MILLISECONDS - BEFORE_1900;
  const count = plain + (plain >= LEAP_DAY ? 1 : 0) + day - 1;
  return count < 0 || count > LAST_DAY ? undefined : count;
}

function monthLength(year: number, month: number): number {
  if (year === 1900 && month === 2) return 29;
  return new Date(Date.UTC(year, month, 0)).getUTCDate();
}

export function isEndOfFebruary(count: number): boolean {
  const found = dayOf(count);
  return found?.month === 2 && found.day === monthLength(found.year, 2);
}

type Numeric = (numbers: readonly number[]) => number | undefined;

/** A function of whole numbers, cell by cell of its first argument. */
function numeric(name: string, defaults: readonly number[], work: Numeric): PlainFunction {
  return {
    name,
    evaluate: (args) => {
      const [first, ...rest] = args;
      const others = rest.map(single);
      return each(first, (cell) => {
        const cells: Cell[] = [cell, ...others];
        const error = firstError(cells);
        if (error) return error;
        if (cells.some((one) => typeof one === "string")) return errorCell("#VALUE!");
        const numbers = Array.from({ length: Math.max(cells.length, defaults.length + 1) }, (_, i) =>
          Number(cells[i] ?? defaults[i - 1] ?? 0),
        );
        return work(numbers) ?? errorCell("#NUM!");
      });
    },
  };
}

const single = (value: PlainArgument): Cell => {
  const cell = Array.isArray(value) ? ((value as Cell[][])[0]?.[0] ?? null) : ((value as Cell | undefined) ?? null);
  return isCellError(cell) ? cell : cell;
};

const SECONDS = 86_400;
/** The largest argument that TIME takes. */
const MOST_OF_TIME = 32_767;

/** By the second argument of WEEKDAY: the weekday (0 for Sunday) that is the first, and its number. */
const WEEKS: ReadonlyMap<number, readonly [number, number]> = new Map([
  [1, [0, 1]],
  [2, [1, 1]],
  [3, [1, 0]],
  ...[11, 12, 13, 14, 15, 16, 17].map((type): [number, readonly [number, number]] => [type, [(type - 10) % 7, 1]]),
]);

export function dateFunctions(is1904: boolean, doubt: Doubt): PlainFunction[] {
  const offset = is1904 ? FROM_1904 : 0;
  const part = (name: string, of: (day: Day) => number): PlainFunction =>
    numeric(name, [], ([count = 0]) => {
      const day = count < 0 ? undefined : dayOf(Math.floor(count) + offset);
      return day && of(day);
    });
  const given = (count: number | undefined): number | undefined =>
    count === undefined || count < offset ? undefined : count - offset;
  const moved = (name: string, dayIn: (start: Day, year: number, month: number) => number): PlainFunction =>
    numeric(name, [], ([count = 0, months = 0]) => {
      const start = count < 0 ? undefined : dayOf(Math.floor(count) + offset);
      if (!start) return undefined;
      const total = start.year * 12 + start.month - 1 + Math.trunc(months);
      const [year, month] = [Math.floor(total / 12), (((total % 12) + 12) % 12) + 1];
      return given(countOf(year, month, dayIn(start, year, month)));
    });
  const clock = (name: string, seconds: number, most: number): PlainFunction =>
    numeric(name, [], ([count = 0]) => {
      if (count < 0) return undefined;
      const second = Math.round((count - Math.floor(count)) * SECONDS * 1000) / 1000;
      // Whether half a second more counts as a whole one is not said.
      if (second % 1 >= 0.5) doubt("a time with parts of a second");
      return Math.floor(second / seconds) % most;
    });
  return [
    clock("HOUR", 3600, 24),
    clock("MINUTE", 60, 60),
    clock("SECOND", 1, 60),
    numeric("TIME", [], (parts) => {
      const [hours = 0, minutes = 0, seconds = 0] = parts.map(Math.trunc);
      const total = hours * 3600 + minutes * 60 + seconds;
      return total < 0 || parts.some((one) => one > MOST_OF_TIME) ? undefined : (total % SECONDS) / SECONDS;
    }),
    part("YEAR", ({ year }) => year),
    part("MONTH", ({ month }) => month),
    part("DAY", ({ day }) => day),
    numeric("DATE", [], ([year = 0, month = 0, day = 0]) => {
      const whole = Math.trunc(year);
      if (whole < 0 || whole > 9999) return undefined;
      return given(countOf(whole < 1900 ? whole + 1900 : whole, Math.trunc(month), Math.trunc(day)));
    }),
    moved("EDATE", ({ day }, year, month) => Math.min(day, monthLength(year, month))),
    moved("EOMONTH", (_, year, month) => monthLength(year, month)),
    numeric("WEEKDAY", [1], ([count = 0, type = 1]) => {
      const week = WEEKS.get(Math.trunc(type));
      if (!week || count < 0 || Math.floor(count) + offset > LAST_DAY) return undefined;
      // Day 1 of the count from 1900 is called a Sunday.
      const sunday = (Math.floor(count) + offset + 6) % 7;
      return ((sunday - week[0] + 7) % 7) + week[1];
    }),
  ];
}
