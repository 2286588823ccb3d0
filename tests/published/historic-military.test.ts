/**
 * Historic military bands 10, 25, 40, 70 K as a service firm's page has them (unnamed; the original was not found): not
 * shipped, but a workbook's own criteria can say them. Half-open at shared edges is our rule.
 */
import { ownCriteria } from "../../src/core/severity/own-criteria.js";
import { publishedChecks } from "../support/rows.js";
import { gradeOfCheck } from "../support/severity.js";

const criteria = ownCriteria(
  [10, 25, 40, 70].map((edge, i) => ({
    reference: "baseline",
    grade: i + 1,
    bound: "from",
    edge,
    words: `from ${edge} K`,
  })),
);

describe("historic military bands", () => {
  const checks = publishedChecks("MIL-");
  it("has its eight rows", () => {
    expect(checks).toHaveLength(8);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    expect(gradeOfCheck(check, criteria, "baseline")).toBe(check.expected);
  });
});
