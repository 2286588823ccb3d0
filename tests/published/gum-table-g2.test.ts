/** JCGM 100:2008, Table G.2, Student's t; values from memory, as any table of the distribution prints them. */
import { coverageFactor } from "../../src/core/uncertainty/coverage.js";

test.each([
  [1, 0.6827, 1.84],
  [1, 0.95, 12.71],
  [1, 0.99, 63.66],
  [2, 0.95, 4.3],
  [3, 0.9545, 3.31],
  [5, 0.9, 2.02],
  [10, 0.95, 2.23],
  [10, 0.99, 3.17],
  [16, 0.95, 2.12],
  [16, 0.99, 2.92],
  [50, 0.95, 2.01],
  [100, 0.9973, 3.077],
  [Infinity, 0.6827, 1.0],
  [Infinity, 0.9, 1.645],
  [Infinity, 0.95, 1.96],
  [Infinity, 0.9545, 2.0],
  [Infinity, 0.99, 2.576],
])("%d degrees of freedom, %d: %d", (freedom, coverage, expected) => {
  const digits = String(expected).split(".")[1]?.length ?? 0;
  expect(Math.abs(coverageFactor(coverage, freedom) - expected)).toBeLessThan(Math.max(0.6 * 10 ** -digits, 0.0006));
});

test("hardly any coverage, and nearly all of it, have a factor", () => {
  for (const freedom of [1, 2, 1000, Infinity]) {
    expect(coverageFactor(1e-17, freedom)).toBeCloseTo(0, 12);
    expect(coverageFactor(1 - 1e-15, freedom)).toBeGreaterThan(7);
  }
});

test("a broken number of degrees is cut, one that rounding keeps short is not", () => {
  expect(coverageFactor(0.95, 16.9)).toBe(coverageFactor(0.95, 16));
  expect(coverageFactor(0.95, 16 - 1e-14)).toBe(coverageFactor(0.95, 16));
});
