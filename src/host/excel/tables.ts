/** The tables of the workbook, with the computed columns that stand beside them. Two syncs, however many tables. */
/// <reference types="office-js" />
import type { ColumnInfo, TableInfo } from "../port.js";
import { unitsOf } from "../records.js";
import { memoryKey, readMemory, type Memory } from "./memory.js";

export interface Tables {
  readonly tables: readonly TableInfo[];
  readonly memory: Memory;
}

/** @param between runs when the first sync is done, for what a caller loaded before and wants to load with the second */
export async function loadTables(
  context: Excel.RequestContext,
  between: (memory: Memory) => void = () => undefined,
): Promise<Tables> {
  const all = context.workbook.tables;
  all.load("items/name, items/worksheet/name");
  const setting = context.workbook.settings.getItemOrNullObject(memoryKey);
  setting.load("value");
  await context.sync();
  const memory = readMemory(setting);
  const parts = all.items.map((table) => {
    const header = table.getHeaderRowRange();
    header.load("rowIndex, columnIndex, values");
    const body = table.getDataBodyRange();
    body.load("rowIndex, rowCount");
    const line = header.getEntireRow().getUsedRangeOrNullObject(true);
    line.load("columnIndex, values");
    return { name: table.name, sheet: table.worksheet.name, header, body, line };
  });
  between(memory);
  await context.sync();
  const tables = parts.map(({ name, sheet, header, body, line }): TableInfo => {
    const lastTyped = header.columnIndex + header.values[0]!.length - 1;
    const headers = (line.values[0] ?? []).map((text: unknown, at: number) => ({
      header: String(text),
      column: line.columnIndex + at,
    }));
    const typed = headers.filter(({ column }) => column >= header.columnIndex && column <= lastTyped);
    const beside = headers.filter(({ column }) => column > lastTyped);
    const columns = columnsOf(typed, beside, lastTyped, memory.tables[name]);
    return {
      name,
      sheet,
      headerRow: header.rowIndex,
      firstRow: body.rowIndex,
      lastRow: body.rowIndex + body.rowCount - 1,
      columns,
      units: unitsOf(columns),
    };
  });
  return { tables, memory };
}

interface Heading {
  readonly header: string;
  readonly column: number;
}

function columnsOf(
  typed: readonly Heading[],
  beside: readonly Heading[],
  lastTyped: number,
  remembered: readonly ColumnInfo[] = [],
): ColumnInfo[] {
  const recall = ({ header, column }: Heading, computed: boolean): ColumnInfo => ({
    key: header,
    header,
    ...remembered.find((one) => one.header === header && one.computed === computed),
    computed,
    column,
  });
  const computed =
    remembered.length > 0
      ? beside.filter(({ header }) => remembered.some((one) => one.computed && one.header === header))
      : adjoining(beside, lastTyped + 2);
  return [...typed.map((one) => recall(one, false)), ...computed.map((one) => recall(one, true))];
}

/** What stands without a hole from a column on: of a table that we did not make, the columns after one empty one. */
function adjoining(headings: readonly Heading[], from: number): Heading[] {
  const right = headings.filter(({ column }) => column >= from);
  const end = right.findIndex(({ header }, at) => header === "" || right[at]?.column !== from + at);
  return end < 0 ? right : right.slice(0, end);
}
