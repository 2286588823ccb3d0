/** SETTING_FOR, SETTING_FOR_RISE and RESTATE where there is no answer, more than one, or another than one would think. */
import type { Cell, Input } from "../../src/functions/contract.js";
import { call, errorIn, passing, specOf, type Given } from "./fixture.js";

const first = (name: string, given: Given): Cell => call(specOf(name), given)[0]?.[0] ?? null;
const message = (name: string, given: Given): string => errorIn([[first(name, given)]])?.message ?? "";
const code = (name: string, given: Given): string => errorIn([[first(name, given)]])?.error ?? "answers";

describe("GREY.SETTING_FOR", () => {
  const bare = { apparent: 58, emissivity: 0.95, reflected: 22 };
  const air = { ...bare, air_temp: 20 };
  const window = { ...bare, window_transmission: 0.7, window_temp: 30 };
  const ask = (setting: string, target: number, given: Given): string => {
    expect(code("SETTING_FOR", { target, setting, ...given })).toBe("#N/A");
    return message("SETTING_FOR", { target, setting, ...given });
  };

  it("says what an emissivity would have to be, and what 1 gives", () => {
    expect(ask("emissivity", 50, bare)).toMatch(
      /^No emissivity gives the target: it would have to be 1\.33\d*\. An emissivity below 1 draws .* With 1 the corrected temperature is 58 °C\.$/,
    );
    // Reading and target on either side of the reflected temperature.
    expect(ask("emissivity", 10, bare)).toMatch(/it would have to be -3\.77\d*\..*never away from it or beyond it\.$/);
  });

  it.each([
    ["emissivity", 22, bare, /^With the target at the reflected temperature itself .*; no value gives the target\.$/],
    ["emissivity", 22, { ...bare, apparent: 22 }, /; any value gives the target\.$/],
    [
      "reflected",
      62,
      { ...bare, emissivity: 1 },
      /^At emissivity 1 the reflected temperature plays no part; .* is 58 °C/,
    ],
    ["reflected", 58, { ...bare, emissivity: 1 }, /^At emissivity 1 .*; any value gives the target\.$/],
    ["air_temp", 62, bare, /^Where the transmission of the air is 1 its temperature plays no part; .* is 59\.63 °C/],
    ["air_transmission", 20, { ...air, emissivity: 1 }, /^What leaves a part at the target is as warm as the air/],
    ["outer_air_transmission", 20, { ...air, emissivity: 1 }, /^What comes to the outer air is as warm as that air/],
    ["window_temp", 72, bare, /^Without a window, or with one that emits nothing, its temperature plays no part/],
    ["window_temp", 72, { ...window, window_reflectance: 0.3, outer_reflected: 20 }, /one that emits nothing/],
    ["window_reflectance", 72, bare, /^At a window transmission of 1 nothing is left to be reflected/],
    ["window_reflectance", 72, { ...window, outer_reflected: 30 }, /^The window is as warm as what it mirrors/],
    ["window_transmission", 30, { ...window, emissivity: 1 }, /^What reaches the window .* is as warm as the window/],
    ["outer_reflected", 72, { ...window, outer_reflected: 20 }, /^Where the window reflects nothing/],
  ] as const)("%s for %d °C where it plays no part", (setting, target, given, words) => {
    expect(ask(setting, target, given)).toMatch(words);
  });

  it("tells the two airs as one where there is no window", () => {
    const given = { ...air, outer_air_transmission: 0.9 };
    const words = ask("air_transmission", 60, given);
    const together = Number(/together ([\d.]+)\./.exec(words)?.[1]);
    expect(words).toMatch(/^Alone it would have to be 1\.\d+: without a window both transmissions of air act as one/);
    // Given as one, it is what was asked for.
    expect(first("SETTING_FOR", { ...air, target: 60, setting: "air_transmission" })).toBeCloseTo(together, 5);
  });

  it("a window's reflectance and transmission leave each other room", () => {
    const given = { ...window, outer_reflected: 20 };
    expect(ask("window_reflectance", 74, given)).toMatch(/would have to be 0\.35\d*\..* With 0\.3 the corrected/);
    expect(ask("window_transmission", 60.5, { ...given, window_reflectance: 0.2 })).toMatch(/ With 0\.8 the corrected/);
  });

  it("says how far surroundings can bring it, down to absolute zero", () => {
    expect(ask("reflected", 90, { ...bare, emissivity: 0.85 })).toMatch(
      /^No reflected temperature gives the target: even at absolute zero, .* is only 70\.87 °C\.$/,
    );
    expect(ask("reflected", 40, { ...bare, apparent: 3000, emissivity: 0.999 })).toMatch(
      /^The reflected temperature would have to be \d+ °C, which is beyond all that is answered for\.$/,
    );
    const outshone = { apparent: -30, emissivity: 0.95, air_transmission: 0.3, air_temp: 40 };
    expect(ask("reflected", 20, outshone)).toMatch(/^No object gives this reading, whatever the reflected temperature/);
  });

  it("needs what the one sought would need, and says so", () => {
    for (const [setting, needed] of [
      ["air_transmission", "air_temp"],
      ["outer_air_transmission", "air_temp"],
      ["window_transmission", "window_temp"],
    ] as const) {
      expect(message("SETTING_FOR", { target: 62, setting, ...bare })).toMatch(
        new RegExp(`^${needed} is not given\\.`),
      );
    }
    const unmirrored = { target: 72, setting: "window_reflectance", ...window };
    expect(message("SETTING_FOR", unmirrored)).toMatch(/^outer_reflected is not given\./);
  });

  it("does not look at the place of the one sought, whatever stands there", () => {
    const answer = first("SETTING_FOR", { ...bare, target: 62, setting: "emissivity" });
    expect(answer).toBeCloseTo(0.8846, 4);
    for (const own of [undefined, null, "", 0, 95, "unknown", ">1", passing] as Input[]) {
      expect(first("SETTING_FOR", { ...bare, target: 62, setting: "emissivity", emissivity: own })).toBe(answer);
    }
    // In a column that asks for one setting after the other each row needs all but that one.
    const settings = [["emissivity"], ["reflected"], ["apparent"]];
    const column = call(specOf("SETTING_FOR"), { apparent: 58, reflected: 22, target: 62, setting: settings });
    expect(column[0]?.[0]).toBe(answer);
    for (const row of [1, 2]) expect(errorIn([column[row] ?? []])?.message).toMatch(/^emissivity is not given\./);
  });

  it("gives each result in the unit of its setting", () => {
    const given = { ...bare, emissivity: 0.85, target: 62 };
    const inF = { apparent: 136.4, emissivity: 0.85, reflected: 71.6, target: 143.6, units: "F" };
    for (const [setting, temperature] of [["reflected", true] as const, ["emissivity", false] as const]) {
      const celsius = Number(first("SETTING_FOR", { ...given, setting }));
      const fahrenheit = Number(first("SETTING_FOR", { ...inF, setting }));
      expect(fahrenheit).toBeCloseTo(temperature ? celsius * 1.8 + 32 : celsius, 8);
    }
  });

  it("1 is 1, not a rounding above it", () => {
    const corrected = { apparent: 58, emissivity: 1, reflected: 22, air_transmission: 1 };
    const target = Number(first("CORRECTED", corrected));
    for (const [setting, own] of [["emissivity", 1] as const, ["air_transmission", 1] as const]) {
      const found = Number(first("SETTING_FOR", { ...corrected, air_temp: 20, target: target - 1e-9, setting }));
      expect(found).toBe(own);
    }
  });
});

describe("GREY.SETTING_FOR_RISE", () => {
  const bare = { hot: 58, reference: 45, emissivity: 0.95, reflected: 22 };

  it("moves the reference too: 15 K at 0.833, not the 0.909 of a fixed reference", () => {
    expect(first("SETTING_FOR_RISE", { ...bare, target_rise: 15, setting: "emissivity" })).toBeCloseTo(0.833, 3);
    const fixed = Number(first("CORRECTED", { apparent: 45, emissivity: 0.95, reflected: 22 })) + 15;
    const given = { apparent: 58, reflected: 22, target: fixed, setting: "emissivity" };
    // Quadrature of Planck's law and bisection, apart from this code.
    expect(first("SETTING_FOR", given)).toBeCloseTo(0.90871681156, 9);
    const midWave = { ...bare, target_rise: 15, setting: "emissivity", band: "3-5" };
    expect(first("SETTING_FOR_RISE", midWave)).toBeCloseTo(0.7307288699756, 10);
  });

  it("of two answers takes the one nearest to what stands there, else the largest", () => {
    // Hot surroundings, cold air, low emissivity: with more air the rise first falls, then grows again.
    const others = { emissivity: 0.2, reflected: 120, air_temp: -20 };
    const given = { hot: 120, reference: 110, ...others, setting: "air_transmission" };
    const riseAt = (air_transmission: Cell): number => {
      const [hot = NaN, reference = NaN] = [120, 110].map((apparent) =>
        Number(first("CORRECTED", { ...others, apparent, air_transmission })),
      );
      return hot - reference;
    };
    const ask = (target_rise: number, own?: Input): Cell =>
      first("SETTING_FOR_RISE", { ...given, target_rise, air_transmission: own });
    const [large, small] = [ask(50), ask(50, 0.3)];
    expect(Number(large)).toBeGreaterThan(Number(small) + 0.1);
    for (const found of [large, small]) expect(riseAt(found)).toBeCloseTo(50, 8);
    expect(ask(50, 0.9)).toBe(large);
    expect(ask(50, "unknown")).toBe(large);
    // Just above the least rise two answers lie closer together than the points of any grid; below it there is none.
    let [low, high] = [0.5, 0.9];
    for (let i = 0; i < 60; i++) {
      const third = (high - low) / 3;
      if (riseAt(low + third) < riseAt(high - third)) high -= third;
      else low += third;
    }
    const least = riseAt(low);
    const [right, left] = [Number(ask(least + 1e-6)), Number(ask(least + 1e-6, 0.3))];
    expect(right - left).toBeGreaterThan(1e-5);
    expect(right - left).toBeLessThan(1e-2);
    for (const found of [right, left]) expect(riseAt(found)).toBeCloseTo(least + 1e-6, 8);
    expect(message("SETTING_FOR_RISE", { ...given, target_rise: least - 1e-6 })).toMatch(
      /^No transmission of the air gives that rise: it can be about 45\.\d+ K to /,
    );
  });

  it("says which rises can be", () => {
    expect(message("SETTING_FOR_RISE", { ...bare, target_rise: 1000, setting: "reflected" })).toMatch(
      /^No reflected temperature gives that rise: it can be about 13\.\d+ K to \d+\.?\d* K\.$/,
    );
    expect(message("SETTING_FOR_RISE", { ...bare, target_rise: 10, setting: "emissivity" })).toMatch(/about 13 K to /);
    expect(message("SETTING_FOR_RISE", { ...bare, reference: 58, target_rise: 3, setting: "emissivity" })).toMatch(
      /^Both readings are the same/,
    );
    expect(message("SETTING_FOR_RISE", { ...bare, emissivity: 1, target_rise: 15, setting: "reflected" })).toMatch(
      /^At emissivity 1 the reflected temperature plays no part; the rise is the same whatever it is\.$/,
    );
  });

  it("takes a rise below 0 where the reference is the hotter", () => {
    const swapped = { ...bare, hot: 45, reference: 58, target_rise: -15, setting: "emissivity" };
    expect(first("SETTING_FOR_RISE", swapped)).toBeCloseTo(0.832774025505, 10);
  });
});

describe("GREY.RESTATE", () => {
  const used = [[0.95, 20]];
  const right = [[0.8, 25, 0.98, 20]];
  const reported = [[58], [60], [62]];

  it("takes one row for all, or one each", () => {
    const all = call(specOf("RESTATE"), { reported, used, right });
    expect(all).toHaveLength(3);
    const each = [used, used, used].flat();
    expect(call(specOf("RESTATE"), { reported, used: each, right })).toEqual(all);
    expect(call(specOf("RESTATE"), { reported: 58, used, right: [...right, ...used] })).toHaveLength(2);
    const misfit = { reported, used, right: [...right, ...used] };
    expect(message("RESTATE", misfit)).toBe("reported has 3 rows, right 2: give one row for all, or one each.");
    expect(message("RESTATE", { reported: [[58, 60]], used, right })).toMatch(/a range here has 2 columns/);
    expect(message("RESTATE", { reported, used: [[0.95]], right })).toMatch(/^used: 1 column cannot be\./);
  });

  it("says which of the two a message is about, and spoils no other row", () => {
    const rows = [
      [0.8, 25, 0.98, 20],
      [80, 25, 0.98, 20],
      [0.8, 25, 0.98, null],
    ];
    const found = call(specOf("RESTATE"), { reported, used, right: rows });
    expect(found[0]?.[0]).toEqual(expect.any(Number));
    expect(errorIn([found[1] ?? []])?.message).toMatch(/^right: emissivity: 80 cannot be\..* 0\.8\?/);
    expect(errorIn([found[2] ?? []])?.message).toMatch(/^right: air_temp is not given\./);
    expect(message("RESTATE", { reported, used: [[0, 20]], right })).toMatch(
      /^used: emissivity is not given\. 0 is read/,
    );
    expect(message("RESTATE", { reported: "*", used, right })).toMatch(/A bound is not a reading/);
  });

  it("a band a row, one system of units a call", () => {
    const bands = call(specOf("RESTATE"), {
      reported: [[90], [90]],
      used,
      right: [[0.6, 20]],
      band: [["7.5-14"], ["8-14"]],
    });
    // A worked difference of the trade, the reflected temperature taken as 20 °C there too.
    expect(Math.abs(Number(bands[0]?.[0]) - Number(bands[1]?.[0]))).toBeCloseTo(0.48, 1);
    const inF = call(specOf("RESTATE"), {
      reported: 136.4,
      used: [[0.95, 68]],
      right: [[0.8, 77, 0.98, 68]],
      units: "F",
    });
    expect(Number(inF[0]?.[0])).toBeCloseTo(63.848556199136 * 1.8 + 32, 8);
    expect(message("RESTATE", { reported, used, right, units: [["C"], ["F"], ["C"]] })).toMatch(/one system of units/);
  });
});
