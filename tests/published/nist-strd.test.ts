/**
 * NIST Statistical Reference Datasets, linear regression: Norris and NoInt1 (lower and average difficulty), Pontius
 * (a quadratic). Certified to 15 digits; at least 9 of them are wanted here.
 */
import { leastSquares } from "../../src/core/trend/least-squares.js";
import { certified } from "../support/certified.js";

const SETS: readonly (readonly [file: string, columns: (x: number) => number[]])[] = [
  ["nist_norris", (x) => [1, x]],
  ["nist_pontius", (x) => [1, x, x * x]],
  ["nist_noint1", (x) => [x]],
];

/** Digits that agree: −log10 of the relative difference. */
const digits = (value: number, certifiedValue: number): number =>
  -Math.log10(Math.max(Math.abs(value / certifiedValue - 1), 1e-16));

describe.each(SETS)("NIST StRD %s", (file, columnsAt) => {
  const { x, y, value } = certified(file);
  const rows = x.map(columnsAt);
  const columns = (rows[0] ?? []).map((_, c) => rows.map((row) => row[c] ?? NaN));
  const fit = leastSquares(columns, y);

  it("has its observations", () => {
    expect(x.length).toBe({ nist_norris: 36, nist_pontius: 40, nist_noint1: 11 }[file]);
    expect(fit.freedom).toBe(x.length - columns.length);
  });

  it("coefficients", () => {
    for (const [i, coefficient] of fit.coefficients.entries()) {
      expect(digits(coefficient, value(`B${i}`))).toBeGreaterThan(9);
    }
  });

  it("standard deviations of the coefficients", () => {
    for (const i of fit.coefficients.keys()) {
      expect(digits(Math.sqrt(fit.covariance[i]?.[i] ?? NaN), value(`se B${i}`))).toBeGreaterThan(9);
    }
  });

  it("residual standard deviation", () => {
    expect(digits(fit.residual, value("residual sd"))).toBeGreaterThan(9);
  });
});
