/** What the functions of measured inputs, spot and wind say where they refuse, in the units of the sheet. */
import { findFunction } from "../../src/functions/catalogue.js";
import type { Input } from "../../src/functions/contract.js";
import { errorIn } from "./fixture.js";

const ask = (name: string, ...inputs: Input[]): ReturnType<typeof errorIn> =>
  errorIn(findFunction(name)?.evaluate(inputs) ?? []);
const none = undefined;

it.each<[string, string, Input[], "#N/A" | "#VALUE!", RegExp]>([
  [
    "target near the window",
    "WINDOW_TRANSMISSION",
    [34, 30, 25],
    "#N/A",
    /^Target and window are 9 K apart; below 10 K no/,
  ],
  [
    "the same in °F: a difference, without the 32",
    "WINDOW_TRANSMISSION",
    [93.2, 86, 77, none, none, none, "F"],
    "#N/A",
    /^Target and window are 16\.2 °F apart; below 18 °F no/,
  ],
  ["readings swapped", "WINDOW_TRANSMISSION", [68, 90, 25], "#N/A", /^The window would let through 1\.649.*swapped/],
  ["opaque", "WINDOW_TRANSMISSION", [90, 25, 25], "#N/A", /^The window would let through 0 .*Is it opaque/],
  // By Planck's law summed over 7.5 to 14 µm, apart from this code: 0.04739 and 0.05344; 0.0461 the pair.
  [
    "next to opaque",
    "WINDOW_TRANSMISSION",
    [90, 29, 25],
    "#N/A",
    /^The window would let through 0\.04739.*less than the 0\.05 .*Order is reading without, reading with/,
  ],
  [
    "hot and cold before with and without",
    "WINDOW_TRANSMISSION_PAIR",
    [90, 30, 68, 28.5],
    "#N/A",
    /^The window would let through 0\.0461.* Arguments exchanged\? Order is hot without, hot through, cold without, cold through\.$/,
  ],
  [
    "two like targets",
    "WINDOW_TRANSMISSION_PAIR",
    [31, 30, 29, 28],
    "#N/A",
    /^The two targets are 2 K apart; below 10 K/,
  ],
  [
    "hardly warm",
    "EMISSIVITY_BY_CONTACT",
    [29, 30, 22],
    "#N/A",
    /^The surface and what it reflects are 8 K apart; below 10 K/,
  ],
  ["more than black", "EMISSIVITY_BY_CONTACT", [65, 62, 22], "#N/A", /^These readings take an emissivity of 1\.08/],
  [
    "air without its temperature",
    "EMISSIVITY_BY_CONTACT",
    [58, 62, 22, 0.98],
    "#VALUE!",
    /^air_temp is not given\. The temp/,
  ],
  [
    "foil without its temperature",
    "REFLECTED_BY_REFLECTOR",
    [18, 0.95],
    "#VALUE!",
    /^reflector_temp is not given\. The temp/,
  ],
  [
    "0.00136",
    "SPOT_SIZE",
    [3, 0.00136],
    "#VALUE!",
    /^ifov: 0\.00136 mrad cannot be\. Allowed: 0\.01 to 100 mrad\. .*was 1\.36 meant\?/,
  ],
  ["a field of view", "FARTHEST", [10, 436], "#VALUE!", /^ifov: 436 mrad cannot be\. .*one pixel is wanted/],
  ["calm", "RISE_AT_WIND", [10, 0], "#N/A", /^Wind of 0 m\/s: below 1 m\/s .*Calm is not defined/],
  ["calm as the reference", "RISE_AT_WIND", [10, 3, 0], "#N/A", /^Wind of 0 m\/s: below 1 m\/s .*Calm is not defined/],
  [
    "a gale in mph",
    "RISE_AT_WIND",
    [18, 20, none, none, "F"],
    "#N/A",
    /^Wind of 20 mph: above 15\.66 mph a rise says nothing/,
  ],
  ["a wind that cannot be", "RISE_AT_WIND", [10, -2], "#VALUE!", /^wind: -2 m\/s cannot be\. Allowed: 0 to 30 m\/s\./],
])("%s: GREY.%s", (_, name, inputs, error, told) => {
  const fault = ask(name, ...inputs);
  expect(fault?.error).toBe(error);
  expect(fault?.message).toMatch(told);
});

it.each([
  // 10 ft are 3.048 m: 3.048·1.36·3 = 12.436 mm, over 25.4.
  ["SPOT_SIZE", [10, 1.36, 3, "F"], 0.48961],
  // Half an inch is 12.7 mm: 12.7/(3·1.36) = 3.1127 m, over 0.3048.
  ["FARTHEST", [0.5, 1.36, 3, "F"], 10.2124],
  // Twice the wind, √2 of the rise, whatever the unit.
  ["RISE_AT_WIND", [18, 10, 5, 0.5, "F"], 25.4558],
] as const)("%s in inches, feet and mph", (name, inputs, expected) => {
  const [[found] = []] = findFunction(name)?.evaluate([...inputs]) ?? [];
  expect(found).toBeCloseTo(expected, 4);
});

test("a window of just above 0.05 is answered", () => {
  const [[found = null] = []] = findFunction("WINDOW_TRANSMISSION")?.evaluate([90, 29.5, 25]) ?? [];
  expect(found).toBeCloseTo(0.0534, 4);
});
