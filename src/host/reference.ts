/** A1 references as people write them: a cell or a range, with or without its sheet. */

export interface RangeReference {
  /** Without quotes; undefined where the reference is to the sheet in front. */
  readonly sheet: string | undefined;
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

const RANGE =
  /^(?:(?:'((?:[^']|'')+)'|([^'!:]+))!)?\$?([A-Z]{1,3})\$?([1-9]\d{0,6})(?::\$?([A-Z]{1,3})\$?([1-9]\d{0,6}))?$/i;

/** Rows and columns from 0, first before last; undefined for whole columns, names and what is no reference. */
export function parseReference(reference: string): RangeReference | undefined {
  const match = RANGE.exec(reference.trim());
  if (match === null) return undefined;
  const [, quoted, bare, column = "", row = "", lastColumn = column, lastRow = row] = match;
  const columns = [columnIndex(column), columnIndex(lastColumn)];
  const rows = [Number(row) - 1, Number(lastRow) - 1];
  return {
    sheet: quoted?.replaceAll("''", "'") ?? bare,
    startRow: Math.min(...rows),
    endRow: Math.max(...rows),
    startColumn: Math.min(...columns),
    endColumn: Math.max(...columns),
  };
}

/** AA → 26; any case. */
export function columnIndex(letters: string): number {
  let column = 0;
  for (const letter of letters.toUpperCase()) column = column * 26 + letter.charCodeAt(0) - 64;
  return column - 1;
}
