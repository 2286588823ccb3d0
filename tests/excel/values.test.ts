import type { Cell, Grid } from "../../src/functions/contract.js";
import { fromExcel, toExcel } from "../../src/host/excel/values.js";

/** Tests run without Excel; where the class is wanted it stands where Excel puts it. */
const excel = globalThis as unknown as { CustomFunctions?: { Error?: unknown } };

class FakeError extends Error {
  constructor(
    readonly code: string,
    message: string,
  ) {
    super(message);
  }
}

const refused: Cell = { error: "#N/A", message: "no answer" };
const column: Grid = [[1], [refused], [null]];

afterEach(() => {
  delete excel.CustomFunctions;
});

test("what Excel hands over becomes what a function takes", () => {
  expect(fromExcel(null)).toBeUndefined();
  expect(fromExcel(undefined)).toBeUndefined();
  expect(fromExcel([[1, "a", true, null]])).toEqual([[1, "a", true, null]]);
  // A scalar, should an Excel hand one over in spite of functions.json.
  expect([fromExcel(58), fromExcel([58])]).toEqual([58, [[58]]]);
});

test("an error is known by its form, whatever its class; what is nothing we know is told", () => {
  expect(fromExcel([[new FakeError("#DIV/0!", "m")]])).toEqual([[{ error: "#DIV/0!", message: "m" }]]);
  expect(fromExcel([[{ type: "CustomFunctionError", code: "#N/A" }]])).toEqual([[{ error: "#N/A", message: "" }]]);
  expect(fromExcel([[{ type: "Entity" }]])).toEqual([
    [{ error: "#VALUE!", message: expect.stringContaining("neither number, text") as string }],
  ]);
});

describe("with Excel's error class", () => {
  beforeEach(() => {
    excel.CustomFunctions = { Error: FakeError };
  });

  test("an error within a spill stands in its cell, and nothing shows 0", () => {
    expect(toExcel(column, false)).toEqual([[1], [new FakeError("#N/A", "no answer")], [""]]);
  });

  test("a single one is thrown", () => {
    expect(() => toExcel([[refused]], false)).toThrow(new FakeError("#N/A", "no answer"));
  });

  test("with blank errors none goes out, single or not", () => {
    expect([toExcel(column, true), toExcel([[refused]], true)]).toEqual([[[1], [""], [""]], [[""]]]);
  });
});

test("without the class an error is its name as text, never a number and never thrown", () => {
  excel.CustomFunctions = {};
  expect(toExcel(column, false)).toEqual([[1], ["#N/A"], [""]]);
  delete excel.CustomFunctions;
  expect(toExcel([[refused]], false)).toEqual([["#N/A"]]);
});
