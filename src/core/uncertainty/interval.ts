/** Coverage intervals of values that were drawn. */

/** Ends of an interval, in the unit of the values. */
export interface Interval {
  readonly low: number;
  readonly high: number;
}

/** Brings the value that belongs at place `k` there, smaller ones before it, greater ones behind it: Hoare's selection. */
function select(values: Float64Array, k: number, from: number, to: number): number {
  let left = from;
  let right = to;
  while (left < right) {
    const a = values[left]!;
    const b = values[(left + right) >> 1]!;
    const c = values[right]!;
    // The middle one of three keeps sorted runs from costing a square.
    const pivot = a < b ? (b < c ? b : Math.max(a, c)) : a < c ? a : Math.max(b, c);
    let i = left;
    let j = right;
    while (i <= j) {
      while (values[i]! < pivot) i++;
      while (values[j]! > pivot) j--;
      if (i > j) break;
      const value = values[i]!;
      values[i++] = values[j]!;
      values[j--] = value;
    }
    if (k <= j) right = j;
    else if (k >= i) left = i;
    else break;
  }
  return values[k]!;
}

/** How many values an interval spans, q = pM, a half rounded up. */
function spanOf(count: number, coverage: number): number {
  // Slack: 0.95·100000 is a little less than 95000 in floating point.
  return Math.floor(coverage * count + 0.5 + 1e-9);
}

/**
 * The interval with as many values below as above it. Changes the order of the values.
 * @param values finite, at least 2/(1 − coverage) of them
 * Source: JCGM 101:2008, 7.7.1 and 7.7.2.
 */
export function symmetricInterval(values: Float64Array, coverage: number): Interval {
  const span = spanOf(values.length, coverage);
  const first = Math.floor((values.length - span + 1) / 2);
  const high = select(values, first + span - 1, 0, values.length - 1);
  const low = select(values, first - 1, 0, first + span - 1);
  return { low, high };
}

/**
 * The shortest of the intervals that hold the share of values. Sorts the values.
 * Source: JCGM 101:2008, 7.7.1 and 7.7.4.
 */
export function shortestInterval(values: Float64Array, coverage: number): Interval {
  values.sort();
  const span = spanOf(values.length, coverage);
  let best = { low: -Infinity, high: Infinity };
  for (let i = 0; i + span < values.length; i++) {
    const [low, high] = [values[i]!, values[i + span]!];
    if (high - low < best.high - best.low) best = { low, high };
  }
  return best;
}
