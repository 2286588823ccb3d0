/** The line under the grid: which cell is selected, what it holds and why it shows an error; read out politely. */
import { SheetsSelectionsService } from "@univerjs/sheets";
import type { CellPlace } from "../book/a1.js";
import type { LiveBook } from "../book/live.js";
import { element } from "../frame/dom.js";
import { cellWords } from "./cell-words.js";
import type { Messages } from "./messages.js";

export interface StatusLine {
  readonly root: HTMLElement;
  /** An answer to something the person just tried; stays until the selection moves. */
  readonly say: (message: string) => void;
  readonly refresh: () => void;
}

export function statusLine(): StatusLine & { attach(book: LiveBook, messages: Messages): void } {
  const cell = element("span", { class: "gb-status-cell" });
  const message = element("span", { class: "gb-status-message" });
  const root = element("div", { class: "gb-status", role: "status", "aria-live": "polite", "aria-atomic": "true" }, [
    cell,
    message,
  ]);
  let said: string | undefined;
  let saidAt = 0;
  let saidOf = "";
  let source: { book: LiveBook; messages: Messages } | undefined;

  const chosen = (): string => {
    const place = source && activeCell(source.book);
    return source === undefined || place === undefined
      ? ""
      : `${source.book.activeSheetId()} ${String(place.row)} ${String(place.column)}`;
  };
  // Enter moves the selection in the same breath as what is answered; the next move takes the answer away. The grid
  // also tells of the same cell chosen again, as when a menu closes: that is no move.
  const moved = (): void => {
    if (performance.now() - saidAt <= 500) saidOf = chosen();
    else if (chosen() !== saidOf) said = undefined;
    show();
  };

  const show = (): void => {
    if (source === undefined) return;
    const place = activeCell(source.book);
    if (place === undefined) return;
    const words = cellWords(source.book, source.messages, source.book.activeSheetId(), place);
    const label = [words.address, words.header].filter(Boolean).join(" · ");
    const cellText = words.value === "" ? label : `${label}: ${words.value}`;
    const messageText = said ?? words.message ?? words.hint ?? "";
    // Only what changed is written, or a screen reader would read the same line at every calculation.
    if (cell.textContent !== cellText) cell.textContent = cellText;
    if (message.textContent !== messageText) {
      message.textContent = messageText;
      root.scrollTop = 0;
    }
    // Longer than the line has room for: the keyboard gets there to scroll.
    if (root.scrollHeight > root.clientHeight) root.tabIndex = 0;
    else root.removeAttribute("tabindex");
    root.classList.toggle("gb-status-error", said === undefined && words.message !== undefined);
  };
  return {
    root,
    refresh: show,
    say: (text) => {
      said = text;
      saidAt = performance.now();
      saidOf = chosen();
      show();
    },
    attach: (book, messages) => {
      source = { book, messages };
      const selections = book.injector.get(SheetsSelectionsService);
      selections.selectionMoveEnd$.subscribe(moved);
      selections.selectionSet$.subscribe(moved);
      messages.onChange(show);
      book.onOpened(moved);
      show();
    },
  };
}

/** The selected cell of the sheet that is shown. */
export function activeCell(book: LiveBook): CellPlace | undefined {
  if (!book.isOpen()) return undefined;
  const primary = book.injector.get(SheetsSelectionsService).getCurrentLastSelection()?.primary;
  return primary ? { row: primary.actualRow, column: primary.actualColumn } : undefined;
}
