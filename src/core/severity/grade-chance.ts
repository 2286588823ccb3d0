import type { CriteriaSet } from "../../data/criteria.js";
import { requireInRange } from "../errors.js";
import { normalCdf } from "../uncertainty/normal-cdf.js";
import { criteriaNamed, DEFAULT_CRITERIA } from "./criteria.js";
import { RISE_UNCERTAINTY } from "./grade-range.js";
import { grade } from "./grade.js";
import { ladderFor } from "./ladder.js";

/** Grades 0 to 4. */
const GRADES = 5;

export interface GradeChanceInputs {
  /** Rise over its reference [K]; with reference "limit" the share of the permitted rise [-]. */
  readonly rise: number;
  /** Standard uncertainty (k = 1) of the rise, in its unit; 0 is exact. */
  readonly standardUncertainty: number;
  /** "similar", "ambient", "baseline" or "limit"; never assumed. */
  readonly reference: string;
  /** A built-in table by its name, or the workbook's own; NETA-100.18 where absent. */
  readonly criteria?: string | CriteriaSet;
  /** "direct" (where absent), "indirect" or "enclosed". */
  readonly view?: string;
}

/**
 * Probability of each grade, 0 to 4, that a rise may have: the rise is taken as normal about what was found. A grade that
 * the table does not have for this reference has 0; below the first band, and colder than the reference by chance, is 0.
 * @returns five numbers that make 1 together
 * @throws INVALID "standard_uncertainty"; INVALID and REFUSED as `grade` of the rise as found
 * Source: the table's own; JCGM 106:2012, 7 (conformance probability).
 */
export function gradeChance(inputs: GradeChanceInputs): number[] {
  const { standardUncertainty: u, criteria = DEFAULT_CRITERIA, ...others } = inputs;
  const set = typeof criteria === "string" ? criteriaNamed(criteria) : criteria;
  const found = grade({ ...others, criteria: set });
  requireInRange("standard_uncertainty", u, RISE_UNCERTAINTY);
  const chances = new Array<number>(GRADES).fill(0);
  if (u === 0) {
    chances[found.grade] = 1;
    return chances;
  }
  const { edges, grades } = ladderFor(set, found.reference);
  // Of each band the chance to lie above where it begins, less that to lie above where the next one does.
  const above = [1, ...edges.map(({ value }) => normalCdf((inputs.rise - value) / u)), 0];
  for (const [i, { grade: number }] of grades.entries()) chances[number]! += (above[i] ?? 0) - (above[i + 1] ?? 0);
  return chances;
}
