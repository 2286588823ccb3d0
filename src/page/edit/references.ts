/** Finds and replaces A1 references in a formula; text, numbers, names and functions stay as they are. */
import { isCall, type Token, tokenize } from "../../host/tokens.js";
import { columnIndex } from "../../host/reference.js";
import { type Box, cellAddress } from "../book/a1.js";

export interface Reference {
  /** Without quotes; undefined where the reference is to the formula's own sheet. */
  readonly sheetName: string | undefined;
  readonly box: Box;
}

const CELL = /^(\$?)([A-Za-z]{1,3})(\$?)([1-9]\d{0,6})$/;

/** The formula with every reference for which `replace` gives a box written anew; $ signs and the sheet's name are kept. */
export function mapReferences(formula: string, replace: (reference: Reference) => Box | undefined): string {
  const tokens = tokenize(formula);
  let written = "";
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    const start = parseCell(tokens, at);
    if (start === undefined) {
      written += token.text;
      continue;
    }
    const end = tokens[at + 1]?.text === ":" ? parseCell(tokens, at + 2) : undefined;
    const sheet = tokens[at - 1]?.kind === "sheet" ? unquote(tokens[at - 1]?.text ?? "") : undefined;
    const replaced = replace({ sheetName: sheet, box: boxOf(start, end ?? start) });
    const text = end === undefined ? token.text : `${token.text}:${tokens[at + 2]?.text ?? ""}`;
    written += replaced === undefined ? text : writeBox(replaced, start, end);
    if (end !== undefined) at += 2;
  }
  return written;
}

interface WrittenCell {
  readonly row: number;
  readonly column: number;
  readonly fixedRow: string;
  readonly fixedColumn: string;
}

function parseCell(tokens: readonly Token[], at: number): WrittenCell | undefined {
  const token = tokens[at];
  if (token?.kind !== "name" || isCall(tokens, at)) return undefined;
  const match = CELL.exec(token.text);
  if (match === null) return undefined;
  const [, fixedColumn = "", letters = "", fixedRow = "", digits = ""] = match;
  return { row: Number(digits) - 1, column: columnIndex(letters), fixedRow, fixedColumn };
}

function boxOf(start: WrittenCell, end: WrittenCell): Box {
  return {
    startRow: Math.min(start.row, end.row),
    endRow: Math.max(start.row, end.row),
    startColumn: Math.min(start.column, end.column),
    endColumn: Math.max(start.column, end.column),
  };
}

function writeBox(box: Box, start: WrittenCell, end: WrittenCell | undefined): string {
  const first = writeCell(box.startRow, box.startColumn, start);
  const isCell = box.startRow === box.endRow && box.startColumn === box.endColumn;
  return isCell && end === undefined ? first : `${first}:${writeCell(box.endRow, box.endColumn, end ?? start)}`;
}

function writeCell(row: number, column: number, like: WrittenCell): string {
  const [, letters = "", digits = ""] = /^([A-Z]+)(\d+)$/.exec(cellAddress({ row, column })) ?? [];
  return like.fixedColumn + letters + like.fixedRow + digits;
}

/** The sheet's name of a token such as Sheet1! or 'My ''own'' sheet'!. */
function unquote(token: string): string {
  const name = token.slice(0, -1);
  return name.startsWith("'") ? name.slice(1, -1).replaceAll("''", "'") : name;
}
