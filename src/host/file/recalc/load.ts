/** A workbook in memory as recalculation needs it: every cell of every worksheet, its tables and names. */
import type { TablePosition } from "../../embedded/structured.js";
import { dynamicArrayIndexes } from "../package/metadata.js";
import { WorkbookPackage } from "../package/package.js";
import { readSharedStrings } from "../package/strings.js";
import { readTable } from "../package/tables.js";
import { readWorkbook } from "../package/workbook.js";
import type { SheetEntry, WorkbookFacts } from "../package/workbook.js";
import { FileRefused } from "../refusal.js";
import { scanSheet } from "../sheet/scan.js";
import type { FileCell } from "../sheet/cells.js";
import { decodeXml } from "../xml/read.js";
import type { Codec } from "../zip/codec.js";
import { megabytes, ZIP_LIMITS } from "../zip/limits.js";
import { MOST_ROWS } from "../formula/segments.js";
import { CellStore } from "./load-cells.js";
import type { SheetCells } from "./load-cells.js";

/** Columns of a sheet; a cell's key is row × this + column. */
export const MOST_COLUMNS = 16_384;
export const keyOf = (row: number, column: number): number => row * MOST_COLUMNS + column;

export interface LoadedSheet extends SheetEntry {
  /** Place in the workbook's order, chart sheets counted. */
  readonly index: number;
  readonly cells: SheetCells;
  /** Cells with a formula, in the order of the part. */
  readonly formulaCells: readonly FileCell[];
  /** Rows that are hidden, from 0. */
  readonly hiddenRows: readonly number[];
  /** Prefix of its elements. */
  readonly prefix: string;
  /** Its part is in UTF-8: else it is read and left as it is. */
  readonly isPatchable: boolean;
  /** One more than the last row and column with a cell. */
  readonly rows: number;
  readonly columns: number;
}

export interface LoadedBook {
  readonly pack: WorkbookPackage;
  readonly facts: WorkbookFacts;
  readonly sheets: readonly LoadedSheet[];
  readonly tables: readonly TablePosition[];
  /** Indexes of cell metadata that mark a dynamic array. */
  readonly dynamicArrays: ReadonlySet<number>;
}

/** What is held in memory at once, so that a workbook that is taken never needs more than is said in the README. */
const MOST = {
  /** Cells without a formula, and so many more for each formula. */
  constants: 800_000,
  constantsPerFormula: 10,
  formulas: 1_000_000,
  /** Whatever the formulas. */
  cells: 12_000_000,
  /** Bytes of the sheets' parts and the shared texts, and so many more for each formula. */
  sheetBytes: 24 * 2 ** 20,
  sheetBytesPerFormula: 512,
} as const;

/** @throws FileRefused */
export function loadBook(bytes: Uint8Array, codec?: Codec): LoadedBook {
  const pack = new WorkbookPackage(bytes, codec);
  const facts = readWorkbook(pack);
  const strings = facts.sharedStrings ? readSharedStrings(facts.sharedStrings, pack.text(facts.sharedStrings)) : [];
  if (facts.sharedStrings) pack.forget(facts.sharedStrings);
  const dynamicArrays = facts.metadata
    ? dynamicArrayIndexes(facts.metadata, pack.text(facts.metadata))
    : new Set<number>();
  const tables: TablePosition[] = [];
  const held = { bytes: facts.sharedStrings ? pack.size(facts.sharedStrings) : 0, cells: 0, formulas: 0 };
  requireTotal(pack, facts.sheets);
  const sheets = facts.sheets.map((entry, index): LoadedSheet => {
    if (!entry.isWorksheet) {
      return {
        ...entry,
        index,
        ...partsOf(new CellStore((cell) => cell).finish()),
        hiddenRows: [],
        prefix: "",
        isPatchable: false,
      };
    }
    const { store, hiddenRows, prefix, isUtf8 } = loadSheet(pack, entry.part, strings, facts.is1904, held);
    for (const link of pack.relationships(entry.part)) {
      if (link.kind !== "table" || link.isExternal || !pack.has(link.target)) continue;
      const table = readTable(link.target, pack.text(link.target), entry.name);
      if (table) tables.push(table);
    }
    return { ...entry, index, ...partsOf(store), hiddenRows, prefix, isPatchable: isUtf8 };
  });
  const most = MOST.constants + held.formulas * MOST.constantsPerFormula;
  if (held.cells - held.formulas > most) {
    throw new FileRefused(
      `The workbook has ${held.cells - held.formulas} cells without a formula; at most ${MOST.constants} and ${MOST.constantsPerFormula} more for each formula are read. Split it.`,
    );
  }
  return { pack, facts, sheets, tables, dynamicArrays };
}

const partsOf = (store: CellStore): Pick<LoadedSheet, "cells" | "formulaCells" | "rows" | "columns"> => ({
  cells: store,
  formulaCells: store.formulaCells,
  rows: store.rows,
  columns: store.columns,
});

function loadSheet(
  pack: WorkbookPackage,
  part: string,
  strings: readonly string[],
  is1904: boolean,
  held: { bytes: number; cells: number; formulas: number },
): { store: CellStore; hiddenRows: number[]; prefix: string; isUtf8: boolean } {
  const bytes = pack.bytes(part);
  requireSize(bytes, held);
  const { text, isUtf8 } = decodeXml(part, bytes);
  const store = new CellStore((cell) => {
    if (cell.row >= MOST_ROWS || cell.column >= MOST_COLUMNS) {
      throw new FileRefused(`The part ${part} has a cell beyond the last row or column of a sheet: it is damaged.`);
    }
    if (held.cells + store.size > MOST.cells) {
      throw new FileRefused(`The workbook has more than ${MOST.cells} cells, the most that are read. Split it.`);
    }
    if (cell.formula && held.formulas + store.formulaCells.length >= MOST.formulas) {
      throw new FileRefused(`The workbook has more than ${MOST.formulas} formulas, the most that are read. Split it.`);
    }
    return withSerialDate(cell, is1904);
  });
  const { rows, prefix } = scanSheet(part, text, strings, store);
  const hiddenRows = rows.filter(({ isHidden }) => isHidden).map(({ row }) => row);
  held.cells += store.size;
  held.formulas += store.formulaCells.length;
  return { store: store.finish(), hiddenRows, prefix, isUtf8 };
}

/** As the package says it, before anything is expanded. */
function requireTotal(pack: WorkbookPackage, sheets: readonly SheetEntry[]): void {
  const total = sheets.reduce((sum, { part, isWorksheet }) => sum + (isWorksheet ? pack.size(part) : 0), 0);
  if (total <= ZIP_LIMITS.totalBytes) return;
  throw new FileRefused(
    `The sheets of the workbook would expand to ${megabytes(total)}; at most ${megabytes(ZIP_LIMITS.totalBytes)} are read. Split it.`,
  );
}

function requireSize(bytes: Uint8Array, held: { bytes: number; formulas: number }): void {
  held.bytes += bytes.length;
  if (held.bytes <= MOST.sheetBytes) return;
  let { formulas } = held;
  for (let i = 1; i < bytes.length; i++) if (bytes[i] === 0x66 && isBeforeName(bytes[i - 1]!)) formulas++;
  const most = MOST.sheetBytes + formulas * MOST.sheetBytesPerFormula;
  if (held.bytes <= most) return;
  throw new FileRefused(
    `The sheets of the workbook expand to more than ${megabytes(most)}, the most that is read with the formulas that they have. Split it.`,
  );
}

/** "<f" or "x:f": formulas, with a few too many. */
const isBeforeName = (byte: number): boolean => byte === 0x3c || byte === 0x3a;

const DAY = 86_400_000;

/** A date that is saved as text of ISO 8601 (t="d") as the number that formulas see. */
function withSerialDate(cell: FileCell, is1904: boolean): FileCell {
  if (cell.type !== "d" || typeof cell.value !== "string") return cell;
  const time = Date.parse(
    /[zZ]|[+-]\d\d:\d\d$/.test(cell.value) || !cell.value.includes("T") ? cell.value : `${cell.value}Z`,
  );
  if (Number.isNaN(time)) return cell;
  const epoch = is1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, 30);
  return { ...cell, value: (time - epoch) / DAY };
}
