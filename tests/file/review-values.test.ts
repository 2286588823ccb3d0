/**
 * Values that a worksheet gives and the machine's own arithmetic would not. TEXT rounds what fifteen digits show
 * (from memory: a worksheet shows fifteen significant digits); the texts by hand.
 */
import { cellOf, recalcAll, type ReportCell } from "../support/recalc.js";
import { makeWorkbook } from "../support/workbook-file.js";

const escaped = (text: string): string => text.replaceAll("&", "&amp;").replaceAll("<", "&lt;");

const ROUNDED: readonly (readonly [string, string])[] = [
  ['TEXT(0.285,"0.00")', "0.29"],
  ['TEXT(-1.005,"0.00")', "-1.01"],
  ['TEXT(0.285,"0%")', "29%"],
  ['TEXT(A5,"0.00")', "0.29"],
  ['TEXT(0.284,"0.00")', "0.28"],
  ['TEXT(2.5,"0.0")', "2.5"],
];

/** A text that arithmetic of another language, or of no worksheet, would read as a number. */
const DOUBTED: readonly (readonly [string, RegExp])[] = [
  ["A1*2", /reckons with a text/],
  ["A2+1", /reckons with a text/],
  ["1-A3", /reckons with a text/],
  ['"5,5"*2', /may stand for a number/],
  ['TEXT(1,"")', /TEXT with the format/],
];

const COMPUTED: readonly (readonly [string, unknown])[] = [
  ["A4*2", 180],
  ['"1e3"*1', 1000],
  ["A6*2", { error: "#VALUE!" }],
];

const all = [...ROUNDED, ...DOUBTED, ...COMPUTED];
let cells: ReadonlyMap<string, ReportCell | undefined>;

beforeAll(async () => {
  const texts = ["0x10", "1/2/2023", "5,5", "90"].map(
    (text, i) => `<row r="${i + 1}"><c r="A${i + 1}" t="str"><v>${text}</v></c></row>`,
  );
  const others = '<row r="5"><c r="A5"><v>0.285</v></c></row><row r="6"><c r="A6" t="str"><v>abc</v></c></row>';
  const formulas = all.map(
    ([formula], i) => `<row r="${i + 10}"><c r="B${i + 10}" t="str"><f>${escaped(formula)}</f><v>?</v></c></row>`,
  );
  const book = makeWorkbook({ sheets: [{ name: "Data", rows: texts.join("") + others + formulas.join("") }] });
  const { reports } = await recalcAll({ "a.xlsx": book }, ["--all"]);
  cells = new Map(all.map(([formula], i) => [formula, cellOf(reports.get("a.xlsx"), "Data", `B${i + 10}`)]));
});

test.each([...ROUNDED, ...COMPUTED])("%s", (formula, right) => {
  expect(cells.get(formula)).toMatchObject({ status: "changed", recalculated: right });
});

test.each(DOUBTED)("%s is kept", (formula, reason) => {
  expect(cells.get(formula)).toMatchObject({ status: "kept", recalculated: "?" });
  expect(cells.get(formula)?.reason).toMatch(reason);
});
