/** A place beyond the sheet's end, as typed into the box for the cell's name, is not chosen: there is nothing there. */
import { CustomCommandExecutionError } from "@univerjs/core";
import { type ISetSelectionsOperationParams, SetSelectionsOperation } from "@univerjs/sheets";
import { cellAddress } from "../book/a1.js";
import type { LiveBook } from "../book/live.js";

export function refuseBeyondSheet(book: LiveBook, say: (message: string) => void): void {
  book.commands.beforeCommandExecuted((info) => {
    if (info.id !== SetSelectionsOperation.id || !book.isOpen()) return;
    const { subUnitId, selections } = info.params as ISetSelectionsOperationParams;
    const sheet = book.workbook.getSheetBySheetId(subUnitId);
    if (!sheet) return;
    const [rows, columns] = [sheet.getRowCount(), sheet.getColumnCount()];
    if (!selections.some(({ range }) => range.endRow >= rows || range.endColumn >= columns)) return;
    const message = `The sheet ends at ${cellAddress({ row: rows - 1, column: columns - 1 })}: there is no cell beyond.`;
    say(message);
    throw new CustomCommandExecutionError(message);
  });
}
