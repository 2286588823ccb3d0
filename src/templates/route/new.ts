/** A route to be filled: nothing of anybody's in it but what the job begins with. */
import type { Units } from "../../functions/units.js";
import type { BookDescription } from "../contract.js";
import { routeBook } from "./book.js";
import type { CRITERIA_CHOICES } from "./job.js";

export type CriteriaChoice = (typeof CRITERIA_CHOICES)[number];

export interface NewRoute {
  readonly title: string;
  readonly units: Units;
  /** Empty rows to begin with; the table grows as it is typed into. */
  readonly rows: number;
  readonly criteria: CriteriaChoice;
}

export function newRoute({ title, units, rows, criteria }: NewRoute): BookDescription {
  return routeBook({
    title,
    about: [],
    job: { criteria },
    assets: [],
    windows: [],
    surfaces: [],
    rows: Array.from({ length: rows }, () => ({})),
    units,
  });
}
