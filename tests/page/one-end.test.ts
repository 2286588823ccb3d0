/** The engine itself cannot be loaded by jest: its commands have a stand-in that does what is asked for here. */
import { endOnce } from "../../src/page/one-end.js";

jest.mock("@univerjs/core", () => ({ ICommandService: "commands" }));
jest.mock("@univerjs/engine-formula", () => ({
  FormulaExecutedStateType: { INITIAL: 0, STOP_EXECUTION: 1, NOT_EXECUTED: 2, SUCCESS: 3 },
  SetFormulaCalculationNotificationMutation: { id: "notification" },
  SetFormulaCalculationStartMutation: { id: "start" },
}));

type Listener = (command: { id: string; params: object }) => void;

describe("Each start of the engine has one end", () => {
  const [stopped, notExecuted, success] = [1, 2, 3];
  let commands: ReturnType<typeof standIn>;
  let faults: EventTarget;
  let told: unknown[];

  function standIn() {
    const before: Listener[] = [];
    return {
      beforeCommandExecuted: (listener: Listener) => before.push(listener),
      executeCommand: (id: string, params: object): Promise<boolean> => {
        for (const listener of before) listener({ id, params });
        if (id === "notification")
          told.push((params as { functionsExecutedState?: number }).functionsExecutedState ?? "at work");
        return Promise.resolve(true);
      },
    };
  }

  beforeEach(() => {
    [commands, faults, told] = [standIn(), new EventTarget(), []];
    endOnce({ get: () => commands } as unknown as Parameters<typeof endOnce>[0], faults);
  });

  const start = (): Promise<boolean> => commands.executeCommand("start", {});
  const end = (functionsExecutedState: number): Promise<boolean> =>
    commands.executeCommand("notification", { functionsExecutedState });

  test("stopped, it says so once; what comes between and after is told", async () => {
    await start();
    await end(stopped);
    await commands.executeCommand("notification", { stageInfo: {} });
    expect(await end(stopped)).toBe(false);
    await start();
    await end(success);
    expect(told).toEqual([stopped, "at work", success]);
  });

  test("a fault that nobody caught ends what is at work, once, and nothing else", async () => {
    const fault = (): boolean => faults.dispatchEvent(new Event("unhandledrejection"));
    fault();
    await start();
    fault();
    fault();
    expect(told).toEqual([notExecuted]);
  });
});
