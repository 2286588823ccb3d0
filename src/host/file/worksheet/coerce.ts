/** How a worksheet turns a value into a number, a text or a truth where one is wanted. */
import type { Cell, CellError, Grid } from "../../../functions/contract.js";
import { isCellError } from "../../../functions/contract.js";
import { plainMessage } from "../../plain-messages.js";

/** Tells why a result would not be trusted. */
export type Doubt = (reason: string) => void;

export const isGrid = (value: unknown): value is Grid => Array.isArray(value);

export const errorCell = (error: CellError["error"]): CellError => ({ error, message: plainMessage(error) });

const PLAIN_NUMBER = /^\s*([+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?)\s*(%?)\s*$/i;
const THOUSANDS = /^\s*[+-]?\d{1,3}(?:,\d{3})+(?:\.\d*)?\s*$/;
const STARTS_LIKE_NUMBER = /^[\s$€£¥(+.-]*\d|^\s*(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)/i;
/** Words that a date, a time or a number may hold. */
const OWN_WORDS =
  /(?:jan|febr)uary|march|april|june|july|august|(?:sept|nov|dec)ember|october|jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec|am|pm|e/gi;

/** A text as the number that it reads as, or undefined; dates, times, money and fractions are not read: that is doubted. */
export function numberInText(text: string, doubt: Doubt): number | undefined {
  const plain = PLAIN_NUMBER.exec(text);
  if (plain) return Number(plain[1]) / (plain[2] === "%" ? 100 : 1);
  if (THOUSANDS.test(text)) return Number(text.replaceAll(",", ""));
  const hasOtherWords = /\p{L}/u.test(text.replace(OWN_WORDS, ""));
  if (STARTS_LIKE_NUMBER.test(text) && /\d/.test(text) && !hasOtherWords)
    doubt(`the text "${text}" may stand for a number, a date or a time`);
  return undefined;
}

/** For an argument that wants a number: text that reads as one is one, other text is #VALUE!; truths stay. */
export function asNumber(cell: Cell, doubt: Doubt): Cell {
  if (cell === null) return 0;
  return typeof cell === "string" ? (numberInText(cell, doubt) ?? errorCell("#VALUE!")) : cell;
}

const LARGEST_PLAIN = 1e15;
const SMALLEST_PLAIN = 1e-6;
const DIGITS = 15;

/** A number as text has 15 digits at most. */
function numberText(value: number, doubt: Doubt): string {
  const rounded = Number(value.toPrecision(DIGITS));
  const size = Math.abs(rounded);
  if (size !== 0 && (size < SMALLEST_PLAIN || size >= LARGEST_PLAIN)) doubt("so large or small a number as text");
  return String(Object.is(rounded, -0) ? 0 : rounded);
}

/** For an argument that wants a text. */
export function asText(cell: Cell, doubt: Doubt): Cell {
  if (cell === null) return "";
  if (typeof cell === "boolean") return cell ? "TRUE" : "FALSE";
  return typeof cell === "number" ? numberText(cell, doubt) : cell;
}

/** The last digit of fifteen that is not 0 is a 5 behind the point. */
const ENDS_HALFWAY = /\.\d*50*(?:e|$)/;

/** What TEXT shows: a truth as its word, an empty cell as 0; a number is rounded by its fifteen digits, not by what it is in the machine. */
export function asShown(cell: Cell, doubt: Doubt): Cell {
  if (typeof cell !== "number") return typeof cell === "boolean" ? asText(cell, doubt) : (cell ?? 0);
  const digits = cell.toPrecision(DIGITS);
  return ENDS_HALFWAY.test(digits) ? Number(digits) * (1 + Number.EPSILON) : cell;
}

/** Whether arithmetic of the engine and of a worksheet may read a text as different numbers. */
export function isReadOtherwise(text: string): boolean {
  const doubts: string[] = [];
  const number = numberInText(text, (reason) => doubts.push(reason));
  return doubts.length > 0 || (number === undefined && text.trim() !== "" && !Number.isNaN(Number(text)));
}

/** For an argument that wants true or false: the words TRUE and FALSE count, other text is #VALUE!. */
export function asTruth(cell: Cell): Cell {
  if (typeof cell !== "string") return cell ?? false;
  const word = cell.toUpperCase();
  return word === "TRUE" ? true : word === "FALSE" ? false : errorCell("#VALUE!");
}

/** Every cell of a range by itself. */
export function each(value: Cell | Grid | undefined, change: (cell: Cell) => Cell): Cell | Grid {
  if (Array.isArray(value)) return (value as Grid).map((row) => row.map(change));
  return change((value as Cell | undefined) ?? null);
}

/** The first error of a list, as errors go before everything else. */
export const firstError = (cells: readonly Cell[]): CellError | undefined => cells.find(isCellError);
