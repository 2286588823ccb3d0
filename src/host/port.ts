/**
 * What a workbook can do for the pane, said once. The page carries it over its grid (src/host/embedded/host.ts), Excel
 * over its own API (src/host/excel/host.ts); the tests in tests/host-port hold both to it.
 *
 * Nothing here throws and no promise rejects: what a host cannot do, or cannot do now, is a Result with a sentence.
 * Rows and columns are counted from 0, as in a sheet's own numbering less one; addresses for people are "B14".
 * An empty cell is null, and so is a computed cell that shows an empty text.
 */
import type { Cell, Grid } from "../functions/contract.js";
import type { Units } from "../functions/units.js";
import type { BookDescription } from "../templates/contract.js";
import type { PlainPicture } from "./picture-jpeg.js";

export type Result<T> = { readonly ok: true; readonly value: T } | Refusal;

/** Why not, for a program and, as a whole sentence, for a person. */
export interface Refusal {
  readonly ok: false;
  readonly reason: RefusalReason;
  readonly message: string;
}

export type RefusalReason =
  /** A cell is being typed into: nothing is answered until that is done. */
  | "busy"
  /** The cell holds something: ask, then say `overwrite`. */
  | "occupied"
  /** The sheet, or our own lock, lets nothing be written there. */
  | "locked"
  /** There is no such sheet, table, name or cell. */
  | "missing"
  /** The formula, the reference or the description cannot be taken as it is. */
  | "invalid"
  /** This host cannot do it at all. */
  | "unable"
  /** Anything else that the host answered. */
  | "failed";

export interface CellAt {
  readonly sheet: string;
  readonly row: number;
  readonly column: number;
}

export interface SheetInfo {
  readonly name: string;
  /** The sheet in front. */
  readonly active: boolean;
  /** Names of the tables that stand on it. */
  readonly tables: readonly string[];
}

export interface ColumnInfo {
  /** The template's word for it; where no template is known, the header. Records go by it. */
  readonly key: string;
  readonly header: string;
  readonly unit?: string;
  /** Its group's name above the header. */
  readonly group?: string;
  /** Worked out beside the table, not typed. */
  readonly computed: boolean;
  /** Holds grades. */
  readonly grade?: boolean;
  /** Belongs to the columns that are hidden at first. */
  readonly folded?: boolean;
  readonly choices?: readonly string[];
  readonly note?: string;
  /** The sheet's column. */
  readonly column: number;
}

export interface TableInfo {
  readonly name: string;
  readonly sheet: string;
  readonly headerRow: number;
  readonly firstRow: number;
  readonly lastRow: number;
  /** Typed columns, then the computed ones that stand beside the table. */
  readonly columns: readonly ColumnInfo[];
  /** As its columns say: "F" where one is in °F. */
  readonly units: Units;
}

/** The cells of one row, by the keys of its table's columns. */
export type RowRecord = Readonly<Record<string, Cell>>;

export interface TableContent {
  readonly table: TableInfo;
  /** Row i stands in the sheet's row table.firstRow + i. */
  readonly rows: readonly RowRecord[];
}

/** A line of a form: its value has a defined name ("job_criteria"). */
export interface FieldInfo {
  readonly name: string;
  /** The words at the left of it, "" where there are none. */
  readonly label: string;
  readonly value: Cell;
  readonly at: CellAt;
}

export interface SelectedCell {
  readonly at: CellAt;
  /** "B14". */
  readonly address: string;
  /** The column's header in a table, the label of a form's line; undefined elsewhere. */
  readonly header: string | undefined;
  readonly unit: string | undefined;
  /** Unrounded. */
  readonly value: Cell;
  /** As the cell shows it. */
  readonly shown: string;
  /** As the host holds it, with "="; undefined for a spilled or a typed value. */
  readonly formula: string | undefined;
  /** Why it shows an error, where it shows one. */
  readonly message: string | undefined;
  /** The row it stands in, where that is a row of a table. */
  readonly row: SelectedRow | undefined;
}

export interface SelectedRow {
  readonly table: string;
  /** From 0, in the table's body. */
  readonly index: number;
  readonly record: RowRecord;
}

/** The columns of the sheet in front that are hidden at first. */
export interface FoldedColumns {
  readonly sheet: string;
  readonly headers: readonly string[];
  /** At least one of them is hidden now. */
  readonly hidden: boolean;
}

/** "contrast": light on black, with lines for every edge. */
export type Theme = "light" | "dark" | "contrast";

/** A box for a picture, and what stands there now. */
export interface PictureBoxInfo {
  readonly key: string;
  readonly kind: "thermogram" | "photo";
  /** Its upper left cell. */
  readonly at: CellAt;
  /** The image number or name that it shows; "" where it is not used. */
  readonly shown: string;
  /** What the picture shows that was put there before. */
  readonly held: string | undefined;
}

export interface PlacedPicture {
  readonly key: string;
  readonly shown: string;
  /** A file with nothing in it but its pixels. */
  readonly picture: PlainPicture;
}

/** Ends a subscription. */
export type Stop = () => void;

export interface WriteOptions {
  /** Write although the cell holds something; without it that is refused as "occupied". */
  readonly overwrite?: boolean;
}

export interface MadeBook {
  /** The sheets as they are called now: Excel may have had one of the same name. */
  readonly sheets: readonly string[];
}

export interface HostPort {
  readonly host: "page" | "excel";
  /**
   * What `makeBook` does with the workbook that is open: "replaced" (the page: ask first) or "added" to (Excel).
   */
  readonly newBookIs: "replaced" | "added";
  /** Whether `undo` can be called; otherwise the host's own key is all there is. */
  readonly canUndo: boolean;

  readonly sheets: () => Promise<Result<readonly SheetInfo[]>>;
  readonly tables: () => Promise<Result<readonly TableInfo[]>>;
  /** A whole table, typed and computed columns. */
  readonly readTable: (name: string) => Promise<Result<TableContent>>;
  /** The named values of the workbook, in sheet order. */
  readonly fields: () => Promise<Result<readonly FieldInfo[]>>;
  /** The values of a cell or range: "B14", "B3:C9", "Job!B4", "Readings[left]"; without a sheet, of the one in front. */
  readonly read: (reference: string) => Promise<Result<Grid>>;
  /** The selected cell, or the first of the selected. */
  readonly selected: () => Promise<Result<SelectedCell>>;
  /** The units that the workbook's tables are in. */
  readonly units: () => Promise<Result<Units>>;
  readonly theme: () => Theme;
  readonly folded: () => Promise<Result<FoldedColumns>>;

  /** Another cell or sheet is selected. */
  readonly onSelection: (listener: () => void) => Stop;
  /** Values or messages have changed; told once a recalculation. */
  readonly onRecalculated: (listener: () => void) => Stop;
  readonly onTheme: (listener: (theme: Theme) => void) => Stop;

  /** Selects a cell on its sheet and brings it into view. */
  readonly goTo: (cell: CellAt) => Promise<Result<void>>;

  // Each of the following is one step for the host's own undo, where it has one for what a program does.

  /**
   * Makes the sheets of a description and shows the first. In the page they take the place of the open book, which is
   * gone; in Excel they are added, tables and names that exist already refuse the whole before anything is made.
   */
  readonly makeBook: (description: BookDescription) => Promise<Result<MadeBook>>;
  /** Writes a formula, "=" first, into the selected cell; says where it went. */
  readonly insertFormula: (formula: string, options?: WriteOptions) => Promise<Result<CellAt>>;
  /** Hides or shows the folded columns of the sheet in front. */
  readonly fold: (hide: boolean) => Promise<Result<void>>;
  /** Enters every formula of ours again (they were opened before the functions were there); tells how many. */
  readonly enterAgain: () => Promise<Result<number>>;
  readonly undo: () => Promise<Result<void>>;
  /** The boxes for pictures that the workbook has, in the order of its sheets. */
  readonly pictureBoxes: () => Promise<Result<readonly PictureBoxInfo[]>>;
  /** Places pictures in their boxes; ours that stood there before are gone but for those of the boxes named by `keeps`. Tells how many stand now. */
  readonly placePictures: (pictures: readonly PlacedPicture[], keeps: ReadonlySet<string>) => Promise<Result<number>>;
}
