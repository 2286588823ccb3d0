/**
 * After every change: a table that was typed or pasted below takes the new rows in, the spills beside it stay at its
 * first row with its full range, and every other formula that refers to the whole column follows. All in the person's
 * own undo step. Why: the engine knows A1 ranges only, and a range that stays behind would drop the last row silently.
 */
import { CommandType, type ICommandInfo, RedoCommand, UndoCommand } from "@univerjs/core";
import { MoveRangeCommand, RemoveRowByRangeCommand, RemoveRowCommand } from "@univerjs/sheets";
import { SetSheetTableMutation } from "@univerjs/sheets-table";
import type { TableLayout } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import type { BodyRows } from "../book/resolve.js";
import { bookId } from "../book/snapshot.js";
import { anchorCells, followTable, grownRows, isFilled, type RowShift, spillAnew } from "./table-cells.js";
import { HostStep, lastStep } from "./step.js";

// A command on rows runs a second one by range, and either may come first to be settled.
const inserts: readonly string[] = ["sheet.command.insert-row", "sheet.command.insert-row-by-range"];
const structural: readonly string[] = [
  ...inserts,
  RemoveRowCommand.id,
  RemoveRowByRangeCommand.id,
  "sheet.command.move-rows",
  // The grid lets formulas follow what is drawn elsewhere: a whole column of readings, say, into the next.
  MoveRangeCommand.id,
];

export function settleTables(book: LiveBook): void {
  const known = new Map<string, BodyRows>();
  const remember = (): void => {
    for (const table of book.tables) known.set(table.tableId, book.rowsOf(table));
  };
  remember();
  let settledStep = lastStep(book);
  book.onOpened(() => {
    known.clear();
    remember();
    settledStep = lastStep(book);
  });

  book.commands.onCommandExecuted((info) => {
    if (info.type !== CommandType.COMMAND || !book.isOpen()) return;
    // A step taken back or done again carries its own repairs.
    if (info.id === UndoCommand.id || info.id === RedoCommand.id) {
      for (const table of book.tables) {
        const before = known.get(table.tableId);
        const now = book.rowsOf(table);
        if (before?.firstRow !== now.firstRow || before.lastRow !== now.lastRow) spillAnew(book, table);
      }
      remember();
      settledStep = lastStep(book);
      return;
    }
    const step = lastStep(book);
    if (step !== settledStep) {
      settle(info, step);
    } else if (book.tables.some((table) => lastFilledRow(book, table) > book.rowsOf(table).lastRow)) {
      // Inside a larger command whose step is not there yet: look again when it is.
      setTimeout(() => {
        const later = lastStep(book);
        settle(info, later === settledStep ? undefined : later);
      });
    }
  });

  function settle(info: ICommandInfo, step: ReturnType<typeof lastStep>): void {
    for (const table of book.tables) {
      const host = new HostStep(book);
      settleTable(book, table, known.get(table.tableId) ?? table, info, host);
      host.join(step);
    }
    remember();
    settledStep = lastStep(book);
  }
}

function settleTable(book: LiveBook, table: TableLayout, before: BodyRows, info: ICommandInfo, host: HostStep): void {
  const now = book.rowsOf(table);
  const last = lastFilledRow(book, table);
  if (last > now.lastRow) {
    const grown: BodyRows = { firstRow: now.firstRow, lastRow: last };
    host.mutate(tableRange(table, grown), tableRange(table, now));
    host.write(table.id, grownRows(book, table, now.lastRow, last));
    followTable(book, table, { from: now, to: grown }, host);
    // Of a list with a single row the others' formulas name that one cell, which is followed by nothing.
    for (const each of book.tables) host.write(each.id, anchorCells(book, each));
  } else if (structural.includes(info.id)) {
    const shift = insertedAtTop(info, before, now);
    if (shift !== undefined) followTable(book, table, shift, host);
    host.write(table.id, anchorCells(book, table));
  }
}

/** Rows inserted before the first: the grid moves every reference down, though the new rows belong to the table. */
function insertedAtTop(info: ICommandInfo, before: BodyRows, now: BodyRows): RowShift | undefined {
  const range = (info.params as { range?: { startRow: number } } | undefined)?.range;
  const added = now.lastRow - before.lastRow;
  if (!inserts.includes(info.id) || range?.startRow !== before.firstRow || added <= 0) return undefined;
  return { from: { firstRow: before.firstRow + added, lastRow: now.lastRow }, to: now };
}

function lastFilledRow(book: LiveBook, table: TableLayout): number {
  let row = book.rowsOf(table).lastRow;
  while (isFilled(book, table, row + 1)) row++;
  return row;
}

function tableRange(table: TableLayout, rows: BodyRows): { id: string; params: object } {
  const newRange = { startRow: rows.firstRow - 1, endRow: rows.lastRow, startColumn: 0, endColumn: table.lastTyped };
  return {
    id: SetSheetTableMutation.id,
    params: { unitId: bookId, subUnitId: table.id, tableId: table.tableId, config: { updateRange: { newRange } } },
  };
}
