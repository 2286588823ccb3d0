/** GREY.UNCERTAINTY takes its ranges whole: rows, columns of uncertainties, correlations. Values worked apart from this code. */
import type { Cell, Grid, Input } from "../../src/functions/contract.js";
import { call, errorIn, expectCells, inFahrenheit, mapGiven, passing, specOf, type Given } from "./fixture.js";

const spec = specOf("UNCERTAINTY");
const READING = [58, 0.85, 22, 0.98, 20];
const U = [0.5, 0.02, 1, 0.005, 1];
/** 1.96 · 1.042950614 K; each input's part of the latter. */
const EXPANDED = 1.959963985 * 1.042950614;
const PARTS = [0.57353035, 0.84083727, 0.12326048, 0.19062608, 0.01643678];

const result = (given: Given): Grid => call(spec, given);
const messageOf = (given: Given): string => errorIn(result(given))?.message ?? "none";
const alone = { inputs: [READING], uncertainties: [U] };

describe("rows", () => {
  const inputs = [READING, [58, 85, 22, 0.98, 20], READING, ["", "", "", "", ""], [10, 0.2, 80, "", ""], READING];

  it("one row of uncertainties holds for all; a bad row keeps its place and says why", () => {
    const found = result({ inputs, uncertainties: [[0.5, 0.02, 1, "", ""]] });
    const expected = 1.959963985 * Math.hypot(...PARTS.slice(0, 3));
    for (const row of [0, 2, 5]) expectCells([found[row] ?? []], [[expected]], 1e-7);
    expect(found[1]?.[0]).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/^emissivity: 85 /) as string,
    });
    expect(found[3]?.[0]).toMatchObject({
      error: "#VALUE!",
      message: expect.stringMatching(/^apparent is not/) as string,
    });
    expect(found[4]?.[0]).toMatchObject({
      error: "#N/A",
      message: expect.stringMatching(/^No object gives/) as string,
    });
  });

  it("or each has its own, and a bad one spoils its row alone", () => {
    const uncertainties = [
      U,
      [0.5, 2, 1, 0.005, 1],
      [1, 0.04, 2, 0.01, 2],
      ["", 0, "", "", ""],
      [passing, 0.02, 1, "", ""],
      U,
    ];
    const found = result({ inputs: inputs.map(() => READING), uncertainties });
    expectCells([found[0] ?? [], found[2] ?? [], found[5] ?? []], [[EXPANDED], [2 * EXPANDED], [EXPANDED]], 1e-6);
    expect(found[1]?.[0]).toMatchObject({ message: expect.stringMatching(/^emissivity_u: 2 .*0\.02\?/) as string });
    expect(found[3]?.[0]).toMatchObject({
      message: expect.stringMatching(/^uncertainties: All are 0 or empty/) as string,
    });
    expect(found[4]?.[0]).toEqual(passing);
  });

  it("coverage and band may be a column, a row for each", () => {
    const found = result({
      inputs: [READING, READING, READING],
      uncertainties: [U],
      coverage: [[0.95], [0.6827], [95]],
      band: [[""], ["7.5-14"], ["7.5-14"]],
    });
    expectCells(found.slice(0, 2), [[EXPANDED], [1.0 * 1.042950614]], 1e-3);
    expect(found[2]?.[0]).toMatchObject({ message: expect.stringMatching(/^coverage: 95 .*0\.95\?/) as string });
  });

  it("ranges that do not fit are named, both", () => {
    expect(messageOf({ inputs: [READING, READING, READING], uncertainties: [U, U] })).toBe(
      "inputs has 3 rows, uncertainties 2: give one row of uncertainties for all, or one each.",
    );
    expect(messageOf({ inputs: [[58, 0.85]], uncertainties: [U] })).toMatch(/^inputs: 2 columns cannot be.*3 to 10/);
    expect(messageOf({ ...alone, coverage: [[0.9], [0.95]] })).toMatch(/^coverage is 2 × 1 cells/);
  });
});

describe("an empty uncertainty", () => {
  it.each(PARTS.map((_, place) => [place] as const))("or 0, or a column that is not there, is exact: %d", (place) => {
    const others = PARTS.filter((__, i) => i !== place);
    const expected = 1.959963985 * Math.hypot(...others);
    for (const cell of [null, "", 0]) {
      const uncertainties = [U.map((u, i): Cell => (i === place ? cell : u))];
      expectCells(result({ inputs: [READING], uncertainties }), [[expected]], 1e-7);
    }
  });

  it("of air without a temperature is needed", () => {
    const given = { inputs: [[58, 0.85, 22]], uncertainties: [[0.5, 0.02, 1, 0.01]] };
    expect(messageOf(given)).toMatch(/^air_temp is not given\. It is needed where air_transmission is uncertain/);
  });
});

describe("°F", () => {
  it("is °C in other units: a difference has no 32", () => {
    const given = { ...alone, freedom: [[9, 5, "", "", ""]], correlations: [["reflected", "air_temp", 0.5]] };
    const inF: Given = { ...mapGiven(spec, given, (value, quantity) => inFahrenheit(quantity, value)), units: "F" };
    expectCells(result(inF), [[(result(given)[0]?.[0] as number) * 1.8]], 1e-9);
    const [row] = inF.uncertainties as Grid;
    expect(row?.[0]).toBe(0.9);
    expectCells(
      result({ ...alone, inputs: [[136.4, 0.85, 71.6, 0.98, 68]], uncertainties: inF.uncertainties, units: "F" }),
      [[1.8 * EXPANDED]],
      1e-6,
    );
  });
});

describe("distributions and freedom", () => {
  const root3 = Math.sqrt(3);
  const halves = [[0.5, 0.02 * root3, 1, 0.005 * Math.sqrt(6), 1]];
  const each = ["normal", "Rectangular", "", "triangular", null];

  it("one for each column, in a row or in a column, or one for all", () => {
    expectCells(result({ inputs: [READING], uncertainties: halves, distributions: [each] }), [[EXPANDED]], 1e-7);
    const down = each.map((one) => [one]);
    expectCells(result({ inputs: [READING], uncertainties: halves, distributions: down }), [[EXPANDED]], 1e-7);
    const all = U.map((u) => u * root3);
    expectCells(result({ inputs: [READING], uncertainties: [all], distributions: "rectangular" }), [[EXPANDED]], 1e-7);
  });

  it("degrees of freedom widen by Student's t: 10.56 cut to 10, t 2.228 (any table)", () => {
    const down: Grid = [[9], [5], [null], [0], [""]];
    for (const freedom of [[[9, 5, "", 0, null]], down]) {
      expectCells(result({ ...alone, freedom }), [[2.228 * 1.042950614]], 2e-4);
    }
  });

  it("are not used where inputs go together", () => {
    const correlations = [["reflected", "air_temp", 0.5]];
    expect(result({ ...alone, correlations, freedom: 4 })).toEqual(result({ ...alone, correlations }));
    expect(result({ ...alone, freedom: 4 })).not.toEqual(result(alone));
  });

  it.each<[string, Input, RegExp]>([
    ["distributions", [["normal", "normal"]], /^distributions: 2 cells cannot be.*each of the 5 columns/],
    ["distributions", [["normal", "uniform", "", "", ""]], /^distributions: "uniform" cannot be.*"rectangular"/],
    [
      "distributions",
      [
        ["normal", "normal"],
        ["normal", "normal"],
      ],
      /^distributions: 2 × 2 cells/,
    ],
    ["freedom", [[4, 0.5, 3, 3, 3]], /^freedom: 0\.5 cannot be\. Allowed: 1 or more/],
    ["freedom", [[4, "x", 3, 3, 3]], /^freedom: "x" cannot be/],
  ])("%s refuses %j", (name, input, message) => {
    expect(messageOf({ ...alone, [name]: input })).toMatch(message);
  });
});

describe("correlations", () => {
  // 2·r·c₁u₁·c₂u₂ of reflected and air_temp, both signs alike.
  const expected = 1.959963985 * Math.sqrt(1.042950614 ** 2 + 2 * 0.5 * PARTS[2]! * PARTS[4]!);

  it.each<[string, Grid]>([
    ["as rows", [["reflected", "air_temp", 0.5]]],
    [
      "under a header, in any case",
      [
        ["name", "name", "r"],
        ["Air_Temp", " REFLECTED ", "0.5"],
      ],
    ],
    [
      "with empty rows and spaces for underscores",
      [
        ["", "", ""],
        ["reflected", "air temp", 0.5],
        [0, 0, 0],
      ],
    ],
  ])("%s", (_, correlations) => {
    expectCells(result({ ...alone, correlations }), [[expected]], 1e-7);
  });

  it.each<[string, Input, RegExp]>([
    ["a name that is none", [["reflected", "air", 0.5]], /^correlations: "air" cannot be\. Row 1 /],
    [
      "its row under a header",
      [
        ["a", "b", "r"],
        ["", "", ""],
        ["reflected", "reflected", 1],
      ],
      /^correlations: "reflected" cannot be\. Row 3 /,
    ],
    ["r beyond 1", [["reflected", "air_temp", 1.5]], /^correlations: 1\.5 cannot be\. Row 1 .*-1 to 1/],
    ["two columns", [["reflected", 0.5]], /^correlations: 2 columns cannot be/],
    ["one cell", "reflected", /^correlations: "reflected" cannot be/],
    [
      "what contradicts itself",
      [
        ["reflected", "air_temp", 1],
        ["reflected", "apparent", 1],
        ["apparent", "air_temp", -1],
      ],
      /contradict each other/,
    ],
  ])("refuse %s", (_, correlations, message) => {
    expect(messageOf({ ...alone, correlations })).toMatch(message);
  });
});

describe("uncertainties that tell nothing", () => {
  const exchanged = /Are inputs and uncertainties exchanged\?$/;
  it.each<[string, Given, RegExp]>([
    [
      "inputs and uncertainties exchanged",
      { inputs: [[1, 0.02, 2]], uncertainties: [[71.2, 0.92, 24]] },
      /^emissivity_u: 0\.92 cannot be\. Allowed: below 0\.02\. /,
    ],
    [
      "of an emissivity as large as itself",
      { inputs: [[58, 0.1, 22]], uncertainties: [[0.5, 0.1, 1]] },
      /^emissivity_u: 0\.1 cannot be\./,
    ],
    [
      "of a transmission likewise",
      { ...alone, uncertainties: [[0.5, 0.02, 1, 0.99, 1]] },
      /^air_transmission_u: 0\.99 cannot be\./,
    ],
    [
      "of a temperature above 100 K",
      { ...alone, uncertainties: [[100.1, 0.02, 1]] },
      /^apparent_u: 100\.1 K cannot be\. Allowed: 0 to 100 K\./,
    ],
  ])("%s", (_, given, message) => {
    for (const name of ["UNCERTAINTY", "BUDGET", "MONTE_CARLO"]) {
      const told = errorIn(call(specOf(name), { ...given }))?.message ?? "none";
      expect(told).toMatch(message);
      expect(told).toMatch(exchanged);
    }
  });

  it("just inside they are answered; a reflectance may be as uncertain as it is small", () => {
    const small = { inputs: [[58, 0.3, 22]], uncertainties: [[100, 0.29, 1]] };
    expect(result(small)[0]?.[0]).toBeGreaterThan(0);
    const window = {
      inputs: [[58, 0.9, 22, 1, 20, 0.7, 25, 0.02, 25]],
      uncertainties: [[0.5, 0, 0, 0, 0, 0, 0, 0.02]],
    };
    expect(result(window)[0]?.[0]).toBeGreaterThan(0);
  });
});
