/**
 * What a host (Excel, the embedded engine, the command line) and a worksheet function hand each other.
 * A host turns its own values into these, calls `evaluate`, and turns the result back; it knows nothing else of a function.
 */

import type { Range } from "../core/errors.js";

/** An error in a cell; `message` is a whole sentence for the person at the sheet. */
export interface CellError {
  readonly error:
    "#VALUE!" | "#N/A" | "#REF!" | "#NAME?" | "#NUM!" | "#DIV/0!" | "#NULL!" | "#SPILL!" | "#CALC!" | "#GETTING_DATA";
  readonly message: string;
}

/** One cell: null is an empty cell, where the host can tell it. */
export type Cell = number | string | boolean | null | CellError;
/** Rows of cells, all rows of one length, at least one row and one column. */
export type Grid = readonly (readonly Cell[])[];
/** What stands for one argument: a single value, a range, or undefined where it is left out. */
export type Input = Cell | Grid | undefined;

/** What a number means; decides its unit in °C sheets and °F sheets and how it is converted. */
export type Quantity =
  | "temperature"
  | "difference"
  | "distance"
  /** What a target measures: mm or inches, where a distance is m or ft. */
  | "length"
  | "angle"
  | "speed"
  /** A day as Excel counts it. */
  | "date"
  | "fraction"
  | "percent"
  | "pressure"
  | "current"
  | "radiance"
  | "number"
  | "text"
  | "band"
  | "table";

export interface ArgumentSpec {
  /** The nomenclature's word, as it stands in headers and help. */
  readonly name: string;
  readonly quantity: Quantity;
  /** One line: what it is. Unit, range and default are added from the fields below, never typed here. */
  readonly help: string;
  readonly optional?: boolean;
  /** The value taken where nothing is given, in the metric unit of the sheet (°C, K, m, %; converted for °F). */
  readonly default?: number | string;
  /** Allowed range in SI, the core's own; shown in the unit of the sheet. */
  readonly range?: Range;
  readonly choices?: readonly string[];
  /** 0 cannot be: an empty cell that Excel hands over as 0. */
  readonly zeroIsBlank?: boolean;
  /** The argument that may name this one as what is sought: this one is then neither needed nor looked at. */
  readonly soughtBy?: string;
  /** Taken whole: a range is one value (response table, criteria, phases), never broadcast. */
  readonly whole?: boolean;
  /** What the columns of a range taken whole are, in order (of CHECK in that of its headers), each read as an argument of that name. */
  readonly columns?: readonly ArgumentSpec[];
  /** Where `columns` are not columns but names of lines name | value. */
  readonly columnsAre?: "names";
}

export interface FunctionSpec {
  /** Without the namespace: "CORRECTED". */
  readonly name: string;
  readonly topic:
    | "Correction"
    | "Transmission"
    | "Measured inputs"
    | "Load"
    | "Severity"
    | "Uncertainty"
    | "What-if and audit"
    | "Trend and plan"
    | "Help";
  /** One line. */
  readonly summary: string;
  /** What comes back, with its unit. */
  readonly returns: string;
  readonly args: readonly ArgumentSpec[];
  /** cells: same shape as the arguments; rows: one row of results a row; set: taken whole; table: a header row and rows. */
  readonly shape: "cells" | "rows" | "set" | "table";
  /** A formula that runs, with its value as a person would read it. */
  readonly example: { readonly formula: string; readonly shows: string };
  /** The first edition of standards or papers it rests on: keys of src/data/references.json. */
  readonly sources: readonly string[];
  /** Never throws. A single value comes back as 1 × 1. */
  readonly evaluate: (inputs: readonly Input[]) => Grid;
}

export function isCellError(cell: unknown): cell is CellError {
  return typeof cell === "object" && cell !== null && "error" in cell;
}
