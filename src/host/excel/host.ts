/** The host port over Excel's own API: one context an operation, load then sync. */
/// <reference types="office-js" />
import { isCellError, type Grid } from "../../functions/contract.js";
import type { CellAt, FieldInfo, HostPort, SelectedCell, TableInfo, WriteOptions } from "../port.js";
import { bookUnits, emptyAsNull, recordOf, selectedRow, tableAt } from "../records.js";
import { parseReference } from "../reference.js";
import { refused } from "../result.js";
import { localAddress, parseAddress } from "./address.js";
import { answer, refuse } from "./answer.js";
import { cellOf, readCells } from "./cells.js";
import { enterAgain } from "./enter-again.js";
import { explain, stillSays } from "./explain.js";
import { fold, folding } from "./folding.js";
import { excelFormula } from "../described-formula.js";
import { makeBook } from "./make-book.js";
import type { KeptMessages } from "./messages.js";
import { onExcel } from "./events.js";
import { loadBoxes, placePictures } from "./pictures.js";
import { loadTables } from "./tables.js";
import { onTheme, theme } from "./theme.js";

/** @param blankErrors whether our errors show as an empty text */
export function excelHost(kept: KeptMessages, blankErrors: boolean): HostPort {
  return {
    host: "excel",
    newBookIs: "added",
    canUndo: false,
    sheets: () =>
      answer(async (context) => {
        const { worksheets, tables } = context.workbook;
        worksheets.load("items/name");
        tables.load("items/name, items/worksheet/name");
        const active = worksheets.getActiveWorksheet();
        active.load("name");
        await context.sync();
        return worksheets.items.map(({ name }) => ({
          name,
          active: name === active.name,
          tables: tables.items.filter((table) => table.worksheet.name === name).map((table) => table.name),
        }));
      }),
    tables: () => answer(async (context) => (await loadTables(context)).tables),
    readTable: (name) =>
      answer(async (context) => {
        const { tables } = await loadTables(context);
        const table = tables.find((one) => one.name.toLowerCase() === name.toLowerCase());
        if (table === undefined) return refuse("missing", `There is no table ${name} in this workbook.`);
        const columns = table.columns.map(({ column }) => column);
        const [startColumn, endColumn] = [Math.min(...columns), Math.max(...columns)];
        const { sheet, firstRow, lastRow } = table;
        const range = { sheet, startRow: firstRow, endRow: lastRow, startColumn, endColumn };
        const rows = await readCells(context, range, kept);
        return { table, rows: rows.map((row) => recordOf(table.columns, (column) => row[column - startColumn])) };
      }),
    fields: () => answer((context) => readFields(context, kept)),
    read: (reference) => answer((context) => readReference(context, reference, kept)),
    selected: () => answer((context) => selectedCell(context, kept, blankErrors)),
    units: () => answer(async (context) => bookUnits((await loadTables(context)).tables)),
    theme,
    folded: () =>
      answer(async (context) => {
        const { sheet, columns, hidden } = await folding(context);
        return { sheet, headers: columns.map(({ header }) => header), hidden };
      }),
    onSelection: (listener) =>
      onExcel(listener, (context, heard) => [
        context.workbook.onSelectionChanged.add(heard),
        context.workbook.worksheets.onActivated.add(heard),
      ]),
    onRecalculated: (listener) => {
      const stop = onExcel(listener, (context, heard) => [context.workbook.worksheets.onCalculated.add(heard)]);
      const forget = kept.onChange(listener);
      return () => {
        stop();
        forget();
      };
    },
    onTheme,
    goTo: (cell) =>
      answer(async (context) => {
        const sheet = context.workbook.worksheets.getItemOrNullObject(cell.sheet);
        sheet.load("name");
        await context.sync();
        if (sheet.isNullObject) refuse("missing", `There is no sheet ${cell.sheet}.`);
        const range = sheet.getRange(localAddress(cell));
        range.load("columnHidden");
        await context.sync();
        // What is hidden cannot be gone to.
        if (range.columnHidden) range.columnHidden = false;
        sheet.activate();
        range.select();
        await context.sync();
      }),
    makeBook: (description) => answer((context) => makeBook(context, description)),
    insertFormula: (formula, options) => answer((context) => insert(context, formula, options)),
    fold: (hide) => answer((context) => fold(context, hide)),
    enterAgain: () => answer(enterAgain),
    pictureBoxes: () => answer(async (context) => (await loadBoxes(context)).map(({ info }) => info)),
    placePictures: (pictures, keeps) => answer((context) => placePictures(context, pictures, keeps)),
    undo: () =>
      Promise.resolve(refused("unable", "In Excel a step is taken back by Ctrl+Z, on a Mac Command+Z, in the sheet.")),
  };
}

async function readFields(context: Excel.RequestContext, kept: KeptMessages): Promise<FieldInfo[]> {
  const { names } = context.workbook;
  names.load("items/name, items/type, items/value, items/visible");
  const { memory } = await loadTables(context);
  const places = names.items.flatMap((item) => {
    const at = item.visible && item.type === "Range" ? parseAddress(String(item.value).replace(/^=/, "")) : undefined;
    // A block of cells is no single value.
    if (at === undefined || /:[^!]*$/.test(String(item.value))) return [];
    const range = context.workbook.worksheets.getItem(at.sheet).getRange(localAddress(at));
    range.load("values");
    return [{ name: item.name, at, range }];
  });
  await context.sync();
  const sheets = [...new Set(places.map(({ at }) => at.sheet))];
  return places
    .map(({ name, at, range }) => ({
      name,
      label: memory.fields[name]?.label ?? "",
      at,
      value: cellOf(range.values[0]?.[0], at, kept),
    }))
    .sort((one, other) => sheets.indexOf(one.at.sheet) - sheets.indexOf(other.at.sheet) || one.at.row - other.at.row);
}

async function readReference(context: Excel.RequestContext, reference: string, kept: KeptMessages): Promise<Grid> {
  const active = context.workbook.worksheets.getActiveWorksheet();
  active.load("name");
  const sheets = context.workbook.worksheets;
  sheets.load("items/name");
  const { tables } = await loadTables(context);
  const [, tableName, key] = /^(\w+)\[([^[\]#@]+)\]$/.exec(reference.trim()) ?? [];
  if (tableName !== undefined) {
    const table = tables.find(({ name }) => name.toLowerCase() === tableName.toLowerCase());
    const column = table?.columns.find((one) => [one.key, one.header].some((name) => same(name, key)));
    if (table === undefined || column === undefined) return refuse("missing", `Not found: ${reference}.`);
    const { sheet, firstRow, lastRow } = table;
    const at = { startColumn: column.column, endColumn: column.column };
    return readCells(context, { sheet, startRow: firstRow, endRow: lastRow, ...at }, kept);
  }
  const range = parseReference(reference);
  if (range === undefined)
    return refuse("invalid", `${reference} is no cell and no range: write it as B14, B3:B40 or Job!B4.`);
  const sheet = range.sheet === undefined ? active : sheets.items.find(({ name }) => same(name, range.sheet));
  if (sheet === undefined) return refuse("missing", `There is no sheet ${range.sheet ?? ""}.`);
  return readCells(context, { ...range, sheet: sheet.name }, kept);
}

async function selectedCell(
  context: Excel.RequestContext,
  kept: KeptMessages,
  blankErrors: boolean,
): Promise<SelectedCell> {
  const cell = context.workbook.getActiveCell();
  cell.load("address, values, formulas, text");
  const line = cell.getEntireRow().getUsedRangeOrNullObject(true);
  line.load("columnIndex, values");
  const { names } = context.workbook;
  names.load("items/name, items/type, items/value, items/visible");
  let anchor: Excel.Range | undefined;
  const { tables, memory } = await loadTables(context, () => {
    const formulaAt = kept.at(placeOf(cell))?.formulaAt;
    if (formulaAt === undefined) return;
    anchor = context.workbook.worksheets.getItem(formulaAt.sheet).getRange(localAddress(formulaAt));
    anchor.load("formulas");
  });
  const at = placeOf(cell);
  const table = tableAt(tables, at);
  const column = table?.columns.find((one) => one.column === at.column);
  const name = names.items.find(
    ({ type, value }) => type === "Range" && isSame(parseAddress(String(value).replace(/^=/, "")), at),
  );
  const field = name && memory.fields[name.name];
  const formula: unknown = cell.formulas[0]?.[0];
  const said = kept.at(at);
  const stands = said !== undefined && stillSays(said, anchor?.formulas[0]?.[0]);
  const value = cellOf(cell.values[0]?.[0], at, kept);
  const message = explain(cell.values[0]?.[0], formula, stands ? said : undefined, blankErrors);
  const cells: unknown[] = line.isNullObject ? [] : (line.values[0] ?? []);
  return {
    at,
    address: localAddress(at),
    header: column?.header ?? field?.label,
    unit: column?.unit ?? field?.unit,
    value: emptyAsNull(value),
    shown: String(cell.text[0]?.[0] ?? ""),
    formula: typeof formula === "string" && formula.startsWith("=") ? formula : undefined,
    message: message ?? (isCellError(value) ? value.message : undefined),
    row: table && selectedRow(table, at.row, (c) => cellOf(cells[c - line.columnIndex], { ...at, column: c }, kept)),
  };
}

async function insert(
  context: Excel.RequestContext,
  formula: string,
  options: WriteOptions | undefined,
): Promise<CellAt> {
  if (!formula.startsWith("=")) refuse("invalid", "A formula begins with =.");
  const cell = context.workbook.getActiveCell();
  cell.load("address, values, formulas");
  const { tables } = await loadTables(context);
  const at = placeOf(cell);
  const table: TableInfo | undefined = tableAt(tables, at);
  const column = table?.columns.find((one) => one.column === at.column);
  if (column?.computed === true)
    refuse("locked", `"${column.header}" is worked out from what is typed at the left, so it cannot be changed here.`);
  const resolved = excelFormula(formula, tables, table?.name);
  if (resolved.unresolved.length > 0) refuse("invalid", `Not found: ${resolved.unresolved.join(", ")}.`);
  const isFree = [cell.values[0]?.[0], cell.formulas[0]?.[0]].every((held) => held === "" || held === null);
  if (!isFree && options?.overwrite !== true) refuse("occupied", `${localAddress(at)} holds something already.`);
  cell.formulas = [[resolved.formula]];
  await context.sync();
  return at;
}

function placeOf(cell: Excel.Range): CellAt {
  return parseAddress(cell.address) ?? refuse("failed", `Excel told an address that cannot be read: ${cell.address}.`);
}

function isSame(one: CellAt | undefined, other: CellAt): boolean {
  return one?.row === other.row && one.column === other.column && same(one.sheet, other.sheet);
}

function same(one: string, other: string | undefined): boolean {
  return one.toLowerCase() === other?.toLowerCase();
}
