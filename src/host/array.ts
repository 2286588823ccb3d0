/** Arrays as they are written in a formula, "{58,0.85;60,0.9}": numbers, texts in quotation marks, TRUE and FALSE. */
import type { Cell, Grid } from "../functions/contract.js";

const NUMBER = /^[+-]?(?:\d+\.?\d*|\.\d+)(?:e[+-]?\d+)?$/i;

/** A number, or TRUE or FALSE, however it is written; undefined for anything else. */
export function plainValue(text: string): number | boolean | undefined {
  if (/^true$/i.test(text)) return true;
  if (/^false$/i.test(text)) return false;
  return NUMBER.test(text) ? Number(text) : undefined;
}

/** Undefined where it is no array, or one with a hole or with rows of unequal length, which Excel would not take. */
export function readArray(text: string): Grid | undefined {
  if (!text.startsWith("{") || !text.endsWith("}")) return undefined;
  const rows = splitOutside(text.slice(1, -1), ";").map((row) =>
    splitOutside(row, ",").map((cell) => cellOf(cell.trim())),
  );
  const grid = rows.map((row) => row.filter((cell): cell is Cell => cell !== undefined));
  const width = rows[0]?.length ?? 0;
  return grid.every(({ length }) => length === width) && rows.every(({ length }) => length === width)
    ? grid
    : undefined;
}

/** The array as a formula has it. */
export function writeArray(grid: Grid): string {
  return `{${grid.map((row) => row.map(writeCell).join(",")).join(";")}}`;
}

export function writeCell(cell: Cell): string {
  if (typeof cell === "string") return `"${cell.replaceAll('"', '""')}"`;
  return typeof cell === "boolean" ? String(cell).toUpperCase() : JSON.stringify(cell);
}

/** The arguments of "=NAME(a,{b,c},\"d,e\")" as they are written; undefined where it is no single call. */
export function argumentsOf(formula: string): string[] | undefined {
  const inner = /^=[A-Z_.\d]+\((.*)\)$/is.exec(formula)?.[1];
  return inner === undefined ? undefined : splitOutside(inner, ",").map((argument) => argument.trim());
}

function cellOf(text: string): Cell | undefined {
  const quoted = /^"((?:[^"]|"")*)"$/.exec(text)?.[1];
  return quoted === undefined ? plainValue(text) : quoted.replaceAll('""', '"');
}

/** Splits where the sign stands in no quotation marks, braces or parentheses. */
function splitOutside(text: string, sign: string): string[] {
  const parts = [""];
  let depth = 0;
  let isQuoted = false;
  for (const char of text) {
    if (char === '"') isQuoted = !isQuoted;
    if (!isQuoted && /[{(]/.test(char)) depth++;
    if (!isQuoted && /[})]/.test(char)) depth--;
    if (char === sign && depth === 0 && !isQuoted) parts.push("");
    else parts[parts.length - 1] += char;
  }
  return parts;
}
