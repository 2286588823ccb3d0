/** What of a described sheet is fixed, and how that is said. */
import { type Box, contains, intersects } from "../book/a1.js";
import { freeBox } from "../book/free-box.js";
import { columnAt, type FreeLayout } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";

/** Why a change is refused: a whole sentence. */
export type Lock = string;

/** Whether cells may be typed into. */
export function contentLock(book: LiveBook, sheetId: string, box: Box): Lock | undefined {
  const sheet = book.sheet(sheetId);
  if (sheet?.kind === "free") return freeLock(sheet, box);
  if (sheet?.kind !== "table") return undefined;
  const { firstRow, lastRow } = book.rowsOf(sheet);
  const header: Box = { startRow: firstRow - 2, endRow: firstRow - 1, startColumn: 0, endColumn: sheet.lastColumn };
  if (intersects(header, box)) return "The column headings are fixed: formulas on this sheet go by them.";
  const computed: Box = {
    startRow: firstRow,
    endRow: lastRow,
    startColumn: sheet.gap + 1,
    endColumn: sheet.lastColumn,
  };
  if (!intersects(computed, box)) return undefined;
  const first = columnAt(sheet, Math.max(box.startColumn, computed.startColumn));
  const name = first === undefined ? "This column" : `"${first.column.header}"`;
  return `${name} is worked out from what is typed at the left, so it cannot be changed here. Nothing was changed.`;
}

/** Only what is meant to be typed can be; the free space around it is anybody's. */
function freeLock({ sheet, first }: FreeLayout, box: Box): Lock | undefined {
  const fixed = sheet.cells.find((cell) => cell.look !== "typed" && intersects(freeBox(cell, first), box));
  if (fixed === undefined) return undefined;
  return "This cell belongs to the sheet and cannot be changed here. What is typed has the green ground. Nothing was changed.";
}

/** Whether rows, columns or cells may be put in, taken out or moved. */
export function structureLock(
  book: LiveBook,
  sheetId: string,
  kind: "rows" | "columns" | "cells",
  box: Box,
  removes: boolean,
): Lock | undefined {
  const sheet = book.sheet(sheetId);
  if (sheet === undefined || sheet.kind === "notes") return undefined;
  if (sheet.kind === "free") {
    const end = sheet.sheet.cells.reduce((last, cell) => Math.max(last, freeBox(cell, sheet.first).endRow), 0);
    const inside = kind === "columns" ? box.startColumn < sheet.sheet.widths.length : box.startRow <= end;
    return inside ? "The rows and columns of this sheet are fixed: its cells go by one another." : undefined;
  }
  if (sheet.kind === "form") {
    const end = sheet.firstFieldRow + sheet.sheet.fields.length;
    const inside =
      kind === "columns" ? box.startColumn <= 3 : box.startRow < end && (kind === "rows" || box.startColumn <= 3);
    return inside ? "The lines of this sheet are fixed: formulas on other sheets go by them." : undefined;
  }
  const { firstRow, lastRow } = book.rowsOf(sheet);
  if (kind === "columns") {
    return box.startColumn <= sheet.lastColumn
      ? "The columns of this sheet are fixed. Columns of your own go to the right of them."
      : undefined;
  }
  if (kind === "cells") {
    const inside = box.startColumn <= sheet.lastColumn && box.startRow <= lastRow;
    return inside
      ? "On this sheet only whole rows can be put in or taken out, so that a row stays one item."
      : undefined;
  }
  if (box.startRow < firstRow) return "The rows down to the column headings are fixed. New rows go below them.";
  const whole =
    contains(box, { row: firstRow, column: box.startColumn }) &&
    contains(box, { row: lastRow, column: box.startColumn });
  return removes && whole ? "At least one row of the table stays, or there would be nothing to type into." : undefined;
}
