import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

/**
 * Lets every cell of a range be compared by its own value. The engine's index of a column, which it asks from the second
 * comparison on, keeps 0 and empty under one roof, and the text 5 with the number: A1:A9="" was true where a 0 stood
 * (a phase without current, a reading of 0 °C), and ""<1 was true of a range.
 */
export function compareByValue(): void {
  CELL_INVERTED_INDEX_CACHE.canUseCache = () => ({ rowsInCache: [], rowsNotInCache: [] });
}
