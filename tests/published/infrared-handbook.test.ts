/** An infrared handbook, p. 350 (mm = m × mrad) and p. 163 (about three pixels to measure). */
import { farthest, spotSize } from "../../src/core/optics/spot.js";
import { expectPublished, inputOf, publishedChecks } from "../support/rows.js";

const [ifov, footprint, measured] = publishedChecks("SPOT-");
const metres = (mm: number): number => mm / 1000;

it(ifov?.cited ?? "SPOT-1", () => {
  // Printed the other way round: which angle sees 2 mm at 1 m.
  const angle = metres(ifov!.expected);
  const detail = metres(inputOf(ifov!, "detail"));
  expect(spotSize({ distance: inputOf(ifov!, "distance"), ifov: angle, pixels: 1 })).toBeCloseTo(detail, 12);
  expect(farthest({ target: detail, ifov: angle, pixels: 1 })).toBeCloseTo(inputOf(ifov!, "distance"), 12);
});

it.each([footprint!, measured!].map((check) => [check.cited, check] as const))("%s", (_, check) => {
  const [distance, pixels] = [inputOf(check, "distance"), inputOf(check, "pixels")];
  expectPublished(check, 1000 * spotSize({ distance, ifov: metres(inputOf(check, "ifov")), pixels }));
});

it("[computed] 1.36 mrad at 3 m: 4.08 mm a pixel, 735 to 1; 12.24 mm measured", () => {
  const pixel = spotSize({ distance: 3, ifov: 1.36e-3, pixels: 1 });
  expect(Math.abs(1000 * pixel - 4.08)).toBeLessThanOrEqual(0.005);
  expect(Math.abs(3 / pixel - 735)).toBeLessThanOrEqual(0.5);
  expect(Math.abs(1000 * spotSize({ distance: 3, ifov: 1.36e-3 }) - 12.24)).toBeLessThanOrEqual(0.005);
});
