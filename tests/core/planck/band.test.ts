import type { Range } from "../../../src/core/errors.js";
import { DEFAULT_BAND, flatBand, responseAt, responseBand } from "../../../src/core/planck/band.js";
import { radiance } from "../../../src/core/planck/exact.js";
import { refusal } from "../../support/refusal.js";

describe("a flat band", () => {
  it.each([
    [0.7, 20],
    [0.7, 0.70001],
    [19.9, 20],
    [7.5, 14],
  ])("%d to %d µm is taken", (from, to) => {
    expect(radiance(flatBand(from, to), 300)).toBeGreaterThan(0);
  });

  it.each([
    [0.69, 5, 0.69],
    [0.6999999, 5, 0.6999999],
    [3, 20.0000001, 20.0000001],
    [3, 21, 21],
    [-3, 5, -3],
    [0, 5, 0],
    [NaN, 5, NaN],
    [3, NaN, NaN],
    [3, Infinity, Infinity],
    // Metres where micrometres are meant.
    [3e-6, 5e-6, 3e-6],
  ])("%d to %d µm is refused for %d", (from, to, given) => {
    const error = refusal(() => flatBand(from, to));
    expect(error).toMatchObject({ code: "INVALID", argument: "band", given, hint: { key: "band-wavelengths" } });
    const { min, max } = error.allowed as Range;
    expect([min, max].map((end) => Math.round((end ?? NaN) * 1e12) / 1e6)).toEqual([0.7, 20]);
  });

  it.each([
    [14, 7.5],
    [8, 8],
  ])("%d to %d µm is no band", (from, to) => {
    expect(refusal(() => flatBand(from, to))).toMatchObject({ code: "INVALID", hint: { key: "band-order" } });
  });

  it("is 7.5 to 14 µm where none is given", () => {
    expect(DEFAULT_BAND).toEqual(flatBand(7.5, 14));
  });

  it("has one key however its ends are written, and another for another band", () => {
    expect(flatBand(7.5, 14).key).toBe(flatBand(Number("7.50"), Number("14.0")).key);
    const keys = [flatBand(7.5, 14), flatBand(7.5, 13), responseBand([7.5, 14], [1, 0.5])].map((band) => band.key);
    expect(new Set(keys).size).toBe(3);
  });
});

describe("a response table", () => {
  it("is straight between its rows and nothing outside them", () => {
    const band = responseBand([8, 10, 14], [0, 1, 0.5]);
    expect(responseAt(band, 9e-6)).toBeCloseTo(0.5, 12);
    expect(responseAt(band, 12e-6)).toBeCloseTo(0.75, 12);
    expect(responseAt(band, 10e-6)).toBeCloseTo(1, 12);
    expect(responseAt(band, 7.9e-6)).toBe(0);
    expect(responseAt(band, 14.1e-6)).toBe(0);
  });

  it("passes over a stretch without response", () => {
    const band = responseBand([3, 5, 8, 14], [1, 0, 0, 1]);
    expect(responseAt(band, 6e-6)).toBe(0);
    expect(radiance(band, 300)).toBeCloseTo(
      radiance(responseBand([3, 5], [1, 0]), 300) + radiance(responseBand([8, 14], [0, 1]), 300),
      12,
    );
  });

  it.each([
    ["falls back", [8, 7, 14], [1, 1, 1], { given: 7, hint: { key: "band-rising", values: { row: 2 } } }],
    ["stands still", [8, 8, 14], [1, 1, 1], { given: 8, hint: { key: "band-rising", values: { row: 2 } } }],
    [
      "is below the shortest",
      [0.5, 8],
      [1, 1],
      { given: 0.5, hint: { key: "band-response-wavelength", values: { row: 1 } } },
    ],
    [
      "is beyond the longest",
      [8, 20.1],
      [1, 1],
      { given: 20.1, hint: { key: "band-response-wavelength", values: { row: 2 } } },
    ],
    ["is no number", [8, NaN], [1, 1], { hint: { key: "band-response-wavelength", values: { row: 2 } } }],
    [
      "has a negative response",
      [8, 14],
      [1, -0.1],
      { given: -0.1, hint: { key: "band-response", values: { row: 2 } } },
    ],
    ["has no response", [8, 14], [1], { hint: { key: "band-response", values: { row: 2 } } }],
    ["has an endless response", [8, 14], [Infinity, 1], { hint: { key: "band-response", values: { row: 1 } } }],
    ["has a response beyond all measure", [8, 14], [1, 1e13], { given: 1e13, hint: { key: "band-response" } }],
    ["has next to no response", [8, 14], [1e-13, 1e-13], { hint: { key: "band-empty" } }],
    ["is all zero", [8, 10, 14], [0, 0, 0], { hint: { key: "band-empty" } }],
    ["has one row", [8], [1], { hint: { key: "band-empty" } }],
    ["has no row", [], [], { hint: { key: "band-empty" } }],
  ])("that %s is refused", (_, wavelengths, responses, details) => {
    const error = refusal(() => responseBand(wavelengths, responses));
    expect(error).toMatchObject({ code: "INVALID", argument: "band", ...details });
  });
});
