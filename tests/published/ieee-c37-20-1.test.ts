/** IEEE C37.20.1-1993, Table 4, as its published interpretation has it. */
import { expectAll, expectLimit } from "../support/limits.js";
import { publishedChecks } from "../support/rows.js";

/** What our table calls the part of each check, the figure and the standard. */
const PARTS: Readonly<Record<string, readonly [part: string, unit: "C" | "K", standard: string]>> = {
  "US-3": ["switchgear joint, silver, tin or equivalent surfaces", "C", "IEEE C37.20.1"],
};
const checks = publishedChecks("US-3");

describe("IEEE C37.20.1", () => {
  it("stands in our table whole", () => {
    expectAll(checks, PARTS);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectLimit(check, ...PARTS[check.id]!);
  });
});
