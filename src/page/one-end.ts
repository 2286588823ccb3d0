/**
 * Each start of the engine has one end, by which the page knows that the next may begin.
 *
 * Stopped, the engine says so twice: when it leaves its formulas and when it leaves the calculation. The second would tell
 * the page that the calculation it began upon the first has stopped as well. Broken off by a fault, it says nothing.
 */
import { ICommandService, type Injector } from "@univerjs/core";
import {
  FormulaExecutedStateType,
  type ISetFormulaCalculationNotificationMutation,
  SetFormulaCalculationNotificationMutation,
  SetFormulaCalculationStartMutation,
} from "@univerjs/engine-formula";

/** Call once, where the engine runs. `faults` tells what nobody caught ("unhandledrejection"). */
export function endOnce(injector: Injector, faults: EventTarget): void {
  const commands = injector.get(ICommandService);
  let working = false;
  commands.beforeCommandExecuted(({ id, params }) => {
    if (id === SetFormulaCalculationStartMutation.id) working = true;
    if (isEnd(id, params)) working = false;
  });

  const execute = commands.executeCommand.bind(commands);
  commands.executeCommand = ((id, params, options) =>
    isEnd(id, params) && !working
      ? Promise.resolve(false)
      : execute(id, params, options)) as typeof commands.executeCommand;

  faults.addEventListener("unhandledrejection", () => {
    const ended = { functionsExecutedState: FormulaExecutedStateType.NOT_EXECUTED };
    if (working) void execute(SetFormulaCalculationNotificationMutation.id, ended, { onlyLocal: true });
  });
}

function isEnd(id: string, params: object | undefined): boolean {
  if (id !== SetFormulaCalculationNotificationMutation.id) return false;
  const { stageInfo } = (params ?? {}) as ISetFormulaCalculationNotificationMutation;
  return !stageInfo;
}
