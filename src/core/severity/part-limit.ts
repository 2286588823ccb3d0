import { LIMITS } from "../../data/limits.js";
import type { LimitRow } from "../../data/limits.js";
import { REFERENCES } from "../../data/references.js";
import { ZERO_CELSIUS } from "../constants.js";
import { GreybodyError, inRange } from "../errors.js";
import type { Range } from "../errors.js";
import { nearestByWord } from "../nearest.js";

/** What a part may show, in SI. */
export interface PartLimit {
  readonly part: string;
  readonly standard: string;
  /** Highest temperature [K]. */
  readonly temp?: number;
  /** Highest rise [K]. */
  readonly rise?: number;
  /** The row of the built-in table that it is; absent for one of the workbook's own. */
  readonly row?: LimitRow;
  /** Where the workbook's own has it from. */
  readonly source?: string;
  /** True for a figure that nobody confirmed: it is told, not given. */
  readonly fromMemory?: boolean;
}

/** What a workbook's own limits may be. */
const LIMIT_TEMPERATURE: Range = { min: ZERO_CELSIUS, max: 1500 + ZERO_CELSIUS };
const LIMIT_RISE: Range = { min: 0, minExcluded: true, max: 1000 };

export const BUILT_IN_LIMITS: readonly PartLimit[] = LIMITS.map((row) => ({
  part: row.part,
  standard: REFERENCES[row.source]?.short ?? row.source,
  ...(row.temp === undefined ? {} : { temp: row.temp + ZERO_CELSIUS }),
  ...(row.rise === undefined ? {} : { rise: row.rise }),
  row,
  fromMemory: row.evidence === "memory",
}));

const same = (a: string, b: string): boolean => a.trim().toLowerCase() === b.trim().toLowerCase();

/**
 * The limit of a part by its exact name, in any case.
 * @param standard a part of the standard's name; needed where several have the part
 * @throws REFUSED "part" for an unknown one, with the names near it; "standard" where none or several are meant
 */
export function findLimit(limits: readonly PartLimit[], part: string, standard?: string): PartLimit {
  const named = limits.filter((limit) => same(limit.part, part));
  if (named.length === 0) {
    const near = nearestByWord(part, [...new Set(limits.map((limit) => limit.part))]);
    const key = near.length > 0 ? "part-near" : "part-unknown";
    throw refused("part", key, { part, near: near.join("; ") });
  }
  const wanted = standard?.trim().toLowerCase() ?? "";
  const of = named.filter((limit) => limit.standard.toLowerCase().includes(wanted));
  const [only, second] = of.some((limit) => same(limit.standard, wanted))
    ? of.filter((limit) => same(limit.standard, wanted))
    : of;
  const has = named.map((limit) => limit.standard).join("; ");
  if (only === undefined) throw refused("standard", "part-not-in-standard", { part, standard: wanted, has });
  if (second !== undefined) throw refused("standard", "part-in-several", { part, has });
  return only;
}

/**
 * One figure of a limit, in SI.
 * @throws REFUSED "part" where the source has the other one only, and for a figure from memory: a limit is looked up
 */
export function limitFigure(limit: PartLimit, figure: "temp" | "rise"): number {
  const value = limit[figure];
  const { part, standard } = limit;
  if (value === undefined) {
    const other = figure === "temp" ? { rise: limit.rise ?? NaN } : { temp: limit.temp ?? NaN };
    throw refused("part", figure === "temp" ? "limit-rise-only" : "limit-temp-only", { part, ...other });
  }
  if (limit.fromMemory === true) {
    throw refused("part", figure === "temp" ? "limit-temp-memory" : "limit-rise-memory", {
      part,
      standard: standard || "its source",
      value,
    });
  }
  return value;
}

function refused(argument: string, key: string, values: Readonly<Record<string, number | string>>): GreybodyError {
  return new GreybodyError({ code: "REFUSED", argument, hint: { key, values } });
}

/** A row of a workbook's own limits, read but not yet checked; NaN where a figure is not given. */
export interface OwnLimitRow {
  readonly part: string;
  readonly standard: string;
  readonly temp: number;
  readonly rise: number;
  readonly source: string;
  readonly fromMemory?: boolean;
}

/**
 * A workbook's own limits: each row a part with a temperature, a rise or both.
 * @throws INVALID "limits" with the number of the row, counted from 1, and what is wrong in it
 */
export function ownLimits(rows: readonly OwnLimitRow[]): readonly PartLimit[] {
  if (rows.length === 0)
    throw new GreybodyError({ code: "INVALID", argument: "limits", hint: { key: "limits-empty" } });
  rows.forEach((row, i) => requireOwnLimit(row, rows.slice(0, i), i + 1));
  return rows.map(({ part, standard, temp, rise, source, fromMemory = false }) => ({
    part,
    standard,
    source,
    fromMemory,
    ...(Number.isNaN(temp) ? {} : { temp }),
    ...(Number.isNaN(rise) ? {} : { rise }),
  }));
}

function requireOwnLimit(row: OwnLimitRow, before: readonly OwnLimitRow[], number: number): void {
  const wrong = (key: string, given?: number, allowed?: Range): GreybodyError =>
    new GreybodyError({
      ...{ code: "INVALID", argument: "limits", hint: { key, values: { row: number } } },
      ...(given === undefined ? {} : { given }),
      ...(allowed ? { allowed } : {}),
    });
  if (row.part.trim() === "") throw wrong("limits-part");
  if (Number.isNaN(row.temp) && Number.isNaN(row.rise)) throw wrong("limits-figure");
  if (!Number.isNaN(row.temp) && !inRange(row.temp, LIMIT_TEMPERATURE)) {
    throw wrong("limits-temp", row.temp, LIMIT_TEMPERATURE);
  }
  if (!Number.isNaN(row.rise) && !inRange(row.rise, LIMIT_RISE)) throw wrong("limits-rise", row.rise, LIMIT_RISE);
  if (before.some((one) => same(one.part, row.part) && same(one.standard, row.standard))) throw wrong("limits-twice");
}
