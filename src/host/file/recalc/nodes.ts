/** Every formula of a workbook with what it reads, and which cell belongs to which result. */
import type { FunctionSpec } from "../../../functions/contract.js";
import type { Area } from "../formula/areas.js";
import { Preparer } from "../formula/prepare.js";
import type { FormulaCell, PreparedFormula } from "../formula/prepare.js";
import { parseReference } from "../../reference.js";
import { FileRefused } from "../refusal.js";
import type { FileCell } from "../sheet/cells.js";
import { keyOf } from "./load.js";
import type { LoadedBook, LoadedSheet } from "./load.js";
import { atMoment } from "./nodes-clock.js";
import type { Clock } from "./nodes-clock.js";
import { groupsOf } from "./nodes-groups.js";
import type { Group } from "./nodes-groups.js";
import { Lookup } from "./nodes-lookup.js";
import { LEAST_ROWS, runOf } from "./runs.js";
import type { Run, RunSetting } from "./runs.js";

/** A formula of the workbook, or a run of equal ones. */
export interface FormulaNode {
  readonly index: number;
  readonly sheet: LoadedSheet;
  /** Of a run the first. */
  readonly cell: FileCell;
  /** As its cell holds it, followers of shared formulas written out. */
  readonly formula: string;
  readonly kind: "single" | "array" | "dynamic" | "data table" | "run";
  /** Cells that its saved result takes up. */
  readonly range: Area;
  readonly prepared: PreparedFormula;
  readonly run?: Run;
  /** Worked out for itself, though it is none of ours: what the clock says is asked for. */
  readonly isAsked?: boolean;
}

export interface Nodes {
  readonly all: readonly FormulaNode[];
  /** The formula whose result a cell shows, or undefined for a constant. */
  readonly at: (sheet: number, row: number, column: number) => FormulaNode | undefined;
  /** The formulas whose results lie in an area, each once. */
  readonly within: (area: Area) => FormulaNode[];
  /** Whether another formula's result, or a second cell in the same place, stands in its cells: which of them counts nobody knows. */
  readonly isOverlapping: (node: FormulaNode) => boolean;
  /** Prepares the formula of one cell of a run. */
  readonly prepareOne: (node: FormulaNode, index: number) => PreparedFormula;
}

/** More cells than this no formula's result takes up: an array of whole columns is a slip. */
const MOST_RESULT_CELLS = 2_000_000;

const kept = (distrust: string): PreparedFormula => ({
  text: "",
  areas: [],
  isOurs: false,
  distrust,
  isVolatile: false,
});
/** Cells of all results of more than one cell together. */
const MOST_RESULTS_CELLS = 4_000_000;

const DATA_TABLE = kept("its value belongs to a what-if data table");
const NO_TEXT = kept("its formula is not in the file");
const ASTRAY = "its array does not begin in its cell";
const TOO_LARGE = `its array takes up more than ${MOST_RESULT_CELLS} cells`;

/**
 * @param apart first cells of runs that have to go cell by cell
 * @param reached cells of dynamic arrays that are known to grow, and how far
 */
export function nodesOf(
  book: LoadedBook,
  specs: readonly FunctionSpec[] = [],
  apart: ReadonlySet<FileCell> = new Set(),
  clock?: Clock,
  reached: ReadonlyMap<FileCell, Area> = new Map(),
): Nodes {
  const { sheets, tables, facts } = book;
  const preparer = new Preparer({ sheets, names: facts.definedNames, tables, is1904: facts.is1904 });
  const setting: RunSetting = {
    preparer,
    sheets: new Map(sheets.map(({ name }, i) => [name.toLowerCase(), i])),
    specs: new Map(specs.map((spec) => [spec.name, spec])),
  };
  const prepare: Prepare = (formula, place) => {
    const told = clock ? atMoment(formula, clock, facts.is1904) : formula;
    return { prepared: preparer.prepare(told, place), isAsked: told !== formula };
  };
  const all: FormulaNode[] = [];
  for (const sheet of sheets) {
    for (const group of groupsOf(sheet, book.dynamicArrays, preparer.isSheet)) {
      const run = apart.has(group.cells[0]!) ? undefined : runNode(sheet, group, setting);
      if (run) all.push({ index: all.length, ...run });
      else for (const node of singleNodes(sheet, group, prepare)) all.push({ index: all.length, ...node });
    }
  }
  requireResults(all);
  const lookup = new Lookup(all, ({ cell, range }) => reached.get(cell) ?? range);
  return {
    all,
    at: (sheet, row, column) => lookup.at(sheet, row, column),
    within: (area) => lookup.within(area),
    isOverlapping: (node) => lookup.overlapping.has(node) || isHidden(node),
    prepareOne: ({ sheet, cell, run }, index) => {
      const place = { sheet: sheet.index, row: cell.row + index, column: cell.column, isArray: false };
      return preparer.prepare(run?.textAt(index) ?? "", place);
    },
  };
}

/** @throws FileRefused where arrays say that they take up more than there is memory for */
function requireResults(all: readonly FormulaNode[]): void {
  let total = 0;
  for (const { range, run } of all) {
    const size = (range.endRow - range.startRow + 1) * (range.endColumn - range.startColumn + 1);
    if (!run && size > 1) total += size;
    if (total > MOST_RESULTS_CELLS) {
      throw new FileRefused(
        `The results of the workbook's array formulas take up more than ${MOST_RESULTS_CELLS} cells, the most that are read. Split it.`,
      );
    }
  }
}

/** Another cell stands in the same place, later in the part. */
const isHidden = ({ sheet, cell, run }: FormulaNode): boolean =>
  (run?.cells ?? [cell]).some((one) => sheet.cells.get(keyOf(one.row, one.column)) !== one);

function runNode(sheet: LoadedSheet, group: Group, setting: RunSetting): Omit<FormulaNode, "index"> | undefined {
  const { cells, template } = group;
  if (cells.length < LEAST_ROWS || !template) return undefined;
  const found = runOf(sheet.index, cells, template, setting);
  if (!found) return undefined;
  const [cell] = cells as [FileCell];
  const range = { ...placeOf(cell, sheet.index), endRow: cell.row + cells.length - 1 };
  return { sheet, cell, formula: group.text, kind: "run", range, ...found };
}

type Prepare = (formula: string, place: FormulaCell) => Required<Pick<FormulaNode, "prepared" | "isAsked">>;

function* singleNodes(sheet: LoadedSheet, group: Group, prepare: Prepare): Generator<Omit<FormulaNode, "index">> {
  const { kind } = group;
  for (const [i, cell] of group.cells.entries()) {
    const formula = i === 0 ? group.text : group.template!.textAt(cell.row);
    const place = { sheet: sheet.index, row: cell.row, column: cell.column, isArray: kind !== "single" };
    const range = rangeOf(cell, sheet.index);
    const size = (range.endRow - range.startRow + 1) * (range.endColumn - range.startColumn + 1);
    const isAstray = range.startRow !== cell.row || range.startColumn !== cell.column;
    if (kind === "data table") yield { sheet, cell, formula, kind, range, prepared: DATA_TABLE };
    else if (isAstray || size > MOST_RESULT_CELLS) {
      const { prepared } = prepare(formula, place);
      const distrust = isAstray ? ASTRAY : TOO_LARGE;
      yield { sheet, cell, formula, kind, range: placeOf(cell, sheet.index), prepared: { ...prepared, distrust } };
    } else if (formula.trim() === "") yield { sheet, cell, formula, kind, range, prepared: NO_TEXT };
    else yield { sheet, cell, formula, kind, range, ...prepare(formula, place) };
  }
}

function rangeOf(cell: FileCell, sheet: number): Area {
  const { formula } = cell;
  const range = formula?.kind === "array" && formula.ref !== undefined ? parseReference(formula.ref) : undefined;
  return range ? { ...range, sheet } : placeOf(cell, sheet);
}

const placeOf = ({ row, column }: FileCell, sheet: number): Area => ({
  sheet,
  startRow: row,
  endRow: row,
  startColumn: column,
  endColumn: column,
});
