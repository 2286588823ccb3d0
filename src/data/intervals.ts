import intervals from "./intervals.json";
import type { Provenance } from "./provenance.js";

/** Months between surveys for condition 1, 2 and 3, 3 the worst. */
export interface IntervalSet extends Provenance {
  readonly name: string;
  readonly about: string;
  readonly months: readonly number[];
}

/** The one taken by default first. */
export const INTERVALS = intervals as readonly IntervalSet[];
