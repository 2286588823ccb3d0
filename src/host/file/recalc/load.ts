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
import type { FileCell, FileRow } from "../sheet/scan.js";
import { decodeXml } from "../xml/read.js";

/** Columns of a sheet; a cell's key is row × this + column. */
export const MOST_COLUMNS = 16_384;
export const keyOf = (row: number, column: number): number => row * MOST_COLUMNS + column;

export interface LoadedSheet extends SheetEntry {
  /** Place in the workbook's order, chart sheets counted. */
  readonly index: number;
  readonly cells: ReadonlyMap<number, FileCell>;
  readonly fileRows: readonly FileRow[];
  readonly dataEnd: number;
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

/** More cells than this are not held in memory at once. */
const MOST_CELLS = 6_000_000;

/** @throws FileRefused */
export function loadBook(bytes: Uint8Array): LoadedBook {
  const pack = new WorkbookPackage(bytes);
  const facts = readWorkbook(pack);
  const strings = facts.sharedStrings ? readSharedStrings(facts.sharedStrings, pack.text(facts.sharedStrings)) : [];
  const dynamicArrays = facts.metadata
    ? dynamicArrayIndexes(facts.metadata, pack.text(facts.metadata))
    : new Set<number>();
  const tables: TablePosition[] = [];
  let held = 0;
  const sheets = facts.sheets.map((entry, index): LoadedSheet => {
    if (!entry.isWorksheet) {
      return {
        ...entry,
        index,
        cells: new Map(),
        fileRows: [],
        dataEnd: -1,
        prefix: "",
        isPatchable: false,
        rows: 0,
        columns: 0,
      };
    }
    const { text, isUtf8 } = decodeXml(entry.part, pack.bytes(entry.part));
    const { cells, rows: fileRows, dataEnd, prefix } = scanSheet(entry.part, text, strings);
    held += cells.length;
    if (held > MOST_CELLS) {
      throw new FileRefused(`The workbook has more than ${MOST_CELLS} cells, the most that are read. Split it.`);
    }
    for (const link of pack.relationships(entry.part)) {
      if (link.kind !== "table" || link.isExternal || !pack.has(link.target)) continue;
      const table = readTable(link.target, pack.text(link.target), entry.name);
      if (table) tables.push(table);
    }
    let [rows, columns] = [0, 0];
    const byKey = new Map<number, FileCell>();
    for (const cell of cells) {
      rows = Math.max(rows, cell.row + 1);
      columns = Math.max(columns, cell.column + 1);
      byKey.set(keyOf(cell.row, cell.column), withSerialDate(cell, facts.is1904));
    }
    return { ...entry, index, cells: byKey, fileRows, dataEnd, prefix, isPatchable: isUtf8, rows, columns };
  });
  return { pack, facts, sheets, tables, dynamicArrays };
}

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
