/** GREY.REFLECTED_MIX: sets in rows or as one column, shares for all, blanks, bands, and what it says. */
import { findFunction } from "../../src/functions/catalogue.js";
import type { Cell, Grid, Input } from "../../src/functions/contract.js";
import { errorIn, passing } from "./fixture.js";

const mix = (...inputs: Input[]): Grid => findFunction("REFLECTED_MIX")?.evaluate(inputs) ?? [];
const value = (...inputs: Input[]): Cell | undefined => mix(...inputs)[0]?.[0];
const message = (...inputs: Input[]): string | undefined => errorIn(mix(...inputs))?.message;

const SKY: Grid = [[-50, 15]];
const HALVES: Grid = [[0.5, 0.5]];
// Planck's law by quadrature (scipy), half at -50 and half at 15 °C.
const LONG_WAVE = -10.5756044544;
const EIGHT_TO_FOURTEEN = -10.8352214262;

it("gives one value for a row, for a column and for one part", () => {
  expect(value(SKY, HALVES)).toBeCloseTo(LONG_WAVE, 8);
  expect(value([[-50], [15]], [[0.5], [0.5]])).toBeCloseTo(LONG_WAVE, 8);
  expect(value(20, 1)).toBeCloseTo(20, 9);
});

it("takes a mix from each row, with a row of shares each or one for all, and a band each", () => {
  const temps: Grid = [
    [-50, 15],
    [20, 20],
    [15, -50],
  ];
  for (const shares of [HALVES, temps.map(() => HALVES[0]!)]) {
    const found = mix(temps, shares, [["7.5-14"], [""], ["8-14"]]);
    expect(found.map((row) => row.length)).toEqual([1, 1, 1]);
    expect(found[0]?.[0]).toBeCloseTo(LONG_WAVE, 8);
    expect(found[1]?.[0]).toBeCloseTo(20, 9);
    expect(found[2]?.[0]).toBeCloseTo(EIGHT_TO_FOURTEEN, 8);
  }
});

it("a mix that fails spoils no other", () => {
  const found = mix(
    [
      [passing, 15],
      [-50, 15],
      [-50, -300],
      [-50, null],
    ],
    HALVES,
  );
  expect(found[0]?.[0]).toEqual(passing);
  expect(found[1]?.[0]).toBeCloseTo(LONG_WAVE, 8);
  expect(found[2]?.[0]).toMatchObject({
    error: "#VALUE!",
    message: expect.stringMatching(/^temps: -300 °C cannot be\. .*absolute zero/) as string,
  });
  expect(found[3]?.[0]).toMatchObject({
    error: "#VALUE!",
    message: "temps is not given. Part 2 has a share and no temperature.",
  });
});

it("passes over parts without temperature and share, as in a list with room left", () => {
  const list: Grid = [[-50], [15], [null], [""]];
  expect(value(list, [[0.5], [0.5], [""], [null]])).toBeCloseTo(LONG_WAVE, 8);
  // What Excel makes of two empty cells.
  expect(value([[-50, 15, 0]], [[0.5, 0.5, 0]])).toBeCloseTo(LONG_WAVE, 8);
});

it.each<[string, Input[], RegExp]>([
  ["shares that do not add up", [SKY, [[0.5, 0.4]]], /^shares: The shares add up to 0\.9; they have to add up to 1\.$/],
  [
    "per cent",
    [SKY, [[50, 50]]],
    /^shares: 50 cannot be\. Allowed: 0 to 1\. A fraction is wanted, not per cent: 0\.5\?/,
  ],
  [
    "a temperature without its share",
    [SKY, [[1, null]]],
    /^shares is not given\. Part 2 has a temperature and no share\.$/,
  ],
  ["a column against a row", [SKY, [[0.5], [0.5]]], /^temps is 1 × 2, shares is 2 × 1 cells: give both the same shape/],
  ["a share too many", [SKY, [[0.5, 0.3, 0.2]]], /^temps is 1 × 2, shares is 1 × 3 cells/],
  ["more bands than mixes", [SKY, HALVES, [["8-14"], ["3-5"]]], /^band is 2 × 1 cells: give one band\.$/],
  ["a band that is none", [SKY, HALVES, "long wave"], /^band: "long wave" cannot be\./],
  ["two systems of units", [SKY, HALVES, "", [["C"], ["F"]]], /^units: one call takes one system of units/],
  ["an unknown unit", [SKY, HALVES, "", "K"], /^units: "K" cannot be\./],
  ["below absolute zero in °F", [[[-460, 59]], HALVES, "", "F"], /^temps: -460 °F cannot be\./],
])("%s is told", (_, inputs, told) => {
  expect(message(...inputs)).toMatch(told);
});
