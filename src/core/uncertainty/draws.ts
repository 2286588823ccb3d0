import { lowerFactor } from "./correlation.js";
import { normalInto } from "./generator/normal.js";
import type { Generator } from "./generator/xoshiro.js";
import type { Distribution } from "./inputs.js";
import { normalCdf } from "./normal-cdf.js";
import type { Draw } from "./propagate.js";

/** An input that is drawn. */
export interface DrawnInput {
  /** Middle of its distribution. */
  readonly value: number;
  readonly distribution: Distribution;
  /** Standard uncertainty where normal, else the half-width. */
  readonly stated: number;
}

/** Fills a column with draws about a value. */
type Fill = (generator: Generator, to: Float64Array, value: number, stated: number) => void;

const FILL: Readonly<Record<Distribution, Fill>> = {
  normal: normalInto,
  rectangular: (generator, to, value, stated) => {
    for (let k = 0; k < to.length; k++) to[k] = value + stated * (2 * generator.uniform() - 1);
  },
  // The sum of two rectangular ones of half the width.
  triangular: (generator, to, value, stated) => {
    for (let k = 0; k < to.length; k++) to[k] = value + stated * (generator.uniform() + generator.uniform() - 1);
  },
};

/** The number of each distribution at the same place as a standard normal one: as large a share lies below it. */
const AT_SCORE: Readonly<Record<Distribution, (score: number) => number>> = {
  normal: (score) => score,
  rectangular: (score) => 2 * normalCdf(score) - 1,
  triangular: (score) => (score < 0 ? Math.sqrt(2 * normalCdf(score)) - 1 : 1 - Math.sqrt(2 * normalCdf(-score))),
};

/**
 * Draws of inputs that may go together. Normal inputs are drawn with the coefficients of correlation as given (Cholesky). Of
 * rectangular and triangular inputs it is the normal scores that have them (a Gaussian copula): between two rectangular ones
 * the coefficient then comes out at 6/π·asin(r/2), at most 0.02 nearer to 0.
 * @param matrix coefficients of correlation by the places of the inputs, positive semi-definite
 * Source: JCGM 101:2008, 6.4 (distributions), 6.4.8 (normal inputs that go together), C.5.
 */
export function drawInputs(inputs: readonly DrawnInput[], matrix: readonly (readonly number[])[]): Draw {
  const lower = lowerFactor(matrix) ?? [];
  const goesWith = matrix.map((row, i) => row.some((r, j) => i !== j && r !== 0));
  const together = inputs.map((_, i) => i).filter((i) => goesWith[i]);
  return (generator, columns) => {
    for (const [i, { value, stated, distribution }] of inputs.entries()) {
      if (goesWith[i]) normalInto(generator, columns[i]!, 0, 1);
      else FILL[distribution](generator, columns[i]!, value, stated);
    }
    // From the last to the first, so that what is still needed has not been changed yet.
    for (const i of [...together].reverse()) mix(columns, lower[i] ?? [], i, together);
    for (const i of together) shape(columns[i]!, inputs[i]!);
  };
}

/** Column i becomes the sum of the columns up to it, each with its factor. */
function mix(
  columns: readonly Float64Array[],
  factors: readonly number[],
  i: number,
  together: readonly number[],
): void {
  const column = columns[i]!;
  const own = factors[i] ?? 1;
  for (let k = 0; k < column.length; k++) column[k] = own * column[k]!;
  for (const j of together) {
    const factor = factors[j] ?? 0;
    if (j >= i || factor === 0) continue;
    const other = columns[j]!;
    for (let k = 0; k < column.length; k++) column[k] = column[k]! + factor * other[k]!;
  }
}

function shape(column: Float64Array, { value, stated, distribution }: DrawnInput): void {
  const at = AT_SCORE[distribution];
  for (let k = 0; k < column.length; k++) column[k] = value + stated * at(column[k]!);
}
