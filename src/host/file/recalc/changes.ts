/** What a recalculation changes in a file, cell by cell, and the patches that bring it there. */
import type { Cell } from "../../../functions/contract.js";
import { isCellError } from "../../../functions/contract.js";
import { columnLetters } from "../../embedded/structured.js";
import type { Patch } from "../sheet/patch.js";
import type { FileCell, SavedValue } from "../sheet/cells.js";
import { EMPTY_CELL } from "./changes-empty.js";
import { keyOf } from "./load.js";
import type { LoadedBook, LoadedSheet } from "./load.js";
import type { FormulaNode } from "./nodes.js";
import { cellOf } from "./recalculate.js";
import type { Outcome } from "./recalculate.js";

/** One cell of the report. */
export interface CellReport {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: string;
  readonly stored: SavedValue;
  /** The same as stored where it is kept. */
  readonly recalculated: SavedValue;
  /** Recalculated less stored where both are numbers. */
  readonly difference: number | null;
  readonly status: "same" | "changed" | "kept";
  /** Why it is kept, or what the error of ours says. */
  readonly reason?: string;
}

export type CellStatus = CellReport["status"];

export interface Changes {
  /** Those that were asked for. */
  readonly cells: readonly CellReport[];
  /** All of them, counted. */
  readonly counts: Readonly<Record<CellStatus, number>>;
  /** By the index of their sheet. */
  readonly patches: ReadonlyMap<number, readonly Patch[]>;
}

/** Relative difference up to which a saved number is right. */
export const DEFAULT_TOLERANCE = 1e-9;
/** What is left of a difference of numbers of a size, in shares of it: cancellation, not a change. */
const CANCELLATION = 1e-13;

export interface ChangesOptions {
  readonly tolerance: number;
  /** The largest number that a formula reads, for what cancels. */
  readonly magnitudeOf: (node: FormulaNode) => number;
  /** Which cells are told: of a long route a list of all takes more memory than the route. */
  readonly isListed: (status: CellStatus) => boolean;
  /** Whether a row of a result rests on an empty cell that Excel would hand over as 0. */
  readonly readsEmpty: (node: FormulaNode, row: number) => boolean;
}

export function changesOf(
  book: LoadedBook,
  outcomes: readonly Outcome[],
  { tolerance, magnitudeOf, isListed, readsEmpty }: ChangesOptions,
): Changes {
  const cells: CellReport[] = [];
  const counts = { same: 0, changed: 0, kept: 0 };
  const patches = new Map<number, Patch[]>();
  const put = (sheet: number, patch: Patch): void => {
    const list = patches.get(sheet);
    if (list) list.push(patch);
    else patches.set(sheet, [patch]);
  };
  const tell = (status: CellStatus, report: () => Omit<CellReport, "status">): void => {
    counts[status]++;
    if (isListed(status)) cells.push({ ...report(), status });
  };
  const reasonOf = (answer: Cell, node: FormulaNode, row: number): string => {
    const message = isCellError(answer) ? answer.message : "";
    return node.prepared.isOurs && readsEmpty(node, row) ? `${EMPTY_CELL}. ${message}`.trimEnd() : message;
  };
  for (const outcome of outcomes) {
    const { node } = outcome;
    const sheet = book.sheets[node.sheet.index]!;
    if (outcome.status === "kept") {
      const { reason } = outcome;
      for (const { row, column, value } of node.run?.cells ?? [node.cell]) {
        tell("kept", () => ({ ...told(node, row, column, value, value), reason }));
      }
      continue;
    }
    let magnitude: number | undefined;
    const magnitudeOnce = (): number => (magnitude ??= magnitudeOf(node));
    const grown = extentOf(outcome, sheet);
    for (let r = 0; r < grown.rows; r++) {
      for (let c = 0; c < grown.columns; c++) {
        const [row, column] = [node.range.startRow + r, node.range.startColumn + c];
        const cell = sheet.cells.get(keyOf(row, column));
        const stored = cell?.value ?? null;
        const answer = grown.answer(r, c);
        const fresh = toSaved(answer);
        const extent = r === 0 && c === 0 ? grown.extent : undefined;
        const isSame = isEqual(stored, fresh, tolerance, magnitudeOnce);
        tell(isSame ? "same" : "changed", () => {
          const line = told(node, row, column, stored, fresh);
          const reason = isSame ? "" : reasonOf(answer, node, r);
          return reason === "" ? line : { ...line, reason };
        });
        if (isSame && extent === undefined) continue;
        put(sheet.index, { row, column, value: isSame ? stored : fresh, cell, extent });
      }
    }
    for (const cell of grown.left) {
      tell("changed", () => told(node, cell.row, cell.column, cell.value, null));
      put(sheet.index, { row: cell.row, column: cell.column, value: null, cell });
    }
  }
  return { cells, counts, patches };
}

interface Extent {
  readonly rows: number;
  readonly columns: number;
  readonly answer: (row: number, column: number) => Cell;
  /** The attribute ref where it changes. */
  readonly extent?: string;
  /** Cells that the result no longer reaches. */
  readonly left: readonly FileCell[];
}

/** Which cells a result takes up. Only a dynamic array's may grow or shrink. */
function extentOf(outcome: Outcome & { status: "computed" }, sheet: LoadedSheet): Extent {
  const { node, result } = outcome;
  const { range } = node;
  const rows = range.endRow - range.startRow + 1;
  const columns = range.endColumn - range.startColumn + 1;
  const answer = (row: number, column: number): Cell => cellOf(result, row, column);
  const [wantedRows, wantedColumns] = [result.length, result[0]?.length ?? 1];
  if (node.kind !== "dynamic" || (wantedRows === rows && wantedColumns === columns)) {
    return { rows, columns, answer, left: [] };
  }
  const cellsOfRange = (keep: (row: number, column: number) => boolean): FileCell[] => {
    const found: FileCell[] = [];
    for (let row = range.startRow; row <= range.endRow; row++) {
      for (let column = range.startColumn; column <= range.endColumn; column++) {
        const cell = sheet.cells.get(keyOf(row, column));
        const isLeft = !keep(row - range.startRow, column - range.startColumn);
        if (cell && isLeft && cell.value !== null) found.push(cell);
      }
    }
    return found;
  };
  const anchor = `${columnLetters(range.startColumn)}${range.startRow + 1}`;
  const last = `${columnLetters(range.startColumn + wantedColumns - 1)}${range.startRow + wantedRows}`;
  return {
    rows: wantedRows,
    columns: wantedColumns,
    answer,
    extent: anchor === last ? anchor : `${anchor}:${last}`,
    left: cellsOfRange((r, c) => r < wantedRows && c < wantedColumns),
  };
}

function told(
  { sheet, cell, formula: written, run }: FormulaNode,
  row: number,
  column: number,
  stored: SavedValue,
  recalculated: SavedValue,
): Omit<CellReport, "status"> {
  const formula = run ? run.textAt(row - cell.row) : written;
  const difference = typeof stored === "number" && typeof recalculated === "number" ? recalculated - stored : null;
  return { sheet: sheet.name, cell: `${columnLetters(column)}${row + 1}`, formula, stored, recalculated, difference };
}

const toSaved = (cell: Cell): SavedValue => (isCellError(cell) ? { error: cell.error } : cell);

function isEqual(stored: SavedValue, fresh: SavedValue, tolerance: number, magnitude: () => number): boolean {
  if (typeof stored === "number" && typeof fresh === "number") {
    const difference = Math.abs(stored - fresh);
    return (
      difference <= tolerance * Math.max(Math.abs(stored), Math.abs(fresh)) || difference <= CANCELLATION * magnitude()
    );
  }
  if (stored !== null && fresh !== null && typeof stored === "object" && typeof fresh === "object") {
    return stored.error === fresh.error;
  }
  return stored === fresh;
}
