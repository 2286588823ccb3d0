/** Correction one reading at a time: the worked lines of the house, what is refused and how, what plays no part. */
import { correctBlock } from "../../../src/core/correction/block.js";
import { apparent, correct, sensitivities } from "../../../src/core/correction/correct.js";
import type { Settings } from "../../../src/core/correction/settings.js";
import { DEFAULT_BAND, flatBand } from "../../../src/core/planck/band.js";
import { radiance } from "../../../src/core/planck/exact.js";
import { celsius, kelvin } from "../../support/radiometry.js";
import { refusal } from "../../support/refusal.js";

const AIR: Settings = { emissivity: 0.85, reflected: kelvin(22), airTransmission: 0.98, airTemp: kelvin(20) };
const WINDOW: Settings = {
  ...AIR,
  windowTransmission: 0.7,
  windowTemp: kelvin(30),
  windowReflectance: 0.1,
  outerReflected: kelvin(24),
  outerAirTransmission: 0.99,
};
const READING = kelvin(58);

/** Worked with the high-precision reference behind tests/data/radiometry; 7.5–14 µm. */
describe("worked lines", () => {
  it("through air, with its sensitivities", () => {
    expect(Math.abs(celsius(correct(READING, AIR, DEFAULT_BAND).temperature) - 64.1319672049731)).toBeLessThan(1e-9);
    const found = sensitivities(READING, AIR, DEFAULT_BAND);
    const printed = {
      apparent: 1.147060699,
      emissivity: -42.04186331,
      reflected: -0.1232604783,
      airTransmission: -38.12521506,
      airTemp: -0.01643677621,
    };
    for (const [name, value] of Object.entries(printed)) {
      expect(Math.abs(found[name as keyof typeof printed] / value - 1)).toBeLessThan(6e-10);
    }
  });

  it("through a window", () => {
    expect(Math.abs(celsius(correct(READING, WINDOW, DEFAULT_BAND).temperature) - 77.1240065729994)).toBeLessThan(1e-9);
  });

  it("restated with other settings", () => {
    const reported: Settings = { emissivity: 0.95, reflected: kelvin(20) };
    const right: Settings = { emissivity: 0.8, reflected: kelvin(25), airTransmission: 0.98, airTemp: kelvin(20) };
    const reading = apparent(kelvin(58), reported, DEFAULT_BAND);
    expect(Math.abs(celsius(reading) - 56.361183402699)).toBeLessThan(1e-9);
    expect(Math.abs(celsius(correct(reading, right, DEFAULT_BAND).temperature) - 63.848556199136)).toBeLessThan(1e-9);
  });

  it.each([
    [0.2, 8.7],
    [0.5, -15.9],
    [0.8, -54.2],
  ])("emissivity %d over 22 °C: the surroundings alone show %d °C, and the refusal says so", (emissivity, lowest) => {
    const settings = { emissivity, reflected: kelvin(22) };
    const error = refusal(() => correct(kelvin(lowest - 0.2), settings, DEFAULT_BAND));
    expect(error).toMatchObject({ code: "NO_SOLUTION", argument: "apparent", hint: { key: "surroundings-alone" } });
    expect(error.hint?.values?.emissivity).toBe(emissivity);
    const shown = Number(error.hint?.values?.temperature);
    expect(celsius(shown)).toBeCloseTo(lowest, 1);
    expect(correct(shown + 0.01, settings, DEFAULT_BAND).signalShare).toBeLessThan(0.03);
  });
});

describe("the object's share of the signal", () => {
  it("is all of it for a black surface in clear air, and ε·τ of the object's radiance else", () => {
    expect(correct(READING, { emissivity: 1, reflected: kelvin(22) }, DEFAULT_BAND).signalShare).toBe(1);
    for (const settings of [AIR, WINDOW]) {
      const { temperature, signalShare } = correct(READING, settings, DEFAULT_BAND);
      const { emissivity, airTransmission = 1, windowTransmission = 1, outerAirTransmission = 1 } = settings;
      const gain = emissivity * airTransmission * windowTransmission * outerAirTransmission;
      const expected = (gain * radiance(DEFAULT_BAND, temperature)) / radiance(DEFAULT_BAND, READING);
      expect(Math.abs(signalShare - expected)).toBeLessThan(1e-12);
    }
  });
});

describe("what plays no part", () => {
  const clear: Settings = { emissivity: 0.9, reflected: kelvin(22) };

  it("changes nothing and has no sensitivity", () => {
    const idle: Settings = {
      ...clear,
      airTransmission: 1,
      airTemp: kelvin(-20),
      windowTransmission: 1,
      windowTemp: kelvin(80),
      windowReflectance: 0,
      outerReflected: kelvin(50),
      outerAirTransmission: 1,
    };
    const plain = correct(READING, clear, DEFAULT_BAND).temperature;
    expect(Math.abs(correct(READING, idle, DEFAULT_BAND).temperature - plain)).toBeLessThan(1e-10);
    const found = sensitivities(READING, clear, DEFAULT_BAND);
    for (const name of ["airTransmission", "airTemp", "windowTransmission", "windowTemp", "outerReflected"] as const) {
      expect(found[name] === 0).toBe(true);
    }
    // Known surroundings that play no part yet have one: what a first loss would do.
    const known = sensitivities(READING, idle, DEFAULT_BAND);
    for (const name of [
      "airTransmission",
      "windowTransmission",
      "windowReflectance",
      "outerAirTransmission",
    ] as const) {
      expect(Math.abs(known[name])).toBeGreaterThan(1);
    }
    expect(known.airTemp === 0 && known.windowTemp === 0 && known.outerReflected === 0).toBe(true);
  });
});

describe("refusals", () => {
  const cases: [string, Partial<Record<keyof Settings, number>>, string, string | undefined][] = [
    ["emissivity in per cent", { emissivity: 95 }, "emissivity", "per-cent"],
    ["emissivity 0", { emissivity: 0 }, "emissivity", undefined],
    ["emissivity below 0", { emissivity: -0.1 }, "emissivity", undefined],
    ["emissivity just above 1", { emissivity: 1.0000001 }, "emissivity", undefined],
    ["emissivity NaN", { emissivity: NaN }, "emissivity", undefined],
    ["reflected at absolute zero", { reflected: 0 }, "reflected", "absolute-zero"],
    ["reflected beyond 10000 °C", { reflected: kelvin(10001) }, "reflected", undefined],
    ["air_transmission 0", { airTransmission: 0 }, "air_transmission", "zero-or-empty"],
    ["air_transmission in per cent", { airTransmission: 98 }, "air_transmission", "per-cent"],
    ["air_temp below absolute zero", { airTemp: -1 }, "air_temp", "absolute-zero"],
    ["window_transmission above 1", { windowTransmission: 1.2 }, "window_transmission", undefined],
    ["window_temp below absolute zero", { windowTemp: -7 }, "window_temp", "absolute-zero"],
    ["window_reflectance below 0", { windowReflectance: -0.01 }, "window_reflectance", undefined],
    ["window_reflectance 1", { windowReflectance: 1 }, "window_reflectance", undefined],
    ["a window of more than 1 together", { windowReflectance: 0.31 }, "window_reflectance", "window-sum"],
    ["outer_reflected NaN", { outerReflected: NaN }, "outer_reflected", undefined],
    ["outer_air_transmission 0", { outerAirTransmission: 0 }, "outer_air_transmission", "zero-or-empty"],
  ];
  it.each(cases)("%s", (_, change, argument, hint) => {
    for (const call of [correct, apparent, sensitivities]) {
      const error = refusal(() => call(READING, { ...WINDOW, ...change }, DEFAULT_BAND));
      expect(error).toMatchObject({ code: "INVALID", argument, given: Object.values(change)[0] });
      expect(error.allowed).toBeDefined();
      expect(error.hint?.key).toBe(hint);
    }
  });

  it.each([
    ["air_temp", { airTemp: undefined }, "air-temp-needed"],
    ["window_temp", { windowTemp: undefined }, "window-temp-needed"],
    ["outer_reflected", { outerReflected: undefined }, "outer-reflected-needed"],
  ])("%s where it is needed", (argument, change, key) => {
    const settings = { ...WINDOW, ...change } as unknown as Settings;
    for (const call of [correct, apparent, sensitivities]) {
      expect(refusal(() => call(READING, settings, DEFAULT_BAND))).toMatchObject({
        code: "NOT_GIVEN",
        argument,
        hint: { key },
      });
    }
  });

  it.each([0, -3, NaN, Infinity, kelvin(10000.1)])("a reading or an object of %d K", (t) => {
    expect(refusal(() => correct(t, AIR, DEFAULT_BAND))).toMatchObject({ code: "INVALID", argument: "apparent" });
    expect(refusal(() => apparent(t, AIR, DEFAULT_BAND))).toMatchObject({ code: "INVALID", argument: "object_temp" });
    expect(refusal(() => sensitivities(t, AIR, DEFAULT_BAND)).argument).toBe("apparent");
  });

  it("a body so cold that nothing is radiated: no number, and no NaN", () => {
    const black: Settings = { emissivity: 1, reflected: kelvin(22) };
    const cold = { code: "NO_SOLUTION", given: 0.01, hint: { key: "no-radiance" } };
    expect(refusal(() => correct(0.01, black, DEFAULT_BAND))).toMatchObject({ ...cold, argument: "apparent" });
    expect(refusal(() => apparent(0.01, black, DEFAULT_BAND))).toMatchObject({ ...cold, argument: "object_temp" });
    // With surroundings that do radiate there is a reading all the same.
    expect(apparent(0.01, AIR, DEFAULT_BAND)).toBeGreaterThan(200);
  });

  it("a signal of which double precision holds hardly a bit has no temperature: told, not NaN", () => {
    const dark: Settings = { emissivity: 1e-300, reflected: 3.15 };
    const error = refusal(() => apparent(kelvin(-100), dark, flatBand(1.283546, 1.303234)));
    expect(error).toMatchObject({ code: "NO_SOLUTION", argument: "object_temp", hint: { key: "no-radiance" } });
  });

  it("next to nothing of the object gets through: no number, neither infinite nor NaN", () => {
    const closed: Settings = { ...WINDOW, windowTemp: 200, outerReflected: 200, windowTransmission: 1e-320 };
    for (const call of [correct, sensitivities]) {
      const error = refusal(() => call(READING, closed, DEFAULT_BAND));
      expect(error).toMatchObject({ code: "NO_SOLUTION", argument: "apparent", hint: { key: "beyond-numbers" } });
    }
  });

  // What any input may be is no less and no more than what comes out.
  it("above 10,000 °C there is no object: refused alone and in a column, which keeps its other rows", () => {
    const at = (emissivity: number): Settings => ({ emissivity, reflected: kelvin(30) });
    for (const call of [correct, sensitivities]) {
      const error = refusal(() => call(kelvin(62), at(1e-7), DEFAULT_BAND));
      expect(error).toMatchObject({ code: "NO_SOLUTION", argument: "apparent", hint: { key: "beyond-temperatures" } });
    }
    const hottest = correct(kelvin(10000), at(1), DEFAULT_BAND).temperature;
    expect(hottest).toBeCloseTo(kelvin(10000), 6);
    const out = { temperature: new Float64Array(3) };
    const emissivities = Float64Array.of(1, 1e-7, 1);
    const readings = Float64Array.of(kelvin(10000), kelvin(62), kelvin(62));
    expect(correctBlock(readings, { emissivity: emissivities, reflected: kelvin(30) }, DEFAULT_BAND, out)).toBe(1);
    expect(out.temperature[0]).toBeCloseTo(kelvin(10000), 6);
    expect(out.temperature[1]).toBeNaN();
    expect(out.temperature[2]).toBeCloseTo(kelvin(62), 6);
  });

  it("a window may pass and reflect a rounding more than everything", () => {
    const full: Settings = { ...WINDOW, windowTransmission: 0.7, windowReflectance: 0.1 + 0.2 };
    expect(correct(READING, full, DEFAULT_BAND).temperature).toBeGreaterThan(300);
  });
});

it("a reading below what is reflected is corrected downwards, not refused", () => {
  const cold = correct(kelvin(5), { emissivity: 0.9, reflected: kelvin(22) }, flatBand(8, 14)).temperature;
  expect(celsius(cold)).toBeLessThan(5);
});
