import fc from "fast-check";
import { correlationMatrix } from "../../../src/core/uncertainty/correlation.js";
import { firstOrder } from "../../../src/core/uncertainty/gum.js";
import type { Term } from "../../../src/core/uncertainty/gum.js";

const term = fc.record({
  sensitivity: fc.double({ min: -100, max: 100, noNaN: true }),
  standard: fc.double({ min: 1e-3, max: 10, noNaN: true }),
  freedom: fc.integer({ min: 1, max: 60 }),
});
const terms = fc.array(term, { minLength: 1, maxLength: 6 });

test("independent inputs add in squares, as Math.hypot does", () => {
  fc.assert(
    fc.property(terms, (given) => {
      const { combined, contributions } = firstOrder(given);
      expect(combined).toBeCloseTo(Math.hypot(...given.map((one) => one.sensitivity * one.standard)), 9);
      expect(contributions).toEqual(given.map((one) => one.sensitivity * one.standard));
    }),
  );
});

test("effective degrees of freedom lie between the least and the sum", () => {
  fc.assert(
    fc.property(terms, (given) => {
      const moving = given.filter((one) => Math.abs(one.sensitivity) > 1e-6);
      if (moving.length === 0) return;
      const { freedom } = firstOrder(moving);
      const all = moving.map((one) => one.freedom);
      expect(freedom).toBeGreaterThanOrEqual(Math.min(...all) * (1 - 1e-9));
      expect(freedom).toBeLessThanOrEqual(all.reduce((sum, one) => sum + one, 0) * (1 + 1e-9));
    }),
  );
});

const two: Term[] = [
  { sensitivity: 2, standard: 1.5, freedom: 4 },
  { sensitivity: -1, standard: 3 },
];
const together = (r: number): number[][] => correlationMatrix(["a", "b"], [{ one: "a", other: "b", r }]);

test("two inputs that are one add as they are: the offset of one camera cancels in a difference", () => {
  expect(firstOrder(two, together(1)).combined).toBe(0);
  expect(firstOrder(two, together(-1)).combined).toBe(6);
  expect(firstOrder(two, together(0.5)).pairs).toEqual([{ one: 0, other: 1, variance: -9 }]);
});

test("inputs that go together have no effective degrees of freedom; r of 0, or with what is exact, is no matter", () => {
  expect(firstOrder(two, together(0.1)).freedom).toBe(Infinity);
  expect(firstOrder(two, together(0)).freedom).toBeCloseTo(16, 12);
  const exact = [two[0]!, { sensitivity: -1, standard: 0 }];
  expect(firstOrder(exact, together(0.9)).freedom).toBe(4);
});
