/** Hides and shows the columns that a book of ours folds. */
/// <reference types="office-js" />
import type { ColumnInfo } from "../port.js";
import { refuse } from "./answer.js";
import { loadTables } from "./tables.js";

interface Folding {
  readonly sheet: string;
  readonly columns: readonly ColumnInfo[];
  readonly ranges: readonly Excel.Range[];
  readonly hidden: boolean;
}

export async function folding(context: Excel.RequestContext): Promise<Folding> {
  const sheet = context.workbook.worksheets.getActiveWorksheet();
  sheet.load("name");
  const { tables } = await loadTables(context);
  const columns = tables
    .filter((table) => table.sheet === sheet.name)
    .flatMap((table) => table.columns.filter(({ folded }) => folded === true));
  if (columns.length === 0) return { sheet: sheet.name, columns, ranges: [], hidden: false };
  const ranges = columns.map(({ column }) => sheet.getRangeByIndexes(0, column, 1, 1));
  for (const range of ranges) range.load("columnHidden");
  await context.sync();
  return { sheet: sheet.name, columns, ranges, hidden: ranges.some(({ columnHidden }) => columnHidden) };
}

export async function fold(context: Excel.RequestContext, hide: boolean): Promise<void> {
  const { ranges } = await folding(context);
  if (ranges.length === 0) refuse("missing", "This sheet has no columns that are folded.");
  for (const range of ranges) range.columnHidden = hide;
  await context.sync();
}
