/** ANSI/NETA ATS-2003, Table 100.18: its printed whole degrees. The grade numbers are ours; the table has none. */
import { grade } from "../../src/core/severity/grade.js";
import { publishedChecks } from "../support/rows.js";
import { gradeOfCheck } from "../support/severity.js";

describe("ANSI/NETA Table 100.18", () => {
  it.each(publishedChecks("NETA-").map((check) => [check.title, check] as const))("%s", (_, check) => {
    expect(gradeOfCheck(check, "NETA-100.18")).toBe(check.expected);
  });

  // Graded by hand: the gaps between the printed degrees are our rule.
  it.each([
    ["similar", [0.9, 1, 3, 3.5, 4, 15, 15.01, 16], [0, 1, 1, 1, 2, 2, 4, 4]],
    ["ambient", [10, 10.5, 11, 20.5, 21, 40, 40.1], [1, 1, 2, 2, 3, 3, 4]],
  ])("between the printed degrees, %s", (reference, rises, grades) => {
    expect(rises.map((rise) => grade({ rise, reference }).grade)).toEqual(grades);
  });
});
