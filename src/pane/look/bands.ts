/** The bands of the criteria along one axis, from the catalogue's own table. */
import { findFunction } from "../../functions/catalogue.js";
import type { Cell } from "../../functions/contract.js";
import { fromSI, type Units, unitOf } from "../../functions/units.js";
import type { FieldInfo } from "../../host/port.js";
import { numberOf, words } from "../route.js";
import type { Axis } from "./points.js";

export interface Band {
  readonly grade: number;
  readonly from: number;
  /** Undefined for the last. */
  readonly to: number | undefined;
  readonly words: string;
}

const references: Readonly<Record<Axis, string>> = {
  similar: "similar",
  air: "ambient",
  limit: "limit",
  indirect: "similar",
  baseline: "baseline",
};

const fieldOf: Readonly<Record<Axis, string>> = {
  similar: "job_criteria",
  air: "job_criteria",
  limit: "job_criteria_limit",
  indirect: "job_criteria_indirect",
  baseline: "job_criteria",
};

/** Which criteria an axis is graded by: what Job says. */
export function criteriaOf(axis: Axis, fields: readonly FieldInfo[]): string {
  return words(fields.find(({ name }) => name === fieldOf[axis])?.value);
}

/** Empty where the criteria are no built-in table, or have no column for this reference. */
export function bandsOf(axis: Axis, criteria: string, units: Units): Band[] {
  const table = findFunction("CRITERIA")?.evaluate([criteria]) ?? [];
  const rows = table.slice(1).filter(([reference]) => words(reference) === references[axis]);
  const edges = rows.map((row) => ({
    grade: numberOf(row[1]) ?? 0,
    edge: inSheet(row[3], axis, units),
    words: words(row[4]),
  }));
  edges.sort((one, other) => one.edge - other.edge);
  return edges.map(({ grade, edge, words: said }, index) => ({
    grade,
    from: edge,
    to: edges[index + 1]?.edge,
    words: said,
  }));
}

function inSheet(cell: Cell | undefined, axis: Axis, units: Units): number {
  const value = numberOf(cell) ?? 0;
  return axis === "limit" ? value : Number(fromSI(value, unitOf("difference", units)).toFixed(6));
}
