/**
 * Each shape that a workbook may have, in a workbook made by the test: the right values in, not a character else changed.
 * Values are worked by hand: share of limit (t − air)/(limit − air), spot size pixels·ifov·distance with three pixels.
 */
import { INPUTS, SHAPES, SHARE } from "./command-shapes.js";
import { makeWorkbook } from "../support/workbook-file.js";
import type { MadeWorkbook } from "../support/workbook-file.js";
import { cellOf, recalcAll, textsOf, type Recalculated } from "../support/recalc.js";

const KEPT: MadeWorkbook = {
  sheets: [
    {
      name: "Data",
      rows:
        `<row r="1">${INPUTS}<c r="D1"><f>${SHARE}(A1,B1,C1)</f><v>0.8</v></c>` +
        `<c r="E1"><f>D1+[1]Sheet1!A1</f><v>5</v></c><c r="F1"><f>D1*NOW()</f><v>6</v></c><c r="G1"><f>F1+D1</f><v>8</v></c>` +
        `<c r="H1"><f>D1+NOSUCH(A1)</f><v>9</v></c><c r="I1"><f>TODAY()</f><v>44000</v></c></row>`,
    },
  ],
  externalLink: true,
};

let run: Recalculated;

beforeAll(async () => {
  const books = Object.entries(SHAPES).map(([name, { book, stale }]) => [`${name}.xlsx`, makeWorkbook(book(...stale))]);
  run = await recalcAll({ ...Object.fromEntries(books), "kept.xlsx": makeWorkbook(KEPT) } as Record<
    string,
    Uint8Array
  >);
});

test("nothing is refused", () => {
  expect(run.outcome).toMatchObject({ status: 0, stderr: "" });
});

test.each(Object.keys(SHAPES))("%s", (name) => {
  const { book, right } = SHAPES[name]!;
  expect(textsOf(run.written.get(`${name}.xlsx`)!)).toEqual(textsOf(makeWorkbook(book(...right))));
});

test("what is volatile, outside or unknown keeps its value, and what depends on it, each with its reason", () => {
  const report = run.reports.get("kept.xlsx");
  expect(textsOf(run.written.get("kept.xlsx")!)).toEqual(textsOf(makeWorkbook(KEPT)));
  const told = ["D1", "E1", "F1", "G1", "H1", "I1"].map((cell) => cellOf(report, "Data", cell));
  expect(told.map((cell) => cell?.status)).toEqual(["same", "kept", "kept", "kept", "kept", undefined]);
  expect(told[1]?.reason).toMatch(/not in this workbook/);
  expect(told[2]?.reason).toMatch(/volatile/);
  expect(told[3]?.reason).toMatch(/depends on Data!F1/);
  expect(told[4]?.reason).toMatch(/NOSUCH/);
  expect(report?.summary).toEqual({ formulas: 5, same: 1, changed: 0, kept: 4 });
});

test("an error of ours in a grown result tells why, and that it rests on an empty cell", () => {
  const cell = cellOf(run.reports.get("grows.xlsx"), "Data", "B3");
  expect(cell).toMatchObject({ status: "changed", stored: null, recalculated: { error: "#VALUE!" } });
  expect(cell?.reason).toMatch(/^empty cell, 0 in Excel\. .*temp/);
});
