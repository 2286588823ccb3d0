/** A client's table in our columns, as AUDIT reads it: what was found, what was added or left out, which row is whose. */
import type { Cell } from "../contract.js";
import { AUDIT_COLUMNS } from "../audit-columns.js";
import { decimalsByColumn } from "../audit-read.js";
import { cellText } from "../check-names.js";
import { plainNumber } from "../numbers.js";
import { unitOf, type Units } from "../units.js";
import { unitWritten } from "./claim-number.js";
import { withDays } from "./dates.js";
import { decimalMark, isGrouped, withDigits, withPoint } from "./digits.js";
import type { ClientRow, ClientTable } from "./find-table.js";
import { headerKey, mapHeaders, type MappedHeader, type Taken, type Told } from "./map-headers.js";
import { addFullLoad, isPercent, withoutPercent } from "./per-cent.js";

export interface PreparedReport {
  /** The client's, without what only sums it up. */
  readonly table: ClientTable;
  readonly mapping: readonly MappedHeader[];
  /** Our columns, as headers for AUDIT. */
  readonly names: readonly string[];
  readonly rows: readonly (readonly Cell[])[];
  /** Of each row the client's, from 0 in the table's rows: a row that states two rises stands twice. */
  readonly sources: readonly number[];
  readonly units: Units;
  /** Where the units are from, in words. */
  readonly unitsFrom: string;
  /** What was added or left out, in words. */
  readonly notes: readonly string[];
}

export interface PrepareOptions {
  /** By headerKey of the client's header. */
  readonly told: ReadonlyMap<string, Told>;
  readonly units?: Units;
  /** Every cell is a text, as in a CSV file: the texts tell the digits. */
  readonly isText: boolean;
  /** What the report's words for grades mean, in lower case. */
  readonly grades?: ReadonlyMap<string, number>;
}

/** What belongs to one of a row's rises alone; its temperatures are what both are worked out from. */
const STATED_ONCE = new Set(["stated_rise_at_load", "stated_grade"]);
const DIGITS = 12;
/** No number with its unit is longer. */
const LONGEST = 80;
const quantityOf = (name: string) => AUDIT_COLUMNS.find((one) => one.name === name)?.quantity ?? "text";
const isNumeric = (name: string): boolean => !["text", "date", "band"].includes(quantityOf(name));
const isDegrees = (name: string): boolean => ["temperature", "difference"].includes(quantityOf(name));

export function prepareReport(whole: ClientTable, options: PrepareOptions): PreparedReport {
  const totals = whole.rows.filter(isTotal);
  const table = { ...whole, rows: whole.rows.filter((row) => !totals.includes(row)) };
  const columns = table.headers.map((header, at) => ({
    header,
    unit: table.units[at],
    cells: table.rows.slice(0, 200).map(({ cells }) => cells[at] ?? null),
    told: options.told.get(headerKey(header)),
  }));
  const mapping = mapHeaders(columns).filter(({ header }) => header !== "");
  const taken = mapping.filter((one): one is Taken => one.column !== undefined);
  const { units, unitsFrom } = unitsOf(taken, table, options.units);
  const notes = totals.map(({ line }) => `line ${line} looks like a total or a mean and was left out`);
  const numbers = taken.flatMap(({ at, column }) =>
    isNumeric(column) ? table.rows.map(({ cells }) => cells[at] ?? null) : [],
  );
  const mark = decimalMark(numbers);
  if (mark === ",") notes.push("decimal commas read as points");
  if (mark !== undefined && numbers.some((cell) => isGrouped(cell, mark)))
    notes.push(`thousands parted by ${mark === "," ? "points" : "commas"}, as the other numbers tell`);
  const cellsOf = (one: Taken): Cell[] => {
    const { at, column, unit } = one;
    const own = table.rows.map(({ cells }) => cleaned(cells[at] ?? null));
    if (quantityOf(column) === "date") {
      const { cells, told } = withDays(own);
      if (told !== undefined) notes.push(told);
      return [...cells];
    }
    if (column === "item") return carriedDown(own, notes);
    if (column === "stated_grade" && options.grades !== undefined)
      return own.map((cell) => gradeTold(cell, options.grades!));
    if (!isNumeric(column)) return own;
    const points = mark === undefined ? own : own.map((cell) => withPoint(cell, mark));
    const bare = quantityOf(column) === "current" && isPercent(one, table.rows) ? withoutPercent(points) : points;
    return withUnit(options.isText ? withDigits(bare) : bare, column, unit, units);
  };
  const rises = taken.filter(({ column }) => column === "stated_rise");
  const others = taken.filter(({ column }) => column !== "stated_rise");
  const values = new Map(others.map((one) => [one.column, cellsOf(one)]));
  addFullLoad(values, others, table.rows, notes);
  const stated = rises.map(({ over, ...one }) => ({ over, cells: cellsOf(one) }));
  for (const { header, over } of rises)
    if (over !== undefined) notes.push(`reference ${over} where the row has none, since "${header}" says so`);
  const needsReference = stated.some(({ over }) => over !== undefined);
  const names = [
    ...values.keys(),
    ...(stated.length > 0 ? ["stated_rise"] : []),
    ...(needsReference && !values.has("reference") ? ["reference"] : []),
  ];
  const rows: Cell[][] = [];
  const sources: number[] = [];
  for (const [r] of table.rows.entries()) {
    const given = stated.filter(({ cells }) => cellText(cells[r]) !== "");
    const count = Math.max(1, given.length);
    for (let nth = 0; nth < count; nth++) {
      const rise = given[nth];
      rows.push(
        names.map((name): Cell => {
          if (name === "stated_rise") return rise?.cells[r] ?? null;
          const own = values.get(name)?.[r] ?? null;
          if (name === "reference") return (cellText(own) === "" || count > 1 ? rise?.over : undefined) ?? own;
          return nth > 0 && STATED_ONCE.has(name) ? null : own;
        }),
      );
      sources.push(r);
    }
  }
  return { table, mapping, names, rows, sources, units, unitsFrom, notes };
}

/** A row whose first text says that it sums up the others. */
function isTotal({ cells }: ClientRow): boolean {
  const first = cells.find((cell) => typeof cell === "string" && /\p{L}/u.test(cell));
  return /^(?:grand |sub)?-?(?:totals?|sum|summe|average|mean|count)\b(?!\s*\p{L}{3,}\s*\d)/iu.test(cellText(first));
}

/** A cell that reaches down over several rows stands in the first of them alone. */
function carriedDown(cells: readonly Cell[], notes: string[]): Cell[] {
  let above = "";
  let carried = 0;
  const filled = cells.map((cell): Cell => {
    const text = cellText(cell);
    if (text !== "") above = text;
    if (text !== "" || above === "") return cell;
    carried++;
    return `${above} (as above)`;
  });
  if (carried > 0)
    notes.push(`item of the row above where a row has none: ${carried} ${carried === 1 ? "row" : "rows"}`);
  return filled;
}

/** "Serious" as "4 (Serious)", where it was said what the word means. */
function gradeTold(cell: Cell, grades: ReadonlyMap<string, number>): Cell {
  const text = cellText(cell);
  const grade = grades.get(text.toLowerCase());
  return grade === undefined ? cell : `${grade} (${text})`;
}

/** Without the noise that a sheet's own subtraction leaves in the last binary digits. */
function cleaned(cell: Cell): Cell {
  return typeof cell === "number" ? Number(cell.toPrecision(DIGITS)) : typeof cell === "boolean" ? String(cell) : cell;
}

function unitsOf(
  taken: readonly Taken[],
  table: ClientTable,
  told: Units | undefined,
): { units: Units; unitsFrom: string } {
  if (told !== undefined) return { units: told, unitsFrom: "as told" };
  const votes = taken
    .filter(({ column }) => isDegrees(column))
    .flatMap(({ unit, at }) => [unit ?? "", ...table.rows.map(({ cells }) => behindNumber(cellText(cells[at])))])
    .map((text) => text.trim());
  const fahrenheit = votes.filter((text) => /^(?:[°º˚]|deg\.?)?\s*f|^℉/i.test(text)).length;
  const celsius = votes.filter((text) => /^(?:[°º˚]|deg\.?)?\s*c|^℃/i.test(text)).length;
  if (fahrenheit > celsius) return { units: "F", unitsFrom: "from the report's units" };
  return { units: "C", unitsFrom: celsius > 0 ? "from the report's units" : "taken, since no unit is named" };
}

/** What stands behind a number; in a text too long to be one nothing does. */
function behindNumber(text: string): string {
  return text.length > LONGEST ? "" : (/\d\s*\+?\s*([^\d\s+][^\d]*)$/.exec(text)?.[1] ?? "");
}

/** Cells of another unit than the sheet's have it written behind them, so that they are read by it. */
function withUnit(cells: readonly Cell[], name: string, unit: string | undefined, units: Units): Cell[] {
  const quantity = quantityOf(name);
  const written = unit === undefined ? undefined : unitWritten(quantity, unit);
  const own = unitOf(quantity, units);
  if (written === undefined || (written.scale === own.scale && written.shift === own.shift)) return [...cells];
  // Digits that a formula left in one cell are not what the others are printed to.
  const [printed = 0] = decimalsByColumn(
    cells.map((cell) => [cell]),
    1,
  );
  return cells.map((cell) => {
    if (typeof cell === "number") {
      const decimals = /\.(\d+)$/.exec(String(cell))?.[1]?.length ?? 0;
      return `${cell.toFixed(Math.max(decimals, printed))} ${unit ?? ""}`;
    }
    if (typeof cell !== "string" || cell.trim() === "") return cell;
    const isBare = plainNumber(cell) !== undefined || /\d\s*\+?$/.test(cell.trim());
    return isBare ? `${cell.trim()} ${unit ?? ""}` : cell;
  });
}
