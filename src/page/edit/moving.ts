/**
 * Cells that are cut and pasted, or drawn elsewhere. The grid takes their looks and number formats along, which would
 * leave a hole in the sheet's own, and asks no lock when it pastes what was cut.
 */
import { CustomCommandExecutionError, type ICellData, type Nullable } from "@univerjs/core";
import { type IMoveRangeMutationParams, MoveRangeMutation } from "@univerjs/sheets";
import { freeCellAt } from "../book/free.js";
import { formColumns } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import type { FirstSay } from "./first-say.js";
import { contentLock } from "./lock-rules.js";

type Part = IMoveRangeMutationParams["from"];
type Cells = Record<string, Record<string, Nullable<ICellData>>>;

export function guardMoves(book: LiveBook, firstSay: FirstSay, say: (message: string) => void): void {
  firstSay.add((info) => {
    if (info.id !== MoveRangeMutation.id || !book.isOpen()) return;
    const { from, to } = info.params as IMoveRangeMutationParams;
    const parts = [from, to].map((part) => ({ sheetId: part.subUnitId, cells: placesOf(part) }));
    for (const { sheetId, cells } of parts) {
      for (const { row, column } of cells) {
        const lock = contentLock(book, sheetId, { startRow: row, endRow: row, startColumn: column, endColumn: column });
        if (lock === undefined) continue;
        say(lock);
        throw new CustomCommandExecutionError(lock);
      }
    }
    for (const { sheetId, cells } of parts) for (const cell of cells) keepLooks(book, sheetId, cell);
  });
}

interface MovedCell {
  readonly row: number;
  readonly column: number;
  readonly of: Record<string, Nullable<ICellData>>;
}

function placesOf(part: Part): MovedCell[] {
  return Object.entries(part.value as Cells).flatMap(([row, of]) =>
    Object.keys(of).map((column) => ({ row: Number(row), column: Number(column), of })),
  );
}

/** What is typed into looks as the sheet has it, whatever comes there or goes. */
function keepLooks(book: LiveBook, sheetId: string, { row, column, of }: MovedCell): void {
  const isField = book.sheet(sheetId)?.kind === "form" && column === formColumns.value;
  const isTyped = freeCellAt(book.sheet(sheetId), { row, column })?.look === "typed";
  if (!isField && !isTyped && book.bodyColumn(sheetId, { row, column }) === undefined) return;
  const style = book.worksheet(sheetId).getCellRaw(row, column)?.s;
  of[String(column)] = { ...of[String(column)], ...(style === undefined ? {} : { s: style }) };
}
