/** What each slip gives, against numbers worked apart from this code. */
import { explain, rangeOfReading, TEMPERATURE_SLIPS } from "../../../src/core/audit/explain.js";
import { airTransmission } from "../../../src/core/air/transmission.js";
import { apparent, correct } from "../../../src/core/correction/correct.js";
import type { Settings } from "../../../src/core/correction/settings.js";
import { DEFAULT_BAND, flatBand, type Band } from "../../../src/core/planck/band.js";
import type { TemperatureCase } from "../../../src/core/audit/temperature-case.js";
import { celsius, kelvin } from "../../support/radiometry.js";

function gives(key: string, given: TemperatureCase): number {
  const slip = TEMPERATURE_SLIPS.find((one) => one.key === key);
  return celsius(slip?.apply(given) ?? NaN);
}

const CHAIN: Settings = {
  emissivity: 0.85,
  reflected: kelvin(22),
  airTransmission: 0.98,
  airTemp: kelvin(20),
  windowTransmission: 0.7,
  windowTemp: kelvin(30),
  windowReflectance: 0.1,
  outerReflected: kelvin(24),
  outerAirTransmission: 0.99,
};
const chain: TemperatureCase = { apparent: kelvin(58), settings: CHAIN, band: DEFAULT_BAND };

/** Planck's law by 200-point Gauss–Legendre quadrature, the inverse by bracketing, outside this code (numpy, scipy). */
const WORKED: Readonly<Record<string, number>> = {
  "reading-itself": 58,
  "emissivity-1": 70.202,
  "emissivity-start": 72.3008,
  "window-temp-air": 79.3625,
  "air-left-out": 75.703,
  "inner-air-left-out": 76.1896,
  "outer-air-left-out": 76.6305,
  "window-left-out": 64.5089,
  "air-and-window-left-out": 63.3827,
  "window-reflectance-left-out": 76.4328,
  "window-reflection-left-out": 83.979,
  "window-emission-left-out": 91.8113,
  "window-only-divided": 98.0844,
  "reflected-term-left-out": 83.9559,
  "reflected-air": 77.3469,
  "reflected-20": 77.3469,
  "reflected-0": 79.3193,
  "reflected-sides-swapped": 77.1176,
  "start-up": 59.7033,
  "start-up-same-path": 72.3695,
  "start-up-same-window": 71.057,
  "corrected-twice": 105.4973,
  "wrong-way": 45.5736,
  "window-into-emissivity": 79.1659,
  "path-into-emissivity": 79.1015,
  "inner-path-into-emissivity": 79.1231,
  "reflectance-for-emissivity": 221.8412,
  "fourth-power": 76.5402,
  "band-8-14": 77.3207,
  "band-3-5": 71.3892,
  "degrees-over-reflected": 64.3529,
  "degrees-over-air": 64.7059,
  "degrees-over-emissivity": 68.2353,
  "fourth-root": 71.7316,
  "reflected-in-fahrenheit": 69.9538,
  "reflected-in-celsius": 79.788,
  "air-in-fahrenheit": 75.5658,
  "air-in-celsius": 77.7214,
  "result-in-fahrenheit": 170.8232,
  "result-in-celsius": 25.0689,
  "fahrenheit-and-back": 87.7978,
  "kelvin-added": 350.274,
  "kelvin-taken": -196.026,
};

test.each(Object.entries(WORKED))("%s gives %d °C", (key, expected) => {
  expect(Math.abs(gives(key, chain) - expected)).toBeLessThan(1e-4);
});

test("the settings as stated come first", () => {
  const [first] = explain(kelvin(77.1), chain).lines;
  expect(first?.key).toBe("as-stated");
  expect(celsius(first?.gives ?? NaN)).toBeCloseTo(77.1240065729994, 8);
});

describe("sizes of the traps, worked apart from this code at reflected 22 °C", () => {
  const surface = (emissivity: number): Settings => ({ emissivity, reflected: kelvin(22) });
  const off = (key: string, object: number, settings: Settings, band: Band = DEFAULT_BAND): number =>
    gives(key, { apparent: apparent(kelvin(object), settings, band), settings, band }) - object;

  test.each([
    ["corrected-twice", 60, 0.9, 3.6, 0.05],
    ["corrected-twice", 60, 0.6, 20, 0.5],
    ["fourth-power", 120, 0.8, -1.25, 0.01],
    ["fourth-power", 120, 0.5, -3, 0.05],
    ["fourth-power", 200, 0.5, -11, 0.5],
    ["fourth-power", 500, 0.8, -28, 0.5],
  ])("%s at %d °C, emissivity %d: %d K", (key, object, emissivity, size, tolerance) => {
    expect(Math.abs(off(key, object, surface(emissivity)) - size)).toBeLessThanOrEqual(tolerance);
  });

  test("T⁴ in 3-5 µm errs the other way: 17 K at 120 °C, emissivity 0.5", () => {
    expect(Math.abs(off("fourth-power", 120, surface(0.5), flatBand(3, 5)) - 17)).toBeLessThanOrEqual(0.5);
  });

  test("a window ignored: -11.2 K; its reflectance: -0.64 K", () => {
    const window = { windowTransmission: 0.7, windowReflectance: 0.1, windowTemp: kelvin(30) };
    const settings = { ...surface(0.95), ...window, outerReflected: kelvin(24) };
    expect(Math.abs(off("window-left-out", 70, settings) + 11.2)).toBeLessThanOrEqual(0.1);
    expect(Math.abs(off("window-reflectance-left-out", 70, settings) + 0.64)).toBeLessThanOrEqual(0.05);
  });

  test.each([
    [80, 57.95],
    [60, 45.45],
    [50, 39.39],
    [40, 33.49],
  ])("%d °C through a window of 0.55, corrected for the surface alone: %d °C", (object, expected) => {
    const settings = { emissivity: 0.95, reflected: kelvin(25), windowTransmission: 0.55, windowTemp: kelvin(25) };
    expect(Math.abs(off("window-left-out", object, settings, flatBand(8, 14)) + object - expected)).toBeLessThan(0.01);
  });

  test("80 °C through a window at 35 °C that reflects, emissivity × transmission as one: 85.52 °C", () => {
    const settings = {
      emissivity: 0.95,
      reflected: kelvin(25),
      windowTransmission: 0.55,
      windowTemp: kelvin(35),
      windowReflectance: 0.05,
      outerReflected: kelvin(30),
    };
    expect(Math.abs(off("window-into-emissivity", 80, settings, flatBand(8, 14)) + 80 - 85.52)).toBeLessThan(0.01);
  });
});

describe("the air's own slips, where its path is known", () => {
  const path = { distance: 30, humidity: 0.6 };
  const airTemp = kelvin(25);
  const tau = (distance: number, humidity: number): number =>
    airTransmission({ distance, humidity, airTemp }, DEFAULT_BAND);
  const settings = { emissivity: 0.9, reflected: kelvin(20), airTransmission: tau(30, 0.6), airTemp };
  const given = { apparent: kelvin(70), settings, band: DEFAULT_BAND, path };

  test.each([
    ["feet-for-metres", 30 / 0.3048, 0.6],
    ["metres-for-feet", 30 * 0.3048, 0.6],
    ["humidity-as-fraction", 30, 0.006],
  ])("%s", (key, distance, humidity) => {
    const expected = correct(
      given.apparent,
      { ...settings, airTransmission: tau(distance, humidity) },
      DEFAULT_BAND,
    ).temperature;
    expect(gives(key, given)).toBeCloseTo(celsius(expected), 9);
    expect(Math.abs(expected - correct(given.apparent, settings, DEFAULT_BAND).temperature)).toBeGreaterThan(0.1);
    expect(gives(key, chain)).toBeNaN();
  });
});

test("what these settings have no room for is left out, and so is what has no answer", () => {
  const bare = { apparent: kelvin(12), settings: { emissivity: 0.3, reflected: kelvin(22) }, band: DEFAULT_BAND };
  const keys = explain(kelvin(-30), bare).lines.map(({ key }) => key);
  for (const key of ["air-left-out", "window-left-out", "reflected-air", "reflected-sides-swapped", "degrees-over-air"])
    expect(keys).not.toContain(key);
  // Of an emissivity of 0.3 and 71.6 °C reflected the surroundings alone show more than 12 °C.
  expect(keys).not.toContain("reflected-in-fahrenheit");
  expect(keys).toContain("reading-itself");
});

test("in a sheet of °F bare numbers are those of the sheet", () => {
  const inF = { ...chain, degrees: "F" as const };
  // 58 °C is 136.4 °F; over 0.85 that is 160.4706 °F, 71.3725 °C.
  expect(gives("degrees-over-emissivity", inF)).toBeCloseTo((136.4 / 0.85 - 32) / 1.8, 9);
  expect(gives("celsius-over-emissivity", inF)).toBeCloseTo(58 / 0.85, 9);
  // 77.124 °C is 170.8232 °F; and 459.67 more, back in °C.
  expect(gives("rankine-added", inF)).toBeCloseTo((170.82321183139892 + 459.67 - 32) / 1.8, 7);
  expect(gives("rankine-added", chain)).toBeNaN();
});

test("half a digit of a reading moves the corrected temperature by what the correction stretches it by", () => {
  // 71.2 °C at emissivity 0.82, reflected 24 °C, 0.985 of air at 28 °C, and 70.7, 71.7 °C: by quadrature outside this code.
  const settings = { emissivity: 0.82, reflected: kelvin(24), airTransmission: 0.985, airTemp: kelvin(28) };
  expect(rangeOfReading({ apparent: kelvin(71.2), settings, band: DEFAULT_BAND }, 0.5)).toBeCloseTo(0.58265, 4);
  const none = { apparent: kelvin(-20), settings: { emissivity: 0.3, reflected: kelvin(30) }, band: DEFAULT_BAND };
  expect(rangeOfReading(none, 0.5)).toBe(0);
});
