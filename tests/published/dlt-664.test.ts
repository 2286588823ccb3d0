/** DL/T 664, relative temperature difference, as two pages quote it. The inputs of the first two rows are ours. */
import { relativeRise } from "../../src/core/loading/relative-rise.js";
import { RULES } from "../../src/data/rules.js";
import { refusal } from "../support/refusal.js";
import { expectPublished, inputOf, publishedChecks } from "../support/rows.js";

const celsius = (t: number): number => t + 273.15;

describe("DL/T 664", () => {
  it.each(publishedChecks("DLT-1", "DLT-2").map((check) => [check.title, check] as const))("%s", (_, check) => {
    const [hot, normal, surroundingAir] = ["T1", "T2", "T0"].map((name) => celsius(inputOf(check, name)));
    expectPublished(check, 100 * relativeRise({ hot: hot!, normal: normal!, surroundingAir: surroundingAir! }));
  });
  it.each(publishedChecks("DLT-3").map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectPublished(check, RULES.relative_rise_floor.value);
    const just = { normal: celsius(25), surroundingAir: celsius(25) };
    expect(relativeRise({ hot: celsius(25 + check.expected), ...just })).toBeCloseTo(1, 12);
    expect(refusal(() => relativeRise({ hot: celsius(25 + check.expected - 0.1), ...just })).code).toBe("REFUSED");
  });
  // More than 100 % needs a normal part colder than the air, which is an error of input.
  it("a normal part below the air", () => {
    expect(
      refusal(() => relativeRise({ hot: celsius(78), normal: celsius(20), surroundingAir: celsius(25) })).code,
    ).toBe("REFUSED");
  });
});
