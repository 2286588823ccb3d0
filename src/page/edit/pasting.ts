/**
 * Pasting whole rows is welcome: what would land on worked-out cells or headings is left out, the rest goes in. It
 * brings values, formulas and number formats; letters, sizes and colours stay those of the cell.
 */
import type { ICellData, Nullable } from "@univerjs/core";
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from "@univerjs/sheets";
import { ISheetClipboardService } from "@univerjs/sheets-ui";
import type { LiveBook } from "../book/live.js";
import type { FirstSay } from "./first-say.js";
import { contentLock } from "./lock-rules.js";

export function spareLockedCells(book: LiveBook, firstSay: FirstSay, say: (message: string) => void): void {
  let target: { sheetId: string; rows: readonly number[]; columns: readonly number[] } | undefined;
  book.injector.get(ISheetClipboardService).addClipboardHook({
    id: "greybody-locks",
    priority: 100,
    onBeforePaste: ({ subUnitId, range }) => {
      target = { sheetId: subUnitId, rows: range.rows, columns: range.cols };
      return true;
    },
    onAfterPaste: () => {
      target = undefined;
    },
  });
  firstSay.add((info) => {
    if (target === undefined || info.id !== SetRangeValuesMutation.id) return;
    const params = info.params as ISetRangeValuesMutationParams;
    let spared = 0;
    for (const [row, cells] of Object.entries(params.cellValue ?? {})) {
      for (const [column, cell] of Object.entries(cells as Record<string, Nullable<ICellData>>)) {
        if (cell) keepLooks(book, cell);
        const [r, c] = [Number(row), Number(column)];
        if (contentLock(book, params.subUnitId, { startRow: r, endRow: r, startColumn: c, endColumn: c }) === undefined)
          continue;
        delete (cells as Record<string, Nullable<ICellData>>)[column];
        // Formulas that the grid would have follow what was cut are spared too, and nobody's paste.
        if (target.sheetId === params.subUnitId && target.rows.includes(r) && target.columns.includes(c)) spared++;
      }
    }
    if (spared > 0) say("Pasted, but for the cells that the sheet works out and its headings: those stay as they are.");
  });
}

function keepLooks(book: LiveBook, cell: ICellData): void {
  const format = book.workbook.getStyles().getStyleByCell(cell)?.n;
  if (format) cell.s = { n: format };
  else delete cell.s;
}
