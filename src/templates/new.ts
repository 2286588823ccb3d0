/** A route to be filled: nothing of anybody's in it but what the job begins with. */
import type { Units } from "../functions/units.js";
import type { BookDescription } from "./contract.js";
import { mechanicalBook } from "./mechanical/book.js";
import { MECHANICAL_CRITERIA } from "./mechanical/job.js";
import { routeBook } from "./route/book.js";
import { CRITERIA_CHOICES } from "./route/job.js";

export type RouteKind = "electrical" | "mechanical";

/** By which each kind of route may be graded; the first is the usual one. */
export const criteriaChoices = {
  electrical: CRITERIA_CHOICES,
  mechanical: MECHANICAL_CRITERIA,
} as const satisfies Record<RouteKind, readonly string[]>;

export type CriteriaChoice = (typeof criteriaChoices)[RouteKind][number];

export interface NewRoute {
  readonly kind: RouteKind;
  readonly title: string;
  readonly units: Units;
  /** Empty rows to begin with; the table grows as it is typed into. */
  readonly rows: number;
  readonly criteria: CriteriaChoice;
}

export function newRoute({ kind, title, units, rows, criteria }: NewRoute): BookDescription {
  const empty = {
    title,
    about: [],
    job: { criteria },
    assets: [],
    windows: [],
    surfaces: [],
    rows: Array.from({ length: rows }, () => ({})),
    units,
  };
  return kind === "electrical" ? routeBook(empty) : mechanicalBook(empty);
}
