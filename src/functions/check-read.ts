/** Reads the rows of a route and the lines of its job by the names of their columns; what cannot be read is a finding. */
import type { Finding } from "../core/check/hit.js";
import { Named } from "../core/check/named.js";
import type { CheckColumn } from "./check-columns.js";
import { cellText } from "./check-names.js";
import { dayOf } from "./days.js";
import type { Cell } from "./contract.js";
import { isCellError } from "./contract.js";
import { plainNumber } from "./numbers.js";
import { isBlank, isNoWord } from "./read.js";
import { toSI, unitOf } from "./units.js";
import type { Units } from "./units.js";

/** Why a cell could not be read: which rule, and what its words are made with. */
interface Fault {
  readonly id: "cell-error" | "no-number" | "no-day" | "no-choice";
  readonly values: Readonly<Record<string, string>>;
}

type Read = number | string | Fault | undefined;

function readWord({ choices }: CheckColumn, cell: Exclude<Cell, null>): Read {
  if (isNoWord(cell)) return undefined;
  const text = cellText(cell);
  if (!choices || text === "") return text === "" ? undefined : text;
  const choice = choices.find((word) => word.toLowerCase() === text.toLowerCase());
  return choice ?? { id: "no-choice", values: { typed: text, choices: choices.join(", ") } };
}

function readNumber(column: CheckColumn, cell: Exclude<Cell, null>, units: Units): Read {
  const text = typeof cell === "string" ? cell.trim() : undefined;
  const number = typeof cell === "number" ? cell : text === undefined ? undefined : plainNumber(text);
  if (number !== undefined && Number.isFinite(number)) {
    return column.zeroIsBlank === true && number === 0 ? undefined : toSI(number, unitOf(column.quantity, units));
  }
  if (text === "") return undefined;
  const day = column.quantity === "date" && text !== undefined ? dayOf(text) : undefined;
  if (day !== undefined) return day;
  // What a sheet works out has words in place of a number, its own.
  if (column.from === "worked out" && text !== undefined) return undefined;
  return { id: column.quantity === "date" ? "no-day" : "no-number", values: { typed: cellText(cell) } };
}

/** A cell as its column has it, in SI; undefined where nothing is given. */
function readCell(column: CheckColumn, cell: Cell, units: Units): Read {
  if (isCellError(cell)) return { id: "cell-error", values: { typed: cell.error, message: cell.message } };
  if (cell === null || isBlank(cell)) return undefined;
  const isWord = column.quantity === "text" || column.quantity === "band";
  return isWord ? readWord(column, cell) : readNumber(column, cell, units);
}

export interface ReadRow {
  readonly named: Named;
  readonly findings: readonly Finding[];
  /** Whether nothing was typed, whatever the sheet looks up. */
  readonly isEmpty: boolean;
}

/**
 * One row, or a job as one.
 * @param columns of each cell; undefined where it is not read
 * @param number of the row from 1; 0 for the job, whose findings have "job_" before the column's name
 */
export function readNamed(
  columns: readonly (CheckColumn | undefined)[],
  cells: readonly Cell[],
  units: Units,
  number: number,
): ReadRow {
  const values = new Map<string, number | string>();
  const unreadable = new Set<string>();
  const findings: Finding[] = [];
  let isEmpty = true;
  for (const [c, column] of columns.entries()) {
    const cell = cells[c] ?? null;
    if (!column) continue;
    const read = readCell(column, cell, units);
    if (read === undefined) continue;
    // Excel hands an empty cell over as 0, so 0 alone does not make a row.
    if (column.from === undefined && cell !== 0) isEmpty = false;
    if (typeof read === "object") {
      unreadable.add(column.name);
      findings.push({
        row: number,
        id: read.id,
        kind: read.id === "no-choice" ? "implausible" : "stop",
        column: number === 0 ? `job_${column.name}` : column.name,
        values: read.values,
      });
    } else values.set(column.name, read);
  }
  return { named: new Named(values, unreadable), findings, isEmpty };
}
