import { gradeRange, type GradeRangeInputs } from "../../../src/core/severity/grade-range.js";
import { ownCriteria } from "../../../src/core/severity/own-criteria.js";
import { refusal } from "../../support/refusal.js";

const range = (change: Partial<GradeRangeInputs> = {}): ReturnType<typeof gradeRange> =>
  gradeRange({ rise: 12, load: 45, referenceLoad: 100, reference: "similar", ...change });

describe("grade range", () => {
  // Worked apart from this code: 43–59 K (n 1.6–2.0), grade 4 throughout.
  it("spans the usual exponents: 12 K at 45 %, 43.06 to 59.26 K, grade 4 throughout", () => {
    const found = range();
    expect(found.low).toBeCloseTo(43.06, 2);
    expect(found.high).toBeCloseTo(59.26, 2);
    expect(found).toMatchObject({ lowGrade: { grade: 4 }, highGrade: { grade: 4 }, verdict: "same" });
  });

  it("says where the grade depends on the exponent", () => {
    const found = range({ rise: 5, load: 50 });
    expect(found.low).toBeCloseTo(5 * 2 ** 1.6, 10);
    expect(found.high).toBeCloseTo(20, 10);
    expect(found).toMatchObject({ lowGrade: { grade: 4 }, highGrade: { grade: 4 } });
    expect(range({ rise: 4, load: 50 })).toMatchObject({
      lowGrade: { grade: 2 },
      highGrade: { grade: 4 },
      verdict: "depends",
    });
  });

  it("keeps low below high on the way down to a smaller load, and a rise of nothing", () => {
    const down = range({ load: 100, referenceLoad: 50 });
    expect(down.low).toBeCloseTo(3, 10);
    expect(down.high).toBeCloseTo(12 / 2 ** 1.6, 10);
    expect(range({ rise: 0 })).toMatchObject({ low: 0, high: 0, verdict: "same", lowGrade: { grade: 0 } });
    const below = range({ rise: -0.5 });
    expect(below.low).toBeLessThan(below.high);
    expect(below).toMatchObject({ lowGrade: { grade: 0 }, highGrade: { grade: 0 } });
  });

  it("is one value at the reference load with nothing uncertain", () => {
    expect(range({ load: 80, referenceLoad: 80 })).toMatchObject({ low: 12, high: 12, verdict: "same" });
  });

  it("widens each end by twice the standard uncertainty", () => {
    // (u/ΔT₂)² = (u₁/ΔT₁)² + n²(u_I/I)², by hand for one exponent: ΔT₂ = 48, u/ΔT₂ = √(0.05² + 4·0.03²) = 0.0781025.
    const found = range({ load: 50, exponentLow: 2, exponentHigh: 2, riseU: 0.6, currentU: 1.5 });
    expect(found.low).toBeCloseTo(48 - 2 * 48 * 0.0781024968, 6);
    expect(found.high).toBeCloseTo(48 + 2 * 48 * 0.0781024968, 6);
    const ends = range({ riseU: 0.5 });
    expect(ends.low).toBeCloseTo(12 * (1 / 0.45) ** 1.6 - 2 * 0.5 * (1 / 0.45) ** 1.6, 3);
    expect(ends.high).toBeCloseTo(12 * (1 / 0.45) ** 2 + 2 * 0.5 * (1 / 0.45) ** 2, 3);
    expect(range({ rise: 0, riseU: 0.5 }).low).toBeLessThan(0);
  });

  it("takes other criteria, references and minimum", () => {
    expect(range({ criteria: "house", reference: "ambient" }).verdict).toBe("depends");
    expect(range({ criteria: "house-limit", reference: "limit", rise: 0.5, load: 70 }).lowGrade.grade).toBe(1);
    expect(range({ load: 35, minimumLoad: 0.3 }).high).toBeCloseTo(12 / 0.35 ** 2, 8);
    const criteria = ownCriteria([{ reference: "similar", grade: 2, bound: "from", edge: 50, words: "w" }]);
    expect(range({ criteria })).toMatchObject({ lowGrade: { grade: 0 }, highGrade: { grade: 2 }, verdict: "depends" });
  });

  it.each([
    ["35 % of the load", { load: 35 }, "REFUSED", "load", "load-below-minimum"],
    ["no current", { load: 0 }, "REFUSED", "load", "no-current"],
    ["per cent against a fraction", { referenceLoad: 1 }, "INVALID", "load", "per-cent-against-fraction"],
    ["colder than its reference", { rise: -2 }, "REFUSED", "rise", "colder-than-reference"],
    ["a reference that the table has not", { reference: "limit" }, "REFUSED", "reference", "reference-not-in-criteria"],
    ["a table for indirect views", { criteria: "house-indirect" }, "REFUSED", "view", "view-not-in-criteria"],
    [
      "exponents the wrong way round",
      { exponentLow: 2, exponentHigh: 1.6 },
      "INVALID",
      "exponent_low",
      "exponents-swapped",
    ],
    ["a low exponent that cannot be", { exponentLow: 0.5 }, "INVALID", "exponent_low", undefined],
    ["a high exponent that cannot be", { exponentHigh: NaN }, "INVALID", "exponent_high", undefined],
    ["an uncertainty below 0", { riseU: -0.1 }, "INVALID", "rise_u", undefined],
    ["an uncertainty of the load below 0", { currentU: -1 }, "INVALID", "current_u", undefined],
    ["a minimum in per cent", { minimumLoad: 40 }, "INVALID", "minimum_load", "per-cent"],
    ["a rise that is not a number", { rise: NaN }, "INVALID", "rise", undefined],
  ])("refuses %s", (_, change, code, argument, hint) => {
    const error = refusal(() => range(change));
    expect(error).toMatchObject({ code, argument });
    expect(error.hint?.key).toBe(hint);
  });
});
