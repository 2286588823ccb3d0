/** A row of a report with its texts read: what they were taken for is shown, and what could not be taken is left as it is. */
import type { CheckColumn } from "../check-columns.js";
import type { Cell } from "../contract.js";
import { plainNumber } from "../numbers.js";
import { readable, type Units, unitOf } from "../units.js";
import { writtenNumber } from "./claim-number.js";
import { choiceMeant } from "./claim-words.js";

export interface Understood {
  readonly cells: readonly Cell[];
  /** Half of the last digit as it is written, in the unit of the sheet, by column: where a text was read. */
  readonly halves: ReadonlyMap<number, number>;
  /** A reading is beyond an end of the camera's range. */
  readonly bound?: "at least" | "at most";
  /** What is stated is marked as beyond it too. */
  readonly isBoundStated: boolean;
  /** `apparent ">150" as 150 °C, at least`. */
  readonly told: readonly string[];
  /** Why a text could not be taken, by column. */
  readonly because: ReadonlyMap<number, string>;
}

const DIGITS = 7;

/** What stands in a cell for nothing. */
const NO_VALUE = /^(?:[-–—./?]+|n\.?\s*\/?\s*a\.?|nil|none|not (?:measured|taken|recorded|applicable)|unknown|tbd)$/i;

/** Only what the camera read, or what was made of it, can lie beyond its range: an air "<20" is no value. */
const canBeBeyond = (name: string): boolean => /^(?:apparent|reference_apparent|stated_.*)$/.test(name);

export function understood(
  columns: readonly (CheckColumn | undefined)[],
  cells: readonly Cell[],
  units: Units,
): Understood {
  const read: Cell[] = [...cells];
  const halves = new Map<number, number>();
  const because = new Map<number, string>();
  const told: string[] = [];
  const bounds = new Set<"at least" | "at most">();
  let isBoundStated = false;
  for (const [c, column] of columns.entries()) {
    const cell = cells[c];
    if (column === undefined || typeof cell !== "string" || cell.trim() === "" || plainNumber(cell) !== undefined)
      continue;
    const { name, quantity, choices } = column;
    if (quantity !== "text" && NO_VALUE.test(cell.trim())) {
      read[c] = null;
      continue;
    }
    if (choices !== undefined && !choices.some((one) => one.toLowerCase() === cell.trim().toLowerCase())) {
      const meant = choiceMeant(name, cell);
      if (meant === undefined) continue;
      read[c] = meant;
      told.push(`${name} "${cell.trim()}" as ${meant}`);
      continue;
    }
    const written = writtenNumber(cell, quantity, units);
    if (written === undefined) continue;
    if ("because" in written) {
      because.set(c, written.because);
      continue;
    }
    const { value, half, bound, isAbout } = written;
    if (bound !== undefined && !canBeBeyond(name)) {
      because.set(c, `"${bound}" is no value`);
      continue;
    }
    read[c] = value;
    halves.set(c, half);
    if (bound !== undefined) bounds.add(bound);
    isBoundStated ||= bound !== undefined && name.startsWith("stated_");
    const label = unitOf(quantity, units).label;
    const as = `${readable(value, DIGITS)}${label === "" ? "" : ` ${label}`}`;
    const how = bound ?? (isAbout ? `± ${readable(half, 3)}` : undefined);
    told.push(`${name} "${cell.trim()}" as ${as}${how === undefined ? "" : `, ${how}`}`);
  }
  const [bound] = bounds;
  return { cells: read, halves, ...(bound === undefined ? {} : { bound }), isBoundStated, told, because };
}
