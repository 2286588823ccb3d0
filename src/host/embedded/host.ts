/** The host port over the page's grid. */
import { isCellError, type Cell, type Grid } from "../../functions/contract.js";
import type { CellAt, HostPort, Result, SelectedCell, SheetInfo, TableInfo } from "../port.js";
import { bookUnits, emptyAsNull, recordOf, selectedRow, tableAt } from "../records.js";
import { parseReference } from "../reference.js";
import { done, refused } from "../result.js";
import type { GridAccess, SheetRange } from "./grid-access.js";
import { columnLetters } from "./structured.js";
import { readFormula } from "./syntax.js";

/** More than any sheet of ours, and still read in a moment. */
const MOST_CELLS = 2_000_000;

export function embeddedHost(grid: GridAccess): HostPort {
  /** A fault of the grid is told, not thrown. */
  const answer = async <T>(work: () => Result<T> | Promise<Result<T>>): Promise<Result<T>> => {
    try {
      return await work();
    } catch (error) {
      const detail = error instanceof Error ? error.message : String(error);
      return refused("failed", `The workbook gave no answer: ${detail}`);
    }
  };

  return {
    host: "page",
    newBookIs: "replaced",
    canUndo: true,
    sheets: () => answer(() => done(sheetsOf(grid))),
    tables: () => answer(() => done(grid.tables())),
    readTable: (name) =>
      answer(() => {
        const table = grid.tables().find((one) => one.name.toLowerCase() === name.toLowerCase());
        if (table === undefined) return refused("missing", `There is no table ${name} in this workbook.`);
        const rows = grid.cells(rowsOf(table, table.firstRow, table.lastRow));
        const first = firstColumn(table);
        return done({ table, rows: rows.map((row) => recordOf(table.columns, (column) => row[column - first])) });
      }),
    fields: () =>
      answer(() =>
        done(grid.fields().map(({ name, label, at }) => ({ name, label, at, value: emptyAsNull(valueAt(grid, at)) }))),
      ),
    read: (reference) => answer(() => readReference(grid, reference)),
    selected: () => answer(() => selectedCell(grid)),
    units: () => answer(() => done(bookUnits(grid.tables()))),
    theme: () => grid.theme(),
    folded: () =>
      answer(() => {
        const folding = grid.folding();
        return done({ sheet: grid.activeSheet(), headers: folding?.headers ?? [], hidden: folding?.hidden ?? false });
      }),
    onSelection: (listener) => grid.onSelection(listener),
    onRecalculated: (listener) => grid.onRecalculated(listener),
    onTheme: (listener) => grid.onTheme(listener),
    goTo: (cell) =>
      answer(async () => {
        if (!grid.sheets().includes(cell.sheet)) return refused("missing", `There is no sheet ${cell.sheet}.`);
        const { rows, columns } = grid.size(cell.sheet);
        if (cell.row < 0 || cell.row >= rows || cell.column < 0 || cell.column >= columns)
          return refused("missing", `The sheet ${cell.sheet} has no such cell.`);
        await grid.select(cell);
        return done(undefined);
      }),
    makeBook: (description) =>
      answer(() => {
        try {
          grid.open(description);
        } catch (error) {
          return refused(
            "invalid",
            `The workbook could not be made: ${error instanceof Error ? error.message : String(error)}.`,
          );
        }
        return done({ sheets: grid.sheets() });
      }),
    insertFormula: (formula, options) => answer(() => insert(grid, formula, options?.overwrite === true)),
    fold: (hide) =>
      answer(async () => {
        const folding = grid.folding();
        if (folding === undefined) return refused("missing", "This sheet has no columns that are folded.");
        if (folding.hidden === hide) return done(undefined);
        return (await grid.fold(hide)) ? done(undefined) : refused("failed", "The columns stayed as they were.");
      }),
    enterAgain: () => answer(() => done(grid.recalculate())),
    undo: () =>
      answer(async () =>
        (await grid.undo()) ? done(undefined) : refused("missing", "There is nothing that could be undone."),
      ),
    pictureBoxes: () => answer(() => done(grid.pictureBoxes())),
    placePictures: (pictures, keeps) =>
      answer(() => {
        const shown = new Map(grid.pictureBoxes().map((box) => [box.key, box.shown]));
        // Between choosing the folder and placing somebody may have typed.
        const changed = pictures.find((one) => shown.get(one.key) !== one.shown);
        if (changed !== undefined)
          return refused(
            "missing",
            `No box shows ${changed.shown} any more: choose the folder again. Nothing was placed.`,
          );
        return done(grid.placePictures(pictures, keeps));
      }),
  };
}

function sheetsOf(grid: GridAccess): SheetInfo[] {
  const tables = grid.tables();
  return grid.sheets().map((name) => ({
    name,
    active: name === grid.activeSheet(),
    tables: tables.filter(({ sheet }) => sheet === name).map((table) => table.name),
  }));
}

function readReference(grid: GridAccess, reference: string): Result<Grid> {
  const place: CellAt = { sheet: grid.activeSheet(), row: 0, column: 0 };
  const { formula, unresolved } = grid.resolve(`=${reference}`, place);
  if (unresolved.length > 0) return refused("missing", `Not found: ${unresolved.join(", ")}.`);
  const range = parseReference(formula.slice(1));
  if (range === undefined)
    return refused("invalid", `${reference} is no cell and no range: write it as B14, B3:B40 or Job!B4.`);
  const sheet = grid.sheets().find((name) => name.toLowerCase() === (range.sheet ?? place.sheet).toLowerCase());
  if (sheet === undefined) return refused("missing", `There is no sheet ${range.sheet ?? ""}.`);
  const cells = (range.endRow - range.startRow + 1) * (range.endColumn - range.startColumn + 1);
  if (cells > MOST_CELLS) return refused("invalid", `${reference} has more cells than can be read at once.`);
  return done(grid.cells({ ...range, sheet }));
}

function selectedCell(grid: GridAccess): Result<SelectedCell> {
  const at = grid.selected();
  if (at === undefined) return refused("missing", "No cell is selected.");
  const value = valueAt(grid, at);
  const table = tableAt(grid.tables(), at);
  const field = grid.fields().find((one) => isSame(one.at, at));
  const column = table?.columns.find((one) => one.column === at.column);
  const first = table === undefined ? 0 : firstColumn(table);
  const cells = table === undefined ? [] : grid.cells(rowsOf(table, at.row, at.row))[0]!;
  return done({
    at,
    address: columnLetters(at.column) + String(at.row + 1),
    header: column?.header ?? field?.label,
    unit: column?.unit ?? field?.unit,
    value: emptyAsNull(value),
    shown: grid.shown(at),
    formula: grid.formula(at),
    message: isCellError(value) ? value.message : undefined,
    row: table && selectedRow(table, at.row, (sheetColumn) => cells[sheetColumn - first]),
  });
}

async function insert(grid: GridAccess, formula: string, overwrite: boolean): Promise<Result<CellAt>> {
  const at = grid.selected();
  if (at === undefined) return refused("missing", "No cell is selected: select the cell that the formula goes into.");
  const address = columnLetters(at.column) + String(at.row + 1);
  if (!formula.startsWith("=")) return refused("invalid", "A formula begins with =.");
  const { formula: resolved, unresolved } = grid.resolve(formula, at);
  if (unresolved.length > 0)
    return refused("invalid", `Not found: ${unresolved.join(", ")}. Table and column names are those of the headings.`);
  const { problem } = readFormula(resolved);
  if (problem !== undefined) return refused("invalid", problem.message);
  const lock = grid.lock(at);
  if (lock !== undefined) return refused("locked", lock);
  if (!overwrite && (valueAt(grid, at) !== null || grid.formula(at) !== undefined))
    return refused("occupied", `${address} holds something already.`);
  return (await grid.write(at, formula))
    ? done(at)
    : refused("failed", `${address} stayed as it was: finish what is being typed, then insert again.`);
}

function valueAt(grid: GridAccess, { sheet, row, column }: CellAt): Cell {
  return grid.cells({ sheet, startRow: row, endRow: row, startColumn: column, endColumn: column })[0]![0]!;
}

function rowsOf(table: TableInfo, startRow: number, endRow: number): SheetRange {
  const columns = table.columns.map(({ column }) => column);
  return { sheet: table.sheet, startRow, endRow, startColumn: firstColumn(table), endColumn: Math.max(...columns) };
}

function firstColumn(table: TableInfo): number {
  return Math.min(...table.columns.map(({ column }) => column));
}

function isSame(one: CellAt, other: CellAt): boolean {
  return one.sheet === other.sheet && one.row === other.row && one.column === other.column;
}
