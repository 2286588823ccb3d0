/** Whether the worker is computing, told only when it takes long enough to be noticed. */
import {
  type FormulaExecuteStageType,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import type { LiveBook } from "../book/live.js";
import { element } from "../frame/dom.js";

export interface Calculating {
  readonly root: HTMLElement;
  readonly busy: () => boolean;
  attach(book: LiveBook): void;
  onDone(listener: () => void): void;
}

const noticedAfter = 250;

export function calculating(): Calculating {
  const root = element("div", { class: "gb-calculating", role: "status" });
  const listeners = new Set<() => void>();
  // The first calculation is on its way from the start.
  let running = true;
  let timer: ReturnType<typeof setTimeout> | undefined;
  const begin = (): void => {
    running = true;
    timer ??= setTimeout(() => {
      root.textContent = "Calculating…";
    }, noticedAfter);
  };
  const end = (): void => {
    running = false;
    clearTimeout(timer);
    timer = undefined;
    root.textContent = "";
    for (const listener of listeners) listener();
  };
  return {
    root,
    busy: () => running,
    onDone: (listener) => {
      listeners.add(listener);
    },
    attach: (book) => {
      begin();
      book.commands.onCommandExecuted((info) => {
        if (info.id === SetTriggerFormulaCalculationStartMutation.id) begin();
        if (info.id === SetFormulaCalculationStartMutation.id) begin();
        if (info.id !== SetFormulaCalculationNotificationMutation.id) return;
        const { stageInfo } = (info.params ?? {}) as { stageInfo?: { stage: FormulaExecuteStageType } | null };
        if (!stageInfo) end();
        else begin();
      });
    },
  };
}
