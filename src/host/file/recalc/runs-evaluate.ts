/** Works a run of equal formulas out as a column, by the functions themselves and without the engine. */
import type { Cell, FunctionSpec, Grid, Input } from "../../../functions/contract.js";
import { isCellError } from "../../../functions/contract.js";
import { plainMessage } from "../../plain-messages.js";
import type { Area } from "../formula/areas.js";
import type { Part } from "./runs-shape.js";

export type CellReader = (sheet: number, row: number, column: number) => Cell;

/** An area that a run reads: where in its first row, and whether it moves down with the rows. */
export interface RunArea {
  readonly area: Area;
  readonly startStep: 0 | 1;
  readonly endStep: 0 | 1;
}

/** One value for all rows, or one a row. */
type Column = { readonly one: Input } | { readonly many: readonly Cell[] };

/** Rows at a time: columns of this length stay near the processor. */
const CHUNK = 8192;

/** The results of a run, one a row; undefined where a function gives something else than one value a row. */
export function evaluateRun(
  part: Part,
  areas: readonly RunArea[],
  rows: number,
  specs: ReadonlyMap<string, FunctionSpec>,
  read: CellReader,
): Cell[] | undefined {
  const results: Cell[] = [];
  for (let from = 0; from < rows; from += CHUNK) {
    const count = Math.min(CHUNK, rows - from);
    const column = new Chunk(areas, from, count, specs, read).work(part);
    if (!column) return undefined;
    for (let i = 0; i < count; i++) results.push(shown(at(column, i)));
  }
  return results;
}

const at = (column: Column, row: number): Input => ("one" in column ? column.one : column.many[row]);

/** What a cell shows: of nothing, 0. */
function shown(value: Input): Cell {
  if (value === undefined || value === null) return 0;
  return typeof value === "object" && !isCellError(value) ? (value[0]?.[0] ?? 0) : value;
}

class Chunk {
  constructor(
    private readonly areas: readonly RunArea[],
    private readonly from: number,
    private readonly count: number,
    private readonly specs: ReadonlyMap<string, FunctionSpec>,
    private readonly read: CellReader,
  ) {}

  work(part: Part): Column | undefined {
    switch (part.kind) {
      case "literal":
        return { one: part.value };
      case "cell":
        return this.cells(part.place);
      case "range":
        // Only ever an argument of a call, which reads it itself.
        return undefined;
      case "call":
        return this.call(this.specs.get(part.name)!, part.args);
      case "blank":
        return this.blank(part);
      case "fallback": {
        const [value, instead] = [this.work(part.value), this.work(part.instead)];
        if (!value || !instead) return undefined;
        return this.map((i) => (isCellError(at(value, i)) ? single(at(instead, i)) : single(at(value, i))));
      }
    }
  }

  private cells(place: number): Column {
    const { area, startStep } = this.areas[place]!;
    const { sheet, startRow, startColumn } = area;
    if (startStep === 0) return { one: this.read(sheet, startRow, startColumn) };
    return this.map((i) => this.read(sheet, startRow + this.from + i, startColumn));
  }

  private blank({ cells, then, otherwise }: Part & { kind: "blank" }): Column | undefined {
    const tested = cells.map((cell) => this.work(cell)!);
    const [yes, no] = [this.work(then), this.work(otherwise)];
    if (!yes || !no) return undefined;
    return this.map((i) => {
      const values = tested.map((column) => single(at(column, i)));
      const error = values.find(isCellError);
      if (error) return error;
      return single(at(values.some((value) => value === null || value === "") ? yes : no, i));
    });
  }

  private call(spec: FunctionSpec, args: readonly Part[]): Column | undefined {
    const columns: (Column | ((row: number) => Grid))[] = [];
    let isByRow = false;
    for (const [i, arg] of args.entries()) {
      if (arg.kind === "range") {
        const { startStep, endStep } = this.areas[arg.place]!;
        isByRow ||= startStep !== 0 || endStep !== 0;
        columns.push(this.range(arg.place, startStep + endStep > 0));
        continue;
      }
      const column = this.work(arg);
      if (!column) return undefined;
      isByRow ||= "many" in column && spec.args[i]?.whole === true;
      columns.push(column);
    }
    if (isByRow) return this.byRow(spec, columns);
    const inputs = columns.map((column): Input => {
      if (typeof column === "function") return column(0);
      return "one" in column ? column.one : column.many.map((cell) => [cell]);
    });
    const result = spec.evaluate(inputs);
    if (result.length === 1 && result[0]?.length === 1) return { one: given(result[0][0]!) };
    if (result.length !== this.count || result[0]?.length !== 1) return undefined;
    return { many: result.map((row) => given(row[0]!)) };
  }

  private byRow(spec: FunctionSpec, columns: readonly (Column | ((row: number) => Grid))[]): Column | undefined {
    const many: Cell[] = [];
    for (let i = 0; i < this.count; i++) {
      const inputs = columns.map((column) => (typeof column === "function" ? column(i) : at(column, i)));
      const result = spec.evaluate(inputs);
      if (result.length !== 1 || result[0]?.length !== 1) return undefined;
      many.push(given(result[0][0]!));
    }
    return { many };
  }

  /** A range by row; one that does not move is read once. */
  private range(place: number, moves: boolean): (row: number) => Grid {
    let fixed: Grid | undefined;
    return (row) => (moves ? this.grid(place, row) : (fixed ??= this.grid(place, row)));
  }

  private grid(place: number, row: number): Grid {
    const { area, startStep, endStep } = this.areas[place]!;
    const { sheet, startColumn, endColumn } = area;
    const [first, last] = [area.startRow + startStep * (this.from + row), area.endRow + endStep * (this.from + row)];
    return Array.from({ length: last - first + 1 }, (_, r) =>
      Array.from({ length: endColumn - startColumn + 1 }, (_, c) => this.read(sheet, first + r, startColumn + c)),
    );
  }

  private map(cell: (row: number) => Cell): Column {
    const many = new Array<Cell>(this.count);
    for (let i = 0; i < this.count; i++) many[i] = cell(i);
    return { many };
  }
}

/** A value as a cell holds it; what is left out is nothing. */
const single = (value: Input): Cell => (value === undefined ? null : (value as Cell));

/** What a function hands on: nothing as the empty text, and no number that no cell can hold. */
function given(cell: Cell): Cell {
  if (cell === null) return "";
  return typeof cell === "number" && !Number.isFinite(cell) ? { error: "#NUM!", message: plainMessage("#NUM!") } : cell;
}
