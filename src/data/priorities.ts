import priorities from "./priorities.json";
import type { Provenance } from "./provenance.js";

/** What a grade asks for, for criticality 1, 2 and 3, 3 the worst. */
export interface PriorityRow {
  readonly grade: number;
  readonly priorities: readonly string[];
}

export interface PriorityMatrix extends Provenance {
  readonly name: string;
  readonly about: string;
  readonly rows: readonly PriorityRow[];
}

/** The one taken by default first. */
export const PRIORITY_MATRICES = priorities as readonly PriorityMatrix[];
