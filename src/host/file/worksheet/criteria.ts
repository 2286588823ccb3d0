/** Functions that pick cells by a criterion such as 5, ">5", "<>", "a*" or "=TRUE". */
import type { Cell, Grid } from "../../../functions/contract.js";
import { isCellError } from "../../../functions/contract.js";
import type { PlainArgument, PlainFunction } from "../../embedded/plain-functions.js";
import { WHOLE } from "./helpers.js";
import { errorCell, numberInText, isGrid } from "./coerce.js";
import type { Doubt } from "./coerce.js";

type Matches = (cell: Cell) => boolean;

const FORM = /^(<=|>=|<>|=|<|>)?([\s\S]*)$/;
const ERROR = /^#(?:N\/A|[A-Z0-9/]+[!?])$/i;
const isPlainText = (text: string): boolean => /^[A-Za-z0-9 ]*$/.test(text);

/** Which cells a criterion means. An empty cell as a criterion stands for 0. */
function criterion(wanted: Cell, doubt: Doubt): Matches {
  if (wanted === null) return numberIs("=", 0, doubt);
  if (typeof wanted === "number") return numberIs("=", wanted, doubt);
  if (typeof wanted === "boolean") return (cell) => cell === wanted;
  if (isCellError(wanted)) return (cell) => isCellError(cell) && cell.error === wanted.error;
  const [, sign, rest = ""] = FORM.exec(wanted) ?? [];
  const operator = sign ?? "=";
  if (rest === "") return empty(sign);
  const isEqual = operator === "=" || operator === "<>";
  const negated = (matches: Matches): Matches => (operator === "<>" ? (cell) => !matches(cell) : matches);
  const number = numberInText(rest, doubt);
  if (number !== undefined) return numberIs(operator, number, doubt);
  if (/^(?:TRUE|FALSE)$/i.test(rest)) {
    if (!isEqual) doubt("a criterion that orders true and false");
    return negated((cell) => cell === (rest.toUpperCase() === "TRUE"));
  }
  if (ERROR.test(rest)) return negated((cell) => isCellError(cell) && cell.error === rest.toUpperCase());
  if (isEqual) {
    const pattern = patternOf(rest);
    return negated((cell) => typeof cell === "string" && pattern.test(cell));
  }
  return textIs(operator, rest, doubt);
}

/** "" is empty or an empty text, "=" truly empty, "<>" not empty. */
function empty(sign: string | undefined): Matches {
  if (sign === undefined) return (cell) => cell === null || cell === "";
  if (sign === "=") return (cell) => cell === null;
  if (sign === "<>") return (cell) => cell !== null;
  return () => false;
}

function numberIs(operator: string, wanted: number, doubt: Doubt): Matches {
  const isIt: Matches = (cell) =>
    cell === wanted || (typeof cell === "string" && cell !== "" && numberInText(cell, doubt) === wanted);
  switch (operator) {
    case "=":
      return isIt;
    case "<>":
      return (cell) => !isIt(cell);
    default:
      return (cell) => typeof cell === "number" && holds(operator, cell - wanted);
  }
}

function textIs(operator: string, wanted: string, doubt: Doubt): Matches {
  const low = wanted.toLowerCase();
  if (/[*?~]/.test(wanted)) doubt("a criterion that orders by a pattern");
  return (cell) => {
    if (typeof cell !== "string") return false;
    if (cell === "") doubt("the order of an empty text");
    if (!isPlainText(cell) || !isPlainText(wanted)) doubt("the order of texts with other than letters and digits");
    const own = cell.toLowerCase();
    return holds(operator, own < low ? -1 : own > low ? 1 : 0);
  };
}

function holds(operator: string, difference: number): boolean {
  if (operator === "<") return difference < 0;
  if (operator === ">") return difference > 0;
  return operator === "<=" ? difference <= 0 : difference >= 0;
}

/** * any characters, ? one, ~ before one takes its meaning away; without case. */
function patternOf(text: string): RegExp {
  const source = text.replace(/~([*?~])|[*?]|[\\^$.|+()[\]{}]/g, (found, escaped: string | undefined) => {
    if (escaped !== undefined) return escaped === "~" ? "~" : `\\${escaped}`;
    return found === "*" ? "[^]*" : found === "?" ? "[^]" : `\\${found}`;
  });
  return new RegExp(`^${source}$`, "iu");
}

type Fold = (values: readonly Cell[]) => Cell;
const numbers = (values: readonly Cell[]): number[] => values.filter((one) => typeof one === "number");

const FOLDS: Readonly<Record<"SUM" | "AVERAGE" | "MAX" | "MIN", (values: readonly number[]) => Cell>> = {
  SUM: (all) => all.reduce((total, one) => total + one, 0),
  AVERAGE: (all) => (all.length === 0 ? errorCell("#DIV/0!") : all.reduce((total, one) => total + one, 0) / all.length),
  MAX: (all) => all.reduce((most, one) => Math.max(most, one), all[0] ?? 0),
  MIN: (all) => all.reduce((least, one) => Math.min(least, one), all[0] ?? 0),
};

/** An error among the cells that are picked is the result. */
const folded =
  (kind: keyof typeof FOLDS): Fold =>
  (values) =>
    values.find(isCellError) ?? FOLDS[kind](numbers(values));
const counted: Fold = (values) => values.length;

const gridOf = (arg: PlainArgument): Grid => (isGrid(arg) ? arg : [[arg ?? null]]);

/** Works on each value of an array of criteria by itself; several arrays of criteria at once are doubted. */
function overCriteria(
  pairs: readonly (readonly [Grid, PlainArgument])[],
  values: Grid,
  fold: Fold,
  doubt: Doubt,
): Cell | Grid {
  const arrays = pairs.filter(([, wanted]) => isGrid(wanted) && (wanted.length > 1 || (wanted[0]?.length ?? 0) > 1));
  if (arrays.length > 1) doubt("several arrays of criteria at once");
  const isSame = (one: Grid): boolean => one.length === values.length && one[0]?.length === values[0]?.length;
  if (!pairs.every(([range]) => isSame(range))) return errorCell("#VALUE!");
  const wantedOf = (arg: PlainArgument, r: number, c: number): Cell =>
    isGrid(arg) ? (arg[r]?.[c] ?? arg[0]?.[0] ?? null) : (arg ?? null);
  const at = (r: number, c: number): Cell => {
    const tests = pairs.map(([range, wanted]) => [range, criterion(wantedOf(wanted, r, c), doubt)] as const);
    const picked: Cell[] = [];
    for (let row = 0; row < values.length; row++) {
      const line = values[row]!;
      for (let column = 0; column < line.length; column++) {
        if (tests.every(([range, matches]) => matches(range[row]![column]!))) picked.push(line[column]!);
      }
    }
    return fold(picked);
  };
  const shape = arrays[0]?.[1];
  return isGrid(shape) ? shape.map((row, r) => row.map((_, c) => at(r, c))) : at(0, 0);
}

function pairsOf(args: readonly PlainArgument[]): [Grid, PlainArgument][] {
  return Array.from({ length: Math.floor(args.length / 2) }, (_, i) => [gridOf(args[2 * i]), args[2 * i + 1]]);
}

export function criteriaFunctions(doubt: Doubt): PlainFunction[] {
  /** The range of the criterion is also what is taken where no other is given. */
  const byOne = (name: string, fold: Fold): PlainFunction => ({
    name,
    evaluate: ([range, wanted, values]) =>
      overCriteria([[gridOf(range), wanted]], gridOf(values ?? range), fold, doubt),
  });
  const byMany = (name: string, fold: Fold): PlainFunction => ({
    name,
    evaluate: ([values, ...pairs]) => overCriteria(pairsOf(pairs), gridOf(values), fold, doubt),
  });
  const count = (name: string, isWhole: boolean): PlainFunction => ({
    name: isWhole ? WHOLE + name : name,
    evaluate: (args) => {
      const pairs = pairsOf(args);
      if (
        isWhole &&
        pairs.every(([, wanted]) =>
          gridOf(wanted)
            .flat()
            .some((one) => criterion(one, doubt)(null)),
        )
      ) {
        doubt("empty cells of a whole column or row are counted");
      }
      return overCriteria(pairs, pairs[0]?.[0] ?? [[null]], counted, doubt);
    },
  });
  return [
    byOne("SUMIF", folded("SUM")),
    byOne("AVERAGEIF", folded("AVERAGE")),
    byMany("SUMIFS", folded("SUM")),
    byMany("AVERAGEIFS", folded("AVERAGE")),
    byMany("MAXIFS", folded("MAX")),
    byMany("MINIFS", folded("MIN")),
    ...[false, true].flatMap((isWhole) => [count("COUNTIF", isWhole), count("COUNTIFS", isWhole)]),
  ];
}
