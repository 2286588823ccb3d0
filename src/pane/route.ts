/** What of a workbook is a route, and what its rows say: read by the keys of the template's columns. */
import type { Cell } from "../functions/contract.js";
import { isCellError } from "../functions/contract.js";
import type { RowRecord, SheetInfo, TableInfo } from "../host/port.js";
import { gradeOf } from "../host/tones.js";

/** Columns that make a table a route. */
const marks = ["asset_id", "status", "remarks", "grade_found"];

export function routeTableOf(tables: readonly TableInfo[], sheets: readonly SheetInfo[]): TableInfo | undefined {
  const routes = tables.filter(({ columns }) => marks.every((mark) => columns.some(({ key }) => key === mark)));
  const front = sheets.find(({ active }) => active)?.name;
  return routes.find(({ sheet }) => sheet === front) ?? routes[0];
}

/** A cell as words; "" where it is empty or an error. */
export function words(cell: Cell | undefined): string {
  return cell === null || cell === undefined || isCellError(cell) ? "" : String(cell);
}

export function numberOf(cell: Cell | undefined): number | undefined {
  return typeof cell === "number" ? cell : undefined;
}

/** Whether anything was typed in the row. */
export function isFilled(row: RowRecord, table: TableInfo): boolean {
  return table.columns.some(({ computed, key }) => !computed && words(row[key]) !== "");
}

export function foundGrade(row: RowRecord): number | undefined {
  return gradeOf(row.grade_found);
}

/** "MSB-Q3, feeder to hall 2": how a person calls a row. */
export function nameOf(row: RowRecord): string {
  return [words(row.asset_id), words(row.component)].filter((part) => part !== "").join(", ");
}
