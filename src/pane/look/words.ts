/** The picture in words: its title says the finding, the subtitle the conditions, the alternative what matters in numbers. */
import { count } from "../words.js";
import { type Axis, type Point, valueInWords } from "./points.js";

const over: Readonly<Record<Axis, string>> = {
  similar: "over a similar part",
  air: "over the surrounding air",
  limit: "as a share of the limit",
  indirect: "over a similar part, seen indirectly",
  baseline: "over the baseline",
};

export function titleOf(axis: Axis, points: readonly Point[]): string {
  const worst = Math.max(...points.map(({ grade }) => grade));
  const same = points.filter(({ grade }) => grade === worst).length;
  return `${count(points.length, "exception")} ${over[axis]}: ${String(same)} at ${String(worst)} of 4`;
}

export function subtitleOf(criteria: string, unit: string, date: string | undefined, n: number): string {
  return [`Criteria ${criteria}`, unit, date, `n = ${String(n)}`, "bars: expanded uncertainty (95 %)"]
    .filter((part) => part !== undefined && part !== "")
    .join(" · ");
}

export function alternativeOf(points: readonly Point[], unit: string): string {
  const told = points.slice(0, 5).map((point) => {
    const u = point.u === undefined ? "" : ` ± ${valueInWords({ ...point, value: point.u })}`;
    return `${point.name}: ${point.atLeast ? "at least " : ""}${valueInWords(point)}${u}${unit === "" ? "" : ` ${unit}`}, ${point.words}`;
  });
  const rest = points.length > 5 ? ` And ${String(points.length - 5)} more, in the table.` : "";
  return `${told.join(". ")}.${rest}`;
}

/** A date as the sheet counts days, from the last days of 1899. */
export function dateInWords(serial: number | undefined): string | undefined {
  if (serial === undefined) return undefined;
  return new Date(Math.round((serial - 25_569) * 86_400_000)).toISOString().slice(0, 10);
}
