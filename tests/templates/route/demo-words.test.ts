/** The demo route as it is read: every kind of row says in words what it can and cannot say. */
import { demoRoute } from "../../../src/templates/route/demo/route.js";
import { worked, type WorkedRoute } from "./fixture.js";
import { PLANT } from "./kinds/plant.js";
import { SWITCHROOMS } from "./kinds/switchrooms.js";

const KINDS = [...SWITCHROOMS, ...PLANT];

let route: WorkedRoute;
beforeAll(async () => {
  [route] = (await worked(demoRoute())) as [WorkedRoute];
});

test.each(KINDS)("%s (%s)", (_, asset, expected) => {
  const found = Object.fromEntries(Object.keys(expected).map((key) => [key, route.cell(asset, key)]));
  expect(found).toEqual(expected);
});

test("every row is one of these kinds, and there are enough of them", () => {
  expect(route.columns.asset_id).toEqual(expect.arrayContaining(KINDS.map(([, asset]) => asset)));
  expect(route.columns.asset_id).toHaveLength(KINDS.length);
  expect(KINDS.length).toBeGreaterThanOrEqual(28);
});

test("no cell of any sheet holds an error value", () => {
  expect(route.errors).toEqual([]);
});

test("the first sheet and the job say that all of it is invented", () => {
  const [first, second] = route.sheets;
  expect(first?.heading).toContain("Demonstration: the plant, the people and every reading are invented.");
  expect(second?.heading).toContain("Demonstration: the plant, the people and every reading are invented.");
});

test("both name every set of criteria that grades, and that a qualified person decides", () => {
  for (const sheet of route.sheets.filter(({ name }) => name === "Route" || name === "Job")) {
    expect(sheet.heading[1]).toBe(
      "HQD-2026-03, Quay works (invented), 2026-03-11. Criteria: over similar and air NETA-100.18 " +
        "(numbers as in ATS-2003 and MTS-2011); share of limit house-limit; indirect view house-indirect",
    );
    expect(sheet.heading.join(" ")).toMatch(/a qualified person decides/i);
  }
});

test("a grade never stands without its words and its uncertainty", () => {
  const grades = route.columns.grade_found ?? [];
  const graded = grades.map((grade, row) => [grade, row] as const).filter(([grade]) => /^\d/.test(String(grade)));
  expect(graded.length).toBeGreaterThan(20);
  for (const [grade, row] of graded) {
    expect(grade).toMatch(/^[0-4] of 4( at least)?: \w/);
    expect(route.cell(row, "grade_found_u")).toMatch(/± \d/);
    expect(route.cell(row, "judged_by")).not.toBe("");
  }
});

test("no row with readings has an empty grade, and a rise over air stands where there is one", () => {
  const { left = [], grade_found = [] } = route.columns;
  left.forEach((reading, row) => {
    if (reading !== null) expect(grade_found[row]).toMatch(/^([0-4] of 4|no grade)/);
  });
  // 50.5 °C apparent, below emissivity 1 and with colder things around: more than the 26.5 K over air of 24 °C.
  expect(route.number("MCC2-M4", "rise_middle")).toBeGreaterThan(50.5 - 24);
});
