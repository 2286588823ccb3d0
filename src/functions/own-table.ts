import { GreybodyError } from "../core/errors.js";
import type { ArgumentSpec, Cell, CellError, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { plainNumber } from "./numbers.js";
import { gridOf, isNoWord } from "./read.js";
import { tableError } from "./table-errors.js";
import type { FaultyCell } from "./table-errors.js";

/** How a range of the workbook's own becomes a table. */
interface Reading<Result> {
  /** A first row of words only. */
  readonly isHeading: (row: readonly Cell[]) => boolean;
  /** May throw the core's error, which tells the row counted from 1. */
  readonly build: (rows: Grid) => Result;
  /** The cell that a fault is about, from the key of the hint and its row. */
  readonly about: (key: string, row: readonly Cell[]) => FaultyCell;
}

/** The cell of an argument that is no range; undefined for a range. */
export function singleCell(input: Input): Cell | undefined {
  const grid = gridOf(input);
  return grid.length === 1 && grid[0]?.length === 1 ? (grid[0][0] ?? null) : undefined;
}

/** Reads a table of the workbook's own: header or not, empty rows passed over, rows told as they stand in the range. */
export function readOwnTable<Result>(
  spec: ArgumentSpec,
  input: Input,
  { isHeading, build, about }: Reading<Result>,
): Result | CellError {
  const grid = gridOf(input);
  const incoming = grid.flat().find(isCellError);
  if (incoming) return incoming;
  const filled = grid.flatMap((row, place) => (row.every(isNoWord) ? [] : [place]));
  const places = filled.filter((place, i) => i > 0 || !isHeading(grid[place]!));
  try {
    return build(places.map((place) => grid[place]!));
  } catch (error) {
    if (!(error instanceof GreybodyError)) throw error;
    return tableError(error, spec, grid, places, about);
  }
}

/** A cell as text; "" for an error and for what is empty. */
export function textOf(cell: Cell | undefined): string {
  return typeof cell === "string" ? cell : cell === null || cell === undefined || isCellError(cell) ? "" : String(cell);
}

/** A cell as a number, NaN where it is none. */
export function numberOf(cell: Cell | undefined): number {
  return typeof cell === "number" ? cell : typeof cell === "string" ? (plainNumber(cell) ?? NaN) : NaN;
}

/** A cell of words; "" for an empty one, which Excel hands over as 0. */
export function wordsOf(cell: Cell | undefined): string {
  return cell === undefined || isNoWord(cell) ? "" : textOf(cell).trim();
}
