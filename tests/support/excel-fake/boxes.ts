/** Boxes of cells of the played Excel. */
import { ExcelError } from "./client.js";
import { type Box, letter, type SheetModel } from "./model.js";

export const boxOf = Symbol("box");
export interface BoxClient {
  readonly [boxOf]: () => Box | undefined;
}

export function usedOf(sheet: SheetModel): Box | undefined {
  const used = sheet.used();
  return used && { sheet, ...used };
}

export function found<T>(target: T | undefined): T {
  if (target === undefined) throw new ExcelError("ItemNotFound");
  return target;
}

export function address({ sheet, row, column, rows, columns }: Box, fixed: boolean): string {
  const sign = fixed ? "$" : "";
  const cell = (r: number, c: number): string => `${sign}${letter(c)}${sign}${r + 1}`;
  const end = rows * columns === 1 ? "" : `:${cell(row + rows - 1, column + columns - 1)}`;
  return `${/\W/.test(sheet.name) ? `'${sheet.name}'` : sheet.name}!${cell(row, column)}${end}`;
}
