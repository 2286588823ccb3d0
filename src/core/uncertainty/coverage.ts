import normalQuantile from "@stdlib/stats-base-dists-normal-quantile";
import studentCdf from "@stdlib/stats-base-dists-t-cdf";
import { requireInRange } from "../errors.js";
import type { Range } from "../errors.js";
import { rootBetween } from "../whatif/itp.js";

/** A coverage probability [-]. */
export const COVERAGE: Range = { min: 0, minExcluded: true, max: 1, maxExcluded: true };

/** @throws INVALID "coverage" */
export function requireCoverage(coverage: number, allowed = COVERAGE): void {
  const perCent = coverage > 1 && coverage <= 100;
  requireInRange(
    "coverage",
    coverage,
    allowed,
    perCent ? { key: "per-cent", values: { meant: coverage / 100 } } : undefined,
  );
}

/** Degrees of freedom cut to a whole number; what rounding alone keeps below one is that one. Source: JCGM 100:2008, G.4.1. */
export function wholeFreedom(freedom: number): number {
  return Math.floor(freedom * (1 + 1e-12));
}

/** Factors found before, since whole columns ask for the same ones. */
const found = new Map<string, number>();
const MOST_FOUND = 1000;

/**
 * Coverage factor k: a result ± k·u holds the value with the probability asked for.
 * @param coverage probability [-], above 0, below 1
 * @param freedom degrees of freedom [-], 1 or more; cut to a whole number; Infinity is the normal distribution
 * @throws INVALID "coverage"
 * Source: Student's t as in JCGM 100:2008, annex G.
 */
export function coverageFactor(coverage: number, freedom: number): number {
  requireCoverage(coverage);
  if (freedom === Infinity) return -normalQuantile((1 - coverage) / 2, 0, 1);
  const whole = wholeFreedom(freedom);
  const key = `${coverage} ${whole}`;
  const known = found.get(key);
  if (known !== undefined) return known;
  if (found.size >= MOST_FOUND) found.clear();
  const factor = studentFactor((1 - coverage) / 2, whole);
  found.set(key, factor);
  return factor;
}

/** The factor beyond which Student's t leaves `tail` on one side. */
function studentFactor(tail: number, freedom: number): number {
  const normal = -normalQuantile(tail, 0, 1);
  // So little coverage that none is left in double precision.
  if (!(normal > 0)) return 0;
  // No distribution of Student's reaches less far than the normal one, none farther than that of one degree, Cauchy's.
  const cauchy = 1 / Math.tan(Math.PI * tail);
  if (freedom <= 1) return cauchy;
  const beyond = (lnFactor: number): number => Math.log(studentCdf(-Math.exp(lnFactor), freedom) / tail);
  return Math.exp(rootBetween(beyond, Math.log(normal), Math.log(cauchy), 1e-13));
}
