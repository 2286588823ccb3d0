/** Budgets against the reference rows (contributions to 1e-9 relative), and the lines worked apart from this code. */
import { apparent } from "../../src/core/correction/correct.js";
import { DEFAULT_BAND, flatBand } from "../../src/core/planck/band.js";
import { budget } from "../../src/core/uncertainty/budget.js";
import { INPUT_NAMES } from "../../src/core/uncertainty/inputs.js";
import type { Distribution, InputName, UncertainReading } from "../../src/core/uncertainty/inputs.js";
import { bandOf, celsius, expectRelative, goldenRows, kelvin, numberIn, settingsIn } from "../support/radiometry.js";
import type { Row } from "../support/rows.js";

/** Columns by input, in the order of INPUT_NAMES. */
const COLUMNS = ["t_app", "eps", "t_refl", "tau1", "t_atm", "tau_w", "t_win", "rho_w", "t_refl_cam", "tau2"];
const columnOf = (name: InputName): string => COLUMNS[INPUT_NAMES.indexOf(name)] ?? "";

function readingOf(row: Row): UncertainReading {
  const given = INPUT_NAMES.map((name) => [name, numberIn(row, `u_${columnOf(name)}`)] as const);
  const r = numberIn(row, "corr_trefl_tatm");
  return {
    apparent: kelvin(numberIn(row, "t_app")),
    settings: settingsIn(row),
    uncertainties: Object.fromEntries(given.flatMap(([name, u]) => (Number.isNaN(u) ? [] : [[name, { stated: u }]]))),
    correlations: r === 0 ? [] : [{ one: "reflected", other: "airTemp", r }],
  };
}

const rows = goldenRows("open_uncertainty");

it("has its rows, with and without window and correlation", () => {
  expect(rows.length).toBeGreaterThanOrEqual(12);
  expect(rows.some(([, row]) => row.tau_w === "" && row.corr_trefl_tatm !== "0.0")).toBe(true);
  expect(rows.some(([, row]) => row.tau_w !== "" && row.corr_trefl_tatm === "0.0")).toBe(true);
});

it.each(rows)("%s", (_, row) => {
  const found = budget(readingOf(row), 0.95, bandOf(row));
  expect(Math.abs(celsius(found.temperature) - numberIn(row, "t_obj_C"))).toBeLessThanOrEqual(1e-8);
  expectRelative(found.combined, numberIn(row, "u_c_K"), 1e-9);
  for (const [i, name] of INPUT_NAMES.entries()) {
    const expected = numberIn(row, `contrib_${columnOf(name)}`);
    if (Number.isNaN(expected)) expect(found.contributions[i]).toBe(0);
    else expectRelative(found.contributions[i]!, expected, 1e-9, 1e-12);
  }
});

it("58 °C, emissivity 0.85: u 1.042950614 K, and each input's part", () => {
  const settings = { emissivity: 0.85, reflected: kelvin(22), airTransmission: 0.98, airTemp: kelvin(20) };
  const stated = { apparent: 0.5, emissivity: 0.02, reflected: 1, airTransmission: 0.005, airTemp: 1 };
  const uncertainties = Object.fromEntries(Object.entries(stated).map(([name, u]) => [name, { stated: u }]));
  const found = budget({ apparent: kelvin(58), settings, uncertainties }, 0.95, DEFAULT_BAND);
  expectRelative(found.combined, 1.042950614, 1e-9);
  const contributions = [0.57353035, -0.84083727, -0.12326048, -0.19062608, -0.01643678];
  for (const [i, expected] of contributions.entries()) {
    expect(Math.abs(found.contributions[i]! - expected)).toBeLessThan(1e-8);
  }
});

describe("70 °C in 8-14 µm, reflected 25 ± 5, camera ± 2, all half-widths of rectangles", () => {
  const distribution: Distribution = "rectangular";
  const at = (emissivity: number, half: number): ReturnType<typeof budget> => {
    const band = flatBand(8, 14);
    const settings = { emissivity, reflected: kelvin(25) };
    const shown = apparent(kelvin(70), settings, band);
    const uncertainties = {
      apparent: { stated: 2, distribution },
      emissivity: { stated: half, distribution },
      reflected: { stated: 5, distribution },
    };
    return budget({ apparent: shown, settings, uncertainties }, 0.95, band);
  };

  it.each([
    [0.95, 0.02, 2.6],
    [0.6, 0.1, 8.6],
    [0.3, 0.1, 18.6],
  ])("emissivity %d ± %d: %d K with k = 2, as the figures were made", (emissivity, half, expected) => {
    expect(Math.abs(2 * at(emissivity, half).combined - expected)).toBeLessThan(0.05);
  });

  it("0.95 ± 0.02: camera 1.20, emissivity 0.47, reflected 0.11 K", () => {
    const parts = at(0.95, 0.02)
      .contributions.slice(0, 3)
      .map((part) => Math.abs(part).toFixed(2));
    expect(parts).toEqual(["1.20", "0.47", "0.11"]);
  });
});
