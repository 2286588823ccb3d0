/** Restated temperatures against the reference rows: 1e-8 K; in the worksheet, all rows of a band in one call. */
import { restate } from "../../src/core/whatif/restate.js";
import { findFunction } from "../../src/functions/catalogue.js";
import { bandOf, celsius, goldenRows, kelvin, numberIn, settingsIn } from "../support/radiometry.js";
import type { Row } from "../support/rows.js";

const rows = goldenRows("open_recompute");
const COLUMNS = ["eps", "t_refl", "tau1", "t_atm"];
const expected = (row: Row): number => numberIn(row, "t_obj_C");

describe("open_recompute", () => {
  it("has its rows", () => {
    expect(rows.length).toBeGreaterThanOrEqual(50);
  });

  it.each(rows)("%s", (_, row) => {
    const reported = kelvin(numberIn(row, "t_reported"));
    const found = restate(reported, settingsIn(row, "used_"), settingsIn(row, "new_"), bandOf(row));
    expect(Math.abs(celsius(found) - expected(row))).toBeLessThanOrEqual(1e-8);
  });

  it("GREY.RESTATE, a band a row", () => {
    const range = (prefix: string): number[][] =>
      rows.map(([, row]) => COLUMNS.map((column) => numberIn(row, prefix + column)));
    const reported = rows.map(([, row]) => [numberIn(row, "t_reported")]);
    const bands = rows.map(([, row]) => [`${row.band_lo_um ?? ""}-${row.band_hi_um ?? ""}`]);
    const found = findFunction("RESTATE")?.evaluate([reported, range("used_"), range("new_"), bands]) ?? [];
    expect(found).toHaveLength(rows.length);
    for (const [i, [, row]] of rows.entries()) {
      expect(Math.abs(Number(found[i]?.[0]) - expected(row))).toBeLessThanOrEqual(1e-8);
    }
  });
});
