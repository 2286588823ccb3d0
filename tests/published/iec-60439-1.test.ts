/** IEC 60439-1, the predecessor of IEC 61439-1, as a handbook of power engineering tabulates it (Table 14.5). */
import { expectAll, expectLimit } from "../support/limits.js";
import { publishedChecks } from "../support/rows.js";

/** What our table calls the part of each check, the figure and the standard. */
const PARTS: Readonly<Record<string, readonly [part: string, unit: "C" | "K", standard: string]>> = {
  "LVA-1": ["assembly handle, metal", "K", "IEC 60439-1"],
  "LVA-2": ["assembly handle, insulating", "K", "IEC 60439-1"],
  "LVA-3": ["assembly cover, metal", "K", "IEC 60439-1"],
  "LVA-4": ["assembly cover, insulating", "K", "IEC 60439-1"],
  "LVA-5": ["assembly terminal for external conductors", "K", "IEC 60439-1"],
  "LVA-6": ["assembly busbar, bare copper or aluminium", "K", "IEC 60439-1"],
  "LVA-7": ["assembly busbar, silver-plated", "K", "IEC 60439-1"],
};
const checks = publishedChecks("LVA-");

describe("IEC 60439-1", () => {
  it("stands in our table whole", () => {
    expectAll(checks, PARTS);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectLimit(check, ...PARTS[check.id]!);
  });
});
