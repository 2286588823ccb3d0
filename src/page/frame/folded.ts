/** One button shows or hides a sheet's folded columns: settings that are rarely typed, steps that are rarely read. */
import {
  SetColHiddenCommand,
  SetSelectionsOperation,
  SetSpecificColsVisibleCommand,
  SetWorksheetActiveOperation,
  SheetsSelectionsService,
} from "@univerjs/sheets";
import type { TableLayout } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";
import { button } from "./dom.js";

export function foldedColumns(book: LiveBook): HTMLElement {
  const toggle = button(
    "",
    () => {
      press();
    },
    { class: "gb-folded" },
  );
  const table = (): TableLayout | undefined => book.tables.find((candidate) => candidate.id === book.activeSheetId());

  function press(): void {
    const layout = table();
    if (layout !== undefined) void foldColumns(book, layout, !isFolded(book, layout));
  }

  function draw(): void {
    const layout = table();
    const count = layout === undefined ? 0 : foldedIndexes(layout).length;
    toggle.hidden = count === 0;
    if (layout === undefined) return;
    const folded = isFolded(book, layout);
    toggle.textContent = folded ? `More columns (${count})` : "Fewer columns";
    toggle.title = layout.columns
      .filter(({ column }) => column.folded === true)
      .map(({ column }) => column.header)
      .join(", ");
    toggle.setAttribute("aria-pressed", String(!folded));
  }

  book.commands.onCommandExecuted((info) => {
    const watched = ["sheet.mutation.set-col-visible", "sheet.mutation.set-col-hidden", SetWorksheetActiveOperation.id];
    if (watched.includes(info.id)) draw();
  });
  book.onOpened(draw);
  draw();
  return toggle;
}

function foldedIndexes(layout: TableLayout): number[] {
  return layout.columns.filter(({ column }) => column.folded === true).map(({ index }) => index);
}

/** Whether at least one of the folded columns is hidden. */
export function isFolded(book: LiveBook, layout: TableLayout): boolean {
  return foldedIndexes(layout).some((index) => !book.worksheet(layout.id).getColVisible(index));
}

export async function foldColumns(book: LiveBook, layout: TableLayout, hide: boolean): Promise<boolean> {
  const rows = book.worksheet(layout.id).getRowCount() - 1;
  const ranges = runs(foldedIndexes(layout)).map(([startColumn, endColumn]) => ({
    startRow: 0,
    endRow: rows,
    startColumn,
    endColumn,
  }));
  const command = hide ? SetColHiddenCommand.id : SetSpecificColsVisibleCommand.id;
  const place = { unitId: bookId, subUnitId: layout.id };
  const chosen = book.injector.get(SheetsSelectionsService).getCurrentSelections();
  const done = await book.commands.executeCommand(command, { ...place, ranges });
  // The command chooses the columns in place of what was chosen.
  await book.commands.executeCommand(SetSelectionsOperation.id, { ...place, selections: chosen });
  return done;
}

/** 3, 4, 5, 9 → [3, 5], [9, 9]. */
function runs(indexes: readonly number[]): [number, number][] {
  const found: [number, number][] = [];
  for (const index of indexes) {
    const last = found.at(-1);
    if (last?.[1] === index - 1) last[1] = index;
    else found.push([index, index]);
  }
  return found;
}
