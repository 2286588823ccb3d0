import { GreybodyError } from "../core/errors.js";
import type { Band } from "../core/planck/band.js";
import { DEFAULT_BAND } from "../core/planck/band.js";
import { numbersFor } from "./arena.js";
import type { BandColumn } from "./bands.js";
import { readBands } from "./bands.js";
import type { ArgumentSpec, Cell, CellError, Input } from "./contract.js";
import { errorCell } from "./messages.js";
import type { Column, NumberColumn, TextColumn } from "./read.js";
import { gridOf, readNumbers, readTexts } from "./read.js";
import { unitOf } from "./units.js";
import type { Unit, Units } from "./units.js";

export interface Shape {
  readonly rows: number;
  readonly columns: number;
}

/** The arguments of one call, read and brought to one shape. */
export interface Prepared {
  readonly shape: Shape;
  readonly count: number;
  readonly units: Units;
  /** Numbers in SI by argument, one for all cells or one a cell; NaN is "not given". */
  readonly numbers: ReadonlyMap<string, number | Float64Array>;
  readonly texts: ReadonlyMap<string, (cell: number) => string | undefined>;
  readonly bandAt: (cell: number) => Band;
  /** The one band of the call, or undefined where it varies. */
  readonly band: Band | undefined;
  /** Cells that have no answer already, by the first argument that stands against it. */
  readonly faults: ReadonlyMap<number, CellError>;
  /** The user's own cell of an argument. */
  readonly given: (argument: number, cell: number) => Cell;
}

const sizeInWords = ({ rows, columns }: Shape): string => `${rows} × ${columns}`;
const counts = (rows: number, columns: number): string =>
  `${rows} ${rows === 1 ? "row" : "rows"} by ${columns} ${columns === 1 ? "column" : "columns"}`;

/** The shape all arguments spread to, or the two that do not fit. */
function commonShape(specs: readonly ArgumentSpec[], shapes: readonly Shape[]): Shape | CellError {
  const rows = Math.max(...shapes.map((shape) => shape.rows));
  const columns = Math.max(...shapes.map((shape) => shape.columns));
  const tallest = shapes.findIndex((shape) => shape.rows === rows && rows > 1);
  const widest = shapes.findIndex((shape) => shape.columns === columns && columns > 1);
  for (const [i, shape] of shapes.entries()) {
    const rowsFit = shape.rows === rows || shape.rows === 1;
    const columnsFit = shape.columns === columns || shape.columns === 1;
    if (rowsFit && columnsFit) continue;
    const other = rowsFit ? widest : tallest;
    const one = shapes[other] ?? shape;
    const message =
      `${specs[other]?.name ?? ""} has ${counts(one.rows, one.columns)}, ${specs[i]?.name ?? ""} ${counts(shape.rows, shape.columns)}: ` +
      "give ranges of one shape, one row, one column, or single values.";
    return { error: "#VALUE!", message };
  }
  return { rows, columns };
}

/** Index into a column's own cells for each cell of the common shape; undefined where they are the same. */
function spread(own: Shape, shape: Shape): ((cell: number) => number) | undefined {
  if (sizeInWords(own) === sizeInWords(shape)) return undefined;
  if (own.rows === 1 && own.columns === 1) return () => 0;
  const { columns } = shape;
  if (own.columns === 1) return own.rows === 1 ? () => 0 : (cell) => Math.floor(cell / columns);
  return (cell) => cell % columns;
}

const at = (own: Shape, shape: Shape): ((cell: number) => number) => spread(own, shape) ?? ((cell) => cell);

function addFaults(
  column: Column<unknown>,
  shape: Shape,
  count: number,
  into: Map<number, CellError>,
  isSought: (cell: number) => boolean,
): void {
  if (!column.faults) return;
  const index = at(column, shape);
  for (let cell = 0; cell < count; cell++) {
    const fault = column.faults.get(index(cell));
    if (fault && !into.has(cell) && !isSought(cell)) into.set(cell, fault);
  }
}

function spreadNumbers(column: NumberColumn, shape: Shape, count: number): number | Float64Array {
  const index = spread(column, shape);
  if (column.values.length === 1) return column.values[0] ?? NaN;
  if (!index) return column.values;
  const values = numbersFor(count);
  for (let cell = 0; cell < count; cell++) values[cell] = column.values[index(cell)] ?? NaN;
  return values;
}

const isText = (spec: ArgumentSpec): boolean => spec.quantity === "text";

/**
 * Reads every argument and brings them to one shape; a CellError where the shapes do not fit.
 * Arguments that are taken whole are passed over: whoever wants them reads them himself.
 */
export function prepare(specs: readonly ArgumentSpec[], inputs: readonly Input[], units: Units): Prepared | CellError {
  const numberColumns = new Map<string, NumberColumn>();
  const textColumns = new Map<string, TextColumn>();
  let bands: BandColumn | undefined;
  const broadcast = specs.filter((spec) => spec.whole !== true);
  const read = broadcast.map((spec): Column<unknown> => {
    const input = inputs[specs.indexOf(spec)];
    const unit = unitOf(spec.quantity, units);
    if (spec.quantity === "band") return (bands = readBands(input));
    if (isText(spec)) {
      const column = readTexts(spec, input, unit);
      textColumns.set(spec.name, column);
      return column;
    }
    const column = readNumbers(spec, input, unit, unitOf(spec.quantity, "C"));
    numberColumns.set(spec.name, column);
    return column;
  });
  const shape = commonShape(broadcast, read);
  if ("error" in shape) return shape;
  const count = shape.rows * shape.columns;
  const texts = new Map(
    [...textColumns].map(([name, column]) => {
      const index = at(column, shape);
      return [name, (cell: number) => column.values[index(cell)]] as const;
    }),
  );
  const faults = new Map<number, CellError>();
  for (const [i, column] of read.entries()) {
    const { name = "", soughtBy } = broadcast[i] ?? {};
    const sought = soughtBy === undefined ? undefined : texts.get(soughtBy);
    addFaults(column, shape, count, faults, (cell) => sought?.(cell) === name);
  }
  const bandValues = bands?.values ?? [DEFAULT_BAND];
  const bandIndex = bands ? at(bands, shape) : () => 0;
  const first = bandValues.find((band) => band !== undefined) ?? DEFAULT_BAND;
  return {
    shape,
    count,
    units,
    numbers: new Map([...numberColumns].map(([name, column]) => [name, spreadNumbers(column, shape, count)])),
    texts,
    bandAt: (cell) => bandValues[bandIndex(cell)] ?? DEFAULT_BAND,
    band: bandValues.every((band) => band === undefined || band.key === first.key) ? first : undefined,
    faults,
    given: (argument, cell) => {
      const grid = gridOf(inputs[argument]);
      const own = { rows: grid.length, columns: grid[0]?.length ?? 0 };
      const k = at(own, shape)(cell);
      return grid[Math.floor(k / own.columns)]?.[k % own.columns] ?? null;
    },
  };
}

export function faultOfOurs(error: unknown): CellError {
  return {
    error: "#VALUE!",
    message: `A fault of ours, please report it: ${error instanceof Error ? error.message : String(error)}`,
  };
}

/** What a cell shows for whatever was thrown while it was worked out. */
export function thrownCell(
  error: unknown,
  specs: readonly ArgumentSpec[],
  prepared: Prepared,
  cell: number,
): CellError {
  if (!(error instanceof GreybodyError)) return faultOfOurs(error);
  const position = specs.findIndex((spec) => spec.name === error.argument);
  const spec = specs[position];
  const unit: Unit = unitOf(spec?.quantity ?? "number", prepared.units);
  const given = spec && spec.whole !== true ? prepared.given(position, cell) : undefined;
  return errorCell(error, spec, given, unit, prepared.units);
}
