/** A client's table as cells: of a workbook the sheet that most of its headers are known of, of a text file its fields. */
import { parse } from "csv-parse/sync";
import type { Cell, Grid } from "../../functions/contract.js";
import { type ClientTable, findTable } from "../../functions/claims/find-table.js";
import type { Units } from "../../functions/units.js";
import { readContents } from "../../host/file/read/contents.js";
import { FileRefused } from "../../host/file/refusal.js";
import { REPORT_LINES } from "../../templates/audit/report.js";
import type { BookContents, SheetContents } from "../../templates/contents.js";
import { CODEC } from "../recalc.js";

export interface ClientReport {
  readonly table: ClientTable;
  /** Of a workbook. */
  readonly sheet?: string;
  /** Other sheets with a table that might have been meant. */
  readonly others: readonly string[];
  /** Name | value, of an audit workbook of ours. */
  readonly job: Grid;
  /** Of a workbook of ours. */
  readonly units?: Units;
  /** Every cell is a text. */
  readonly isText: boolean;
}

const MOST_CELLS = 2_000_000;
const DELIMITERS = [",", ";", "\t", "|"];
/** Lines by which the delimiter is told. */
const FIRST = 50;
const MOST_OF_HEAD = 1 << 20;

/** @throws FileRefused */
export function readReport(bytes: Uint8Array, wanted: ReadonlySet<string>, sheet: string | undefined): ClientReport {
  const isZip = bytes[0] === 0x50 && bytes[1] === 0x4b;
  return isZip ? fromWorkbook(readContents(bytes, CODEC), wanted, sheet) : fromText(bytes, wanted, sheet);
}

function fromWorkbook(book: BookContents, wanted: ReadonlySet<string>, name: string | undefined): ClientReport {
  const sheets = name === undefined ? book.sheets : book.sheets.filter((one) => one.name === name);
  if (sheets.length === 0)
    throw new FileRefused(`It has no sheet ${name ?? ""}, only ${book.sheets.map((one) => one.name).join(", ")}.`);
  // A stray cell far down on another sheet does not keep a report from being read.
  const sized = sheets.map((sheet) => ({ sheet, isLarge: sheet.rows * widthOf(book, sheet) > MOST_CELLS }));
  const large = sized.filter(({ isLarge }) => isLarge).map(({ sheet }) => sheet.name);
  const readable = sized.filter(({ isLarge }) => !isLarge).map(({ sheet }) => sheet);
  const tooLarge = `more than ${MOST_CELLS.toLocaleString("en-GB")} cells`;
  if (readable.length === 0) throw new FileRefused(`Sheet ${large.join(", ")} has ${tooLarge}.`);
  const found = readable.flatMap((sheet) => {
    const table = findTable(gridOf(sheet, widthOf(book, sheet)), wanted);
    return table === undefined ? [] : [{ sheet: sheet.name, table }];
  });
  const most = Math.max(0, ...found.map(({ table }) => table.known));
  const best = found.find(({ table }) => table.known === most);
  if (best === undefined)
    throw new FileRefused(
      `${noTable("sheet")}${large.length > 0 ? ` Not looked through: ${large.join(", ")} with ${tooLarge}.` : ""}`,
    );
  const others = found.filter((one) => one !== best && one.table.known > 1 && one.table.known * 2 > most);
  const units = book.template === undefined ? undefined : book.units;
  return {
    ...best,
    others: [...others.map((one) => one.sheet), ...large.map((one) => `${one} (not looked through: ${tooLarge})`)],
    job: ownJob(book),
    ...(units === undefined ? {} : { units }),
    isText: false,
  };
}

/** Of an audit of ours only the typed columns: what stands beside them was worked out from them. */
function widthOf({ template, tables }: BookContents, { name, columns }: SheetContents): number {
  const own = template === "audit" ? tables.find((one) => one.name === "ClaimList" && one.sheet === name) : undefined;
  return own === undefined ? columns : Math.max(...own.columns.map(({ column }) => column)) + 1;
}

function gridOf({ rows, at }: SheetContents, width: number): Grid {
  return Array.from({ length: rows }, (_, row) => Array.from({ length: width }, (__, column) => at(row, column).value));
}

function ownJob({ template, names, sheets }: BookContents): Grid {
  if (template !== "audit") return [];
  return REPORT_LINES.flatMap((line): Cell[][] => {
    if (typeof line === "string") return [];
    const cell = names.find(({ name }) => name.toLowerCase() === `report_${line.name}`);
    const value = sheets.find(({ name }) => name === cell?.sheet)?.at(cell!.startRow, cell!.startColumn).value;
    return value === undefined || value === null || value === "" ? [] : [[line.name, value]];
  });
}

function fromText(bytes: Uint8Array, wanted: ReadonlySet<string>, sheet: string | undefined): ClientReport {
  if (sheet !== undefined) throw new FileRefused("It is no workbook, so it has no sheet: leave --sheet out.");
  const text = decoded(bytes);
  if (text.includes("\u0000")) throw new FileRefused("It is neither a workbook (.xlsx) nor a table as text (.csv).");
  const records = fields(text, delimiterOf(text, wanted));
  const table = findTable(records, wanted);
  if (table === undefined) throw new FileRefused(noTable("line"));
  const lineOf = linesOf(records);
  const rows = table.rows.map((row) => ({ ...row, line: lineOf(row.line) }));
  const counted = { ...table, headerLine: lineOf(table.headerLine), rows };
  return { table: counted, others: [], job: [], isText: true };
}

/** Lines of the file, in which a quoted field may hold several, for the records counted from 1. */
function linesOf(records: readonly (readonly string[])[]): (record: number) => number {
  let line = 1;
  const starts = records.map((fields) => {
    const start = line;
    line += 1 + fields.reduce((sum, field) => sum + (field.match(/\r\n|\r|\n/g)?.length ?? 0), 0);
    return start;
  });
  return (record) => starts[record - 1] ?? record;
}

const noTable = (where: string): string =>
  `No ${where} of it holds headers of a report: name them with --map "Client header=our_column".`;

/** UTF-8 or UTF-16 by its mark; what is no UTF-8 is taken for the old Western code page. */
function decoded(bytes: Uint8Array): string {
  if (bytes[0] === 0xff && bytes[1] === 0xfe) return new TextDecoder("utf-16le").decode(bytes);
  if (bytes[0] === 0xfe && bytes[1] === 0xff) return new TextDecoder("utf-16be").decode(bytes);
  try {
    return new TextDecoder("utf-8", { fatal: true }).decode(bytes);
  } catch {
    return new TextDecoder("windows-1252").decode(bytes);
  }
}

function fields(text: string, delimiter: string, to?: number): string[][] {
  try {
    return parse(text, {
      bom: true,
      delimiter,
      relax_column_count: true,
      relax_quotes: true,
      ...(to === undefined ? {} : { to }),
    });
  } catch (error) {
    throw new FileRefused(`It cannot be read as a table (${(error as Error).message}).`);
  }
}

/** The one by which most headers are known; of several, the one that parts most lines into the most fields alike. */
function delimiterOf(text: string, wanted: ReadonlySet<string>): string {
  const head = text
    .slice(0, MOST_OF_HEAD)
    .split(/\r\n|\r|\n/, FIRST)
    .join("\n");
  const scored = DELIMITERS.map((delimiter) => {
    const counts = new Map<number, number>();
    const records = lenient(head, delimiter);
    for (const { length } of records) counts.set(length, (counts.get(length) ?? 0) + 1);
    counts.delete(1);
    const [columns, lines] = [...counts].sort((a, b) => b[1] - a[1] || b[0] - a[0])[0] ?? [0, 0];
    return { delimiter, known: findTable(records, wanted)?.known ?? 0, score: columns * lines };
  });
  const isBetter = (one: (typeof scored)[number], best: (typeof scored)[number]): boolean =>
    one.known > best.known || (one.known === best.known && one.score > best.score);
  return scored.reduce((best, one) => (isBetter(one, best) ? one : best)).delimiter;
}

function lenient(text: string, delimiter: string): string[][] {
  try {
    return fields(text, delimiter, FIRST);
  } catch {
    // The head may end within a quoted field.
    return text.split("\n").map((line) => line.split(delimiter));
  }
}
