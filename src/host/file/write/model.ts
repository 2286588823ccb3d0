/** A workbook to be written, cell by cell: what a description becomes, and what the parts of the package are made from. */
import type { Orientation } from "../../picture-orientation.js";

/** Colours as "#rrggbb". */
export type Colour = string;

export interface CellStyle {
  /** Points; 10 where absent. */
  readonly size?: number;
  readonly bold?: boolean;
  readonly italic?: boolean;
  readonly colour?: Colour;
  readonly fill?: Colour;
  /** As Excel writes number formats; General where absent. */
  readonly format?: string;
  readonly align?: "left" | "right" | "center";
  readonly vertical?: "top" | "center" | "bottom";
  readonly wrap?: boolean;
  /** Steps of space at the side that the text stands on. */
  readonly indent?: number;
  /** Can be typed into where its sheet is protected. */
  readonly unlocked?: boolean;
  readonly border?: Readonly<Partial<Record<"left" | "right" | "top" | "bottom", Edge>>>;
}

export interface Edge {
  readonly weight: "thin" | "medium" | "hair";
  readonly colour: Colour;
}

export type CellValue = number | string | boolean | null;

export interface WrittenCell {
  /** From 0. */
  readonly row: number;
  readonly column: number;
  /** Null: the cell only has a look, or belongs to the spill of another. */
  readonly value?: CellValue;
  /** As a person reads it in Excel, with "=". A spill is written as Excel writes dynamic arrays. */
  readonly formula?: string;
  /** How many cells the formula's result takes up; where absent, one. */
  readonly spill?: { readonly rows: number; readonly columns: number };
  readonly style?: CellStyle;
}

export interface WrittenColumn {
  readonly column: number;
  /** Pixels. */
  readonly width: number;
  /** In a group that can be folded, and folded. */
  readonly folded?: boolean;
  /** Of cells that do not exist yet. */
  readonly style?: CellStyle;
}

export interface Area {
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

export interface WrittenTable {
  readonly name: string;
  /** Header row included. */
  readonly area: Area;
  readonly columns: readonly string[];
  /** Columns, counted from 0, that have no button to sort and filter by. */
  readonly withoutButton?: readonly number[];
}

/** What may be typed into an area, and what is said where it is something else. */
export interface Validation {
  readonly area: Area;
  readonly rule:
    | { readonly kind: "list"; readonly choices: readonly string[] }
    | { readonly kind: "between"; readonly low: number; readonly high: number }
    /** A formula that is true for what may be typed, seen from the area's first cell. */
    | { readonly kind: "formula"; readonly formula: string }
    /** Anything; only the prompt counts. */
    | { readonly kind: "any" };
  /** Nothing else is taken ("stop"), or it is asked whether it is meant ("warning"). */
  readonly strict?: boolean;
  readonly refusal?: { readonly title: string; readonly text: string };
  /** Shown beside the selected cell. */
  readonly prompt?: { readonly title: string; readonly text: string };
}

/** A look that a cell takes on while a formula, seen from the area's first cell, is true. */
export interface Conditional {
  readonly area: Area;
  readonly formula: string;
  readonly look: Pick<CellStyle, "bold" | "colour" | "fill" | "format">;
}

export interface WrittenPicture {
  /** A PNG or JPEG file. */
  readonly bytes: Uint8Array;
  /** The picture is made as large as fits. */
  readonly box: Area;
  /** What it shows, for whoever cannot see it. */
  readonly alternative: string;
  /** What it is called in the drawing, where that tells something. */
  readonly name?: string;
  readonly orientation?: Orientation;
}

export interface PrintSetup {
  readonly landscape: boolean;
  readonly paper: "A4" | "Letter";
  /** So many pages side by side; as many below one another as it takes. */
  readonly pagesWide: number;
  /** Rows, from 0, before which a page ends; the sheet is then scaled by `scale` per cent and not fitted to pages. */
  readonly breaks?: readonly number[];
  readonly scale?: number;
  /** A formula that gives what is printed; everything where absent. */
  readonly area?: string;
  /** First rows and columns that stand on every page; 0 for none. */
  readonly repeatedRows: number;
  readonly repeatedColumns: number;
  readonly foot: { readonly left?: string; readonly right?: string };
}

export interface WrittenSheet {
  readonly name: string;
  readonly cells: readonly WrittenCell[];
  readonly columns: readonly WrittenColumn[];
  /** Pixels by row; `rowHeight` elsewhere. */
  readonly rowHeights: ReadonlyMap<number, number>;
  /** Rows that Excel makes as high as their wrapped text once they are typed into; the others stay as they are. */
  readonly growing?: { readonly from: number; readonly to: number };
  readonly rowHeight: number;
  readonly frozen: { readonly rows: number; readonly columns: number };
  readonly tables: readonly WrittenTable[];
  readonly validations: readonly Validation[];
  readonly conditionals: readonly Conditional[];
  readonly pictures: readonly WrittenPicture[];
  /** Cells that are one. */
  readonly merges?: readonly Area[];
  /** Only unlocked cells can be typed into; lifted without a password. */
  readonly isProtected: boolean;
  readonly print: PrintSetup;
}

export interface WrittenName {
  readonly name: string;
  /** Without "=". */
  readonly formula: string;
  readonly hidden?: boolean;
}

export interface WrittenBook {
  readonly title: string;
  readonly sheets: readonly WrittenSheet[];
  readonly names: readonly WrittenName[];
}
