/** Queues what fills a new sheet; nothing is sent before the caller syncs. It looks as the page does in light. */
/// <reference types="office-js" />
import { isCellError, type Cell } from "../../functions/contract.js";
import type { ColumnDescription, FormSheet, NotesSheet, TableSheet } from "../../templates/contract.js";
import type { TableInfo } from "../port.js";
import { excelFormula } from "../described-formula.js";
import { isFormula, tableOn } from "../described-table.js";
import { lightTones as tones } from "../tones.js";
import type { SheetPlan } from "./plan.js";

/** Pixels of a description in the points that Excel takes. */
export const points = 0.75;

/** The lines above, and the formulas of the computed columns: both name what the other sheets hold. */
export function fillFormulas(sheet: Excel.Worksheet, plan: SheetPlan, tables: readonly TableInfo[]): void {
  const beside = plan.sheet.kind === "table" ? plan.sheet.frozenColumns : 0;
  plan.sheet.heading.forEach((line, row) => {
    const cell = sheet.getRangeByIndexes(row, beside, 1, 1);
    cell.formulas = [
      [isFormula(line) ? excelFormula(line, tables, tableOn(tables, plan.name)).formula : written(line)],
    ];
    cell.format.font.bold = row === 0;
    cell.format.font.color = row === 0 ? tones.ink : tones.muted;
  });
  if (plan.sheet.kind !== "table") return;
  const { computed, columns } = plan.sheet;
  const table = tables.find((one) => one.sheet === plan.name);
  computed.forEach(({ formula }, at) => {
    const cell = sheet.getRangeByIndexes(table?.firstRow ?? 0, columns.length + 1 + at, 1, 1);
    cell.formulas = [[excelFormula(formula, tables, table?.name).formula]];
  });
}

export function fillForm(
  sheet: Excel.Worksheet,
  form: FormSheet,
  { first }: SheetPlan,
  names: Excel.NamedItemCollection,
): void {
  form.fields.forEach((field, line) => {
    const row = first + line;
    const at = (column: number): Excel.Range => sheet.getRangeByIndexes(row, column, 1, 1);
    at(0).values = [[written(field.label)]];
    if (field.definedName === undefined) {
      at(0).format.font.bold = true;
      at(0).format.font.color = tones.accent;
      return;
    }
    const value = at(1);
    if (field.format !== undefined) value.numberFormat = [[field.format]];
    value.formulas = [[written(field.value ?? null)]];
    value.format.fill.color = isFormula(field.value ?? null) ? tones.computed : tones.input;
    offer(value, field.choices);
    names.add(field.definedName, value);
    at(2).values = [[written(field.unit ?? null)]];
    at(3).values = [[written(field.note ?? null)]];
    at(2).format.font.color = tones.muted;
    at(3).format.font.color = tones.muted;
  });
  [200, 260, 64, 420].forEach((width, column) => {
    sheet.getRangeByIndexes(0, column, 1, 1).format.columnWidth = width * points;
  });
}

export function fillNotes(sheet: Excel.Worksheet, notes: NotesSheet, { first }: SheetPlan): void {
  if (notes.lines.length === 0) return;
  const lines = sheet.getRangeByIndexes(first, 0, notes.lines.length, 1);
  lines.values = notes.lines.map((line) => [written(line)]);
  lines.format.wrapText = true;
  lines.format.columnWidth = 760 * points;
}

/** Everything but the formulas, which want all tables and names of the book first. */
export function fillTable(sheet: Excel.Worksheet, described: TableSheet, info: TableInfo): void {
  const { headerRow, firstRow, lastRow } = info;
  const width = described.columns.length;
  const rows = lastRow - firstRow + 1;
  const places: readonly ColumnDescription[] = [...described.columns, ...described.computed];
  let group = "";
  places.forEach((column, index) => {
    const computed = index >= width;
    const at = computed ? index + 1 : index;
    const top = sheet.getRangeByIndexes(headerRow - 2, at, 3, 1);
    top.values = [
      [column.group === group ? "" : written(column.group)],
      [written(column.unit ?? null)],
      [written(column.header)],
    ];
    group = column.group;
    const header = sheet.getRangeByIndexes(headerRow, at, 1, 1);
    header.format.wrapText = true;
    header.format.font.italic = computed;
    header.format.font.color = tones.ink;
    const body = sheet.getRangeByIndexes(firstRow, at, rows, 1);
    body.format.fill.color = computed ? tones.computed : tones.input;
    body.format.columnWidth = column.width * points;
    if (column.format !== undefined) body.numberFormat = Array.from({ length: rows }, () => [column.format]);
    if (!computed) offer(body, column.choices);
    if (column.folded === true) body.columnHidden = true;
  });
  if (described.rows.length > 0)
    sheet.getRangeByIndexes(firstRow, 0, described.rows.length, width).values = described.rows.map((row) =>
      row.map(written),
    );
  const table = sheet.tables.add(sheet.getRangeByIndexes(headerRow, 0, rows + 1, width), true);
  table.name = described.tableName;
  table.showBandedRows = false;
  sheet.freezePanes.freezeAt(sheet.getRangeByIndexes(0, 0, headerRow + 1, Math.max(1, described.frozenColumns)));
}

/** A list to choose from that lets anything else be typed too. */
export function offer(range: Excel.Range, choices: readonly string[] | undefined): void {
  if (choices === undefined) return;
  range.dataValidation.rule = { list: { inCellDropDown: true, source: choices.join(",") } };
  range.dataValidation.errorAlert = { showAlert: false, message: "", style: "Information", title: "" };
}

/** As a person would type it so that Excel keeps it: an apostrophe before a text, or 3-5 became a date. */
export function written(cell: Cell): string | number | boolean {
  if (cell === null) return "";
  if (isCellError(cell)) return cell.error;
  if (typeof cell !== "string" || cell === "" || cell.startsWith("=")) return cell;
  return `'${cell}`;
}
