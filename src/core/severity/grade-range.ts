import type { CriteriaSet } from "../../data/criteria.js";
import { RULES } from "../../data/rules.js";
import { GreybodyError, requireInRange } from "../errors.js";
import type { Range } from "../errors.js";
import { EXPONENT, LOAD, RISE } from "../loading/load.js";
import { riseAtLoad } from "../loading/rise-at-load.js";
import { criteriaNamed, DEFAULT_CRITERIA } from "./criteria.js";
import { grade } from "./grade.js";
import { gradeOn, ladderFor } from "./ladder.js";
import type { Grade } from "./ladder.js";

/** A standard uncertainty of a rise [K]. */
export const RISE_UNCERTAINTY: Range = { min: 0, ...(RISE.max !== undefined && { max: RISE.max }) };

export interface GradeRangeInputs {
  /** Rise as found [K]; with reference "limit" the share of the permitted rise [-]. */
  readonly rise: number;
  readonly load: number;
  readonly referenceLoad: number;
  readonly reference: string;
  /** A table for direct views; NETA-100.18 where absent. */
  readonly criteria?: string | CriteriaSet;
  /** Exponents of the current [-]; 1.6 and 2 where absent. */
  readonly exponentLow?: number;
  readonly exponentHigh?: number;
  /** Smallest share of the reference load [-]; 0.4 where absent. */
  readonly minimumLoad?: number;
  /** Standard uncertainty of the rise [K, -]; exact where absent. */
  readonly riseU?: number;
  /** Standard uncertainty of the load as found, in its unit; exact where absent. */
  readonly currentU?: number;
}

export interface GradeRange {
  /** Low and high end of the projected rise [K], widened by the expanded uncertainty. */
  readonly low: number;
  readonly high: number;
  readonly lowGrade: Grade;
  readonly highGrade: Grade;
  /** Whether both ends have the same grade. */
  readonly verdict: "same" | "depends";
}

/**
 * The grades that a rise may have at a reference load, over the usual exponents and the uncertainty of what was measured.
 * Each end is widened by 2·u, u² = (rⁿ·u(rise))² + (n·ΔT·u(load)/load)² with r = reference/load and ΔT that end's own
 * projected rise. k = 2, because only standard uncertainties are given and no degrees of freedom: some 95 %. The exponent
 * adds nothing to u, its range is spanned; the reference load is a number that was chosen, so exact.
 * @throws INVALID (which argument); REFUSED as `grade` on the rise as found (view direct) and as `riseAtLoad`
 * Source: JCGM 100:2008, 5.1 and 6.3; exponents in rules.json.
 */
export function gradeRange(inputs: GradeRangeInputs): GradeRange {
  const { rise, load, referenceLoad, criteria = DEFAULT_CRITERIA, riseU = 0, currentU = 0 } = inputs;
  const { exponentLow = RULES.exponent_low.value, exponentHigh = RULES.exponent_high.value } = inputs;
  requireInRange("exponent_low", exponentLow, EXPONENT);
  requireInRange("exponent_high", exponentHigh, EXPONENT);
  if (exponentLow > exponentHigh) {
    const hint = { key: "exponents-swapped", values: { exponent_high: exponentHigh } };
    throw new GreybodyError({ code: "INVALID", argument: "exponent_low", given: exponentLow, hint });
  }
  requireInRange("rise_u", riseU, RISE_UNCERTAINTY);
  requireInRange("current_u", currentU, LOAD);
  const set = typeof criteria === "string" ? criteriaNamed(criteria) : criteria;
  const { reference } = grade({ rise, reference: inputs.reference, criteria: set });
  const law = inputs.minimumLoad === undefined ? {} : { minimumLoad: inputs.minimumLoad };
  const [first, second] = [exponentLow, exponentHigh].map((exponent) => {
    const value = riseAtLoad({ rise, load, referenceLoad, exponent, ...law });
    const fromRise = (referenceLoad / load) ** exponent * riseU;
    const fromLoad = (exponent * value * currentU) / load;
    return { value, expanded: RULES.coverage_factor.value * Math.hypot(fromRise, fromLoad) };
  }) as [End, End];
  // Down to a smaller load, and for a rise below nothing, the high exponent gives the low end.
  const low = Math.min(first.value - first.expanded, second.value - second.expanded);
  const high = Math.max(first.value + first.expanded, second.value + second.expanded);
  const ladder = ladderFor(set, reference);
  const lowGrade = gradeOn(ladder, low);
  const highGrade = gradeOn(ladder, high);
  return { low, high, lowGrade, highGrade, verdict: lowGrade.grade === highGrade.grade ? "same" : "depends" };
}

interface End {
  readonly value: number;
  readonly expanded: number;
}
