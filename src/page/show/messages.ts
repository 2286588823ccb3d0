/** What error cells mean, as the worker tells it; the status line and the hover card ask. */
import type { FormulaMessages } from "../../host/embedded/cell-messages.js";

export interface Messages {
  /** The sentence for an error that stands in the cell, or undefined where there is none of ours. */
  at(sheetId: string, row: number, column: number): string | undefined;
  onChange(listener: () => void): void;
}

/** Each message replaces what its formula said before. */
export function receiveMessages(channelName: string): Messages {
  const byFormula = new Map<string, FormulaMessages["messages"]>();
  const byCell = new Map<string, string>();
  const listeners = new Set<() => void>();
  new BroadcastChannel(channelName).addEventListener("message", (event: MessageEvent<FormulaMessages>) => {
    const { sheet, row, column, messages } = event.data;
    const formula = key(sheet, row, column);
    for (const old of byFormula.get(formula) ?? []) byCell.delete(key(sheet, old.row, old.column));
    for (const cell of messages) byCell.set(key(sheet, cell.row, cell.column), cell.message);
    byFormula.set(formula, messages);
    for (const listener of listeners) listener();
  });
  return {
    at: (sheetId, row, column) => byCell.get(key(sheetId, row, column)),
    onChange: (listener) => {
      listeners.add(listener);
    },
  };
}

function key(sheetId: string, row: number, column: number): string {
  return `${sheetId}!${row},${column}`;
}
