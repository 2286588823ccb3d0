/** How large the numbers are that a formula reads: what cancels between them is no change. */
import type { Area } from "../formula/areas.js";
import type { CellReader } from "./runs-evaluate.js";

const MOST_LOOKED_AT = 20_000;

/** Of a very large range only its beginning is looked at. */
export function largest(areas: readonly Area[], valueAt: CellReader): number {
  let most = 0;
  let looked = 0;
  for (const { sheet, startRow, endRow, startColumn, endColumn } of areas) {
    for (let r = startRow; r <= endRow && looked < MOST_LOOKED_AT; r++) {
      for (let c = startColumn; c <= endColumn && looked < MOST_LOOKED_AT; c++, looked++) {
        const value = valueAt(sheet, r, c);
        if (typeof value === "number") most = Math.max(most, Math.abs(value));
      }
    }
  }
  return most;
}
