/**
 * Every formula on its way into the grid - typed, pasted, filled, set by program - is made into what the engine reads
 * rightly: numbers in their shortest form, structured references and names as A1 ranges.
 */
import type { ICellData } from "@univerjs/core";
import { SetRangeValuesCommand, SetRangeValuesMutation } from "@univerjs/sheets";
import type { LiveBook } from "../book/live.js";
import { resolveFormula } from "../book/resolve.js";
import type { FirstSay } from "./first-say.js";

interface WriteParams {
  subUnitId?: string;
  range?: { startRow: number; startColumn: number };
  value?: unknown;
  cellValue?: unknown;
}

/** `report` is told the references that were not found; the formula then holds #REF! in their place. */
export function normaliseWrites(
  book: LiveBook,
  firstSay: FirstSay,
  report: (unresolved: readonly string[]) => void,
): void {
  firstSay.add((info) => {
    if (info.id !== SetRangeValuesCommand.id && info.id !== SetRangeValuesMutation.id) return;
    const params = info.params as WriteParams | undefined;
    const sheetId = params?.subUnitId ?? book.activeSheetId();
    const written = params?.cellValue ?? params?.value;
    const start = { row: params?.range?.startRow ?? 0, column: params?.range?.startColumn ?? 0 };
    if (isCell(written)) normaliseCell(written, sheetId, start.row);
    else if (Array.isArray(written)) {
      written.forEach((row: unknown, at) => {
        if (Array.isArray(row)) for (const cell of row) normaliseCell(cell, sheetId, start.row + at);
      });
    } else if (typeof written === "object" && written !== null) {
      for (const [row, cells] of Object.entries(written as Record<string, unknown>)) {
        for (const cell of Object.values(cells ?? {})) normaliseCell(cell, sheetId, Number(row));
      }
    }
  });

  function normaliseCell(cell: unknown, sheetId: string, row: number): void {
    if (!isCell(cell) || typeof cell.f !== "string" || !cell.f.startsWith("=")) return;
    const sheetName = book.workbook.getSheetBySheetId(sheetId)?.getName() ?? "";
    const { formula, unresolved } = resolveFormula(cell.f, { sheetName, row }, book.layout, book.rowsOf);
    cell.f = formula;
    if (unresolved.length > 0) report(unresolved);
  }
}

function isCell(value: unknown): value is ICellData {
  return typeof value === "object" && value !== null && ("f" in value || "v" in value || "p" in value || "s" in value);
}
