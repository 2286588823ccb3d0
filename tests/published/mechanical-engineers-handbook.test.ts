/**
 * Mechanical Engineers' Handbook, vol. 4, Table 16: share of a black body's emission below λ·T, four digits. The table was
 * made with c₂ = 14388 µm·K; its tolerances allow for that. Bands are differences of two entries.
 */
import { SECOND_RADIATION_CONSTANT, STEFAN_BOLTZMANN_CONSTANT } from "../../src/core/constants.js";
import { radiance } from "../../src/core/planck/exact.js";
import { fractionBelow } from "../../src/core/planck/integrals.js";
import { expectCited, kelvinsIn, namedBand } from "../support/radiometry.js";
import { inputOf, publishedChecks } from "../support/rows.js";

describe("fractions", () => {
  const checks = publishedChecks("F16-");

  it("are all sixty-three", () => {
    expect(checks).toHaveLength(63);
  });

  it.each(checks.map((check) => [check.cited, check] as const))("%s", (_, check) => {
    expectCited(check, fractionBelow(inputOf(check, "lambda_T") * 1e-6, SECOND_RADIATION_CONSTANT));
  });
});

describe("bands", () => {
  const checks = publishedChecks("BAND-");

  it("are all twenty-four", () => {
    expect(checks).toHaveLength(24);
  });

  it.each(checks.map((check) => [check.cited, check] as const))("%s", (_, check) => {
    const t = kelvinsIn(check, "T");
    const l = radiance(namedBand(check), t);
    const kind = check.id.slice("BAND-".length, "BAND-".length + 1);
    const exitance = Math.PI * l;
    expectCited(check, kind === "L" ? l : kind === "M" ? exitance : exitance / (STEFAN_BOLTZMANN_CONSTANT * t ** 4));
  });
});
