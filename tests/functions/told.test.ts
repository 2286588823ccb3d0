/** What a refusal tells: the argument, the value as it was typed, what is allowed in the unit of the sheet, a hint that is true. */
import type { Cell, Grid, Input } from "../../src/functions/contract.js";
import { isCellError } from "../../src/functions/contract.js";
import { findFunction } from "../../src/functions/catalogue.js";

function message(name: string, ...inputs: Input[]): string {
  const cell = findFunction(name)?.evaluate(inputs)[0]?.[0];
  return isCellError(cell) ? cell.message : `no error but ${String(cell)}`;
}
const air = (...inputs: Input[]): string => message("AIR_TRANSMISSION", ...inputs);
const graded = (criteria: Input, units?: Input, rise: Cell = 3): string =>
  message("GRADE", rise, "similar", criteria, undefined, undefined, undefined, units);
const inBand = (band: Grid): string => message("RADIANCE", 25, band);

describe("humidity and pressure", () => {
  test.each([101, 150, 5000])("%d per cent is not taken for a fraction entered as per cent", (humidity) => {
    const told = air(10, 20, humidity);
    expect(told).toContain(`humidity: ${humidity} % cannot be. Allowed: above 0, up to 100 %.`);
    expect(told).not.toContain("fraction");
  });

  test.each([
    [1013, "101.3"],
    [101325, "101.3"],
    [1.013, "101.3"],
    [0.1013, "101.3"],
  ])("a pressure of %d is a slip of units: %s kPa", (pressure, meant) => {
    expect(air(10, 20, 50, pressure)).toContain(`Pressure is in kPa: was ${meant} kPa meant?`);
  });

  test("a path too long for hot air is told in the sheet's unit of length", () => {
    // 98.43 and 3281 ft: 30 and 1000 m over 0.3048 m/ft.
    expect(air(500, 140, 50, undefined, undefined, undefined, "F")).toMatch(/may be 98\.43 ft at most.*allow 3281 ft/);
    expect(air(50, 60, 50)).toMatch(/may be 30 m at most.*allow 1000 m/);
  });
});

test("a window that reflects and lets all through lacks its transmission", () => {
  const window = [undefined, undefined, 1, undefined, 0.2, 24];
  const told = message("CORRECTED", 58, 0.9, 22, ...window);
  expect(told).toBe(
    "window_reflectance: 0.2 cannot be. Allowed: 0. A window that reflects does not let all through: give its transmission too.",
  );
});

describe("a workbook's own criteria", () => {
  const row = (grade: Cell, edge: Cell): Cell[] => ["similar", grade, "from", edge, "words", "action"];
  const header: Cell[] = ["reference", "grade", "from or above", "lower edge", "words", "action"];
  const empty: Cell[] = [null, null, null, null, null, null];

  test("a first row without a grade is no header: it is told, never passed over", () => {
    expect(graded([row("", 1), row(2, 4)])).toContain("Row 1 of the criteria: a grade is a whole number");
    expect(graded([row("", 1), row(2, 4)])).toMatch(/^criteria: Row 1/);
    expect(graded([row("one", 1), row(2, 4)])).toContain('criteria: "one" cannot be.');
  });

  test("rows are counted as they stand in the range, the header and empty rows too", () => {
    expect(graded([header, row(1, 1), empty, row(2, 0.5)])).toContain("Row 4 of the criteria: within a reference");
    expect(graded([empty, header, row(1, 1), row(5, 2)])).toContain("Row 4 of the criteria: a grade is");
  });

  test("an edge is quoted as it was typed, with its range in the unit of the sheet", () => {
    expect(graded([row(1, -5)], "F")).toContain("criteria: -5 °F cannot be. Allowed: 0 to 5400 °F.");
    expect(graded([row(1, "-5")])).toContain('criteria: "-5" cannot be. Allowed: 0 to 3000 K.');
    expect(graded([row(1, 9), row(2, 7)], "F")).toContain("criteria: 7 °F cannot be. Row 2");
    expect(graded([["limit", 1, "from", 80, "w", ""]], "F")).toContain("criteria: 80 cannot be. Allowed: 0 to 10.");
  });

  test("without rows, without words, with an unknown name", () => {
    expect(graded([header, empty])).toMatch(/^criteria: The range has no rows/);
    expect(graded([["similar", 1, "from", 1, "", ""]])).toMatch(/^criteria: Row 1 of the criteria has no words/);
    expect(graded("nope")).toContain('criteria: "nope" cannot be. Allowed: "NETA-100.18"');
  });
});

describe("a response table", () => {
  test("rows are counted as they stand in the range", () => {
    const table: Cell[][] = [
      ["wavelength", "response"],
      [7, 0],
      [null, null],
      [8, 1],
      [7.5, 1],
    ];
    expect(inBand(table)).toContain("band: 7.5 cannot be. Row 5 of the response table: wavelengths rise");
    expect(
      inBand([
        ["wavelength", "response"],
        [7, 0],
        [14, "full"],
      ]),
    ).toContain('band: "full" cannot be. Row 3 of the response table: a response is');
  });

  test("a wavelength that cannot be is told by its row, not as if the band were text", () => {
    const told = inBand([
      [7, 1],
      [24, 1],
    ]);
    expect(told).toContain("band: 24 cannot be. Allowed: 0.7 to 20 µm. Row 2 of the response table: a wavelength is");
    expect(told).not.toContain("two wavelengths");
  });

  test("empty rows below it, which Excel hands over as 0, end it", () => {
    const table: Cell[][] = [
      [7.5, 1],
      [14, 1],
    ];
    const radiance = findFunction("RADIANCE");
    expect(radiance?.evaluate([25, [...table, [0, 0], [0, 0]]])).toEqual(radiance?.evaluate([25, table]));
    expect(
      inBand([
        [0, 0],
        [8, 1],
        [14, 1],
      ]),
    ).toContain("Row 1 of the response table");
  });
});

test("a share just beyond its limit is not rounded onto it", () => {
  expect(message("RISE_AT_LOAD", 12, 39.9, 100)).toMatch(/^39\.9 % load: not projected. The least is 40 % /);
  // 100.4/91 is 1.1033, 200.5/200 is 1.0025.
  expect(message("RELATIVE_RISE", 78, 46, 25, 100.4, 91)).toMatch(/^The loads differ by 10\.33 %; .* within 10 %/);
  expect(message("LIMIT_AT_LOAD", 65, 200.5, 200, 28)).toMatch(/^100\.3 % of the rated load/);
});

describe("an empty cell that Excel hands over as 0, where words belong", () => {
  const value = (name: string, ...inputs: Input[]): Grid | undefined => findFunction(name)?.evaluate(inputs);

  test.each<[string, Input[], Input[]]>([
    ["GRADE", [[[3], [3]], "similar", 0, [[0], ["direct"]], 0, undefined, 0], [[[3], [3]], "similar"]],
    ["RADIANCE", [25, [[0], ["7.5-14"]], 0], [[[25], [25]]]],
    ["PHASE_RISE", [[[38, 55]], [[62, 41]], 25, 0, 0, 0, 0], [[[38, 55]], [[62, 41]], 25]],
    ["CRITERIA", [0], []],
    ["ABOUT", [0], []],
  ])("is not given: %s", (name, zeros, without) => {
    expect(value(name, ...zeros)).toEqual(value(name, ...without));
  });

  test("is told as such where a word is needed", () => {
    expect(message("GRADE", 3, 0)).toMatch(/^reference is not given\. 0 is read as an empty cell/);
  });
});

test.each(["ABOUT", "CRITERIA"])("GREY.%s takes one value: a range is told, not read by its first cell", (name) => {
  const argument = name === "ABOUT" ? "what" : "name";
  expect(message(name, [["version", "house"]])).toBe(`${argument}: one value is wanted, here are 2 cells.`);
  expect(message(name, [[{ error: "#REF!", message: "gone" }]])).toBe("gone");
});

test("a typographic minus before a number is told as such", () => {
  expect(message("CORRECTED", "\u22125", 0.95, 22)).toMatch(
    /"\u22125" cannot be\. The sign in front is not a plain minus/,
  );
  expect(message("CORRECTED", "\u2013 5.5", 0.95, 22)).toMatch(/The sign in front is not a plain minus/);
  expect(message("CORRECTED", "\u2013", 0.95, 22)).toMatch(/A number is wanted/);
});

test("a set of phases as long as a sheet is answered", () => {
  const column = (value: number): Grid => Array.from({ length: 300_000 }, () => [value]);
  const rises = findFunction("PHASE_RISE")?.evaluate([column(30), column(60), 25]);
  expect(rises).toHaveLength(300_000);
  expect(rises?.[299_999]?.[0]).toBeCloseTo(5, 9);
});

test("one set of phases takes one value, told without a count of one", () => {
  expect(message("PHASE_RISE", [[38, 55]], [[62, 41]], [[25, 26]])).toBe(
    "surrounding_air is 1 × 2 cells: give one value.",
  );
});

test("an edge of the criteria in °F is a round number, not one with the dust of a conversion", () => {
  const grade = findFunction("GRADE");
  expect(grade?.evaluate([7.2, "similar", undefined, undefined, "lower", undefined, "F"])).toEqual([[7.2]]);
  expect(grade?.evaluate([7.2, "similar", undefined, undefined, "upper", undefined, "F"])).toEqual([[27]]);
});

test("a reference that the criteria have no column for: the built-in tables that have one are named", () => {
  expect(message("GRADE", 1.2, "limit")).toMatch(/^NETA-100\.18 has no column for "limit", only .*"house-limit"/);
  expect(message("GRADE", 24, "baseline")).toMatch(/^NETA-100\.18 has no column for "baseline", only .*"house"/);
});

test("a plain per cent slip is told as such, without a second guess", () => {
  expect(message("CORRECTED", 58, 95, 22)).toMatch(/A fraction is wanted, not per cent: 0\.95\?$/);
});
