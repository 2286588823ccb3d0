/**
 * Brings the chosen cell fully into view. The grid's own way leaves it half behind the frozen rows and columns, or
 * half beyond the edge.
 */
import { IRenderManagerService, SHEET_VIEWPORT_KEY } from "@univerjs/engine-render";
import { SheetsSelectionsService } from "@univerjs/sheets";
import { SetScrollRelativeCommand } from "@univerjs/sheets-ui";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";
import { cellBox, frozen } from "./cell-box.js";
import { activeCell } from "./status.js";

/** A cell that was pointed at is in view as far as the person wants it. */
const pointing = 400;

export function keepInView(book: LiveBook, stage: HTMLElement): void {
  let pointedAt = -Infinity;
  let last = "";
  const grid = (event: Event): void => {
    if (event.target instanceof HTMLCanvasElement) pointedAt = event.timeStamp;
  };
  stage.addEventListener("pointerdown", grid, { capture: true });
  stage.addEventListener("pointerup", grid, { capture: true });

  const follow = (): void => {
    const place = activeCell(book);
    const key = place && `${book.activeSheetId()} ${String(place.row)} ${String(place.column)}`;
    if (key === undefined || key === last) return;
    last = key;
    if (performance.now() - pointedAt < pointing) return;
    // After the grid's own scrolling, which takes longer where the book is large.
    for (const later of [20, 150])
      setTimeout(() => {
        reveal(book, stage);
      }, later);
  };
  const selections = book.injector.get(SheetsSelectionsService);
  selections.selectionMoveEnd$.subscribe(follow);
  selections.selectionSet$.subscribe(follow);
}

function reveal(book: LiveBook, stage: HTMLElement): void {
  const place = activeCell(book);
  const render = book.injector.get(IRenderManagerService).getRenderById(bookId);
  const main = render?.scene.getViewport(SHEET_VIEWPORT_KEY.VIEW_MAIN);
  const cell = place && cellBox(book, stage, place);
  if (!place || !render || !main || !cell) return;
  const canvas = render.engine.getCanvasElement().getBoundingClientRect();
  const box = stage.getBoundingClientRect();
  const { scaleX, scaleY } = render.scene.getAncestorScale();
  const first = frozen(book);
  const left = canvas.left - box.left + main.left;
  const top = canvas.top - box.top + main.top;
  const right = Math.min(left + (main.width ?? 0), canvas.right - box.left);
  const bottom = Math.min(top + (main.height ?? 0), canvas.bottom - box.top);
  const offsetX = place.column < first.column ? 0 : step(cell.left, cell.right, left, right) / scaleX;
  const offsetY = place.row < first.row ? 0 : step(cell.top, cell.bottom, top, bottom) / scaleY;
  if (Math.abs(offsetX) < 1 && Math.abs(offsetY) < 1) return;
  void book.commands.executeCommand(SetScrollRelativeCommand.id, { offsetX, offsetY });
}

/** How far to scroll for a cell to lie between the two edges; its beginning counts where it is larger than that. */
function step(from: number, to: number, low: number, high: number): number {
  if (from < low) return from - low;
  return to > high ? Math.min(to - high, from - low) : 0;
}
