/**
 * Gebbie et al. (1951), transmission measured at sea level at 10.01 µm. Humidity is not stated: a rough check, at 20 °C
 * and 50 % over 9.5–10.5 µm, within 0.03. AIR-1 is over 1852 m, which our model does not reach: it must be refused.
 */
import { airTransmission } from "../../src/core/air/transmission.js";
import { flatBand } from "../../src/core/planck/band.js";
import { refusal } from "../support/refusal.js";
import { expectPublished, inputOf, publishedChecks } from "../support/rows.js";

const around10 = flatBand(9.5, 10.5);
const over = (distance: number): number => airTransmission({ distance, airTemp: 293.15, humidity: 0.5 }, around10);

describe("Gebbie et al. 1951", () => {
  it.each(publishedChecks("AIR-2", "AIR-3").map((check) => [check.title, check] as const))("%s", (_, check) => {
    expectPublished(check, over(inputOf(check, "distance")));
  });
  it.each(publishedChecks("AIR-1").map((check) => [check.title, check] as const))("refused: %s", (_, check) => {
    expect(refusal(() => over(inputOf(check, "distance"))).argument).toBe("distance");
  });
});
