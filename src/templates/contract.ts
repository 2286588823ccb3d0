/**
 * A workbook as data: what the page opens, and what the file writer and Excel will be given. Neutral of any host.
 *
 * Formulas are written once, in a form every host resolves for itself:
 *   [key]         the whole column `key` of the same sheet, typed or computed (the body rows, no header)
 *   Table[key]    the same of another sheet's table
 *   job_humidity  a form field, by its defined name
 * The embedded engine is given A1 ranges only; a file will get structured references and spill ranges.
 */
import type { Cell } from "../functions/contract.js";
import type { Units } from "../functions/units.js";

export interface BookDescription {
  /** Shown as the workbook's name. */
  readonly title: string;
  readonly sheets: readonly SheetDescription[];
  /** Which template it is made from, as the registry calls it, and in which units: what a file says of itself, so that it can be opened again. */
  readonly template?: { readonly name: string; readonly units: Units };
}

export type SheetDescription = FormSheet | TableSheet | NotesSheet | FreeSheet;

interface SheetBase {
  readonly name: string;
  /**
   * Lines above the content: title first. A line may be a formula. On a table's sheet they stand in the first column that
   * is not frozen: from a frozen one they would run over its edge and, scrolled, be cut in the middle of a word.
   */
  readonly heading: readonly string[];
}

/** Label, value, unit, note: one line a field. */
export interface FormSheet extends SheetBase {
  readonly kind: "form";
  readonly fields: readonly FormField[];
}

export interface FormField {
  /** Absent: a subheading line that holds only the label. */
  readonly definedName?: string;
  readonly label: string;
  readonly unit?: string;
  readonly value?: Cell;
  readonly note?: string;
  readonly choices?: readonly string[];
  /** Lowest and highest number that can be, in the unit of the column; nothing else is taken. */
  readonly range?: readonly [low: number, high: number];
  readonly format?: string;
}

/** One table of typed inputs and, to its right, computed columns: one spilled formula each. */
export interface TableSheet extends SheetBase {
  readonly kind: "table";
  /** Not the sheet's name; no space, no leading digit, not like a cell. */
  readonly tableName: string;
  readonly columns: readonly ColumnDescription[];
  readonly rows: readonly (readonly Cell[])[];
  /** Stand right of the table, in this order, after one narrow empty column. */
  readonly computed: readonly ComputedColumn[];
  /** Columns frozen at the left (the identifying ones). */
  readonly frozenColumns: number;
}

export interface ColumnDescription {
  /** Unique in its sheet; letters, digits, underscore. */
  readonly key: string;
  readonly header: string;
  readonly unit?: string;
  /** Group name above the header ("Where", "As read", "Currents", ...). */
  readonly group: string;
  /** Pixels. */
  readonly width: number;
  /** In the folded group: hidden at first. */
  readonly folded?: boolean;
  readonly format?: string;
  readonly align?: "left" | "right";
  readonly choices?: readonly string[];
  /** Lowest and highest number that can be, in the unit of the column; nothing else is taken. */
  readonly range?: readonly [low: number, high: number];
  readonly note?: string;
  /** Rows in which its number has no unit that depends on the book: where another typed column has this word. */
  readonly plainWhere?: { readonly key: string; readonly is: string };
}

export interface ComputedColumn extends ColumnDescription {
  /** Begins with "="; spills as many rows as the table has, one column wide. */
  readonly formula: string;
  /** The column holds grades 0 to 4 (or words that begin with one): shown with fill, bars and words, so that colour alone never tells them. */
  readonly grade?: boolean;
}

export interface NotesSheet extends SheetBase {
  readonly kind: "notes";
  readonly lines: readonly string[];
}

/**
 * Cells that stand where the description puts them: blocks to print, a page of findings, a block that is pasted.
 * Rows count from 0 at the row below the heading and one empty row; columns from 0 at A.
 */
export interface FreeSheet extends SheetBase {
  readonly kind: "free";
  /** Pixels, from the first column on. A column apart stands what only formulas read, folded away. */
  readonly widths: readonly number[];
  readonly cells: readonly FreeCell[];
  /** Pixels of the rows that are not as high as the others. */
  readonly heights?: Readonly<Record<number, number>>;
  readonly frozen?: { readonly rows: number; readonly columns: number };
  readonly pictures?: readonly PictureBox[];
  readonly print?: FreePrint;
}

export interface FreeCell {
  readonly row: number;
  readonly column: number;
  /** A formula begins with "="; it may name tables' columns, form fields and the names of free cells. */
  readonly value?: Cell;
  /**
   * Of a formula that spills: how far its result reaches when the book is made; it may grow and shrink later, and a name
   * then means no more than this. Of a typed cell: the block that is typed or pasted into. One cell where absent.
   */
  readonly size?: { readonly rows: number; readonly columns: number };
  /** What stands in a block that is typed, from its first cell on, a row each; `value` is then its first cell's. */
  readonly values?: readonly (readonly Cell[])[];
  readonly look: FreeLook;
  /** The defined name of the cell, or of its whole size. */
  readonly name?: string;
  /** What it is called in messages. */
  readonly label?: string;
  readonly unit?: string;
  readonly format?: string;
  readonly align?: "left" | "right";
  readonly choices?: readonly string[];
  /** Lowest and highest number that can be typed. */
  readonly range?: readonly [low: number, high: number];
  /** Holds a grade: fill, bars and words. */
  readonly grade?: boolean;
  /** Stands over so many columns as one cell; never where a formula spills. */
  readonly across?: number;
}

/** typed and computed are the cells of a table; header is the head of a computed column; words wrap. */
export type FreeLook =
  "subheading" | "label" | "header" | "typedHeader" | "typed" | "computed" | "words" | "strong" | "muted";

/** Where a picture goes, and the cell whose text or number tells which. */
export interface PictureBox {
  readonly key: string;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
  /** The free cell, by its place, that shows the picture's number. */
  readonly numberAt: { readonly row: number; readonly column: number };
  readonly kind: "thermogram" | "photo";
  /** A picture that the description brings along, as the base64 of a PNG or JPEG file. */
  readonly base64?: string;
  readonly alternative?: string;
  /** What that picture shows: it stands where its number is asked for. Without it, it belongs to the box whatever that shows. */
  readonly shown?: string;
  /** EXIF's orientation of its pixels as stored; upright where absent. */
  readonly orientation?: 1 | 2 | 3 | 4 | 5 | 6 | 7 | 8;
}

export interface FreePrint {
  readonly landscape?: boolean;
  /** Heading lines and free rows down to this count stand on every page; none where absent. */
  readonly repeatHeading?: boolean;
  /** Free rows before which a page ends. */
  readonly breaksBefore?: readonly number[];
  /** Names a one-cell formula (a free cell's name) that tells how many free rows are printed; all where absent. */
  readonly rowsNamed?: string;
}
