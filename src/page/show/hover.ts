/** A card beside a cell that shows an error, while the pointer rests on it: our message, or a plain sentence. */
import type { LiveBook } from "../book/live.js";
import { element } from "../frame/dom.js";
import { cellWords } from "./cell-words.js";
import type { Messages } from "./messages.js";

export function explainOnHover(book: LiveBook, messages: Messages, frame: HTMLElement): void {
  // The status line says the same to a screen reader when the cell is selected.
  const card = element("div", { class: "gb-hover", "aria-hidden": "true", hidden: "" });
  frame.append(card);
  book.api.addEvent(book.api.Event.CellHover, ({ worksheet, row, column }) => {
    const words = cellWords(book, messages, worksheet.getSheetId(), { row, column });
    card.hidden = words.message === undefined;
    if (words.message === undefined) return;
    card.textContent = words.message;
    const cell = worksheet.getRange(row, column).getCellRect();
    const box = frame.getBoundingClientRect();
    card.style.left = `${String(Math.max(0, Math.min(cell.left - box.left, box.width - card.offsetWidth)))}px`;
    const below = cell.bottom - box.top + 4;
    const fits = below + card.offsetHeight <= box.height;
    card.style.top = `${String(fits ? below : cell.top - box.top - card.offsetHeight - 4)}px`;
  });
  const hide = (): void => {
    card.hidden = true;
  };
  book.api.addEvent(book.api.Event.Scroll, hide);
  frame.addEventListener("pointerleave", hide);
}
