/** Columns and rows of a table sheet, written by key and metric, as the description wants them. */
import type { Cell } from "../../functions/contract.js";
import type { ColumnDescription, ComputedColumn } from "../contract.js";
import type { Measure, SheetUnits } from "./sheet-units.js";

/** A column whose unit follows the book's where it measures something. */
export type Column<Key extends string = string> = Omit<ColumnDescription, "key" | "header"> & {
  readonly key: Key;
  /** The key where absent. */
  readonly header?: string;
  readonly measure?: Measure;
};

export type Computed = Column & Pick<ComputedColumn, "formula" | "grade">;

/** A row by key, in metric units; what is left out is an empty cell. */
export type Row<Key extends string> = Readonly<Partial<Record<Key, Cell>>>;

type Rest = Omit<Column, "key" | "group" | "width">;

export function column<Key extends string>(key: Key, group: string, width: number, rest: Rest = {}): Column<Key> {
  return { key, group, width, ...rest };
}

/** A typed column that is hidden at first. */
export function foldedColumn<Key extends string>(key: Key, group: string, width: number, rest: Rest = {}): Column<Key> {
  return column(key, group, width, { folded: true, ...rest });
}

export function describe({ measure, range, ...rest }: Column, units: SheetUnits): ColumnDescription {
  return {
    ...rest,
    header: rest.header ?? rest.key,
    ...(measure === undefined ? {} : { unit: units.label(measure) }),
    ...(range === undefined ? {} : { range: units.range(range, measure) }),
  };
}

export function describeComputed({ formula, grade, ...rest }: Computed, units: SheetUnits): ComputedColumn {
  return { ...describe(rest, units), formula, ...(grade === undefined ? {} : { grade }) };
}

/** Rows as cells in the order of the columns, their numbers in the book's units. */
export function cellsOf<Key extends string>(
  columns: readonly Column<Key>[],
  rows: readonly Row<Key>[],
  units: SheetUnits,
): Cell[][] {
  return rows.map((row) =>
    columns.map(({ key, measure, plainWhere }) => {
      const cell = row[key] ?? null;
      const isPlain = plainWhere !== undefined && row[plainWhere.key as Key] === plainWhere.is;
      return measure !== undefined && !isPlain && typeof cell === "number" ? units.from(measure, cell) : cell;
    }),
  );
}
