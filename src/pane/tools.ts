/** What every way is given. */
import type { HostPort } from "../host/port.js";
import type { Book } from "./book.js";
import type { SheetErrors } from "./check/sheet-errors.js";

export interface PaneTools {
  readonly port: HostPort;
  readonly book: Book;
  /** Tells the outcome of what was pressed, in the pane's status line. */
  readonly say: (sentence: string) => void;
  /** Reads the workbook again. */
  readonly refresh: () => void;
  /** The sentence on top is read out when it changes. */
  readonly announces: boolean;
  /** Finds the failing cells of the sheet in front, where the host can. */
  readonly lookThrough: (() => Promise<SheetErrors>) | undefined;
}
