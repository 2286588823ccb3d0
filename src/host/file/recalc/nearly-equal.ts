/**
 * Whether a formula compares numbers that differ only in their last binary digits: a worksheet takes them for equal (it
 * compares fifteen decimal digits; from memory, no text of it was at hand), the engine does not.
 */
import type { Cell } from "../../../functions/contract.js";
import type { Area } from "../formula/areas.js";

const TEXTS = /"(?:[^"]|"")*"|'(?:[^']|'')*'!/g;
const COMPARISON = /[<>=]/;
const LITERAL = /(?<![\w$.])\d+(?:\.\d+)?(?:E[+-]?\d+)?/gi;
/** 1.11111111111111 and 1.1111111111111, apart in the fifteenth digit, are not equal in a saved workbook of the corpus. */
const DIGITS = 15;
const MOST = 64;

/** Of single cells and literals only; what a side of the comparison works out is not seen. */
export function comparesNearlyEqual(
  text: string,
  areas: readonly Area[],
  valueAt: (sheet: number, row: number, column: number) => Cell,
): boolean {
  const plain = text.replace(TEXTS, "");
  if (!COMPARISON.test(plain)) return false;
  const literals = (plain.match(LITERAL) ?? []).map(Number);
  const cells = areas
    .filter((area) => area.startRow === area.endRow && area.startColumn === area.endColumn)
    .map((area) => valueAt(area.sheet, area.startRow, area.startColumn))
    .filter((value) => typeof value === "number");
  const numbers = [...new Set([...cells, ...literals])].slice(0, MOST).sort((a, b) => a - b);
  return numbers.some((number, i) => {
    const next = numbers[i + 1];
    return next?.toPrecision(DIGITS) === number.toPrecision(DIGITS);
  });
}
