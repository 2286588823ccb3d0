/** Worksheet functions in the engine's place. Numbers: the examples of Microsoft's pages of the functions unless said. */
import { numberInText } from "../../src/host/file/worksheet/coerce.js";
import { criteriaFunctions } from "../../src/host/file/worksheet/criteria.js";
import { dateFunctions } from "../../src/host/file/worksheet/dates.js";
import { numberFunctions } from "../../src/host/file/worksheet/numbers.js";
import { pairFunctions } from "../../src/host/file/worksheet/pairs.js";
import type { Cell, Grid } from "../../src/functions/contract.js";

const doubts: string[] = [];
const doubt = (reason: string): number => doubts.push(reason);
beforeEach(() => (doubts.length = 0));

const since1900 = [
  ...dateFunctions(false, doubt),
  ...numberFunctions(doubt),
  ...pairFunctions(),
  ...criteriaFunctions(doubt),
];
const since1904 = dateFunctions(true, doubt);
const ask = (name: string, args: readonly (Cell | Grid)[], functions = since1900): unknown => {
  const found = functions.find((one) => one.name === name)!.evaluate(args);
  return typeof found === "object" && found !== null && "error" in found ? found.error : found;
};
const column = (...cells: Cell[]): Grid => cells.map((cell) => [cell]);

/** 1 January 2008 is day 39448 (page of DATE), the others counted from it by the calendar. */
describe("days since 1900", () => {
  test.each([
    ["DATE", [2008, 1, 1], 39448],
    ["DATE", [108, 1, 2], 39449],
    ["DATE", [2008, 14, 2], 39846],
    ["DATE", [2008, -3, 2], 39327],
    ["DATE", [2008, 1, 35], 39482],
    ["DATE", [2008, 1, -15], 39432],
    ["DATE", [-1, 1, 1], "#NUM!"],
    ["DATE", [10000, 1, 1], "#NUM!"],
    // Excel has a 29 February 1900: ECMA-376, 18.17.4.1.
    ["DATE", [1900, 2, 28], 59],
    ["DATE", [1900, 2, 29], 60],
    ["DATE", [1900, 3, 1], 61],
    ["DAY", [60], 29],
    ["MONTH", [61], 3],
    ["YEAR", [39634], 2008],
    // 14 February 2008, a Thursday.
    ["WEEKDAY", [39492], 5],
    ["WEEKDAY", [39492, 2], 4],
    ["WEEKDAY", [39492, 3], 3],
    ["WEEKDAY", [39492, 4], "#NUM!"],
    // 15 January 2011 is day 40558.
    ["EDATE", [40558, 1], 40589],
    ["EDATE", [40558, -1], 40527],
    // 1 January 2011: the ends of February 2011 and October 2010.
    ["EOMONTH", [40544, 1], 40602],
    ["EOMONTH", [40544, -3], 40482],
    ["TIME", [12, 0, 0], 0.5],
    ["TIME", [27, 0, 0], 0.125],
    ["TIME", [0, 750, 0], 750 / 1440],
    ["TIME", [0, 0, -1], "#NUM!"],
    ["HOUR", [0.75], 18],
  ] as const)("%s(%j)", (name, args, expected) => expect(ask(name, [...args])).toBe(expected));

  test("from 1904 on the same day has 1462 less", () => {
    expect(ask("DATE", [2008, 1, 1], since1904)).toBe(39448 - 1462);
    expect(ask("YEAR", [39448 - 1462], since1904)).toBe(2008);
    expect(ask("DAY", [0], since1904)).toBe(1);
  });
});

/** By hand, over values of which some are no numbers. */
describe("what a range holds besides numbers is passed over", () => {
  const mixed = column(2, "4", true, null, 4, "x", 6);

  test.each([
    ["STDEV", [mixed], 2],
    ["VARP", [mixed], 8 / 3],
    ["DEVSQ", [mixed], 8],
    ["MEDIAN", [mixed], 4],
    ["LARGE", [mixed, 1], 6],
    ["SMALL", [mixed, 4], "#NUM!"],
    ["AVERAGEA", [mixed], 13 / 6],
    ["STDEV", [column("1", "2")], "#DIV/0!"],
    ["AND", [mixed], true],
    ["AND", [column("x", null)], "#VALUE!"],
    ["AND", [true, "x"], "#VALUE!"],
    ["SUMPRODUCT", [mixed, column(1, 1, 1, 1, 2, 1, 3)], 28],
    ["SUMPRODUCT", [mixed, column(1, 2)], "#VALUE!"],
    ["RANK", [4, mixed], 2],
    ["RANK", [5, mixed], "#N/A"],
    ["SLOPE", [column(1, 3, "9", 5), column(1, 2, 3, 3)], 2],
    ["SLOPE", [column(1, 2), column(1, 2, 3)], "#N/A"],
    ["NPV", [1, column(2, "x", null, 4)], 2],
  ] as const)("%s(%j)", (name, args, expected) => expect(ask(name, [...args] as (Cell | Grid)[])).toBe(expected));
});

describe("criteria", () => {
  const cells = column(5, "5", "apple", "Apricot", "", null, true, 7);

  test.each([
    [5, 2],
    ["5", 2],
    [">5", 1],
    ["<>5", 6],
    ["<>ap*", 6],
    ["ap*", 2],
    ["APPLE", 1],
    ["?pple", 1],
    ["", 2],
    ["=", 1],
    ["<>", 7],
    [true, 1],
    [">b", 0],
  ])("%j is met by %i", (criterion, expected) => expect(ask("COUNTIF", [cells, criterion])).toBe(expected));

  test("sums are of the cells beside; none is an average of nothing", () => {
    const beside = column(1, 2, 4, 8, 16, 32, 64, 128);
    expect(ask("SUMIF", [cells, "ap*", beside])).toBe(12);
    expect(ask("SUMIFS", [beside, cells, "ap*", beside, ">4"])).toBe(8);
    expect(ask("AVERAGEIF", [cells, "none", beside])).toBe("#DIV/0!");
    expect(ask("SUMIFS", [beside, column(1, 2), 1])).toBe("#VALUE!");
  });
});

test("a text that reads as a number is one; one that may be a date is doubted", () => {
  const read = ["2.5", " -3 ", "1e3", "12%", "1,234.5", "abc", "A12", "12 kg"].map((text) => numberInText(text, doubt));
  expect(read).toEqual([2.5, -3, 1000, 0.12, 1234.5, undefined, undefined, undefined]);
  expect(doubts).toEqual([]);
  for (const text of ["1/2/2020", "12:30", "2020-01-05", "$5", "Jan 5"]) numberInText(text, doubt);
  expect(doubts).toHaveLength(5);
});
