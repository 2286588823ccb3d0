/**
 * A say in every command before Univer's own controllers hear of it. They start with the first workbook, so this has to
 * be made before one is opened; what is said later is added when the book is there. Why: the formula controller notes
 * what a write will do to spills, and would note cells that are then left out.
 */
import { type ICommandInfo, ICommandService, type Injector } from "@univerjs/core";

export interface FirstSay {
  add(listener: (info: Readonly<ICommandInfo>) => void): void;
}

export function takeFirstSay(injector: Injector): FirstSay {
  const listeners: ((info: Readonly<ICommandInfo>) => void)[] = [];
  injector.get(ICommandService).beforeCommandExecuted((info) => {
    for (const listener of listeners) listener(info);
  });
  return {
    add: (listener) => {
      listeners.push(listener);
    },
  };
}
