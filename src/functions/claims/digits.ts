/** What digits a table prints, where every cell comes as a text: a "58" among tenths is 58.0 whose zero was dropped, or 58. */
import type { Cell } from "../contract.js";
import { plainNumber } from "../numbers.js";

/** So few cells say nothing. */
const FEW = 6;
/** Of numbers to a tenth one in ten ends in 0; where far more do, they were never printed to it. */
const MOST_DROPPED = 0.35;

const decimals = (text: string): number => /\.(\d*)/.exec(text)?.[1]?.length ?? 0;

const COMMA = /^\s*[+\-−]?\d+,\d+\s*(?:[^\d,.\s].*)?$/u;
/** Three digits behind a comma may be a group of thousands. */
const DECIMAL_COMMA = /\d,(?:\d{1,2}|\d{4,})(?!\d)|\b0,\d/;
const DECIMAL_POINT = /\d\.\d/;

/** Whether a report writes its decimals with a comma: one that has a decimal point anywhere does not. */
export function hasDecimalCommas(cells: readonly Cell[]): boolean {
  const texts = cells.filter((cell) => typeof cell === "string" && /^[^\d]*\d/.test(cell)) as string[];
  return texts.some((text) => DECIMAL_COMMA.test(text)) && !texts.some((text) => DECIMAL_POINT.test(text));
}

export function withPoint(cell: Cell): Cell {
  return typeof cell === "string" && COMMA.test(cell) ? cell.replace(",", ".") : cell;
}

/** Cells as numbers where the column's digits tell all of them; as texts where a number has digits of its own. */
export function withDigits(cells: readonly Cell[]): Cell[] {
  const plain = cells.flatMap((cell) =>
    typeof cell === "string" && plainNumber(cell) !== undefined && !/e/i.test(cell) ? [cell.trim()] : [],
  );
  const most = Math.max(0, ...plain.map(decimals));
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
    return reachesMost && decimals(text) === most ? value : text;
  });
}
