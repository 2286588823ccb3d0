/** Cells of a free sheet, put down in a few words. */
import type { FreeCell, FreeLook } from "../contract.js";

type Rest = Omit<FreeCell, "row" | "column" | "value" | "look">;

export function at(row: number, column: number, value: FreeCell["value"], look: FreeLook, rest: Rest = {}): FreeCell {
  return { row, column, ...(value === undefined ? {} : { value }), look, ...rest };
}

/** A row of headers, one a column. */
export function headers(row: number, names: readonly string[], from = 0): FreeCell[] {
  return names.flatMap((name, column) => (name === "" ? [] : [at(row, from + column, name, "header")]));
}

/** A spill as it is when the book is made: it grows downwards. */
export function spill(row: number, column: number, value: string, columns: number, rest: Rest = {}): FreeCell {
  return at(row, column, value, "label", { size: { rows: SPILL_ROWS, columns }, ...rest });
}

/** Rows of a list that keep their looks from the beginning. */
const SPILL_ROWS = 40;

export interface Lines {
  readonly cells: readonly FreeCell[];
  readonly heights: Readonly<Record<number, number>>;
}

/** A line of words over several columns, as high as its length wants. */
export function lines(row: number, texts: readonly string[], widths: readonly number[]): Lines {
  const width = widths.reduce((sum, one) => sum + one, 0);
  const cells = texts.map((one, i) => at(row + i, 0, one, "words", { across: widths.length }));
  const heights = Object.fromEntries(texts.map((one, i) => [row + i, 6 + 17 * Math.ceil((one.length * 6.8) / width)]));
  return { cells, heights };
}
