/** The typed part of each table sheet as a table of the grid's table plugin. */
import type { IResources } from "@univerjs/core";
import { type BookLayout, tableSheets } from "./layout.js";
import { lightTones } from "../../host/tones.js";

/** A table style that paints nothing but its buttons: the described cells carry their own looks. */
export const calmTable = {
  name: "greybody",
  style: { headerRowStyle: { cl: { rgb: lightTones.accent }, bg: { rgb: lightTones.paper } } },
};

/** The shape in which the plugin keeps its tables in a saved book. */
export function tableResource(layout: BookLayout): IResources[number] {
  const bySheet: Record<string, unknown> = {};
  for (const table of tableSheets(layout)) {
    bySheet[table.id] = {
      tables: [
        {
          id: table.tableId,
          name: table.sheet.tableName,
          range: { startRow: table.headerRow, endRow: table.lastRow, startColumn: 0, endColumn: table.lastTyped },
          options: { showHeader: true, showFooter: false, tableStyleId: calmTable.name },
          filters: {},
          columns: table.sheet.columns.map((column) => ({
            id: column.key,
            displayName: column.header,
            dataType: column.format === undefined ? "string" : "number",
            formula: "",
            meta: {},
            style: {},
          })),
          meta: {},
        },
      ],
      tableFilteredOutRows: [],
    };
  }
  return { name: "SHEET_TABLE_PLUGIN", data: JSON.stringify(bySheet) };
}
