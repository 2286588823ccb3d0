import type { FreeSheet } from "../templates/contract.js";

/** The columns of a free sheet that only formulas read: what stands beyond its widths, a column apart. They are folded away, or they would be printed wherever a print area that is worked out is not understood. */
export function workingColumns({ widths, cells }: FreeSheet): number[] {
  const first = widths.length + 1;
  const last = Math.max(-1, ...cells.map(({ column, size, across = 1 }) => column + (size?.columns ?? across) - 1));
  return Array.from({ length: Math.max(0, last - first + 1) }, (_, at) => first + at);
}
