/**
 * Transmission, emissivity and reflected temperature by measurement against the reference rows: fractions to 1e-9 relative,
 * temperatures to 1e-8 K. Air in front of a reading is taken out first where the function has no argument for it.
 */
import { correct } from "../../src/core/correction/correct.js";
import { emissivityByContact } from "../../src/core/measured/emissivity-by-contact.js";
import { reflectedByReflector } from "../../src/core/measured/reflected.js";
import { windowTransmission, windowTransmissionPair } from "../../src/core/window/transmission.js";
import { findFunction } from "../../src/functions/catalogue.js";
import { bandOf, celsius, expectRelative, goldenRows, kelvin, numberIn } from "../support/radiometry.js";
import type { Row } from "../support/rows.js";

const WITHIN = 1e-9;
const temperature = (row: Row, column: string): number => kelvin(numberIn(row, column));

/** A reading without the air in front of it. */
function withoutAir(row: Row, column: string, transmission: string): number {
  const airTransmission = numberIn(row, transmission);
  const air = { airTransmission, airTemp: temperature(row, "t_atm") };
  return correct(temperature(row, column), { emissivity: 1, reflected: 300, ...air }, bandOf(row)).temperature;
}

/** What a worksheet function gives for columns of a row. */
function worksheet(name: string, row: Row, columns: readonly string[]): number {
  const inputs = columns.map((column) => numberIn(row, column));
  const [[cell] = []] =
    findFunction(name)?.evaluate([...inputs, `${row.band_lo_um ?? ""}-${row.band_hi_um ?? ""}`]) ?? [];
  return Number(cell);
}

describe("open_window_tau", () => {
  const rows = goldenRows("open_window_tau");

  it("has its rows, with and without air and reflectance", () => {
    expect(rows).toHaveLength(30);
    expect(rows.some(([, row]) => numberIn(row, "tau2") < 1)).toBe(true);
    expect(rows.some(([, row]) => numberIn(row, "rho_w") > 0)).toBe(true);
  });

  it.each(rows)("%s", (_, row) => {
    const inputs = {
      readingWithout: withoutAir(row, "t_without", "tau2"),
      readingWith: withoutAir(row, "t_with", "tau2"),
      windowTemp: temperature(row, "t_win"),
      windowReflectance: numberIn(row, "rho_w"),
      outerReflected: temperature(row, "t_refl_cam"),
    };
    expectRelative(windowTransmission(inputs, bandOf(row)), numberIn(row, "tau_w"), WITHIN);
  });

  it.each(rows.filter(([, row]) => numberIn(row, "tau2") === 1))("%s, the worksheet function", (_, row) => {
    const columns = ["t_without", "t_with", "t_win", "rho_w", "t_refl_cam"];
    expectRelative(worksheet("WINDOW_TRANSMISSION", row, columns), numberIn(row, "tau_w"), WITHIN);
  });
});

describe("open_window_tau_two", () => {
  it.each(goldenRows("open_window_tau_two"))("%s", (_, row) => {
    const inputs = {
      hotWithout: temperature(row, "hot_without"),
      hotThrough: temperature(row, "hot_with"),
      coldWithout: temperature(row, "cold_without"),
      coldThrough: temperature(row, "cold_with"),
    };
    expectRelative(windowTransmissionPair(inputs, bandOf(row)), numberIn(row, "tau_w"), WITHIN);
    const columns = ["hot_without", "hot_with", "cold_without", "cold_with"];
    expectRelative(worksheet("WINDOW_TRANSMISSION_PAIR", row, columns), numberIn(row, "tau_w"), WITHIN);
  });
});

describe("open_emissivity_contact", () => {
  it.each(goldenRows("open_emissivity_contact"))("%s", (_, row) => {
    const inputs = {
      apparent: temperature(row, "t_app"),
      contactTemp: temperature(row, "t_contact"),
      reflected: temperature(row, "t_refl"),
      airTransmission: numberIn(row, "tau1"),
      airTemp: temperature(row, "t_atm"),
    };
    expectRelative(emissivityByContact(inputs, bandOf(row)), numberIn(row, "eps"), WITHIN);
    const columns = ["t_app", "t_contact", "t_refl", "tau1", "t_atm"];
    expectRelative(worksheet("EMISSIVITY_BY_CONTACT", row, columns), numberIn(row, "eps"), WITHIN);
  });
});

describe("open_reflected", () => {
  const rows = goldenRows("open_reflected");

  it.each(rows)("%s", (_, row) => {
    const inputs = {
      apparent: withoutAir(row, "t_app_reflector", "tau1"),
      reflectance: numberIn(row, "rho_reflector"),
      reflectorTemp: temperature(row, "t_reflector"),
    };
    const found = celsius(reflectedByReflector(inputs, bandOf(row)));
    expect(Math.abs(found - numberIn(row, "t_refl_C"))).toBeLessThanOrEqual(1e-8);
  });

  it.each(rows.filter(([, row]) => numberIn(row, "tau1") === 1))("%s, the worksheet function", (_, row) => {
    const columns = ["t_app_reflector", "rho_reflector", "t_reflector"];
    const found = worksheet("REFLECTED_BY_REFLECTOR", row, columns);
    expect(Math.abs(found - numberIn(row, "t_refl_C"))).toBeLessThanOrEqual(1e-8);
  });
});
