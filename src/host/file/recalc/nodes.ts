/** Every formula of a workbook with what it reads, and which cell belongs to which result. */
import { Preparer } from "../formula/prepare.js";
import type { Area } from "../formula/areas.js";
import type { PreparedFormula } from "../formula/prepare.js";
import { moveFormula } from "../formula/segments.js";
import { parseReference } from "../../reference.js";
import type { FileCell } from "../sheet/scan.js";
import { keyOf } from "./load.js";
import type { LoadedBook, LoadedSheet } from "./load.js";

/** A formula of the workbook. */
export interface FormulaNode {
  readonly index: number;
  readonly sheet: LoadedSheet;
  readonly cell: FileCell;
  /** As its cell holds it, followers of shared formulas written out. */
  readonly formula: string;
  readonly kind: "single" | "array" | "dynamic" | "data table";
  /** Cells that its saved result takes up. */
  readonly range: Area;
  readonly prepared: PreparedFormula;
}

export interface Nodes {
  readonly all: readonly FormulaNode[];
  /** The formula whose result a cell shows, or undefined for a constant. */
  readonly at: (sheet: number, row: number, column: number) => FormulaNode | undefined;
  /** The formulas whose results lie in an area, each once. */
  readonly within: (area: Area) => FormulaNode[];
}

const DATA_TABLE: PreparedFormula = {
  text: "",
  areas: [],
  isOurs: false,
  distrust: "its value belongs to a what-if data table",
  isVolatile: false,
};

export function nodesOf(book: LoadedBook): Nodes {
  const preparer = new Preparer({ sheets: book.sheets, names: book.facts.definedNames, tables: book.tables });
  const all: FormulaNode[] = [];
  for (const sheet of book.sheets) {
    const shared = new Map<string, { text: string; row: number; column: number }>();
    for (const cell of sheet.cells.values()) {
      const { formula } = cell;
      if (!formula) continue;
      const text = written(cell, shared, preparer.isSheet);
      const isDynamic = book.dynamicArrays.has(cell.cellMetadata);
      const kind =
        formula.kind === "dataTable"
          ? "data table"
          : isDynamic
            ? "dynamic"
            : formula.kind === "array"
              ? "array"
              : "single";
      const place = { sheet: sheet.index, row: cell.row, column: cell.column, isArray: kind !== "single" };
      const prepared = kind === "data table" ? DATA_TABLE : preparer.prepare(text, place);
      all.push({ index: all.length, sheet, cell, formula: text, kind, range: rangeOf(cell, sheet.index), prepared });
    }
  }
  return { all, ...lookup(all) };
}

/** The formula of a cell; a follower of a shared one gets the first one's, moved. */
function written(
  cell: FileCell,
  shared: Map<string, { text: string; row: number; column: number }>,
  isSheet: (name: string) => boolean,
): string {
  const { kind, sharedIndex, text } = cell.formula!;
  if (kind !== "shared" || sharedIndex === undefined) return text;
  if (text !== "") {
    shared.set(sharedIndex, { text, row: cell.row, column: cell.column });
    return text;
  }
  const first = shared.get(sharedIndex);
  return first ? moveFormula(first.text, cell.row - first.row, cell.column - first.column, isSheet) : "";
}

function rangeOf(cell: FileCell, sheet: number): Area {
  const { formula, row, column } = cell;
  const range = formula?.kind === "array" && formula.ref !== undefined ? parseReference(formula.ref) : undefined;
  if (range) return { ...range, sheet };
  return { sheet, startRow: row, endRow: row, startColumn: column, endColumn: column };
}

/** Finds formulas by place: per sheet and column the rows in order. */
function lookup(all: readonly FormulaNode[]): Pick<Nodes, "at" | "within"> {
  const byCell = new Map<number, Map<number, FormulaNode>>();
  const rowsOf = new Map<number, Map<number, number[]>>();
  for (const node of all) {
    const { sheet, startRow, endRow, startColumn, endColumn } = node.range;
    const cells = mapIn(byCell, sheet, () => new Map<number, FormulaNode>());
    const columns = mapIn(rowsOf, sheet, () => new Map<number, number[]>());
    for (let c = startColumn; c <= endColumn; c++) {
      const rows = mapIn(columns, c, (): number[] => []);
      for (let r = startRow; r <= endRow; r++) {
        cells.set(keyOf(r, c), node);
        rows.push(r);
      }
    }
  }
  for (const columns of rowsOf.values()) for (const rows of columns.values()) rows.sort((a, b) => a - b);
  const at: Nodes["at"] = (sheet, row, column) => byCell.get(sheet)?.get(keyOf(row, column));
  return {
    at,
    within: ({ sheet, startRow, endRow, startColumn, endColumn }) => {
      const columns = rowsOf.get(sheet);
      if (!columns) return [];
      const found = new Set<FormulaNode>();
      const visit = (column: number, rows: readonly number[]): void => {
        for (let i = firstFrom(rows, startRow); i < rows.length && rows[i]! <= endRow; i++) {
          const node = at(sheet, rows[i]!, column);
          if (node) found.add(node);
        }
      };
      if (endColumn - startColumn < columns.size) {
        for (let c = startColumn; c <= endColumn; c++) visit(c, columns.get(c) ?? []);
      } else {
        for (const [c, rows] of columns) if (c >= startColumn && c <= endColumn) visit(c, rows);
      }
      return [...found];
    },
  };
}

function mapIn<Key, Value>(map: Map<Key, Value>, key: Key, make: () => Value): Value {
  let value = map.get(key);
  if (value === undefined) map.set(key, (value = make()));
  return value;
}

/** Index of the first number from `least` on in a rising list. */
function firstFrom(numbers: readonly number[], least: number): number {
  let [low, high] = [0, numbers.length];
  while (low < high) {
    const middle = (low + high) >> 1;
    if (numbers[middle]! < least) low = middle + 1;
    else high = middle;
  }
  return low;
}
