import { CAUTIONS } from "./cautions.js";
import type { RowFacts } from "./facts.js";
import { IMPLAUSIBLE } from "./implausible.js";
import type { Named } from "./named.js";
import { NEEDED } from "./needed.js";
import { KINDS } from "./hit.js";
import type { Finding, Kind } from "./hit.js";
import type { Rule } from "./rule.js";
import { STOPS } from "./stops.js";
import { imagesTwice, wholeRoute } from "./whole-route.js";

/** What is looked for in a row, in the order in which it is told. */
export const RULES_OF_A_ROW: readonly Rule[] = [...NEEDED, ...STOPS, ...IMPLAUSIBLE, ...CAUTIONS];

/**
 * What is needed, stops a grade, is implausible or calls for caution on a route: what is of the whole route first (row 0),
 * then by row; within a row in the order of the kinds.
 * @param rows those that hold anything
 * @param others findings made while the rows were read
 * Source: thresholds of check-rules.json and rules.json, each with its own.
 */
export function checkRoute(rows: readonly RowFacts[], job: Named, others: readonly Finding[] = []): Finding[] {
  const ofRows = rows.flatMap((facts) =>
    RULES_OF_A_ROW.filter(({ kind }) => isAsked(facts, kind)).flatMap(({ id, kind, find }) =>
      find(facts).map((hit): Finding => ({ row: facts.number, id, kind, ...hit })),
    ),
  );
  const all = [...wholeRoute(rows, job), ...others, ...imagesTwice(rows), ...ofRows];
  // Sorting is stable: within a kind the order of the rules stays.
  return all.sort((a, b) => a.row - b.row || KINDS.indexOf(a.kind) - KINDS.indexOf(b.kind));
}

/** Of what was not inspected there is nothing that could be graded or projected. */
function isAsked({ isInspected, isMeasured }: RowFacts, kind: Kind): boolean {
  return isInspected || isMeasured || kind === "needed" || kind === "implausible";
}
