/** Worksheet functions in the engine's place, where it would give another result than the saved one. */
import type { Cell, CellError, Grid } from "../../../functions/contract.js";
import { isCellError } from "../../../functions/contract.js";
import type { PlainArgument, PlainFunction } from "../../embedded/plain-functions.js";
import { asNumber, asShown, asText, asTruth, each, errorCell, isGrid } from "./coerce.js";
import type { Doubt } from "./coerce.js";
import { columnLetters } from "../../embedded/structured.js";
import { MOST_COLUMNS, MOST_ROWS } from "../formula/segments.js";
import {
  AS_NUMBER,
  AS_TEXT,
  AS_TRUTH,
  AS_SHOWN,
  NOT,
  SOUGHT,
  ONLY_NUMBER,
  NO_PATTERN,
  AS_DAY,
  COPY,
  NUMBERS,
  FORMATTED,
  DOUBT,
} from "./helpers.js";
import { criteriaFunctions } from "./criteria.js";
import { dateFunctions, isEndOfFebruary } from "./dates.js";
import { numberFunctions } from "./numbers.js";
import { pairFunctions } from "./pairs.js";

/** What a value that is doubted gives: an error that goes through a formula wherever the value would be used. */
const DOUBTED: CellError = { error: "#N/A", message: "doubted" };
export const isDoubted = (result: Grid): boolean =>
  result.some((row) => row.some((cell) => isCellError(cell) && cell.message === DOUBTED.message));

/** What the functions tell besides their results. */
export interface Listener {
  readonly doubt: Doubt;
  /** Nothing, or an empty text, was looked up: it is not found unless 0 or an empty text stands where it looks. */
  readonly soughtNothing: () => void;
}

/** Every worksheet function of ours; one that doubts its result gives an error that marks it. */
export function worksheetFunctions(is1904: boolean, { doubt, soughtNothing }: Listener): PlainFunction[] {
  const doubts = { count: 0 };
  const noted: Doubt = (reason) => {
    doubts.count++;
    doubt(reason);
  };
  const begin = (): (() => Cell | undefined) => {
    const before = doubts.count;
    return () => (doubts.count > before ? DOUBTED : undefined);
  };
  return functions(is1904, noted, soughtNothing).map(({ name, evaluate, change }) => ({
    name,
    evaluate: (args) => {
      const end = begin();
      const result = evaluate(args);
      return end() ?? result;
    },
    ...(change ? { change, begin } : {}),
  }));
}

function functions(is1904: boolean, doubt: Doubt, soughtNothing: () => void): PlainFunction[] {
  return [
    {
      name: DOUBT,
      evaluate: ([reason]) => {
        doubt(typeof reason === "string" ? reason : "its value");
        return null;
      },
    },
    cellByCell(AS_NUMBER, (cell) => asNumber(cell, doubt)),
    cellByCell(AS_TEXT, (cell) => asText(cell, doubt)),
    cellByCell(AS_TRUTH, asTruth),
    cellByCell(AS_SHOWN, (cell) => asShown(cell, doubt)),
    cellByCell(NOT, (cell) => (isCellError(cell) ? cell : cell !== true)),
    cellByCell(SOUGHT, (cell) => sought(cell, doubt, soughtNothing)),
    {
      name: NO_PATTERN,
      evaluate: ([value]) =>
        each(value, (cell) => {
          if (typeof cell === "string" && PATTERN.test(cell)) doubt("a search by a pattern");
          return cell;
        }),
    },
    {
      name: ONLY_NUMBER,
      evaluate: ([value]) =>
        each(value, (cell) => {
          if (typeof cell !== "number" && !isCellError(cell)) doubt("the nearest value to what is no number");
          return cell;
        }),
    },
    {
      name: AS_DAY,
      evaluate: ([value]) =>
        each(value, (cell) => {
          const day = asNumber(cell, doubt);
          if (typeof day !== "number") return day;
          const whole = Math.floor(day);
          if (whole < FIRST_SURE_DAY) doubt("days before March 1900");
          // Programs take it for the 30th or not.
          else if (isEndOfFebruary(whole)) doubt("the last day of a February");
          return whole;
        }),
    },
    // What the engine would change in its own memory of a range.
    cellByCell(COPY, (cell) => cell),
    {
      name: NUMBERS,
      evaluate: ([value]) =>
        each(value, (cell) => {
          if (typeof cell !== "number" && !isCellError(cell)) doubt("a range that holds more than numbers");
          return cell;
        }),
    },
    { name: FORMATTED, evaluate: ([text, shown]) => formatted(text, shown, doubt) },
    { name: "TRUNC", evaluate: ([value, digits]) => truncated(value, digits) },
    { name: "ADDRESS", evaluate: address },
    { name: "T", evaluate: ([value]) => onFirst(value, (cell) => (typeof cell === "string" ? cell : "")) },
    {
      name: "N",
      evaluate: ([value]) => onFirst(value, (cell) => (typeof cell === "number" ? cell : cell === true ? 1 : 0)),
    },
    { name: "CODE", evaluate: ([value]) => each(value, (cell) => code(cell, doubt)) },
    { name: "CHAR", evaluate: ([value]) => each(value, (cell) => character(cell, doubt)) },
    ...dateFunctions(is1904, doubt),
    ...pairFunctions(),
    ...numberFunctions(doubt),
    ...criteriaFunctions(doubt),
  ];
}

/** A function of one argument that works cell by cell. */
const cellByCell = (name: string, change: (cell: Cell) => Cell): PlainFunction => ({
  name,
  change,
  evaluate: ([value]) => each(value, change),
});

function onFirst(value: PlainArgument, work: (cell: Cell) => Cell): Cell {
  const cell = isGrid(value) ? (value[0]?.[0] ?? null) : (value ?? null);
  return isCellError(cell) ? cell : work(cell);
}

const PATTERN = /[*?~]/;

/** A text that stands in no cell. An error in its place would be given on, where XLOOKUP has a value for what is not found. */
const IN_NO_CELL = "\u{10ffff}nothing";

/** What a lookup looks for: nothing is never found, a pattern is read in other ways by the engine. */
function sought(cell: Cell, doubt: Doubt, soughtNothing: () => void): Cell {
  if (cell === null || cell === "") {
    soughtNothing();
    return IN_NO_CELL;
  }
  if (typeof cell === "string" && PATTERN.test(cell)) doubt("a lookup by a pattern");
  return cell;
}

/** Whether a negative number that is shown as nought keeps its sign is told in other ways by the engine. */
function formatted(text: PlainArgument, shown: PlainArgument, doubt: Doubt): Cell | Grid {
  let [row, column] = [-1, -1];
  // Cell by cell: in a column of numbers a text that has no digits stands beside another one's number.
  const shownAt = (): Cell => {
    if (!isGrid(shown)) return shown ?? null;
    const line = shown[shown.length === 1 ? 0 : row] ?? [];
    return line[line.length === 1 ? 0 : column] ?? null;
  };
  const look = (cell: Cell): void => {
    const isNought = typeof cell === "string" && cell.includes("0") && !/[1-9]/.test(cell);
    if (isNought && Number(shownAt()) < 0) doubt("a negative number that is shown as 0");
  };
  if (!isGrid(text)) {
    [row, column] = [0, 0];
    look(text ?? null);
    return text ?? null;
  }
  text.forEach((line, r) => {
    line.forEach((cell, c) => {
      [row, column] = [r, c];
      look(cell);
    });
  });
  return text;
}

/** Towards 0, by the digits that the number is written with. */
function truncated(value: PlainArgument, digits: PlainArgument): Cell | Grid {
  const given = isGrid(digits) ? (digits[0]?.[0] ?? null) : (digits ?? null);
  if (isCellError(given)) return given;
  const places = Math.trunc(Number(given));
  return each(value, (cell) => {
    if (isCellError(cell) || typeof cell === "string") return isCellError(cell) ? cell : errorCell("#VALUE!");
    const shifted = Math.trunc(moved(Number(cell), places));
    return Number.isFinite(shifted) ? moved(shifted, -places) : Number(cell);
  });
}

/** The decimal point moved without a rounding of its own. */
function moved(value: number, places: number): number {
  const [digits = "0", power = "0"] = String(value).split("e");
  return Number(`${digits}e${Number(power) + places}`);
}

function address(args: readonly PlainArgument[]): Cell {
  const given = args.map((arg) => (isGrid(arg) ? (arg[0]?.[0] ?? null) : arg));
  const error = given.find(isCellError);
  if (error) return error;
  const [row = 0, column = 0, kind = 1] = given.slice(0, 3).map((one) => Math.trunc(Number(one ?? undefined)));
  const fixed = Number.isNaN(kind) ? 1 : kind;
  const isIn = row >= 1 && row <= MOST_ROWS && column >= 1 && column <= MOST_COLUMNS && fixed >= 1 && fixed <= 4;
  if (!isIn) return errorCell("#VALUE!");
  const [isRowFixed, isColumnFixed] = [fixed <= 2, fixed === 1 || fixed === 3];
  if (given[3] === undefined || given[3] === null || Boolean(given[3])) {
    return `${isColumnFixed ? "$" : ""}${columnLetters(column - 1)}${isRowFixed ? "$" : ""}${row}`;
  }
  return `R${isRowFixed ? row : `[${row}]`}C${isColumnFixed ? column : `[${column}]`}`;
}

/** 1 March 1900: before it Excel's days are one off. */
const FIRST_SURE_DAY = 61;

/** Beyond it the character set of the machine decides. */
const LAST_ASCII = 127;

function code(cell: Cell, doubt: Doubt): Cell {
  const text = asText(cell, doubt);
  if (typeof text !== "string") return text;
  if (text === "") return errorCell("#VALUE!");
  const number = text.charCodeAt(0);
  if (number > LAST_ASCII) doubt("the number of a character outside ASCII is the machine's");
  return number;
}

function character(cell: Cell, doubt: Doubt): Cell {
  const number = asNumber(cell, doubt);
  if (typeof number !== "number" && typeof number !== "boolean") return number;
  const whole = Math.trunc(Number(number));
  if (whole < 1 || whole > 255) return errorCell("#VALUE!");
  if (whole > LAST_ASCII) doubt("a character outside ASCII is the machine's");
  return String.fromCharCode(whole);
}
