import { GreybodyError, inRange } from "../errors.js";
import type { Range } from "../errors.js";

/** What a coefficient of correlation can be. */
const CORRELATION: Range = { min: -1, max: 1 };

/** How two inputs go together; `r` is the coefficient of correlation, -1 to 1. */
export interface Correlation<Name extends string = string> {
  readonly one: Name;
  readonly other: Name;
  readonly r: number;
}

/** Rounding of coefficients typed with a few digits: a pivot this small is none. */
const PIVOT_SLACK = 1e-10;

/**
 * Lower triangle L with L·Lᵀ = matrix, for drawing inputs that go together; undefined where there is none, since
 * coefficients contradict each other (the matrix is not positive semi-definite).
 * Source: Cholesky's factorisation, as in JCGM 101:2008, C.5; a pivot of 0 has a column of 0.
 */
export function lowerFactor(matrix: readonly (readonly number[])[]): number[][] | undefined {
  const size = matrix.length;
  const lower = matrix.map(() => new Array<number>(size).fill(0));
  const rest = (i: number, j: number): number => {
    let sum = matrix[i]?.[j] ?? 0;
    for (let k = 0; k < j; k++) sum -= (lower[i]?.[k] ?? 0) * (lower[j]?.[k] ?? 0);
    return sum;
  };
  for (let j = 0; j < size; j++) {
    const pivot = rest(j, j);
    if (pivot < -PIVOT_SLACK) return undefined;
    const root = pivot > PIVOT_SLACK ? Math.sqrt(pivot) : 0;
    for (let i = j; i < size; i++) {
      const value = i === j ? root : rest(i, j);
      if (root === 0 && Math.abs(value) > Math.sqrt(PIVOT_SLACK)) return undefined;
      lower[i]![j] = root === 0 ? 0 : i === j ? root : value / root;
    }
  }
  return lower;
}

/**
 * The matrix of coefficients, 1 on its diagonal, from pairs.
 * @throws INVALID "correlations" with the row (from 1): r beyond -1 to 1, a name that is none, a name with itself, a pair
 * twice; or without a row: coefficients that contradict each other
 */
export function correlationMatrix<Name extends string>(
  names: readonly Name[],
  correlations: readonly Correlation<Name>[],
): number[][] {
  const matrix: number[][] = names.map((_, i) => names.map((__, j) => (i === j ? 1 : 0)));
  const told = new Set<string>();
  const fail = (key: string, index: number, values: Record<string, number | string> = {}): GreybodyError =>
    new GreybodyError({
      code: "INVALID",
      argument: "correlations",
      hint: { key, values: { row: index + 1, ...values } },
    });
  for (const [index, { one, other, r }] of correlations.entries()) {
    const i = names.indexOf(one);
    const j = names.indexOf(other);
    if (i < 0 || j < 0) throw fail("correlation-name", index);
    if (i === j) throw fail("correlation-self", index);
    if (!inRange(r, CORRELATION)) throw fail("correlation-range", index);
    const pair = [i, j].sort((a, b) => a - b).join();
    if (told.has(pair)) throw fail("correlation-twice", index);
    told.add(pair);
    matrix[i]![j] = r;
    matrix[j]![i] = r;
  }
  if (told.size > 0 && !lowerFactor(matrix)) {
    throw new GreybodyError({ code: "INVALID", argument: "correlations", hint: { key: "correlation-contradiction" } });
  }
  return matrix;
}
