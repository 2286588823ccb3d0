import type { Cell } from "./contract.js";
import type { Shape } from "./prepare.js";
import type { Unit } from "./units.js";

/** Rows of plain numbers, in a loop of its own: the engine then keeps each row as bare doubles. */
export function numbersGrid(values: Float64Array, { rows, columns }: Shape, { shift, back }: Unit): Cell[][] {
  const grid = new Array<number[]>(rows);
  if (columns === 1) {
    for (let r = 0; r < rows; r++) grid[r] = [values[r]! * back - shift];
    return grid;
  }
  for (let r = 0; r < rows; r++) {
    grid[r] = Array.from(values.subarray(r * columns, (r + 1) * columns), (value) => value * back - shift);
  }
  return grid;
}

export function put(grid: Cell[][], { columns }: Shape, cell: number, value: Cell): void {
  const row = grid[Math.floor(cell / columns)];
  if (row) row[cell % columns] = value;
}

export function fill({ rows, columns }: Shape, cellAt: (cell: number) => Cell): Cell[][] {
  const grid = new Array<Cell[]>(rows);
  if (columns === 1) {
    for (let r = 0; r < rows; r++) grid[r] = [cellAt(r)];
    return grid;
  }
  for (let r = 0; r < rows; r++) {
    const row = new Array<Cell>(columns);
    for (let c = 0; c < columns; c++) row[c] = cellAt(r * columns + c);
    grid[r] = row;
  }
  return grid;
}
