/**
 * What changes while the engine is at work is worked out too. The grid tells the engine to stop and starts it anew with
 * all changes when it has stopped, but loses changes in two ways, and the sheet stayed as it was before the last entry:
 *
 * - It takes the engine for idle until the first word of its work comes back. A change in between started it once more, and
 *   the end of the first calculation was then taken for that of the second. So the grid is told of each start at once.
 * - Where the engine comes to its end before it hears that it is to stop, the grid forgets the changes for which it was to
 *   stop. Those are handed in once more.
 */
import { type ICommandInfo } from "@univerjs/core";
import {
  FormulaExecutedStateType,
  FormulaExecuteStageType,
  IActiveDirtyManagerService,
  type ISetFormulaCalculationNotificationMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { LiveBook } from "../book/live.js";

/** What the engine says of itself while it works out formulas; none counted yet. */
const atWork: ISetFormulaCalculationNotificationMutation = {
  stageInfo: {
    stage: FormulaExecuteStageType.CURRENTLY_CALCULATING,
    totalFormulasToCalculate: 0,
    completedFormulasCount: 0,
    totalArrayFormulasToCalculate: 0,
    completedArrayFormulasCount: 0,
    formulaCycleIndex: 0,
  },
};

export function keepLateChanges(book: LiveBook): void {
  const changes = book.injector.get(IActiveDirtyManagerService);
  /** Which the grid still gathers: it waits a moment for more of them. */
  let gathered: ICommandInfo[] = [];
  /** For which the engine was told to stop, as what they touch. */
  let late: object[] = [];
  let working = false;

  book.commands.beforeCommandExecuted(({ id }) => {
    if (id === SetFormulaCalculationStartMutation.id) {
      // Stopped and started anew, it has not got what is still being gathered.
      if (!working) gathered = [];
      late = [];
      working = true;
      book.commands.syncExecuteCommand(SetFormulaCalculationNotificationMutation.id, atWork, { onlyLocal: true });
    } else if (id === SetFormulaCalculationStopMutation.id) {
      late.push(...gathered.map((change) => changes.get(change.id)?.getDirtyData(change) ?? {}));
      gathered = [];
    }
  });

  book.commands.onCommandExecuted((info, options) => {
    if (info.id === SetFormulaCalculationNotificationMutation.id) {
      ended(info.params as ISetFormulaCalculationNotificationMutation);
      return;
    }
    // What the engine itself writes is no change.
    if (changes.get(info.id) === undefined || (info.id === SetRangeValuesMutation.id && options?.onlyLocal === true))
      return;
    // Everything is worked out: also what changed before, perhaps in a book that is gone.
    if (isForced(info)) [gathered, late] = [[], []];
    gathered.push(info);
  });

  function ended({ stageInfo, functionsExecutedState }: ISetFormulaCalculationNotificationMutation): void {
    // Stopped, the grid starts it anew by itself.
    if (stageInfo || functionsExecutedState === FormulaExecutedStateType.STOP_EXECUTION) return;
    working = false;
    const again = late;
    late = [];
    for (const touched of again)
      void book.commands.executeCommand(SetTriggerFormulaCalculationStartMutation.id, touched, { onlyLocal: true });
  }
}

function isForced({ id, params }: ICommandInfo): boolean {
  return (
    id === SetTriggerFormulaCalculationStartMutation.id &&
    (params as { forceCalculation?: boolean } | undefined)?.forceCalculation === true
  );
}
