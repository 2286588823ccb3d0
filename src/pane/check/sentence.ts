import type { Book } from "../book.js";
import { nameOf } from "../route.js";
import { count } from "../words.js";

/** "Row 14: MSB-Q3, feeder to hall 2. 3 things are missing or speak against it." */
export function checkSentence({ cell, route, trouble }: Book, ofRow: number | undefined, ofRoute: number): string {
  if (trouble !== undefined) return trouble;
  if (cell === undefined) return "Select a cell to see what speaks against it.";
  if (cell.message !== undefined) return `${cell.address} shows an error; the reason stands below.`;
  if (route === undefined) return `${cell.address} shows no error.`;
  if (ofRow === undefined) {
    return ofRoute === 0
      ? "Nothing on the route is missing and nothing speaks against a row."
      : `${count(ofRoute, "thing")} on the route ${ofRoute === 1 ? "is" : "are"} missing or ${ofRoute === 1 ? "speaks" : "speak"} against a row. Select a row to see its own.`;
  }
  const name = nameOf(cell.row?.record ?? {});
  const row = `Row ${String(cell.at.row + 1)}`;
  if (name === "" && ofRow === 0) return `${row} is empty: nothing is asked of it yet.`;
  const place = `${row}${name === "" ? "" : `: ${name}`}.`;
  return ofRow === 0
    ? `${place} Nothing is missing and nothing speaks against it.`
    : `${place} ${count(ofRow, "thing")} ${ofRow === 1 ? "is" : "are"} missing or ${ofRow === 1 ? "speaks" : "speak"} against this reading.`;
}
