/**
 * NFPA 70B-2016, 11.17.5.6, as quoted: 1–3, 4–15, 16 K and above. An earlier edition, not shipped: it closes the gap
 * above 15 K another way than NETA's table, which a workbook's own criteria can say.
 */
import { grade } from "../../src/core/severity/grade.js";
import { ownCriteria } from "../../src/core/severity/own-criteria.js";
import { publishedChecks } from "../support/rows.js";
import { gradeOfCheck } from "../support/severity.js";

const criteria = ownCriteria(
  [
    [1, 1],
    [4, 2],
    [16, 4],
  ].map(([edge = 0, grade = 0]) => ({ reference: "similar", grade, bound: "from", edge, words: `from ${edge} K` })),
);

describe("NFPA 70B-2016", () => {
  it.each(publishedChecks("70B16-").map((check) => [check.title, check] as const))("%s", (_, check) => {
    expect(gradeOfCheck(check, criteria)).toBe(check.expected);
    expect(grade({ rise: 15.5, reference: "similar", criteria }).grade).toBe(2);
    expect(grade({ rise: 15.5, reference: "similar" }).grade).toBe(4);
  });
});
