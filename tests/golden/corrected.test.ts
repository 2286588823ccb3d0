/** Correction and its sensitivities against the reference rows: 1e-8 K, sensitivities 1e-9 relative. */
import { correctBlock } from "../../src/core/correction/block.js";
import { apparent, correct, sensitivities, type Sensitivities } from "../../src/core/correction/correct.js";
import type { Settings } from "../../src/core/correction/settings.js";
import type { Band } from "../../src/core/planck/band.js";
import {
  bandOf,
  celsius,
  expectRelative,
  goldenRows,
  kelvin,
  numberIn,
  photonBandOf,
  settingsIn,
} from "../support/radiometry.js";

/** What the columns of derivatives are called. */
const DERIVATIVES: Readonly<Record<string, keyof Sensitivities>> = {
  t_app: "apparent",
  eps: "emissivity",
  t_refl: "reflected",
  tau1: "airTransmission",
  t_atm: "airTemp",
  tau_w: "windowTransmission",
  rho_w: "windowReflectance",
  t_win: "windowTemp",
  t_refl_cam: "outerReflected",
  tau2: "outerAirTransmission",
};

/** Fails unless the temperature is right to 1e-8 K, one at a time and as a block. */
function expectCorrected(reading: number, settings: Settings, band: Band, expected: number): void {
  const { temperature } = correct(reading, settings, band);
  expect(Math.abs(celsius(temperature) - expected)).toBeLessThanOrEqual(1e-8);
  const { emissivity, reflected, ...rest } = settings;
  const out = { temperature: new Float64Array(1) };
  const columns = { ...rest, emissivity: Float64Array.of(emissivity), reflected: Float64Array.of(reflected) };
  expect(correctBlock(Float64Array.of(reading), columns, band, out)).toBe(0);
  expect(Math.abs(celsius(out.temperature[0] ?? NaN) - expected)).toBeLessThanOrEqual(1e-8);
}

describe.each(["open_corrected_nowindow", "open_corrected_window"])("%s", (file) => {
  const rows = goldenRows(file);

  it("has its rows", () => {
    expect(rows.length).toBeGreaterThanOrEqual(100);
  });

  it.each(rows)("%s", (_, row) => {
    const band = bandOf(row);
    const reading = kelvin(numberIn(row, "t_app"));
    const settings = settingsIn(row);
    expectCorrected(reading, settings, band, numberIn(row, "t_obj_C"));
    const found = sensitivities(reading, settings, band);
    for (const [column, name] of Object.entries(DERIVATIVES)) {
      if (!(`dTobj_d_${column}` in row)) continue;
      expectRelative(found[name], numberIn(row, `dTobj_d_${column}`), 1e-9, 1e-12);
    }
  });
});

describe("open_corrected_photon: response proportional to wavelength", () => {
  it.each(goldenRows("open_corrected_photon"))("%s", (_, row) => {
    expectCorrected(kelvin(numberIn(row, "t_app")), settingsIn(row), photonBandOf(row), numberIn(row, "t_obj_C"));
  });
});

describe("open_forward_window", () => {
  it.each(goldenRows("open_forward_window"))("%s", (_, row) => {
    const found = apparent(kelvin(numberIn(row, "t_obj")), settingsIn(row), bandOf(row));
    expect(Math.abs(celsius(found) - numberIn(row, "t_app_C"))).toBeLessThanOrEqual(1e-8);
  });
});

describe("open_recompute: back to the reading, then corrected with other settings", () => {
  it.each(goldenRows("open_recompute"))("%s", (_, row) => {
    const band = bandOf(row);
    const reading = apparent(kelvin(numberIn(row, "t_reported")), settingsIn(row, "used_"), band);
    expect(Math.abs(celsius(reading) - numberIn(row, "t_app_C"))).toBeLessThanOrEqual(1e-8);
    expectCorrected(reading, settingsIn(row, "new_"), band, numberIn(row, "t_obj_C"));
  });
});
