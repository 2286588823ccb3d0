/**
 * Lets a function's messages out of the engine: its results carry them, but only values reach the page. Kept here too,
 * so that a function that is handed an error cell can pass that cell's own message on.
 */
import type { Nullable } from "@univerjs/core";
import type { ArrayValueObject, BaseFunction, BaseValueObject, ErrorValueObject } from "@univerjs/engine-formula";
import type { CellMessages, MessageBook } from "./channel.js";

export function speakOut(executors: readonly BaseFunction[], book: MessageBook, send: (call: CellMessages) => void): void {
  for (const executor of executors) {
    const calculate = executor.calculate.bind(executor);
    executor.calculate = (...values) => {
      const result = calculate(...values) as BaseValueObject;
      const { subUnitId, row, column } = executor;
      if (subUnitId == null) return result;
      const call = { sheetId: subUnitId, row, column, functionName: String(executor.name), messages: messagesOf(result) };
      if (book.record(call)) send(call);
      return result;
    };
  }
}

function messagesOf(result: BaseValueObject): CellMessages["messages"] {
  const said: { down: number; right: number; text: string }[] = [];
  const add = (value: Nullable<BaseValueObject>, down: number, right: number): void => {
    if (value?.isError() !== true) return;
    const text = (value as ErrorValueObject).getErrorContent();
    if (text) said.push({ down, right, text });
  };
  if (!result.isArray()) add(result, 0, 0);
  else (result as ArrayValueObject).iterator((value, row, column) => { add(value, row, column); });
  return said;
}
