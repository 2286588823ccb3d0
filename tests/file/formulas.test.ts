/** Formulas of a file taken apart: references found, moved and written back. What is expected is Excel's own behaviour. */
import { addressOf, areaOf, implicitCell } from "../../src/host/file/formula/areas.js";
import { argumentContext, ARRAY, VALUE } from "../../src/host/file/formula/context.js";
import { moveFormula, segmentsOf } from "../../src/host/file/formula/segments.js";
import type { Reference } from "../../src/host/file/formula/segments.js";
import { functionsIn, onlyItem, significant, treeOf } from "../../src/host/file/formula/tree.js";

const isSheet = (name: string): boolean => /^(?:Data|Sheet\d|My sheet)$/i.test(name);
const referencesOf = (formula: string): string[] =>
  segmentsOf(formula, isSheet).flatMap((segment) => (segment.kind === "reference" ? [segment.text] : []));
const referenceOf = (formula: string): Reference => {
  const [segment] = segmentsOf(formula, isSheet);
  if (segment?.kind !== "reference") throw new Error(formula);
  return segment.reference;
};

describe("references of a formula", () => {
  test.each([
    ["A1+$B$2", ["A1", "$B$2"]],
    ["SUM(A1:B3)", ["A1:B3"]],
    ["SUM(A:A,3:3,$C:$D)", ["A:A", "3:3", "$C:$D"]],
    ["Data!A1*'My sheet'!B2", ["Data!A1", "'My sheet'!B2"]],
    ["SUM(Sheet1:Sheet3!A1)", ["Sheet1:Sheet3!A1"]],
    ["SUM('Sheet1:Sheet3'!A1:A2)", ["'Sheet1:Sheet3'!A1:A2"]],
    ["LOG10(A1)", ["A1"]],
    // Names, functions, texts and what lies beyond the last column or row are no references.
    ['A1_x+"A1"+ABCD1+A1048577+XFE1+rate', []],
    ["XFD1048576", ["XFD1048576"]],
  ])("%s", (formula, expected) => {
    expect(referencesOf(formula)).toEqual(expected);
    expect(
      segmentsOf(formula, isSheet)
        .map(({ text }) => text)
        .join(""),
    ).toBe(formula);
  });
});

describe("a shared formula in another cell", () => {
  test.each([
    ["A1+B$2*$C3-$D$4", 2, 1, "B3+C$2*$C5-$D$4"],
    ["SUM(A1:A3)", 0, 25, "SUM(Z1:Z3)"],
    ["SUM(A:A)+SUM(1:1)", 3, 2, "SUM(C:C)+SUM(4:4)"],
    ["SUM($A:A)+SUM($1:1)", 3, 2, "SUM($A:C)+SUM($1:4)"],
    ['Data!A1&"A1"', 1, 1, 'Data!B2&"A1"'],
    ["SUM(Sheet1:Sheet3!A1)", 1, 0, "SUM(Sheet1:Sheet3!A2)"],
    ["SUM('Sheet1:Sheet3'!A1)", 1, 0, "SUM('Sheet1:Sheet3'!A2)"],
    // Beyond the edge of the sheet a reference begins again at the other one.
    ["A1", -1, 0, "A1048576"],
    ["A1", 0, -1, "XFD1"],
    ["XFD1048576", 1, 1, "A1"],
  ])("%s by %i rows and %i columns", (formula, rows, columns, expected) => {
    expect(moveFormula(formula, rows, columns, isSheet)).toBe(expected);
  });
});

describe("the tree of a formula", () => {
  const tree = (formula: string): ReturnType<typeof treeOf> => treeOf(segmentsOf(formula, isSheet));

  test("calls with their arguments, left-out ones too", () => {
    const call = onlyItem(tree("=IF(A1>0, SUM(B1:B3,{1,2;3,4}), )"));
    expect(call).toMatchObject({ kind: "call", name: "IF" });
    if (call?.kind !== "call") throw new Error("no call");
    expect(call.args.map((arg) => significant(arg).length)).toEqual([3, 1, 0]);
    expect(functionsIn(tree("=if(a1>0,Sum(b1),(MAX(c1)))")!)).toEqual(["IF", "SUM", "MAX"]);
  });

  test.each(["SUM(A1", "A1)", "SUM(A1))", "{1,2", "A1,B1"])("%s cannot be taken apart", (formula) => {
    expect(tree(formula)).toBeUndefined();
  });
});

describe("the cells of a reference", () => {
  const sheets = [
    { name: "Data", rows: 20, columns: 5 },
    { name: "It's", rows: 3, columns: 2 },
  ];

  test.each([
    ["B3", [2, 2, 1, 1]],
    ["C5:A2", [1, 4, 0, 2]],
    ["B:C", [0, 1_048_575, 1, 2]],
    ["2:4", [1, 3, 0, 16_383]],
  ])("%s", (formula, [startRow, endRow, startColumn, endColumn]) => {
    expect(areaOf(referenceOf(formula), 1)).toEqual({ sheet: 1, startRow, endRow, startColumn, endColumn });
  });

  test.each([
    ["B3", 0, "$B$3"],
    ["A1:B2", 1, "'It''s'!$A$1:$B$2"],
    // Whole columns and rows as far as the sheet has cells.
    ["B:B", 0, "$B$1:$B$20"],
    ["2:2", 0, "$A$2:$E$2"],
  ])("%s of sheet %i is written %s", (formula, sheet, expected) => {
    expect(addressOf(areaOf(referenceOf(formula), sheet), 0, sheets)).toBe(expected);
  });

  /** The one cell of a range in the row or column of the formula, here C4. */
  test.each([
    ["A1:A9", [3, 0]],
    ["A2:F2", [1, 2]],
    ["B:B", [3, 1]],
    ["A5:A9", undefined],
    ["A1:B9", undefined],
    ["A4", [3, 0]],
  ])("the one cell of %s that a formula in C4 means", (formula, expected) => {
    const cell = implicitCell(areaOf(referenceOf(formula), 0), { row: 3, column: 2 });
    expect(cell && [cell.startRow, cell.startColumn]).toEqual(expected);
    if (cell) expect([cell.endRow, cell.endColumn]).toEqual(expected);
  });
});

describe("what an argument takes", () => {
  test.each([
    ["SUM", 0, VALUE, "R"],
    ["ABS", 0, VALUE, "V"],
    ["SUMPRODUCT", 0, VALUE, "A"],
    ["VLOOKUP", 0, VALUE, "V"],
    ["VLOOKUP", 1, VALUE, "R"],
    ["VLOOKUP", 3, VALUE, "V"],
    ["SUMIFS", 0, VALUE, "R"],
    ["SUMIFS", 1, VALUE, "R"],
    ["SUMIFS", 2, VALUE, "V"],
    ["SUMIFS", 5, VALUE, "R"],
    ["SUMIFS", 6, VALUE, "V"],
    ["ABS", 0, ARRAY, "A"],
    ["IF", 1, { mode: "R", operand: "V" } as const, "R"],
    ["IF", 0, { mode: "R", operand: "V" } as const, "V"],
  ])("%s, argument %i", (name, place, context, mode) => {
    expect(argumentContext(name, place, context).mode).toBe(mode);
  });
});
