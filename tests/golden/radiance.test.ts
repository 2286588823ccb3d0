/** Radiance both ways against the reference rows: tests/data/radiometry, 1e-12 relative and 1e-8 K. */
import {
  PLANCK_CONSTANT,
  SECOND_RADIATION_CONSTANT,
  SPEED_OF_LIGHT,
  STEFAN_BOLTZMANN_CONSTANT,
} from "../../src/core/constants.js";
import { responseBand } from "../../src/core/planck/band.js";
import { radiance, radianceSlope, temperature } from "../../src/core/planck/exact.js";
import { fractionBelow } from "../../src/core/planck/integrals.js";
import { tableFor } from "../../src/core/planck/tables.js";
import { bandOf, celsius, expectRelative, goldenRows, kelvin, numberIn, photonBandOf } from "../support/radiometry.js";

describe("open_radiance", () => {
  const rows = goldenRows("open_radiance");

  it("has its rows", () => {
    expect(rows.length).toBeGreaterThanOrEqual(398);
  });

  it.each(rows)("%s", (_, row) => {
    const band = bandOf(row);
    const t = kelvin(numberIn(row, "T_C"));
    const expected = numberIn(row, "L_W_m2_sr");
    const slope = numberIn(row, "dLdT_W_m2_sr_K");
    expectRelative(radiance(band, t), expected, 1e-12);
    expectRelative(radianceSlope(band, t), slope, 1e-12);
    // A response of λ in µm counts the photons: each brings hc/λ.
    const perPhoton = 1e6 * PLANCK_CONSTANT * SPEED_OF_LIGHT;
    expectRelative(radiance(photonBandOf(row), t) / perPhoton, numberIn(row, "Lq_photon_s_m2_sr"), 1e-12);
    const total = (STEFAN_BOLTZMANN_CONSTANT * t ** 4) / Math.PI;
    expectRelative(radiance(band, t) / total, numberIn(row, "fraction_of_total"), 1e-12);
    // The table by what its error means in kelvin.
    expect(Math.abs(tableFor(band).radiance(t) - expected) / slope).toBeLessThanOrEqual(1e-8);
  });
});

describe("open_inverse", () => {
  it.each(goldenRows("open_inverse"))("%s", (_, row) => {
    const band = bandOf(row);
    const signal = numberIn(row, "L_W_m2_sr");
    const expected = numberIn(row, "T_C");
    expect(Math.abs(celsius(temperature(band, signal)) - expected)).toBeLessThanOrEqual(1e-8);
    expect(Math.abs(celsius(tableFor(band).temperature(signal)) - expected)).toBeLessThanOrEqual(1e-8);
  });
});

describe("open_fraction", () => {
  it.each(goldenRows("open_fraction"))("%s", (_, row) => {
    const below = fractionBelow(numberIn(row, "lambdaT_umK") * 1e-6, SECOND_RADIATION_CONSTANT);
    expectRelative(below, numberIn(row, "F_0_lambdaT"), 1e-12);
    expect(Math.abs(1 - below - numberIn(row, "one_minus_F"))).toBeLessThanOrEqual(1e-15);
  });
});

describe("open_spectral_table", () => {
  it.each(goldenRows("open_spectral_table"))("%s", (_, row) => {
    const pairs = (row["table_lam:R"] ?? "").split(";").map((pair) => pair.split(":").map(Number));
    const band = responseBand(
      pairs.map(([wavelength = NaN]) => wavelength),
      pairs.map(([, response = NaN]) => response),
    );
    const t = kelvin(numberIn(row, "T_C"));
    const expected = numberIn(row, "L_W_m2_sr");
    expectRelative(radiance(band, t), expected, 1e-12);
    expect(Math.abs(tableFor(band).temperature(expected) - t)).toBeLessThanOrEqual(1e-8);
  });
});
