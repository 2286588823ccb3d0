/** A described table sheet: group names, units and headers above, the typed table, and the spills beside it. */
import type { ColumnDescription, TableSheet } from "../../../templates/contract.js";
import type { TableInfo } from "../../port.js";
import * as look from "./looks.js";
import type { Area, Conditional, PrintSetup, Validation, WrittenCell, WrittenColumn, WrittenSheet } from "./model.js";
import { cellName } from "./place.js";
import { blankSheet, type SheetBase, validationsOf } from "./sheet-base.js";

const GAP_WIDTH = 14;
/** Space at the sides of a header, and what Excel's button to sort and filter takes. */
const PADDING = 16;
const BUTTON = 18;
const HEADER_LINE = 15;
const BODY_LINE = 16;
/** 9 and 10 points in pixels; of running text, which is narrower than its letters one by one, somewhat less. */
const HEADER_SIZE = 12;
const BODY_SIZE = 12.8;
/** Rows below the last one in which grades keep their looks when the table grows. */
const GROWTH = 2000;
/** Pixels across a printed page, and how small a page may be made at most. */
const PAGE_WIDTH: Readonly<Record<PrintSetup["paper"], number>> = { A4: 1040, Letter: 975 };
const LEAST_SCALE = 0.55;

interface Place {
  readonly column: ColumnDescription;
  readonly at: number;
  readonly computed: boolean;
  readonly grade: boolean;
  readonly width: number;
  /** Lines of its header. */
  readonly lines: number;
}

export function describedTable(sheet: TableSheet, info: TableInfo, { put, headings, paper }: SheetBase): WrittenSheet {
  const { headerRow, firstRow, lastRow } = info;
  const gap = sheet.columns.length;
  const places = [
    ...sheet.columns.map((column, at) => placeOf(column, at, false)),
    ...sheet.computed.map((column, i) => placeOf(column, gap + 1 + i, true, column.grade === true)),
  ];
  const cells: WrittenCell[] = [...headings];
  let group = "";
  for (const { column, at, computed } of places) {
    if (column.group !== group || at === gap + 1) cells.push(put(headerRow - 2, at, column.group, look.group));
    group = column.group;
    if (column.unit !== undefined) cells.push(put(headerRow - 1, at, column.unit, look.unit(column)));
    cells.push(put(headerRow, at, column.header, look.header(column, computed)));
    const style = look.body(column, computed);
    for (let row = firstRow; row <= lastRow; row++) {
      const cell = computed ? undefined : sheet.rows[row - firstRow]?.[at];
      if (!computed || row > firstRow) cells.push(put(row, at, cell, style));
    }
  }
  const rows = lastRow - firstRow + 1;
  sheet.computed.forEach((column, i) => {
    const anchor = put(firstRow, gap + 1 + i, column.formula, look.body(column, true));
    cells.push({ ...anchor, spill: { rows, columns: 1 } });
  });
  const blank = blankSheet(sheet.name, paper);
  const heights = new Map([...blank.rowHeights, [headerRow - 2, 22], [headerRow - 1, 18]]);
  const height = 10 + HEADER_LINE * Math.max(1, ...places.map(({ lines }) => lines));
  return {
    ...blank,
    cells,
    columns: columnsOf(places, gap, sheet.computed.length > 0),
    rowHeights: new Map([...heights, [headerRow, height], ...bodyHeights(sheet, places, firstRow)]),
    growing: { from: firstRow, to: lastRow },
    frozen: { rows: headerRow + 1, columns: sheet.frozenColumns },
    tables: [
      {
        name: sheet.tableName,
        area: { startRow: headerRow, endRow: lastRow, startColumn: 0, endColumn: gap - 1 },
        columns: sheet.columns.map(({ header }) => header),
        // The button would lie on a header that stands at the right.
        withoutButton: sheet.columns.flatMap((column, at) => (look.side(column) === "right" ? [at] : [])),
      },
    ],
    validations: places.flatMap((place) => validationsAt(place, info)).concat(guards(sheet, info)),
    conditionals: places.filter(({ grade }) => grade).flatMap(({ at }) => gradesAt(at, info)),
    print: {
      ...blank.print,
      landscape: true,
      pagesWide: pagesWide(places, paper),
      repeatedRows: headerRow + 1,
      repeatedColumns: sheet.frozenColumns,
    },
  };
}

/** Of rows with a typed text that takes more than one line. */
function bodyHeights(
  { rows }: TableSheet,
  places: readonly Place[],
  firstRow: number,
): [row: number, height: number][] {
  return rows.flatMap((row, i) => {
    const lines = row.map((cell, at) => {
      const place = places[at]!;
      const isText = typeof cell === "string" && place.column.format === undefined;
      return isText ? linesOf(cell.split(" "), place.width - PADDING, BODY_SIZE) : 1;
    });
    const most = Math.max(1, ...lines);
    return most === 1 ? [] : [[firstRow + i, 10 + BODY_LINE * most] as [number, number]];
  });
}

function placeOf(column: ColumnDescription, at: number, computed: boolean, grade = false): Place {
  const beside = PADDING + (computed || look.side(column) === "right" ? 0 : BUTTON);
  const words = `${computed ? "= " : ""}${column.header}`.split(" ");
  // A grade has its bars before the words.
  const given = column.width + (grade ? 18 : 0);
  const width = Math.max(given, beside + Math.max(...words.map((word) => textWidth(word))));
  return { column, at, computed, grade, width, lines: linesOf(words, width - beside) };
}

function linesOf(words: readonly string[], width: number, size = HEADER_SIZE): number {
  let [lines, used] = [1, 0];
  for (const word of words) {
    const wide = textWidth(word, size);
    if (used > 0 && used + wide > width) [lines, used] = [lines + 1, 0];
    used += wide + textWidth(" ", size);
  }
  return lines;
}

/** About as wide as Arial shows it, in pixels. */
function textWidth(text: string, size = HEADER_SIZE): number {
  let width = 0;
  for (const char of text)
    width += /[iljft.,:;'()| -]/.test(char) ? 0.28 : /[mwMW]/.test(char) ? 0.83 : /[A-Z]/.test(char) ? 0.7 : 0.556;
  return Math.ceil(width * size);
}

function columnsOf(places: readonly Place[], gap: number, hasGap: boolean): WrittenColumn[] {
  const columns = places.map(({ column, at, computed, width }) => ({
    column: at,
    width,
    ...(column.folded === true ? { folded: true } : {}),
    style: look.beyond(column, computed),
  }));
  return hasGap ? [...columns, { column: gap, width: GAP_WIDTH }] : columns;
}

function bodyArea(at: number, { firstRow, lastRow }: TableInfo): Area {
  return { startRow: firstRow, endRow: lastRow, startColumn: at, endColumn: at };
}

/** Choices and limits of a typed column, and the note beside its header when that is selected. */
function validationsAt({ column, at, computed }: Place, info: TableInfo): Validation[] {
  const { header, note, unit, choices, range } = column;
  const { headerRow } = info;
  const found: Validation[] = [];
  if (note !== undefined) {
    const area = { startRow: headerRow, endRow: headerRow, startColumn: at, endColumn: at };
    found.push({ area, rule: { kind: "any" }, prompt: { title: header, text: note } });
  }
  if (!computed) {
    const rule = { label: header, ...(unit && { unit }), ...(choices && { choices }), ...(range && { range }) };
    found.push(...validationsOf(rule, bodyArea(at, info)));
  }
  return found;
}

/**
 * What is worked out cannot be typed over. Not by protecting the sheet: Excel would then let no table grow, no folded
 * columns unfold, and no command of the pane enter the formulas again.
 */
function guards(sheet: TableSheet, { firstRow, lastRow }: TableInfo): Validation[] {
  if (sheet.computed.length === 0) return [];
  const startColumn = sheet.columns.length + 1;
  const area = { startRow: firstRow, endRow: lastRow, startColumn, endColumn: startColumn + sheet.computed.length - 1 };
  const text = "This cell is worked out from what is typed in the green columns at the left. Change it there.";
  return [
    {
      area,
      rule: { kind: "formula", formula: "FALSE" },
      strict: true,
      refusal: { title: "Worked out by the sheet", text },
    },
  ];
}

/** A whole number from 0 to 4, or words that begin with one. */
function gradesAt(at: number, { firstRow, lastRow }: TableInfo): Conditional[] {
  const area = { ...bodyArea(at, { firstRow, lastRow } as TableInfo), endRow: lastRow + GROWTH };
  const cell = cellName(firstRow, at);
  return look.gradeLooks.map((gradeLook, grade) => ({
    area,
    formula: `=LEFT(${cell}&" ",2)="${grade} "`,
    look: gradeLook,
  }));
}

function pagesWide(places: readonly Place[], paper: PrintSetup["paper"]): number {
  const width = places.reduce((sum, { column, width: own }) => sum + (column.folded === true ? 0 : own), 0);
  return Math.max(1, Math.ceil((width * LEAST_SCALE) / PAGE_WIDTH[paper]));
}
