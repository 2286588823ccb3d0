import * as fc from "fast-check";
import { apparent } from "../../../src/core/correction/correct.js";
import { DEFAULT_BAND, flatBand } from "../../../src/core/planck/band.js";
import { budget } from "../../../src/core/uncertainty/budget.js";
import { drawInputs } from "../../../src/core/uncertainty/draws.js";
import type { DrawnInput } from "../../../src/core/uncertainty/draws.js";
import { Generator } from "../../../src/core/uncertainty/generator/xoshiro.js";
import type { Distribution, UncertainReading } from "../../../src/core/uncertainty/inputs.js";
import { monteCarlo } from "../../../src/core/uncertainty/monte-carlo.js";
import { propagate } from "../../../src/core/uncertainty/propagate.js";
import type { Model } from "../../../src/core/uncertainty/propagate.js";
import { celsius, kelvin } from "../../support/radiometry.js";
import { refusal } from "../../support/refusal.js";

const reading: UncertainReading = {
  apparent: kelvin(58),
  settings: { emissivity: 0.85, reflected: kelvin(22), airTransmission: 0.98, airTemp: kelvin(20) },
  uncertainties: {
    apparent: { stated: 0.5 },
    emissivity: { stated: 0.02 },
    reflected: { stated: 1 },
    airTransmission: { stated: 0.005 },
    airTemp: { stated: 1 },
  },
};
const withU = (uncertainties: UncertainReading["uncertainties"]): UncertainReading => ({ ...reading, uncertainties });

/** Standard deviation of each distribution whose stated width is 1: 1, 1/√3, 1/√6 (JCGM 100, 4.3.7 and 4.3.9). */
const DEVIATION: Record<Distribution, number> = {
  normal: 1,
  rectangular: Math.sqrt(1 / 3),
  triangular: Math.sqrt(1 / 6),
};

describe("draws of one input", () => {
  const N = 200_000;
  test.each<[Distribution, number]>([
    // Kurtosis of each: 3, 9/5, 12/5.
    ["normal", 3],
    ["rectangular", 1.8],
    ["triangular", 2.4],
  ])("%s: mean, deviation, kurtosis and ends, alone and with another", (distribution, kurtosis) => {
    for (const r of [0, 0.5]) {
      const inputs: DrawnInput[] = [
        { value: 10, stated: 1, distribution: "normal" },
        { value: 5, stated: 2, distribution },
      ];
      const columns = [new Float64Array(N), new Float64Array(N)];
      drawInputs(inputs, [
        [1, r],
        [r, 1],
      ])(Generator.seeded(3), columns);
      const values = columns[1]!;
      const moment = (power: number): number => values.reduce((sum, x) => sum + ((x - 5) / 2) ** power, 0) / N;
      const deviation = DEVIATION[distribution];
      expect(Math.abs(moment(1))).toBeLessThan((5 * deviation) / Math.sqrt(N));
      expect(Math.abs(moment(2) / deviation ** 2 - 1)).toBeLessThan((5 * Math.sqrt(kurtosis - 1)) / Math.sqrt(N));
      expect(Math.abs(moment(4) / deviation ** 4 / kurtosis - 1)).toBeLessThan(0.05);
      if (distribution !== "normal") {
        expect(values.every((x) => Math.abs(x - 5) <= 2)).toBe(true);
        expect(values.some((x) => Math.abs(x - 5) > 1.99)).toBe(true);
      }
    }
  });
});

/** Coefficient of correlation of two columns. */
function coefficient(a: Float64Array, b: Float64Array): number {
  const mean = (x: Float64Array): number => x.reduce((sum, value) => sum + value, 0) / x.length;
  const [ma, mb] = [mean(a), mean(b)];
  const cross = (x: Float64Array, mx: number, y: Float64Array, my: number): number =>
    x.reduce((sum, value, i) => sum + (value - mx) * (y[i]! - my), 0);
  return cross(a, ma, b, mb) / Math.sqrt(cross(a, ma, a, ma) * cross(b, mb, b, mb));
}

describe("draws that go together", () => {
  const N = 200_000;
  const draw = (distribution: Distribution, matrix: number[][]): Float64Array[] => {
    const columns = matrix.map(() => new Float64Array(N));
    drawInputs(
      matrix.map((_, i) => ({ value: i, stated: 1 + i, distribution })),
      matrix,
    )(Generator.seeded(11), columns);
    return columns;
  };
  const three = [
    [1, 0.8, -0.3],
    [0.8, 1, 0.2],
    [-0.3, 0.2, 1],
  ];

  test("normal ones have the coefficients that were asked for", () => {
    const columns = draw("normal", three);
    for (const [i, row] of three.entries()) {
      for (const [j, r] of row.entries()) {
        expect(Math.abs(coefficient(columns[i]!, columns[j]!) - r)).toBeLessThan(5 / Math.sqrt(N));
      }
    }
  });

  test("rectangular ones 6/π·asin(r/2), as of a Gaussian copula (Pearson 1907, from memory)", () => {
    const columns = draw("rectangular", three);
    for (const [i, j] of [
      [0, 1],
      [0, 2],
      [1, 2],
    ] as const) {
      const expected = (6 / Math.PI) * Math.asin((three[i]?.[j] ?? 0) / 2);
      expect(Math.abs(coefficient(columns[i]!, columns[j]!) - expected)).toBeLessThan(5 / Math.sqrt(N));
    }
  });

  test("what goes together wholly moves as one", () => {
    const [a, b] = draw("normal", [
      [1, 1],
      [1, 1],
    ]) as [Float64Array, Float64Array];
    for (let k = 0; k < 100; k++) expect(b[k]! - 1).toBeCloseTo(2 * a[k]!, 12);
  });
});

test("a linear model gives what first order gives, whatever the distributions", () => {
  const distribution = fc.constantFrom<Distribution>("normal", "rectangular", "triangular");
  const term = fc.record({
    factor: fc.double({ min: -3, max: 3, noNaN: true }),
    stated: fc.double({ min: 0.1, max: 2, noNaN: true }),
    distribution,
  });
  const N = 50_000;
  fc.assert(
    fc.property(fc.array(term, { minLength: 1, maxLength: 5 }), fc.integer({ min: 1, max: 1e6 }), (terms, seed) => {
      const inputs = terms.map(({ stated, distribution: d }, i) => ({ value: i, stated, distribution: d }));
      const model: Model = (columns, out) => {
        for (let k = 0; k < out.length; k++)
          out[k] = terms.reduce((s, { factor }, i) => s + factor * columns[i]![k]!, 0);
      };
      const matrix = terms.map((_, i) => terms.map((__, j) => (i === j ? 1 : 0)));
      const { mean, standardDeviation } = propagate(terms.length, drawInputs(inputs, matrix), model, {
        draws: N,
        seed,
      });
      const u = Math.sqrt(terms.reduce((s, t) => s + (t.factor * t.stated * DEVIATION[t.distribution]) ** 2, 0));
      const at = terms.reduce((s, { factor }, i) => s + factor * i, 0);
      expect(Math.abs(mean - at)).toBeLessThan((6 * u) / Math.sqrt(N) + 1e-12);
      // No mixture of these has a kurtosis above 3: the deviation scatters by u/√(2N) at most.
      expect(Math.abs(standardDeviation - u)).toBeLessThan((6 * u) / Math.sqrt(2 * N) + 1e-12);
    }),
    { numRuns: 20 },
  );
});

describe("a reading", () => {
  test("with small uncertainties gives what first order gives, correlation and all", () => {
    const correlations = [{ one: "reflected", other: "airTemp", r: 0.9 }] as const;
    for (const given of [reading, { ...reading, correlations }]) {
      const { combined, temperature } = budget(given, 0.95, DEFAULT_BAND);
      const { mean, standardDeviation } = monteCarlo(given, DEFAULT_BAND);
      expect(Math.abs(mean - temperature)).toBeLessThan(0.02 * combined + 0.02);
      expect(Math.abs(standardDeviation / combined - 1)).toBeLessThan(0.02);
    }
  });

  test("at a low emissivity gives what first order cannot: 87 and [59, 151] °C where that says 80 ± 16", () => {
    // Reference implementation of the house, printed to whole kelvins; the surroundings, not printed there, taken as 20 °C.
    const settings = { emissivity: 0.15, reflected: kelvin(20) };
    const shown = apparent(kelvin(80), settings, DEFAULT_BAND);
    const low = { apparent: shown, settings, uncertainties: { emissivity: { stated: 0.05 } } };
    expect(Math.round(budget(low, 0.95, DEFAULT_BAND).combined)).toBe(16);
    const found = monteCarlo(low, DEFAULT_BAND, { draws: 1_000_000 });
    expect(Math.round(celsius(found.mean))).toBe(87);
    expect(Math.abs(celsius(found.low) - 59)).toBeLessThan(1);
    expect(Math.abs(celsius(found.high) - 151)).toBeLessThan(1);
  });

  test("ε 0.95 ± 0.02 puts 0.6 % of the draws above 1: they are rejected and told", () => {
    const near = { ...withU({ emissivity: { stated: 0.02 } }), settings: { emissivity: 0.95, reflected: kelvin(22) } };
    // Upper tail of the normal distribution beyond 2.5 standard deviations: 0.00621 (tables).
    const { rejected } = monteCarlo(near, DEFAULT_BAND, { draws: 1_000_000 });
    expect(Math.abs(rejected - 0.00621)).toBeLessThan(0.0005);
    // A rectangle that stays below 1 loses none.
    const inside = { ...near, uncertainties: { emissivity: { stated: 0.05, distribution: "rectangular" as const } } };
    expect(monteCarlo(inside, DEFAULT_BAND).rejected).toBe(0);
  });

  test("draws without a solution are rejected and told", () => {
    // The edge of what has a solution at ε 0.5 and 22 °C is −15.9 °C (reference implementation, 7.5 to 14 µm).
    const edge = { ...withU({ apparent: { stated: 1 } }), apparent: kelvin(-15.4) };
    const { rejected } = monteCarlo(
      { ...edge, settings: { emissivity: 0.5, reflected: kelvin(22) } },
      flatBand(7.5, 14),
    );
    // 0.5 K above the edge, half a standard deviation: 31 % below it; the edge is printed to a tenth of a kelvin.
    expect(rejected).toBeGreaterThan(0.27);
    expect(rejected).toBeLessThan(0.35);
  });

  test("the same seed gives the same, another seed another, within what draws scatter by", () => {
    const one = monteCarlo(reading, DEFAULT_BAND, { seed: 4 });
    expect(monteCarlo(reading, DEFAULT_BAND, { seed: 4 })).toEqual(one);
    const other = monteCarlo(reading, DEFAULT_BAND, { seed: 5 });
    expect(other.mean).not.toBe(one.mean);
    expect(Math.abs(other.mean - one.mean)).toBeLessThan((8 * one.standardDeviation) / Math.sqrt(100_000));
  });

  test("a wider coverage gives a wider interval", () => {
    const widths = [0.5, 0.9, 0.95, 0.99].map((coverage) => {
      const { low, high } = monteCarlo(reading, DEFAULT_BAND, { coverage });
      return high - low;
    });
    expect(widths).toEqual([...widths].sort((a, b) => a - b));
  });

  test.each([
    [{ draws: 999 }, "INVALID draws"],
    [{ draws: 5_000_001 }, "INVALID draws"],
    [{ draws: 1000.5 }, "INVALID draws 1000.5 whole-number"],
    [{ draws: 1000, coverage: 0.995 }, "INVALID draws 1000 draws-too-few"],
    [{ seed: 0 }, "INVALID seed"],
    [{ seed: 1.5 }, "INVALID seed 1.5 whole-number"],
    [{ coverage: 95 }, "INVALID coverage 95 per-cent"],
  ])("refuses %j: %s", (options, told) => {
    expect(() => monteCarlo(reading, DEFAULT_BAND, options)).toThrow(told);
  });

  test("with hardly a draw left has no answer", () => {
    // At the end of its range half the draws of an input cannot be; of four such inputs 15 in 16.
    const ends = { emissivity: 1, airTransmission: 1, windowTransmission: 1, outerAirTransmission: 1 };
    const atEnds = (names: readonly (keyof typeof ends)[]): UncertainReading => ({
      apparent: kelvin(58),
      settings: { reflected: kelvin(22), airTemp: kelvin(20), windowTemp: kelvin(25), ...ends },
      uncertainties: Object.fromEntries(names.map((name) => [name, { stated: 0.001 }])),
    });
    expect(monteCarlo(atEnds(["emissivity"]), DEFAULT_BAND).rejected).toBeCloseTo(0.5, 2);
    expect(monteCarlo(atEnds(["emissivity", "airTransmission"]), DEFAULT_BAND).rejected).toBeCloseTo(0.75, 2);
    const all = atEnds(["emissivity", "airTransmission", "windowTransmission", "outerAirTransmission"]);
    const told = refusal(() => monteCarlo(all, DEFAULT_BAND));
    expect([told.code, told.hint?.key]).toEqual(["REFUSED", "draws-rejected"]);
  });
});
