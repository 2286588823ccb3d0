/**
 * JCGM 101:2008, worked examples of clause 9, through the general propagation. What 200,000 draws scatter by is allowed
 * for; the rest is the source's own rounding.
 */
import { coverageFactor } from "../../src/core/uncertainty/coverage.js";
import { normal } from "../../src/core/uncertainty/generator/normal.js";
import type { Generator } from "../../src/core/uncertainty/generator/xoshiro.js";
import { firstOrder } from "../../src/core/uncertainty/gum.js";
import { propagate } from "../../src/core/uncertainty/propagate.js";
import type { Draw, Drawn, DrawOptions, Model } from "../../src/core/uncertainty/propagate.js";

const DRAWS = 200_000;
type One = (generator: Generator) => number;

/** Inputs that know nothing of each other. */
const independent =
  (ones: readonly One[]): Draw =>
  (generator, columns) => {
    for (const [i, one] of ones.entries()) {
      const column = columns[i]!;
      for (let k = 0; k < column.length; k++) column[k] = one(generator);
    }
  };

const eachRow =
  (value: (inputs: readonly number[]) => number): Model =>
  (columns, out) => {
    for (let k = 0; k < out.length; k++) out[k] = value(columns.map((column) => column[k]!));
  };

const drawn = (ones: readonly One[], value: (inputs: readonly number[]) => number, options: DrawOptions): Drawn =>
  propagate(ones.length, independent(ones), eachRow(value), { draws: DRAWS, seed: 101, ...options });

const gauss =
  (mean: number, u: number): One =>
  (g) =>
    mean + u * normal(g);
const rectangle =
  (low: number, high: number): One =>
  (g) =>
    low + (high - low) * g.uniform();

describe("9.2, an additive model of four inputs (values from memory)", () => {
  const sum = (inputs: readonly number[]): number => inputs.reduce((total, input) => total + input, 0);
  const unit = (u: number): One => rectangle(-u * Math.sqrt(3), u * Math.sqrt(3));

  test.each([
    ["9.2.2, four normal inputs", [gauss(0, 1), gauss(0, 1), gauss(0, 1), gauss(0, 1)], 2.0, 3.92, 0.02],
    ["9.2.3, four rectangular inputs", [unit(1), unit(1), unit(1), unit(1)], 2.0, 3.88, 0.02],
    ["9.2.4, one of them ten times as wide", [unit(1), unit(1), unit(1), unit(10)], 10.1, 17.0, 0.1],
  ] as const)("%s", (_, ones, u, end, tolerance) => {
    for (const interval of ["symmetric", "shortest"] as const) {
      const { mean, standardDeviation, low, high, rejected } = drawn([...ones], sum, { interval });
      expect(Math.abs(mean)).toBeLessThan((5 * u) / Math.sqrt(DRAWS));
      expect(Math.abs(standardDeviation - u)).toBeLessThan(0.05);
      // The shortest of a flat-topped distribution lies anywhere along its top: only its length is told.
      expect(Math.abs((high - low) / 2 - end)).toBeLessThan(tolerance);
      if (interval === "symmetric") {
        expect(Math.abs(high - end)).toBeLessThan(tolerance);
        expect(Math.abs(low + end)).toBeLessThan(tolerance);
      }
      expect(rejected).toBe(0);
    }
  });
});

test.each([
  ["9.2.2 and 9.2.3, four of 1", [1, 1, 1, 1], 2.0, 3.92],
  ["9.2.4, one of 10", [1, 1, 1, 10], 10.1, 19.9],
])("%s, first order beside the draws: u and its 95 %% interval (values from memory)", (_, standards, u, end) => {
  const { combined } = firstOrder(standards.map((standard) => ({ sensitivity: 1, standard })));
  expect(Math.abs(combined - u)).toBeLessThan(0.05);
  expect(Math.abs(coverageFactor(0.95, Infinity) * combined - end)).toBeLessThan(0.01);
});

/** χ² of that many degrees of freedom makes a normal number one of Student's (6.4.9.2). */
const student =
  (freedom: number, mean: number, u: number): One =>
  (g) => {
    let squares = 0;
    for (let i = 0; i < freedom; i++) squares += normal(g) ** 2;
    return mean + (u * normal(g)) / Math.sqrt(squares / freedom);
  };
/** U-shaped (6.4.6.2). */
const arcsine =
  (low: number, high: number): One =>
  (g) =>
    (low + high) / 2 + ((high - low) / 2) * Math.sin(2 * Math.PI * g.uniform());
/** A rectangle whose ends are known to ±d only (6.4.3.4). */
const curvilinear =
  (low: number, high: number, d: number): One =>
  (g) => {
    const from = low - d + 2 * d * g.uniform();
    return from + (low + high - 2 * from) * g.uniform();
  };

test("9.5, gauge block: 838, 36, shortest 99 % [745, 932] nm (read where MDPI Metrology 2(1) 2022 quotes it; inputs from memory)", () => {
  const nominal = 50_000_000;
  const ones = [
    student(18, 50_000_623, 25),
    student(24, 215, 6),
    student(5, 0, 4),
    student(8, 0, 7),
    rectangle(9.5e-6, 13.5e-6),
    gauss(-0.1, 0.2),
    arcsine(-0.5, 0.5),
    curvilinear(-1.0e-6, 1.0e-6, 0.1e-6),
    curvilinear(-0.05, 0.05, 0.025),
  ];
  const deviation = ([ls = 0, d = 0, d1 = 0, d2 = 0, as = 0, t0 = 0, delta = 0, da = 0, dt = 0]: readonly number[]) => {
    const theta = t0 + delta;
    return (ls * (1 + as * (theta - dt)) + d + d1 + d2) / (1 + (as + da) * theta) - nominal;
  };
  const { mean, standardDeviation, low, high } = drawn(ones, deviation, { coverage: 0.99, interval: "shortest" });
  expect(Math.round(mean)).toBe(838);
  expect(Math.round(standardDeviation)).toBe(36);
  expect(Math.abs(low - 745)).toBeLessThan(1.5);
  expect(Math.abs(high - 932)).toBeLessThan(1.5);
});
