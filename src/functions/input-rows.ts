import { GreybodyError } from "../core/errors.js";
import type { ArgumentSpec, CellError, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { errorCell } from "./messages.js";
import { faultOfOurs } from "./prepare.js";
import { gridOf, isBlank, readNumbers } from "./read.js";
import type { NumberColumn } from "./read.js";
import { unitOf } from "./units.js";
import type { Units } from "./units.js";

/** Rows of a range in which each column is an argument of its own, in SI. */
export interface InputRows {
  readonly rows: number;
  /** Columns that the range has; those beyond are not given. */
  readonly columns: number;
  /** The numbers of a row by the place of their column, NaN where nothing is given. */
  readonly row: (row: number) => number[];
  /** The number of a row by the name of its column, NaN where nothing is given. */
  readonly value: (row: number, name: string) => number;
  /** What stands against a row, from its leftmost column on. */
  readonly fault: (row: number) => CellError | undefined;
}

const isAbsent = (input: Input): boolean => !Array.isArray(input) && (input === undefined || isBlank(input as null));

/**
 * Reads a range with one column for each of `spec.columns`, in that order, at least `least` of them.
 * A column is read by its own argument: range, unit, default, what 0 means; whether it must be given is told by `optional`.
 * A CellError where the range has no such form; a row that cannot be read has its own fault.
 */
export function readInputRows(spec: ArgumentSpec, input: Input, units: Units, least: number): InputRows | CellError {
  const { columns = [] } = spec;
  if (isAbsent(input)) return { error: "#VALUE!", message: `${spec.name} is not given. Needed: ${spec.help}.` };
  const grid = gridOf(input);
  const width = grid[0]?.length ?? 0;
  const [[only = null] = []] = grid;
  if (grid.length === 1 && width === 1 && isCellError(only)) return only;
  if (width < least || width > columns.length) {
    const names = columns.map((column, i) => (i < least ? column.name : `[${column.name}]`)).join(" | ");
    const count = `${width} ${width === 1 ? "column" : "columns"}`;
    return {
      error: "#VALUE!",
      message: `${spec.name}: ${count} cannot be. Allowed: ${least} to ${columns.length} columns: ${names}.`,
    };
  }
  const read = columns.map((column, c) => readColumn(column, grid, c, units));
  const numberAt = (column: number, row: number): number => read[column]?.values[row] ?? NaN;
  return {
    rows: grid.length,
    columns: width,
    row: (row) => columns.map((_, c) => numberAt(c, row)),
    value: (row, name) =>
      numberAt(
        columns.findIndex((column) => column.name === name),
        row,
      ),
    fault: (row) => {
      for (const column of read) {
        const fault = column.faults?.get(row);
        if (fault) return fault;
      }
      return undefined;
    },
  };
}

function readColumn(column: ArgumentSpec, grid: Grid, c: number, units: Units): NumberColumn {
  const cells = grid.map((row) => [row[c] ?? null]);
  return readNumbers(column, cells, unitOf(column.quantity, units), unitOf(column.quantity, "C"));
}

/** What a row shows for whatever was thrown while it was worked out: the cell of the column meant, as it was typed. */
export function rowError(error: unknown, spec: ArgumentSpec, input: Input, row: number, units: Units): CellError {
  if (!(error instanceof GreybodyError)) return faultOfOurs(error);
  const place = (spec.columns ?? []).findIndex((column) => column.name === error.argument);
  const column = spec.columns?.[place];
  const grid = gridOf(input);
  const cells = grid[grid.length === 1 ? 0 : row];
  // A column that the range does not have was not typed: the message then says what is needed.
  const given = column && place < (cells?.length ?? 0) ? (cells?.[place] ?? null) : undefined;
  return errorCell(error, column, given, unitOf(column?.quantity ?? "number", units), units);
}
