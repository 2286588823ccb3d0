/** Functions of the worksheet whose result is trusted, and what each of their arguments takes. */
import table from "./trusted.json";

/**
 * What an argument takes: v one value as it is, n one number, d a day, s one text, b true or false, x what TEXT shows,
 * r a range or an array as it is, m one of which all have to be numbers, t a range of texts, a an expression worked out for arrays, i what the call itself
 * stands for. The last letter, or a group in parentheses, holds for all further arguments. Each function is supported
 * by the corpus of real workbooks or by a second engine (tests).
 */
const ARGUMENTS: ReadonlyMap<string, string> = new Map(Object.values(table).flatMap((topic) => Object.entries(topic)));

/** Whose value another day, another place in the file or chance would change. */
const VOLATILE = new Set(["NOW", "TODAY", "RAND", "RANDBETWEEN", "RANDARRAY", "OFFSET", "INDIRECT", "CELL", "INFO"]);

export const isVolatile = (name: string): boolean => VOLATILE.has(name);

/** What the arguments of a trusted function take, or undefined for one that is not trusted. */
export const argumentsOf = (name: string): string | undefined => ARGUMENTS.get(name);

/** "r(rv)": one range, then pairs of a range and a value. Without a group the last letter repeats. */
function patternOf(takes: string): { once: string; again: string } {
  const group = takes.indexOf("(");
  return group < 0
    ? { once: takes.slice(0, -1), again: takes.slice(-1) }
    : { once: takes.slice(0, group), again: takes.slice(group + 1, -1) };
}

/** The letter of one argument, from 0; r for a function that is not on the list. */
export function argumentLetter(name: string, place: number): string {
  const { once, again } = patternOf(argumentsOf(name) ?? "r");
  return once[place] ?? again[(place - once.length) % again.length] ?? "r";
}

/** Give an array whose first value a single cell shows. */
const ARRAY_RESULTS = new Set(["MMULT", "MINVERSE", "TRANSPOSE", "LINEST", "SEQUENCE", "FILTER", "SORT", "UNIQUE"]);

export const givesArray = (name: string): boolean => ARRAY_RESULTS.has(name);

/** Do something else with an error than give it on. */
const TAKE_ERRORS = new Set(
  [
    "IFERROR",
    "IFNA",
    "ISERROR",
    "ISERR",
    "ISNA",
    "ISNUMBER",
    "ISTEXT",
    "ISNONTEXT",
    "ISLOGICAL",
    "ISBLANK",
    "ISREF",
  ].concat(
    ["COUNT", "COUNTA", "COUNTBLANK", "COUNTIF", "COUNTIFS", "SUMIF", "SUMIFS", "AVERAGEIF", "AVERAGEIFS", "MAXIFS"],
    ["MINIFS", "ERROR.TYPE", "TYPE", "SUBTOTAL", "ROWS", "COLUMNS", "FILTER", "SORT", "UNIQUE", "ROW", "COLUMN", "LET"],
  ),
);

/** Whether a formula with these functions may hide that a value in it is doubted. */
export const mayHideErrors = (functions: readonly string[]): boolean => functions.some((name) => TAKE_ERRORS.has(name));

/** Errors that a function gives of itself, not only those that it reads; #NUM! and #DIV/0! are any function's. */
const GIVES: Readonly<Record<string, ReadonlySet<string>>> = {
  "#N/A": new Set(
    ["NA", "VLOOKUP", "HLOOKUP", "LOOKUP", "MATCH", "XLOOKUP", "XMATCH", "RANK", "IFS", "SWITCH", "ERROR.TYPE"].concat([
      "INDEX",
      "SLOPE",
      "INTERCEPT",
      "CORREL",
      "SUMX2MY2",
      "SUMX2PY2",
      "SUMXMY2",
    ]),
  ),
  "#REF!": new Set(["INDEX", "VLOOKUP", "HLOOKUP"]),
  "#VALUE!": new Set(
    ["CHOOSE", "INDEX", "SUMPRODUCT", "MMULT", "MINVERSE", "MDETERM", "FIND", "SEARCH", "VALUE", "DATEVALUE"].concat(
      ["AND", "OR", "XOR", "CHAR", "CODE", "MID", "LEFT", "RIGHT", "REPT", "REPLACE", "SUBSTITUTE", "TEXT", "SUBTOTAL"],
      [
        "SUMIFS",
        "AVERAGEIFS",
        "COUNTIFS",
        "MAXIFS",
        "MINIFS",
        "ADDRESS",
        "VLOOKUP",
        "HLOOKUP",
        "NPV",
        "IRR",
        "HEX2DEC",
        "ARABIC",
      ],
    ),
  ),
};

/** Whether any of these functions may give an error of itself. */
export function mayGive(error: string, functions: readonly string[]): boolean {
  if (error === "#NUM!" || error === "#DIV/0!") return true;
  return functions.some((name) => GIVES[error]?.has(name) === true);
}
