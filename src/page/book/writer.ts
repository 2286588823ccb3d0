/** What fills a sheet, and what it writes with. */
import type { IStyleData } from "@univerjs/core";
import type { Cell } from "../../functions/contract.js";
import type { Measure } from "./header.js";

/** Writes cells of one sheet; formulas are resolved and normalised on the way in. */
export interface SheetWriter {
  readonly measure: Measure;
  put(row: number, column: number, value: Cell | undefined, style: IStyleData): void;
  /** A cell that holds words even if they begin with "=". */
  words(row: number, column: number, text: string, style: IStyleData): void;
}
