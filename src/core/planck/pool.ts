/**
 * One piece of memory for the tables of all bands. The engine knows a module's own array at compile time: loops over it
 * need not look up its place and length at every access, which halves their time against an array a band.
 */
export const POOL = new Float64Array(1 << 19);

let used = 0;
let era = 0;

/** Counts how often the pool was emptied: a table from an earlier era must be built anew. */
export function currentEra(): number {
  return era;
}

/** Room for `count` numbers; when the pool is full it is emptied, and whoever still needs a table builds it again. */
export function allocate(count: number): number {
  if (used + count > POOL.length) {
    used = 0;
    era++;
  }
  const at = used;
  used += count;
  return at;
}
