import { GreybodyError } from "../core/errors.js";
import { numbersFor } from "./arena.js";
import type { ArgumentSpec, Cell, CellError, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { errorCell, notGivenCell } from "./messages.js";
import { plainNumber } from "./numbers.js";
import type { Unit } from "./units.js";
import { toSI } from "./units.js";

/** The cells of one argument, read once; index = row · columns + column. */
export interface Column<Value> {
  readonly rows: number;
  readonly columns: number;
  readonly values: Value;
  /** Cells that hold no usable value, with what to show for them. */
  readonly faults: ReadonlyMap<number, CellError> | undefined;
}

/** Numbers in SI; NaN where nothing is given or where a fault stands. */
export type NumberColumn = Column<Float64Array>;
/** Texts; undefined where nothing is given or where a fault stands. */
export type TextColumn = Column<readonly (string | undefined)[]>;

function isGrid(input: Input): input is Grid {
  return Array.isArray(input);
}

/** An argument as rows of cells; what is left out is one empty cell. */
export function gridOf(input: Input): Grid {
  return isGrid(input) ? input : [[input ?? null]];
}

/** Empty, absent or the text "": not given. */
export function isBlank(cell: Cell): boolean {
  return cell === null || cell === "";
}

/** Where words belong a 0 is not given either: so Excel hands over an empty cell, and no word is 0. */
export function isNoWord(cell: Cell): boolean {
  return isBlank(cell) || cell === 0;
}

/** Reads an argument's numbers into SI. */
export function readNumbers(spec: ArgumentSpec, input: Input, unit: Unit, metric: Unit): NumberColumn {
  const grid = gridOf(input);
  const rows = grid.length;
  const columns = grid[0]?.length ?? 0;
  const values = numbersFor(rows * columns);
  let faults: Map<number, CellError> | undefined;
  const { shift, scale } = unit;
  const zeroIsBlank = spec.zeroIsBlank === true;
  let rare = 0;
  for (let r = 0, k = 0; r < rows; r++) {
    const row = grid[r]!;
    for (let c = 0; c < columns; c++, k++) {
      const cell = row[c];
      const value = typeof cell === "number" && !(zeroIsBlank && cell === 0) ? (cell + shift) * scale : NaN;
      values[k] = value;
      // What is no plain number, and a 0 that may be an empty cell, is looked at again below.
      if (value - value !== 0) rare++;
    }
  }
  for (let k = 0; rare > 0 && k < values.length; k++) {
    if (Number.isFinite(values[k]!)) continue;
    rare--;
    const cell = grid[Math.floor(k / columns)]?.[k % columns] ?? null;
    const read = readRareNumber(spec, cell, unit, metric);
    values[k] = typeof read === "number" ? read : NaN;
    if (typeof read !== "number") (faults ??= new Map<number, CellError>()).set(k, read);
  }
  return { rows, columns, values, faults };
}

/** What is not simply a number: blank, text that is one, an error that came in, anything else. */
function readRareNumber(spec: ArgumentSpec, cell: Cell, unit: Unit, metric: Unit): number | CellError {
  if (isCellError(cell)) return cell;
  const number = typeof cell === "string" ? plainNumber(cell) : typeof cell === "number" ? cell : undefined;
  const readAsBlank = spec.zeroIsBlank === true && number === 0;
  if (isBlank(cell) || readAsBlank) {
    // Zero where zero cannot be is an empty cell in Excel; of a required argument the message says both.
    if (spec.default !== undefined) return toSI(Number(spec.default), metric);
    return spec.optional === true ? NaN : notGivenCell(spec, readAsBlank);
  }
  if (number !== undefined && Number.isFinite(number)) return toSI(number, unit);
  return errorCell({ code: "INVALID", argument: spec.name, hint: { key: whyNoNumber(spec, cell) } }, spec, cell, unit);
}

/** What keeps a cell from being a number; of texts the usual ones are told apart. */
function whyNoNumber(spec: ArgumentSpec, cell: Cell): string {
  if (typeof cell !== "string") return "not-a-number";
  if (spec.quantity === "date" && /\w\s*[-/.,\s]\s*\w+\s*[-/.,\s]\s*\d/.test(cell)) return "date-text";
  if (/^\s*[<>≤≥*]/.test(cell)) return "bound";
  return /^\s*[−–—]\s*[\d.]/.test(cell) ? "other-minus" : "not-a-number";
}

/** The cell of an argument that takes one value only. */
export function readSingle(spec: ArgumentSpec, input: Input): Cell {
  const cells = gridOf(input).flat();
  if (cells.length <= 1) return cells[0] ?? null;
  return { error: "#VALUE!", message: `${spec.name}: one value is wanted, here are ${cells.length} cells.` };
}

/** Reads an argument's texts; with choices, without regard to case, each as the choices spell it. */
export function readTexts(spec: ArgumentSpec, input: Input, unit: Unit): TextColumn {
  const grid = gridOf(input);
  const columns = grid[0]?.length ?? 0;
  let faults: Map<number, CellError> | undefined;
  const values = grid.flat().map((cell, k) => {
    const read = readText(spec, cell, unit);
    if (!isCellError(read)) return read;
    (faults ??= new Map<number, CellError>()).set(k, read);
    return undefined;
  });
  return { rows: grid.length, columns, values, faults };
}

function readText(spec: ArgumentSpec, cell: Cell, unit: Unit): string | undefined | CellError {
  if (isCellError(cell)) return cell;
  if (isNoWord(cell)) {
    if (spec.default !== undefined) return String(spec.default);
    return spec.optional === true ? undefined : notGivenCell(spec, cell === 0);
  }
  const text = String(cell).trim();
  if (!spec.choices) return text;
  const choice = spec.choices.find((word) => word.toLowerCase() === text.toLowerCase());
  if (choice !== undefined) return choice;
  const error = new GreybodyError({ code: "INVALID", argument: spec.name, given: text, allowed: spec.choices });
  return errorCell(error, spec, cell, unit);
}
