import type { Settings } from "../../src/core/correction/settings.js";
import { flatBand, responseBand, type Band } from "../../src/core/planck/band.js";
import { inputOf, rowsOf, type PublishedCheck, type Row } from "./rows.js";

export const kelvin = (celsius: number): number => celsius + 273.15;
export const celsius = (kelvins: number): number => kelvins - 273.15;

/** The number in a column of a row; NaN where the cell is empty or missing, so that no check passes by it. */
export function numberIn(row: Row, column: string): number {
  const text = row[column];
  return text === undefined || text === "" ? NaN : Number(text);
}

/** The flat band of a row. */
export function bandOf(row: Row): Band {
  return flatBand(numberIn(row, "band_lo_um"), numberIn(row, "band_hi_um"));
}

/** A camera that counts photons: response proportional to wavelength. */
export function photonBandOf(row: Row): Band {
  const edges = [numberIn(row, "band_lo_um"), numberIn(row, "band_hi_um")];
  return responseBand(edges, edges);
}

/** Columns of the reference rows by setting; temperatures are in °C there. */
const COLUMNS: { readonly [Name in keyof Required<Settings>]: readonly [column: string, temperature: boolean] } = {
  emissivity: ["eps", false],
  reflected: ["t_refl", true],
  airTransmission: ["tau1", false],
  airTemp: ["t_atm", true],
  windowTransmission: ["tau_w", false],
  windowTemp: ["t_win", true],
  windowReflectance: ["rho_w", false],
  outerReflected: ["t_refl_cam", true],
  outerAirTransmission: ["tau2", false],
};

/** The settings of a row; what it has no value for is left out. `prefix` where a row has two sets of them. */
export function settingsIn(row: Row, prefix = ""): Settings {
  const given = Object.entries(COLUMNS).flatMap(([name, [column, temperature]]) => {
    const value = numberIn(row, prefix + column);
    return Number.isNaN(value) ? [] : [[name, temperature ? kelvin(value) : value] as const];
  });
  return Object.fromEntries(given) as unknown as Settings;
}

/** The rows of a file under tests/data/radiometry with their ids, as `it.each` wants them. */
export function goldenRows(file: string): (readonly [id: string, row: Row])[] {
  return rowsOf(`radiometry/${file}.csv`).map((row) => [row.id ?? "", row] as const);
}

/** Fails unless value is within a relative difference of what is expected, or within a floor. */
export function expectRelative(value: number, expected: number, relative: number, floor = 0): void {
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(Math.max(relative * Math.abs(expected), floor));
}

/** The band named in the inputs of a published check: "band=3-4.5 um". */
export function namedBand(check: PublishedCheck): Band {
  const found = /band=([\d.]+)-([\d.]+)/.exec(check.inputs);
  return flatBand(Number(found?.[1]), Number(found?.[2]));
}

/** A temperature among the inputs of a published check, printed in °C or K, in kelvin. */
export function kelvinsIn(check: PublishedCheck, name: string): number {
  const value = inputOf(check, name);
  return new RegExp(`(?:^|; ?)${name}=-?[\\d.]+ K`).test(check.inputs) ? value : kelvin(value);
}

/** Fails unless the value is what the source prints, to its tolerance; rounding is allowed for in proportion, not flat. */
export function expectCited(check: PublishedCheck, value: number): void {
  expect(Math.abs(value - check.expected)).toBeLessThanOrEqual(check.tolerance + 1e-12 * Math.abs(check.expected));
}
