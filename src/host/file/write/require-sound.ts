/** What Excel demands of a workbook and would call damaged without: a fault of the description is told before a file is made. */
import { parseReference } from "../../reference.js";
import type { Area, WrittenBook, WrittenSheet, WrittenTable } from "./model.js";
import { cellName } from "./place.js";

/** Letters first, then letters, digits, points and underscores; not the name of a cell, nor R and C. */
const NAME = /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u;

/** @throws Error that says what is wrong where */
export function requireSound({ sheets, names }: WrittenBook): void {
  if (sheets.length === 0) throw new Error("A workbook needs a sheet.");
  const bookNames: string[] = [];
  for (const { name } of sheets) requireSheetName(name);
  requireUnique(
    sheets.map(({ name }) => name),
    "sheets",
  );
  for (const sheet of sheets) {
    requireCells(sheet);
    for (const table of sheet.tables) {
      requireName(table.name);
      bookNames.push(table.name);
      requireTable(sheet, table);
    }
  }
  for (const { name } of names) {
    requireName(name);
    bookNames.push(name);
  }
  requireUnique(bookNames, "names");
}

function requireSheetName(name: string): void {
  const isBad =
    name === "" || name.length > 31 || /[[\]:*?/\\]/.test(name) || name.startsWith("'") || name.endsWith("'");
  if (isBad || name.toLowerCase() === "history") throw new Error(`Excel takes no sheet of the name "${name}".`);
}

function requireName(name: string): void {
  const isCell = parseReference(name) !== undefined || /^R\d*C?\d*$|^C\d*$/i.test(name);
  if (!NAME.test(name) || name.length > 255 || isCell) throw new Error(`Excel takes no name "${name}".`);
}

function requireUnique(names: readonly string[], what: string): void {
  const seen = new Set<string>();
  for (const name of names) {
    if (seen.has(name.toLowerCase())) throw new Error(`Two ${what} are called "${name}".`);
    seen.add(name.toLowerCase());
  }
}

function requireCells({ name, cells }: WrittenSheet): void {
  const seen = new Set<string>();
  for (const { row, column } of cells) {
    const address = cellName(row, column);
    if (seen.has(address)) throw new Error(`${name}!${address} is written twice.`);
    seen.add(address);
  }
}

/** A header cell holds its column's name, each name once; a table has a row to type into. */
function requireTable(sheet: WrittenSheet, { name, area, columns }: WrittenTable): void {
  requireUnique(columns, `columns of the table ${name}`);
  if (columns.length !== area.endColumn - area.startColumn + 1 || area.endRow <= area.startRow)
    throw new Error(`The table ${name} has another size than its columns and rows.`);
  columns.forEach((column, at) => {
    const header = sheet.cells.find((cell) => cell.row === area.startRow && cell.column === area.startColumn + at);
    if (column === "" || header?.value !== column)
      throw new Error(`The header of ${name} says "${String(header?.value)}" where its column is called "${column}".`);
  });
  for (const other of sheet.tables)
    if (other.name !== name && overlaps(other.area, area)) throw new Error(`${name} lies over ${other.name}.`);
}

function overlaps(a: Area, b: Area): boolean {
  return (
    a.startRow <= b.endRow && a.endRow >= b.startRow && a.startColumn <= b.endColumn && a.endColumn >= b.startColumn
  );
}
