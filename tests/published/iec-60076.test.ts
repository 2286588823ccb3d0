/** IEC 60076-2 and IEC 60076-7 as an open transformer model quotes them: rises, hot spots, loading limits. */
import { expectAll, expectLimit } from "../support/limits.js";
import { publishedChecks } from "../support/rows.js";

/** What our table calls the part of each check, the figure and the standard. */
const PARTS: Readonly<Record<string, readonly [part: string, unit: "C" | "K", standard: string]>> = {
  "TR-01": ["oil transformer, top oil", "K", "IEC 60076-2"],
  "TR-02": ["oil transformer, mean winding", "K", "IEC 60076-2"],
  "TR-03": ["oil transformer, hot spot, normal paper", "C", "IEC 60076-2"],
  "TR-04": ["oil transformer, hot spot, upgraded paper", "C", "IEC 60076-2"],
  "TR-05": ["oil transformer, hot spot, normal paper", "K", "IEC 60076-2"],
  "TR-06": ["oil transformer, hot spot, upgraded paper", "K", "IEC 60076-2"],
  "TR-07": ["oil transformer, top oil, normal cyclic loading", "C", "IEC 60076-7"],
  "TR-08": ["oil transformer, hot spot, normal cyclic loading", "C", "IEC 60076-7"],
  "TR-09": ["oil transformer, top oil, long emergency loading", "C", "IEC 60076-7"],
  "TR-10": ["oil transformer, hot spot, long emergency loading", "C", "IEC 60076-7"],
  "TR-11": ["oil transformer, top oil, short emergency loading", "C", "IEC 60076-7"],
  "TR-12": ["oil transformer, hot spot, short emergency loading", "C", "IEC 60076-7"],
};
const checks = publishedChecks("TR-");

describe("IEC 60076-2 and -7", () => {
  it("stands in our table whole", () => {
    expectAll(checks, PARTS);
  });
  it.each(checks.map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectLimit(check, ...PARTS[check.id]!);
  });
});
