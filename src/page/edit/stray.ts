/** A row typed with a gap below a table is none of its rows and gets no results: that is said at once. */
import { type ISetRangeValuesMutationParams, SetRangeValuesMutation } from "@univerjs/sheets";
import type { LiveBook } from "../book/live.js";
import { lastStep } from "./step.js";
import { isFilled } from "./table-cells.js";

export function tellStrayRows(book: LiveBook, say: (message: string) => void): void {
  let step = lastStep(book);
  book.onOpened(() => {
    step = lastStep(book);
  });
  book.commands.onCommandExecuted((info, options) => {
    if (info.id !== SetRangeValuesMutation.id || options?.fromFormula === true || !book.isOpen()) return;
    const { subUnitId, cellValue } = info.params as ISetRangeValuesMutationParams;
    const table = book.tables.find(({ id }) => id === subUnitId);
    if (table === undefined) return;
    // When the table has taken in what it can.
    setTimeout(() => {
      if (!book.tables.includes(table)) return;
      const now = lastStep(book);
      // What undo brings back was told when it was typed.
      if (now === step) return;
      step = now;
      const { lastRow } = book.rowsOf(table);
      const stray = Object.keys(cellValue ?? {})
        .map(Number)
        .find((row) => row > lastRow + 1 && isFilled(book, table, row));
      if (stray === undefined) return;
      say(
        `Row ${String(stray + 1)} is not part of the table: type in the row directly below it, row ${String(lastRow + 2)}.`,
      );
    });
  });
}
