import { BUILT_IN_CRITERIA } from "../../data/criteria.js";
import type { CriteriaRow, CriteriaSet, ReferenceKind, View } from "../../data/criteria.js";
import { GreybodyError } from "../errors.js";

export const REFERENCE_KINDS: readonly ReferenceKind[] = ["similar", "ambient", "baseline", "limit"];
export const VIEWS: readonly View[] = ["direct", "indirect", "enclosed"];
export const DEFAULT_CRITERIA = "NETA-100.18";

/** One of the words allowed. @throws INVALID the argument */
export function requireChoice<Choice extends string>(
  argument: string,
  given: string,
  choices: readonly Choice[],
): Choice {
  const found = choices.find((choice) => choice === given);
  if (found === undefined) throw new GreybodyError({ code: "INVALID", argument, given, allowed: choices });
  return found;
}

export const CRITERIA_NAMES: readonly string[] = BUILT_IN_CRITERIA.map((set) => set.name);

/** A built-in table of criteria by its name, in any case. @throws INVALID "criteria" */
export function criteriaNamed(name: string): CriteriaSet {
  const found = BUILT_IN_CRITERIA.find((set) => set.name.toLowerCase() === name.trim().toLowerCase());
  if (found !== undefined) return found;
  const allowed = CRITERIA_NAMES;
  throw new GreybodyError({ code: "INVALID", argument: "criteria", given: name, allowed });
}

/**
 * The bands of a table for one reference, lowest first.
 * @throws REFUSED "reference" where the table has none
 */
export function bandsFor(criteria: CriteriaSet, reference: ReferenceKind): readonly CriteriaRow[] {
  const bands = criteria.rows.filter((row) => row.reference === reference);
  if (bands.length > 0) return bands;
  const has = [...new Set(criteria.rows.map((row) => row.reference))].join(", ");
  const others = BUILT_IN_CRITERIA.filter((set) => set.rows.some((row) => row.reference === reference));
  const sets = others.map(({ name }) => `"${name}"`).join(", ");
  const hint = { key: "reference-not-in-criteria", values: { criteria: criteria.name, reference, has, sets } };
  throw new GreybodyError({ code: "REFUSED", argument: "reference", given: reference, hint });
}

/**
 * Refuses a view that the table is not for: what insulates a part hides most of its rise, so a table for direct views
 * would call it sound; and nothing grades what is not seen.
 * @throws REFUSED "view"
 */
export function requireView(criteria: CriteriaSet, view: View): void {
  if (criteria.views.includes(view)) return;
  const key = view === "enclosed" ? "enclosed-not-graded" : "view-not-in-criteria";
  const hint = { key, values: { criteria: criteria.name, view, has: criteria.views.join(", ") } };
  throw new GreybodyError({ code: "REFUSED", argument: "view", given: view, hint });
}
