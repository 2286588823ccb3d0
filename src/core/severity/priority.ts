import { PRIORITY_MATRICES } from "../../data/priorities.js";
import type { PriorityRow } from "../../data/priorities.js";
import { GreybodyError, inRange, requireWhole } from "../errors.js";
import type { Hint, Range } from "../errors.js";

export const GRADE: Range = { min: 0, max: 4 };
/** Of an asset's criticality, condition or environment: 3 is the worst. */
export const CONDITION: Range = { min: 1, max: 3 };
/** Which end of either is the worst: scales of other houses run the other way. */
const GRADE_SCALE: Hint = { key: "grade-scale" };
export const CONDITION_SCALE: Hint = { key: "condition-scale" };
export const DEFAULT_MATRIX = "house";

/** A built-in matrix by its name, in any case. @throws INVALID "matrix" */
export function matrixNamed(name: string): readonly PriorityRow[] {
  const found = PRIORITY_MATRICES.find((matrix) => matrix.name.toLowerCase() === name.trim().toLowerCase());
  if (found) return found.rows;
  const allowed = PRIORITY_MATRICES.map((matrix) => matrix.name);
  throw new GreybodyError({
    ...{ code: "INVALID", argument: "matrix", given: name, allowed },
    hint: { key: "matrix-form" },
  });
}

/**
 * What a grade asks for on an asset of that criticality, in words.
 * @param grade 0 to 4, 4 the worst
 * @param criticality 1 to 3, 3 the worst
 * @throws INVALID either; REFUSED "grade" where a workbook's own matrix has no row for it
 */
export function priority(grade: number, criticality: number, matrix: readonly PriorityRow[]): string {
  requireWhole("grade", grade, GRADE, GRADE_SCALE);
  requireWhole("criticality", criticality, CONDITION, CONDITION_SCALE);
  const words = matrix.find((row) => row.grade === grade)?.priorities[criticality - 1];
  if (words !== undefined) return words;
  const hint = { key: "grade-not-in-matrix", values: { grade, has: matrix.map((row) => row.grade).join(", ") } };
  throw new GreybodyError({ code: "REFUSED", argument: "grade", given: grade, hint });
}

/**
 * A workbook's own matrix: each row a grade and the words for criticality 1, 2 and 3.
 * @throws INVALID "matrix" with the number of the row, counted from 1, and what is wrong in it
 */
export function ownMatrix(rows: readonly PriorityRow[]): readonly PriorityRow[] {
  if (rows.length === 0) throw new GreybodyError({ code: "INVALID", argument: "matrix", hint: { key: "matrix-form" } });
  return rows.map((row, i) => {
    const wrong = (key: string): GreybodyError =>
      new GreybodyError({ code: "INVALID", argument: "matrix", hint: { key, values: { row: i + 1 } } });
    if (!Number.isInteger(row.grade) || !inRange(row.grade, GRADE)) throw wrong("matrix-grade");
    if (rows.slice(0, i).some((one) => one.grade === row.grade)) throw wrong("matrix-twice");
    const priorities = row.priorities.map((words) => words.trim());
    if (priorities.length !== 3 || priorities.includes("")) throw wrong("matrix-words");
    return { grade: row.grade, priorities };
  });
}
