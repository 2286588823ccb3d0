/**
 * A number without a format is shown with as many digits as its cell has room for, or as #### where not even three
 * have: cut at the cell's edge it would read as another number.
 */
import { BooleanNumber, CellValueType, type ICellData, InterceptorEffectEnum, type Nullable } from "@univerjs/core";
import { FormulaDataModel } from "@univerjs/engine-formula";
import { BEFORE_CELL_EDIT, INTERCEPTOR_POINT, SheetInterceptorService } from "@univerjs/sheets";
import type { Measure } from "../book/header.js";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";

const HIDDEN = ";;;";
const fewestDigits = 3;
const mostDigits = 15;
/** What the grid leaves free at both sides of a cell, and a little more. */
const margin = 6;

export function fitNumbers(book: LiveBook, measureCells: (size: number, bold: boolean) => Measure): void {
  const interceptors = book.injector.get(SheetInterceptorService);
  // What is edited is the whole number, or a look into the cell would round it.
  interceptors.writeCellInterceptor.intercept(BEFORE_CELL_EDIT, {
    handler: (cell, { subUnitId, row, col }, next) => {
      const number = plainNumber(book, subUnitId, row, col);
      return next(number === undefined ? cell : { ...cell, v: number });
    },
  });
  interceptors.intercept(INTERCEPTOR_POINT.CELL_CONTENT, {
    // After the spill's value, the number format and our tints.
    priority: 4,
    effect: InterceptorEffectEnum.Value,
    handler: (cell, context, next) => {
      const { subUnitId, row, col } = context;
      // A number that only formulas read, on a sheet and in print; the grid knows no such format.
      if (book.workbook.getStyles().getStyleByCell(context.rawData)?.n?.pattern === HIDDEN)
        return next({ ...cell, v: "", t: CellValueType.STRING });
      const number = cell?.t === CellValueType.NUMBER ? plainNumber(book, subUnitId, row, col) : undefined;
      if (number === undefined) return next(cell);
      const style = book.workbook.getStyles().getStyleByCell(context.rawData);
      const room = book.worksheet(subUnitId).getColumnWidth(col) - margin;
      const text = fitted(number, room, measureCells(style?.fs ?? 10, style?.bl === BooleanNumber.TRUE));
      return next(text === undefined ? cell : { ...cell, v: text });
    },
  });
}

/** The number in a cell that has no number format, as the engine holds it. */
export function plainNumber(book: LiveBook, sheetId: string, row: number, column: number): number | undefined {
  if (!book.isOpen()) return undefined;
  const worksheet = book.worksheet(sheetId);
  const raw = worksheet.getCellRaw(row, column);
  const spilled = book.injector.get(FormulaDataModel).getArrayFormulaCellData()[bookId]?.[sheetId]?.[row]?.[column];
  const cell: Nullable<ICellData> = spilled ?? raw;
  if (cell?.t !== CellValueType.NUMBER || cell.v === undefined || cell.v === null || cell.v === "") return undefined;
  if (book.workbook.getStyles().getStyleByCell(raw)?.n !== undefined) return undefined;
  const number = Number(cell.v);
  return Number.isFinite(number) ? number : undefined;
}

/** Undefined where the number fits as it is. */
function fitted(number: number, room: number, measure: Measure): string | undefined {
  if (measure(String(number)) <= room) return undefined;
  for (let digits = mostDigits; digits >= fewestDigits; digits--) {
    const precise = number.toPrecision(digits);
    const text = precise.includes(".") ? precise.replace(/\.?0+(?=e|$)/, "") : precise;
    if (measure(text) <= room) return text;
  }
  return "####";
}
