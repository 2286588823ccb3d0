import type { FreeCell } from "../../templates/contract.js";
import type { Box } from "./a1.js";

/** The cells that a free cell stands for: its block, or the cells it stands over as one. */
export function freeBox({ row, column, size, across = 1 }: FreeCell, first: number): Box {
  const { rows, columns } = size ?? { rows: 1, columns: across };
  return {
    startRow: first + row,
    endRow: first + row + rows - 1,
    startColumn: column,
    endColumn: column + columns - 1,
  };
}
