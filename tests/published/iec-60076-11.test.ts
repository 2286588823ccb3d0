/** IEC 60076-11 as a maker's page on thermal classes quotes it: mean winding rises of dry transformers. */
import { expectAll, expectLimit } from "../support/limits.js";
import { publishedChecks } from "../support/rows.js";

/** What our table calls the part of each check, the figure and the standard. */
const PARTS: Readonly<Record<string, readonly [part: string, unit: "C" | "K", standard: string]>> = {
  "DRY-105": ["dry transformer, mean winding, system 105 °C", "K", "IEC 60076-11"],
  "DRY-120": ["dry transformer, mean winding, system 120 °C", "K", "IEC 60076-11"],
  "DRY-130": ["dry transformer, mean winding, system 130 °C", "K", "IEC 60076-11"],
  "DRY-155": ["dry transformer, mean winding, system 155 °C", "K", "IEC 60076-11"],
  "DRY-180": ["dry transformer, mean winding, system 180 °C", "K", "IEC 60076-11"],
  "DRY-200": ["dry transformer, mean winding, system 200 °C", "K", "IEC 60076-11"],
  "DRY-220": ["dry transformer, mean winding, system 220 °C", "K", "IEC 60076-11"],
};
const checks = publishedChecks("DRY-");

describe("IEC 60076-11", () => {
  it("stands in our table whole", () => {
    expectAll(checks, PARTS);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectLimit(check, ...PARTS[check.id]!);
  });
});
