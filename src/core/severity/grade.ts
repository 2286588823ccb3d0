import type { CriteriaSet, ReferenceKind } from "../../data/criteria.js";
import { RULES } from "../../data/rules.js";
import { GreybodyError, requireInRange } from "../errors.js";
import type { Range } from "../errors.js";
import { RISE } from "../loading/load.js";
import { criteriaNamed, DEFAULT_CRITERIA, REFERENCE_KINDS, requireChoice, requireView, VIEWS } from "./criteria.js";
import { gradeOn, ladderFor, roundHalfAway, settle } from "./ladder.js";
import type { Grade } from "./ladder.js";

/** A share of the permitted rise [-]. */
export const SHARE: Range = { min: -10, max: 10 };
/** Step to which a rise may be rounded before it is graded [K]. */
export const ROUND_TO: Range = { min: 0, minExcluded: true, max: 10 };

/** How far below its reference a reading may lie by chance. */
const COLDEST: Readonly<Record<ReferenceKind, number>> = {
  similar: -RULES.colder_than_similar.value,
  ambient: -RULES.colder_than_ambient.value,
  baseline: -RULES.colder_than_baseline.value,
  limit: -RULES.colder_than_air_share.value,
};

export interface GradeInputs {
  /** Rise over its reference [K]; with reference "limit" the share of the permitted rise [-]. */
  readonly rise: number;
  /** "similar", "ambient", "baseline" or "limit"; never assumed. */
  readonly reference: string;
  /** A built-in table by its name, or the workbook's own; NETA-100.18 where absent. */
  readonly criteria?: string | CriteriaSet;
  /** "direct" (where absent), "indirect" or "enclosed". */
  readonly view?: string;
  /** Step to which the rise is rounded first [K, -]; none where absent. */
  readonly roundTo?: number;
}

/**
 * Severity of a rise by a table of criteria. A band begins "from" its lower edge (≥) or "above" it (>), compared after
 * rounding to 1e-6.
 * @throws INVALID (which argument); REFUSED a reference or a view that the table is not for, an enclosed part, a reading
 * colder than its reference by more than chance
 * Source: the table's own, returned with the grade; limits of chance in rules.json.
 */
export function grade(inputs: GradeInputs): Grade {
  const { rise, criteria = DEFAULT_CRITERIA, view = "direct", roundTo } = inputs;
  const reference = requireChoice("reference", inputs.reference, REFERENCE_KINDS);
  const set = typeof criteria === "string" ? criteriaNamed(criteria) : criteria;
  requireView(set, requireChoice("view", view, VIEWS));
  const ladder = ladderFor(set, reference);
  requireRiseOrShare(rise, reference);
  if (roundTo !== undefined) requireInRange("round_to", roundTo, ROUND_TO);
  const settled = settle(roundTo === undefined ? rise : roundedTo(rise, roundTo));
  if (settled < COLDEST[reference]) {
    const hint = { key: "colder-than-reference", values: { rise, reference, most: COLDEST[reference] } };
    throw new GreybodyError({ code: "REFUSED", argument: "rise", given: rise, hint });
  }
  return gradeOn(ladder, settled);
}

function requireRiseOrShare(rise: number, reference: ReferenceKind): void {
  if (reference !== "limit") requireInRange("rise", rise, RISE);
  else {
    const perCent = rise > 10 && rise <= 1000;
    requireInRange("rise", rise, SHARE, perCent ? { key: "per-cent", values: { meant: rise / 100 } } : undefined);
  }
}

/** To a step, half away from zero as people round; the quotient is settled first, so that a half is a half. */
function roundedTo(value: number, step: number): number {
  return roundHalfAway(settle(value / step)) * step;
}
