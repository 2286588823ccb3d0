/**
 * `window.greybody`: for tests and for a look from the browser's console. It reads, and can move the selection; what
 * changes the book goes through its host port.
 */
import type { HostPort } from "../host/port.js";
import { columnIndex } from "../host/reference.js";
import type { LiveBook } from "./book/live.js";
import { SetWorksheetActiveOperation } from "@univerjs/sheets";
import { bookId } from "./book/snapshot.js";
import type { Calculating } from "./show/calculating.js";
import { cellBox } from "./show/cell-box.js";
import { cellWords } from "./show/cell-words.js";
import type { Messages } from "./show/messages.js";

export interface CellReport {
  /** What the engine holds, unrounded. */
  readonly value: unknown;
  /** As the cell shows it; a number without a format with all its digits. */
  readonly shown: string;
  /** The very characters in the cell. */
  readonly painted: string;
  readonly formula: string | null;
  readonly header: string | undefined;
  readonly message: string | undefined;
}

export interface Handle {
  /** What the pane can do with the book; the only part of the handle that changes anything. */
  readonly port: HostPort;
  readonly sheets: () => string[];
  /** How many columns a sheet has, empty ones included. */
  readonly columns: (sheetName: string) => number;
  readonly cell: (sheetName: string, address: string) => CellReport;
  /** First and last body row (from 1, as the grid counts) of a table. */
  readonly table: (tableName: string) => { first: number; last: number };
  readonly calculating: () => boolean;
  /** Where a cell of the shown sheet is on the page, to point at it. */
  readonly box: (address: string) => { x: number; y: number; width: number; height: number } | undefined;
  readonly select: (sheetName: string, address: string) => Promise<void>;
}

declare global {
  var greybody: Handle | undefined;
}

export function debugHandle(book: LiveBook, messages: Messages, calculating: Calculating): Omit<Handle, "port"> {
  const place = (sheetName: string, address: string): { sheetId: string; row: number; column: number } => {
    const sheet = book.workbook.getSheetBySheetName(sheetName);
    const match = /^([A-Za-z]+)(\d+)$/.exec(address);
    if (!sheet || match === null) throw new Error(`No cell ${sheetName}!${address}`);
    return { sheetId: sheet.getSheetId(), row: Number(match[2]) - 1, column: columnIndex(match[1] ?? "") };
  };
  return {
    sheets: () => book.workbook.getSheets().map((sheet) => sheet.getName()),
    columns: (sheetName) => book.workbook.getSheetBySheetName(sheetName)?.getColumnCount() ?? 0,
    calculating: calculating.busy,
    cell: (sheetName, address) => {
      const { sheetId, ...at } = place(sheetName, address);
      const range = book.api.getActiveWorkbook()?.getSheetBySheetId(sheetId)?.getRange(at.row, at.column);
      const words = cellWords(book, messages, sheetId, at);
      return {
        value: range?.getRawValue() ?? null,
        shown: words.value,
        painted: String(book.worksheet(sheetId).getCell(at.row, at.column)?.v ?? ""),
        formula: book.worksheet(sheetId).getCellRaw(at.row, at.column)?.f ?? null,
        header: words.header,
        message: words.message,
      };
    },
    table: (tableName) => {
      const table = book.tables.find((candidate) => candidate.sheet.tableName === tableName);
      if (table === undefined) throw new Error(`No table ${tableName}`);
      const { firstRow, lastRow } = book.rowsOf(table);
      return { first: firstRow + 1, last: lastRow + 1 };
    },
    box: (address) => {
      const { row, column } = place(book.workbook.getActiveSheet().getName(), address);
      const cell = cellBox(book, document.body, { row, column });
      return cell && { x: cell.left, y: cell.top, width: cell.right - cell.left, height: cell.bottom - cell.top };
    },
    select: async (sheetName, address) => {
      const { sheetId, row, column } = place(sheetName, address);
      if (book.activeSheetId() !== sheetId) {
        await book.commands.executeCommand(SetWorksheetActiveOperation.id, { unitId: bookId, subUnitId: sheetId });
      }
      book.api.getActiveWorkbook()?.getSheetBySheetId(sheetId)?.getRange(row, column).activate();
    },
  };
}
