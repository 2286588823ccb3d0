/** A described workbook cell by cell: sheets as Excel's pane makes them, with what only a file can carry. */
import { isCellError } from "../../../functions/contract.js";
import type { BookDescription, FormSheet, NotesSheet } from "../../../templates/contract.js";
import { excelFormula } from "../../described-formula.js";
import { isFormula, tableInfo, tableOn } from "../../described-table.js";
import type { TableInfo } from "../../port.js";
import { freeSheet } from "./described-free.js";
import { describedTable } from "./described-table.js";
import * as look from "./looks.js";
import type { PrintSetup, Validation, WrittenBook, WrittenCell, WrittenName, WrittenSheet } from "./model.js";
import { fixedAreaName, sheetPrefix } from "./place.js";
import { blankSheet, type Put, type SheetBase, validationsOf } from "./sheet-base.js";

export interface BookOptions {
  readonly paper?: PrintSetup["paper"];
  /** Hidden names by which a workbook tells what made it. */
  readonly marks?: Readonly<Record<string, string | number>>;
}

/** Columns of a form: label, value, unit, note. */
const FORM_WIDTHS = [230, 260, 64, 420] as const;
/** Also where wider digits stand in for those of the font: a program that cannot make a single column narrower cuts it. */
const NOTES_WIDTH = 590;

/** @throws Error where a formula names a column that no table has */
export function describedBook(
  { title, sheets }: BookDescription,
  { paper = "A4", marks = {} }: BookOptions = {},
): WrittenBook {
  const tables = sheets.flatMap((sheet) => (sheet.kind === "table" ? [tableInfo(sheet.name, sheet)] : []));
  const names: WrittenName[] = [];
  const written = sheets.map((sheet): WrittenSheet => {
    const put = putter(sheet.name, tables);
    // Beside the columns that stand on every page, or each page would show the first letters of it again.
    const column = sheet.kind === "table" ? sheet.frozenColumns : 0;
    const headings = sheet.heading.map((line, row) => put(row, column, line, row === 0 ? look.title : look.heading));
    const base = { put, headings, paper };
    if (sheet.kind === "notes") return notesSheet(sheet, base);
    if (sheet.kind === "form") return formSheet(sheet, base, names);
    if (sheet.kind === "free") return freeSheet(sheet, base, names);
    const table = tables.find((one) => one.sheet === sheet.name)!;
    return describedTable(sheet, table, base);
  });
  for (const [name, value] of Object.entries(marks))
    names.push({ name, formula: typeof value === "number" ? String(value) : `"${value}"`, hidden: true });
  return { title, sheets: written, names };
}

function putter(sheet: string, tables: readonly TableInfo[]): Put {
  return (row, column, cell, style) => {
    if (cell === undefined || cell === null || cell === "") return { row, column, style };
    if (isCellError(cell)) return { row, column, value: cell.error, style };
    if (!isFormula(cell)) return { row, column, value: cell, style };
    const { formula, unresolved } = excelFormula(cell, tables, tableOn(tables, sheet));
    // A fault of the description, not of a person: better no file than one with holes.
    if (unresolved.length > 0) throw new Error(`${sheet}: ${unresolved.join(", ")} not found in ${cell}`);
    return { row, column, formula, style };
  };
}

function notesSheet({ name, heading, lines }: NotesSheet, { put, headings, paper }: SheetBase): WrittenSheet {
  const first = heading.length + 1;
  const blank = blankSheet(name, paper);
  const rowHeights = new Map(blank.rowHeights);
  const cells = lines.map((line, at) => {
    // A line holds about 85 characters.
    rowHeights.set(first + at, 8 + 17 * Math.max(1, Math.ceil(line.length / 80)));
    return put(first + at, 0, line, look.line);
  });
  return { ...blank, rowHeights, cells: [...headings, ...cells], columns: [{ column: 0, width: NOTES_WIDTH }] };
}

/** Only what is worked out is locked, and the words: values can be typed. Gives each field its name. */
function formSheet(
  { name, heading, fields }: FormSheet,
  { put, headings, paper }: SheetBase,
  names: WrittenName[],
): WrittenSheet {
  const first = heading.length + 1;
  const cells: WrittenCell[] = [...headings];
  const validations: Validation[] = [];
  fields.forEach((field, line) => {
    const row = first + line;
    const { definedName, label, unit, value, note, format } = field;
    if (definedName === undefined) {
      cells.push(put(row, 0, label, look.subheading));
      return;
    }
    const computed = isFormula(value ?? null);
    cells.push(
      put(row, 0, label, look.label),
      put(row, 1, value, look.field(format, computed, format !== undefined || typeof value === "number")),
      put(row, 2, unit, look.muted),
      put(row, 3, note, { ...look.muted, wrap: true }),
    );
    const area = { startRow: row, endRow: row, startColumn: 1, endColumn: 1 };
    names.push({ name: definedName, formula: `${sheetPrefix(name)}${fixedAreaName(area)}` });
    validations.push(...validationsOf(field, area));
  });
  const blank = blankSheet(name, paper);
  const rowHeights = new Map(blank.rowHeights);
  fields.forEach(({ note = "", value, format }, line) => {
    // A line of a note holds about 70 characters, one of a value 40.
    const words = typeof value === "string" && format === undefined && !isFormula(value) ? value : "";
    const lines = Math.max(Math.ceil(note.length / 70), Math.ceil(words.length / 40));
    if (lines > 1) rowHeights.set(first + line, 8 + 16 * lines);
  });
  return {
    ...blank,
    rowHeights,
    cells,
    columns: FORM_WIDTHS.map((width, column) => ({ column, width })),
    validations,
    frozen: { rows: 1, columns: 0 },
    isProtected: true,
    print: { ...blank.print, repeatedRows: 1 },
  };
}
