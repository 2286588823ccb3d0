import { readFileSync } from "node:fs";
import path from "node:path";
import { createContext, runInContext } from "node:vm";
import { isCellError, type Cell, type Grid, type Input } from "../../src/functions/contract.js";
import { root } from "./run.js";

const read = (file: string): string => readFileSync(path.join(root, file), "utf8");

export interface Metadata {
  readonly functions: readonly {
    readonly id: string;
    readonly name: string;
    readonly description: string;
    readonly helpUrl: string;
    readonly parameters: readonly {
      readonly name: string;
      readonly description: string;
      readonly optional?: boolean;
    }[];
  }[];
}

export const metadata = JSON.parse(read("dist/excel/functions.json")) as Metadata;

/** A function's name and its arguments as they stand in a sheet: undefined is left out, null an empty cell. */
export type Call = readonly [name: string, ...args: Input[]];

/** Codes in which the runtime tells Excel of a thrown error. */
const thrown: Readonly<Record<number, string>> = {
  1: "#N/A",
  5: "#DIV/0!",
  6: "#NUM!",
  7: "#VALUE!",
  8: "#NULL!",
};

interface Bridge {
  onMessageFromHost?: (message: string) => void;
  sendMessageToHost: (message: string) => void;
}

/**
 * Runs calls through Microsoft's own runtime script of custom functions with our built function file in it; played is
 * only what Excel itself does: it hands arguments over as matrices, null for a left-out one and 0 for an empty cell,
 * an error without its message, and reads what comes back. Each result as Excel would show it.
 */
export async function excelResults(calls: readonly Call[], functions = "dist/excel/functions.js"): Promise<Grid[]> {
  const sent = new Promise<unknown[][]>((resolve) => {
    const bridge: Bridge = {
      sendMessageToHost: (message) => {
        resolve(resultsIn(message));
      },
    };
    const context = createContext(page(bridge));
    for (const file of ["node_modules/@microsoft/office-js/dist/custom-functions-runtime.js", functions])
      runInContext(read(path.relative(root, path.resolve(root, file))), context, { filename: file });
    if (bridge.onMessageFromHost === undefined) throw new Error("The runtime did not take the bridge.");
    const entries = calls.map(([name, ...args], id) => ({
      messageCategory: 1,
      messageType: 1000,
      // The last says that errors may come in.
      message: [id + 1, name, handedOver(name, args), "Sheet1!A1", 4],
    }));
    bridge.onMessageFromHost(JSON.stringify({ type: 3, message: { entries } }));
  });
  const results = new Map((await sent).map((result) => [result[0], result]));
  return calls.map((_, id) => shown(results.get(id + 1)));
}

/** As much of a page as the runtime script asks for. */
function page(bridge: Bridge): object {
  const element = (): object => ({ setAttribute: () => undefined, appendChild: () => undefined, style: {} });
  const document = {
    readyState: "complete",
    addEventListener: () => undefined,
    getElementsByTagName: (name: string) =>
      name === "script" ? [{ src: "https://localhost/custom-functions-runtime.js" }] : [element()],
    getElementById: () => null,
    createElement: element,
    cookie: "",
  };
  const window = {
    _richApiNativeBridge: bridge,
    document,
    history: {},
    navigator: { userAgent: "" },
    location: { href: "https://localhost/", search: "", hash: "", protocol: "https:", hostname: "localhost" },
    addEventListener: () => undefined,
    XMLHttpRequest: class {},
    clearTimeout,
    // It also waits for scripts that only a whole page loads, and complains.
    setTimeout: (run: (...args: unknown[]) => void, wait: number, ...args: unknown[]) =>
      setTimeout(() => {
        try {
          run(...args);
        } catch (error) {
          if (typeof error !== "string") throw error;
        }
      }, wait).unref(),
  };
  return Object.assign(window, { window, self: window, top: window, parent: window });
}

function handedOver(name: string, args: readonly Input[]): unknown[] {
  const count = metadata.functions.find(({ id }) => id === name)?.parameters.length ?? args.length;
  return Array.from({ length: Math.max(count, args.length) }, (_, index) => {
    const input = args[index];
    if (input === undefined) return null;
    const grid = Array.isArray(input) ? (input as Grid) : [[input as Cell]];
    return grid.map((row) => row.map(cellHandedOver));
  });
}

function cellHandedOver(cell: Cell): unknown {
  if (isCellError(cell)) return { type: "CustomFunctionError", code: cell.error };
  return cell ?? 0;
}

function resultsIn(message: string): unknown[][] {
  const { message: request } = JSON.parse(message) as {
    message: { body: { Actions: { Name: string; ArgumentInfo?: { Arguments: unknown[][][] } }[] } };
  };
  const action = request.body.Actions.find(({ Name }) => Name === "SetInvocationArrayResults");
  return action?.ArgumentInfo?.Arguments[0] ?? [];
}

function shown(result: readonly unknown[] | undefined): Grid {
  if (result === undefined) throw new Error("A call was not answered.");
  const [, succeeded, value, code] = result;
  if (succeeded !== true) return [[{ error: thrown[Number(code)] ?? "none", message: String(value) } as Cell]];
  return (value as unknown[][]).map((row) => row.map(cellShown));
}

function cellShown(cell: unknown): Cell {
  if (typeof cell !== "object" || cell === null) return cell as Cell;
  const { basicValue, message } = cell as { basicValue: string; message?: string };
  return { error: basicValue, message: message ?? "" } as Cell;
}
