/** A card beside a cell that shows an error, while the pointer rests on it: our message, or a plain sentence. */
import { HoverManagerService } from "@univerjs/sheets-ui";
import type { LiveBook } from "../book/live.js";
import { element } from "../frame/dom.js";
import { cellBox, putAt } from "./cell-box.js";
import { cellWords } from "./cell-words.js";
import type { Messages } from "./messages.js";

export function explainOnHover(book: LiveBook, messages: Messages, frame: HTMLElement): void {
  // The status line says the same to a screen reader when the cell is selected.
  const card = element("div", { class: "gb-hover", "aria-hidden": "true", hidden: "" });
  frame.append(card);
  book.injector.get(HoverManagerService).currentCell$.subscribe((hovered) => {
    const at = book.isOpen() ? hovered?.location : undefined;
    const words = at && cellWords(book, messages, at.subUnitId, { row: at.row, column: at.col });
    if (at === undefined || words?.message === undefined) {
      card.hidden = true;
      return;
    }
    card.hidden = false;
    card.textContent = words.message;
    const cell = cellBox(book, frame, { row: at.row, column: at.col });
    if (cell !== undefined) putAt(card, frame, { left: cell.left, top: cell.bottom + 4, above: cell.top - 4 });
  });
  const hide = (): void => {
    card.hidden = true;
  };
  book.api.addEvent(book.api.Event.Scroll, hide);
  frame.addEventListener("pointerleave", hide);
}
