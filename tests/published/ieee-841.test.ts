/** IEEE 841-2021 as quoted: windings by resistance and the exposed surface of severe-duty motors. */
import { expectAll, expectLimit } from "../support/limits.js";
import { publishedChecks } from "../support/rows.js";

/** What our table calls the part of each check, the figure and the standard. */
const PARTS: Readonly<Record<string, readonly [part: string, unit: "C" | "K", standard: string]>> = {
  "841-1": ["motor winding, severe duty, sine supply", "K", "IEEE 841"],
  "841-2": ["motor winding, severe duty, on a drive", "K", "IEEE 841"],
  "841-3": ["motor surface, severe duty, exposed", "C", "IEEE 841"],
};
const checks = publishedChecks("841-");

describe("IEEE 841", () => {
  it("stands in our table whole", () => {
    expectAll(checks, PARTS);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectLimit(check, ...PARTS[check.id]!);
  });
});
