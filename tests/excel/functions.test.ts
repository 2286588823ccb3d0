import { catalogue } from "../../src/functions/catalogue.js";
import { isCellError, type Cell, type Grid } from "../../src/functions/contract.js";
import { excelResults, type Call } from "../support/excel-runtime.js";
import { expectCells, gridOfCase, specOf } from "../functions/fixture.js";
import { fixtures } from "../functions/fixtures.js";

/** A cell that a person leaves empty never reaches a function as null. */
const asExcelShows = (grid: Grid): Grid => grid.map((row) => row.map((cell) => cell ?? ""));
const error = (code: string, message: RegExp): Cell =>
  ({ error: code, message: expect.stringMatching(message) as string }) as Cell;

async function one(...call: Call): Promise<Grid> {
  const [result] = await excelResults([call]);
  return result!;
}

const cases = fixtures.flatMap(({ name, cases: all }) => all.map((given, index) => ({ name, index, ...given })));

test("every function of the catalogue has a case here", () => {
  expect(new Set(cases.map(({ name }) => name))).toEqual(new Set(catalogue.map(({ name }) => name)));
});

describe("Microsoft's own runtime with the built function file shows", () => {
  let results: readonly Grid[] = [];

  beforeAll(async () => {
    results = await excelResults(
      cases.map(({ name, given }): Call => [name, ...specOf(name).args.map((argument) => given[argument.name])]),
    );
  });

  test.each(cases.map((one, place) => [one.name, one.index, place] as const))("%s, case %i", (_name, _index, place) => {
    const expected = asExcelShows(gridOfCase(cases[place]!));
    // A table's case names its leading columns.
    const leading = results[place]!.map((row) => row.slice(0, expected[0]?.length));
    expectCells(leading, expected, cases[place]!.tolerance);
  });
});

// Value: worked with the high-precision reference behind tests/data/radiometry.
test("arguments left out at the end take their defaults", async () => {
  const [[value] = []] = await one("CORRECTED", 58, 0.85, 22, 0.98, 20);
  expect(value).toBeCloseTo(64.1319672049731, 9);
});

test("a single error is thrown with our message: #VALUE! for what cannot be, #N/A for what has no answer", async () => {
  expect(await one("CORRECTED", 58, 95, 22)).toEqual([[error("#VALUE!", /emissivity.*95.*0\.95/)]]);
  expect(await one("RISE_AT_LOAD", 12, 35, 100)).toEqual([[error("#N/A", /35 %|0\.4|40 %/)]]);
});

test("within a spill every error stays in its own cell, with its own message", async () => {
  const rows = await one("CORRECTED", [[58], [58], [58]], [[0.85], [95], [0.85]], 22);
  expect(rows.map(([cell]) => typeof cell)).toEqual(["number", "object", "number"]);
  expect(rows[1]).toEqual([error("#VALUE!", /95/)]);
});

test("an empty cell of a range comes in as 0: told where 0 cannot be, taken where it can", async () => {
  const rows = await one("CORRECTED", [[null], [58]], [[0.85], [null]], 22);
  expect(typeof rows[0]![0]).toBe("number");
  expect(rows[1]).toEqual([error("#VALUE!", /0 is read as an empty cell/)]);
});

test('the text "" in a range is not given', async () => {
  const rows = await one("CORRECTED", [[""], [58]], 0.85, 22);
  expect([rows[0]![0], typeof rows[1]![0]]).toEqual([error("#VALUE!", /apparent is not given/), "number"]);
});

test("an error that comes in passes through, each row for itself; what may not go out as it is becomes #VALUE!", async () => {
  const incoming = (name: string): Cell => ({ error: name, message: "" }) as Cell;
  const column = ["#DIV/0!", "#N/A", "#NUM!", "#NULL!", "#VALUE!", "#REF!", "#NAME?"].map((name) => [incoming(name)]);
  const rows = await one("CORRECTED", [...column, [58]], 0.95, 22);
  expect(rows.map(([cell]) => (isCellError(cell) ? cell.error : typeof cell))).toEqual([
    ...["#DIV/0!", "#N/A", "#NUM!", "#NULL!", "#VALUE!", "#VALUE!", "#VALUE!"],
    "number",
  ]);
});

test("text, a range in a row and a table spill as they are", async () => {
  expect(await one("GRADE", 30, "similar", undefined, undefined, "words")).toEqual([[expect.any(String)]]);
  expect((await one("CORRECTED", [[40, 50, 60]], 0.9, 22))[0]).toHaveLength(3);
  const table = await one("CRITERIA", "house-limit");
  expect(table.length).toBeGreaterThan(2);
  expect(table.flat().every((cell) => cell !== null)).toBe(true);
});
