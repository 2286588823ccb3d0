/** A1 addresses: letters and numbers from zero-based rows and columns, and back. */
import { columnLetters } from "../../host/embedded/structured.js";

export interface CellPlace {
  readonly row: number;
  readonly column: number;
}

export interface Box {
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

export function cellAddress(place: CellPlace): string {
  return columnLetters(place.column) + String(place.row + 1);
}

/** A sheet's name as it stands before "!" in a formula. */
export function quoteSheet(name: string): string {
  return /^[A-Za-z_][A-Za-z0-9_]*$/.test(name) && !/^[A-Za-z]{1,3}\d+$/.test(name)
    ? name
    : `'${name.replaceAll("'", "''")}'`;
}

export function contains(box: Box, place: CellPlace): boolean {
  return (
    place.row >= box.startRow &&
    place.row <= box.endRow &&
    place.column >= box.startColumn &&
    place.column <= box.endColumn
  );
}

export function intersects(a: Box, b: Box): boolean {
  return (
    a.startRow <= b.endRow && a.endRow >= b.startRow && a.startColumn <= b.endColumn && a.endColumn >= b.startColumn
  );
}
