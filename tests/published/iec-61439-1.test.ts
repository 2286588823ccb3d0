/** IEC 61439-1, 10.10.2.3.1, as quoted: I1/I2 = (dT1/dT2)^0.61, where the rise is within 5 K of the limit. */
import { riseAtLoad } from "../../src/core/loading/rise-at-load.js";
import { expectPublished, inputOf, publishedChecks } from "../support/rows.js";

const EXPONENT = 1 / 0.61;
const [exponent, current, rise] = publishedChecks("IEC61-");

describe("IEC 61439-1, exponent of the current", () => {
  it(exponent?.title ?? "missing", () => {
    expectPublished(exponent!, EXPONENT);
  });
  it(`${current?.title ?? "missing"}: at that current the rise meets the limit`, () => {
    const inputs = { rise: inputOf(current!, "rise"), load: inputOf(current!, "load"), exponent: EXPONENT };
    // The current that the source prints, rounded to half an ampere, is 0.1 K of rise.
    const slope = (EXPONENT * inputOf(current!, "limit")) / current!.expected;
    const atCurrent = riseAtLoad({ ...inputs, referenceLoad: current!.expected });
    expect(Math.abs(atCurrent - inputOf(current!, "limit"))).toBeLessThanOrEqual(current!.tolerance * slope);
  });
  it(rise?.title ?? "missing", () => {
    const named = (name: string): number => inputOf(rise!, name);
    const inputs = { rise: named("rise"), load: named("load"), referenceLoad: named("reference_load") };
    expectPublished(rise!, riseAtLoad({ ...inputs, exponent: named("exponent") }));
  });
});
