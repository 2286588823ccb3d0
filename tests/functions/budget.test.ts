/** GREY.BUDGET, a table that a person reads. Values worked apart from this code. */
import type { Cell, Grid } from "../../src/functions/contract.js";
import { call, errorIn, specOf, type Given } from "./fixture.js";

const spec = specOf("BUDGET");
const base: Given = { inputs: [[58, 0.85, 22, 0.98, 20]], uncertainties: [[0.5, 0.02, 1, 0.005, 1]] };
const table = (given: Given): Grid => call(spec, given);

/** The cell of a row, by the words of its first column and of the header. */
function at(found: Grid, row: string, column: string): Cell | undefined {
  const place = found[0]?.indexOf(column) ?? -1;
  return found.find(([first]) => first === row)?.[place];
}

const note = (found: Grid, row: string): Cell | undefined => at(found, row, "note");

it("has for each input value, uncertainty, sensitivity and its part, in the words of the sheet", () => {
  const found = table(base);
  expect(found[0]).toEqual(
    "input | value | unit | uncertainty as given | distribution | standard uncertainty | sensitivity | unit of sensitivity | contribution in K | share of variance | note".split(
      " | ",
    ),
  );
  const lines: [string, number, number, string][] = [
    ["apparent", 1.147060699, 0.57353035, "K/K"],
    ["emissivity", -42.04186331, -0.84083727, "K"],
    ["reflected", -0.1232604783, -0.12326048, "K/K"],
    ["air_transmission", -38.12521506, -0.19062608, "K"],
    ["air_temp", -0.01643677621, -0.01643678, "K/K"],
  ];
  for (const [name, sensitivity, contribution, unit] of lines) {
    expect(at(found, name, "sensitivity")).toBeCloseTo(sensitivity, 7);
    expect(at(found, name, "contribution in K")).toBeCloseTo(contribution, 7);
    expect(at(found, name, "share of variance")).toBeCloseTo((contribution / 1.042950614) ** 2, 7);
    expect(at(found, name, "unit of sensitivity")).toBe(unit);
    expect(at(found, name, "distribution")).toBe("normal");
  }
  expect(at(found, "apparent", "unit")).toBe("°C, u in K");
  expect(at(found, "expanded uncertainty", "unit")).toBe("K");
  expect(note(found, "corrected temperature")).toBe("62.1 to 66.2 °C");
});

it("says what was taken as exact, what was not given and what plays no part", () => {
  const found = table({ inputs: [[58, 0.85, 22, "", 20]], uncertainties: [[0.5, "", 0]] });
  expect(note(found, "apparent")).toBe("");
  expect(note(found, "emissivity")).toBe("taken as exact: no uncertainty given");
  expect(at(found, "emissivity", "distribution")).toBe("exact");
  expect(note(found, "air_transmission")).toBe("not given: taken as 1, exact");
  expect(note(found, "air_temp")).toBe("plays no part here");
  expect(note(found, "window_transmission")).toBe("not given: taken as 1, exact");
  expect(found.some(([first]) => first === "window_temp" || first === "outer_air_transmission")).toBe(false);
});

it("behind a window names what was taken for granted of it", () => {
  const found = table({ inputs: [[58, 0.85, 22, "", "", 0.7, 30]], uncertainties: [[0.5, 0.02, 1, "", "", 0.02]] });
  expect(note(found, "window_temp")).toBe("taken as exact: no uncertainty given");
  expect(note(found, "window_reflectance")).toBe("not given: taken as 0, exact");
  expect(note(found, "outer_air_transmission")).toBe("not given: taken as 1, exact");
});

it("an uncertain temperature that is not given plays no part, and the table says so", () => {
  const found = table({ inputs: [[58, 0.85, 22]], uncertainties: [[0.5, 0.02, 1, "", 3]] });
  expect(at(found, "air_temp", "value")).toBe("");
  expect(at(found, "air_temp", "contribution in K")).toBe(0);
  expect(note(found, "air_temp")).toBe("not given: plays no part here");
});

it("shows half-widths as given and what they come to", () => {
  const found = table({ ...base, distributions: [["rectangular", "triangular", "", "", ""]] });
  expect(at(found, "apparent", "uncertainty as given")).toBe(0.5);
  expect(at(found, "apparent", "standard uncertainty")).toBeCloseTo(0.288675135, 8);
  expect(at(found, "emissivity", "standard uncertainty")).toBeCloseTo(0.008164966, 8);
  expect(at(found, "emissivity", "distribution")).toBe("triangular");
});

it("tells degrees of freedom, and why there are none", () => {
  const freedom = [[9, 5, "", "", ""]];
  const counted = table({ ...base, freedom });
  expect(note(counted, "emissivity")).toBe("5 degrees of freedom");
  expect(note(counted, "effective degrees of freedom")).toBe("Welch–Satterthwaite, cut to a whole number");
  expect(note(counted, "coverage factor")).toBe("95 % coverage, Student's t");
  expect(note(counted, "check by Monte Carlo")).toMatch(/; degrees of freedom play no part in the draws$/);
  expect(note(table(base), "check by Monte Carlo")).not.toContain("degrees of freedom");
  expect(note(table(base), "effective degrees of freedom")).toBe("infinite: none given");
  const together = table({ ...base, freedom, correlations: [["reflected", "air_temp", 0.5]] });
  expect(at(together, "effective degrees of freedom", "value")).toBe("infinite");
  expect(note(together, "effective degrees of freedom")).toMatch(/^taken as infinite: .* go together$/);
});

it("shows what goes together and what that adds or takes", () => {
  const correlations = [
    ["reflected", "air_temp", 0.5],
    ["emissivity", "apparent", 0.3],
    ["window_temp", "air_temp", 0.5],
  ];
  const found = table({ ...base, correlations });
  const variance = at(found, "combined standard uncertainty", "value") as number;
  expect(at(found, "reflected with air_temp", "share of variance")).toBeCloseTo(
    (0.12326048 * 0.01643678) / variance ** 2,
    7,
  );
  expect(note(found, "reflected with air_temp")).toMatch(/adds to the variance$/);
  expect(note(found, "emissivity with apparent")).toMatch(/takes from the variance$/);
  expect(note(found, "window_temp with air_temp")).toMatch(/^no effect/);
  const shares = found.slice(1).map((row) => row[9]);
  expect(shares.reduce<number>((sum, share) => sum + (typeof share === "number" ? share : 0), 0)).toBeCloseTo(1, 12);
});

it("says where draws bear first order out, and where they do not", () => {
  expect(at(table(base), "check by Monte Carlo", "value")).toBe("agrees");
  expect(note(table(base), "check by Monte Carlo")).toMatch(/^95 % of 20000 draws: 62\.\d to 66\.\d °C$/);
  // Apparent temperature of 80 °C with emissivity 0.15 over 22 °C reflected, 7.5-14 µm.
  const bare = table({ inputs: [[32.64, 0.15, 22]], uncertainties: [["", 0.05, ""]] });
  expect(at(bare, "check by Monte Carlo", "value")).toBe("disagrees");
  expect(note(bare, "check by Monte Carlo")).toMatch(/first order falls short.*MONTE_CARLO.*draws cannot be$/);
  expect(at(table({ ...base, coverage: 0.999999 }), "check by Monte Carlo", "value")).toBe("not made");
});

it("in °F: temperatures with the 32, everything of a difference without", () => {
  const found = table({
    inputs: [[136.4, 0.85, 71.6, 0.98, 68]],
    uncertainties: [[0.9, 0.02, 1.8, 0.005, 1.8]],
    units: "F",
  });
  expect(at(found, "apparent", "value")).toBeCloseTo(136.4, 9);
  expect(at(found, "apparent", "unit")).toBe("°F");
  expect(at(found, "apparent", "standard uncertainty")).toBeCloseTo(0.9, 12);
  expect(at(found, "apparent", "sensitivity")).toBeCloseTo(1.147060699, 8);
  expect(at(found, "emissivity", "sensitivity")).toBeCloseTo(-42.04186331 * 1.8, 6);
  expect(at(found, "emissivity", "contribution in °F")).toBeCloseTo(-0.84083727 * 1.8, 7);
  expect(at(found, "combined standard uncertainty", "value")).toBeCloseTo(1.042950614 * 1.8, 8);
  expect(at(found, "corrected temperature", "value")).toBeCloseTo(64.1319672049731 * 1.8 + 32, 8);
  expect(note(found, "corrected temperature")).toMatch(/^143\.8 to 151\.1 °F$/);
});

it("is one reading's", () => {
  const given = {
    ...base,
    inputs: [
      [58, 0.85, 22],
      [59, 0.85, 22],
    ],
  };
  expect(errorIn(table(given))?.message).toBe("inputs: 2 rows cannot be. Allowed: one row, the budget of one reading.");
});

it("says that uncertainties of 0 are none, not that they were not given", () => {
  expect(errorIn(table({ ...base, uncertainties: [[0, 0, 0]] }))?.message).toBe(
    "uncertainties: All are 0 or empty, and what has none is taken as exact: one above 0 is needed.",
  );
});
