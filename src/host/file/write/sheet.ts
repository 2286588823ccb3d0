/** A worksheet part (ECMA-376 part 1, 18.3.1.99): its elements in the order that Excel demands. */
import { numberText } from "../sheet/patch.js";
import { counted, element, MAIN, RELATIONSHIPS, xstring, XML_HEAD } from "./element.js";
import type { PrintSetup, WrittenCell, WrittenColumn, WrittenSheet } from "./model.js";
import { areaName, cellName } from "./place.js";
import { conditionalsXml, validationsXml } from "./rules.js";
import { callsOurs, storedFormula } from "./stored-formula.js";
import type { SharedStrings } from "./strings.js";
import type { Styles } from "./styles.js";

/** Pixels to the points of a row and to the characters of a column: 96 dots an inch, digits of 7 pixels in Arial 10. */
const POINTS = 0.75;
const DIGIT = 7;

export interface SheetParts {
  readonly styles: Styles;
  readonly strings: SharedStrings;
  /** Ids of the relationships to its tables and its drawing. */
  readonly tables: readonly string[];
  readonly drawing: string | undefined;
  readonly isFirst: boolean;
}

export function sheetXml(sheet: WrittenSheet, parts: SheetParts): string {
  const hasFolded = sheet.columns.some(({ folded }) => folded === true);
  return (
    XML_HEAD +
    element(
      "worksheet",
      { xmlns: MAIN, "xmlns:r": RELATIONSHIPS },
      element("sheetPr", {}, element("pageSetUpPr", { fitToPage: sheet.print.breaks === undefined })),
      element("dimension", { ref: dimensionOf(sheet.cells) }),
      element("sheetViews", {}, viewXml(sheet, parts.isFirst)),
      element("sheetFormatPr", {
        defaultRowHeight: sheet.rowHeight * POINTS,
        customHeight: true,
        outlineLevelCol: hasFolded ? 1 : undefined,
      }),
      columnsXml(sheet.columns, parts.styles),
      element("sheetData", {}, ...rowsXml(sheet, parts)),
      sheet.isProtected ? protectionXml() : "",
      counted(
        "mergeCells",
        (sheet.merges ?? []).map((area) => element("mergeCell", { ref: areaName(area) })),
      ),
      conditionalsXml(sheet.conditionals, parts.styles),
      validationsXml(sheet.validations),
      ...printXml(sheet.print),
      parts.drawing === undefined ? "" : element("drawing", { "r:id": parts.drawing }),
      counted(
        "tableParts",
        parts.tables.map((id) => element("tablePart", { "r:id": id })),
      ),
    )
  );
}

function dimensionOf(cells: readonly WrittenCell[]): string {
  if (cells.length === 0) return "A1";
  const rows = cells.map(({ row }) => row);
  const columns = cells.map(({ column }) => column);
  const least = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.min(a, b));
  const most = (numbers: readonly number[]): number => numbers.reduce((a, b) => Math.max(a, b));
  return areaName({
    startRow: least(rows),
    endRow: most(rows),
    startColumn: least(columns),
    endColumn: most(columns),
  });
}

function viewXml({ frozen: { rows, columns } }: WrittenSheet, isFirst: boolean): string {
  const attributes = { showGridLines: false, tabSelected: isFirst ? true : undefined, workbookViewId: 0 };
  if (rows === 0 && columns === 0) return element("sheetView", attributes);
  const pane = rows === 0 ? "topRight" : columns === 0 ? "bottomLeft" : "bottomRight";
  const topLeftCell = cellName(rows, columns);
  return element(
    "sheetView",
    attributes,
    element("pane", {
      xSplit: columns === 0 ? undefined : columns,
      ySplit: rows === 0 ? undefined : rows,
      topLeftCell,
      activePane: pane,
      state: "frozen",
    }),
    element("selection", { pane, activeCell: topLeftCell, sqref: topLeftCell }),
  );
}

/** The column after a folded group carries the button that unfolds it. */
function columnsXml(columns: readonly WrittenColumn[], styles: Styles): string {
  const sorted = [...columns].sort((a, b) => a.column - b.column);
  const last = sorted.at(-1);
  const items = sorted.map(({ column, width, folded = false, style }, at) => {
    const isAfterGroup = !folded && sorted[at - 1]?.folded === true;
    return columnXml({ column, width, style: style && styles.index(style), folded, isAfterGroup });
  });
  if (last?.folded === true) items.push(columnXml({ column: last.column + 1, width: 14, isAfterGroup: true }));
  return items.length === 0 ? "" : element("cols", {}, ...items);
}

function columnXml({
  column,
  width,
  style,
  folded = false,
  isAfterGroup = false,
}: {
  column: number;
  width: number;
  style?: number | undefined;
  folded?: boolean;
  isAfterGroup?: boolean;
}): string {
  return element("col", {
    min: column + 1,
    max: column + 1,
    width: numberText(Math.round((width / DIGIT) * 256) / 256),
    style,
    hidden: folded ? true : undefined,
    customWidth: true,
    outlineLevel: folded ? 1 : undefined,
    collapsed: isAfterGroup ? true : undefined,
  });
}

function rowsXml({ cells, rowHeights, growing }: WrittenSheet, parts: SheetParts): string[] {
  const byRow = new Map<number, WrittenCell[]>();
  for (const row of rowHeights.keys()) byRow.set(row, []);
  for (const cell of cells) {
    const row = byRow.get(cell.row);
    if (row) row.push(cell);
    else byRow.set(cell.row, [cell]);
  }
  const isGrowing = (row: number): boolean => growing !== undefined && row >= growing.from && row <= growing.to;
  return [...byRow]
    .sort(([a], [b]) => a - b)
    .map(([row, own]) => {
      const height = rowHeights.get(row);
      const attributes = {
        r: row + 1,
        ht: height === undefined ? undefined : height * POINTS,
        customHeight: height === undefined || isGrowing(row) ? undefined : true,
      };
      return element("row", attributes, ...own.sort((a, b) => a.column - b.column).map((cell) => cellXml(cell, parts)));
    });
}

function cellXml(cell: WrittenCell, { styles, strings }: SheetParts): string {
  const { row, column, value = null, formula, style } = cell;
  const attributes = { r: cellName(row, column), s: style && styles.index(style) };
  if (formula !== undefined) {
    const isDynamic = cell.spill !== undefined || callsOurs(formula);
    const dynamic = isDynamic ? { t: "array", ref: spillName(cell) } : {};
    return element(
      "c",
      { ...attributes, cm: isDynamic ? 1 : undefined },
      element("f", dynamic, xstring(storedFormula(formula))),
    );
  }
  if (value === null) return element("c", attributes);
  if (typeof value === "number") return element("c", attributes, element("v", {}, numberText(value)));
  if (typeof value === "boolean") return element("c", { ...attributes, t: "b" }, element("v", {}, value ? "1" : "0"));
  return element("c", { ...attributes, t: "s" }, element("v", {}, String(strings.place(value))));
}

function spillName({ row, column, spill = { rows: 1, columns: 1 } }: WrittenCell): string {
  const { rows, columns } = spill;
  return areaName({ startRow: row, endRow: row + rows - 1, startColumn: column, endColumn: column + columns - 1 });
}

/** Without a password: whoever wants to change the sheet lifts it by one click. Widths, folding and looking stay free. */
function protectionXml(): string {
  return element("sheetProtection", {
    sheet: true,
    objects: true,
    scenarios: true,
    formatCells: false,
    formatColumns: false,
    formatRows: false,
    sort: false,
    autoFilter: false,
  });
}

function printXml({ landscape, paper, pagesWide, foot, breaks, scale }: PrintSetup): string[] {
  const margin = { left: 0.4, right: 0.4, top: 0.5, bottom: 0.75, header: 0.3, footer: 0.3 };
  return [
    element("pageMargins", margin),
    element("pageSetup", {
      paperSize: paper === "A4" ? 9 : 1,
      ...(breaks === undefined ? { fitToWidth: pagesWide, fitToHeight: 0 } : { scale: scale ?? 100 }),
      orientation: landscape ? "landscape" : "portrait",
    }),
    element("headerFooter", {}, element("oddFooter", {}, xstring(footXml(foot)))),
    breaksXml(breaks ?? []),
  ];
}

/** Each break stands after the row before it; 16383 is the last column (18.3.1.74). */
function breaksXml(breaks: readonly number[]): string {
  if (breaks.length === 0) return "";
  const items = breaks.map((row) => element("brk", { id: row, max: 16383, man: true }));
  return element("rowBreaks", { count: breaks.length, manualBreakCount: breaks.length }, ...items);
}

/** At most 255 characters with its marks (18.3.1.39). */
function footXml({ left = "", right = "" }: PrintSetup["foot"]): string {
  // A digit behind the size of the type would be read as part of it.
  const plain = (text: string): string => text.replaceAll("&", "&&").replace(/^(?=\d)/, " ");
  const text = `&L&8${plain(left)}&R&8${right === "" ? "" : `${plain(right)}   `}Page &P of &N`;
  if (text.length > 255) throw new Error(`This foot of a page is too long: ${text}`);
  return text;
}
