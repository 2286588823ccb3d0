/** Tables and form lines of the open book, as the host port tells them. */
import type { FieldPlace } from "../../host/embedded/grid-access.js";
import type { TableInfo } from "../../host/port.js";
import { columnInfo, unitsOf } from "../../host/records.js";
import { freeBox } from "../book/free-box.js";
import { type BookLayout, formColumns, type FreeLayout } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";

export function tableInfos(book: LiveBook): TableInfo[] {
  return book.tables.map((table) => {
    const { firstRow, lastRow } = book.rowsOf(table);
    const columns = table.columns.map(({ column, index, computed }) =>
      columnInfo(column, index, computed !== undefined),
    );
    return {
      name: table.sheet.tableName,
      sheet: table.name,
      headerRow: firstRow - 1,
      firstRow,
      lastRow,
      columns,
      units: unitsOf(columns),
    };
  });
}

export function fieldPlaces(layout: BookLayout): FieldPlace[] {
  return layout.sheets.flatMap((form) => {
    if (form.kind === "free") return freeFields(form);
    if (form.kind !== "form") return [];
    return form.sheet.fields.flatMap(({ definedName, label, unit }, line) =>
      definedName === undefined
        ? []
        : [
            {
              name: definedName,
              label,
              at: { sheet: form.name, row: form.firstFieldRow + line, column: formColumns.value },
              ...(unit === undefined ? {} : { unit }),
            },
          ],
    );
  });
}

/** Named cells that are typed or shown one by one; a block is no line. */
function freeFields({ name: sheet, sheet: { cells }, first }: FreeLayout): FieldPlace[] {
  return cells.flatMap((cell) => {
    if (cell.name === undefined || (cell.size !== undefined && cell.size.rows * cell.size.columns > 1)) return [];
    const { startRow: row, startColumn: column } = freeBox(cell, first);
    const { name, label = "", unit } = cell;
    return [{ name, label, at: { sheet, row, column }, ...(unit === undefined ? {} : { unit }) }];
  });
}
