/** A formula of a file as the engine is given it: names, tables, other sheets, what one cell means, and what is doubted. */
import { Preparer } from "../../src/host/file/formula/prepare.js";
import type { FormulaBook, FormulaCell } from "../../src/host/file/formula/book.js";
import type { PreparedFormula } from "../../src/host/file/formula/prepare.js";

const book: FormulaBook = {
  sheets: [
    { name: "Data", rows: 20, columns: 6 },
    { name: "Sheet2", rows: 5, columns: 5 },
    { name: "My sheet", rows: 5, columns: 5 },
  ],
  names: [
    { name: "Limit", formula: "Data!$B$2", sheet: undefined, isHidden: false },
    { name: "Limit", formula: "Sheet2!$C$3", sheet: 1, isHidden: false },
    { name: "Above", formula: "Data!A1048576", sheet: undefined, isHidden: false },
    { name: "Total", formula: "SUM(Data!$A$1:$A$9)", sheet: undefined, isHidden: false },
    { name: "Twice", formula: "Limit*2", sheet: undefined, isHidden: false },
    { name: "Round", formula: "Round+1", sheet: undefined, isHidden: false },
  ],
  tables: [
    {
      name: "Points",
      sheet: "Data",
      headerRow: 9,
      firstRow: 10,
      lastRow: 14,
      totalsRow: 15,
      columns: [
        { names: ["Load"], column: 0 },
        { names: ["Rise"], column: 1 },
      ],
    },
  ],
};

const preparer = new Preparer(book);
const at = (sheet: number, row: number, column: number, isArray = false): FormulaCell => ({
  sheet,
  row,
  column,
  isArray,
});
const prepare = (formula: string, cell = at(0, 3, 2)): PreparedFormula => preparer.prepare(formula, cell);
/** With helpers of ours taken away. */
const textOf = (formula: string, cell?: FormulaCell): string => prepare(formula, cell).text;

test.each([
  ["A1+B2", "$A$1+$B$2"],
  ["SUM(Sheet2!A1:B2)", "SUM('Sheet2'!$A$1:$B$2)"],
  ["SUM('Data:My sheet'!A1)", "SUM($A$1,'Sheet2'!$A$1,'My sheet'!$A$1)"],
  ["SUM(B:B)", "SUM($B$1:$B$20)"],
  ["_xldudf_GREY_SHARE_OF_LIMIT(A1,90)", "GREY.SHARE_OF_LIMIT($A$1,90)"],
])("%s", (formula, expected) => {
  expect(prepare(formula)).toMatchObject({ text: expected, distrust: undefined });
});

test("our functions are known as ours, and what a formula reads is told", () => {
  const { isOurs, areas } = prepare("_xldudf_GREY_RATIO(A1,Sheet2!B1:B3)+1");
  expect(isOurs).toBe(true);
  expect(areas).toEqual([
    { sheet: 0, startRow: 0, endRow: 0, startColumn: 0, endColumn: 0 },
    { sheet: 1, startRow: 0, endRow: 2, startColumn: 1, endColumn: 1 },
  ]);
  expect(prepare("A1+1").isOurs).toBe(false);
});

describe("one value of a range, as formulas before dynamic arrays mean it (in C4)", () => {
  test.each([
    ["A1:A9*2", "$A$4*2"],
    ["A2:F2", "$C$2"],
    ["A5:A9+1", "#VALUE!+1"],
    ["SUM(A1:A9)", "SUM($A$1:$A$9)"],
    ["SUMPRODUCT(A1:A9*B1:B9)", "SUMPRODUCT($A$1:$A$9*$B$1:$B$9)"],
    ["SUM(A1:A9*B1:B9)", "SUM($A$4*$B$4)"],
    ["A1:B3 A1:F2", "#VALUE!"],
    ["A1:C5 C4:F9", "$C$4"],
    ["SUM(A1:C5 B3:F9)", "SUM($B$3:$C$5)"],
    ["A1:A2 C1:C2", "#NULL!"],
    ["ROW(B7:B9)", "7"],
  ])("%s", (formula, expected) => expect(textOf(formula)).toBe(expected));

  test("an array formula means the whole range", () => {
    expect(textOf("A1:A9*2", at(0, 3, 2, true))).toBe("$A$1:$A$9*2");
  });
});

describe("names", () => {
  test.each([
    ["Limit+1", at(0, 3, 2), "$B$2+1"],
    ["limit+1", at(1, 3, 2), "$C$3+1"],
    ["Twice", at(0, 3, 2), "($B$2*2)"],
    ["Total", at(2, 0, 0), "(SUM('Data'!$A$1:$A$9))"],
    // A name's relative reference is meant from A1: one row up, and C3 for a formula in C4.
    ["Above", at(0, 3, 2), "$C$3"],
  ])("%s", (formula, cell, expected) =>
    expect(prepare(formula, cell)).toMatchObject({ text: expected, distrust: undefined }),
  );

  test.each([
    ["Nobody+1", /name Nobody is not defined/],
    ["Round", /leads to itself/],
  ])("%s is doubted", (formula, reason) => expect(prepare(formula).distrust).toMatch(reason));
});

describe("tables", () => {
  test.each([
    ["SUM(Points[Load])", at(0, 0, 3), "SUM($A$11:$A$15)"],
    ["Points[@Rise]*2", at(0, 11, 3), "$B$12*2"],
    ["Points[[#This Row],[Rise]]*2", at(0, 11, 3), "$B$12*2"],
    ["SUM(Points[#All])", at(1, 0, 0), "SUM('Data'!$A$10:$B$16)"],
    ["Points[[#Totals],[Load]]", at(0, 0, 3), "$A$16"],
    ["Points[[#Headers],[Rise]]", at(0, 0, 3), "$B$10"],
    // In the table its own name may be left out.
    ["SUBTOTAL(109,[Load])", at(0, 15, 0), "SUBTOTAL(109,$A$11:$A$15)"],
    // A whole column where one value is wanted is that of the row.
    ["Points[Load]*2", at(0, 11, 3), "$A$12*2"],
  ])("%s", (formula, cell, expected) =>
    expect(prepare(formula, cell)).toMatchObject({ text: expected, distrust: undefined }),
  );

  test("a column that is not there is doubted", () => {
    expect(prepare("SUM(Points[Gone])").distrust).toBeDefined();
  });
});

describe("written in another way, since the engine reads it otherwise than a worksheet", () => {
  test.each([
    ["A1<>B1", "RECALC.NOT($A$1=$B$1)"],
    ["A1&1", "RECALC.TEXT($A$1)&RECALC.TEXT(1)"],
    ["10%%", "(10%)%"],
    ['-"2"', '-RECALC.NUMBER("2")'],
    ["ROUND(A1,2)", "ROUND(RECALC.NUMBER($A$1),2)"],
    ["LEN(A1)", "LEN(RECALC.TEXT($A$1))"],
    ["IF(A1,1,2)", "IF(RECALC.TRUTH($A$1),1,2)"],
    ["IFS(A1>1,5,A1>0,6)", "IF($A$1>1,5,IF($A$1>0,6,NA()))"],
    ["SUMIF(A1:A9,5,B1)", "SUMIF($A$1:$A$9,5,$B$1:$B$9)"],
    ["COUNTIF(A:A,5)", "RECALC.WHOLE.COUNTIF($A$1:$A$20,5)"],
    ["VLOOKUP(1,A1:B9,2,FALSE)", "VLOOKUP(RECALC.SOUGHT(1),$A$1:$B$9,2,FALSE)"],
    // Of (0.1+0.7)*10 the engine makes 8, a worksheet a little less, and INT 7.
    ["INT((A1+A2)*10)", 'RECALC.DOUBT("INT of a sum or difference")'],
    ["IF(A1,MOD(A1-A2,2),1)", 'IF(RECALC.TRUTH($A$1),RECALC.DOUBT("MOD of a sum or difference"),1)'],
    ["DSUM(A1:B9,1,D1:D2)", 'RECALC.DOUBT("DSUM is not among the functions that are trusted")'],
  ])("%s", (formula, expected) => expect(textOf(formula)).toBe(expected));

  test("the nearest value is looked for among rising numbers only", () => {
    expect(prepare("VLOOKUP(5,A1:B9,2)").rising).toEqual([
      { sheet: 0, startRow: 0, endRow: 8, startColumn: 0, endColumn: 0 },
    ]);
    expect(prepare("MATCH(5,A1:F1)").rising).toEqual([
      { sheet: 0, startRow: 0, endRow: 0, startColumn: 0, endColumn: 5 },
    ]);
    expect(prepare("VLOOKUP(5,A1:B9,2,0)").rising).toEqual([]);
  });

  test("days of a workbook that counts from 1904 are shown as its own", () => {
    const preparer1904 = new Preparer({ ...book, is1904: true });
    expect(preparer1904.prepare('TEXT(A1,"yyyy-mm-dd")', at(0, 0, 2)).text).toMatch(/\+1462,"yyyy-mm-dd"\)$/);
    expect(preparer1904.prepare('TEXT(A1,"0.0")', at(0, 0, 2)).text).not.toContain("1462");
  });
});

test.each([
  ["TODAY()+1", /volatile/],
  ["'[1]Other'!A1", /not in this workbook/],
  ["Gone!A1", /not in this workbook/],
  ["A1:INDEX(A1:A9,3)", /operator : is not read/],
  ["SUM((A1,B1))", /union/],
  ["SUM(A1", /taken apart/],
  ["A1 5", /side by side/],
])("%s is doubted", (formula, reason) => expect(prepare(formula).distrust).toMatch(reason));
