/** Reloading or closing asks first once something was changed: the page keeps nothing yet. */
import { CommandType } from "@univerjs/core";
import { SetColHiddenMutation, SetColVisibleMutation } from "@univerjs/sheets";
import type { LiveBook } from "../book/live.js";
import { lastStep } from "./step.js";

/** Folding columns can be undone, and yet nothing is lost with it. */
const looks: readonly string[] = [SetColHiddenMutation.id, SetColVisibleMutation.id];

export function askBeforeLeaving(book: LiveBook): void {
  // Kept, not asked of the steps when leaving: the grid remembers only the last of them.
  let changed = false;
  const look = (): void => {
    changed ||=
      lastStep(book)?.redoMutations.some(({ id }) => id.includes(".mutation.") && !looks.includes(id)) === true;
  };
  book.commands.onCommandExecuted((info) => {
    if (info.type === CommandType.COMMAND && book.isOpen()) look();
  });
  // What was changed in the book before is gone already.
  book.onOpened(() => {
    changed = false;
  });
  addEventListener("beforeunload", (event) => {
    look();
    if (changed) event.preventDefault();
  });
}
