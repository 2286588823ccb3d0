/** A table of the vapour pressure of water of the kind that the CRC Handbook prints, 0–50 °C. */
import { saturationPressure } from "../../src/core/air/humidity.js";
import { expectPublished, inputOf, publishedChecks } from "../support/rows.js";

// 0.3 %: the Magnus form of WMO-No. 8 is that far from tables at worst, and so it stands in each row.
describe("vapour pressure of water, CRC-type table", () => {
  it.each(publishedChecks("VP-").map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectPublished(check, saturationPressure(inputOf(check, "t") + 273.15) / 1000);
  });
});
