/** What a workbook holds when it is read back: sheets, tables and names as they stand, before anything is made of them. Neutral of any host. */
import type { Cell } from "../functions/contract.js";
import type { Units } from "../functions/units.js";
import type { PictureBox } from "./contract.js";

export interface BookContents {
  /** Name of the template it was made from, where the workbook says it. */
  readonly template?: string;
  /** Where the workbook says them. */
  readonly units?: Units;
  readonly title?: string;
  readonly sheets: readonly SheetContents[];
  /** In the order of the sheets. */
  readonly tables: readonly TableContents[];
  readonly names: readonly NamedCells[];
  /** In the boxes that are kept for them. */
  readonly held: readonly HeldPicture[];
  /** Added to a day of this workbook gives a day as others count it: some workbooks count from 1904. */
  readonly dayShift: number;
}

export interface SheetContents {
  readonly name: string;
  /** One more than the last row and column with a cell. */
  readonly rows: number;
  readonly columns: number;
  /** Rows and columns from 0. */
  readonly at: (row: number, column: number) => ReadCell;
  readonly pictures: number;
  readonly hasComments: boolean;
}

/** A picture that was put into a box. */
export interface HeldPicture extends Required<Pick<PictureBox, "key" | "shown" | "base64" | "orientation">> {
  readonly sheet: string;
}

export interface ReadCell {
  /** A day is a number. An error has no message. */
  readonly value: Cell;
  /** A formula stands in the cell itself: its value is what was saved. What another cell's formula spills has none. */
  readonly isWorkedOut: boolean;
}

export interface TableContents {
  readonly name: string;
  readonly sheet: string;
  readonly headerRow: number;
  readonly firstRow: number;
  /** Below `firstRow` where the table has no row. A row of totals does not count. */
  readonly lastRow: number;
  readonly columns: readonly ReadColumn[];
  /** What has a header in the same row at the right of the table. */
  readonly beside: readonly ReadColumn[];
}

export interface ReadColumn {
  readonly header: string;
  /** The text above the header, "" where there is none. */
  readonly above: string;
  /** The sheet's column. */
  readonly column: number;
}

/** A defined name and the cells it means. */
export interface NamedCells {
  readonly name: string;
  readonly sheet: string;
  readonly startRow: number;
  readonly endRow: number;
  readonly startColumn: number;
  readonly endColumn: number;
}

/** A cell as text; "" where it is empty or an error. */
export function textOf(value: Cell): string {
  return value === null || typeof value === "object" ? "" : String(value);
}
