/** Enters our formulas again: those that Excel opened before it knew the functions stay #NAME? until then. */
/// <reference types="office-js" />
import { NAMESPACE } from "../../functions/describe.js";
import { localAddress, parseAddress, type CellAddress } from "./address.js";
import { isOurs } from "./explain.js";

const cellsPerCall = 20_000;
const stored = new RegExp(String.raw`_xldudf_${NAMESPACE}_(\w+)`, "gi");

/** The name in a file becomes the name that a person types. */
function asTyped(formula: string): string {
  return formula.replaceAll(stored, (_, name: string) => `${NAMESPACE}.${name}`);
}

export async function enterAgain(context: Excel.RequestContext): Promise<number> {
  const sheets = context.workbook.worksheets;
  sheets.load("items/name");
  await context.sync();
  const used = sheets.items.map((sheet) => {
    const range = sheet.getUsedRangeOrNullObject(true);
    range.load("rowIndex, columnIndex, rowCount, columnCount");
    return { sheet, range };
  });
  await context.sync();
  const found: { range: Excel.Range; formula: string; at: CellAddress }[] = [];
  for (const { sheet, range } of used) {
    if (range.isNullObject) continue;
    const step = Math.max(1, Math.floor(cellsPerCall / range.columnCount));
    for (let from = 0; from < range.rowCount; from += step) {
      const rows = Math.min(step, range.rowCount - from);
      const part = sheet.getRangeByIndexes(range.rowIndex + from, range.columnIndex, rows, range.columnCount);
      part.load("formulas");
      await context.sync();
      part.formulas.forEach((row: unknown[], r) => {
        row.forEach((formula, c) => {
          if (!isOurs(formula)) return;
          const at = { sheet: sheet.name, row: range.rowIndex + from + r, column: range.columnIndex + c };
          found.push({ range: sheet.getRange(localAddress(at)), formula, at });
        });
      });
    }
  }
  if (found.length === 0) return 0;
  // A cell of a spill may tell its anchor's formula: entered there, it would block the spill.
  const parents = found.map(({ range }) => {
    const parent = range.getSpillParentOrNullObject();
    parent.load("address");
    return parent;
  });
  await context.sync();
  const anchors = found.filter(({ at }, index) => {
    const parent = parents[index]!;
    const from = parent.isNullObject ? at : parseAddress(parent.address);
    return from?.row === at.row && from.column === at.column;
  });
  for (const { range, formula } of anchors) range.formulas = [[asTyped(formula)]];
  await context.sync();
  return anchors.length;
}
