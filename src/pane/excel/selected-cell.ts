/** What the selected cell says: its address, what it shows, and why it shows an error. */
import type { CellReport } from "../../host/excel/reading.js";
import { element } from "../../page/frame/dom.js";

export interface SelectedCell {
  readonly root: HTMLElement;
  /** Reads the cell again; several calls at once read once more, after the one that runs. */
  readonly refresh: () => void;
}

export function selectedCell(read: () => Promise<CellReport>): SelectedCell {
  const place = element("p", { class: "gb-cell-place" });
  const message = element("p", { class: "gb-cell-message" });
  // Read as a whole: the reason without its cell says nothing.
  const root = element("section", { class: "gb-cell", role: "status", "aria-atomic": "true" }, [place, message]);
  let running = false;
  let again = false;

  const show = ({ address, text, message: said }: CellReport): void => {
    place.textContent = text === "" ? `${address} is empty.` : `${address} shows ${text}`;
    message.textContent = said ?? "";
  };
  const refresh = (): void => {
    if (running) {
      again = true;
      return;
    }
    running = true;
    read()
      .then(show)
      .catch(() => {
        // While a cell is being edited Excel answers nothing.
        place.textContent = "The cell can be read when nothing is being typed.";
        message.textContent = "";
      })
      .finally(() => {
        running = false;
        if (!again) return;
        again = false;
        refresh();
      });
  };
  return { root, refresh };
}
