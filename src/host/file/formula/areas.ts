/** Cells that a formula reads, and how their range is written. */
import { columnLetters } from "../../embedded/structured.js";
import { MOST_COLUMNS, MOST_ROWS } from "./segments.js";
import type { Corner, Reference } from "./segments.js";

/** Cells of a sheet that a formula reads, ends included. */
export interface Area {
  readonly sheet: number;
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

function span(from: Corner, to: Corner, side: "row" | "column", most: number): [number, number] {
  const [a, b] = [from[side], to[side]];
  return a === undefined || b === undefined ? [0, most - 1] : [Math.min(a, b), Math.max(a, b)];
}

/** The cells of a reference on a sheet. */
export function areaOf({ from, to = from }: Reference, sheet: number): Area {
  const rows = span(from, to, "row", MOST_ROWS);
  const columns = span(from, to, "column", MOST_COLUMNS);
  return { sheet, startRow: rows[0], endRow: rows[1], startColumn: columns[0], endColumn: columns[1] };
}

/** The one cell of a range in the formula's own row or column, as formulas before dynamic arrays mean it. */
export function implicitCell(
  { sheet, startRow, endRow, startColumn, endColumn }: Area,
  { row, column }: { readonly row: number; readonly column: number },
): Area | undefined {
  const inRow = row >= startRow && row <= endRow;
  const inColumn = column >= startColumn && column <= endColumn;
  const r = startRow === endRow ? startRow : inRow ? row : undefined;
  const c = startColumn === endColumn ? startColumn : inColumn ? column : undefined;
  if (r === undefined || c === undefined) return undefined;
  return { sheet, startRow: r, endRow: r, startColumn: c, endColumn: c };
}

/** A range as a formula on `here` writes it; a whole column is read as far as anything stands in its sheet. */
export function addressOf(
  { sheet, startRow, endRow, startColumn, endColumn }: Area,
  here: number,
  sheets: readonly { readonly name: string; readonly rows: number; readonly columns: number }[],
): string {
  const { rows = 1, columns = 1, name = "" } = sheets[sheet] ?? {};
  const prefix = sheet === here ? "" : `'${name.replaceAll("'", "''")}'!`;
  const lastRow = endRow === MOST_ROWS - 1 ? Math.max(startRow, rows - 1) : endRow;
  const lastColumn = endColumn === MOST_COLUMNS - 1 ? Math.max(startColumn, columns - 1) : endColumn;
  const first = `$${columnLetters(startColumn)}$${startRow + 1}`;
  const last = `$${columnLetters(lastColumn)}$${lastRow + 1}`;
  return prefix + (first === last ? first : `${first}:${last}`);
}
