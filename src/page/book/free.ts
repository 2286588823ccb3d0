/** Free sheets in the grid: where their cells stand, and how they are filled. */
import {
  BooleanNumber,
  BorderStyleTypes,
  HorizontalAlign,
  type IStyleData,
  type IWorksheetData,
  VerticalAlign,
  WrapStrategy,
} from "@univerjs/core";
import type { FreeCell, FreeSheet } from "../../templates/contract.js";
import { lightTones as tones } from "../../host/tones.js";
import { workingColumns } from "../../host/working-columns.js";
import { type Box, type CellPlace, contains } from "./a1.js";
import { freeBox } from "./free-box.js";
import type { FreeLayout, SheetLayout } from "./layout.js";
import { fieldStyle, freeHeaderStyle, labelStyle, lineStyle, noteStyle, subheadingStyle } from "./styles.js";
import type { SheetWriter } from "./writer.js";

/** How far a spill that has grown still counts as the block it began with. */
const GROWTH = 500;

function isFormulaCell({ value }: FreeCell): boolean {
  return typeof value === "string" && value.startsWith("=");
}

interface Placed {
  readonly cell: FreeCell;
  readonly box: Box;
}

/** Cells by the rows they stand in, and the spills that may grow: every cell that is drawn asks. */
interface Places {
  readonly byRow: ReadonlyMap<number, readonly Placed[]>;
  readonly growing: readonly Placed[];
}

const known = new WeakMap<FreeSheet, Places>();

function placesOf({ sheet, first }: FreeLayout): Places {
  const found = known.get(sheet);
  if (found !== undefined) return found;
  const byRow = new Map<number, Placed[]>();
  const growing: Placed[] = [];
  for (const cell of sheet.cells) {
    const placed = { cell, box: freeBox(cell, first) };
    for (let row = placed.box.startRow; row <= placed.box.endRow; row++) {
      const own = byRow.get(row);
      if (own === undefined) byRow.set(row, [placed]);
      else own.push(placed);
    }
    if (cell.size !== undefined && isFormulaCell(cell)) growing.push(placed);
  }
  const places = { byRow, growing };
  known.set(sheet, places);
  return places;
}

/** The described cell that a place belongs to, also below a spill that has grown. */
export function freeCellAt(sheet: SheetLayout | undefined, place: CellPlace): FreeCell | undefined {
  if (sheet?.kind !== "free") return undefined;
  const { byRow, growing } = placesOf(sheet);
  const found = byRow.get(place.row)?.find(({ box }) => contains(box, place));
  if (found !== undefined) return found.cell;
  return growing.find(({ box }) => contains({ ...box, startRow: box.endRow + 1, endRow: box.endRow + GROWTH }, place))
    ?.cell;
}

export function fillFree({ sheet, first }: FreeLayout, writer: SheetWriter): Partial<IWorksheetData> {
  const mergeData: Box[] = [];
  let [lastRow, lastColumn] = [first, sheet.widths.length];
  const taken = new Set<string>();
  for (const cell of sheet.cells) {
    const box = freeBox(cell, first);
    const style = styleOf(cell);
    for (let row = box.startRow; row <= box.endRow; row++)
      for (let column = box.startColumn; column <= box.endColumn; column++) {
        const isFirst = row === box.startRow && column === box.startColumn;
        const value = isFirst ? cell.value : cell.values?.[row - box.startRow]?.[column - box.startColumn];
        writer.put(row, column, value, style);
        taken.add(`${String(row)} ${String(column)}`);
      }
    if (cell.across !== undefined && cell.across > 1) mergeData.push(box);
    lastRow = Math.max(lastRow, box.endRow);
    lastColumn = Math.max(lastColumn, box.endColumn + 1);
  }
  for (const { row, column, rows, columns } of sheet.pictures ?? []) {
    for (let r = first + row; r < first + row + rows; r++)
      for (let c = column; c < column + columns; c++)
        if (!taken.has(`${String(r)} ${String(c)}`)) writer.put(r, c, undefined, pictureStyle);
    lastRow = Math.max(lastRow, first + row + rows - 1);
  }
  const frozen = sheet.frozen ?? { rows: 0, columns: 0 };
  const ySplit = frozen.rows === 0 ? 1 : first + frozen.rows;
  return {
    rowCount: lastRow + 1,
    columnCount: lastColumn,
    columnData: {
      ...Object.fromEntries(sheet.widths.map((w, column) => [column, { w }])),
      ...Object.fromEntries(workingColumns(sheet).map((column) => [column, { hd: BooleanNumber.TRUE }])),
    },
    rowData: Object.fromEntries(Object.entries(sheet.heights ?? {}).map(([row, h]) => [first + Number(row), { h }])),
    mergeData,
    freeze: {
      xSplit: frozen.columns,
      ySplit,
      startRow: ySplit,
      startColumn: frozen.columns === 0 ? -1 : frozen.columns,
    },
  };
}

/** Words there run over the whole box. */
const pictureStyle: IStyleData = { ...noteStyle, bg: { rgb: tones.computed } };

function styleOf(cell: FreeCell): IStyleData {
  const { look, format, align, value } = cell;
  const isNumber = align === "right" || (align === undefined && (format !== undefined || typeof value === "number"));
  const plain: IStyleData = {
    ...(format === undefined ? {} : { n: { pattern: format } }),
    ...(align === undefined ? {} : { ht: align === "right" ? HorizontalAlign.RIGHT : HorizontalAlign.LEFT }),
  };
  const wrapped: IStyleData = { tb: WrapStrategy.WRAP };
  switch (look) {
    case "typed":
      return { ...fieldStyle(format, false, isNumber), ...(isNumber ? {} : wrapped), bd: hairlines };
    case "computed":
      return { ...fieldStyle(format, true, isNumber), ...(isNumber ? {} : wrapped), bd: hairlines };
    case "header":
    case "typedHeader":
      return { ...freeHeaderStyle(look === "header"), ...plain };
    case "subheading":
      return { ...subheadingStyle, ...plain };
    case "label":
      return { ...labelStyle, ...plain };
    case "words":
      return { ...lineStyle, ...plain };
    case "strong":
      return { ...labelStyle, bl: BooleanNumber.TRUE, ...wrapped, ...plain };
    case "muted":
      return { ...noteStyle, vt: VerticalAlign.MIDDLE, ...plain };
  }
}

const hairline = { s: BorderStyleTypes.THIN, cl: { rgb: tones.line } };
const hairlines: NonNullable<IStyleData["bd"]> = { b: hairline };
