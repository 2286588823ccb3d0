import { correlationMatrix, lowerFactor } from "../../../src/core/uncertainty/correlation.js";
import { refusal } from "../../support/refusal.js";

const NAMES = ["a", "b", "c"] as const;
type Name = (typeof NAMES)[number];
const pair = (one: Name, other: Name, r: number): { one: Name; other: Name; r: number } => ({ one, other, r });
const product = (lower: readonly (readonly number[])[]): number[][] =>
  lower.map((row) => lower.map((other) => row.reduce((sum, value, k) => sum + value * (other[k] ?? 0), 0)));

test.each([
  ["nothing together", []],
  ["two", [pair("a", "c", -0.4)]],
  ["three", [pair("a", "b", 0.5), pair("b", "c", 0.5), pair("a", "c", -0.3)]],
  ["two that are one", [pair("a", "b", 1), pair("b", "c", 0.5), pair("a", "c", 0.5)]],
  ["three that are one", [pair("a", "b", 1), pair("b", "c", -1), pair("a", "c", -1)]],
])("%s: the factor times itself is the matrix", (_, pairs) => {
  const matrix = correlationMatrix(NAMES, pairs);
  const lower = lowerFactor(matrix)!;
  for (const [i, row] of product(lower).entries()) {
    for (const [j, value] of row.entries()) expect(value).toBeCloseTo(matrix[i]![j]!, 12);
    for (let j = i + 1; j < 3; j++) expect(lower[i]![j]).toBe(0);
  }
});

test.each([
  ["r above 1", [pair("a", "b", 1.0001)], "correlation-range", 1],
  ["r no number", [pair("a", "b", NaN)], "correlation-range", 1],
  ["a name that is none", [pair("a", "b", 0.1), pair("a", "d" as Name, 0.1)], "correlation-name", 2],
  ["a name with itself", [pair("b", "b", 1)], "correlation-self", 1],
  ["a pair twice", [pair("a", "b", 0.1), pair("b", "a", 0.1)], "correlation-twice", 2],
  [
    "what cannot be together",
    [pair("a", "b", 0.9), pair("b", "c", 0.9), pair("a", "c", -0.9)],
    "correlation-contradiction",
    undefined,
  ],
  [
    "two that are one, told apart by a third",
    [pair("a", "b", 1), pair("b", "c", 0.5)],
    "correlation-contradiction",
    undefined,
  ],
])("refuses %s", (_, pairs, key, row) => {
  const found = refusal(() => correlationMatrix(NAMES, pairs));
  expect(found).toMatchObject({ code: "INVALID", argument: "correlations", hint: { key } });
  expect(found.hint?.values?.row).toBe(row);
});
