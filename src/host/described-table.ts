/** Where a described table stands on a sheet of Excel. Above it: heading lines, group names, units, headers. */
import type { Cell } from "../functions/contract.js";
import type { TableSheet } from "../templates/contract.js";
import type { TableInfo } from "./port.js";
import { columnInfo, unitsOf } from "./records.js";

export function isFormula(cell: Cell): cell is string {
  return typeof cell === "string" && cell.startsWith("=");
}

export function tableOn(tables: readonly TableInfo[], sheet: string): string | undefined {
  return tables.find((table) => table.sheet === sheet)?.name;
}

/** @param name the name that the sheet will have */
export function tableInfo(name: string, sheet: TableSheet): TableInfo {
  const headerRow = sheet.heading.length + 2;
  const columns = [
    ...sheet.columns.map((column, at) => columnInfo(column, at, false)),
    ...sheet.computed.map((column, at) => columnInfo(column, sheet.columns.length + 1 + at, true)),
  ];
  const lastRow = headerRow + Math.max(1, sheet.rows.length);
  return {
    name: sheet.tableName,
    sheet: name,
    headerRow,
    firstRow: headerRow + 1,
    lastRow,
    columns,
    units: unitsOf(columns),
  };
}
