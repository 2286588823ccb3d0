/**
 * What changes while the engine is at work is worked out too. The grid tells the engine to stop and starts it anew with
 * all changes when it has stopped; where it comes to its end before it hears that, the grid forgets them, and the sheet
 * stayed as it was before the last entry. Such changes are handed in once more.
 */
import { type ICommandInfo } from "@univerjs/core";
import {
  FormulaExecutedStateType,
  IActiveDirtyManagerService,
  type ISetFormulaCalculationNotificationMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
  SetFormulaCalculationStopMutation,
  SetTriggerFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";
import { SetRangeValuesMutation } from "@univerjs/sheets";
import type { LiveBook } from "../book/live.js";

export function keepLateChanges(book: LiveBook): void {
  const changes = book.injector.get(IActiveDirtyManagerService);
  /** Since the engine was last told to start or to stop. */
  let recent: ICommandInfo[] = [];
  /** For which it was told to stop, as what they touch. */
  let late: object[] = [];

  book.commands.onCommandExecuted((info, options) => {
    switch (info.id) {
      case SetFormulaCalculationStartMutation.id:
        [recent, late] = [[], []];
        return;
      case SetFormulaCalculationStopMutation.id:
        late.push(...recent.map((change) => changes.get(change.id)?.getDirtyData(change) ?? {}));
        recent = [];
        return;
      case SetFormulaCalculationNotificationMutation.id:
        ended(info.params as ISetFormulaCalculationNotificationMutation);
        return;
    }
    // What the engine itself writes is no change.
    if (changes.get(info.id) === undefined || (info.id === SetRangeValuesMutation.id && options?.onlyLocal === true))
      return;
    // Everything is worked out: also what changed before, perhaps in a book that is gone.
    if (isForced(info)) [recent, late] = [[], []];
    recent.push(info);
  });

  function ended({ stageInfo, functionsExecutedState }: ISetFormulaCalculationNotificationMutation): void {
    // Stopped, the grid starts it anew by itself.
    if (stageInfo || functionsExecutedState === FormulaExecutedStateType.STOP_EXECUTION) return;
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
