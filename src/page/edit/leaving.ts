/** Whether anything was changed since the book was opened or saved; reloading or closing asks first where it was. */
import { CommandType } from "@univerjs/core";
import { SetColHiddenMutation, SetColVisibleMutation } from "@univerjs/sheets";
import type { LiveBook } from "../book/live.js";
import { lastStep } from "./step.js";

/** Folding columns can be undone, and yet nothing is lost with it. */
const looks: readonly string[] = [SetColHiddenMutation.id, SetColVisibleMutation.id];

export interface Changes {
  readonly made: () => boolean;
  /** All of them are saved. */
  readonly saved: () => void;
  readonly onChange: (listener: () => void) => void;
}

export function trackChanges(book: LiveBook): Changes {
  const listeners = new Set<() => void>();
  // Kept, not asked of the steps when leaving: the grid remembers only the last of them.
  let changed = false;
  let known = lastStep(book);
  const set = (to: boolean): void => {
    if (changed === to) return;
    changed = to;
    for (const listener of listeners) listener();
  };
  const look = (): void => {
    const step = lastStep(book);
    if (changed || step === known) return;
    // What was saved and is then taken back is a change too.
    const isTakenBack = step === undefined && known !== undefined;
    if (isTakenBack || step?.redoMutations.some(({ id }) => id.includes(".mutation.") && !looks.includes(id)) === true)
      set(true);
  };
  const begin = (): void => {
    known = lastStep(book);
    set(false);
  };
  book.commands.onCommandExecuted((info) => {
    if (info.type === CommandType.COMMAND && book.isOpen()) look();
  });
  book.onPictures(() => {
    set(true);
  });
  // What was changed in the book before is gone already.
  book.onOpened(begin);
  return {
    made: () => {
      look();
      return changed;
    },
    saved: begin,
    onChange: (listener) => {
      listeners.add(listener);
    },
  };
}

export function askBeforeLeaving(changes: Changes): void {
  addEventListener("beforeunload", (event) => {
    if (changes.made()) event.preventDefault();
  });
}
