import type { Cell, CellError, FunctionSpec, Grid, Input, Quantity } from "../../src/functions/contract.js";
import { findFunction } from "../../src/functions/catalogue.js";

/** Arguments by their names, in the metric sheet. */
export type Given = Readonly<Record<string, Input>>;

/** A call and what comes back, taken from outside: `from` says where. One row of cells, or several. */
export interface Case {
  readonly given: Given;
  readonly expected: readonly Cell[] | Grid;
  readonly tolerance: number;
  readonly from: string;
  /** Units of the results where they are others than the fixture's. */
  readonly results?: readonly Quantity[];
}

/** What else must be given for an end of a range to be reached, and the refusal met there where there is one. */
export interface End {
  readonly given?: Given;
  readonly refused?: RegExp;
}

export interface Fixture {
  readonly name: string;
  /** Names, order and defaults in numbers, as they were laid down before the code; written out here, never read from it. */
  readonly design: string;
  /** The first gives every argument that has a range; the others differ in their values only. */
  readonly cases: readonly [Case, ...Case[]];
  /** Units of the results, in order, where they are numbers; the last holds for the rest. */
  readonly results: readonly Quantity[];
  /** A table with a header whose columns hold several quantities, each with its unit beside it: °F has a test of its own. */
  readonly mixed?: true;
  /** What else is given in tests of an argument that plays no part in the first case. */
  readonly around?: Readonly<Record<string, Given>>;
  readonly ends?: Readonly<Record<string, { readonly low?: End; readonly high?: End }>>;
}

/** The first case, changed so that the argument plays a part. */
export const baseFor = ({ cases, around }: Fixture, argument: string): Given => ({
  ...cases[0].given,
  ...around?.[argument],
});

export function specOf(name: string): FunctionSpec {
  const spec = findFunction(name);
  if (!spec) throw new Error(`There is no function ${name}.`);
  return spec;
}

/** Calls a function with arguments by name; those not named are left out. */
export function call(spec: FunctionSpec, given: Given): Grid {
  const unknown = Object.keys(given).filter((name) => !spec.args.some((arg) => arg.name === name));
  if (unknown.length > 0) throw new Error(`${spec.name} has no argument ${unknown.join(", ")}.`);
  return spec.evaluate(spec.args.map((arg) => given[arg.name]));
}

/** Metric to US customary: °C to °F, K to °F without the 32, m to ft; everything else as it is. */
export function inFahrenheit(quantity: Quantity, value: number): number {
  if (quantity === "temperature") return value * 1.8 + 32;
  if (quantity === "difference") return value * 1.8;
  if (quantity === "length") return value / 25.4;
  if (quantity === "speed") return value / 0.44704;
  return quantity === "distance" ? value / 0.3048 : value;
}

/** A limit of the core in the metric sheet. */
export function metric(quantity: Quantity, si: number): number {
  if (quantity === "temperature") return Math.round((si - 273.15) * 1e9) / 1e9;
  if (quantity === "percent") return si * 100;
  if (quantity === "length" || quantity === "angle") return Number((si * 1000).toPrecision(13));
  return quantity === "pressure" ? si / 1000 : si;
}

/** An argument's cells, each changed where it is a number; text and everything else stays. */
function mapNumbers(input: Input, change: (value: number, column: number) => Cell): Input {
  const each = (cell: Cell, column: number): Cell => (typeof cell === "number" ? change(cell, column) : cell);
  return Array.isArray(input) ? (input as Grid).map((row) => row.map(each)) : each(input as Cell, 0);
}

/** Every number among the arguments changed, by what it means. */
export function mapGiven(spec: FunctionSpec, given: Given, change: (value: number, quantity: Quantity) => Cell): Given {
  return Object.fromEntries(
    spec.args.map((arg) => [
      arg.name,
      mapNumbers(given[arg.name], (value, column) => change(value, arg.columns?.[column]?.quantity ?? arg.quantity)),
    ]),
  );
}

const isGrid = (expected: Case["expected"]): expected is Grid => Array.isArray(expected[0]);
export const gridOfCase = ({ expected }: Case): Grid => (isGrid(expected) ? expected : [expected]);

/** An error that comes in as an argument. */
export const passing: CellError = { error: "#REF!", message: "from elsewhere" };

/** Fails unless the cells are those expected, numbers to a tolerance. */
export function expectCells(found: Grid, expected: Grid, tolerance: number): void {
  const shape = (grid: Grid): number[] => grid.map((row) => row.length);
  if (JSON.stringify(shape(found)) !== JSON.stringify(shape(expected))) expect(found).toEqual(expected);
  for (const [r, row] of expected.entries()) {
    for (const [c, cell] of row.entries()) {
      const own = found[r]?.[c];
      if (typeof cell === "number" && typeof own === "number") {
        expect(Math.abs(own - cell)).toBeLessThanOrEqual(tolerance);
      } else expect(own).toEqual(cell);
    }
  }
}

/** The error in the first cell of a result; undefined where it is none. */
export function errorIn(grid: Grid): { error: string; message: string } | undefined {
  const cell = grid[0]?.[0];
  return typeof cell === "object" && cell !== null ? cell : undefined;
}
