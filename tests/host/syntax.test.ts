import fc from "fast-check";
import { readFormula } from "../../src/host/embedded/syntax.js";

test.each([
  "=1",
  "1+1",
  " =1",
  "=-5%^2&A1",
  "=--(A1:A3>2)",
  "=+1",
  "=@A1",
  "=SUM()",
  "=SUM(1,,2,)",
  "=SUM (1,2)",
  "=(A1:B2,C1)",
  "=SUM(A:A,1:3,$A$1,Sheet1!A1,'My sheet'!1:2)",
  "=Sheet1!#REF!",
  '={1,-2.5;"a",TRUE;#N/A,+3}',
  "=T[Col]+T[[#This Row],[Col]]+[@Col]",
  "=LET(x,1,x+1)",
  "=LAMBDA(x,x+1)(2)",
  '=IF(A1="","",A1)',
  "=1<>2",
  "=2^-1",
  "=10%%",
])("%s has no fault", (formula) => {
  expect(readFormula(formula).problem).toBeUndefined();
});

test.each([
  ["", 1, "empty"],
  ["=", 2, "empty"],
  ["   ", 4, "empty"],
  ["=SUM(1", 5, "never closed"],
  ["=SUM(1,2))", 10, "no opening one"],
  ["=1+", 4, "ends where a value"],
  ["=SUM(1+)", 8, 'not ")"'],
  ["=*2", 2, 'not "*"'],
  ["={1,2;3}", 7, "2 in the first row, 1 in this one"],
  ["={1,2", 2, "never closed"],
  ["={1,A1}", 5, "only numbers"],
  ["={1,}", 5, "only numbers"],
  ['={-"a"}', 4, "only numbers"],
  ["=SUM(1;2)", 7, "commas here, not by semicolons"],
  ["=58,0", 4, "decimal needs a point"],
  ["=2x", 3, 'missing before "x"'],
  ["=1 2", 4, 'missing before "2"'],
  ["=A1 B1", 5, 'missing before "B1"'],
  ['="abc', 2, "no closing quotation mark"],
  ["='abc", 2, "apostrophe"],
  ["=T[abc", 3, "square bracket"],
  ["=“x”", 2, "straight quotation marks"],
  ["=1§", 3, "§"],
  ["=F5#", 4, "whole spill"],
  ["=1e400", 2, "larger than a cell can hold"],
  ["=Sheet1!", 2, "reference is expected"],
  ["=()", 3, "A value is expected"],
])("%s is faulted at position %i: %s", (formula, position, words) => {
  const { problem } = readFormula(formula);
  expect(problem?.position).toBe(position);
  expect(problem?.message).toContain(words);
  expect(problem?.message).toMatch(new RegExp(`\\(position ${position}\\)\\.$`));
});

test("nesting has an end", () => {
  const nested = (depth: number): string => `=${"(".repeat(depth)}1${")".repeat(depth)}`;
  expect(readFormula(nested(150)).problem).toBeUndefined();
  expect(readFormula(nested(5000)).problem?.message).toContain("nested");
});

test("a chain of operators has an end", () => {
  const chain = (terms: number): string => `=${Array.from({ length: terms }, () => "1").join("+")}`;
  expect(readFormula(chain(4000)).problem).toBeUndefined();
  expect(readFormula(chain(5000)).problem?.message).toContain("operators");
});

test("calls are counted with left-out arguments, and names that LET makes are known", () => {
  const reading = readFormula("=LET(x,SUM(1,,2),f(x,)+y+ABOUT()+A1+TRUE)");
  expect(reading.calls).toEqual([
    { name: "SUM", args: 3 },
    { name: "f", args: 2 },
    { name: "ABOUT", args: 0 },
    { name: "LET", args: 3 },
  ]);
  expect(reading.names).toEqual(["y"]);
  expect([...reading.bound]).toEqual(["x"]);
});

test("any text is read without an exception", () => {
  fc.assert(
    fc.property(fc.string({ unit: fc.constantFrom(..."=+-*{}()[]'\",;:!@% .0123456789eA#_x") }), (formula) => {
      const { problem } = readFormula(formula);
      expect(problem === undefined || problem.position >= 1).toBe(true);
    }),
  );
});
