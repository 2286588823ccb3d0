/**
 * Our own list of choices for cells that have one: a small button beside the selected cell, or Alt+Down. Univer's own
 * list traps the keyboard. Arrow keys move, Enter takes, Escape leaves; typing anything else into the cell stays possible.
 */
import { SetRangeValuesCommand, SheetsSelectionsService } from "@univerjs/sheets";
import { ILayoutService } from "@univerjs/ui";
import type { CellPlace } from "../book/a1.js";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";
import { button, element } from "../frame/dom.js";
import { cellBox, putAt } from "../show/cell-box.js";
import { choicesAt } from "../show/cell-words.js";
import { activeCell } from "../show/status.js";

export function offerChoices(book: LiveBook, frame: HTMLElement): void {
  const list = element("ul", {
    class: "gb-choices",
    role: "listbox",
    "aria-label": "Choices",
    tabindex: "-1",
    hidden: "",
  });
  const opener = button(
    "▾",
    () => {
      open();
    },
    { class: "gb-choice-button", tabindex: "-1", "aria-label": "Show the choices", hidden: "" },
  );
  frame.append(opener, list);
  let place: CellPlace | undefined;

  const selections = book.injector.get(SheetsSelectionsService);
  const follow = (): void => {
    close(false);
    place = activeCell(book);
    const choices = place && choicesAt(book, book.activeSheetId(), place);
    opener.hidden = choices === undefined || !inView();
    if (!opener.hidden) put(opener, "end");
  };
  selections.selectionMoveEnd$.subscribe(follow);
  selections.selectionSet$.subscribe(follow);
  book.api.addEvent(book.api.Event.Scroll, follow);
  book.api.addEvent(book.api.Event.SheetEditStarted, () => {
    opener.hidden = true;
  });
  document.addEventListener(
    "keydown",
    (event) => {
      if (
        event.altKey &&
        event.key === "ArrowDown" &&
        list.hidden &&
        frame.contains(document.activeElement) &&
        open()
      ) {
        event.preventDefault();
        event.stopPropagation();
      }
    },
    { capture: true },
  );
  list.addEventListener("keydown", (event) => {
    event.stopPropagation();
    const step = { ArrowDown: 1, ArrowUp: -1 }[event.key];
    if (step !== undefined) move(step);
    else if (event.key === "Home" || event.key === "End") choose(event.key === "Home" ? 0 : list.children.length - 1);
    else if (event.key === "Enter" || event.key === " ") take();
    else if (event.key === "Escape" || event.key === "Tab") close(true);
    else if (event.key.length === 1) jump(event.key);
    else return;
    event.preventDefault();
  });
  list.addEventListener("focusout", () => {
    close(false);
  });

  function open(): boolean {
    place = activeCell(book);
    const choices = place && choicesAt(book, book.activeSheetId(), place);
    if (place === undefined || choices === undefined) return false;
    const now = book.worksheet(book.activeSheetId()).getCellRaw(place.row, place.column)?.v;
    list.replaceChildren(
      ...choices.map((choice, index) => {
        const option = element("li", { role: "option", id: `gb-choice-${String(index)}` }, [choice]);
        option.addEventListener("pointerdown", (event) => {
          event.preventDefault();
          choose(index);
          take();
        });
        return option;
      }),
    );
    list.hidden = false;
    put(list, "below");
    choose(Math.max(0, choices.indexOf(String(now ?? ""))));
    list.focus();
    return true;
  }

  function close(refocus: boolean): void {
    if (list.hidden) return;
    list.hidden = true;
    if (refocus) book.injector.get(ILayoutService).focus();
  }

  function chosen(): number {
    return [...list.children].findIndex((option) => option.getAttribute("aria-selected") === "true");
  }

  function choose(index: number): void {
    [...list.children].forEach((option, at) => {
      option.setAttribute("aria-selected", String(at === index));
    });
    list.setAttribute("aria-activedescendant", `gb-choice-${String(index)}`);
    list.children[index]?.scrollIntoView({ block: "nearest" });
  }

  function move(step: number): void {
    choose(Math.max(0, Math.min(list.children.length - 1, chosen() + step)));
  }

  function jump(letter: string): void {
    const texts = [...list.children].map((option) => option.textContent.toLowerCase());
    const index = texts.findIndex((text, at) => at > chosen() && text.startsWith(letter.toLowerCase()));
    const found = index >= 0 ? index : texts.findIndex((text) => text.startsWith(letter.toLowerCase()));
    if (found >= 0) choose(found);
  }

  function take(): void {
    const value = list.children[chosen()]?.textContent;
    const at = place;
    close(true);
    if (value === undefined || at === undefined) return;
    const range = { startRow: at.row, endRow: at.row, startColumn: at.column, endColumn: at.column };
    const content = { v: value, t: null, p: null, f: null, si: null };
    void book.commands.executeCommand(SetRangeValuesCommand.id, {
      unitId: bookId,
      subUnitId: book.activeSheetId(),
      range,
      value: content,
    });
  }

  /** Whether the selected cell is where its button can stand. */
  function inView(): boolean {
    const cell = place && cellBox(book, frame, place);
    return (
      cell !== undefined &&
      cell.right > 0 &&
      cell.left < frame.clientWidth &&
      cell.bottom > 0 &&
      cell.top < frame.clientHeight
    );
  }

  /** Beside or below the selected cell, inside the frame. */
  function put(what: HTMLElement, side: "end" | "below"): void {
    const cell = place && cellBox(book, frame, place);
    if (cell === undefined) return;
    if (side === "end") putAt(what, frame, { left: cell.right, top: cell.top, above: cell.bottom });
    else putAt(what, frame, { left: cell.left, top: cell.bottom, above: cell.top });
  }
}
