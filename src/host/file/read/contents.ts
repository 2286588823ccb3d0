/** Reads a workbook back: what it says of itself, its tables with what stands around them, its names. */
import type { CellError } from "../../../functions/contract.js";
import {
  type BookContents,
  type NamedCells,
  type ReadCell,
  type ReadColumn,
  type SheetContents,
  type TableContents,
  textOf,
} from "../../../templates/contents.js";
import type { TablePosition } from "../../embedded/structured.js";
import { parseReference } from "../../reference.js";
import type { WorkbookPackage } from "../package/package.js";
import type { DefinedName } from "../package/workbook.js";
import { keyOf, loadBook, type LoadedSheet } from "../recalc/load.js";
import { localName, readXml } from "../xml/read.js";
import { heldPictures } from "./pictures.js";
import type { Codec } from "../zip/codec.js";

/** Days from 30 December 1899 to 1 January 1904, from where some workbooks count. */
const DAYS_TO_1904 = 1462;
const NOTHING: ReadCell = { value: null, isWorkedOut: false };

/**
 * @param codec a host's own way to unpack, where it has a quicker one
 * @throws FileRefused where the file is no workbook that may be read
 */
export function readContents(bytes: Uint8Array, codec?: Codec): BookContents {
  const { pack, facts, sheets: loaded, tables } = loadBook(bytes, codec);
  const worksheets = loaded.filter(({ isWorksheet }) => isWorksheet);
  const sheets = worksheets.map((sheet) => sheetContents(pack, sheet));
  const held = worksheets.flatMap((sheet) => heldPictures(pack, sheet));
  const marks = new Map(facts.definedNames.map(({ name, formula }) => [name.toUpperCase(), literalOf(formula)]));
  const template = marks.get("GREYBODY_TEMPLATE");
  const units = marks.get("GREYBODY_UNITS");
  const title = titleOf(pack);
  return {
    ...(template === undefined ? {} : { template }),
    ...(units === "C" || units === "F" ? { units } : {}),
    ...(title === "" ? {} : { title }),
    sheets,
    tables: sheets.flatMap((sheet) =>
      tables.filter((table) => table.sheet === sheet.name).map((table) => tableContents(table, sheet)),
    ),
    // A sheet that was copied has the names again, for itself: the workbook's own are meant.
    names: [...facts.definedNames]
      .sort((a, b) => Number(a.sheet !== undefined) - Number(b.sheet !== undefined))
      .flatMap(namedCells),
    held,
    dayShift: facts.is1904 ? DAYS_TO_1904 : 0,
  };
}

/** The text of a name that means one: `"route"`. */
function literalOf(formula: string): string | undefined {
  return /^=?"([^"]*)"$/.exec(formula.trim())?.[1];
}

function sheetContents(pack: WorkbookPackage, { name, part, cells, rows, columns }: LoadedSheet): SheetContents {
  const links = pack.relationships(part);
  const pictures = links
    .filter(({ kind, isExternal, target }) => kind === "drawing" && !isExternal && pack.has(target))
    .flatMap(({ target }) => pack.relationships(target).filter(({ kind }) => kind === "image")).length;
  return {
    name,
    rows,
    columns,
    pictures,
    hasComments: links.some(({ kind }) => kind === "comments" || kind === "threadedComment"),
    at: (row, column) => {
      if (row < 0 || column < 0 || column >= columns) return NOTHING;
      const cell = cells.get(keyOf(row, column));
      if (cell === undefined) return NOTHING;
      const { value } = cell;
      const isError = typeof value === "object" && value !== null;
      return {
        value: isError ? { error: value.error as CellError["error"], message: "" } : value,
        isWorkedOut: cell.formula !== undefined,
      };
    },
  };
}

function tableContents(table: TablePosition, sheet: SheetContents): TableContents {
  const { name, headerRow, firstRow, lastRow } = table;
  const heading = (column: number, header: string): ReadColumn => ({
    header,
    above: headerRow < firstRow ? textOf(sheet.at(headerRow - 1, column).value) : "",
    column,
  });
  const columns = table.columns.map(({ names, column }) => heading(column, names.at(-1) ?? ""));
  const right = Math.max(-1, ...columns.map(({ column }) => column)) + 1;
  const beside: ReadColumn[] = [];
  // A table may stand without its row of headers: then nothing beside it has one either.
  for (let column = right; headerRow < firstRow && column < sheet.columns; column++) {
    const header = textOf(sheet.at(headerRow, column).value);
    if (header !== "") beside.push(heading(column, header));
  }
  return { name, sheet: sheet.name, headerRow, firstRow, lastRow, columns, beside };
}

/** Names of cells and ranges; what means something else, or what is gone (#REF!), is no name of cells. */
function namedCells({ name, formula, isHidden }: DefinedName): NamedCells[] {
  const area = isHidden || name.startsWith("_xlnm.") ? undefined : parseReference(formula.replace(/^=/, ""));
  if (area?.sheet === undefined) return [];
  const { sheet, startRow, endRow, startColumn, endColumn } = area;
  return [{ name, sheet, startRow, endRow, startColumn, endColumn }];
}

/** As the workbook's properties have it (ISO/IEC 29500-2, 11). */
function titleOf(pack: WorkbookPackage): string {
  const part = pack.relationships("").find(({ kind }) => kind === "core-properties")?.target;
  if (part === undefined || !pack.has(part)) return "";
  let title = "";
  let inTitle = false;
  readXml(part, pack.text(part), {
    open: (tag) => {
      inTitle = localName(tag.name) === "title";
    },
    text: (text) => {
      if (inTitle) title += text;
    },
    close: () => {
      inTitle = false;
    },
  });
  return title.trim();
}
