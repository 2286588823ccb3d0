/** A table style that paints nothing: the described cells carry their own looks. */
import { RangeThemeStyle, SheetRangeThemeModel } from "@univerjs/sheets";
import { bookId } from "../book/snapshot.js";
import { calmTableStyle } from "../book/table.js";
import type { Grid } from "./univer.js";

export function useCalmTables(grid: Grid): void {
  grid.univer.__getInjector().get(SheetRangeThemeModel).registerRangeThemeStyle(bookId, new RangeThemeStyle(calmTableStyle, {}));
}
