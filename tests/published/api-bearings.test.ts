/** API 610 as a forum of engineers quotes it; API 612/619, 617 and 618 as another page does: oil and bearing metal. */
import { expectAll, expectLimit } from "../support/limits.js";
import { publishedChecks } from "../support/rows.js";

/** What our table calls the part of each check, the figure and the standard. */
const PARTS: Readonly<Record<string, readonly [part: string, unit: "C" | "K", standard: string]>> = {
  "BRG-1": ["pump bearing, oil outlet, pressurised", "C", "API 610"],
  "BRG-2": ["pump bearing metal, pressurised", "C", "API 610"],
  "BRG-3": ["pump bearing, oil rise, pressurised", "K", "API 610"],
  "BRG-4": ["pump bearing, sump, ring oil or splash", "K", "API 610"],
  "BRG-5": ["turbine or compressor bearing, oil outlet", "C", "API 612"],
  "BRG-6": ["turbine or compressor bearing, oil rise", "K", "API 612"],
  "BRG-7": ["centrifugal compressor, bearing metal", "C", "API 617"],
  "BRG-8": ["reciprocating compressor, crankcase oil, pressure lubricated", "C", "API 618"],
  "BRG-9": ["reciprocating compressor, crankcase oil, splash lubricated", "C", "API 618"],
};
const checks = publishedChecks("BRG-");

describe("API bearings", () => {
  it("stands in our table whole", () => {
    expectAll(checks, PARTS);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectLimit(check, ...PARTS[check.id]!);
  });
});
