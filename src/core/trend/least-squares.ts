/** What a linear least-squares fit gives, in the order of its columns. */
export interface LeastSquares {
  readonly coefficients: readonly number[];
  /** Of the coefficients, from the scatter about the fit; NaN where no degree of freedom is left. */
  readonly covariance: readonly (readonly number[])[];
  /** Residual standard deviation, in the unit of y. */
  readonly residual: number;
  /** Rows less columns. */
  readonly freedom: number;
}

/**
 * Fits y by a sum of columns, each times a coefficient; equal weights. Householder QR: the squares that normal equations
 * would form cost half the digits. Columns are brought to like size first.
 * @param columns independent of each other, each as long as y, at least as many rows as columns
 * Source: Golub 1965.
 */
export function leastSquares(columns: readonly (readonly number[])[], y: readonly number[]): LeastSquares {
  const rows = y.length;
  const count = columns.length;
  const scales = columns.map((column) => Math.max(...column.map(Math.abs)) || 1);
  const a = columns.map((column, c) => Float64Array.from(column, (value) => value / scales[c]!));
  const b = Float64Array.from(y);
  for (let c = 0; c < count; c++) reflect(a, b, c);
  const solved = backwards(a, Array.from(b.subarray(0, count)));
  const inverse = columns.map((_, c) =>
    backwards(
      a,
      columns.map((__, r) => (r === c ? 1 : 0)),
    ),
  );
  let squares = 0;
  for (let r = count; r < rows; r++) squares += b[r]! * b[r]!;
  const freedom = rows - count;
  const variance = freedom > 0 ? squares / freedom : NaN;
  // (AᵀA)⁻¹ = R⁻¹R⁻ᵀ; column c of R⁻¹ is inverse[c].
  const covariance = columns.map((_, i) =>
    columns.map((__, j) => {
      const product = inverse.reduce((sum, column) => sum + column[i]! * column[j]!, 0);
      return (variance * product) / (scales[i]! * scales[j]!);
    }),
  );
  return {
    coefficients: solved.map((value, c) => value / scales[c]!),
    covariance,
    residual: Math.sqrt(variance),
    freedom,
  };
}

/** One reflection: column c becomes 0 below its diagonal, the later columns and b follow. */
function reflect(a: readonly Float64Array[], b: Float64Array, c: number): void {
  const column = a[c]!;
  const rows = column.length;
  let squares = 0;
  for (let r = c; r < rows; r++) squares += column[r]! * column[r]!;
  const length = column[c]! > 0 ? -Math.sqrt(squares) : Math.sqrt(squares);
  if (length === 0) return;
  const v = column.slice();
  v[c] = column[c]! - length;
  // |v|² from below the diagonal c on.
  const half = squares - length * column[c]!;
  for (const other of [...a.slice(c), b]) {
    let dot = 0;
    for (let r = c; r < rows; r++) dot += v[r]! * other[r]!;
    const share = dot / half;
    for (let r = c; r < rows; r++) other[r]! -= share * v[r]!;
  }
  column[c] = length;
  column.fill(0, c + 1);
}

/** Solves Rx = right, R the upper triangle of a. */
function backwards(a: readonly Float64Array[], right: readonly number[]): number[] {
  const x = [...right];
  for (let c = a.length - 1; c >= 0; c--) {
    const found = x[c]! / a[c]![c]!;
    x[c] = found;
    for (let r = 0; r < c; r++) x[r]! -= a[c]![r]! * found;
  }
  return x;
}
