import type { Bound, CriteriaRow, CriteriaSet, ReferenceKind } from "../../data/criteria.js";
import { GreybodyError, inRange } from "../errors.js";
import type { ErrorDetails, Range } from "../errors.js";
import { RISE } from "../loading/load.js";
import { REFERENCE_KINDS } from "./criteria.js";
import { SHARE } from "./grade.js";

/** A row of a workbook's own criteria, read but not yet checked. */
export interface OwnCriteriaRow {
  readonly reference: string;
  readonly grade: number;
  /** "from" or "above". */
  readonly bound: string;
  /** Lower edge [K], or share of the limit [-]. */
  readonly edge: number;
  readonly words: string;
  readonly action?: string;
}

const GRADES: Range = { min: 1, max: 4 };
const BOUNDS: readonly Bound[] = ["from", "above"];

/**
 * A workbook's own table of criteria. Within each reference, in the order of the rows, grades and lower edges rise; each
 * row has words, for no grade is shown without them. Good for direct and indirect views: its author knows what it is for.
 * @param rows at least one
 * @throws INVALID "criteria" with the number of the row, counted from 1, and what is wrong in it
 */
export function ownCriteria(rows: readonly OwnCriteriaRow[]): CriteriaSet {
  if (rows.length === 0)
    throw new GreybodyError({ code: "INVALID", argument: "criteria", hint: { key: "criteria-empty" } });
  const last = new Map<ReferenceKind, CriteriaRow>();
  const checked = rows.map((row, i) => {
    const valid = checkedRow(row, i + 1);
    requireRising(last.get(valid.reference), valid, i + 1);
    last.set(valid.reference, valid);
    return valid;
  });
  return {
    name: "own",
    about: "The workbook's own criteria.",
    views: ["direct", "indirect"],
    below: { words: "below the first band", action: "none by these criteria" },
    rows: checked,
  };
}

function wrong(row: number, key: string, details: Pick<ErrorDetails, "given" | "allowed">): GreybodyError {
  return new GreybodyError({ code: "INVALID", argument: "criteria", ...details, hint: { key, values: { row } } });
}

function checkedRow(given: OwnCriteriaRow, row: number): CriteriaRow {
  const reference = REFERENCE_KINDS.find((kind) => kind === plain(given.reference));
  if (reference === undefined) {
    throw wrong(row, "criteria-reference", { given: given.reference, allowed: REFERENCE_KINDS });
  }
  const bound = BOUNDS.find((word) => word === plain(given.bound));
  if (bound === undefined) throw wrong(row, "criteria-bound", { given: given.bound, allowed: BOUNDS });
  if (!(Number.isInteger(given.grade) && inRange(given.grade, GRADES))) {
    throw wrong(row, "criteria-grade", { given: given.grade, allowed: GRADES });
  }
  const edges: Range = { ...(reference === "limit" ? SHARE : RISE), min: 0 };
  if (!inRange(given.edge, edges)) throw wrong(row, "criteria-edge", { given: given.edge, allowed: edges });
  const words = given.words.trim();
  if (words === "") throw wrong(row, "criteria-words", {});
  return { reference, grade: given.grade, bound, edge: given.edge, words, action: given.action?.trim() ?? "" };
}

/** Within a reference a later row is worse: a greater edge (or "above" the same one) and a greater grade. */
function requireRising(before: CriteriaRow | undefined, row: CriteriaRow, number: number): void {
  if (before === undefined) return;
  const edgeRises =
    row.edge > before.edge || (row.edge === before.edge && before.bound === "from" && row.bound === "above");
  if (!edgeRises) throw wrong(number, "criteria-edge-order", { given: row.edge });
  if (row.grade <= before.grade) throw wrong(number, "criteria-grade-order", { given: row.grade });
}

function plain(text: string): string {
  return text.trim().toLowerCase();
}
