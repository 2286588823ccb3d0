/** The open book: the description's layout together with what the grid holds now. */
import {
  ICommandService,
  type Injector,
  IUniverInstanceService,
  UniverInstanceType,
  type Workbook,
  type Worksheet,
} from "@univerjs/core";
import { TableManager } from "@univerjs/sheets-table";
import type { PictureBox } from "../../templates/contract.js";
import type { Grid } from "../grid/univer.js";
import { type CellPlace, contains } from "./a1.js";
import {
  type BookLayout,
  type ColumnPlace,
  columnAt,
  type SheetLayout,
  type TableLayout,
  tableSheets,
} from "./layout.js";
import type { BodyRows } from "./resolve.js";
import { bookId } from "./snapshot.js";

export interface LiveBook {
  readonly layout: BookLayout;
  readonly injector: Injector;
  readonly commands: ICommandService;
  readonly api: Grid["api"];
  readonly workbook: Workbook;
  readonly tables: readonly TableLayout[];
  worksheet(sheetId: string): Worksheet;
  /** The description of a sheet; undefined for a sheet that a person added. */
  sheet(sheetId: string): SheetLayout | undefined;
  activeSheetId(): string;
  readonly rowsOf: (table: TableLayout) => BodyRows;
  /** Told when another book has taken the open one's place; what was read of the layout before is void then. */
  onOpened(listener: () => void): void;
  /** False while another book takes the open one's place: the grid then speaks of sheets that are gone. */
  isOpen(): boolean;
  /** Gives sheets other pictures in their boxes, by the sheet's id. */
  setPictures(pictures: ReadonlyMap<string, readonly PictureBox[]>): void;
  /** Told when pictures have been placed. */
  onPictures(listener: () => void): void;
  /** Lets `swap` put another workbook under the book's id, then takes that over. */
  replace(layout: BookLayout, swap: () => void): void;
  /** Which table column a body cell belongs to. */
  bodyColumn(sheetId: string, place: CellPlace): ColumnPlace | undefined;
}

export function liveBook(grid: Grid, first: BookLayout): LiveBook {
  const injector = grid.univer.__getInjector();
  const listeners = new Set<() => void>();
  const pictureListeners = new Set<() => void>();
  let open = opened(injector, first);
  let replacing = false;
  const manager = injector.get(TableManager);
  const rowsOf = (table: TableLayout): BodyRows => {
    const range = manager.getTableById(bookId, table.tableId)?.getRange();
    return range === undefined ? table : { firstRow: range.startRow + 1, lastRow: range.endRow };
  };
  const sheet = (sheetId: string): SheetLayout | undefined =>
    open.layout.sheets.find((candidate) => candidate.id === sheetId);
  return {
    get layout() {
      return open.layout;
    },
    get workbook() {
      return open.workbook;
    },
    get tables() {
      return open.tables;
    },
    injector,
    commands: injector.get(ICommandService),
    api: grid.api,
    sheet,
    rowsOf,
    worksheet: (sheetId) => {
      const found = open.workbook.getSheetBySheetId(sheetId);
      if (!found) throw new Error(`No sheet ${sheetId}`);
      return found;
    },
    activeSheetId: () => open.workbook.getActiveSheet().getSheetId(),
    onOpened: (listener) => {
      listeners.add(listener);
    },
    isOpen: () => !replacing,
    onPictures: (listener) => {
      pictureListeners.add(listener);
    },
    setPictures: (pictures) => {
      const sheets = open.layout.sheets.map((one) => {
        const own = one.kind === "free" ? pictures.get(one.id) : undefined;
        return one.kind === "free" && own !== undefined ? { ...one, sheet: { ...one.sheet, pictures: own } } : one;
      });
      open = { ...open, layout: { ...open.layout, sheets } };
      for (const listener of pictureListeners) listener();
    },
    replace: (layout, swap) => {
      replacing = true;
      try {
        swap();
        open = opened(injector, layout);
      } finally {
        replacing = false;
      }
      for (const listener of listeners) listener();
    },
    bodyColumn: (sheetId, place) => {
      const table = sheet(sheetId);
      if (table?.kind !== "table") return undefined;
      const { firstRow, lastRow } = rowsOf(table);
      const body = { startRow: firstRow, endRow: lastRow, startColumn: 0, endColumn: table.lastColumn };
      return contains(body, place) ? columnAt(table, place.column) : undefined;
    },
  };
}

type OpenBook = Pick<LiveBook, "layout" | "workbook" | "tables">;

function opened(injector: Injector, layout: BookLayout): OpenBook {
  const workbook = injector.get(IUniverInstanceService).getUnit<Workbook>(bookId, UniverInstanceType.UNIVER_SHEET);
  if (!workbook) throw new Error("The workbook could not be opened.");
  return { layout, workbook, tables: tableSheets(layout) };
}
