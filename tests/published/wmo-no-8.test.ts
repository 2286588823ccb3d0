/** WMO-No. 8 (Guide to Instruments and Methods of Observation), Annex 4.B: the constants of the saturation pressure. */
import { saturationPressure } from "../../src/core/air/humidity.js";
import { AIR_MODEL } from "../../src/data/air-model.js";
import { expectPublished, publishedChecks } from "../support/rows.js";

describe("WMO-No. 8, Annex 4.B", () => {
  const { A_hPa, b, c_C } = AIR_MODEL.constants.magnus;
  it.each(publishedChecks("WMO-").map((check, i) => [check.title, check, [A_hPa, b, c_C][i]] as const))(
    "%s",
    (_, check, ours) => {
      expectPublished(check, ours ?? NaN);
    },
  );

  it("are the constants that the pressure is computed with", () => {
    expect(saturationPressure(273.15)).toBeCloseTo(611.2, 10);
    // t = c: the exponent is b/2, the constants of the rows above.
    const [a = 0, , c = 0] = publishedChecks("WMO-").map((check) => check.expected);
    expect(saturationPressure(273.15 + 40)).toBeCloseTo(100 * a * Math.exp((17.62 * 40) / (c + 40)), 8);
  });
});
