/** Opens described books in the grid: the first, and each later one in place of the open one. */
import { IUniverInstanceService, UniverInstanceType } from "@univerjs/core";
import type { BookDescription } from "../../templates/contract.js";
import type { Measure } from "../book/header.js";
import { layOut } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import { bookId, bookSnapshot } from "../book/snapshot.js";
import type { Grid } from "../grid/univer.js";

export function bookOpener(grid: Grid, book: LiveBook, measure: Measure): (description: BookDescription) => void {
  let edition = 1;
  return (description) => {
    const layout = layOut(description, edition + 1);
    // A fault of the description shows here, while the old book still stands.
    const snapshot = bookSnapshot(layout, measure);
    edition++;
    book.replace(layout, () => {
      book.injector.get(IUniverInstanceService).disposeUnit(bookId);
      grid.univer.createUnit(UniverInstanceType.UNIVER_SHEET, snapshot);
    });
  };
}
