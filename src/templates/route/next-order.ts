/** In which order the next route goes: repeats, then what is overdue, then the rest as it was listed. */
import type { Cell } from "../../functions/contract.js";
import { dayInWords, type LastOfAsset, type LastRoute, numberIn, words } from "./next-last.js";

export interface Ordered {
  /** An asset a row; one that had several rows has them again. */
  readonly ids: readonly Cell[];
  readonly told: readonly string[];
}

/** Names that a sentence lists before it only counts. */
const MOST_NAMED = 12;

/** @param date of the new survey; without it, overdue is what was so on the day of the last one */
export function orderOf(assets: readonly LastOfAsset[], last: LastRoute, date: number | undefined): Ordered {
  const listed = inListedOrder(assets, last);
  const repeats = listed
    .filter(({ repeat }) => repeat !== undefined)
    .sort((one, other) => (other.repeat?.grade ?? 0) - (one.repeat?.grade ?? 0));
  const overdue = listed
    .filter((one) => !repeats.includes(one) && isOverdue(one, date))
    .sort((one, other) => (one.due ?? -Infinity) - (other.due ?? -Infinity));
  const rest = listed.filter((one) => !repeats.includes(one) && !overdue.includes(one));
  const unlisted = [...new Set(last.readings.map(({ asset_id }) => words(asset_id)))].filter(
    (id) => id !== "" && !assets.some((one) => one.id.toLowerCase() === id.toLowerCase()),
  );
  const on = date ?? last.date;
  const told = [
    `On top ${count(repeats.length, "repeat")}, graded 1 of 4 or more last time or open from before, and not closed: ${named(
      repeats.map(({ id, repeat }) => `${id} (${repeat?.why ?? ""})`),
    )}.`,
    `Then ${overdue.length} overdue${on === undefined ? "" : ` on ${dayInWords(on)}`}: ${named(
      overdue.map(({ id, due }) => `${id} (${due === undefined ? "no survey known" : `due ${dayInWords(due)}`})`),
    )}.${date === undefined ? " With a date for the new survey, what is overdue by then comes first." : ""}`,
    ...(unlisted.length === 0 ? [] : [`On the last route but not in Assets, so they have no row: ${named(unlisted)}.`]),
  ];
  const ids = [...repeats, ...overdue, ...rest].flatMap(({ cell, rows }) =>
    Array.from({ length: Math.max(1, rows) }, () => cell),
  );
  return { ids, told };
}

function isOverdue({ due, isNeverSurveyed, wasOverdue }: LastOfAsset, date: number | undefined): boolean {
  if (isNeverSurveyed) return true;
  return date === undefined ? wasOverdue : due !== undefined && due < date;
}

/** By the column order of Assets; those without a number stay where they stand in the list, behind. */
function inListedOrder(assets: readonly LastOfAsset[], { assets: records }: LastRoute): LastOfAsset[] {
  const orders = new Map(records.map((one) => [words(one.asset_id).toLowerCase(), numberIn(one.order)]));
  const orderOfAsset = ({ id }: LastOfAsset): number => orders.get(id.toLowerCase()) ?? Infinity;
  return [...assets].sort((one, other) => {
    const [a, b] = [orderOfAsset(one), orderOfAsset(other)];
    return a === b ? 0 : a - b;
  });
}

function named(names: readonly string[]): string {
  if (names.length === 0) return "none";
  const more = names.length - MOST_NAMED;
  return `${names.slice(0, MOST_NAMED).join(", ")}${more > 0 ? ` and ${more} more` : ""}`;
}

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? "" : "s"}`;
