/**
 * Hilpert 1933, cylinder in cross-flow: heat carried off ~ wind^m with m = 0.466 for Reynolds numbers 40 to 4000 and 0.618
 * for 4000 to 40,000. The exponents are from memory; the powers are arithmetic, printed here to two decimals.
 */
import { riseAtWind } from "../../src/core/loading/rise-at-wind.js";

const FACTORS = [
  [1, 1.0],
  [2, 1.38],
  [3, 1.67],
  [4, 1.91],
  [5, 2.12],
  [6, 2.3],
  [7, 2.48],
] as const;

describe("[memory] rise at 1 m/s over rise in the wind, exponent 0.466", () => {
  it.each(FACTORS)("%d m/s: %d", (wind, factor) => {
    expect(Math.abs(riseAtWind({ rise: 10, wind, exponent: 0.466 }) / 10 - factor)).toBeLessThanOrEqual(0.0055);
    const back = riseAtWind({ rise: 10 * factor, wind: 1, referenceWind: wind, exponent: 0.466 });
    expect(Math.abs(back - 10)).toBeLessThanOrEqual(0.05);
  });

  it("of the next range of Reynolds numbers is allowed too, 5 m/s: 5^0.618 = 2.70", () => {
    expect(Math.abs(riseAtWind({ rise: 10, wind: 5, exponent: 0.618 }) / 10 - 2.7)).toBeLessThanOrEqual(0.005);
  });
});
