/** Where a cell is on the page, relative to the element that floats things over the grid. */
import type { CellPlace } from "../book/a1.js";
import type { LiveBook } from "../book/live.js";

export interface CellBox {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Undefined where the sheet is not painted yet. */
export function cellBox(book: LiveBook, frame: HTMLElement, place: CellPlace): CellBox | undefined {
  const canvas = frame.querySelector("canvas[id*=sheet-main]")?.getBoundingClientRect();
  const cell = book.api.getActiveWorkbook()?.getActiveSheet().getRange(place.row, place.column).getCellRect();
  if (canvas === undefined || cell === undefined) return undefined;
  const box = frame.getBoundingClientRect();
  // The grid counts from its canvas, the formula bar above it left out.
  const [left, top] = [canvas.left - box.left + cell.left, canvas.top - box.top + cell.top];
  return { left, top, right: left + cell.width, bottom: top + cell.height };
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
