/**
 * Copying takes what a spill shows. The grid itself copies only cells that hold something of their own, and the cells
 * of a spill hold nothing. The numbers go out with all their digits, also where the cell shows fewer.
 */
import { type ICellDataWithSpanAndDisplay, type IRange, Rectangle } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { ISheetClipboardService } from "@univerjs/sheets-ui";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";
import { plainNumber } from "../show/fitting.js";

export function copySpills(book: LiveBook): void {
  const formulas = book.injector.get(FormulaDataModel);
  let sheetId = "";
  let copied: IRange | undefined;
  book.injector.get(ISheetClipboardService).addClipboardHook({
    id: "greybody-spills",
    // Before the grid's own: the first hook that gives a text is heard.
    priority: -1,
    onBeforeCopy: (_, sheet, range) => {
      sheetId = sheet;
      copied = range;
    },
    onCopyCellContent: (row, column) => {
      const number = plainNumber(book, sheetId, row, column);
      return number === undefined ? "" : String(number);
    },
    getCellValueBySpecialMatrix: cellOf,
  });

  function cellOf(row: number, column: number): ICellDataWithSpanAndDisplay | undefined {
    const worksheet = book.worksheet(sheetId);
    const spilled = formulas.getArrayFormulaCellData()[bookId]?.[sheetId]?.[row]?.[column];
    const number = plainNumber(book, sheetId, row, column);
    const raw = worksheet.getCellRaw(row, column);
    if (!spilled && number === undefined) return undefined;
    const shown = number ?? worksheet.getCell(row, column)?.v;
    const displayV = shown === undefined || shown === null ? "" : String(shown);
    if (!spilled) return { ...raw, displayV };
    const spill = formulas.getArrayFormulaRange()[bookId]?.[sheetId]?.[row]?.[column];
    // The first cell alone is a formula; copied with others of its spill it would spill over them where it is pasted.
    if (spill && copied && isAlone(spill, copied)) return { ...raw, displayV };
    return { ...raw, f: null, si: null, v: spilled.v ?? null, t: spilled.t ?? null, displayV };
  }
}

function isAlone(spill: IRange, copied: IRange): boolean {
  const both = Rectangle.getIntersects(spill, copied);
  return both?.startRow === both?.endRow && both?.startColumn === both?.endColumn;
}
