/** Monte Carlo against the reference rows: a million draws of another implementation with another generator. */
import { INPUT_NAMES } from "../../src/core/uncertainty/inputs.js";
import { monteCarlo } from "../../src/core/uncertainty/monte-carlo.js";
import { bandOf, celsius, goldenRows, kelvin, numberIn, settingsIn } from "../support/radiometry.js";
import type { Row } from "../support/rows.js";

/** Columns of the uncertainties, in the order of the inputs. */
const COLUMNS = ["t_app", "eps", "t_refl", "tau1", "t_atm", "tau_w", "t_win", "rho_w", "t_refl_cam", "tau2"];
const DRAWS = 1_000_000;

const rows = goldenRows("open_uncertainty").filter(([, row]) => !Number.isNaN(numberIn(row, "mc_mean")));

function drawn(row: Row, interval: "symmetric" | "shortest") {
  const given = INPUT_NAMES.flatMap((name, i) => {
    const stated = numberIn(row, `u_${COLUMNS[i] ?? ""}`);
    return Number.isNaN(stated) ? [] : [[name, { stated }] as const];
  });
  const reading = {
    apparent: kelvin(numberIn(row, "t_app")),
    settings: settingsIn(row),
    uncertainties: Object.fromEntries(given),
    correlations: [{ one: "reflected" as const, other: "airTemp" as const, r: numberIn(row, "corr_trefl_tatm") }],
  };
  return monteCarlo(reading, bandOf(row), { draws: DRAWS, seed: 5, interval });
}

it("has rows to compare", () => {
  expect(rows.map(([id]) => id)).toHaveLength(4);
});

it.each(rows)("%s", (_, row) => {
  const u = numberIn(row, "u_c_K");
  const { mean, standardDeviation, low, high, rejected } = drawn(row, "symmetric");
  // Both sides are draws: each scatters by u/√M.
  expect(Math.abs(celsius(mean) - numberIn(row, "mc_mean"))).toBeLessThan((5 * u) / Math.sqrt(DRAWS));
  expect(Math.abs(standardDeviation / numberIn(row, "mc_sd") - 1)).toBeLessThan(0.01);
  expect(Math.abs(celsius(low) - numberIn(row, "mc_sym_lo"))).toBeLessThan(0.03 * u);
  expect(Math.abs(celsius(high) - numberIn(row, "mc_sym_hi"))).toBeLessThan(0.03 * u);
  expect(rejected).toBeCloseTo(numberIn(row, "mc_frac_bad"), 3);
  const shortest = drawn(row, "shortest");
  // Where it lies is uncertain where the top is flat; how long it is, is not.
  const length = numberIn(row, "mc_short_hi") - numberIn(row, "mc_short_lo");
  expect(Math.abs(shortest.high - shortest.low - length)).toBeLessThan(0.03 * u);
});
