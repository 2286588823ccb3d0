import * as fc from "fast-check";
import { gradeChance } from "../../../src/core/severity/grade-chance.js";
import { grade } from "../../../src/core/severity/grade.js";
import { ownCriteria } from "../../../src/core/severity/own-criteria.js";
import { normal } from "../../../src/core/uncertainty/generator/normal.js";
import { Generator } from "../../../src/core/uncertainty/generator/xoshiro.js";
import { refusal } from "../../support/refusal.js";

const sum = (chances: readonly number[]): number => chances.reduce((total, chance) => total + chance, 0);
const SETS = [
  ["NETA-100.18", "similar"],
  ["NETA-100.18", "ambient"],
  ["house", "similar"],
  ["house", "baseline"],
] as const;

test("makes 1 together, none below 0, whatever the rise and its uncertainty", () => {
  const rise = fc.double({ min: -1, max: 200, noNaN: true });
  const uncertainty = fc.double({ min: 0, max: 300, noNaN: true });
  fc.assert(
    fc.property(fc.constantFrom(...SETS), rise, uncertainty, ([criteria, reference], value, standardUncertainty) => {
      const chances = gradeChance({ rise: value, standardUncertainty, reference, criteria });
      expect(chances).toHaveLength(5);
      expect(sum(chances)).toBeCloseTo(1, 12);
      for (const chance of chances) expect(chance).toBeGreaterThanOrEqual(-1e-15);
    }),
  );
});

test("without uncertainty is certain of the grade, on an edge too, and nearly so with hardly any", () => {
  for (const [criteria, reference] of SETS) {
    for (const rise of [0, 1, 3.99, 4, 15, 15.01, 20, 40, 100]) {
      const { grade: found } = grade({ rise, reference, criteria });
      const certain = gradeChance({ rise, standardUncertainty: 0, reference, criteria });
      expect(certain.map((chance, i) => (i === found ? 1 - chance : chance))).toEqual([0, 0, 0, 0, 0]);
    }
  }
  expect(gradeChance({ rise: 20, standardUncertainty: 1e-3, reference: "similar" })[4]).toBe(1);
});

test("is the share of rises drawn about it that have the grade", () => {
  const [rise, u, N] = [5, 3, 100_000];
  const generator = Generator.seeded(9);
  const counts = [0, 0, 0, 0, 0];
  for (let k = 0; k < N; k++) {
    // Drawn below its reference by more than chance, it has no grade of its own: here it is 0.
    const drawn = Math.max(rise + u * normal(generator), 0);
    counts[grade({ rise: drawn, reference: "similar" }).grade]!++;
  }
  const chances = gradeChance({ rise, standardUncertainty: u, reference: "similar" });
  for (const [i, chance] of chances.entries()) {
    expect(Math.abs(counts[i]! / N - chance)).toBeLessThan(5 * Math.sqrt((chance * (1 - chance)) / N) + 1e-12);
  }
});

test("of a grade that the table does not have is 0", () => {
  expect(gradeChance({ rise: 12, standardUncertainty: 5, reference: "similar" })[3]).toBe(0);
  const rows = [
    { reference: "similar", grade: 2, bound: "from", edge: 5, words: "some" },
    { reference: "similar", grade: 4, bound: "above", edge: 5, words: "more" },
  ];
  // A band of one value: nothing falls into it but that value itself.
  const chances = gradeChance({ rise: 5, standardUncertainty: 1, reference: "similar", criteria: ownCriteria(rows) });
  expect(chances).toEqual([0.5, 0, 0, 0, 0.5]);
});

test("against a limit takes shares", () => {
  // House edges from 0.75, 0.9, 1 and 1.2: the middle one of three a standard uncertainty apart.
  const chances = gradeChance({ rise: 1, standardUncertainty: 0.1, reference: "limit", criteria: "house-limit" });
  expect(chances[3]! + chances[4]!).toBeCloseTo(0.5, 12);
  // One standard uncertainty: 0.341344746 (tables).
  expect(chances[2]).toBeCloseTo(0.341344746, 8);
});

test.each([
  [{ rise: -1.5, reference: "similar" }, "REFUSED", "colder-than-reference"],
  [{ rise: -3.5, reference: "ambient" }, "REFUSED", "colder-than-reference"],
  [{ rise: 5, reference: "baseline" }, "REFUSED", "reference-not-in-criteria"],
  [{ rise: 5, reference: "similar", view: "enclosed" }, "REFUSED", "enclosed-not-graded"],
  [{ rise: 5, reference: "similar", view: "indirect" }, "REFUSED", "view-not-in-criteria"],
  [{ rise: NaN, reference: "similar" }, "INVALID", undefined],
  [{ rise: 5, reference: "similar", standardUncertainty: -1 }, "INVALID", undefined],
])("refuses what GRADE refuses: %j", (given, code, key) => {
  const told = refusal(() => gradeChance({ standardUncertainty: 1, ...given }));
  expect([told.code, told.hint?.key]).toEqual([code, key]);
});

test("colder than its reference by no more than chance is grade 0 and what the uncertainty adds", () => {
  const chances = gradeChance({ rise: -0.5, standardUncertainty: 1, reference: "similar" });
  // The edge from 1 lies 1.5 above: 0.066807201 (tables).
  expect(chances[0]).toBeCloseTo(1 - 0.066807201, 8);
});
