/** What our functions say about the errors they give, as the worker sends it; the status line and the hover card ask. */
import { type CellMessages, MessageBook } from "../grid/channel.js";

export interface Messages {
  /** The sentence for an error that stands in the cell, or undefined where no function of ours said anything. */
  at(sheetId: string, row: number, column: number): string | undefined;
  onChange(listener: () => void): void;
}

export function receiveMessages(channelName: string): Messages {
  const book = new MessageBook();
  const listeners = new Set<() => void>();
  new BroadcastChannel(channelName).addEventListener("message", (event: MessageEvent<CellMessages>) => {
    book.record(event.data);
    for (const listener of listeners) listener();
  });
  return {
    at: (sheetId, row, column) => book.at(sheetId, row, column),
    onChange: (listener) => {
      listeners.add(listener);
    },
  };
}
