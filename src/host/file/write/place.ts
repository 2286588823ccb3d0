/** Addresses of cells and areas in the parts of a package. */
import { columnLetters } from "../../embedded/structured.js";
import type { Area } from "./model.js";

export function cellName(row: number, column: number): string {
  return `${columnLetters(column)}${row + 1}`;
}

/** "A1:B3", or "A1" for one cell. */
export function areaName({ startRow, endRow, startColumn, endColumn }: Area): string {
  const first = cellName(startRow, startColumn);
  const last = cellName(endRow, endColumn);
  return first === last ? first : `${first}:${last}`;
}

/** "$A$1:$B$3". */
export function fixedAreaName({ startRow, endRow, startColumn, endColumn }: Area): string {
  const corner = (row: number, column: number): string => `$${columnLetters(column)}$${row + 1}`;
  const first = corner(startRow, startColumn);
  const last = corner(endRow, endColumn);
  return first === last ? first : `${first}:${last}`;
}

/** A sheet's name as it stands before "!" in a formula. */
export function sheetPrefix(name: string): string {
  return `'${name.replaceAll("'", "''")}'!`;
}
