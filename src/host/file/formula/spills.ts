/** The whole of a spill (A1#, in a file ANCHORARRAY): how far it reaches is known only once its formula is worked out. */
import type { Area } from "./areas.js";

/** Stands in a prepared formula for the range of a spill, by the place of its first cell; the engine never sees it. */
const MARK = /\bRECALC_SPILL_(\d+)_(\d+)_(\d+)\b/g;

export function spillMark({ sheet, startRow, startColumn }: Area): string {
  return `RECALC_SPILL_${sheet}_${startRow}_${startColumn}`;
}

/** The formula with the ranges of its spills. */
export function withSpills(text: string, rangeOf: (sheet: number, row: number, column: number) => string): string {
  if (!text.includes("RECALC_SPILL_")) return text;
  return text.replace(MARK, (_, ...place: string[]) => {
    const [sheet = 0, row = 0, column = 0] = place.slice(0, 3).map(Number);
    return rangeOf(sheet, row, column);
  });
}
