/**
 * Lines that a thermographer would check by: computed with the reference implementation behind tests/data/radiometry, not
 * with this code, and printed to hundredths or tenths of a kelvin.
 */
import { apparent, correct } from "../../../src/core/correction/correct.js";
import type { Settings } from "../../../src/core/correction/settings.js";
import { flatBand, type Band } from "../../../src/core/planck/band.js";
import { celsius, kelvin } from "../../support/radiometry.js";

const LONG = flatBand(8, 14);
const MID = flatBand(3, 5);
const DEFAULT = flatBand(7.5, 14);
const shown = (object: number, settings: Settings, band: Band): number =>
  celsius(apparent(kelvin(object), settings, band));
const found = (reading: number, settings: Settings, band: Band): number =>
  celsius(correct(kelvin(reading), settings, band).temperature);
const near = (value: number, expected: number, half: number): void => {
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(half);
};

describe("a window of transmission 0.55, emissivity 0.95, everything else at 25 °C, 8–14 µm", () => {
  const settings: Settings = {
    emissivity: 0.95,
    reflected: kelvin(25),
    windowTransmission: 0.55,
    windowTemp: kelvin(25),
  };

  it.each([
    [80, 56.49, 57.95],
    [60, 44.5, 45.45],
    [50, 38.71, 39.39],
    [40, 33.08, 33.49],
  ])("%d °C shows %d °C, corrected for emissivity alone %d °C", (object, reading, byEmissivity) => {
    near(shown(object, settings, LONG), reading, 0.006);
    near(found(reading, { emissivity: 0.95, reflected: kelvin(25) }, LONG), byEmissivity, 0.02);
    near(found(shown(object, settings, LONG), settings, LONG), object, 1e-8);
  });

  it("at 35 °C, reflecting 0.05 of 30 °C: 80 °C shows 59.88, and ε·τ entered as one makes 85.52 of it", () => {
    const warm: Settings = {
      ...settings,
      windowTemp: kelvin(35),
      windowReflectance: 0.05,
      outerReflected: kelvin(30),
    };
    const reading = shown(80, warm, LONG);
    near(reading, 59.88, 0.006);
    near(found(reading, { emissivity: 0.95 * 0.55, reflected: kelvin(25) }, LONG), 85.52, 0.006);
  });
});

describe("a busbar of 100 °C among 25 °C, by its emissivity", () => {
  it.each([
    [0.03, 28.0, 31.19],
    [0.05, 29.95, 34.76],
    [0.1, 34.69, 42.39],
    [0.2, 43.63, 54.12],
    [0.3, 51.98, 63.15],
    [0.6, 74.36, 82.51],
    [0.95, 96.99, 98.12],
  ])("%d shows %d °C in 8–14 µm, %d °C in 3–5 µm", (emissivity, long, mid) => {
    const settings = { emissivity, reflected: kelvin(25) };
    near(shown(100, settings, LONG), long, 0.006);
    near(shown(100, settings, MID), mid, 0.006);
  });
});

describe("what a slip costs, 7.5–14 µm", () => {
  it("a reading corrected twice, 60 °C among 22 °C", () => {
    for (const [emissivity, more] of [
      [0.9, 3.6],
      [0.6, 20],
    ] as const) {
      const settings = { emissivity, reflected: kelvin(22) };
      near(found(found(shown(60, settings, DEFAULT), settings, DEFAULT), settings, DEFAULT) - 60, more, 0.5);
    }
  });

  it("a window left out, its reflectance left out, its temperature 5 K wrong: 70 °C, emissivity 0.95", () => {
    // The printed line leaves both reflected temperatures open; these are those of the worked window, and they fit.
    const window: Settings = {
      emissivity: 0.95,
      reflected: kelvin(22),
      windowTransmission: 0.7,
      windowTemp: kelvin(30),
      windowReflectance: 0.1,
      outerReflected: kelvin(24),
    };
    const reading = shown(70, window, DEFAULT);
    near(found(reading, { emissivity: 0.95, reflected: kelvin(22) }, DEFAULT) - 70, -11.2, 0.1);
    near(found(reading, { ...window, windowReflectance: 0 }, DEFAULT) - 70, -0.64, 0.02);
    near(found(reading, { ...window, windowTemp: kelvin(35) }, DEFAULT) - 70, -1.1, 0.05);
  });
});
