/**
 * The one way from a function of single values to a worksheet function: ranges in, spill out, blanks, numbers as text,
 * units, errors through, and one bad cell never spoils another.
 */
import type { Band } from "../core/planck/band.js";
import { beginCall, numbersFor } from "./arena.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input, Quantity } from "./contract.js";
import { isCellError } from "./contract.js";
import type { Prepared } from "./prepare.js";
import { faultOfOurs, prepare, thrownCell } from "./prepare.js";
import { readTexts } from "./read.js";
import { fill, numbersGrid, put } from "./spill.js";
import { fromSI, unitOf } from "./units.js";
import type { Unit, Units } from "./units.js";

/** The values of one cell's arguments, in SI. */
export interface Values {
  /** A required number, or one with a default. */
  readonly number: (name: string) => number;
  /** A number that may be absent. */
  readonly optional: (name: string) => number | undefined;
  readonly text: (name: string) => string;
  readonly band: () => Band;
  readonly units: Units;
}

/** A column for the block form: one number for all cells or one a cell, SI; NaN is "not given". */
export type BlockColumn = number | Float64Array;

type Head = Omit<FunctionSpec, "evaluate" | "shape">;

/** A function whose result has the shape of its arguments. */
export interface CellsDefinition extends Head {
  /** Quantity of the result, which decides its unit; where it hangs on what a cell asks for, told from the cell. */
  readonly result: Quantity | ((values: Values) => Quantity);
  /** One cell. May throw the core's error. `whole` are the arguments that are taken whole, as they came. */
  readonly cell: (values: Values, whole: unknown) => number | string;
  /** Reads the arguments that are taken whole, once a call; an error cell stands for all. May throw the core's error. */
  readonly whole?: (inputs: readonly Input[], units: Units) => unknown;
  /** Many cells of one band at once: NaN where `cell` has to say why there is none. */
  readonly block?: (column: (name: string) => BlockColumn, band: Band, count: number) => Float64Array;
}

/** A function that gives a row of results for each row of its arguments. */
export interface RowsDefinition extends Head {
  readonly results: readonly Quantity[];
  readonly row: (values: Values, whole: unknown) => readonly (number | string)[];
  readonly whole?: (inputs: readonly Input[], units: Units) => unknown;
}

export const UNITS_ARGUMENT: ArgumentSpec = {
  name: "units",
  quantity: "text",
  help: "C for °C, K and m; F for °F and ft, differences in °F without the offset",
  optional: true,
  default: "C",
  choices: ["C", "F"],
};

export function defineCells(definition: CellsDefinition): FunctionSpec {
  return { ...head(definition), shape: "cells", evaluate: guarded((inputs) => evaluateCells(definition, inputs)) };
}

export function defineRows(definition: RowsDefinition): FunctionSpec {
  return { ...head(definition), shape: "rows", evaluate: guarded((inputs) => evaluateRows(definition, inputs)) };
}

/** A function that never throws: what was not foreseen becomes one cell that asks for a report. */
export function guarded(evaluate: FunctionSpec["evaluate"]): FunctionSpec["evaluate"] {
  return (inputs) => {
    beginCall();
    try {
      return evaluate(inputs);
    } catch (error) {
      return [[faultOfOurs(error)]];
    }
  };
}

function head({ name, topic, summary, returns, args, example, sources }: Head): Head {
  return { name, topic, summary, returns, args, example, sources };
}

/** The systems of units that a call names: as a rule one; a column of them may name both. */
export function unitsOf(args: readonly ArgumentSpec[], inputs: readonly Input[]): Units[] {
  const position = args.indexOf(UNITS_ARGUMENT);
  if (position < 0) return ["C"];
  const { values } = readTexts(UNITS_ARGUMENT, inputs[position], unitOf("text", "C"));
  const named = new Set(values.filter((value): value is Units => value === "C" || value === "F"));
  return named.size === 0 ? ["C"] : [...named];
}

/** A message where there are more arguments than the function takes. */
export function tooMany({ name, args }: Head, inputs: readonly Input[]): CellError | undefined {
  if (inputs.length <= args.length) return undefined;
  return {
    error: "#VALUE!",
    message: `GREY.${name} takes at most ${args.length} arguments; ${inputs.length} were given.`,
  };
}

function valuesAt(prepared: Prepared): { values: Values; move: (cell: number) => void } {
  let cell = 0;
  const number = (name: string): number => {
    const column = prepared.numbers.get(name);
    return typeof column === "object" ? (column[cell] ?? NaN) : (column ?? NaN);
  };
  const values: Values = {
    number,
    optional: (name) => {
      const value = number(name);
      return Number.isNaN(value) ? undefined : value;
    },
    text: (name) => prepared.texts.get(name)?.(cell) ?? "",
    band: () => prepared.bandAt(cell),
    units: prepared.units,
  };
  return {
    values,
    move: (to) => {
      cell = to;
    },
  };
}

/** Works out every cell, mixed units one system at a time. */
function inUnits(definition: Head, inputs: readonly Input[], work: (prepared: Prepared) => Cell[][]): Grid {
  const excess = tooMany(definition, inputs);
  if (excess) return [[excess]];
  const [first = "C", second] = unitsOf(definition.args, inputs);
  const prepared = prepare(definition.args, inputs, first);
  if ("error" in prepared) return [[prepared]];
  const grid = work(prepared);
  if (!second) return grid;
  const other = prepare(definition.args, inputs, second);
  if ("error" in other) return [[other]];
  const units = other.texts.get("units");
  const { columns } = prepared.shape;
  const otherGrid = work(other);
  return grid.map((row, r) =>
    row.map((cell, c) =>
      units?.(r * columns + Math.min(c, columns - 1)) === second ? (otherGrid[r]?.[c] ?? null) : cell,
    ),
  );
}

function readWhole(
  definition: CellsDefinition | RowsDefinition,
  inputs: readonly Input[],
  prepared: Prepared,
): { value: unknown } | { fault: CellError } {
  try {
    const value = definition.whole?.(inputs, prepared.units);
    return isCellError(value) ? { fault: value } : { value };
  } catch (error) {
    return { fault: thrownCell(error, definition.args, prepared, 0) };
  }
}

function evaluateCells(definition: CellsDefinition, inputs: readonly Input[]): Grid {
  return inUnits(definition, inputs, (prepared) => {
    const whole = readWhole(definition, inputs, prepared);
    if ("fault" in whole) return fill(prepared.shape, (cell) => prepared.faults.get(cell) ?? whole.fault);
    const { values, move } = valuesAt(prepared);
    const { result: quantity } = definition;
    const unit = (): Unit => unitOf(typeof quantity === "string" ? quantity : quantity(values), prepared.units);
    const single = (cell: number): Cell => {
      try {
        move(cell);
        const result = definition.cell(values, whole.value);
        return typeof result === "number" ? fromSI(result, unit()) : result;
      } catch (error) {
        return thrownCell(error, definition.args, prepared, cell);
      }
    };
    const block = definition.block && prepared.count > 1 ? runBlocks(definition.block, prepared) : undefined;
    const { faults } = prepared;
    if (!block) return fill(prepared.shape, (cell) => faults.get(cell) ?? single(cell));
    const grid = numbersGrid(block, prepared.shape, unit());
    for (const [cell, fault] of faults) put(grid, prepared.shape, cell, fault);
    for (let cell = 0; cell < block.length; cell++) {
      if (Number.isNaN(block[cell]!) && !faults.has(cell)) put(grid, prepared.shape, cell, single(cell));
    }
    return grid;
  });
}

/** The block form, a band at a time where the band varies by cell. */
function runBlocks(block: NonNullable<CellsDefinition["block"]>, prepared: Prepared): Float64Array {
  const { numbers, count } = prepared;
  if (prepared.band) return block((name) => numbers.get(name) ?? NaN, prepared.band, count);
  const cellsOf = new Map<string, number[]>();
  for (let cell = 0; cell < count; cell++) {
    const { key } = prepared.bandAt(cell);
    const cells = cellsOf.get(key);
    if (cells) cells.push(cell);
    else cellsOf.set(key, [cell]);
  }
  const result = numbersFor(count);
  for (const cells of cellsOf.values()) {
    const gather = (name: string): BlockColumn => {
      const column = numbers.get(name) ?? NaN;
      return typeof column === "number" ? column : Float64Array.from(cells, (cell) => column[cell] ?? NaN);
    };
    const part = block(gather, prepared.bandAt(cells[0] ?? 0), cells.length);
    cells.forEach((cell, i) => {
      result[cell] = part[i] ?? NaN;
    });
  }
  return result;
}

function evaluateRows(definition: RowsDefinition, inputs: readonly Input[]): Grid {
  return inUnits(definition, inputs, (prepared) => {
    const units = definition.results.map((quantity) => unitOf(quantity, prepared.units));
    const every = (cell: Cell): Cell[] => definition.results.map(() => cell);
    if (prepared.shape.columns > 1) {
      const message = `GREY.${definition.name} takes single values or one column, a row for each result; a range here has ${prepared.shape.columns} columns.`;
      return [every({ error: "#VALUE!", message })];
    }
    const whole = readWhole(definition, inputs, prepared);
    const { values, move } = valuesAt(prepared);
    return Array.from({ length: prepared.count }, (_, cell): Cell[] => {
      const fault = prepared.faults.get(cell) ?? ("fault" in whole ? whole.fault : undefined);
      if (fault) return every(fault);
      try {
        move(cell);
        const row = definition.row(values, "value" in whole ? whole.value : undefined);
        return row.map((result, i) =>
          typeof result === "number" ? fromSI(result, units[i] ?? unitOf("number", "C")) : result,
        );
      } catch (error) {
        return every(thrownCell(error, definition.args, prepared, cell));
      }
    });
  });
}
