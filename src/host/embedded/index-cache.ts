import { CELL_INVERTED_INDEX_CACHE } from "@univerjs/engine-formula";

type Value = string | number | boolean | null | undefined;
type Rows = Set<number>;
/** The engine's index of a column: the rows in which each value stands. */
type ColumnIndex = Map<unknown, Rows>;

let mended = false;

/**
 * The engine keeps an index of the values of each column for comparisons and lookups. Storing a result, it looks for
 * the cell's old entry through every value of the column: a spill of n different values takes n² steps (2.5 s for
 * 10,000 rows). Here the old entry is known by its row.
 */
export function mendIndexCache(): void {
  if (mended) return;
  mended = true;
  const cache = CELL_INVERTED_INDEX_CACHE;
  const set = cache.set.bind(cache);
  const emptyKey = keyOfEmpty(set);
  const entries = new WeakMap<ColumnIndex, Map<number, Rows>>();

  cache.set = (unit, sheet, column, value, row, isForceUpdate = false) => {
    if (!isForceUpdate && !cache.shouldContinueBuildingCache(unit, sheet, column, row)) return;
    const index = cache.getCellValuePositions(unit, sheet, column) as ColumnIndex | undefined;
    const entryOf = index && entries.get(index);
    if (index === undefined || entryOf === undefined) {
      set(unit, sheet, column, value, row, isForceUpdate);
      const made = cache.getCellValuePositions(unit, sheet, column) as ColumnIndex;
      entries.set(made, entriesOf(made));
      return;
    }
    if (isForceUpdate) entryOf.get(row)?.delete(row);
    const key = keyOf(value, emptyKey);
    const rows = index.get(key) ?? new Set();
    index.set(key, rows.add(row));
    entryOf.set(row, rows);
  };
}

/** The engine's own mark for empty cells: a symbol that it does not give away. */
function keyOfEmpty(set: typeof CELL_INVERTED_INDEX_CACHE.set): unknown {
  set("", "", 0, null, 0, true);
  const [key] = (CELL_INVERTED_INDEX_CACHE.getCellValuePositions("", "", 0) as ColumnIndex).keys();
  CELL_INVERTED_INDEX_CACHE.clear();
  return key;
}

function entriesOf(index: ColumnIndex): Map<number, Rows> {
  const entries = new Map<number, Rows>();
  for (const rows of index.values()) for (const row of rows) entries.set(row, rows);
  return entries;
}

/** As the engine looks values up: without case, a text that prints like a number as that number. */
function keyOf(value: Value, emptyKey: unknown): unknown {
  if (value === null || value === undefined || value === "") return emptyKey;
  if (typeof value === "boolean") return value;
  const number = Number(value);
  if (!Number.isNaN(number) && String(number) === String(value)) return number === 0 ? 0 : number;
  return typeof value === "string" ? value.toLowerCase() : value;
}
