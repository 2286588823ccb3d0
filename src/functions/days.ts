/** Days and times as text, read and written as a sheet counts them: days since 1899-12-30, parts of a day. */
import { civilDay, sheetDay } from "../core/plan/calendar.js";

const DAY = /^(\d{4})-(\d{1,2})-(\d{1,2})$/;
const CLOCK = /^(\d{1,2}):(\d{2})(?::(\d{2}))?$/;

/** "2026-03-11", "08:52" or both, as a number of days; undefined for any other text. */
export function dayOf(text: string): number | undefined {
  const parts = text.trim().split(/[T ]+/);
  const [first = "", second] = parts;
  if (parts.length > 2) return undefined;
  if (second === undefined) return civil(first) ?? clock(first);
  const [day, time] = [civil(first), clock(second)];
  return day === undefined || time === undefined ? undefined : day + time;
}

function civil(text: string): number | undefined {
  const [year = NaN, month = NaN, date = NaN] = (DAY.exec(text) ?? []).slice(1).map(Number);
  if (Number.isNaN(year)) return undefined;
  const day = sheetDay({ year, month: month - 1, date });
  // What is no day of the calendar comes back as another one.
  return dayInWords(day) === inWords(year, month, date) ? day : undefined;
}

function clock(text: string): number | undefined {
  const found = CLOCK.exec(text);
  if (!found) return undefined;
  const [hours = 0, minutes = 0, seconds = 0] = found.slice(1).map((part) => Number((part as string | undefined) ?? 0));
  return hours > 23 || minutes > 59 || seconds > 59 ? undefined : (hours * 3600 + minutes * 60 + seconds) / 86400;
}

/** A day as text, "2026-03-11". */
export function dayInWords(day: number): string {
  const { year, month, date } = civilDay(day);
  return inWords(year, month + 1, date);
}

function inWords(year: number, month: number, date: number): string {
  const two = (value: number): string => String(value).padStart(2, "0");
  return `${year}-${two(month)}-${two(date)}`;
}
