/** What digits a table prints, where every cell comes as a text: a "58" among tenths is 58.0 whose zero was dropped, or 58. */
import type { Cell } from "../contract.js";
import { plainNumber } from "../numbers.js";

/** So few cells say nothing. */
const FEW = 6;
/** Of numbers to a tenth one in ten ends in 0; where far more do, they were never printed to it. */
const MOST_DROPPED = 0.35;

const decimals = (text: string): number => /\.(\d*)/.exec(text)?.[1]?.length ?? 0;

/** Which mark parts the decimals of a report, where its numbers tell: then the other one parts thousands. */
export type DecimalMark = "," | ".";

const COMMA = /^\s*[+\-−]?\d+,\d+\s*(?:[^\d,.\s].*)?$/u;
/** Three digits behind a mark may be a group of thousands, but not behind a 0. */
const DECIMALS: Readonly<Record<DecimalMark, RegExp>> = {
  ",": /\d,(?:\d{1,2}|\d{4,})(?!\d)|(?<![\d.,])0,\d/,
  ".": /\d\.(?:\d{1,2}|\d{4,})(?!\d)|(?<![\d.,])0\.\d/,
};
const GROUPED: Readonly<Record<DecimalMark, RegExp>> = {
  ",": /^([^\d]*)([1-9]\d{0,2}(?:,\d{3})+)(?![\d,])/,
  ".": /^([^\d]*)([1-9]\d{0,2}(?:\.\d{3})+)(?![\d.])/,
};
/** No number with its unit is longer. */
const LONGEST = 80;

/** A report whose numbers have decimals behind both marks tells nothing. */
export function decimalMark(cells: readonly Cell[]): DecimalMark | undefined {
  const texts = cells.filter(
    (cell): cell is string => typeof cell === "string" && cell.length <= LONGEST && /\d/.test(cell),
  );
  const marks = ([",", "."] as const).filter((mark) => texts.some((text) => DECIMALS[mark].test(text)));
  return marks.length === 1 ? marks[0] : undefined;
}

const ungrouped = (text: string, mark: DecimalMark): string =>
  text.replace(GROUPED[mark], (_, before: string, digits: string) => before + digits.replaceAll(mark, ""));

/** A number with a decimal point and no mark between its thousands. */
export function withPoint(cell: Cell, mark: DecimalMark): Cell {
  if (typeof cell !== "string" || cell.length > LONGEST) return cell;
  const text = ungrouped(cell, mark === "," ? "." : ",");
  return mark === "," && COMMA.test(text) ? text.replace(",", ".") : text;
}

/** Whether a number of a report would be another one without what the report's other numbers tell. */
export function isGrouped(cell: Cell, mark: DecimalMark): boolean {
  return typeof cell === "string" && cell.length <= LONGEST && GROUPED[mark === "," ? "." : ","].test(cell);
}

/** Cells as numbers where the column's digits tell all of them; as texts where a number has digits of its own. */
export function withDigits(cells: readonly Cell[]): Cell[] {
  const plain = cells.flatMap((cell) =>
    typeof cell === "string" && plainNumber(cell) !== undefined && !/e/i.test(cell) ? [cell.trim()] : [],
  );
  const most = plain.reduce((so, text) => Math.max(so, decimals(text)), 0);
  const fewer = plain.filter((text) => decimals(text) < most).length;
  const printsZeros = most > 0 && plain.some((text) => /\.\d*0$/.test(text));
  const areDropped = !printsZeros && plain.length >= FEW && fewer <= MOST_DROPPED * plain.length;
  const reachesMost = plain.some((text) => decimals(text) === most && decimals(String(Number(text))) === most);
  return cells.map((cell) => {
    if (typeof cell !== "string") return cell;
    const text = cell.trim();
    const value = plainNumber(text);
    if (value === undefined || /e/i.test(text)) return cell;
    if (most === 0 || areDropped) return value;
    // A printed zero is kept as a text: as a number it would be gone.
    return reachesMost && decimals(text) === most && decimals(String(value)) === most ? value : text;
  });
}
