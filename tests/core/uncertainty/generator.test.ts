/** The generator against published outputs; its numbers against their distributions, with a fixed seed and the bounds of chance. */
import { normal } from "../../../src/core/uncertainty/generator/normal.js";
import { Generator, stateOf } from "../../../src/core/uncertainty/generator/xoshiro.js";

const COUNT = 1_000_000;

describe("words", () => {
  it("are those of the authors' xoshiro128starstar.c from the state 1, 2, 3, 4", () => {
    // Printed in the documentation tests of the Rust crate rand_xoshiro, made with the authors' C code.
    const expected = [
      11520, 0, 5927040, 70819200, 2031721883, 1637235492, 1287239034, 3734860849, 3729100597, 4258142804,
    ];
    const generator = new Generator([1, 2, 3, 4]);
    expect(expected.map(() => generator.word() >>> 0)).toEqual(expected);
  });

  it("begin with a state by SplitMix64, low word first", () => {
    // Rosetta Code, "Pseudo-random numbers/Splitmix64", seed 1234567: 6457827717110365317, 3203168211198807973.
    const words = [6457827717110365317n, 3203168211198807973n].flatMap((z) => [z & 0xffffffffn, z >> 32n]);
    expect(stateOf(1234567).map((word) => BigInt(word >>> 0))).toEqual(words);
  });

  it("are the same from the same seed, others from another", () => {
    const first = (seed: number): number[] => {
      const generator = Generator.seeded(seed);
      return Array.from({ length: 3000 }, () => generator.word());
    };
    expect(first(7)).toEqual(first(7));
    expect(first(7)).not.toEqual(first(8));
  });

  it.each([0, -1, 1.5, NaN, 1e9 + 1])("have no seed %d", (seed) => {
    expect(() => Generator.seeded(seed)).toThrow(/INVALID seed/);
  });
});

/** Largest distance of an empirical distribution from the true one (Kolmogorov). */
function distance(values: Float64Array, cdf: (x: number) => number): number {
  values.sort();
  const steps = Array.from(values, (x, i) => Math.max((i + 1) / values.length - cdf(x), cdf(x) - i / values.length));
  return steps.reduce((most, step) => Math.max(most, step), 0);
}
/** Exceeded once in a million seeds: √(ln(2/α)/(2n)) for α = 1e-6 (Kolmogorov's limit law, from memory). */
const KOLMOGOROV = Math.sqrt(Math.log(2e6) / (2 * COUNT));

function drawn(seed: number, draw: (generator: Generator) => number): Float64Array {
  const generator = Generator.seeded(seed);
  return Float64Array.from({ length: COUNT }, () => draw(generator));
}

/** Mean of a power, and five of its standard errors off what it should be. */
function expectMoment(values: Float64Array, power: number, expected: number, variance: number): void {
  let sum = 0;
  for (const value of values) sum += value ** power;
  expect(Math.abs(sum / COUNT - expected)).toBeLessThan(5 * Math.sqrt(variance / COUNT));
}

/** Φ by numbers apart from the code: Simpson's rule on the density over steps of 1/1024. */
const NORMAL_CDF = ((): ((x: number) => number) => {
  const density = (x: number): number => Math.exp(-0.5 * x * x) / Math.sqrt(2 * Math.PI);
  const step = 1 / 1024;
  const table = [0];
  for (let i = 0; i < 9 * 1024; i++) {
    const x = -9 + i * step;
    table.push(table[i]! + (step / 6) * (density(x) + 4 * density(x + step / 2) + density(x + step)));
  }
  return (x) => {
    const z = Math.min(Math.max((x + 9) / step, 0), 9 * 1024);
    if (x > 0) return 1 - NORMAL_CDF(-x);
    const i = Math.min(Math.floor(z), 9 * 1024 - 1);
    return table[i]! + (z - i) * (table[i + 1]! - table[i]!);
  };
})();

describe("uniform numbers", () => {
  const values = drawn(20261126, (generator) => generator.uniform());

  it("lie in (0, 1), evenly", () => {
    // E(u) 1/2 and variance 1/12, E(u²) 1/3 and variance 4/45.
    expectMoment(values, 1, 1 / 2, 1 / 12);
    expectMoment(values, 2, 1 / 3, 4 / 45);
    expect(distance(values, (x) => x)).toBeLessThan(KOLMOGOROV);
    expect(values[0]).toBeGreaterThan(0);
    expect(values.at(-1)).toBeLessThan(1);
  });
});

describe("normal numbers", () => {
  const values = drawn(20261127, normal);

  it("have the moments of the standard normal distribution", () => {
    // 0, 1, 0, 3; variances 1, 2, 15, 96.
    expectMoment(values, 1, 0, 1);
    expectMoment(values, 2, 1, 2);
    expectMoment(values, 3, 0, 15);
    expectMoment(values, 4, 3, 96);
  });

  it("have as much beyond each end as they should, in the tail by itself too", () => {
    for (const [edge, share] of [
      // Upper tail of the standard normal distribution, from tables (Abramowitz & Stegun 26.1, from memory).
      [1, 0.158655254],
      [2, 0.022750132],
      [3, 0.001349898],
      [4, 0.0000316712],
    ] as const) {
      const off = 5 * Math.sqrt((share * (1 - share)) / COUNT);
      expect(Math.abs(values.filter((x) => x > edge).length / COUNT - share)).toBeLessThan(off);
      expect(Math.abs(values.filter((x) => x < -edge).length / COUNT - share)).toBeLessThan(off);
    }
  });

  it("follow the distribution", () => {
    expect(distance(values, NORMAL_CDF)).toBeLessThan(KOLMOGOROV);
  });

  it("do not hang together from one to the next", () => {
    const again = drawn(20261127, normal);
    let sum = 0;
    for (let i = 1; i < COUNT; i++) sum += again[i]! * again[i - 1]!;
    expect(Math.abs(sum / COUNT)).toBeLessThan(5 / Math.sqrt(COUNT));
  });
});
