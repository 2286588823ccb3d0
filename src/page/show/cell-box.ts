/** Where a cell is on the page, relative to the element that floats things over the grid. */
import { IRenderManagerService, SHEET_VIEWPORT_KEY } from "@univerjs/engine-render";
import { SheetSkeletonManagerService } from "@univerjs/sheets-ui";
import type { CellPlace } from "../book/a1.js";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";

export interface CellBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Undefined where the sheet is not painted yet. The grid's own answer leaves scrolling, zoom and frozen parts out. */
export function cellBox(book: LiveBook, frame: HTMLElement, place: CellPlace): CellBox | undefined {
  const render = book.injector.get(IRenderManagerService).getRenderById(bookId);
  const skeleton = render?.with(SheetSkeletonManagerService).getCurrentSkeleton();
  const canvas = render?.engine.getCanvasElement().getBoundingClientRect();
  if (!render || !skeleton || canvas === undefined) return undefined;
  const { row, column } = frozen(book);
  const inTop = place.row < row;
  const inLeft = place.column < column;
  const key = inTop
    ? inLeft
      ? SHEET_VIEWPORT_KEY.VIEW_MAIN_LEFT_TOP
      : SHEET_VIEWPORT_KEY.VIEW_MAIN_TOP
    : inLeft
      ? SHEET_VIEWPORT_KEY.VIEW_MAIN_LEFT
      : SHEET_VIEWPORT_KEY.VIEW_MAIN;
  const viewport = render.scene.getViewport(key);
  const { scaleX, scaleY } = render.scene.getAncestorScale();
  const cell = skeleton.getCellWithCoordByIndex(place.row, place.column);
  const box = frame.getBoundingClientRect();
  const x = (sheetX: number): number => canvas.left - box.left + (sheetX - (viewport?.viewportScrollX ?? 0)) * scaleX;
  const y = (sheetY: number): number => canvas.top - box.top + (sheetY - (viewport?.viewportScrollY ?? 0)) * scaleY;
  return { left: x(cell.startX), top: y(cell.startY), right: x(cell.endX), bottom: y(cell.endY) };
}

/** The first row and column that are not frozen. */
export function frozen(book: LiveBook): { row: number; column: number } {
  const { startRow, startColumn } = book.workbook.getActiveSheet().getFreeze();
  return { row: Math.max(0, startRow), column: Math.max(0, startColumn) };
}

/** Puts an element at a point, moved so far that it stays inside the frame; `above` is where it goes if there is no room below. */
export function putAt(
  what: HTMLElement,
  frame: HTMLElement,
  point: { left: number; top: number; above: number },
): void {
  const left = Math.max(0, Math.min(point.left, frame.clientWidth - what.offsetWidth));
  const fits = point.top + what.offsetHeight <= frame.clientHeight;
  what.style.left = `${String(left)}px`;
  what.style.top = `${String(Math.max(0, fits ? point.top : point.above - what.offsetHeight))}px`;
}
