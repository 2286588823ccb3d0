/** Works the formulas of a workbook out again, without Excel, and says of each what came of it. */
import type { Cell, CellError, FunctionSpec, Grid } from "../../../functions/contract.js";
import { columnLetters } from "../../embedded/structured.js";
import { FormulaEngine } from "../../embedded/formula-engine.js";
import { plainMessage } from "../../plain-messages.js";
import type { Area } from "../formula/areas.js";
import { addressOf as rangeName } from "../formula/areas.js";
import { MOST_ROWS } from "../formula/segments.js";
import { withSpills } from "../formula/spills.js";
import type { FileCell, SavedValue } from "../sheet/cells.js";
import { worksheetFunctions } from "../worksheet/functions.js";
import type { Listener } from "../worksheet/functions.js";
import { keyOf, MOST_COLUMNS } from "./load.js";
import type { LoadedBook, LoadedSheet } from "./load.js";
import { noteGrown } from "./growth.js";
import { largest } from "./changes-magnitude.js";
import type { Clock } from "./nodes-clock.js";
import type { FormulaNode, Nodes } from "./nodes.js";
import { withRoom } from "./nodes-spill.js";
import { planOf } from "./order.js";
import { evaluateRun } from "./runs-evaluate.js";
import type { CellReader } from "./runs-evaluate.js";
import { Trust } from "./trust.js";

/** What came of one formula. */
export type Outcome =
  | { readonly node: FormulaNode; readonly status: "computed"; readonly result: Grid }
  | { readonly node: FormulaNode; readonly status: "kept"; readonly reason: string };

export interface RecalculateOptions {
  /** Every formula, not only ours and what depends on them. */
  readonly all: boolean;
  /** What NOW and TODAY are; without it they keep what is saved. */
  readonly clock?: Clock | undefined;
  /** Told now and then how many formulas are behind, of how many. */
  readonly onProgress?: (done: number, of: number) => void;
}

export interface Recalculation {
  /** Outcomes of the formulas that were to be worked out, in the order of the work. */
  readonly outcomes: readonly Outcome[];
  /** The largest number that a formula reads; of a very large range only its beginning is looked at. */
  readonly magnitudeOf: (node: FormulaNode) => number;
  /** A cell as it is afterwards; null for an empty one. */
  readonly valueAt: CellReader;
}

const PROGRESS_EVERY = 100;

/** Works formulas out, each after all that it reads. */
export async function recalculate(
  book: LoadedBook,
  specs: readonly FunctionSpec[],
  options: RecalculateOptions,
): Promise<Recalculation> {
  const apart = new Set<FileCell>();
  const grown = new Map<FileCell, Area>();
  for (;;) {
    const known = apart.size;
    const before = [...grown.values()];
    const found = await attempt(book, specs, options, { apart, grown });
    const isGrown = grown.size > before.length || before.some((area) => ![...grown.values()].includes(area));
    if (apart.size === known && !isGrown) return found;
  }
}

/** What is known better after an attempt than before it. */
interface Learnt {
  /** First cells of runs that go cell by cell; a run of which only some cells depend on a kept one is added. */
  readonly apart: Set<FileCell>;
  /** Cells of dynamic arrays that grow into what others read, and how far. */
  readonly grown: Map<FileCell, Area>;
}

async function attempt(
  book: LoadedBook,
  specs: readonly FunctionSpec[],
  { all, clock, onProgress }: RecalculateOptions,
  { apart, grown }: Learnt,
): Promise<Recalculation> {
  const { nodes, order } = planOf(book, specs, apart, clock, grown);
  const { nodes: ordered, reads, circular } = order;
  const specsByName = new Map(specs.map((spec) => [spec.name, spec]));
  const fresh = book.sheets.map(() => new Map<number, Cell>());
  const valueAt = (sheet: number, row: number, column: number): Cell => {
    const key = keyOf(row, column);
    const value = fresh[sheet]?.get(key);
    return value === undefined ? savedCell(book.sheets[sheet]!, key) : value;
  };
  const sizes = sizesOf(book, nodes.all);
  const trust = new Trust(book, valueAt);
  const heard: { doubt?: string; soughtNothing: boolean } = { soughtNothing: false };
  const listener: Listener = {
    doubt: (reason) => (heard.doubt ??= reason),
    soughtNothing: () => (heard.soughtNothing = true),
  };
  const engine = new FormulaEngine(
    specs,
    book.sheets.map((sheet) => ({
      name: sheet.name,
      ...sizes[sheet.index]!,
      valueAt: (row, column) => valueAt(sheet.index, row, column),
      formulaAt: (row, column) => (nodes.at(sheet.index, row, column) ? "=" : undefined),
    })),
    worksheetFunctions(book.facts.is1904, listener),
  );
  // What another workbook of this process left in the engine's caches bears the same names.
  engine.forgetCells();
  const reached = new Map<FormulaNode, Area>();
  const work = (node: FormulaNode): Promise<Outcome> => {
    if (node.run) return workOutRun(engine, node, nodes, specsByName, valueAt);
    const text = withSpills(node.prepared.text, (sheet, row, column) => {
      const spill = nodes.at(sheet, row, column);
      const area = spill === undefined ? undefined : (reached.get(spill) ?? spill.range);
      const isAnchor = area?.startRow === row && area.startColumn === column;
      return isAnchor && spill?.kind === "dynamic" ? rangeName(area, node.sheet.index, book.sheets) : "#REF!";
    });
    return workOut(engine, { ...node, prepared: { ...node.prepared, text } }, node);
  };
  const wanted = new Set<FormulaNode>();
  const keptBecause = new Map<FormulaNode, string>();
  const outcomes: Outcome[] = [];
  for (const [done, node] of ordered.entries()) {
    if (done % PROGRESS_EVERY === 0) onProgress?.(done, ordered.length);
    const before = reads[node.index] ?? [];
    if (!all && !node.prepared.isOurs && node.isAsked !== true && !before.some((other) => wanted.has(other))) continue;
    wanted.add(node);
    const kept = before.find((other) => keptBecause.has(other));
    if (kept && node.run && !apart.has(kept.cell)) apart.add(node.cell);
    const reason =
      node.prepared.distrust ??
      (node.sheet.isPatchable ? undefined : "its sheet is not written in UTF-8") ??
      (nodes.isOverlapping(node) ? "another cell or result stands in its cells" : undefined) ??
      (circular.has(node) ? "it leads back to itself" : undefined) ??
      (kept ? `it depends on ${addressOf(kept)}, which is kept` : undefined) ??
      trust.before(node, before);
    delete heard.doubt;
    heard.soughtNothing = false;
    let outcome: Outcome = reason === undefined ? await work(node) : { node, status: "kept", reason };
    if (outcome.status === "computed") {
      const why = trust.after(node, outcome.result, heard);
      if (why !== undefined) outcome = { node, status: "kept", reason: why };
    }
    if (outcome.status === "computed") outcome = { ...outcome, result: withRoom(node, outcome.result) };
    outcomes.push(outcome);
    if (outcome.status === "kept") keptBecause.set(node, outcome.reason);
    else {
      settle(outcome.node, outcome.result, fresh[node.sheet.index]!);
      if (node.kind === "dynamic") reached.set(node, spillOf(node, outcome.result));
    }
  }
  noteGrown(order, reached, grown);
  return { outcomes, magnitudeOf: (node) => largest(node.prepared.areas, valueAt), valueAt };
}

/** As large as the cells that a sheet has and every single one that a formula names: beyond it the engine knows no cells. */
function sizesOf(book: LoadedBook, all: readonly FormulaNode[]): { rows: number; columns: number }[] {
  const sizes = book.sheets.map(({ rows, columns }) => ({ rows: Math.max(rows, 1), columns: Math.max(columns, 1) }));
  for (const { prepared, kind, sheet } of all) {
    // A result may grow as far as a sheet goes: cut off at the last cell it would be an error.
    if (kind === "dynamic") sizes[sheet.index] = { rows: MOST_ROWS, columns: MOST_COLUMNS };
    for (const area of prepared.areas) {
      const size = sizes[area.sheet];
      if (!size) continue;
      if (area.endRow < MOST_ROWS - 1) size.rows = Math.max(size.rows, area.endRow + 1);
      if (area.endColumn < MOST_COLUMNS - 1) size.columns = Math.max(size.columns, area.endColumn + 1);
    }
  }
  return sizes;
}

/** @param node whose outcome it is, where another formula is worked out for it */
async function workOut(engine: FormulaEngine, worked: FormulaNode, node = worked): Promise<Outcome> {
  const { sheet, cell, prepared, kind } = worked;
  const place = { sheet: sheet.index, row: cell.row, column: cell.column };
  const result = await engine.evaluate(prepared.text, place);
  engine.forgetFormula();
  if (!result) return { node, status: "kept", reason: "the engine cannot read it" };
  const isOne = result.length === 1 && result[0]?.length === 1;
  if (kind === "single" && !isOne && prepared.showsFirst) {
    return { node, status: "computed", result: [[result[0]?.[0] ?? null]] };
  }
  if (kind === "single" && !isOne) {
    return { node, status: "kept", reason: "it gives several cells where one is meant" };
  }
  return { node, status: "computed", result };
}

/** A run by the functions themselves, or cell by cell where they give something else than one value a row. */
async function workOutRun(
  engine: FormulaEngine,
  node: FormulaNode,
  nodes: Nodes,
  specs: ReadonlyMap<string, FunctionSpec>,
  valueAt: CellReader,
): Promise<Outcome> {
  const { part, areas, cells } = node.run!;
  const column = evaluateRun(part, areas, cells.length, specs, valueAt);
  if (column) return { node, status: "computed", result: column.map((cell) => [cell]) };
  const result: Cell[][] = [];
  for (const [i, cell] of cells.entries()) {
    const one = await workOut(engine, { ...node, cell, kind: "single", prepared: nodes.prepareOne(node, i) });
    if (one.status === "kept") return { ...one, node };
    result.push([one.result[0]![0]!]);
  }
  return { node, status: "computed", result };
}

/** Puts a result where its formula's cells are. */
function settle({ range, kind }: FormulaNode, result: Grid, into: Map<number, Cell>): void {
  if (kind === "dynamic") {
    // What a result no longer reaches is empty.
    const isReached = (r: number, c: number): boolean =>
      result[r - range.startRow]?.[c - range.startColumn] !== undefined;
    for (let r = range.startRow; r <= range.endRow; r++) {
      for (let c = range.startColumn; c <= range.endColumn; c++) if (!isReached(r, c)) into.set(keyOf(r, c), null);
    }
  }
  const rows = kind === "dynamic" ? result.length : range.endRow - range.startRow + 1;
  const columns = kind === "dynamic" ? (result[0]?.length ?? 1) : range.endColumn - range.startColumn + 1;
  for (let r = 0; r < rows; r++) {
    for (let c = 0; c < columns; c++) {
      into.set(keyOf(range.startRow + r, range.startColumn + c), cellOf(result, r, c));
    }
  }
}

/** The cells that a dynamic array takes up. */
function spillOf({ range: { sheet, startRow, startColumn } }: FormulaNode, result: Grid): Area {
  const [rows, columns] = [result.length, result[0]?.length ?? 1];
  return { sheet, startRow, startColumn, endRow: startRow + rows - 1, endColumn: startColumn + columns - 1 };
}

const notAvailable: CellError = { error: "#N/A", message: plainMessage("#N/A") };

/** A cell of an array as it fills a range: one row or column is repeated, beyond the array there is nothing. */
export function cellOf(result: Grid, row: number, column: number): Cell {
  const r = result.length === 1 ? 0 : row;
  const c = (result[0]?.length ?? 0) === 1 ? 0 : column;
  return result[r]?.[c] ?? notAvailable;
}

function savedCell(sheet: LoadedSheet, key: number): Cell {
  const value: SavedValue = sheet.cells.valueAt(key);
  if (value === null || typeof value !== "object") return value;
  return { error: value.error as CellError["error"], message: plainMessage(value.error) };
}

const addressOf = ({ sheet, cell }: FormulaNode): string =>
  `${sheet.name}!${columnLetters(cell.column)}${cell.row + 1}`;
