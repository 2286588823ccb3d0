/** Values of ranges as cells: an error text with its message, an empty text as an empty cell. */
/// <reference types="office-js" />
import type { Cell, CellError, Grid } from "../../functions/contract.js";
import { plainMessage } from "../plain-messages.js";
import { emptyAsNull } from "../records.js";
import type { KeptMessages } from "./messages.js";

/** A call of Excel on the web may not grow past 5 MB. */
const cellsPerCall = 20_000;

const errorValue = /^#(?:[A-Z]+[!?]|N\/A|DIV\/0!|GETTING_DATA)$/;

export interface SheetRange {
  readonly sheet: string;
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

export function cellOf(value: unknown, at: { sheet: string; row: number; column: number }, kept: KeptMessages): Cell {
  if (typeof value === "string" && errorValue.test(value))
    return { error: value as CellError["error"], message: kept.at(at)?.message ?? plainMessage(value) };
  return emptyAsNull(value as Cell);
}

/** So many rows at a time; one sync for each part. */
export async function readCells(context: Excel.RequestContext, range: SheetRange, kept: KeptMessages): Promise<Grid> {
  const { sheet, startRow, endRow, startColumn, endColumn } = range;
  const worksheet = context.workbook.worksheets.getItem(sheet);
  const width = endColumn - startColumn + 1;
  const step = Math.max(1, Math.floor(cellsPerCall / width));
  const grid: Cell[][] = [];
  for (let from = startRow; from <= endRow; from += step) {
    const part = worksheet.getRangeByIndexes(from, startColumn, Math.min(step, endRow - from + 1), width);
    part.load("values");
    await context.sync();
    part.values.forEach((row: unknown[], r) => {
      grid.push(row.map((value, c) => cellOf(value, { sheet, row: from + r, column: startColumn + c }, kept)));
    });
  }
  return grid;
}
