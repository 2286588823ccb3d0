import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import studentQuantile from "@stdlib/stats-base-dists-t-quantile";
import { requireInRange } from "../errors.js";
import type { Range } from "../errors.js";

/** A coverage probability [-]. */
export const COVERAGE: Range = { min: 0, minExcluded: true, max: 1, maxExcluded: true };

/** @throws INVALID "coverage" */
export function requireCoverage(coverage: number): void {
  const perCent = coverage > 1 && coverage <= 100;
  requireInRange(
    "coverage",
    coverage,
    COVERAGE,
    perCent ? { key: "per-cent", values: { meant: coverage / 100 } } : undefined,
  );
}

/** Degrees of freedom cut to a whole number; what rounding alone keeps below one is that one. Source: JCGM 100:2008, G.4.1. */
export function wholeFreedom(freedom: number): number {
  return Math.floor(freedom * (1 + 1e-12));
}

/**
 * Coverage factor k: a result ± k·u holds the value with the probability asked for.
 * @param coverage probability [-], above 0, below 1
 * @param freedom degrees of freedom [-], 1 or more; cut to a whole number; Infinity is the normal distribution
 * @throws INVALID "coverage"
 * Source: Student's t as in JCGM 100:2008, annex G.
 */
export function coverageFactor(coverage: number, freedom: number): number {
  requireCoverage(coverage);
  const upTo = (1 + coverage) / 2;
  return freedom === Infinity ? normalQuantile(upTo, 0, 1) : studentQuantile(upTo, wholeFreedom(freedom));
}
