/** The page's grid as the host port asks for it. */
import { CellValueType, UndoCommand, type ICellData, type Nullable } from "@univerjs/core";
import { FormulaDataModel, SetTriggerFormulaCalculationStartMutation } from "@univerjs/engine-formula";
import { SetRangeValuesCommand, SheetsSelectionsService, SetWorksheetActiveOperation } from "@univerjs/sheets";
import { SheetsScrollRenderController } from "@univerjs/sheets-ui";
import { IRenderManagerService } from "@univerjs/engine-render";
import type { Cell, CellError, Grid } from "../../functions/contract.js";
import { NAMESPACE } from "../../functions/describe.js";
import type { GridAccess } from "../../host/embedded/grid-access.js";
import { plainMessage } from "../../host/plain-messages.js";
import type { CellAt, Stop, Theme } from "../../host/port.js";
import type { BookDescription } from "../../templates/contract.js";
import type { LiveBook } from "../book/live.js";
import { boxInfos, placeInBoxes } from "../book/pictures.js";
import { resolveFormula } from "../book/resolve.js";
import { bookId } from "../book/snapshot.js";
import { contentLock } from "../edit/lock-rules.js";
import { lastStep } from "../edit/step.js";
import { foldColumns, isFolded } from "../frame/folded.js";
import type { Calculating } from "../show/calculating.js";
import type { Messages } from "../show/messages.js";
import { activeCell } from "../show/status.js";
import { fieldPlaces, tableInfos } from "./places.js";

export interface Access {
  readonly book: LiveBook;
  readonly messages: Messages;
  readonly calculating: Calculating;
  readonly open: (description: BookDescription) => void;
  readonly theme: { readonly now: () => Theme; readonly onChange: (listener: (theme: Theme) => void) => Stop };
}

const errorValue = /^#(?:[A-Z]+[!?]|N\/A|DIV\/0!)$/;
const ours = new RegExp(String.raw`\b${NAMESPACE}\.[A-Z]`, "i");

export function gridAccess({ book, messages, calculating, open, theme }: Access): GridAccess {
  const listening = (): Set<() => void> => new Set();
  const selectionListeners = listening();
  const recalculated = listening();
  const tell = (listeners: ReadonlySet<() => void>) => (): void => {
    for (const listener of listeners) listener();
  };
  const selections = book.injector.get(SheetsSelectionsService);
  selections.selectionMoveEnd$.subscribe(tell(selectionListeners));
  selections.selectionSet$.subscribe(tell(selectionListeners));
  book.onOpened(tell(selectionListeners));
  book.commands.onCommandExecuted((info) => {
    if (info.id === SetWorksheetActiveOperation.id) tell(selectionListeners)();
  });
  calculating.onDone(tell(recalculated));

  return {
    sheets: () => book.workbook.getSheets().map((sheet) => sheet.getName()),
    activeSheet: () => book.workbook.getActiveSheet().getName(),
    selected: () => {
      const place = activeCell(book);
      return place && { sheet: book.workbook.getActiveSheet().getName(), row: place.row, column: place.column };
    },
    tables: () => tableInfos(book),
    fields: () => fieldPlaces(book.layout),
    cells: (range) => {
      const sheetId = idOf(range.sheet);
      const matrix = book.worksheet(sheetId).getCellMatrix();
      // A spilled value stands in no cell: the engine keeps it beside them.
      const spilled = book.injector.get(FormulaDataModel).getArrayFormulaCellData()[bookId]?.[sheetId];
      const grid: Cell[][] = [];
      for (let row = range.startRow; row <= range.endRow; row++) {
        const cells: Cell[] = [];
        for (let column = range.startColumn; column <= range.endColumn; column++)
          cells.push(cellOf(spilled?.[row]?.[column] ?? matrix.getValue(row, column), sheetId, row, column));
        grid.push(cells);
      }
      return grid satisfies Grid;
    },
    shown: (at) => String(book.worksheet(idOf(at.sheet)).getCell(at.row, at.column)?.v ?? ""),
    formula: (at) =>
      book.injector.get(FormulaDataModel).getFormulaStringByCell(at.row, at.column, idOf(at.sheet), bookId) ??
      undefined,
    resolve: (formula, at) => resolveFormula(formula, { sheetName: at.sheet, row: at.row }, book.layout, book.rowsOf),
    lock: (at) => contentLock(book, idOf(at.sheet), boxOf(at)),
    size: (sheet) => {
      const worksheet = book.worksheet(idOf(sheet));
      return { rows: worksheet.getRowCount(), columns: worksheet.getColumnCount() };
    },
    folding: () => {
      const table = book.tables.find(({ id }) => id === book.activeSheetId());
      const headers = table?.columns.filter(({ column }) => column.folded === true).map(({ column }) => column.header);
      return table === undefined || headers?.length === 0
        ? undefined
        : { headers: headers ?? [], hidden: isFolded(book, table) };
    },

    select: async (at) => {
      const sheetId = idOf(at.sheet);
      if (book.activeSheetId() !== sheetId)
        await book.commands.executeCommand(SetWorksheetActiveOperation.id, { unitId: bookId, subUnitId: sheetId });
      const table = book.tables.find(({ id }) => id === sheetId);
      // What is hidden cannot be gone to.
      if (table !== undefined && !book.worksheet(sheetId).getColVisible(at.column))
        await foldColumns(book, table, false);
      book.api.getActiveWorkbook()?.getSheetBySheetId(sheetId)?.getRange(at.row, at.column).activate();
      const render = book.injector.get(IRenderManagerService).getRenderById(bookId);
      render?.with(SheetsScrollRenderController).scrollToCell(at.row, at.column);
    },
    write: (at, formula) =>
      book.commands.executeCommand(SetRangeValuesCommand.id, {
        unitId: bookId,
        subUnitId: idOf(at.sheet),
        range: boxOf(at),
        value: { f: formula, v: null, t: null, p: null, si: null },
      }),
    fold: (hide) => {
      const table = book.tables.find(({ id }) => id === book.activeSheetId());
      return table === undefined ? Promise.resolve(false) : foldColumns(book, table, hide);
    },
    recalculate: () => {
      void book.commands.executeCommand(
        SetTriggerFormulaCalculationStartMutation.id,
        { ...nothingChanged, forceCalculation: true },
        { onlyLocal: true },
      );
      return countOurs(book);
    },
    undo: async () => lastStep(book) !== undefined && (await book.commands.executeCommand(UndoCommand.id)),
    pictureBoxes: () => boxInfos(book),
    placePictures: (pictures, keeps) => placeInBoxes(book, pictures, keeps),
    open,
    theme: theme.now,
    onSelection: (listener) => subscribe(selectionListeners, listener),
    onRecalculated: (listener) => subscribe(recalculated, listener),
    onTheme: theme.onChange,
  };

  function idOf(sheetName: string): string {
    const sheet = book.workbook.getSheetBySheetName(sheetName);
    if (!sheet) throw new Error(`there is no sheet ${sheetName}.`);
    return sheet.getSheetId();
  }

  function cellOf(cell: Nullable<ICellData>, sheetId: string, row: number, column: number): Cell {
    const value = cell?.p?.body?.dataStream.trimEnd() ?? cell?.v ?? null;
    // The grid keeps TRUE and FALSE as 1 and 0 of the kind "boolean".
    if (cell?.t === CellValueType.BOOLEAN) return value === 1 || value === true || value === "TRUE";
    if (typeof value !== "string" || !errorValue.test(value)) return value;
    const message = messages.at(sheetId, row, column) ?? plainMessage(value);
    return { error: value as CellError["error"], message };
  }
}

const nothingChanged = {
  dirtyRanges: [],
  dirtyNameMap: {},
  dirtyDefinedNameMap: {},
  dirtySuperTableMap: {},
  dirtyUnitFeatureMap: {},
  dirtyUnitOtherFormulaMap: {},
  clearDependencyTreeCache: {},
};

function countOurs(book: LiveBook): number {
  let count = 0;
  for (const sheet of book.workbook.getSheets())
    sheet.getCellMatrix().forValue((_row, _column, cell) => {
      if (cell?.f !== undefined && cell.f !== null && ours.test(cell.f)) count++;
    });
  return count;
}

function subscribe<Listener>(listeners: Set<Listener>, listener: Listener): Stop {
  listeners.add(listener);
  return () => {
    listeners.delete(listener);
  };
}

function boxOf({ row, column }: CellAt) {
  return { startRow: row, endRow: row, startColumn: column, endColumn: column };
}
