import type { GreybodyError } from "../core/errors.js";
import type { ArgumentSpec, Cell, CellError, Grid } from "./contract.js";
import { errorCell } from "./messages.js";
import { isBlank } from "./read.js";
import { unitOf } from "./units.js";
import type { Unit } from "./units.js";

/** The rows of a table that the core was given, each by its place in the range: heading and empty rows are left out. */
export type Places = readonly number[];

/** The cell of a table that a fault is about. */
export interface FaultyCell {
  readonly column: number;
  readonly unit: Unit;
}

/**
 * What a table that is taken whole shows for the core's error: the row as it stands in the range, the cell as it was
 * typed. `about` tells the cell from the key of the hint and its row.
 */
export function tableError(
  error: GreybodyError,
  spec: ArgumentSpec,
  grid: Grid,
  places: Places,
  about: (key: string, row: readonly Cell[]) => FaultyCell,
): CellError {
  const { code, allowed, hint } = error;
  const index = hint?.values?.row;
  const place = typeof index === "number" ? places[index - 1] : undefined;
  const row = place === undefined ? undefined : grid[place];
  if (hint === undefined || place === undefined || row === undefined) {
    return errorCell({ code, argument: spec.name, ...(hint && { hint }) }, spec, undefined, NO_UNIT);
  }
  const { column, unit } = about(hint.key, row);
  const cell = row[column] ?? null;
  const told = { ...hint, values: { ...hint.values, row: place + 1 } };
  const details = { code, argument: spec.name, hint: told };
  // Where nothing was typed the hint alone says what is wanted.
  if (isBlank(cell)) return errorCell(details, spec, undefined, unit);
  return errorCell({ ...details, ...(allowed && { allowed }) }, spec, cell, unit);
}

const NO_UNIT: Unit = unitOf("number", "C");
