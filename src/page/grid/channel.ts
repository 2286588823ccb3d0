/** What the worker tells the page besides results. */

/** Messages of one function call in one cell; offsets from the cell in which the formula stands. */
export interface CellMessages {
  readonly sheetId: string;
  readonly row: number;
  readonly column: number;
  /** A formula may call several functions: each one's messages replace its own earlier ones. */
  readonly functionName: string;
  readonly messages: readonly { readonly down: number; readonly right: number; readonly text: string }[];
}

/** Messages by cell, newest call first; kept by the worker for its functions and by the page for people. */
export class MessageBook {
  readonly #calls = new Map<string, CellMessages>();
  readonly #byCell = new Map<string, Map<string, string>>();

  /** True where anything changed. */
  record(call: CellMessages): boolean {
    const key = `${call.sheetId}!${String(call.row)},${String(call.column)} ${call.functionName}`;
    const before = this.#calls.get(key);
    if (before === undefined && call.messages.length === 0) return false;
    for (const { cell } of cellsOf(before)) this.#byCell.get(cell)?.delete(key);
    this.#calls.delete(key);
    if (call.messages.length === 0) return true;
    this.#calls.set(key, call);
    for (const { cell, text } of cellsOf(call)) {
      const said = this.#byCell.get(cell) ?? new Map<string, string>();
      said.set(key, text);
      this.#byCell.set(cell, said);
    }
    return true;
  }

  at(sheetId: string, row: number, column: number): string | undefined {
    return [...(this.#byCell.get(cellKey(sheetId, row, column))?.values() ?? [])].at(-1);
  }
}

function cellsOf(call: CellMessages | undefined): { cell: string; text: string }[] {
  return (call?.messages ?? []).map(({ down, right, text }) => ({
    cell: cellKey(call?.sheetId ?? "", (call?.row ?? 0) + down, (call?.column ?? 0) + right),
    text,
  }));
}

function cellKey(sheetId: string, row: number, column: number): string {
  return `${sheetId}!${String(row)},${String(column)}`;
}
