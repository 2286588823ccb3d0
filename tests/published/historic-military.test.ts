/**
 * Historic military bands 10, 25, 40, 70 K as a service firm's page has them (unnamed; the original was not found).
 * Half-open at shared edges is our rule, similar component and baseline our reading of "over reference".
 */
import { criteriaNamed } from "../../src/core/severity/criteria.js";
import { grade } from "../../src/core/severity/grade.js";
import { publishedChecks } from "../support/rows.js";
import { refusal } from "../support/refusal.js";
import { gradeOfCheck } from "../support/severity.js";

describe("historic military bands", () => {
  const checks = publishedChecks("MIL-");
  it("has its eight rows", () => {
    expect(checks).toHaveLength(8);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    for (const reference of ["similar", "baseline"]) {
      expect(gradeOfCheck(check, "historic-military", reference)).toBe(check.expected);
    }
  });
  it("says that it is historic and second hand, and is not for a rise over air", () => {
    expect(criteriaNamed("historic-military").about).toMatch(/^Historic, from a secondary source/);
    expect(refusal(() => grade({ rise: 30, reference: "ambient", criteria: "historic-military" })).code).toBe(
      "REFUSED",
    );
  });
});
