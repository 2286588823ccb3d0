/** The route's description by itself: what a host may rely on. */
import { catalogue } from "../../../src/functions/catalogue.js";
import { demoRoute } from "../../../src/templates/route/demo/route.js";
import { readings } from "../../../src/templates/route/demo/readings.js";
import type { TableSheet } from "../../../src/templates/contract.js";

const book = demoRoute();
const tables = book.sheets.filter((sheet): sheet is TableSheet => sheet.kind === "table");
const [route] = tables as [TableSheet];

const REPORTS = ["Exceptions", "Exception pages", "Not inspected", "Follow-up", "Due"];

test("the route stands first, its reports next, the job and the lists behind them, the cautions last", () => {
  expect(book.sheets.map(({ name }) => name)).toEqual([
    "Route",
    ...REPORTS,
    "Job",
    "Criteria",
    "Plan",
    "Assets",
    "Windows",
    "Surfaces",
    "Cautions",
  ]);
});

test.each(tables.map((table) => [table.name, table] as const))("%s: names that every host takes", (_, table) => {
  const columns = [...table.columns, ...table.computed];
  for (const names of [columns.map(({ key }) => key), columns.map(({ header }) => header)]) {
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).not.toMatch(/[#[\]'()]/);
  }
  expect(book.sheets.map(({ name }) => name)).not.toContain(table.tableName);
  for (const row of table.rows) expect(row).toHaveLength(table.columns.length);
});

test("what is typed follows the work: where, images, as read, currents, air, what was done; settings folded", () => {
  const groups = route.columns.map(({ group }) => group).filter((group, at, all) => group !== all[at - 1]);
  expect(groups).toEqual(["Where", "Images", "As read", "Currents", "Air", "Done about it", "Settings of this row"]);
  for (const { group, folded } of route.columns) expect(folded === true).toBe(group === "Settings of this row");
});

test("an item without exception takes ten cells at most in ordinary use", () => {
  for (const row of readings.filter(({ status }) => status === "no exception")) {
    const cells = Object.values(row).filter((cell) => cell !== null).length;
    expect(cells).toBeLessThanOrEqual(
      row.air_taken === "outdoors" ? 14 : row.minutes_since_load_change === undefined ? 10 : 11,
    );
  }
});

test("what is worked out stands in the order of reading, what is only worked with at the end, folded", () => {
  const groups = route.computed.map(({ group }) => group).filter((group, at, all) => group !== all[at - 1]);
  expect(groups).toEqual([
    "Looked up",
    "Corrected",
    "Rise over air",
    "Compared",
    "Load",
    "Limit",
    "Grade as found",
    "At full load, projected",
    "Last time",
    "Checks",
    "Grades it is taken from",
    "Settings used",
    "Working",
  ]);
  for (const { group, folded } of route.computed) {
    expect(folded === true).toBe(group === "Settings used" || group === "Working");
  }
});

test("a unit stands once in a heading", () => {
  for (const { columns, computed } of tables)
    for (const { header, unit } of [...columns, ...computed])
      if (unit !== undefined) expect(header.split("_")).not.toContain(unit);
});

test("no number ends in a bare point", () => {
  // "0.##" shows 40 as "40.".
  for (const { columns, computed } of tables)
    for (const { format = "" } of [...columns, ...computed]) expect(format).not.toMatch(/\.#/);
});

test("a low end that holds U says so in its heading", () => {
  const headers = route.computed.filter(({ key }) => /^full_(low|high)$/.test(key)).map(({ header }) => header);
  expect(headers).toEqual(["rise at full load with U, low", "rise at full load with U, high"]);
});

test("formulas call functions of ours that there are", () => {
  const known = new Set(catalogue.map(({ name }) => name));
  const called = route.computed.flatMap(({ formula }) =>
    [...formula.matchAll(/GREY\.([A-Z_]+)\(/g)].map((match) => match[1] ?? ""),
  );
  expect(new Set(called)).toEqual(
    new Set([
      "AIR_TRANSMISSION",
      "APPARENT",
      "CORRECTED",
      "PHASE_RISE",
      "RELATIVE_RISE",
      "RISE_AT_LOAD",
      "LIMIT_AT_LOAD",
      "SHARE_OF_LIMIT",
      "GRADE",
      "GRADE_RANGE",
      "CAMERA_UNCERTAINTY",
      "RISE_UNCERTAINTY",
    ]),
  );
  expect([...known]).toEqual(expect.arrayContaining([...new Set(called)]));
});

test("each call of ours names the units of the book", () => {
  const withUnits = new Set(
    catalogue.filter(({ args }) => args.some(({ name }) => name === "units")).map(({ name }) => name),
  );
  for (const units of ["C", "F"] as const) {
    const [sheet] = demoRoute(units).sheets as unknown as [TableSheet];
    for (const { formula } of sheet.computed) {
      const calls = [...formula.matchAll(/GREY\.([A-Z_]+)\(/g)].filter((match) => withUnits.has(match[1] ?? "")).length;
      expect(formula.split(`,"${units}")`).length - 1).toBe(calls);
      expect(formula).not.toContain(units === "C" ? ',"F")' : ',"C")');
    }
  }
});

test("no formula is longer than Excel takes", () => {
  for (const { formula } of route.computed) expect(formula.length).toBeLessThan(8192 / 2);
});
