/** Loads in per cent: of the load that counts as full, which no other column in amperes can be. */
import { cellText } from "../check-names.js";
import type { Cell } from "../contract.js";
import { plainNumber } from "../numbers.js";
import type { ClientRow } from "./find-table.js";
import type { Taken } from "./map-headers.js";

const FULL_LOAD = 100;
/** No load is so many times the full one; a sheet that formats 0.74 as 74 % holds 0.74. */
const MOST_OF_FULL = 1.5;
const PERCENT = /^(?:%|pct)$/i;
const LOADS = ["reference_load", "load_of_reference", "rated_load"];

/** A number that ends with a per cent sign, without it: the column says what it is of. */
export function withoutPercent(cells: readonly Cell[]): Cell[] {
  return cells.map((cell) => {
    const text = typeof cell === "string" ? cell.trim() : "";
    return text.endsWith("%") && /\d/.test(text) ? text.slice(0, -1).trim() : cell;
  });
}

/** Whether a column of loads is in per cent: by its unit, or by all of its cells. */
export function isPercent({ unit, at }: Taken, rows: readonly ClientRow[]): boolean {
  if (unit !== undefined) return PERCENT.test(unit);
  const texts = rows.map(({ cells }) => cellText(cells[at])).filter((text) => text !== "");
  return texts.length > 0 && texts.every((text) => text.endsWith("%"));
}

/** A load in per cent is of the load that counts as full. */
export function addFullLoad(
  values: Map<string, Cell[]>,
  others: readonly Taken[],
  rows: readonly ClientRow[],
  notes: string[],
): void {
  const load = others.find(({ column }) => column === "load");
  if (load === undefined || !isPercent(load, rows)) return;
  const cells = values.get("load") ?? [];
  const numbers = cells.flatMap((cell) => (typeof cell === "number" ? cell : (plainNumber(cellText(cell)) ?? [])));
  const isFraction =
    numbers.length > 0 &&
    numbers.every((number) => number <= MOST_OF_FULL) &&
    !rows.some((row) => cellText(row.cells[load.at]).endsWith("%"));
  for (const other of others.filter(({ column }) => LOADS.includes(column))) {
    if (isPercent(other, rows) || (other.unit === undefined && !isBeyondFull(values.get(other.column) ?? []))) continue;
    values.delete(other.column);
    notes.push(`"${other.header}" left out, since "${load.header}" is in per cent`);
  }
  if (values.has("reference_load")) return;
  const full = isFraction ? 1 : FULL_LOAD;
  values.set(
    "reference_load",
    cells.map((cell) => (cellText(cell) === "" ? null : full)),
  );
  notes.push(
    `reference_load ${full}, since "${load.header}" is in per cent${isFraction ? ", held as shares of 1" : ""}`,
  );
}

const isBeyondFull = (cells: readonly Cell[]): boolean =>
  cells.some((cell) => Number(cellText(cell)) > FULL_LOAD * MOST_OF_FULL);
