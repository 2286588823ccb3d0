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

export interface BookDescription {
  /** Shown as the workbook's name. */
  readonly title: string;
  readonly sheets: readonly SheetDescription[];
}

export type SheetDescription = FormSheet | TableSheet | NotesSheet;

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
