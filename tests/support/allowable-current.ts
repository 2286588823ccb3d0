import { limitAtLoad } from "../../src/core/loading/limit-at-load.js";
import { riseAtLoad } from "../../src/core/loading/rise-at-load.js";
import type { PublishedCheck } from "./rows.js";
import { expectPublished, inputOf } from "./rows.js";

const celsius = (t: number): number => t + 273.15;

/**
 * An allowable current with the square law: at the printed current the rated rise becomes the rise that this air leaves.
 * Tolerance: the check's, in amperes, times 2·rise/current.
 */
export function expectAllowableCurrent(check: PublishedCheck): void {
  const limit = inputOf(check, "limit");
  const [rated = NaN, ratedAir = NaN] = (/rated=(\d+) A at (\d+) C/.exec(check.inputs) ?? []).slice(1).map(Number);
  const rise = riseAtLoad({ rise: limit - ratedAir, load: rated, referenceLoad: check.expected, exponent: 2 });
  const left = limit - inputOf(check, "air");
  expect(Math.abs(rise - left)).toBeLessThanOrEqual((check.tolerance * 2 * rise) / check.expected);
}

/** The same example solved for the temperature at the printed current: the limit that it started from. */
export function expectTemperatureAtLoad(check: PublishedCheck): void {
  const loads = {
    ratedRise: inputOf(check, "rated_rise"),
    load: inputOf(check, "load"),
    ratedLoad: inputOf(check, "rated_load"),
  };
  // Hot air and overload need a highest temperature: one well above the answer, so that it plays no part.
  const air = { surroundingAir: celsius(inputOf(check, "air")), maximumTemp: celsius(200) };
  expectPublished(check, limitAtLoad({ ...loads, ...air, exponent: 2 }) - 273.15);
}
