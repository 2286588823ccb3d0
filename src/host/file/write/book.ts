/** New workbooks from a description, with what their formulas give saved beside them. */
import type { FunctionSpec } from "../../../functions/contract.js";
import type { BookDescription } from "../../../templates/contract.js";
import { recalculateFile } from "../recalc/file.js";
import { type BookOptions, describedBook } from "./described.js";
import type { WrittenBook } from "./model.js";
import { packBook } from "./package.js";

/** A formula of a description gives no value that could be saved beside it. */
export class NotWorkedOut extends Error {
  constructor(
    message: string,
    readonly formula: string,
  ) {
    super(message);
  }
}

/**
 * The bytes of an .xlsx file; the same description gives the same bytes.
 * @throws Error where the description is at fault, NotWorkedOut where a formula of it cannot be worked out
 */
export async function writeDescribed(
  book: BookDescription,
  specs: readonly FunctionSpec[],
  options: BookOptions = {},
): Promise<Uint8Array> {
  return writeBook(describedBook(book, options), specs);
}

/** The same for a book that is given cell by cell. */
async function writeBook(book: WrittenBook, specs: readonly FunctionSpec[]): Promise<Uint8Array> {
  const { bytes, cells } = await recalculateFile(packBook(book), specs, { all: true });
  const kept = cells.find(({ status }) => status === "kept");
  // Excel without the add-in, a phone, a preview in a mail show what is saved: nothing may be missing.
  if (kept !== undefined)
    throw new NotWorkedOut(`${kept.sheet}!${kept.cell} cannot be worked out: ${kept.reason ?? ""}`, kept.formula);
  return bytes;
}
