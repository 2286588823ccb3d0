import { BUILT_IN_LIMITS, findLimit } from "../../src/core/severity/part-limit.js";
import type { PublishedCheck } from "./rows.js";
import { expectPublished } from "./rows.js";

/** Fails unless our table has the figure of a check: °C is a temperature, K a rise. */
export function expectLimit(check: PublishedCheck, part: string, unit: "C" | "K", standard: string): void {
  const { temp, rise } = findLimit(BUILT_IN_LIMITS, part, standard);
  expectPublished(check, unit === "C" ? (temp ?? NaN) - 273.15 : (rise ?? NaN));
}

/** Fails unless checks and parts are the same, one for one. */
export function expectAll(checks: readonly PublishedCheck[], parts: Readonly<Record<string, unknown>>): void {
  expect(checks.map(({ id }) => id).sort()).toEqual(Object.keys(parts).sort());
}
