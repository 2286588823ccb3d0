/** Tables as both hosts tell them: cells by the keys of their columns. */
import type { Cell } from "../functions/contract.js";
import type { Units } from "../functions/units.js";
import type { ColumnDescription, ComputedColumn } from "../templates/contract.js";
import type { CellAt, ColumnInfo, RowRecord, SelectedRow, TableInfo } from "./port.js";

export function columnInfo(
  column: ColumnDescription & Partial<Pick<ComputedColumn, "grade">>,
  at: number,
  computed: boolean,
): ColumnInfo {
  const { key, header, unit, group, folded, choices, note, grade } = column;
  return {
    key,
    header,
    computed,
    column: at,
    group,
    ...(unit === undefined ? {} : { unit }),
    ...(grade === undefined ? {} : { grade }),
    ...(folded === undefined ? {} : { folded }),
    ...(choices === undefined ? {} : { choices }),
    ...(note === undefined ? {} : { note }),
  };
}

/** `cell` gives what stands in a column of the sheet. An empty text is an empty cell. */
export function recordOf(columns: readonly ColumnInfo[], cell: (column: number) => Cell | undefined): RowRecord {
  return Object.fromEntries(columns.map(({ key, column }) => [key, emptyAsNull(cell(column))]));
}

export function emptyAsNull(cell: Cell | undefined): Cell {
  return cell === undefined || cell === "" ? null : cell;
}

export function unitsOf(columns: readonly ColumnInfo[]): Units {
  return columns.some(({ unit }) => unit === "°F") ? "F" : "C";
}

/** °F where any table has it. */
export function bookUnits(tables: readonly TableInfo[]): Units {
  return tables.some(({ units }) => units === "F") ? "F" : "C";
}

/** The table whose body a cell stands in, computed columns included. */
export function tableAt(tables: readonly TableInfo[], at: CellAt): TableInfo | undefined {
  return tables.find(
    ({ sheet, firstRow, lastRow, columns }) =>
      sheet === at.sheet &&
      at.row >= firstRow &&
      at.row <= lastRow &&
      at.column >= Math.min(...columns.map(({ column }) => column)) &&
      at.column <= Math.max(...columns.map(({ column }) => column)),
  );
}

export function selectedRow(table: TableInfo, row: number, cell: (column: number) => Cell | undefined): SelectedRow {
  return { table: table.name, index: row - table.firstRow, record: recordOf(table.columns, cell) };
}
