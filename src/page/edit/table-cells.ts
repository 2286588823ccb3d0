/** What has to be written when a table's rows change. */
import type { ICellData, IObjectMatrixPrimitiveType, Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import type { TableLayout } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import { type BodyRows, resolveFormula } from "../book/resolve.js";
import { bookId } from "../book/snapshot.js";
import { mapReferences, type Reference } from "./references.js";
import { HostStep } from "./step.js";

type Cells = IObjectMatrixPrimitiveType<Nullable<ICellData>>;

export interface RowShift {
  readonly from: BodyRows;
  readonly to: BodyRows;
}

const emptyCell: ICellData = { v: null, f: null, si: null, p: null };

/** Whether anything stands in a row where the table's own columns are. */
export function isFilled(book: LiveBook, table: TableLayout, row: number): boolean {
  const cells = book.worksheet(table.id).getCellMatrix();
  for (let column = 0; column <= table.lastTyped; column++) {
    const cell = cells.getValue(row, column);
    if (cell && ((cell.v !== undefined && cell.v !== null && cell.v !== "") || cell.f || cell.si || cell.p))
      return true;
  }
  return false;
}

/** New rows look like the last one; whatever was pasted where a spill comes is taken away, or it would block the spill. */
export function grownRows(book: LiveBook, table: TableLayout, oldLast: number, newLast: number): Cells {
  const worksheet = book.worksheet(table.id);
  const styles = book.workbook.getStyles();
  const cells: Cells = {};
  for (const { index, computed } of table.columns) {
    const style = styles.getStyleByCell(worksheet.getCellRaw(oldLast, index)) ?? null;
    for (let row = oldLast + 1; row <= newLast; row++) {
      (cells[row] ??= {})[index] = computed === undefined ? { s: style } : { ...emptyCell, s: style };
    }
  }
  return cells;
}

/** One spilled formula for each computed column, at the first body row, and none elsewhere in the column. */
export function anchorCells(book: LiveBook, table: TableLayout): Cells {
  const rows = book.rowsOf(table);
  const matrix = book.worksheet(table.id).getCellMatrix();
  const cells: Cells = {};
  for (const { index, computed } of table.columns) {
    if (computed === undefined) continue;
    const place = { sheetName: table.name, row: rows.firstRow };
    const { formula } = resolveFormula(computed.formula, place, book.layout, book.rowsOf);
    if (matrix.getValue(rows.firstRow, index)?.f !== formula)
      (cells[rows.firstRow] ??= {})[index] = { ...emptyCell, f: formula };
    for (let row = rows.firstRow + 1; row <= rows.lastRow; row++) {
      const cell = matrix.getValue(row, index);
      if (cell?.f || cell?.si) (cells[row] ??= {})[index] = { ...emptyCell };
    }
  }
  return cells;
}

/**
 * Enters the spilled formulas once more. Undo moves their anchors back and forth, and the engine then takes the spill
 * that it remembers for cells in the way. No step of its own: nothing that a person sees is changed by it.
 */
export function spillAnew(book: LiveBook, table: TableLayout): void {
  const rows = book.rowsOf(table);
  const empty: Cells = {};
  for (const { index, computed } of table.columns) {
    if (computed === undefined) continue;
    for (let row = rows.firstRow; row <= rows.lastRow + 1; row++) (empty[row] ??= {})[index] = { ...emptyCell };
  }
  const host = new HostStep(book);
  host.write(table.id, empty);
  host.write(table.id, anchorCells(book, table));
}

/** Rewrites the references of all formulas, on every sheet, that span the table's rows as they were. */
export function followTable(book: LiveBook, table: TableLayout, shift: RowShift, host: HostStep): void {
  const formulas = book.injector.get(FormulaDataModel);
  for (const worksheet of book.workbook.getSheets()) {
    const sheetId = worksheet.getSheetId();
    const cells: Cells = {};
    const groups = new Set<string>();
    const rewritten = (row: number, column: number): string | undefined => {
      const formula = formulas.getFormulaStringByCell(row, column, sheetId, bookId);
      if (!formula) return undefined;
      const mapped = mapReferences(formula, (reference) => moved(reference, table, worksheet.getName(), shift));
      return mapped === formula ? undefined : mapped;
    };
    const write = (row: number, column: number, formula: string): void => {
      (cells[row] ??= {})[column] = { ...emptyCell, f: formula };
    };
    worksheet.getCellMatrix().forValue((row, column, cell) => {
      if (!cell?.f && !cell?.si) return;
      const formula = rewritten(row, column);
      if (formula === undefined) return;
      write(row, column, formula);
      if (cell.si) groups.add(cell.si);
    });
    // Filled cells share one formula by their distance from it: once it changes, each of them needs its own.
    if (groups.size > 0) {
      worksheet.getCellMatrix().forValue((row, column, cell) => {
        if (!cell?.si || !groups.has(cell.si) || cells[row]?.[column]) return;
        const formula = formulas.getFormulaStringByCell(row, column, sheetId, bookId);
        if (formula) write(row, column, formula);
      });
    }
    host.write(sheetId, cells);
  }
}

function moved(
  reference: Reference,
  table: TableLayout,
  ownSheet: string,
  { from, to }: RowShift,
): Reference["box"] | undefined {
  const { box } = reference;
  if ((reference.sheetName ?? ownSheet).toLowerCase() !== table.name.toLowerCase()) return undefined;
  if (box.startColumn > table.lastColumn || box.endRow !== from.lastRow) return undefined;
  // One cell is that cell, also in a table of one row.
  if (box.startRow === box.endRow && box.startColumn === box.endColumn) return undefined;
  const fromHeader = box.startRow === from.firstRow - 1 && to.firstRow === from.firstRow;
  if (box.startRow !== from.firstRow && !fromHeader) return undefined;
  return { ...box, startRow: fromHeader ? box.startRow : to.firstRow, endRow: to.lastRow };
}
