import type { RowFacts } from "./facts.js";
import type { Hit, Kind } from "./hit.js";

/** What a check looks for in a row. */
export interface Rule {
  readonly id: string;
  readonly kind: Kind;
  readonly find: (facts: RowFacts) => readonly Hit[];
}
