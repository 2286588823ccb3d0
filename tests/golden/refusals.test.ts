/** What must be refused, and what must be answered although it looks odd: by the core and by the worksheet function. */
import { apparent, correct } from "../../src/core/correction/correct.js";
import { findFunction } from "../../src/functions/catalogue.js";
import type { Cell } from "../../src/functions/contract.js";
import { bandOf, celsius, goldenRows, kelvin, numberIn, settingsIn } from "../support/radiometry.js";
import { refusal } from "../support/refusal.js";
import type { Row } from "../support/rows.js";

const ARGUMENTS = ["t_app", "eps", "t_refl", "tau1", "t_atm", "tau_w", "t_win", "rho_w", "t_refl_cam", "tau2"];

/** GREY.CORRECTED on a row, empty cells where it has nothing. */
function worksheet(row: Row, change: Readonly<Record<string, number | null>> = {}): Cell {
  const inputs = ARGUMENTS.map((column) => {
    if (column in change) return change[column];
    const value = numberIn(row, column);
    return Number.isNaN(value) ? null : value;
  });
  const [[cell] = []] = findFunction("CORRECTED")?.evaluate([...inputs, `${row.band_lo_um}-${row.band_hi_um}`]) ?? [];
  return cell ?? null;
}

describe("open_invalid", () => {
  const rows = goldenRows("open_invalid");

  it("has rows of both kinds", () => {
    const kinds = new Set(rows.map(([, row]) => row.expected));
    expect(kinds).toEqual(new Set(["INVALID", "NO_SOLUTION"]));
  });

  it.each(rows)("%s, the core", (_, row) => {
    const error = refusal(() => correct(kelvin(numberIn(row, "t_app")), settingsIn(row), bandOf(row)));
    expect(error.code).toBe(row.expected);
    expect(error.argument).toMatch(/^[a-z_]+$/);
  });

  it.each(rows)("%s, the worksheet function", (_, row) => {
    expect(worksheet(row)).toMatchObject({ error: row.expected === "INVALID" ? "#VALUE!" : "#N/A" });
  });
});

describe("open_edge_valid", () => {
  it.each(goldenRows("open_edge_valid"))("%s", (_, row) => {
    const expected = numberIn(row, "t_obj_C");
    const reading = kelvin(numberIn(row, "t_app"));
    const { temperature } = correct(reading, settingsIn(row), bandOf(row));
    expect(Math.abs(celsius(temperature) - expected)).toBeLessThanOrEqual(1e-8);
    expect(Math.abs(Number(worksheet(row)) - expected)).toBeLessThanOrEqual(1e-8);
    expect(Math.abs(apparent(temperature, settingsIn(row), bandOf(row)) - reading)).toBeLessThanOrEqual(1e-8);
  });
});
