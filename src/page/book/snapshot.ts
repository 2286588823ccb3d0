/** A described book as the grid's own data. */
import {
  BooleanNumber,
  CellValueType,
  type ICellData,
  type IStyleData,
  type IWorkbookData,
  type IWorksheetData,
  LocaleType,
} from "@univerjs/core";
import { type Cell, isCellError } from "../../functions/contract.js";
import type { Measure } from "./header.js";
import { fillFree } from "./free.js";
import type { BookLayout, SheetLayout } from "./layout.js";
import { resolveFormula } from "./resolve.js";
import type { SheetWriter } from "./writer.js";
import { fillForm, fillNotes, fillTable } from "./sheets.js";
import { bookStyle, headingStyle, titleStyle } from "./styles.js";
import { tableResource } from "./table.js";

export const bookId = "greybody-book";
const spareRows = 2000;
const spareColumns = 40;

export function bookSnapshot(layout: BookLayout, measure: Measure): IWorkbookData {
  const styles: Record<string, IStyleData> = {};
  const styleIds = new Map<string, string>();
  const styleId = (style: IStyleData): string => {
    const key = JSON.stringify(style);
    const known = styleIds.get(key);
    if (known !== undefined) return known;
    const id = `s${String(styleIds.size + 1)}`;
    styleIds.set(key, id);
    styles[id] = style;
    return id;
  };
  const sheets: Record<string, Partial<IWorksheetData>> = {};
  for (const sheet of layout.sheets) sheets[sheet.id] = sheetData(sheet, layout, measure, styleId);
  return {
    id: bookId,
    name: layout.book.title,
    appVersion: "",
    locale: LocaleType.EN_US,
    styles,
    sheetOrder: layout.sheets.map((sheet) => sheet.id),
    sheets,
    defaultStyle: bookStyle,
    resources: [tableResource(layout)],
  };
}

function sheetData(
  sheet: SheetLayout,
  layout: BookLayout,
  measure: Measure,
  styleId: (style: IStyleData) => string,
): Partial<IWorksheetData> {
  const cells: Record<number, Record<number, ICellData>> = {};
  const set = (row: number, column: number, cell: ICellData): void => {
    (cells[row] ??= {})[column] = cell;
  };
  const writer: SheetWriter = {
    measure,
    put: (row, column, value, style) => {
      set(row, column, { ...cellData(value, { sheetName: sheet.name, row }, layout), s: styleId(style) });
    },
    words: (row, column, text, style) => {
      set(row, column, { v: text, t: CellValueType.STRING, s: styleId(style) });
    },
  };
  const beside = sheet.kind === "table" ? sheet.sheet.frozenColumns : 0;
  sheet.sheet.heading.forEach((line, row) => {
    writer.put(row, beside, line, row === 0 ? titleStyle : headingStyle);
  });
  const shape = fill(sheet, writer);
  return {
    id: sheet.id,
    name: sheet.name,
    cellData: cells,
    defaultRowHeight: 24,
    defaultColumnWidth: 88,
    showGridlines: BooleanNumber.TRUE,
    gridlinesColor: "#e9e5da",
    ...shape,
    rowCount: (shape.rowCount ?? 0) + spareRows,
    columnCount: (shape.columnCount ?? 0) + spareColumns,
    rowData: { 0: { h: 32 }, ...shape.rowData },
  };
}

function fill(sheet: SheetLayout, writer: SheetWriter): Partial<IWorksheetData> {
  switch (sheet.kind) {
    case "form":
      return fillForm(sheet, writer);
    case "notes":
      return fillNotes(sheet, writer);
    case "table":
      return fillTable(sheet, writer);
    case "free":
      return fillFree(sheet, writer);
  }
}

function cellData(value: Cell | undefined, place: { sheetName: string; row: number }, layout: BookLayout): ICellData {
  if (value === null || value === undefined || value === "") return {};
  if (typeof value === "number") return { v: value, t: CellValueType.NUMBER };
  if (typeof value === "boolean") return { v: value ? 1 : 0, t: CellValueType.BOOLEAN };
  if (isCellError(value)) return { v: value.error, t: CellValueType.STRING };
  if (!value.startsWith("=")) return { v: value, t: CellValueType.STRING };
  const { formula, unresolved } = resolveFormula(value, place, layout, (table) => table);
  // A fault of the description, not of a person: better no book than one with holes.
  if (unresolved.length > 0) throw new Error(`${place.sheetName}: ${unresolved.join(", ")} not found in ${value}`);
  return { f: formula };
}
