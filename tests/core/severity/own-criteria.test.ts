import { grade } from "../../../src/core/severity/grade.js";
import { ownCriteria, type OwnCriteriaRow } from "../../../src/core/severity/own-criteria.js";
import { refusal } from "../../support/refusal.js";

const row = (
  reference: string,
  grade: number,
  bound: string,
  edge: number,
  words = "words",
  action = "act",
): OwnCriteriaRow => ({
  reference,
  grade,
  bound,
  edge,
  words,
  action,
});
const TABLE = [
  row("similar", 1, "from", 2),
  row("Ambient", 2, " From ", 10),
  row("similar", 3, "from", 20, "hot", "repair"),
  row("similar", 4, "above", 20, " too hot "),
];

describe("a workbook's own criteria", () => {
  const criteria = ownCriteria(TABLE);

  it("grade as a built-in table does, references mixed in any order", () => {
    const similar = (rise: number): number => grade({ rise, reference: "similar", criteria }).grade;
    expect([0, 1.9, 2, 19.9, 20, 20.1].map(similar)).toEqual([0, 0, 1, 1, 3, 4]);
    expect(grade({ rise: 10, reference: "ambient", criteria }).grade).toBe(2);
    expect(grade({ rise: 20, reference: "similar", criteria })).toMatchObject({
      words: "hot",
      action: "repair",
      criteria: "own",
    });
    expect(grade({ rise: 21, reference: "similar", criteria })).toMatchObject({ words: "too hot" });
    expect(grade({ rise: 1, reference: "similar", criteria }).words).not.toBe("");
    expect(grade({ rise: 20, reference: "similar", criteria }).source).toBeUndefined();
  });

  it("hold for direct and indirect views, never for an enclosed part", () => {
    expect(grade({ rise: 5, reference: "similar", criteria, view: "indirect" }).grade).toBe(1);
    expect(refusal(() => grade({ rise: 5, reference: "similar", criteria, view: "enclosed" })).hint?.key).toBe(
      "enclosed-not-graded",
    );
    expect(refusal(() => grade({ rise: 5, reference: "baseline", criteria })).hint?.key).toBe(
      "reference-not-in-criteria",
    );
  });

  it("compare edges that came from °F", () => {
    const inFahrenheit = ownCriteria([row("similar", 1, "from", 27.1 / 1.8), row("similar", 2, "above", 50.3 / 1.8)]);
    const at = (hot: number, cold: number): number =>
      grade({ rise: (hot - cold) / 1.8, reference: "similar", criteria: inFahrenheit }).grade;
    for (let cold = 0; cold < 3000; cold++) {
      expect(at((cold + 271) / 10, cold / 10)).toBe(1);
      expect(at((cold + 270) / 10, cold / 10)).toBe(0);
      expect(at((cold + 503) / 10, cold / 10)).toBe(1);
      expect(at((cold + 504) / 10, cold / 10)).toBe(2);
    }
  });

  it("may lack what to do, not the words", () => {
    expect(ownCriteria([{ reference: "limit", grade: 1, bound: "from", edge: 0.8, words: "w" }]).rows[0]?.action).toBe(
      "",
    );
  });

  const first = row("similar", 1, "from", 2);
  it.each([
    ["no rows", [], "criteria-empty", undefined],
    ["another reference", [first, row("phase", 2, "from", 5)], "criteria-reference", 2],
    ["another bound", [first, row("similar", 2, ">=", 5)], "criteria-bound", 2],
    ["grade 0", [row("similar", 0, "from", 2)], "criteria-grade", 1],
    ["grade 5", [row("similar", 5, "from", 2)], "criteria-grade", 1],
    ["half a grade", [row("similar", 1.5, "from", 2)], "criteria-grade", 1],
    ["an edge below 0", [row("similar", 1, "from", -2)], "criteria-edge", 1],
    ["an edge that is not a number", [first, row("similar", 2, "from", NaN)], "criteria-edge", 2],
    ["a share of the limit in per cent", [row("limit", 1, "from", 75)], "criteria-edge", 1],
    ["no words", [first, row("similar", 2, "from", 5, " ")], "criteria-words", 2],
    ["edges that fall", [first, row("ambient", 1, "from", 1), row("similar", 2, "from", 1)], "criteria-edge-order", 3],
    ["the same edge twice", [first, row("similar", 2, "from", 2)], "criteria-edge-order", 2],
    [
      "above and then from the same edge",
      [row("similar", 1, "above", 2), row("similar", 2, "from", 2)],
      "criteria-edge-order",
      2,
    ],
    [
      "grades that do not rise",
      [row("similar", 2, "from", 2), row("similar", 2, "from", 5)],
      "criteria-grade-order",
      2,
    ],
  ])("are refused with the row that is wrong: %s", (_, rows, key, at) => {
    const error = refusal(() => ownCriteria(rows));
    expect(error).toMatchObject({ code: "INVALID", argument: "criteria" });
    expect(error.hint).toEqual({ key, ...(at !== undefined && { values: { row: at } }) });
  });
});
