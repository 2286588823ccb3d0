/** What the rows of the demo have to say, one of every kind: written by the rules of the trade, not copied from the sheet. */
import type { Value } from "../../../support/book/worked.js";

/** What stands in a row, column by column. */
export type Kind = readonly [kind: string, asset: string, expected: Readonly<Record<string, Value>>];

export const fine = {
  pattern: "balanced",
  grade_found: "0 of 4: well within its limit",
  judged_by: "share of limit (house-limit)",
  finding: "load heating, no joint finding",
  grade_full: "by its limit: not projected",
};
