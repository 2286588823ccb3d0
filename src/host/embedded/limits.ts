import {
  BaseReferenceObject,
  type ArrayValueObject,
  type BaseFunction,
  type BaseValueObject,
  type IFunctionService,
} from "@univerjs/engine-formula";
import { errorValue } from "./values.js";

/** More cells in one array than this would exhaust the memory, and with it every other formula. */
const MOST_CELLS = 5_000_000;
/** As in Excel. */
const MOST_CHARACTERS = 32_767;

/** What stops a formula on purpose; its message is shown to the person. */
export class Refusal extends Error {}

type Values = readonly BaseValueObject[];
type Refuse = (values: Values) => string | undefined;

/** Functions that make an array as large as their widest and their tallest argument together. */
const BROADCASTING = ["PLUS", "MINUS", "MULTIPLY", "DIVIDED", "POWER", "CONCATENATE", "COMPARE", "IF"];
/** Functions that make an array from two numbers, and where these stand among the arguments. */
const MAKING: readonly (readonly [string, number, number])[] = [
  ["SEQUENCE", 0, 1],
  ["RANDARRAY", 0, 1],
  ["MAKEARRAY", 0, 1],
  ["MUNIT", 0, 0],
  ["EXPAND", 1, 2],
];

const REFUSALS: ReadonlyMap<string, Refuse> = new Map<string, Refuse>([
  ...BROADCASTING.map((name): [string, Refuse] => [name, refuseBroadcast]),
  ...MAKING.map(([name, rows, columns]): [string, Refuse] => [
    name,
    (values) => refuseCells(number(values[rows]) * number(values[columns])),
  ]),
  ["REPT", refuseText],
]);

/**
 * Lets no engine function and no reference make an array that could not be held, and takes IMAGE away, which makes an
 * Image element and waits for the network. Also for the functions that the engine registers only later.
 */
export function limitFunctions(functions: IFunctionService): void {
  const registerExecutors = functions.registerExecutors.bind(functions);
  functions.registerExecutors = (...executors) => {
    const kept = executors.filter(({ name }) => name !== "IMAGE");
    for (const executor of kept) limit(executor);
    registerExecutors(...kept);
  };
  functions.unregisterExecutors("IMAGE");
  for (const executor of functions.getExecutors().values()) limit(executor);
  limitReferences();
}

/** Why arguments of several shapes cannot meet, if they cannot. */
export function refuseBroadcast(values: Values): string | undefined {
  let rows = 1;
  let columns = 1;
  for (const value of values) {
    if (!value.isArray()) continue;
    rows = Math.max(rows, (value as ArrayValueObject).getRowCount());
    columns = Math.max(columns, (value as ArrayValueObject).getColumnCount());
  }
  return refuseCells(rows * columns);
}

function refuseCells(cells: number): string | undefined {
  if (!(cells > MOST_CELLS)) return undefined;
  const [asked, most] = [cells, MOST_CELLS].map((count) => count.toLocaleString("en-GB"));
  return `The formula asks for ${asked} cells; at most ${most} are possible in one array.`;
}

function refuseText([text, times]: Values): string | undefined {
  const length = text && !text.isArray() ? String(text.getValue()).length * number(times) : 0;
  return length > MOST_CHARACTERS ? "REPT would make a text of more than 32,767 characters." : undefined;
}

function limit(executor: BaseFunction): void {
  const refuse = REFUSALS.get(String(executor.name));
  if (refuse === undefined) return;
  const calculate = executor.calculate.bind(executor);
  executor.calculate = (...values) => {
    const refusal = refuse(values);
    return refusal === undefined ? calculate(...values) : errorValue("#VALUE!", refusal);
  };
}

/** A size as an argument; where it is none the function itself will say so. */
function number(value: BaseValueObject | undefined): number {
  const single = value?.isArray() ? (value as ArrayValueObject).getFirstCell() : value;
  const size = single === undefined || single.isNull() ? 1 : Math.abs(Number(single.getValue()));
  return Number.isNaN(size) ? 1 : size;
}

let referencesLimited = false;

/** References are made all over the engine: their one way to their cells is guarded, once. */
function limitReferences(): void {
  if (referencesLimited) return;
  referencesLimited = true;
  // eslint-disable-next-line @typescript-eslint/unbound-method -- called with its own reference below
  const { iterator } = BaseReferenceObject.prototype;
  BaseReferenceObject.prototype.iterator = function (callback) {
    const { startRow, endRow, startColumn, endColumn } = this.getRangePosition();
    const refusal = refuseCells((endRow - startRow + 1) * (endColumn - startColumn + 1));
    if (refusal !== undefined) throw new Refusal(refusal);
    return iterator.call(this, callback);
  };
}
