/** A described free sheet: cells where they are put, blocks to paste into, spills that may grow, boxes for pictures. */
import type { FreeCell, FreePrint, FreeSheet, PictureBox } from "../../../templates/contract.js";
import { isFormula } from "../../described-table.js";
import { boxFormula, boxKey, boxName, pictureName } from "../../picture-boxes.js";
import { workingColumns } from "../../working-columns.js";
import * as look from "./looks.js";
import type {
  Area,
  CellStyle,
  Conditional,
  PrintSetup,
  Validation,
  WrittenCell,
  WrittenName,
  WrittenSheet,
} from "./model.js";
import { cellName, fixedAreaName, sheetPrefix } from "./place.js";
import { blankSheet, type SheetBase, validationsOf } from "./sheet-base.js";

const DEFAULT_WIDTH = 88;
/** Rows below a spill in which its grades keep their looks when it grows. */
const GROWTH = 500;
/** A program without the font takes one with wider digits, and columns are as wide as so many digits. */
const OTHER_FONT = 0.82;
/** Pixels across a printed page at full size. */
const PAGE_WIDTH: Readonly<Record<PrintSetup["paper"], Readonly<Record<"portrait" | "landscape", number>>>> = {
  A4: { portrait: 718, landscape: 1040 },
  Letter: { portrait: 740, landscape: 975 },
};

/** Gives each named cell or block its name. */
export function freeSheet(sheet: FreeSheet, { put, headings, paper }: SheetBase, names: WrittenName[]): WrittenSheet {
  const first = sheet.heading.length + 1;
  const blank = blankSheet(sheet.name, paper);
  const prefix = sheetPrefix(sheet.name);
  const cells: WrittenCell[] = [...headings];
  const validations: Validation[] = [];
  const conditionals: Conditional[] = [];
  const merges: Area[] = [];
  for (const cell of sheet.cells) {
    const area = areaOf(cell, first);
    // One by one: a block has more cells than a call takes arguments.
    for (const one of writtenCells(cell, area, put)) cells.push(one);
    if (cell.name !== undefined) names.push({ name: cell.name, formula: `${prefix}${fixedAreaName(area)}` });
    if (cell.look === "typed") validations.push(...validationsOf({ ...cell, label: cell.label ?? "This cell" }, area));
    if (cell.grade === true) conditionals.push(...gradesIn(cell, area));
    if (cell.across !== undefined && cell.across > 1)
      merges.push({ ...area, endColumn: area.startColumn + cell.across - 1 });
  }
  const taken = new Set(cells.map(({ row, column }) => `${row} ${column}`));
  for (const box of sheet.pictures ?? []) {
    cells.push(...boxCells(box, first, taken));
    names.push({ name: boxName(box), formula: boxFormula(box, sheet.name, first), hidden: true });
  }
  const heights = Object.entries(sheet.heights ?? {}).map(([row, height]) => [first + Number(row), height] as const);
  return {
    ...blank,
    cells,
    columns: [
      ...sheet.widths.map((width, column) => ({ column, width })),
      ...workingColumns(sheet).map((column) => ({ column, width: DEFAULT_WIDTH, folded: true })),
    ],
    rowHeights: new Map([...blank.rowHeights, ...heights]),
    validations,
    conditionals,
    merges,
    pictures: (sheet.pictures ?? []).flatMap((box) => pictureOf(box, first)),
    frozen: frozenOf(sheet, first),
    isProtected: true,
    print: printOf(sheet.print ?? {}, { print: blank.print, widths: sheet.widths, first, prefix }),
  };
}

function areaOf({ row, column, size }: FreeCell, first: number): Area {
  const { rows, columns } = size ?? { rows: 1, columns: 1 };
  return {
    startRow: first + row,
    endRow: first + row + rows - 1,
    startColumn: column,
    endColumn: column + columns - 1,
  };
}

/** The cell itself, and the looks of the block it stands for. */
function writtenCells(cell: FreeCell, area: Area, put: SheetBase["put"]): WrittenCell[] {
  const style = styleOf(cell);
  const { startRow, startColumn } = area;
  const anchor = put(startRow, startColumn, cell.value, style);
  // Of one cell too: else Excel takes one value of every range that stands in it. Merged cells take no array.
  const spills = isFormula(cell.value ?? null) && (cell.across ?? 1) === 1;
  const written: WrittenCell[] = [spills ? { ...anchor, spill: cell.size ?? { rows: 1, columns: 1 } } : anchor];
  const endColumn = cell.across === undefined ? area.endColumn : startColumn + cell.across - 1;
  for (let row = startRow; row <= area.endRow; row++)
    for (let column = startColumn; column <= endColumn; column++)
      if (row !== startRow || column !== startColumn)
        written.push(put(row, column, cell.values?.[row - startRow]?.[column - startColumn], style));
  return written;
}

function styleOf({ look: kind, format, align, value }: FreeCell): CellStyle {
  const isNumber = align === "right" || (align === undefined && (format !== undefined || typeof value === "number"));
  const plain: CellStyle = { ...(format === undefined ? {} : { format }), ...(align === undefined ? {} : { align }) };
  switch (kind) {
    case "typed":
      return look.field(format, false, isNumber);
    case "computed":
      return look.field(format, true, isNumber);
    case "header":
      return { ...look.freeHeader(true), ...plain };
    case "typedHeader":
      return { ...look.freeHeader(false), ...plain };
    case "subheading":
      return { ...look.subheading, ...plain };
    case "label":
      return { ...look.label, ...plain };
    case "words":
      return { ...look.line, align: "left", indent: 1, ...plain };
    case "strong":
      return { ...look.strong, ...plain };
    case "muted":
      return { ...look.muted, ...plain };
  }
}

function gradesIn({ value }: FreeCell, area: Area): Conditional[] {
  const grows = isFormula(value ?? null) && area.endRow > area.startRow;
  const first = cellName(area.startRow, area.startColumn);
  return look.gradeLooks.map((gradeLook, grade) => ({
    area: grows ? { ...area, endRow: area.endRow + GROWTH } : area,
    formula: `=LEFT(${first}&" ",2)="${grade} "`,
    look: gradeLook,
  }));
}

/** A light field with a thin frame, as far as no cell of the description stands there. */
function boxCells(box: PictureBox, first: number, taken: ReadonlySet<string>): WrittenCell[] {
  const [top, left] = [first + box.row, box.column];
  const [bottom, right] = [top + box.rows - 1, left + box.columns - 1];
  const cells: WrittenCell[] = [];
  for (let row = top; row <= bottom; row++)
    for (let column = left; column <= right; column++)
      if (!taken.has(`${row} ${column}`))
        cells.push({
          row,
          column,
          style: look.pictureField({
            top: row === top,
            bottom: row === bottom,
            left: column === left,
            right: column === right,
          }),
        });
  return cells;
}

function boxArea({ row, column, rows, columns }: PictureBox, first: number): Area {
  return {
    startRow: first + row,
    endRow: first + row + rows - 1,
    startColumn: column,
    endColumn: column + columns - 1,
  };
}

function pictureOf(box: PictureBox, first: number): WrittenSheet["pictures"] {
  if (box.base64 === undefined) return [];
  const bytes = Uint8Array.from(atob(box.base64), (char) => char.charCodeAt(0));
  const { shown, orientation, alternative = shown === undefined ? box.kind : `${box.kind} ${shown}` } = box;
  return [
    {
      bytes,
      box: boxArea(box, first),
      alternative,
      ...(shown === undefined ? {} : { name: pictureName(boxKey(box), shown) }),
      ...(orientation === undefined ? {} : { orientation }),
    },
  ];
}

function frozenOf({ frozen }: FreeSheet, first: number): WrittenSheet["frozen"] {
  return frozen === undefined
    ? { rows: 1, columns: 0 }
    : { rows: frozen.rows === 0 ? 0 : first + frozen.rows, columns: frozen.columns };
}

interface Printed {
  readonly print: PrintSetup;
  readonly widths: readonly number[];
  readonly first: number;
  readonly prefix: string;
}

/** Excel ignores breaks set by hand where it fits a sheet to pages: a sheet that has some is scaled instead. */
function printOf(asked: FreePrint, { print, widths, first, prefix }: Printed): PrintSetup {
  const landscape = asked.landscape === true;
  const width = widths.reduce((sum, one) => sum + one, 0) || DEFAULT_WIDTH;
  const page = PAGE_WIDTH[print.paper][landscape ? "landscape" : "portrait"];
  const breaks = asked.breaksBefore?.map((row) => first + row);
  const last = cellName(0, Math.max(0, widths.length - 1)).replace(/\d+$/, "");
  return {
    ...print,
    landscape,
    repeatedRows: asked.repeatHeading === true ? first : 0,
    ...(breaks === undefined
      ? {}
      : { breaks, scale: Math.max(10, Math.min(100, Math.floor((100 * page * OTHER_FONT) / width))) }),
    ...(asked.rowsNamed === undefined
      ? {}
      : { area: `${prefix}$A$1:INDEX(${prefix}$${last}:$${last},${first}+${asked.rowsNamed})` }),
  };
}
