import { shortestInterval, symmetricInterval } from "../../../src/core/uncertainty/interval.js";

/** 1 to n in an order that is not theirs. */
const shuffled = (n: number): Float64Array => Float64Array.from({ length: n }, (_, i) => ((i * 7919) % n) + 1);

describe("the symmetric interval", () => {
  // By hand from JCGM 101, 7.7: q = pM, r = (M − q)/2 or, where that is no whole number, the whole part of (M − q + 1)/2;
  // the ends are the r-th and the (r + q)-th value.
  test.each([
    [1000, 0.95, 25, 975],
    [1000, 0.99, 5, 995],
    [1001, 0.95, 25, 976],
    [100_000, 0.95, 2500, 97_500],
  ])("of %d values at %d: from %d to %d", (count, coverage, low, high) => {
    expect(symmetricInterval(shuffled(count), coverage)).toEqual({ low, high });
  });

  test("of values that repeat, or are all alike, or are in order already", () => {
    expect(symmetricInterval(new Float64Array(1000).fill(3), 0.95)).toEqual({ low: 3, high: 3 });
    expect(symmetricInterval(shuffled(1000).sort(), 0.95)).toEqual({ low: 25, high: 975 });
    expect(symmetricInterval(shuffled(1000).sort().reverse(), 0.95)).toEqual({ low: 25, high: 975 });
    const steps = Float64Array.from(shuffled(1000), (value) => Math.ceil(value / 100));
    expect(symmetricInterval(steps, 0.5)).toEqual({ low: 3, high: 8 });
  });
});

test("the shortest interval is where values lie closest", () => {
  // Squares: the lower end is the densest.
  const squares = Float64Array.from(shuffled(1000), (value) => value * value);
  expect(shortestInterval(squares, 0.9)).toEqual({ low: 1, high: 901 ** 2 });
});
