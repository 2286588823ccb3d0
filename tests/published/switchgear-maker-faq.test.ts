/** A low-voltage switchgear maker's answer 1059 (the maker stays unnamed): sqrt((105 − air)/65), so the square law. */
import { riseAtLoad } from "../../src/core/loading/rise-at-load.js";
import { expectAllowableCurrent, expectTemperatureAtLoad } from "../support/allowable-current.js";
import { inputOf, publishedChecks } from "../support/rows.js";

describe("low-voltage switchgear, FAQ 1059", () => {
  it.each(publishedChecks("LV-1").map((check) => [check.title, check] as const))("%s", (_, check) => {
    const rise = inputOf(check, "limit") - inputOf(check, "reference air");
    const at = riseAtLoad({ rise, load: 1, referenceLoad: check.expected, exponent: 2 });
    const left = inputOf(check, "limit") - inputOf(check, "air");
    expect(Math.abs(at - left)).toBeLessThanOrEqual((check.tolerance * 2 * at) / check.expected);
  });
  it.each(publishedChecks("LV-2").map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectAllowableCurrent(check);
  });
  it.each(publishedChecks("LV-3").map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectTemperatureAtLoad(check);
  });
});
