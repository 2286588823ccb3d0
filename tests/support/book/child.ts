/** Reads descriptions of books as JSON, works them out in the engine without a screen, and writes what every sheet holds. */
import "@univerjs/engine-formula/facade";
import "@univerjs/sheets/facade";
import "@univerjs/sheets-formula/facade";
import { readFileSync } from "node:fs";
import { type ICellData, type IWorksheetData, LocaleType, LogLevel, Univer, UniverInstanceType } from "@univerjs/core";
import { FUniver } from "@univerjs/core/facade";
import { FormulaDataModel, UniverFormulaEnginePlugin } from "@univerjs/engine-formula";
import { UniverSheetsPlugin } from "@univerjs/sheets";
import { UniverSheetsFormulaPlugin } from "@univerjs/sheets-formula";
import { catalogue } from "../../../src/functions/catalogue.js";
import type { Cell } from "../../../src/functions/contract.js";
import { equipEngine } from "../../../src/host/embedded/equip.js";
import { type BookLayout, formColumns, layOut, type SheetLayout } from "../../../src/page/book/layout.js";
import { resolveFormula } from "../../../src/page/book/resolve.js";
import type { BookDescription } from "../../../src/templates/contract.js";
import type { Value, WorkedSheet } from "./worked.js";

void work(JSON.parse(readFileSync(0, "utf8")) as BookDescription[]);

async function work(books: readonly BookDescription[]): Promise<void> {
  const worked: WorkedSheet[][] = [];
  for (const book of books) worked.push(await workOut(layOut(book)));
  process.stdout.write(JSON.stringify(worked), () => process.exit(0));
}

/** An engine of its own for each book. */
async function workOut(layout: BookLayout): Promise<WorkedSheet[]> {
  const locales = { [LocaleType.EN_US]: {} };
  const univer = new Univer({ locale: LocaleType.EN_US, locales, logLevel: LogLevel.ERROR });
  univer.registerPlugin(UniverFormulaEnginePlugin);
  univer.registerPlugin(UniverSheetsPlugin);
  univer.registerPlugin(UniverSheetsFormulaPlugin);
  const injector = univer.__getInjector();
  const api = FUniver.newAPI(univer);
  equipEngine(injector, catalogue);
  const sheets = Object.fromEntries(layout.sheets.map((sheet) => [sheet.id, sheetData(sheet, layout)]));
  const id = "book";
  univer.createUnit(UniverInstanceType.UNIVER_SHEET, { id, sheetOrder: layout.sheets.map((one) => one.id), sheets });
  const formulas = api.getFormula();
  const ended = formulas.onCalculationEnd();
  formulas.executeCalculation();
  await ended;
  const spilled = injector.get(FormulaDataModel).getArrayFormulaCellData()[id];
  const worked = layout.sheets.map((sheet) => {
    const worksheet = api.getActiveWorkbook()?.getSheetBySheetId(sheet.id);
    return read(
      sheet,
      (row, column) =>
        worksheet?.getRange(row, column).getRawValue() ?? spilled?.[sheet.id]?.[row]?.[column]?.v ?? null,
    );
  });
  univer.dispose();
  return worked;
}

/** The cells alone: what the page puts around them has its own tests. */
function sheetData(sheet: SheetLayout, layout: BookLayout): Partial<IWorksheetData> {
  const cells: Record<number, Record<number, ICellData>> = {};
  const put = (row: number, column: number, value: Cell | undefined): void => {
    const isFormula = typeof value === "string" && value.startsWith("=");
    if (isFormula) (cells[row] ??= {})[column] = { f: resolved(value, sheet.name, row, layout) };
    else if (value !== undefined && value !== null && value !== "")
      (cells[row] ??= {})[column] = { v: value as string | number };
  };
  sheet.sheet.heading.forEach((line, row) => {
    put(row, 0, line);
  });
  if (sheet.kind === "form") {
    sheet.sheet.fields.forEach((field, line) => {
      put(sheet.firstFieldRow + line, formColumns.value, field.value);
    });
  }
  if (sheet.kind === "table") {
    for (const { index, computed } of sheet.columns) {
      if (computed !== undefined) put(sheet.firstRow, index, computed.formula);
      else
        sheet.sheet.rows.forEach((row, at) => {
          put(sheet.firstRow + at, index, row[index]);
        });
    }
  }
  return { id: sheet.id, name: sheet.name, cellData: cells, rowCount: 4000, columnCount: 200 };
}

function resolved(formula: string, sheetName: string, row: number, layout: BookLayout): string {
  const result = resolveFormula(formula, { sheetName, row }, layout, (table) => table);
  if (result.unresolved.length > 0) throw new Error(`${sheetName}: ${result.unresolved.join(", ")} not found`);
  return result.formula;
}

function read(sheet: SheetLayout, value: (row: number, column: number) => Value): WorkedSheet {
  const heading = sheet.sheet.heading.map((_, row) => value(row, 0));
  const fields: Record<string, Value> = {};
  const columns: Record<string, Value[]> = {};
  if (sheet.kind === "form") {
    sheet.sheet.fields.forEach(({ definedName }, line) => {
      if (definedName !== undefined) fields[definedName] = value(sheet.firstFieldRow + line, formColumns.value);
    });
  }
  if (sheet.kind === "table") {
    const rows = Array.from({ length: sheet.lastRow - sheet.firstRow + 1 }, (_, at) => sheet.firstRow + at);
    for (const { column, index } of sheet.columns) columns[column.key] = rows.map((row) => value(row, index));
  }
  return { name: sheet.name, heading, fields, columns };
}
