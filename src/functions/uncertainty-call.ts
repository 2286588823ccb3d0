/** Reads what UNCERTAINTY, BUDGET and their like are called with: rows of inputs, and what is uncertain about them. */
import { GreybodyError } from "../core/errors.js";
import type { Band } from "../core/planck/band.js";
import { INPUT_NAMES } from "../core/uncertainty/inputs.js";
import type { Distribution, InputName, InputUncertainty, UncertainReading } from "../core/uncertainty/inputs.js";
import { readBands } from "./bands.js";
import type { ArgumentSpec, Cell, CellError, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import type { Column } from "./read.js";
import { gridOf, isNoWord, readNumbers, readTexts } from "./read.js";
import { readInputRows, rowError } from "./input-rows.js";
import type { InputRows } from "./input-rows.js";
import { UNITS_ARGUMENT } from "./lift.js";
import { errorCell } from "./messages.js";
import { faultOfOurs } from "./prepare.js";
import { readCorrelations } from "./correlations.js";
import { settingsFrom } from "./settings-arguments.js";
import { singleUnits } from "./single-units.js";
import {
  CORRELATIONS_ARGUMENT,
  DISTRIBUTIONS_ARGUMENT,
  FREEDOM_ARGUMENT,
  INPUTS_ARGUMENT,
  LEAST_COLUMNS,
  UNCERTAINTIES_ARGUMENT,
} from "./uncertainty-arguments.js";
import { unitOf } from "./units.js";
import type { Units } from "./units.js";

/** One reading of a call, in SI. */
export interface UncertaintyRow {
  readonly reading: UncertainReading;
  readonly band: Band;
  /** A number that is no range: coverage, draws. */
  readonly number: (name: string) => number;
}

export interface UncertaintyCall {
  readonly rows: number;
  readonly units: Units;
  /** What a row has to work with, or what stands against it. */
  readonly row: (row: number) => UncertaintyRow | CellError;
  /** What a row shows for whatever was thrown while it was worked out. */
  readonly thrown: (error: unknown, row: number) => CellError;
}

const invalid = (message: string): CellError => ({ error: "#VALUE!", message });
const counted = (count: number, what: string): string => `${count} ${what}${count === 1 ? "" : "s"}`;

/** One value a column of the uncertainties, from a row, a column, or one cell for all. */
function perColumn<Value>(
  { values }: Column<ArrayLike<Value>>,
  spec: ArgumentSpec,
  width: number,
): Value[] | CellError {
  const { length } = values;
  if (length !== 1 && length !== width) {
    return invalid(
      `${spec.name}: ${counted(length, "cell")} cannot be. Allowed: one for all, or one for each of the ${width} columns of uncertainties.`,
    );
  }
  return Array.from({ length: width }, (_, c) => values[length === 1 ? 0 : c]!);
}

/** A range of one row or one column as one row. */
function lineOf(spec: ArgumentSpec, input: Input): Cell[][] | CellError {
  const grid = gridOf(input);
  if (grid.length > 1 && (grid[0]?.length ?? 0) > 1)
    return invalid(
      `${spec.name}: ${grid.length} × ${grid[0]?.length ?? 0} cells cannot be. Allowed: one row or one column.`,
    );
  return [grid.flat()];
}

function readDistributions(input: Input, width: number): Distribution[] | CellError {
  const line = lineOf(DISTRIBUTIONS_ARGUMENT, input);
  if (isCellError(line)) return line;
  const column = readTexts(DISTRIBUTIONS_ARGUMENT, line, unitOf("text", "C"));
  const [fault] = column.faults?.values() ?? [];
  return fault ?? (perColumn(column, DISTRIBUTIONS_ARGUMENT, width) as Distribution[] | CellError);
}

function readFreedom(input: Input, width: number): number[] | CellError {
  const line = lineOf(FREEDOM_ARGUMENT, input);
  if (isCellError(line)) return line;
  const column = readNumbers(FREEDOM_ARGUMENT, line, unitOf("number", "C"), unitOf("number", "C"));
  const [fault] = column.faults?.values() ?? [];
  return fault ?? perColumn(column, FREEDOM_ARGUMENT, width);
}

/** The uncertainties of a row as the core takes them, by name. */
export function uncertaintiesFrom(
  row: readonly number[],
  distributions: readonly Distribution[],
  freedom: readonly number[],
): Partial<Record<InputName, InputUncertainty>> {
  const entries = INPUT_NAMES.map((name, c) => {
    const stated = row[c] ?? NaN;
    const degrees = freedom[c] ?? NaN;
    const distribution = distributions[c] ?? "normal";
    const known = Number.isNaN(degrees) ? {} : { freedom: degrees };
    return [name, { stated: Number.isNaN(stated) ? 0 : stated, distribution, ...known }] as const;
  });
  return Object.fromEntries(entries);
}

/** The values of an argument that is given once or once a row. */
function readSpread(
  spec: ArgumentSpec,
  input: Input,
  units: Units,
  rows: number,
): Column<ArrayLike<unknown>> | CellError {
  const column =
    spec.quantity === "band"
      ? readBands(input)
      : readNumbers(spec, input, unitOf(spec.quantity, units), unitOf(spec.quantity, "C"));
  if (column.values.length === 1 || (column.columns === 1 && column.rows === rows)) return column;
  const each = rows === 1 ? "" : `, or one column with a row for each of the ${rows} rows of inputs`;
  return invalid(`${spec.name} is ${column.rows} × ${column.columns} cells: give one value${each}.`);
}

const argument = (args: readonly ArgumentSpec[], inputs: readonly Input[], spec: ArgumentSpec): Input =>
  inputs[args.indexOf(spec)];

/** The rows of inputs and of uncertainties, one for all or one each. */
function readRows(
  args: readonly ArgumentSpec[],
  inputs: readonly Input[],
  units: Units,
): { readings: InputRows; uncertainties: InputRows } | CellError {
  const read = (spec: ArgumentSpec): InputRows | CellError =>
    readInputRows(spec, argument(args, inputs, spec), units, LEAST_COLUMNS);
  const readings = read(INPUTS_ARGUMENT);
  if (isCellError(readings)) return readings;
  const uncertainties = read(UNCERTAINTIES_ARGUMENT);
  if (isCellError(uncertainties)) return uncertainties;
  if (uncertainties.rows !== 1 && uncertainties.rows !== readings.rows) {
    return invalid(
      `inputs has ${counted(readings.rows, "row")}, uncertainties ${uncertainties.rows}: give one row of uncertainties for all, or one each.`,
    );
  }
  return { readings, uncertainties };
}

/**
 * Reads a call; `args` are the function's own, of which these are known: those of uncertainty-arguments.ts, band, units, and
 * numbers that are given once or once a row. A CellError where the whole call has no answer.
 */
export function readUncertaintyCall(
  args: readonly ArgumentSpec[],
  inputs: readonly Input[],
): UncertaintyCall | CellError {
  const units = singleUnits(args, inputs);
  if (isCellError(units)) return units;
  const both = readRows(args, inputs, units);
  if (isCellError(both)) return both;
  const { readings, uncertainties } = both;
  const { columns: width } = uncertainties;
  const distributions = readDistributions(argument(args, inputs, DISTRIBUTIONS_ARGUMENT), width);
  if (isCellError(distributions)) return distributions;
  const freedom = readFreedom(argument(args, inputs, FREEDOM_ARGUMENT), width);
  if (isCellError(freedom)) return freedom;
  const correlations = readCorrelations(argument(args, inputs, CORRELATIONS_ARGUMENT));
  if (isCellError(correlations)) return correlations;
  const columns = new Map<string, Column<ArrayLike<unknown>>>();
  for (const spec of args) {
    if (spec.whole === true || spec === UNITS_ARGUMENT) continue;
    const column = readSpread(spec, argument(args, inputs, spec), units, readings.rows);
    if (isCellError(column)) return column;
    columns.set(spec.quantity === "band" ? "band" : spec.name, column);
  }
  return {
    rows: readings.rows,
    units,
    row: (row) => {
      const place = uncertainties.rows === 1 ? 0 : row;
      const at = (name: string): unknown => {
        const values = columns.get(name)?.values ?? [];
        return values[values.length === 1 ? 0 : row];
      };
      const fault = readings.fault(row) ?? uncertainties.fault(place) ?? faultIn(columns.values(), row);
      if (fault) return fault;
      return {
        reading: {
          apparent: readings.value(row, "apparent"),
          settings: settingsFrom((name) => readings.value(row, name)),
          uncertainties: uncertaintiesFrom(uncertainties.row(place), distributions, freedom),
          correlations,
        },
        band: at("band") as Band,
        number: (name) => at(name) as number,
      };
    },
    thrown: (error, row) => thrownRow(error, args, inputs, row, units),
  };
}

function faultIn(columns: Iterable<Column<unknown>>, row: number): CellError | undefined {
  for (const { rows, faults } of columns) {
    const fault = faults?.get(rows === 1 ? 0 : row);
    if (fault) return fault;
  }
  return undefined;
}

function thrownRow(
  error: unknown,
  args: readonly ArgumentSpec[],
  inputs: readonly Input[],
  row: number,
  units: Units,
): CellError {
  if (!(error instanceof GreybodyError)) return faultOfOurs(error);
  const { argument: name } = error;
  for (const spec of [INPUTS_ARGUMENT, UNCERTAINTIES_ARGUMENT]) {
    if (spec.columns?.some((column) => column.name === name)) {
      return rowError(error, spec, argument(args, inputs, spec), row, units);
    }
  }
  const spec = args.find((one) => one.name === name);
  const cells = spec === undefined || spec.whole === true ? [] : gridOf(argument(args, inputs, spec)).flat();
  const given = cells[cells.length === 1 ? 0 : row];
  return errorCell(
    error,
    spec,
    isNoWord(given ?? null) ? undefined : given,
    unitOf(spec?.quantity ?? "number", units),
    units,
  );
}
