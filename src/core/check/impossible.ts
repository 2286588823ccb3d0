import { CHECK_RULES } from "../../data/check-rules.js";
import { inRange } from "../errors.js";
import type { Range } from "../errors.js";
import { SUM_SLACK } from "../limits.js";
import { DATE } from "../plan/calendar.js";
import { above } from "./hit.js";
import type { Hit } from "./hit.js";
import { COLUMN_LIMITS } from "./limits.js";
import type { Named } from "./named.js";

/** A number that cannot be, and by which rule. */
export interface Impossible {
  readonly id: string;
  readonly hit: Hit;
}

type Cannot = (value: number, limits: Range, column: string) => boolean;

/** Limits of temperatures, in kelvin, begin above; a minus in front of those is no matter. */
const NO_QUANTITY_BUT_KELVIN = 100;

const TIMES: ReadonlySet<string> = new Set(["time", "amps_time"]);
const DAYS: ReadonlySet<string> = new Set([...TIMES, "date", "calibrated"]);

/** Surveys lie within two centuries; a time of day has no day. */
function isDay(value: number, mayBeTime: boolean): boolean {
  return inRange(value, DATE) || (mayBeTime && value >= 0 && value < 1);
}

/** Whys, the first that holds being the one that is told. */
const REASONS: readonly (readonly [id: string, cannot: Cannot])[] = [
  ["minus", (value, { min = -1 }) => value < 0 && min >= 0 && min < NO_QUANTITY_BUT_KELVIN],
  ["no-such-day", (value, _, column) => DAYS.has(column) && !isDay(value, TIMES.has(column))],
  ["humidity-fraction", (value, _, column) => column.endsWith("humidity") && isFraction(value)],
  ["per-cent-for-fraction", (value, limits, column) => isPerCent(value, limits) && !column.endsWith("humidity")],
  ["transmission-above-one", (value, _, column) => column.endsWith("transmission") && value > 1 + SUM_SLACK],
  ["out-of-range", (value, limits) => !inRange(value, limits)],
];

export const IMPOSSIBLE: readonly string[] = REASONS.map(([id]) => id);

/** Per cent typed for a fraction; just above 1 a fraction was meant and is wrong. */
function isPerCent(value: number, { max = Infinity }: Range): boolean {
  return max <= 1 && value >= 2 && value <= 100;
}

/** A fraction typed for per cent. */
function isFraction(humidity: number): boolean {
  return humidity > 0 && !above(humidity, CHECK_RULES.humidity_least.value);
}

/** The numbers of a row or a job that cannot be. */
export function impossible(named: Named): Impossible[] {
  return named.names.flatMap((column) => {
    const value = named.raw(column);
    const limits = COLUMN_LIMITS[column];
    if (value === undefined || limits === undefined) return [];
    const reason = REASONS.find(([, cannot]) => cannot(value, limits, column));
    return reason ? [{ id: reason[0], hit: { column, values: { value, hundredth: value / 100 } } }] : [];
  });
}
