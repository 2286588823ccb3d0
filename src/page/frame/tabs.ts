/** The sheets as tabs under the grid: arrows move, Enter or Space opens, as in any tab list. */
import { SetWorksheetActiveOperation } from "@univerjs/sheets";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";
import { element } from "./dom.js";

export interface Tabs {
  readonly root: HTMLElement;
  attach(book: LiveBook, panelId: string): void;
}

export function sheetTabs(): Tabs {
  const root = element("div", { class: "gb-tabs", role: "tablist", "aria-label": "Sheets" });
  return {
    root,
    attach: (book, panelId) => {
      const activate = (sheetId: string): void => {
        void book.commands.executeCommand(SetWorksheetActiveOperation.id, { unitId: bookId, subUnitId: sheetId });
      };
      const draw = (focus: boolean): void => {
        const active = book.activeSheetId();
        root.replaceChildren(
          ...book.workbook.getSheets().map((sheet) => {
            const id = sheet.getSheetId();
            const on = id === active;
            const attributes = {
              type: "button",
              role: "tab",
              "aria-selected": String(on),
              tabindex: on ? "0" : "-1",
              "data-sheet": id,
            };
            const tab = element("button", { ...attributes, ...(on ? { "aria-controls": panelId } : {}) }, [
              sheet.getName(),
            ]);
            tab.addEventListener("click", () => {
              activate(id);
            });
            return tab;
          }),
        );
        const tab = root.querySelector<HTMLElement>("[aria-selected=true]");
        tab?.scrollIntoView({ block: "nearest", inline: "nearest" });
        if (focus) tab?.focus();
      };
      root.addEventListener("keydown", (event) => {
        const tabs = [...root.querySelectorAll<HTMLElement>("[role=tab]")];
        const at = tabs.indexOf(document.activeElement as HTMLElement);
        const to = { ArrowRight: at + 1, ArrowLeft: at - 1, Home: 0, End: tabs.length - 1 }[event.key];
        if (at < 0 || to === undefined) return;
        event.preventDefault();
        tabs[(to + tabs.length) % tabs.length]?.focus();
      });
      // Another sheet, or one more or fewer.
      book.commands.onCommandExecuted((info) => {
        const watched = [
          SetWorksheetActiveOperation.id,
          "sheet.mutation.insert-sheet",
          "sheet.mutation.remove-sheet",
          "sheet.mutation.set-worksheet-name",
        ];
        if (watched.includes(info.id)) draw(root.contains(document.activeElement));
      });
      book.onOpened(() => {
        draw(false);
      });
      draw(false);
    },
  };
}
