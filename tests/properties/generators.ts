import fc from "fast-check";
import type { Settings } from "../../src/core/correction/settings.js";
import { flatBand, responseBand, type Band } from "../../src/core/planck/band.js";
import { kelvin } from "../support/radiometry.js";

/** Numbers between two ends, without fast-check's taste for the very smallest steps. */
export const between = (min: number, max: number): fc.Arbitrary<number> =>
  fc.integer({ min: 0, max: 1_000_000 }).map((share) => min + (share / 1_000_000) * (max - min));

export const temperatures = between(kelvin(-40), kelvin(500));
export const surroundingTemps = between(kelvin(-40), kelvin(60));

/** A handful: each band has a table to build first, and the tables have a test of their own. */
export const bands: fc.Arbitrary<Band> = fc.constantFrom(
  flatBand(7.5, 14),
  flatBand(8, 14),
  flatBand(3, 5),
  flatBand(2, 5),
  responseBand([7, 8, 10, 13, 14.5], [0, 0.9, 1, 0.7, 0]),
  responseBand([3, 5], [3, 5]),
);

/** Everything that can stand between an object and its reading. */
export const chains: fc.Arbitrary<Required<Settings>> = fc
  .record({
    emissivity: between(0.2, 1),
    reflected: surroundingTemps,
    airTransmission: between(0.6, 1),
    airTemp: surroundingTemps,
    windowTransmission: between(0.3, 0.95),
    windowTemp: surroundingTemps,
    windowReflectance: between(0, 1),
    outerReflected: surroundingTemps,
    outerAirTransmission: between(0.6, 1),
  })
  .map((s) => ({ ...s, windowReflectance: s.windowReflectance * 0.99 * (1 - s.windowTransmission) }));

/** The same at one temperature throughout. */
export function atOneTemperature(s: Required<Settings>, t: number): Required<Settings> {
  return { ...s, reflected: t, airTemp: t, windowTemp: t, outerReflected: t };
}
