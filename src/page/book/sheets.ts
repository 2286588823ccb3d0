/** Fills the three kinds of sheets: form, notes, and table with spills beside it. */
import { BooleanNumber, type IWorksheetData } from "@univerjs/core";
import { headerHeight, heading } from "./header.js";
import { type FormLayout, formColumns, type NotesLayout, type TableLayout } from "./layout.js";
import type { SheetWriter } from "./writer.js";
import {
  bodyStyle,
  fieldStyle,
  groupStyle,
  headerStyle,
  labelStyle,
  lineStyle,
  noteStyle,
  subheadingStyle,
  unitStyle,
} from "./styles.js";

type Shape = Partial<IWorksheetData>;

/** The grid forgets the padding when it asks whether words run over their cell, and would clip the last letters. */
const overhang = "\u00a0\u00a0\u00a0\u00a0";

export function fillForm(form: FormLayout, writer: SheetWriter): Shape {
  form.sheet.fields.forEach((field, line) => {
    const row = form.firstFieldRow + line;
    if (field.definedName === undefined) {
      writer.put(row, formColumns.label, field.label, subheadingStyle);
      return;
    }
    const computed = typeof field.value === "string" && field.value.startsWith("=");
    writer.put(row, formColumns.label, field.label, labelStyle);
    writer.put(
      row,
      formColumns.value,
      field.value,
      fieldStyle(field.format, computed, typeof field.value === "number"),
    );
    if (field.unit !== undefined) writer.put(row, formColumns.unit, field.unit, unitStyle);
    if (field.note !== undefined) writer.put(row, formColumns.note, field.note, noteStyle);
  });
  return {
    rowCount: form.firstFieldRow + form.sheet.fields.length,
    columnCount: 4,
    columnData: { 0: { w: 200 }, 1: { w: 260 }, 2: { w: 64 }, 3: { w: 420 } },
    freeze: { xSplit: 0, ySplit: 1, startRow: 1, startColumn: -1 },
  };
}

export function fillNotes(notes: NotesLayout, writer: SheetWriter): Shape {
  const first = notes.sheet.heading.length + 1;
  const rowData: Record<number, { h: number }> = {};
  notes.sheet.lines.forEach((line, index) => {
    writer.put(first + index, 0, line, lineStyle);
    // A line of 760 px holds about 115 characters; the grid measures no height by itself for a loaded sheet.
    rowData[first + index] = { h: 8 + 17 * Math.max(1, Math.ceil(line.length / 105)) };
  });
  return { rowCount: first + notes.sheet.lines.length, columnCount: 1, columnData: { 0: { w: 760 } }, rowData };
}

export function fillTable(table: TableLayout, writer: SheetWriter): Shape {
  const columnData: NonNullable<Shape["columnData"]> = { [table.gap]: { w: 14 } };
  const headings = table.columns.map((place) => heading(place, writer.measure));
  let group = "";
  table.columns.forEach(({ column, index, computed }, at) => {
    const { text, width } = headings[at]!;
    columnData[index] = { w: width, hd: column.folded === true ? BooleanNumber.TRUE : BooleanNumber.FALSE };
    if (column.group !== group || index === table.gap + 1)
      writer.words(table.groupRow, index, column.group + overhang, groupStyle);
    group = column.group;
    writer.words(table.headerRow, index, text, headerStyle(column, computed !== undefined));
    const style = bodyStyle(column, computed !== undefined);
    for (let row = table.firstRow; row <= table.lastRow; row++) {
      const formula = row === table.firstRow ? computed?.formula : undefined;
      const value = computed === undefined ? table.sheet.rows[row - table.firstRow]?.[index] : formula;
      writer.put(row, index, value, style);
    }
  });
  const frozen = table.sheet.frozenColumns;
  return {
    rowCount: table.lastRow + 1,
    columnCount: table.lastColumn + 1,
    columnData,
    rowData: { [table.groupRow]: { h: 22 }, [table.headerRow]: { h: headerHeight(headings) } },
    freeze: {
      xSplit: frozen,
      ySplit: table.headerRow + 1,
      startRow: table.headerRow + 1,
      startColumn: frozen === 0 ? -1 : frozen,
    },
  };
}
