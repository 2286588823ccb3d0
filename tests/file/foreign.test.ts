/** Formulas of others that are worked out rightly or left with their saved value and the reason; values by hand. */
import { cellOf, recalcAll, type Recalculated } from "../support/recalc.js";
import { makeWorkbook } from "../support/workbook-file.js";

const DATA =
  '<row r="1"><c r="A1"><v>3</v></c><c r="B1" t="str"><v>b</v></c><c r="C1"><v>10</v></c></row>' +
  '<row r="2" hidden="1"><c r="A2"><v>1</v></c><c r="B2" t="str"><v>a</v></c><c r="C2"><v>20</v></c></row>' +
  '<row r="3"><c r="A3"><v>2</v></c><c r="B3" t="str"><v>2.5</v></c><c r="C3"><v>30</v></c></row>';

/** A formula of column E, its saved value, and what is expected: a value, or the words of the reason why it is kept. */
type Case = readonly [formula: string, saved: string, expected: number | string | boolean | RegExp];

const CASES: readonly Case[] = [
  // What the engine sorts is not the sheet: the second formula reads the same range.
  ["SUM(SORT(A1:A3)*1)", "", 6],
  ["INDEX(A1:A3,1)", "", 3],
  ["SUMIF(A1:A3,2,C1)", "", 30],
  ["C1+0", "", 10],
  ["SIN(B3-2.5)+ABS(B3)", "", 2.5],
  ["ABS(B1)", "", "#VALUE!"],
  ["TRUNC(-3,2)", "", -3],
  ["D9+1", "", 1],
  // A branch that is not taken takes nothing away.
  ["IF(A1=3,5,DSUM(A1:C3,1,A1:A2))", "<v>5</v>", 5],
  ["IF(A1=4,5,DSUM(A1:C3,1,A1:A2))", "<v>7</v>", /DSUM is not among/],
  ["IFERROR(DSUM(A1:C3,1,A1:A2),0)", "<v>7</v>", /DSUM is not among/],
  ['IF(D9="",0,VLOOKUP(D9,A1:C3,3,FALSE))', "<v>0</v>", 0],
  ['VLOOKUP("*",B1:C3,2,FALSE)', "<v>10</v>", /pattern/],
  ["VLOOKUP(2,A1:C3,3)", "<v>20</v>", /rising/],
  ["VLOOKUP(25,C1:C3,1)", "<v>1</v>", 20],
  ["SUBTOTAL(109,A1:A3)", "<v>5</v>", /hidden/],
  ["SUBTOTAL(109,A1:A1)", "<v>5</v>", 3],
  ["NOW()", "<v>5</v>", /volatile/],
  ["Gone!A1", "<v>5</v>", /not in this workbook/],
  ["A1:INDEX(A1:A3,2)", "<v>5</v>", /operator : is not read/],
  ["COUNTIF(A:A,&quot;&lt;&gt;1&quot;)", "<v>5</v>", /whole column/],
  ['TEXT(A1,"#,##0.00")', "<v>3,00</v>", /another language/],
  ['TEXT(43832,"mmmm")', "<v>Januar</v>", /language of Excel/],
  ['A1/2&amp;""', "<v>1,5</v>", /another language/],
  ['A1/2&amp;""', "<v>1.25</v>", "1.5"],
];

let found: Recalculated;
beforeAll(async () => {
  const rows = CASES.map(([formula, saved], i) => {
    const type = /^<v>[^<]*[^\d<.]|^<v>\d[.,]\d/.test(saved) ? ' t="str"' : "";
    return `<row r="${i + 11}"><c r="E${i + 11}"${type}><f>${formula}</f>${saved}</c></row>`;
  });
  const book = makeWorkbook({ sheets: [{ name: "S", rows: DATA + rows.join("") }] });
  const since1904 = makeWorkbook({
    is1904: true,
    sheets: [
      {
        name: "S",
        rows:
          '<row r="1"><c r="A1"><v>1</v></c><c r="B1"><f>YEAR(A1)</f></c><c r="C1"><f>TEXT(A1,"yyyy-mm-dd")</f></c>' +
          '<c r="D1"><f>DATE(1904,1,2)</f></c><c r="E1"><f>DAYS360(A1,31)</f><v>9</v></c></row>',
      },
    ],
  });
  found = await recalcAll({ "book.xlsx": book, "since1904.xlsx": since1904 }, ["--all"]);
}, 60_000);

test.each(CASES.map((one, i): [string, number] => [one[0], i]))("%s", (_, i) => {
  const [, , expected] = CASES[i]!;
  const cell = cellOf(found.reports.get("book.xlsx"), "S", `E${i + 11}`)!;
  if (expected instanceof RegExp) {
    expect(cell.status).toBe("kept");
    expect(cell.reason).toMatch(expected);
    expect(cell.recalculated).toEqual(cell.stored);
  } else {
    expect(cell.status).not.toBe("kept");
    const value = cell.recalculated as { error?: string } | number | string;
    expect(typeof value === "object" ? value.error : value).toBe(expected);
  }
});

test("days of a workbook that counts from 1904", () => {
  const report = found.reports.get("since1904.xlsx");
  const values = ["B1", "C1", "D1"].map((cell) => cellOf(report, "S", cell)?.recalculated);
  expect(values).toEqual([1904, "1904-01-02", 1]);
  expect(cellOf(report, "S", "E1")).toMatchObject({ status: "kept", stored: 9 });
});
