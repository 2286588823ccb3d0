import type { CriteriaSet } from "../../src/data/criteria.js";
import { grade } from "../../src/core/severity/grade.js";
import { inputOf, type PublishedCheck } from "./rows.js";

/** The grade for the inputs of a check: "rise=3 K; reference=similar". */
export function gradeOfCheck(check: PublishedCheck, criteria: string | CriteriaSet, reference = "similar"): number {
  const named = /reference=(\w+)/.exec(check.inputs)?.[1] ?? reference;
  return grade({ rise: inputOf(check, "rise"), reference: named, criteria }).grade;
}
