/** What stands in the grid where no description puts anything: a file made from the description would not hold it. */
import type { LeftOut } from "../../templates/refill/left.js";
import { columnLetters } from "../../host/embedded/structured.js";
import type { CellPlace } from "../book/a1.js";
import { formColumns, type SheetLayout } from "../book/layout.js";
import { freeCellAt } from "../book/free.js";
import type { LiveBook } from "../book/live.js";

export function tellOutside(live: LiveBook, left: LeftOut): void {
  for (const worksheet of live.workbook.getSheets()) {
    const layout = live.sheet(worksheet.getSheetId());
    const name = worksheet.getName();
    const filled: CellPlace[] = [];
    worksheet.getCellMatrix().forValue((row, column, cell) => {
      const isValue = cell?.v !== undefined && cell.v !== null && cell.v !== "";
      if (isValue || Boolean(cell?.f) || Boolean(cell?.p)) filled.push({ row, column });
    });
    if (layout === undefined) {
      if (filled.length > 0) left.at("A sheet that was added cannot be saved", name);
      continue;
    }
    for (const { row, column } of filled)
      if (isOutside(layout, live, row, column))
        left.at("A cell beside the sheet's own cannot be saved", `${name}!${columnLetters(column)}${String(row + 1)}`);
  }
}

function isOutside(layout: SheetLayout, live: LiveBook, row: number, column: number): boolean {
  const above = layout.sheet.heading.length;
  switch (layout.kind) {
    case "table": {
      const { lastRow } = live.rowsOf(layout);
      if (row < above) return column !== layout.sheet.frozenColumns;
      return row > lastRow || column === layout.gap || column > layout.lastColumn;
    }
    case "form":
      if (row < above) return column !== 0;
      return column > formColumns.note || row >= layout.firstFieldRow + layout.sheet.fields.length;
    case "notes":
      return column !== 0 || row > above + layout.sheet.lines.length;
    case "free":
      return row < above ? column !== 0 : freeCellAt(layout, { row, column }) === undefined;
  }
}
