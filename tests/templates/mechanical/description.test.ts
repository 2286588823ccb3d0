/** The mechanical route's description by itself: what a host may rely on. */
import { catalogue } from "../../../src/functions/catalogue.js";
import type { FormSheet, TableSheet } from "../../../src/templates/contract.js";
import { newRoute } from "../../../src/templates/new.js";

const make = (units: "C" | "F") =>
  newRoute({ kind: "mechanical", title: "Mechanical route", units, rows: 12, criteria: "house-mechanical" });
const book = make("C");
const tables = book.sheets.filter((sheet): sheet is TableSheet => sheet.kind === "table");
const [route] = tables as [TableSheet];
const [form] = book.sheets.filter((sheet): sheet is FormSheet => sheet.kind === "form");

const REPORTS = ["Exceptions", "Exception pages", "Not inspected", "Follow-up", "Due"];

test("the same sheets as an electrical route, empty, with as many rows as were asked for", () => {
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
  expect(route.rows).toHaveLength(12);
  expect(route.rows.flat().filter((cell) => cell !== null)).toEqual([]);
});

test.each(tables.map((table) => [table.name, table] as const))("%s: names that every host takes", (_, table) => {
  const columns = [...table.columns, ...table.computed];
  for (const names of [columns.map(({ key }) => key), columns.map(({ header }) => header)]) {
    expect(new Set(names).size).toBe(names.length);
    for (const name of names) expect(name).not.toMatch(/[#[\]'()]/);
  }
});

test("every column and field that a formula names is there", () => {
  const fields = new Set(form!.fields.flatMap(({ definedName }) => definedName ?? []));
  const keys = new Map(
    tables.map((table) => [table.tableName, new Set([...table.columns, ...table.computed].map(({ key }) => key))]),
  );
  for (const { formula } of route.computed) {
    const plain = formula.replaceAll(/"[^"]*"/g, '""');
    for (const [name] of plain.matchAll(/job_\w+/g)) expect(fields).toContain(name);
    for (const [, table = "", key = ""] of plain.matchAll(/(\w*)\[(\w+)\]/g))
      expect(keys.get(table === "" ? "Readings" : table)).toContain(key);
  }
  for (const field of fields) expect(field).not.toMatch(/^job_(?:exponent|minimum_load|criteria_indirect|arc)/);
});

test("a row takes ten typed cells at most in ordinary use: what else there is stays empty or is folded", () => {
  const typed = route.columns.filter(({ folded }) => folded !== true).map(({ key }) => key);
  const seldom = [
    "reason",
    "photo",
    "reading_is",
    "air_taken",
    "last_greased",
    "reference",
    "cause",
    "action",
    "told_to",
    "due",
  ];
  expect(typed.filter((key) => !seldom.includes(key)).length).toBeLessThanOrEqual(10);
});

test("functions of ours that there are, each in the units of the book; no formula longer than Excel takes", () => {
  const known = new Set(catalogue.map(({ name }) => name));
  for (const units of ["C", "F"] as const) {
    const [sheet] = make(units).sheets as unknown as [TableSheet];
    const called = new Set<string>();
    for (const { formula } of sheet.computed) {
      for (const [, name = ""] of formula.matchAll(/GREY\.([A-Z_]+)\(/g)) called.add(name);
      expect(formula).not.toContain(units === "C" ? ',"F")' : ',"C")');
      expect(formula.length).toBeLessThan(8192 / 2);
    }
    expect([...called].sort()).toEqual([
      ...["AIR_TRANSMISSION", "APPARENT", "CAMERA_UNCERTAINTY", "CORRECTED", "GRADE", "RISE_UNCERTAINTY"],
      ...["SHARE_OF_LIMIT", "UNCERTAINTY"],
    ]);
    expect([...known]).toEqual(expect.arrayContaining([...called]));
  }
});
