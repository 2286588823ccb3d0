import { judge } from "../../../src/core/audit/judge.js";
import type { Explanation } from "../../../src/core/audit/judge.js";

const right = { key: "right", gives: 300 };
const told = (stated: number, gives: readonly (number | undefined)[], tolerance = 0.05): Explanation =>
  judge(
    stated,
    right,
    gives.map((value, i) => ({ key: `slip ${i}`, gives: value })),
    tolerance,
  );
const verdicts = ({ lines }: Explanation): string[] => lines.map(({ key, verdict }) => `${key}: ${verdict}`);

test("half a digit away is within half a digit, in binary too", () => {
  // 0.1 + 0.2 - 0.25 is 0.05000000000000004.
  expect(told(300 + 0.1 + 0.2, [300 + 0.25]).count).toBe(1);
  expect(told(310, [309.9499]).count).toBe(0);
});

test("the best match comes first, and what would not show last", () => {
  expect(verdicts(told(310, [312, 300.04, 310.03, undefined, 309]))).toEqual([
    "right: no",
    "slip 2: matches",
    "slip 4: no",
    "slip 0: no",
    "slip 1: hidden",
  ]);
});

test("what would not show comes last even where it lies nearer than others", () => {
  expect(verdicts(told(301, [312, 300.04, 305]))).toEqual(["right: no", "slip 2: no", "slip 0: no", "slip 1: hidden"]);
});

test("of slips that give the same both are listed, the one listed first before the other", () => {
  const found = told(310, [310.01, 310.01 + 1e-9]);
  expect(verdicts(found)).toEqual(["right: no", "slip 0: matches", "slip 1: matches"]);
  expect(found.count).toBe(2);
});

test("a slip within the tolerance of the right number shows where it alone matches", () => {
  expect(verdicts(told(300.08, [300.04], 0.05))).toEqual(["right: no", "slip 0: matches"]);
  expect(verdicts(told(300.03, [300.04], 0.05))).toEqual(["right: matches", "slip 0: hidden"]);
  expect(told(300.03, [300.04], 0.05)).toMatchObject({ count: 0, reproduced: true });
});

test("the difference is the stated number less the given", () => {
  expect(told(310, [312]).lines.map(({ difference }) => difference)).toEqual([10, -2]);
});

test("another reading is no slip: it stands second, reproduces, and hides what comes to it", () => {
  const also = [{ key: "also", gives: 305 }];
  const found = judge(305, right, [{ key: "slip", gives: 305.04 }], 0.05, also);
  expect(verdicts(found)).toEqual(["right: no", "also: matches", "slip: hidden"]);
  expect(found).toMatchObject({ reproduced: true, readings: 2, count: 0 });
  expect(verdicts(judge(310, right, [{ key: "slip", gives: 310 }], 0.05, also))).toEqual([
    "right: no",
    "also: no",
    "slip: matches",
  ]);
});

describe("chance: the part of ±20 K within the tolerance of a line or one above it", () => {
  const chances = (stated: number, gives: readonly number[], tolerance: number): (number | undefined)[] =>
    told(stated, gives, tolerance).lines.map(({ chance }) => chance);

  test("each value covers twice the tolerance", () => {
    // 0.2 of 40 K each.
    const found = chances(310, [310, 305, 290], 0.1);
    for (const [i, expected] of [0.005, 0.01, 0.015, 0.02].entries()) expect(found[i]).toBeCloseTo(expected, 12);
  });

  test("what overlaps counts once, what lies beyond not at all, what reaches over the edge in part", () => {
    // As stated 299.5…300.5; 300.5…301.5; 300.6…301.6, 0.1 of it new; beyond; 319.6…320 of 319.6…320.6.
    const found = chances(300.9, [301, 301.1, 320.1, 340], 0.5);
    const expected = [1 / 40, 2 / 40, 2.1 / 40, 2.5 / 40, 2.5 / 40];
    for (const [i, one] of expected.entries()) expect(found[i]).toBeCloseTo(one, 12);
  });

  test("is not known where there is no right number", () => {
    const found = judge(310, { key: "right", gives: undefined }, [{ key: "slip", gives: 310 }], 0.05);
    expect(found.lines).toEqual([
      { key: "right", gives: undefined, difference: undefined, verdict: "no", chance: undefined },
      { key: "slip", gives: 310, difference: 0, verdict: "matches", chance: undefined },
    ]);
  });
});
