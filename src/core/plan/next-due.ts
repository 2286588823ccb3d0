import { INTERVALS } from "../../data/intervals.js";
import { GreybodyError, inRange, requireInRange, requireWhole } from "../errors.js";
import type { Hint, Range } from "../errors.js";
import { CONDITION, CONDITION_SCALE } from "../severity/priority.js";
import { addMonths, DATE } from "./calendar.js";

export const DEFAULT_INTERVALS = "NFPA-70B-2023";
/** Months between surveys. */
const MONTHS = { min: 1, max: 120 } satisfies Range;
const FORM: Hint = { key: "intervals-form", values: { least: MONTHS.min, most: MONTHS.max } };

export interface LastSurvey {
  /** As a sheet counts days. */
  readonly lastDate: number;
  /** 1 to 3, 3 the worst; so the other two. */
  readonly physicalCondition: number;
  readonly criticality: number;
  readonly environment: number;
}

/** Built-in intervals by their name, in any case. @throws INVALID "intervals" */
export function intervalsNamed(name: string): readonly number[] {
  const found = INTERVALS.find((set) => set.name.toLowerCase() === name.trim().toLowerCase());
  if (found) return found.months;
  const allowed = INTERVALS.map((set) => set.name);
  throw new GreybodyError({
    ...{ code: "INVALID", argument: "intervals", given: name, allowed },
    hint: FORM,
  });
}

/**
 * A workbook's own intervals for condition 1, 2 and 3, whole months, none longer than the one before.
 * @throws INVALID "intervals"
 */
export function ownIntervals(months: readonly number[]): readonly number[] {
  const wrong = (hint: Hint): GreybodyError => new GreybodyError({ code: "INVALID", argument: "intervals", hint });
  if (months.length !== 3 || months.some((one) => !Number.isInteger(one) || !inRange(one, MONTHS))) {
    throw wrong(FORM);
  }
  if (months.some((one, i) => one > (months[i - 1] ?? Infinity))) throw wrong({ key: "intervals-order" });
  return months;
}

/**
 * Day on which the next survey is due: the worst of the three governs the months (NFPA 70B-2023, Table 9.2.2).
 * @param months for condition 1, 2 and 3
 * @throws INVALID an argument out of its range or not whole
 */
export function nextDue(last: LastSurvey, months: readonly number[]): number {
  requireInRange("last_date", last.lastDate, DATE, { key: "date-range" });
  requireWhole("physical_condition", last.physicalCondition, CONDITION, CONDITION_SCALE);
  requireWhole("criticality", last.criticality, CONDITION, CONDITION_SCALE);
  requireWhole("environment", last.environment, CONDITION, CONDITION_SCALE);
  const worst = Math.max(last.physicalCondition, last.criticality, last.environment);
  return addMonths(last.lastDate, months[worst - 1] ?? NaN);
}
