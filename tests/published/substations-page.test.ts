/** A published web page on substations says that a rise at 30 % load "will roughly double" at full load: a negative example. */
import { riseAtLoad } from "../../src/core/loading/rise-at-load.js";
import { refusal } from "../support/refusal.js";
import { expectPublished, inputOf, publishedChecks } from "../support/rows.js";

describe("from 30 % to full load", () => {
  it.each(
    [...publishedChecks("SLIP-").entries()].map(([i, check]) => [check.title, check, [2, 1.6][i] ?? NaN] as const),
  )("%s", (_, check, exponent) => {
    const inputs = { rise: 1, load: inputOf(check, "load"), referenceLoad: inputOf(check, "reference_load"), exponent };
    expect(refusal(() => riseAtLoad(inputs)).code).toBe("REFUSED");
    const factor = riseAtLoad({ ...inputs, minimumLoad: 0.3 });
    expectPublished(check, factor);
    expect(factor).toBeGreaterThan(3 * 2);
  });
});
