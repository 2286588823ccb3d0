/**
 * CODATA 2018: h, c and k are exact, and so are the constants that follow from them, printed to ten digits. Stefan and
 * Boltzmann's law is the limit of ever wider bands.
 */
import {
  FIRST_RADIATION_CONSTANT,
  SECOND_RADIATION_CONSTANT,
  STEFAN_BOLTZMANN_CONSTANT,
} from "../../src/core/constants.js";
import { flatBand } from "../../src/core/planck/band.js";
import { radiance } from "../../src/core/planck/exact.js";
import { fractionBelow } from "../../src/core/planck/integrals.js";
import { EVERYTHING } from "../support/bands.js";
import { rowsOf } from "../support/rows.js";

/** Where the spectral radiance of a black body is highest, λ·T [m·K], found by halving. */
function wienDisplacement(): number {
  // The peak solves x = 5(1 − e^−x).
  let [low, high] = [4, 6];
  for (let step = 0; step < 60; step++) {
    const x = (low + high) / 2;
    if (x < 5 * -Math.expm1(-x)) low = x;
    else high = x;
  }
  return SECOND_RADIATION_CONSTANT / low;
}

const OURS: Readonly<Record<string, number>> = {
  "c1L W m2 sr-1": FIRST_RADIATION_CONSTANT,
  "c1 W m2": FIRST_RADIATION_CONSTANT * Math.PI,
  "c2 m K": SECOND_RADIATION_CONSTANT,
  "sigma W m-2 K-4": STEFAN_BOLTZMANN_CONSTANT,
  "Wien b um K": wienDisplacement() * 1e6,
};

describe("CODATA 2018, constants", () => {
  const rows = rowsOf("radiometry/check_values.csv").filter((row) => row.group === "constants");

  it("are all compared", () => {
    expect(rows.map((row) => row.item)).toEqual(Object.keys(OURS));
  });

  it.each(rows.map((row) => [row.item, row.status === "found" ? `read, ${row.source}` : "memory", row] as const))(
    "%s [%s]",
    (item = "", _, row) => {
      // Ten digits are printed: half a unit of the tenth.
      expect(Math.abs((OURS[item] ?? NaN) / Number(row.published) - 1)).toBeLessThanOrEqual(5e-10);
    },
  );
});

describe("Stefan and Boltzmann's law, σ as printed in CODATA 2018 [read]", () => {
  const SIGMA = 5.670374419e-8;

  it.each([150, 300, 1000, 5000])("a band over everything, %d K", (t) => {
    // Below 10 nm and beyond 1 m lies less than 1e-10 of it.
    expect(Math.abs((Math.PI * radiance(EVERYTHING, t)) / (SIGMA * t ** 4) - 1)).toBeLessThan(5e-10);
  });

  it.each([250, 300, 600, 1500])("the widest band there is and the fractions below and above it, %d K", (t) => {
    const inside = (Math.PI * radiance(flatBand(0.7, 20), t)) / (SIGMA * t ** 4);
    const below = fractionBelow(0.7e-6 * t, SECOND_RADIATION_CONSTANT);
    const above = 1 - fractionBelow(20e-6 * t, SECOND_RADIATION_CONSTANT);
    expect(Math.abs(below + inside + above - 1)).toBeLessThan(5e-10);
    expect(inside).toBeGreaterThan(0.5);
  });
});
