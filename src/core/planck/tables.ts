import type { Band } from "./band.js";
import { BandTable } from "./table.js";

const CAPACITY = 24;
const tables = new Map<string, BandTable>();

/** The table of a band, built at its first use (2 to 5 ms for a plain band); the least recently used are dropped. */
export function tableFor(band: Band): BandTable {
  let table = tables.get(band.key);
  if (table === undefined) table = new BandTable(band);
  else tables.delete(band.key);
  tables.set(band.key, table);
  const oldest = tables.keys().next();
  if (tables.size > CAPACITY && oldest.done !== true) tables.delete(oldest.value);
  return table;
}
