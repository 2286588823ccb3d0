/** The slim bar on top: name of the workbook, undo and redo, folded columns, zoom, and the panel. Only what works is there. */
import { IUndoRedoService, RedoCommand, UndoCommand } from "@univerjs/core";
import { SetWorksheetActiveOperation } from "@univerjs/sheets";
import { SetZoomRatioCommand } from "@univerjs/sheets-ui";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";
import { button, element } from "./dom.js";
import { foldedColumns } from "./folded.js";

export interface Bar {
  readonly root: HTMLElement;
  attach(book: LiveBook): void;
}

const zoomSteps = [0.5, 0.67, 0.8, 0.9, 1, 1.1, 1.25, 1.5, 2];

export function topBar(panelButton: HTMLElement): Bar {
  const title = element("h1", { class: "gb-title" }, ["Greybody"]);
  const tools = element("div", { class: "gb-tools" });
  const root = element("header", { class: "gb-bar" }, [title, tools, panelButton]);
  return {
    root,
    attach: (book) => {
      const entitle = (): void => {
        title.textContent = book.layout.book.title;
        document.title = `${book.layout.book.title} – Greybody`;
      };
      entitle();
      book.onOpened(entitle);
      const undo = button("Undo", () => void book.commands.executeCommand(UndoCommand.id), { title: "Ctrl+Z" });
      const redo = button("Redo", () => void book.commands.executeCommand(RedoCommand.id), { title: "Ctrl+Y" });
      book.injector.get(IUndoRedoService).undoRedoStatus$.subscribe(({ undos, redos }) => {
        undo.disabled = undos === 0;
        redo.disabled = redos === 0;
      });
      tools.replaceChildren(undo, redo, foldedColumns(book), zoom(book));
    },
  };
}

function zoom(book: LiveBook): HTMLElement {
  const shown = element("output", { class: "gb-zoom-value", "aria-label": "Zoom" }, ["100 %"]);
  const ratio = (): number => book.workbook.getActiveSheet().getZoomRatio();
  const set = (to: number | undefined): void => {
    if (to === undefined) return;
    const params = { unitId: bookId, subUnitId: book.activeSheetId(), zoomRatio: to };
    void book.commands.executeCommand(SetZoomRatioCommand.id, params);
  };
  const smaller = button(
    "−",
    () => {
      set(zoomSteps.filter((step) => step < ratio() - 0.001).at(-1));
    },
    { "aria-label": "Zoom out" },
  );
  const larger = button(
    "+",
    () => {
      set(zoomSteps.find((step) => step > ratio() + 0.001));
    },
    { "aria-label": "Zoom in" },
  );
  const show = (): void => {
    shown.textContent = `${String(Math.round(ratio() * 100))} %`;
  };
  book.commands.onCommandExecuted((info) => {
    if (info.id === "sheet.operation.set-zoom-ratio" || info.id === SetWorksheetActiveOperation.id) show();
  });
  book.onOpened(show);
  return element("div", { class: "gb-zoom", role: "group", "aria-label": "Zoom" }, [smaller, shown, larger]);
}
