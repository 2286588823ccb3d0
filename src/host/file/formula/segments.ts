/** Takes a formula apart into its references and everything between, so that references can be moved, spread or looked up. */
import { columnLetters } from "../../embedded/structured.js";
import { columnIndex } from "../../reference.js";
import { isCall, tokenize } from "../../tokens.js";
import type { Token } from "../../tokens.js";

/** One corner: a row, a column or both, from 0, each fixed ($) or not. */
export interface Corner {
  readonly row: number | undefined;
  readonly column: number | undefined;
  readonly rowFixed: boolean;
  readonly columnFixed: boolean;
}

export interface Reference {
  /** Sheet before it as written, without "!"; with quotes where it had them; undefined for the formula's own sheet. */
  readonly sheet: string | undefined;
  /** Last sheet of a reference through several sheets. */
  readonly lastSheet: string | undefined;
  readonly from: Corner;
  /** Undefined for a single cell. */
  readonly to: Corner | undefined;
}

/** A piece of a formula. A reference keeps the text it was written as. */
export type Segment =
  | { readonly kind: "reference"; readonly text: string; readonly reference: Reference }
  | { readonly kind: "other"; readonly text: string; readonly token: Token };

const CELL = /^(\$?)([A-Z]{1,3})(\$?)([1-9]\d{0,6})$/i;
const COLUMN = /^(\$?)([A-Z]{1,3})$/i;
const ROW = /^(\$?)([1-9]\d{0,6})$/;
export const MOST_ROWS = 1_048_576;
export const MOST_COLUMNS = 16_384;

function cellCorner(text: string): Corner | undefined {
  const match = CELL.exec(text);
  if (!match) return undefined;
  const [, columnMark, letters = "", rowMark, digits] = match;
  const column = columnIndex(letters);
  const row = Number(digits) - 1;
  if (column >= MOST_COLUMNS || row >= MOST_ROWS) return undefined;
  return { row, column, rowFixed: rowMark === "$", columnFixed: columnMark === "$" };
}

function columnCorner(text: string): Corner | undefined {
  const match = COLUMN.exec(text);
  const column = columnIndex(match?.[2] ?? "");
  if (!match || column >= MOST_COLUMNS) return undefined;
  return { row: undefined, column, rowFixed: false, columnFixed: match[1] === "$" };
}

function rowCorner(text: string): Corner | undefined {
  const match = ROW.exec(text);
  const row = Number(match?.[2]) - 1;
  if (!match || row >= MOST_ROWS) return undefined;
  return { row, column: undefined, rowFixed: match[1] === "$", columnFixed: false };
}

/** Splits a formula, with or without "=". Joining the texts gives it back. */
export function segmentsOf(formula: string, isSheet: (name: string) => boolean): Segment[] {
  const tokens = tokenize(formula);
  const segments: Segment[] = [];
  let at = 0;
  while (at < tokens.length) {
    const found = referenceAt(tokens, at, isSheet);
    if (found) {
      const text = tokens
        .slice(at, at + found.length)
        .map((token) => token.text)
        .join("");
      segments.push({ kind: "reference", text, reference: found.reference });
      at += found.length;
    } else {
      const token = tokens[at]!;
      segments.push({ kind: "other", text: token.text, token });
      at++;
    }
  }
  return segments;
}

function referenceAt(
  tokens: readonly Token[],
  at: number,
  isSheet: (name: string) => boolean,
): { reference: Reference; length: number } | undefined {
  const sheets = sheetsAt(tokens, at, isSheet);
  const start = at + sheets.length;
  const first = tokens[start];
  const colon = tokens[start + 1]?.text === ":";
  const second = colon ? tokens[start + 2] : undefined;
  const { sheet, lastSheet } = sheets;
  const ended = (to: Corner | undefined, from: Corner, length: number): { reference: Reference; length: number } => ({
    reference: { sheet, lastSheet, from, to },
    length: sheets.length + length,
  });
  if (first === undefined || (first.kind !== "name" && first.kind !== "row") || isCall(tokens, start)) return undefined;
  const cell = cellCorner(first.text);
  if (cell) {
    const other = second?.kind === "name" && !isCall(tokens, start + 2) ? cellCorner(second.text) : undefined;
    return other ? ended(other, cell, 3) : ended(undefined, cell, 1);
  }
  if (!second || (second.kind !== "name" && second.kind !== "row")) return undefined;
  for (const corner of [columnCorner, rowCorner]) {
    const [from, to] = [corner(first.text), corner(second.text)];
    if (from && to) return ended(to, from, 3);
  }
  return undefined;
}

const withoutMark = (text: string): string => text.slice(0, -1);

/** The sheet or sheets before a reference and how many tokens they take. */
function sheetsAt(
  tokens: readonly Token[],
  at: number,
  isSheet: (name: string) => boolean,
): { sheet: string | undefined; lastSheet: string | undefined; length: number } {
  const token = tokens[at];
  if (token?.kind === "sheet") {
    const [sheet = "", lastSheet] = splitSheets(withoutMark(token.text));
    return { sheet, lastSheet, length: 1 };
  }
  // Sheet1:Sheet3!A1 without quotes.
  const last = tokens[at + 2];
  if (token?.kind === "name" && tokens[at + 1]?.text === ":" && last?.kind === "sheet" && isSheet(token.text)) {
    return { sheet: token.text, lastSheet: withoutMark(last.text), length: 3 };
  }
  return { sheet: undefined, lastSheet: undefined, length: 0 };
}

/** 'First:Last' names two sheets: no sheet's name holds a colon. */
function splitSheets(text: string): string[] {
  if (!text.startsWith("'")) return text.split(":");
  return text
    .slice(1, -1)
    .split(":")
    .map((name) => `'${name}'`);
}

/** The name of a sheet as the workbook has it, from how a formula writes it. */
export function sheetName(written: string): string {
  return written.startsWith("'") ? written.slice(1, -1).replaceAll("''", "'") : written;
}

function cornerText({ row, column, rowFixed, columnFixed }: Corner): string {
  const letters = column === undefined ? "" : `${columnFixed ? "$" : ""}${columnLetters(column)}`;
  return row === undefined ? letters : `${letters}${rowFixed ? "$" : ""}${row + 1}`;
}

/** A reference as a formula writes it. */
function referenceText({ sheet, lastSheet, from, to }: Reference): string {
  const quoted = sheet?.startsWith("'") === true && lastSheet !== undefined;
  const sheets = quoted
    ? `'${sheet.slice(1, -1)}:${lastSheet.slice(1, -1)}'`
    : [sheet, lastSheet].filter((name) => name !== undefined).join(":");
  const range = to ? `${cornerText(from)}:${cornerText(to)}` : cornerText(from);
  return sheet === undefined ? range : `${sheets}!${range}`;
}

/** Beyond the last row or column a moved reference begins again at the first, as Excel has it in shared formulas. */
const wrapped = (value: number, most: number): number => ((value % most) + most) % most;

function movedCorner(corner: Corner, rows: number, columns: number): Corner {
  const { row, column, rowFixed, columnFixed } = corner;
  return {
    ...corner,
    row: row === undefined || rowFixed ? row : wrapped(row + rows, MOST_ROWS),
    column: column === undefined || columnFixed ? column : wrapped(column + columns, MOST_COLUMNS),
  };
}

/** The formula with its relative references moved by rows and columns: a follower of a shared formula, or a name in a cell. */
export function moveFormula(
  formula: string,
  rows: number,
  columns: number,
  isSheet: (name: string) => boolean,
): string {
  return segmentsOf(formula, isSheet)
    .map((segment) => {
      if (segment.kind !== "reference") return segment.text;
      const { reference } = segment;
      const to = reference.to && movedCorner(reference.to, rows, columns);
      return referenceText({ ...reference, from: movedCorner(reference.from, rows, columns), to });
    })
    .join("");
}
