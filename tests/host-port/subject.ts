/** What a test of the host port is given, and the words it uses. */
import type { CellAt, HostPort, Result } from "../../src/host/port.js";

/** A port with the book `metric` open in it, and what a person can do beside it. */
export interface Subject {
  readonly port: Operations;
  /** Selects a cell of a sheet, as a person does. */
  select(at: CellAt): Promise<void>;
  type(at: CellAt, text: string): Promise<void>;
  /** Until nothing is being calculated. */
  settled(): Promise<void>;
  /** How often a subscription was told since the subject was made. */
  heard(event: "selection" | "recalculated"): Promise<number>;
  close(): Promise<void>;
}

export type Operations = Pick<
  HostPort,
  | "host"
  | "newBookIs"
  | "canUndo"
  | "sheets"
  | "tables"
  | "readTable"
  | "fields"
  | "read"
  | "selected"
  | "units"
  | "folded"
  | "goTo"
  | "makeBook"
  | "insertFormula"
  | "fold"
  | "enterAgain"
  | "undo"
>;

export async function value<T>(result: Promise<Result<T>>): Promise<T> {
  const answer = await result;
  if (!answer.ok) throw new Error(`${answer.reason}: ${answer.message}`);
  return answer.value;
}

export const near = (number: number): unknown => expect.closeTo(number, 9);
export const saying = (words: string): unknown => expect.stringContaining(words);
const sentence: unknown = expect.stringMatching(/^\S[\s\S]*\.$/);
export const refusal = (reason: string): object => ({ ok: false, reason, message: sentence });

/** Beside everything. */
export const free: CellAt = { sheet: "Route", row: 30, column: 12 };

/** Where a column's cell in the n-th row of the table is; rows differ between hosts. */
export async function cellOf(port: Operations, key: string, row: number): Promise<CellAt> {
  const table = (await value(port.tables())).find((one) => one.name === "Readings")!;
  return {
    sheet: table.sheet,
    row: table.firstRow + row,
    column: table.columns.find((column) => column.key === key)!.column,
  };
}
