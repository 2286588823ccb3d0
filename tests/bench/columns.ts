/** Columns of invented readings for the benches, the same in every run. */
export const ROWS = 100_000;

/** The minimal standard generator of Park and Miller (1988). */
function generator(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state * 48271) % 2147483647;
    return state / 2147483647;
  };
}

const next = generator(20261125);

export function column(from: number, to: number): Float64Array {
  return Float64Array.from({ length: ROWS }, () => from + (to - from) * next());
}

/** The same as a range of a sheet. */
export function range(from: number, to: number): number[][] {
  return Array.from(column(from, to), (value) => [value]);
}
