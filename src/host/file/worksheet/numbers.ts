/** Functions over all numbers of their arguments: what a range holds besides numbers is passed over, what is written in the formula counts. */
import type { Cell, CellError, Grid } from "../../../functions/contract.js";
import { isCellError } from "../../../functions/contract.js";
import type { PlainArgument, PlainFunction } from "../../embedded/plain-functions.js";
import { asNumber, asTruth, errorCell, isGrid } from "./coerce.js";
import type { Doubt } from "./coerce.js";

type Numbers = readonly number[];

/** All numbers in their order, or the first error; `isEvery` where truths and texts of a range count as 1 and 0. */
function numbersOf(args: readonly PlainArgument[], doubt: Doubt, isEvery = false): number[] | CellError {
  const found: number[] = [];
  for (const arg of args) {
    const isRange = isGrid(arg);
    for (const row of isRange ? arg : [[arg ?? null]]) {
      for (const cell of row) {
        if (typeof cell === "number") found.push(cell);
        else if (isCellError(cell)) return cell;
        else if (isRange) {
          if (isEvery && cell !== null) found.push(cell === true ? 1 : 0);
        } else {
          const number = asNumber(cell, doubt);
          if (isCellError(number)) return number;
          found.push(Number(number));
        }
      }
    }
  }
  return found;
}

const sum = (numbers: Numbers): number => numbers.reduce((total, one) => total + one, 0);
const mean = (numbers: Numbers): number => sum(numbers) / numbers.length;

function squares(numbers: Numbers): number {
  const middle = mean(numbers);
  return sum(numbers.map((one) => (one - middle) ** 2));
}

/** The number that stands there most often; of several the first. */
function mode(numbers: Numbers): Cell {
  const counts = new Map<number, number>();
  let most = 1;
  for (const one of numbers) {
    const count = (counts.get(one) ?? 0) + 1;
    counts.set(one, count);
    most = Math.max(most, count);
  }
  return most < 2 ? errorCell("#N/A") : [...counts].find(([, count]) => count === most)![0];
}

function deviation(numbers: Numbers): number {
  const middle = mean(numbers);
  return mean(numbers.map((one) => Math.abs(one - middle)));
}

const rising = (numbers: Numbers): number[] => [...numbers].sort((a, b) => a - b);

/** Between the two numbers at a share of the way from the least to the largest. */
function percentile(numbers: Numbers, share: number): number | CellError {
  if (numbers.length === 0 || !(share >= 0 && share <= 1)) return errorCell("#NUM!");
  const sorted = rising(numbers);
  const place = share * (sorted.length - 1);
  const below = Math.floor(place);
  const low = sorted[below]!;
  return low + (place - below) * ((sorted[below + 1] ?? low) - low);
}

function overAll(
  names: readonly string[],
  doubt: Doubt,
  work: (numbers: Numbers) => Cell,
  isEvery = false,
): PlainFunction[] {
  return names.map((name) => ({
    name,
    evaluate: (args) => {
      const numbers = numbersOf(args, doubt, isEvery);
      return Array.isArray(numbers) ? work(numbers) : numbers;
    },
  }));
}

/** A function of all numbers of its first argument and of one number. */
function withOne(names: readonly string[], doubt: Doubt, work: (all: Numbers, one: number) => Cell): PlainFunction[] {
  return names.map((name) => ({
    name,
    evaluate: ([range, given]) => {
      const numbers = numbersOf([range], doubt);
      if (!Array.isArray(numbers)) return numbers;
      const number = oneNumber(given, doubt);
      return typeof number === "number" ? work(numbers, number) : number;
    },
  }));
}

const ordered =
  (sign: 1 | -1, doubt: Doubt) =>
  (all: Numbers, place: number): Cell => {
    if (!Number.isInteger(place)) doubt("a place in an order that is no whole number");
    const at = Math.ceil(place);
    if (at < 1 || at > all.length) return errorCell("#NUM!");
    return rising(all)[sign > 0 ? at - 1 : all.length - at]!;
  };

/** One number of an argument, or its error. */
function oneNumber(arg: PlainArgument, doubt: Doubt): number | CellError {
  if (isGrid(arg) && (arg.length > 1 || (arg[0]?.length ?? 0) > 1)) doubt("a range where one number is meant");
  const number = asNumber(isGrid(arg) ? (arg[0]?.[0] ?? null) : (arg ?? null), doubt);
  return isCellError(number) ? number : Number(number);
}

function rank(name: string, doubt: Doubt): PlainFunction {
  return {
    name,
    evaluate: ([wanted, range, order]) => {
      const [number, all, isRising] = [oneNumber(wanted, doubt), numbersOf([range], doubt), oneNumber(order, doubt)];
      for (const one of [number, all, isRising]) if (isCellError(one)) return one;
      const numbers = all as number[];
      if (!numbers.includes(number as number)) return errorCell("#N/A");
      const before = (one: number): boolean => (isRising === 0 ? one > (number as number) : one < (number as number));
      return 1 + numbers.filter(before).length;
    },
  };
}

function netPresentValue([rate, ...values]: readonly PlainArgument[], doubt: Doubt): Cell {
  const [share, numbers] = [oneNumber(rate, doubt), numbersOf(values, doubt)];
  if (typeof share !== "number") return share;
  if (!Array.isArray(numbers)) return numbers;
  const total = numbers.reduce((found, one, i) => found + one / (1 + share) ** (i + 1), 0);
  return Number.isFinite(total) ? total : errorCell("#DIV/0!");
}

/** True and false of all arguments; text in a range is passed over, in the formula only the words TRUE and FALSE are read. */
function truths(name: string, work: (truths: readonly boolean[]) => boolean): PlainFunction {
  return {
    name,
    evaluate: (args) => {
      const found: boolean[] = [];
      for (const arg of args) {
        const isRange = isGrid(arg);
        for (const cell of isRange ? arg.flat() : [arg ?? null]) {
          if (isRange && (cell === null || typeof cell === "string")) continue;
          const truth = asTruth(cell);
          if (isCellError(truth)) return truth;
          found.push(Boolean(truth));
        }
      }
      return found.length === 0 ? errorCell("#VALUE!") : work(found);
    },
  };
}

function sumProduct(args: readonly PlainArgument[], doubt: Doubt): Cell {
  const grids = args.map((arg): Grid => (isGrid(arg) ? arg : [[arg ?? null]]));
  const [first] = grids;
  const isSame = grids.every((one) => one.length === first?.length && one[0]?.length === first[0]?.length);
  if (!isSame) return errorCell("#VALUE!");
  const isSingle = first?.length === 1 && first[0]?.length === 1;
  if (isSingle && args.length > 1 && grids.some((one) => typeof one[0]![0] !== "number")) {
    doubt("SUMPRODUCT of single values that are no numbers");
  }
  let total = 0;
  for (const [r, row] of (first ?? []).entries()) {
    for (const c of row.keys()) {
      let product = 1;
      for (const grid of grids) {
        const cell = grid[r]![c]!;
        if (isCellError(cell)) return cell;
        product *= typeof cell === "number" ? cell : 0;
      }
      total += product;
    }
  }
  return total;
}

export function numberFunctions(doubt: Doubt): PlainFunction[] {
  const sample = (n: Numbers): number | CellError =>
    n.length < 2 ? errorCell("#DIV/0!") : squares(n) / (n.length - 1);
  const population = (n: Numbers): number | CellError => (n.length < 1 ? errorCell("#DIV/0!") : squares(n) / n.length);
  const root = (value: number | CellError): Cell => (typeof value === "number" ? Math.sqrt(value) : value);
  const unlessNone =
    (work: (n: Numbers) => number) =>
    (n: Numbers): Cell =>
      n.length === 0 ? errorCell("#NUM!") : work(n);
  return [
    ...overAll(["VAR", "VAR.S"], doubt, sample),
    ...overAll(["VARP", "VAR.P"], doubt, population),
    ...overAll(["STDEV", "STDEV.S"], doubt, (n) => root(sample(n))),
    ...overAll(["STDEVP", "STDEV.P"], doubt, (n) => root(population(n))),
    ...overAll(["VARA"], doubt, sample, true),
    ...overAll(["VARPA"], doubt, population, true),
    ...overAll(["STDEVA"], doubt, (n) => root(sample(n)), true),
    ...overAll(["STDEVPA"], doubt, (n) => root(population(n)), true),
    ...overAll(["AVERAGEA"], doubt, (n) => (n.length === 0 ? errorCell("#DIV/0!") : mean(n)), true),
    ...overAll(["MAXA"], doubt, (n) => n.reduce((most, one) => Math.max(most, one), n[0] ?? 0), true),
    ...overAll(["MINA"], doubt, (n) => n.reduce((least, one) => Math.min(least, one), n[0] ?? 0), true),
    ...overAll(["DEVSQ"], doubt, unlessNone(squares)),
    ...overAll(["AVEDEV"], doubt, unlessNone(deviation)),
    ...overAll(["MEDIAN"], doubt, (n) => percentile(n, 0.5)),
    ...withOne(["LARGE"], doubt, ordered(-1, doubt)),
    ...withOne(["SMALL"], doubt, ordered(1, doubt)),
    ...withOne(["PERCENTILE", "PERCENTILE.INC"], doubt, percentile),
    ...withOne(["QUARTILE", "QUARTILE.INC"], doubt, (n, quart) => percentile(n, Math.trunc(quart) / 4)),
    ...["RANK", "RANK.EQ"].map((name) => rank(name, doubt)),
    { name: "NPV", evaluate: (args) => netPresentValue(args, doubt) },
    ...overAll(["MODE", "MODE.SNGL"], doubt, mode),
    truths("AND", (all) => all.every(Boolean)),
    truths("OR", (all) => all.some(Boolean)),
    truths("XOR", (all) => all.filter(Boolean).length % 2 === 1),
    { name: "SUMPRODUCT", evaluate: (args) => sumProduct(args, doubt) },
  ];
}
