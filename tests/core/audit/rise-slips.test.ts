/** What each slip of a rise gives, each worked apart from this code on the numbers as they stand here. */
import { explainRise } from "../../../src/core/audit/explain-rise.js";
import type { RiseSlipKey } from "../../../src/core/audit/explain-rise.js";
import type { RiseCase } from "../../../src/core/audit/rise-slips.js";
import { GreybodyError } from "../../../src/core/errors.js";
import { kelvin } from "../../support/radiometry.js";

/** 38, 55, 37 °C at 62, 41, 60 A over 25 °C: rises 13, 30, 12 K; brought to 62 A. */
const three: RiseCase = {
  temps: [kelvin(38), kelvin(55), kelvin(37)],
  loads: [62, 41, 60],
  surroundingAir: kelvin(25),
};
/** 58 and 45 °C at 62 and 60 A over 25 °C: rises 33 and 20 K; brought to 100 A. */
const two: RiseCase = {
  temps: [kelvin(58), kelvin(45)],
  loads: [62, 60],
  referenceLoad: 100,
  surroundingAir: kelvin(25),
};

function gives(key: RiseSlipKey | "as-stated", given: RiseCase): number {
  const line = explainRise(500, given).lines.find((one) => one.key === key);
  return line?.gives ?? NaN;
}
/** 30 K from 41 A to 62 A, 12 K from 60 A to 62 A, with an exponent. */
const hot = (n: number): number => 30 * (62 / 41) ** n;
const last = (n: number): number => 12 * (62 / 60) ** n;
const proper = hot(1.8) - (13 + last(1.8)) / 2;

test.each<[RiseSlipKey | "as-stated", number]>([
  ["as-stated", proper],
  ["not-adjusted", 17.5],
  ["difference-scaled", 36.84],
  ["difference-scaled-1.6", 33.92],
  ["difference-scaled-2", 17.5 * (62 / 41) ** 2],
  ["over-air", hot(1.8)],
  ["over-air-1.6", 58.14],
  ["over-air-2", 68.6],
  ["over-air-not-adjusted", 30],
  ["less-lowest", hot(1.8) - last(1.8)],
  ["less-lowest-not-adjusted", 18],
  ["less-next", 50.16],
  ["less-next-not-adjusted", 17],
  ["exponent-1", hot(1) - (13 + last(1)) / 2],
  ["exponent-1.6", 58.14 - (13 + 12.65) / 2],
  ["exponent-1.7", hot(1.7) - (13 + last(1.7)) / 2],
  ["exponent-2", 68.6 - (13 + 12.81) / 2],
  ["currents-swapped", 30 - (13 * (62 / 41) ** 1.8 + last(1.8)) / 2],
  ["currents-swapped-last", 30 * (62 / 60) ** 1.8 - (13 + 12 * (62 / 41) ** 1.8) / 2],
  ["currents-of-others-swapped", hot(1.8) - (13 * (62 / 60) ** 1.8 + 12) / 2],
  ["currents-moved-on", 30 - (13 * (62 / 60) ** 1.8 + 12 * (62 / 41) ** 1.8) / 2],
  ["currents-moved-back", 30 * (62 / 60) ** 1.8 - (13 * (62 / 41) ** 1.8 + 12) / 2],
  ["other-current", 30 - (13 + last(1.8)) / 2],
  ["other-current-last", 30 * (62 / 60) ** 1.8 - (13 + last(1.8)) / 2],
  ["difference-scaled-other", 17.5],
  ["difference-scaled-other-last", 17.5 * (62 / 60) ** 1.8],
  ["temperature-scaled", 55 * (62 / 41) ** 1.8 - (38 + 37 * (62 / 60) ** 1.8) / 2],
  ["temperature-scaled-over-air", 55 * (62 / 41) ** 1.8 - 25],
  ["adjusted-twice", hot(3.6) - (13 + last(3.6)) / 2],
  ["difference-scaled-twice", 17.5 * (62 / 41) ** 3.6],
  ["upside-down", hot(-1.8) - (13 + last(-1.8)) / 2],
  ["difference-upside-down", 17.5 * (41 / 62) ** 1.8],
  ["thirty-two-added", proper + 32],
  ["thirty-two-taken", proper - 32],
  ["converted-as-temperature", 1.8 * proper + 32],
  ["converted-back-as-temperature", (proper - 32) / 1.8],
  ["times-1.8", 1.8 * proper],
  ["over-1.8", proper / 1.8],
  ["fraction-for-per-cent", proper / 100 ** 1.8],
])("%s of three phases", (key, expected) => {
  expect(Math.abs(gives(key, three) - expected)).toBeLessThanOrEqual(0.011);
});

test.each<[RiseSlipKey | "as-stated", number]>([
  ["as-stated", 33 * (100 / 62) ** 1.8 - 20 * (100 / 60) ** 1.8],
  ["not-adjusted", 13],
  ["difference-scaled", 13 * (100 / 62) ** 1.8],
  ["currents-swapped", 33 * (100 / 60) ** 1.8 - 20 * (100 / 62) ** 1.8],
  ["other-current", 13 * (100 / 60) ** 1.8],
  ["largest-for-reference", 33 - 20 * (62 / 60) ** 1.8],
  ["over-air-not-adjusted", 33],
  ["per-cent-for-fraction", (33 * (100 / 62) ** 1.8 - 20 * (100 / 60) ** 1.8) * 100 ** 1.8],
])("%s of a hot part and its reference", (key, expected) => {
  expect(gives(key, two)).toBeCloseTo(expected, 6);
});

test("what belongs to three phases is left out of two, and a reference load where none is given", () => {
  for (const key of ["less-lowest", "less-next", "currents-moved-on", "difference-scaled-other-last"] as const)
    expect(gives(key, two)).toBeNaN();
  expect(gives("largest-for-reference", three)).toBeNaN();
});

test("in a sheet of °F the bare numbers are those of the sheet", () => {
  const inF = { ...three, degrees: "F" as const };
  // 131 °F, 100.4 °F, 98.6 °F; a difference of them in °F over 1.8.
  const scaled = 131 * (62 / 41) ** 1.8 - (100.4 + 98.6 * (62 / 60) ** 1.8) / 2;
  expect(gives("temperature-scaled", inF)).toBeCloseTo(scaled / 1.8, 6);
  expect(gives("thirty-two-added", inF)).toBeCloseTo(proper + 32 / 1.8, 6);
});

test("the hot phase of three is the one that is hottest at one load", () => {
  // 30 K at 60 A against 26 K at 30 A: 26·2^1.8 = 90.5 K at 60 A.
  const given = { ...three, temps: [kelvin(55), kelvin(51), kelvin(37)], loads: [60, 30, 60] };
  expect(gives("as-stated", given)).toBeCloseTo(26 * 2 ** 1.8 - (30 + 12) / 2, 9);
  expect(gives("not-adjusted", given)).toBeCloseTo(30 - (26 + 12) / 2, 9);
});

test("a phase without current leaves nothing to adjust by: as stated has no answer, what needs no load has", () => {
  const { lines } = explainRise(17.5, { ...three, loads: [62, 0, 60] });
  expect(lines[0]).toMatchObject({ key: "as-stated", gives: undefined, verdict: "no" });
  expect(lines[1]).toMatchObject({ key: "not-adjusted", verdict: "matches" });
});

describe("refusals", () => {
  const thrownBy = (given: Partial<RiseCase>, stated = 17.5, tolerance = 0.05): unknown => {
    try {
      return explainRise(stated, { ...three, ...given }, tolerance);
    } catch (error) {
      return error;
    }
  };
  test.each<[string, unknown, string, string | undefined]>([
    ["one temperature", thrownBy({ temps: [300] }), "temps", "two-or-three-temps"],
    ["four temperatures", thrownBy({ temps: [300, 301, 302, 303] }), "temps", "two-or-three-temps"],
    ["two loads for three", thrownBy({ loads: [62, 41] }), "loads", "loads-of-temps"],
    ["a load below 0", thrownBy({ loads: [62, -1, 60] }), "loads", undefined],
    ["a reference load of 0", thrownBy({ referenceLoad: 0 }), "loads", undefined],
    ["absolute zero", thrownBy({ temps: [300, 0, 300] }), "temps", "absolute-zero"],
    ["air of 70 °C", thrownBy({ surroundingAir: kelvin(70) }), "surrounding_air", undefined],
    ["a rise of 4000 K", thrownBy({}, 4000), "stated", undefined],
    ["no tolerance", thrownBy({}, 17.5, 0), "tolerance", undefined],
  ])("%s", (_, error, argument, key) => {
    expect(error).toBeInstanceOf(GreybodyError);
    expect(error).toMatchObject({ code: "INVALID", argument });
    expect((error as GreybodyError).hint?.key).toBe(key);
  });
});
