/** The argument `band`: how it may be written, response tables, and what is said about one that cannot be. */
import type { Cell, Grid, Input } from "../../src/functions/contract.js";
import { call, errorIn, expectCells, passing, specOf } from "./fixture.js";

const RADIANCE = specOf("RADIANCE");
const at = (band: Input, temp: Input = 25): Grid => call(RADIANCE, { temp, band });
/** Long-wave radiance at 25 °C by the high-precision reference, worked apart from this code. */
const LONG_WAVE = 57.60953603724;

describe("text", () => {
  it.each([
    "7.5-14",
    "7,5-14",
    "7.5–14",
    "7.5—14",
    "7.5 - 14",
    " 7.5-14 ",
    "7.50-14.0",
    "7.5-14 µm",
    "7.5-14 μm",
    "7.5-14um",
    "7.5 µm - 14 µm",
    "07.5-014",
  ])("%j is 7.5 to 14 µm", (text) => {
    expectCells(at(text), [[LONG_WAVE]], 1e-10);
  });

  it.each([undefined, null, ""])("%j is the default, 7.5 to 14 µm", (blank) => {
    expectCells(at(blank), [[LONG_WAVE]], 1e-10);
  });

  it.each([
    ["14-7.5", /shorter wavelength comes first/],
    ["8-8", /shorter wavelength comes first/],
    ["0.6-1", /Allowed: 0.7 to 20 µm/],
    ["3-20.1", /Allowed: 0.7 to 20 µm/],
    ["3000-5000", /Allowed: 0.7 to 20 µm/],
    ["LW", /two wavelengths in µm/],
    ["7.5", /two wavelengths in µm/],
    ["7.5-14-20", /two wavelengths in µm/],
    ["-3-5", /two wavelengths in µm/],
    ["3 5", /two wavelengths in µm/],
    ["1.000,5-3", /two wavelengths in µm/],
  ])("%j is refused", (text, message) => {
    const fault = errorIn(at(text));
    expect(fault?.error).toBe("#VALUE!");
    expect(fault?.message.startsWith(`band: "${text}" cannot be.`)).toBe(true);
    expect(fault?.message).toMatch(message);
  });

  it.each([45421, 1001])("%d is what a date became", (date) => {
    expect(errorIn(at(date))?.message).toContain("Excel read the band as a date: format the cell as text");
  });

  it.each([8, 10.5, 1000, 45421.5, true])("%j is no band, and no date either", (cell) => {
    expect(errorIn(at(cell))?.message).toMatch(/^band: /);
    expect(errorIn(at(cell))?.message).not.toContain("date");
  });
});

describe("a column of texts", () => {
  it("is a band a row", () => {
    const found = at([["7.5-14"], [null], ["nonsense"], ["7,5-14"], [passing]]);
    expectCells([found[0]!, found[1]!, found[3]!], [[LONG_WAVE], [LONG_WAVE], [LONG_WAVE]], 1e-10);
    expect(found[2]?.[0]).toMatchObject({ error: "#VALUE!" });
    expect(found[4]?.[0]).toEqual(passing);
  });

  it("two columns of texts are no response table, also beside an error", () => {
    const [[first = null] = [], [broken, last = null] = []] = at([
      ["7.5-14", "8-14"],
      [passing, "7.5-14"],
    ]);
    expectCells([[first, last]], [[LONG_WAVE, LONG_WAVE]], 1e-10);
    expect(broken).toEqual(passing);
  });
});

describe("a response table", () => {
  const flat: Cell[][] = [
    [7.5, 1],
    [10, 1],
    [14, 1],
  ];

  it.each([
    ["of numbers", flat],
    ["with a heading", [["wavelength", "response"], ...flat]],
    ["of texts that are numbers", flat.map((row) => row.map(String))],
    ["with empty rows between and below", [flat[0]!, [null, null], flat[1]!, flat[2]!, ["", ""]]],
  ] as [string, Grid][])("%s is taken whole", (_, table) => {
    expectCells(at(table), [[LONG_WAVE]], 1e-10);
    // Not broadcast: three temperatures, three answers.
    expect(at(table, [[25], [25], [25]])).toEqual([0, 1, 2].map(() => at(table)[0]));
  });

  it("weighs: a table of halves halves the radiance", () => {
    const halves = flat.map(([wavelength]) => [wavelength ?? null, 0.5]);
    expectCells(at(halves), [[LONG_WAVE / 2]], 1e-10);
  });

  it.each([
    [
      "falls back",
      [
        [8, 1],
        [7, 1],
        [14, 1],
      ],
      /Row 2 of the response table: wavelengths rise/,
    ],
    [
      "has a negative response",
      [
        [8, 1],
        [14, -1],
      ],
      /Row 2 of the response table: a response is/,
    ],
    [
      "has a hole",
      [
        [8, 1],
        [14, null],
      ],
      /Row 2 of the response table: a response is/,
    ],
    [
      "has text among its numbers",
      [
        [8, 1],
        [14, "full"],
      ],
      /Row 2 of the response table: a response is/,
    ],
    [
      "has no response",
      [
        [8, 0],
        [14, 0],
      ],
      /at least two rows/,
    ],
    [
      "leaves the wavelengths",
      [
        [0.5, 1],
        [14, 1],
      ],
      /Allowed: 0.7 to 20 µm/,
    ],
    [
      "has one row under its heading",
      [
        ["wavelength", "response"],
        [8, 1],
      ],
      /at least two rows/,
    ],
  ] as [string, Grid, RegExp][])("that %s is refused", (_, table, message) => {
    const found = at(table, [[25], [30]]);
    expect(found).toHaveLength(2);
    for (const [cell] of found)
      expect(cell).toMatchObject({ error: "#VALUE!", message: expect.stringMatching(message) as string });
  });

  it("passes an error through, wherever it stands", () => {
    for (const place of [0, 1, 2]) {
      for (const side of [0, 1]) {
        const broken = flat.map((row, r) => row.map((cell, c) => (r === place && c === side ? passing : cell)));
        expect(at(broken)).toEqual([[passing]]);
      }
      expect(at(flat.map((row, r) => (r === place ? [passing, passing] : row)))).toEqual([[passing]]);
    }
  });
});
