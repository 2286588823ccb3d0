import {
  BaseReferenceObject,
  type ArrayValueObject,
  type BaseValueObject,
  type IFunctionService,
} from "@univerjs/engine-formula";
import { errorValue } from "./values.js";

/** More cells in one array than this would exhaust the memory, and with it every other formula. */
export const MOST_CELLS = 5_000_000;
const MOST_CHARACTERS = 32_767;

/** What stops a formula on purpose; its message is shown to the person. */
export class Refusal extends Error {}

/** Functions that make an array as large as their widest and their tallest argument together. */
const BROADCASTING = ["PLUS", "MINUS", "MULTIPLY", "DIVIDED", "POWER", "CONCATENATE", "COMPARE", "IF"];
/** Functions that make an array from two numbers. */
const MAKING = ["SEQUENCE", "RANDARRAY", "MAKEARRAY", "MUNIT"];

/** Lets no engine function and no reference make an array that could not be held. */
export function limitSizes(functions: IFunctionService): void {
  for (const name of BROADCASTING) guard(functions, name, broadcastSize);
  for (const name of MAKING)
    guard(functions, name, (values) => number(values[0]) * (name === "MUNIT" ? number(values[0]) : number(values[1])));
  limitText(functions);
  limitReferences();
}

/** Rows and columns of the result where arguments of several shapes meet. */
export function broadcastSize(values: readonly BaseValueObject[]): number {
  let rows = 1;
  let columns = 1;
  for (const value of values) {
    if (!value.isArray()) continue;
    rows = Math.max(rows, (value as ArrayValueObject).getRowCount());
    columns = Math.max(columns, (value as ArrayValueObject).getColumnCount());
  }
  return rows * columns;
}

export function tooLarge(cells: number): string {
  return `The formula asks for ${cells.toLocaleString("en-GB")} cells; at most ${MOST_CELLS.toLocaleString("en-GB")} are possible in one array.`;
}

function guard(functions: IFunctionService, name: string, size: (values: readonly BaseValueObject[]) => number): void {
  const executor = functions.getExecutor(name);
  if (!executor) return;
  const calculate = executor.calculate.bind(executor);
  executor.calculate = (...values) => {
    const cells = size(values);
    return cells > MOST_CELLS ? errorValue("#VALUE!", tooLarge(cells)) : calculate(...values);
  };
}

function limitText(functions: IFunctionService): void {
  const executor = functions.getExecutor("REPT");
  if (!executor) return;
  const calculate = executor.calculate.bind(executor);
  executor.calculate = (...values) => {
    const [text, times] = values;
    const length = text && times && !text.isArray() ? String(text.getValue()).length * number(times) : 0;
    return length > MOST_CHARACTERS
      ? errorValue("#VALUE!", "REPT would make a text of more than 32,767 characters.")
      : calculate(...values);
  };
}

function number(value: BaseValueObject | undefined): number {
  const raw = value === undefined || value.isNull() ? 1 : Number(value.getValue());
  return Number.isFinite(raw) ? Math.abs(raw) : 1;
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
    const cells = (endRow - startRow + 1) * (endColumn - startColumn + 1);
    if (cells > MOST_CELLS) throw new Refusal(tooLarge(cells));
    return iterator.call(this, callback);
  };
}
