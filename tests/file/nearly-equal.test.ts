import type { Cell } from "../../src/functions/contract.js";
import { comparesNearlyEqual } from "../../src/host/file/recalc/nearly-equal.js";

/** Cells of a row from A1 on. */
const judge = (text: string, ...cells: Cell[]): boolean =>
  comparesNearlyEqual(
    text,
    cells.map((_, column) => ({ sheet: 0, startRow: 0, endRow: 0, startColumn: column, endColumn: column })),
    (_sheet, _row, column) => cells[column] ?? null,
  );

// 0.1 + 0.2 in binary is 0.30000000000000004.
test.each([
  ["$A$1=0.3", [0.1 + 0.2], true],
  ["IF($A$1>$B$1,1,0)", [0.1 + 0.2, 0.3], true],
  ["IF($A$1>=15,1,0)", [16.1 - 1.1], true],
  ["$A$1=0.3", [0.3], false],
  ["$A$1=0.3", [0.3001], false],
  ["$A$1*0.3", [0.1 + 0.2], false],
  ['$A$1&"=0.3"', [0.1 + 0.2], false],
  ["$A$3>$B$1", ["text", null], false],
] as const)("%s over %p: %p", (text, cells, expected) => {
  expect(judge(text, ...cells)).toBe(expected);
});
