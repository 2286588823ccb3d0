/** Whether a dynamic array finds the room that it asks for. */
import type { Cell, Grid } from "../../../functions/contract.js";
import { keyOf } from "./load.js";
import type { FormulaNode } from "./nodes.js";

/** Saved as #VALUE!, as Excel saves it; the mark that tells a spill error is in parts that are not touched. */
const NO_ROOM: Cell = { error: "#VALUE!", message: "The result finds no room: other cells stand in its way." };

/** The result, or in its place the one error where cells that are not its own stand in its way. */
export function withRoom({ kind, range, sheet }: FormulaNode, result: Grid): Grid {
  if (kind !== "dynamic") return result;
  const isOwn = (row: number, column: number): boolean =>
    row >= range.startRow && row <= range.endRow && column >= range.startColumn && column <= range.endColumn;
  const isTaken = (row: number, column: number): boolean => {
    if (isOwn(row, column)) return false;
    const cell = sheet.cells.get(keyOf(row, column));
    return cell?.formula !== undefined || (cell?.value ?? null) !== null;
  };
  const isBlocked = result.some((line, r) => line.some((_, c) => isTaken(range.startRow + r, range.startColumn + c)));
  return isBlocked ? [[NO_ROOM]] : result;
}
