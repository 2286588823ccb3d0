/** What formulas of a workbook may refer to, and where one stands. */
import type { TablePosition } from "../../embedded/structured.js";
import type { DefinedName } from "../package/workbook.js";

export interface FormulaBook {
  readonly sheets: readonly { readonly name: string; readonly rows: number; readonly columns: number }[];
  readonly names: readonly DefinedName[];
  readonly tables: readonly TablePosition[];
  /** Days count from 1904. */
  readonly is1904?: boolean;
}

export interface FormulaCell {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  /** Worked out for arrays: a legacy array formula or a dynamic array. */
  readonly isArray: boolean;
}
