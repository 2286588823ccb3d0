/** Host writes that belong to what a person just did: carried out at once and undone together with it. */
import { type IMutationInfo, IUndoRedoService } from "@univerjs/core";
import {
  type ISetRangeValuesMutationParams,
  SetRangeValuesMutation,
  SetRangeValuesUndoMutationFactory,
} from "@univerjs/sheets";
import type { LiveBook } from "../book/live.js";
import { bookId } from "../book/snapshot.js";

type CellValues = NonNullable<ISetRangeValuesMutationParams["cellValue"]>;

interface UndoStep {
  undoMutations: IMutationInfo[];
  redoMutations: IMutationInfo[];
}

/** The last thing that can be undone, wherever the focus is; the service itself only tells for the focused editor. */
export function lastStep(book: LiveBook): UndoStep | undefined {
  const service = book.injector.get(IUndoRedoService) as unknown as { _undoStacks: Map<string, UndoStep[]> };
  return service._undoStacks.get(bookId)?.at(-1);
}

export class HostStep {
  readonly #undos: IMutationInfo[] = [];
  readonly #redos: IMutationInfo[] = [];

  constructor(private readonly book: LiveBook) {}

  /** Executes a mutation now; `undo` takes it back. */
  mutate(redo: IMutationInfo, undo: IMutationInfo): void {
    this.book.commands.syncExecuteCommand(redo.id, redo.params);
    this.#redos.push(redo);
    this.#undos.unshift(undo);
  }

  write(sheetId: string, cellValue: CellValues): void {
    if (Object.keys(cellValue).length === 0) return;
    const params: ISetRangeValuesMutationParams = { unitId: bookId, subUnitId: sheetId, cellValue };
    const undo = SetRangeValuesUndoMutationFactory(this.book.injector, params);
    this.mutate({ id: SetRangeValuesMutation.id, params }, { id: SetRangeValuesMutation.id, params: undo });
  }

  /** Joins the step of the person's own change; a step of its own where there is none. */
  join(step: UndoStep | undefined): void {
    if (this.#redos.length === 0) return;
    if (step === undefined) {
      this.book.injector
        .get(IUndoRedoService)
        .pushUndoRedo({ unitID: bookId, undoMutations: this.#undos, redoMutations: this.#redos });
      return;
    }
    step.redoMutations.push(...this.#redos);
    step.undoMutations.unshift(...this.#undos);
  }
}
