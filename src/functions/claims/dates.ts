/** Days as reports write them: 20.11.2026, 11/20/2026. Which number is the month only the whole column tells. */
import type { Cell } from "../contract.js";

const WRITTEN = /^\s*(\d{1,2})([./-])(\d{1,2})\2(\d{4})\s*$/;
const MONTHS = 12;

export interface ReadDates {
  readonly cells: readonly Cell[];
  /** How they were taken, where it was not plain. */
  readonly told?: string;
}

const two = (number: number): string => String(number).padStart(2, "0");

/** Days in the form year-month-day; as they are where nothing tells the day from the month. */
export function withDays(cells: readonly Cell[]): ReadDates {
  const known = cells.flatMap((cell) => {
    const [, first, mark, second] = (typeof cell === "string" ? WRITTEN.exec(cell) : null) ?? [];
    return first === undefined ? [] : [{ first: Number(first), second: Number(second), mark }];
  });
  if (known.length === 0) return { cells };
  // With points the day stands first, wherever such dates are written.
  const isDayFirst = known.some(({ first, mark }) => first > MONTHS || mark === ".");
  const isMonthFirst = known.some(({ second }) => second > MONTHS);
  if (isDayFirst === isMonthFirst) return { cells };
  const read = cells.map((cell) => {
    const [, first, , second, year] = (typeof cell === "string" ? WRITTEN.exec(cell) : null) ?? [];
    if (first === undefined) return cell;
    const [day, month] = isDayFirst ? [Number(first), Number(second)] : [Number(second), Number(first)];
    return month > MONTHS ? cell : `${year ?? ""}-${two(month)}-${two(day)}`;
  });
  return { cells: read, told: isDayFirst ? "dates read as day, month, year" : "dates read as month, day, year" };
}
