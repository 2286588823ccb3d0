/** Every formula of a workbook with what it reads, and which cell belongs to which result. */
import type { FunctionSpec } from "../../../functions/contract.js";
import type { Area } from "../formula/areas.js";
import { Preparer } from "../formula/prepare.js";
import type { FormulaCell, PreparedFormula } from "../formula/prepare.js";
import { parseReference } from "../../reference.js";
import type { FileCell } from "../sheet/cells.js";
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
const DATA_TABLE = kept("its value belongs to a what-if data table");
const TOO_LARGE = kept(`its array takes up more than ${MOST_RESULT_CELLS} cells`);

/** @param apart first cells of runs that have to go cell by cell */
export function nodesOf(
  book: LoadedBook,
  specs: readonly FunctionSpec[] = [],
  apart: ReadonlySet<FileCell> = new Set(),
  clock?: Clock,
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
  const lookup = new Lookup(all);
  return {
    all,
    at: (sheet, row, column) => lookup.at(sheet, row, column),
    within: (area) => lookup.within(area),
    prepareOne: ({ sheet, cell, run }, index) => {
      const place = { sheet: sheet.index, row: cell.row + index, column: cell.column, isArray: false };
      return preparer.prepare(run?.textAt(index) ?? "", place);
    },
  };
}

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
    if (kind === "data table") yield { sheet, cell, formula, kind, range, prepared: DATA_TABLE };
    else if (size > MOST_RESULT_CELLS) {
      yield { sheet, cell, formula, kind, range: placeOf(cell, sheet.index), prepared: TOO_LARGE };
    } else yield { sheet, cell, formula, kind, range, ...prepare(formula, place) };
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
