/** The rows of a file's table in the order of a description's columns. */
import type { Cell } from "../../functions/contract.js";
import type { Units } from "../../functions/units.js";
import { type BookContents, type ReadColumn, type SheetContents, type TableContents, textOf } from "../contents.js";
import type { ColumnDescription, TableSheet } from "../contract.js";
import { type CellKind, isDay, quantityOf, taken, unitsOfLabel } from "./cells.js";
import type { LeftOut } from "./left.js";
import { sameName } from "./which.js";

export interface Conversion {
  /** The units of the file, where a column does not say its own. */
  readonly from: Units;
  readonly to: Units;
}

/** @param metric the same sheet of a book in °C, whose units tell what is measured */
export function refillTable(
  sheet: TableSheet,
  metric: TableSheet,
  contents: BookContents,
  conversion: Conversion,
  left: LeftOut,
): TableSheet {
  const table = contents.tables.find(({ name }) => sameName(name, sheet.tableName));
  if (table === undefined) {
    left.say(`There is no table ${sheet.tableName} in the file: the sheet ${sheet.name} is as in a new workbook.`);
    return sheet;
  }
  const from = contents.sheets.find(({ name }) => name === table.sheet)!;
  const sources = sheet.columns.map((column, at) => {
    const source = table.columns.find(({ header }) => sameName(header, column.header) || sameName(header, column.key));
    const metricUnit = metric.columns[at]?.unit;
    return { column, source, kind: kindOf(column, metricUnit, source, sheet.tableName, contents, conversion, left) };
  });
  const absent = sources.filter(({ source }) => source === undefined).map(({ column }) => column.header);
  if (absent.length > 0)
    left.say(`The table ${table.name} of the file has no column ${absent.join(", ")}: left empty.`);
  const isPlain = ({ plainWhere }: ColumnDescription, row: number): boolean => {
    const other = sources.find(({ column }) => column.key === plainWhere?.key)?.source;
    return other !== undefined && sameName(textOf(from.at(row, other.column).value), plainWhere?.is ?? "");
  };
  const rows: Cell[][] = [];
  for (let row = table.firstRow; row <= table.lastRow; row++) {
    rows.push(
      sources.map(({ column, source, kind }) => {
        if (source === undefined) return null;
        const place = `${sheet.name}, ${column.header} in row ${row + 1}`;
        const own = isPlain(column, row) ? { ...kind, quantity: undefined } : kind;
        return taken(from.at(row, source.column), own, place, left);
      }),
    );
  }
  tellOthers(sheet, table, from, left);
  return { ...sheet, rows };
}

function kindOf(
  { header, format }: ColumnDescription,
  metricUnit: string | undefined,
  source: ReadColumn | undefined,
  tableName: string,
  { dayShift }: BookContents,
  { from, to }: Conversion,
  left: LeftOut,
): CellKind {
  const quantity = quantityOf(metricUnit);
  const shift = isDay(format) ? dayShift : 0;
  const above = source?.above.trim() ?? "";
  if (quantity === undefined || above === "") return { quantity, from, to, dayShift: shift };
  const own = unitsOfLabel(quantity, above);
  if (own === undefined)
    left.at(
      `Above a column stands a unit that it cannot be in; its numbers were taken as ${from === "F" ? "°F and ft" : "°C and m"}`,
      `${tableName}, ${header} ("${above}")`,
    );
  return { quantity, from: own ?? from, to, dayShift: shift };
}

/** Columns that are not the template's, rows below the table, and what was typed over a worked-out column. */
function tellOthers(sheet: TableSheet, table: TableContents, from: SheetContents, left: LeftOut): void {
  const isFilled = ({ column }: ReadColumn): boolean => {
    for (let row = table.firstRow; row <= table.lastRow; row++)
      if (textOf(from.at(row, column).value) !== "") return true;
    return false;
  };
  const isOf = (columns: readonly ColumnDescription[], { header }: ReadColumn): boolean =>
    columns.some((one) => sameName(one.header, header) || sameName(one.key, header));
  const others = [
    ...table.columns.filter((column) => !isOf(sheet.columns, column)),
    ...table.beside.filter((column) => !isOf(sheet.computed, column)),
  ].filter(isFilled);
  for (const { header } of others)
    left.at("A column is not one of the template's and was left out", `${sheet.name}, ${header}`);
  for (const { header, column } of table.beside.filter((one) => isOf(sheet.computed, one))) {
    const { value, isWorkedOut } = from.at(table.firstRow, column);
    const isBlocked = typeof value === "object" && value !== null && value.error === "#SPILL!";
    if ((!isWorkedOut && textOf(value) !== "") || isBlocked)
      left.at(
        "Something was typed over a column that the sheet works out: it is worked out again",
        `${sheet.name}, ${header}`,
      );
  }
  let stray = 0;
  const typed = table.columns.filter((column) => isOf(sheet.columns, column));
  for (let row = table.lastRow + 1; row < from.rows; row++)
    if (typed.some(({ column }) => textOf(from.at(row, column).value) !== "")) stray++;
  if (stray > 0)
    left.say(
      `${sheet.name}: ${stray} filled ${stray === 1 ? "row stands" : "rows stand"} below the table ${table.name} and no longer ${stray === 1 ? "belongs" : "belong"} to it: left out. In Excel draw the table's corner down over ${stray === 1 ? "it" : "them"} first.`,
    );
}
