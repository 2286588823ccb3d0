import { grade, type GradeInputs } from "../../../src/core/severity/grade.js";
import { refusal } from "../../support/refusal.js";

const of = (rise: number, reference: string, change: Partial<GradeInputs> = {}): number =>
  grade({ rise, reference, ...change }).grade;

describe("built-in criteria, both sides of every edge", () => {
  it.each([
    [
      "NETA-100.18",
      "similar",
      [
        [1, 1],
        [4, 2],
      ],
      [[15, 2, 4]],
    ],
    [
      "NETA-100.18",
      "ambient",
      [
        [1, 1],
        [11, 2],
        [21, 3],
      ],
      [[40, 3, 4]],
    ],
    [
      "house",
      "ambient",
      [
        [20, 1],
        [30, 2],
        [40, 3],
        [50, 4],
      ],
      [],
    ],
    [
      "house",
      "similar",
      [
        [2, 1],
        [5, 2],
        [15, 3],
        [25, 4],
      ],
      [],
    ],
    [
      "house",
      "baseline",
      [
        [5, 1],
        [10, 2],
        [20, 4],
      ],
      [],
    ],
    [
      "house-limit",
      "limit",
      [
        [0.75, 1],
        [0.9, 2],
        [1, 3],
        [1.2, 4],
      ],
      [],
    ],
  ] as const)("%s, %s", (criteria, reference, from, above) => {
    let before = 0;
    for (const [edge, expected] of from) {
      expect(of(edge - 0.001, reference, { criteria })).toBe(before);
      expect(of(edge, reference, { criteria })).toBe(expected);
      before = expected;
    }
    for (const [edge, on, beyond] of above) {
      expect(of(edge, reference, { criteria })).toBe(on);
      expect(of(edge + 0.001, reference, { criteria })).toBe(beyond);
    }
    expect(of(0, reference, { criteria })).toBe(0);
  });

  it("grades an indirect view by its own table only", () => {
    const inputs = { criteria: "house-indirect", view: "indirect" };
    expect([0.9, 1, 4.9, 5, 30].map((rise) => of(rise, "similar", inputs))).toEqual([0, 1, 1, 3, 3]);
  });

  it("takes NETA's numbers where none are named, and finds a name in any case", () => {
    expect(grade({ rise: 20, reference: "similar" }).criteria).toBe("NETA-100.18");
    expect(of(20, "similar", { criteria: " House " })).toBe(3);
  });
});

describe("what comes with a grade", () => {
  it("has words, what to do, both ends of the band and its source", () => {
    const found = grade({ rise: 17, reference: "ambient" });
    expect(found).toMatchObject({
      grade: 2,
      reference: "ambient",
      lower: { value: 11, bound: "from" },
      upper: { value: 21, bound: "from" },
      source: { source: "neta-ats-2003", locator: "Table 100.18, p. 164", evidence: "read" },
    });
    expect(found.words).not.toBe("");
    expect(found.action).not.toBe("");
  });

  it("has no lower end below the first band, and says so in words", () => {
    const found = grade({ rise: 0.5, reference: "similar" });
    expect(found).toMatchObject({ grade: 0, words: "below the first band", upper: { value: 1, bound: "from" } });
    expect(found.lower).toBeUndefined();
    expect(found.source?.source).toBe("neta-ats-2003");
  });

  it("has no upper end in the worst", () => {
    const found = grade({ rise: 16, reference: "similar" });
    expect(found).toMatchObject({ grade: 4, lower: { value: 15, bound: "above" } });
    expect(found.upper).toBeUndefined();
  });
});

describe("rounding", () => {
  it("is to 1e-6 and no more unless asked for", () => {
    expect(of(16.1 - 1.1, "similar")).toBe(2);
    expect(of(15.000001, "similar")).toBe(4);
    expect(of(3.999999, "similar")).toBe(1);
    expect(of(3.9999999, "similar")).toBe(2);
    expect(of(3.5, "similar")).toBe(1);
  });

  // Rounding first: 3.5 → 4 changes grade 1 to 2, 15.4 → 15 changes 4 to 2.
  it("is to a step where asked for, a half away from zero", () => {
    expect(of(3.5, "similar", { roundTo: 1 })).toBe(2);
    expect(of(3.4, "similar", { roundTo: 1 })).toBe(1);
    expect(of(15.4, "similar", { roundTo: 1 })).toBe(2);
    expect(of(15.5, "similar", { roundTo: 1 })).toBe(4);
    expect(of(3.96, "similar", { roundTo: 0.1 })).toBe(2);
    expect(of(-1.4, "similar", { roundTo: 1 })).toBe(0);
    expect(refusal(() => of(-1.5, "similar", { roundTo: 1 })).hint?.key).toBe("colder-than-reference");
  });

  it("is to a step of 1 °F as it would be in °F", () => {
    for (let tenths = 0; tenths <= 1000; tenths++) {
      const rounded = Math.round(tenths / 10);
      const expected = rounded >= 2 ? (rounded >= 8 ? (rounded > 27 ? 4 : 2) : 1) : 0;
      expect(of(tenths / 10 / 1.8, "similar", { roundTo: 1 / 1.8 })).toBe(expected);
    }
  });
});

describe("refusals", () => {
  it.each([
    ["a reference that is not given", { reference: "" }, "INVALID", "reference", undefined],
    ["a reference that is none", { reference: "phase" }, "INVALID", "reference", undefined],
    ["criteria that are none", { criteria: "NETA" }, "INVALID", "criteria", undefined],
    ["a view that is none", { view: "window" }, "INVALID", "view", undefined],
    ["a rise that is not a number", { rise: NaN }, "INVALID", "rise", undefined],
    ["a step of 0", { roundTo: 0 }, "INVALID", "round_to", undefined],
    ["a share in per cent", { rise: 95, reference: "limit", criteria: "house-limit" }, "INVALID", "rise", "per-cent"],
    ["a column that the table has not", { reference: "baseline" }, "REFUSED", "reference", "reference-not-in-criteria"],
    ["a limit in a table of rises", { reference: "limit" }, "REFUSED", "reference", "reference-not-in-criteria"],
    ["an indirect view in a direct table", { view: "indirect" }, "REFUSED", "view", "view-not-in-criteria"],
    ["a direct view in an indirect table", { criteria: "house-indirect" }, "REFUSED", "view", "view-not-in-criteria"],
    ["an enclosed part", { view: "enclosed" }, "REFUSED", "view", "enclosed-not-graded"],
    [
      "an enclosed part in an indirect table",
      { criteria: "house-indirect", view: "enclosed" },
      "REFUSED",
      "view",
      "enclosed-not-graded",
    ],
    ["colder than a similar part", { rise: -1.1 }, "REFUSED", "rise", "colder-than-reference"],
    ["colder than the air", { rise: -3.1, reference: "ambient" }, "REFUSED", "rise", "colder-than-reference"],
    [
      "colder than its baseline",
      { rise: -5.1, reference: "baseline", criteria: "house" },
      "REFUSED",
      "rise",
      "colder-than-reference",
    ],
    [
      "colder than the air, as a share",
      { rise: -0.051, reference: "limit", criteria: "house-limit" },
      "REFUSED",
      "rise",
      "colder-than-reference",
    ],
  ])("%s", (_, change, code, argument, hint) => {
    const error = refusal(() => grade({ rise: 12, reference: "similar", ...change }));
    expect(error).toMatchObject({ code, argument });
    expect(error.hint?.key).toBe(hint);
  });

  it.each([
    ["similar", -1, "NETA-100.18"],
    ["ambient", -3, "NETA-100.18"],
    ["baseline", -5, "house"],
    ["limit", -0.05, "house-limit"],
  ])("a rise over %s of %d is still grade 0", (reference, rise, criteria) => {
    expect(of(rise, reference, { criteria })).toBe(0);
  });
});
