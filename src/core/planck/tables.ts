import type { Band } from "./band.js";
import { currentEra } from "./pool.js";
import { BandTable } from "./table.js";

const tables = new Map<string, BandTable>();
let era = currentEra();

/**
 * The table of a band, built at its first use (some 5 ms for a plain band). The tables share one pool of memory; when it
 * is full all are forgotten and those still asked for are built again.
 */
export function tableFor(band: Band): BandTable {
  let table = tables.get(band.key);
  if (table === undefined) {
    table = new BandTable(band);
    if (era !== currentEra()) {
      era = currentEra();
      tables.clear();
    }
    tables.set(band.key, table);
  }
  return table;
}
