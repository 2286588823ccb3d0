/**
 * The keys that go far, as in any sheet: Home, Ctrl+Home, Ctrl+End, Page up and down, and with Ctrl the sheet before or
 * after (where the browser leaves those two to the page). The grid has none of them.
 */
import { IRenderManagerService, SHEET_VIEWPORT_KEY } from "@univerjs/engine-render";
import { SetWorksheetActiveOperation } from "@univerjs/sheets";
import { IEditorBridgeService } from "@univerjs/sheets-ui";
import type { CellPlace } from "../book/a1.js";
import { formColumns } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";
import { frozen } from "../show/cell-box.js";
import { activeCell } from "../show/status.js";

export function goFarByKey(book: LiveBook, stage: HTMLElement): void {
  // In the capture phase: the grid's editor keeps every key that reaches it.
  document.addEventListener(
    "keydown",
    (event) => {
      if (event.shiftKey || event.altKey || !inGrid(stage)) return;
      if (book.injector.get(IEditorBridgeService).isVisible().visible) return;
      const here = activeCell(book);
      if (here === undefined) return;
      const way = ways[`${event.ctrlKey || event.metaKey ? "Ctrl+" : ""}${event.key}`];
      if (way === undefined) return;
      event.preventDefault();
      event.stopPropagation();
      way(book, here);
    },
    { capture: true },
  );
}

/** The grid itself, not a list of choices or a field that floats over it. */
function inGrid(stage: HTMLElement): boolean {
  const at = document.activeElement;
  return at !== null && stage.contains(at) && at.closest("input, textarea, [role=listbox], [role=dialog]") === null;
}

type Way = (book: LiveBook, here: CellPlace) => void;

const ways: Readonly<Record<string, Way>> = {
  Home: (book, { row }) => {
    choose(book, row, 0, 1);
  },
  "Ctrl+Home": (book) => {
    choose(book, frozen(book).row, 0, 1);
  },
  "Ctrl+End": (book) => {
    const { row, column } = lastCell(book);
    choose(book, row, column, -1);
  },
  PageDown: (book, here) => {
    choose(book, here.row + rowsInView(book), here.column, 1);
  },
  PageUp: (book, here) => {
    choose(book, here.row - rowsInView(book), here.column, 1);
  },
  "Ctrl+PageDown": (book) => {
    turnTo(book, 1);
  },
  "Ctrl+PageUp": (book) => {
    turnTo(book, -1);
  },
};

/** @param step where to look for a column when that one is hidden */
function choose(book: LiveBook, row: number, column: number, step: 1 | -1): void {
  const worksheet = book.worksheet(book.activeSheetId());
  const inside = Math.max(0, Math.min(row, worksheet.getRowCount() - 1));
  let shown = column;
  while (!worksheet.getColVisible(shown) && shown > 0 && shown < worksheet.getColumnCount() - 1) shown += step;
  book.api.getActiveWorkbook()?.getActiveSheet().getRange(inside, shown).activate();
}

/** What a sheet of ours reaches to; of a sheet that a person added, what is filled of it. */
function lastCell(book: LiveBook): CellPlace {
  const sheet = book.sheet(book.activeSheetId());
  if (sheet?.kind === "table") return { row: book.rowsOf(sheet).lastRow, column: sheet.lastColumn };
  if (sheet?.kind === "form")
    return { row: sheet.firstFieldRow + sheet.sheet.fields.length - 1, column: formColumns.value };
  const { endRow, endColumn } = book.worksheet(book.activeSheetId()).getCellMatrix().getDataRange();
  return { row: Math.max(0, endRow), column: Math.max(0, endColumn) };
}

/** Whole rows between the frozen ones and the lower edge. */
function rowsInView(book: LiveBook): number {
  const render = book.injector.get(IRenderManagerService).getRenderById(bookId);
  const height = render?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN)?.height ?? 0;
  const { scaleY } = render?.scene.getAncestorScale() ?? { scaleY: 1 };
  const row = book.worksheet(book.activeSheetId()).getRowHeight(frozen(book).row);
  return Math.max(1, Math.floor(height / scaleY / row) - 1);
}

function turnTo(book: LiveBook, step: 1 | -1): void {
  const ids = book.workbook.getSheets().map((sheet) => sheet.getSheetId());
  const to = ids[ids.indexOf(book.activeSheetId()) + step];
  if (to === undefined) return;
  void book.commands.executeCommand(SetWorksheetActiveOperation.id, { unitId: bookId, subUnitId: to });
}
