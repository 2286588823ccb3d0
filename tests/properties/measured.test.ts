/** What is measured goes back to what made it: forward through `apparent`, then back. The seed is fixed. */
import fc from "fast-check";
import { apparent } from "../../src/core/correction/correct.js";
import { riseAtWind } from "../../src/core/loading/rise-at-wind.js";
import { emissivityByContact } from "../../src/core/measured/emissivity-by-contact.js";
import { reflectedByReflector, reflectedMix } from "../../src/core/measured/reflected.js";
import { farthest, spotSize } from "../../src/core/optics/spot.js";
import { radiance } from "../../src/core/planck/exact.js";
import { windowTransmission, windowTransmissionPair } from "../../src/core/window/transmission.js";
import { bands, between, chains, surroundingTemps, temperatures } from "./generators.js";

const SEED = 20_261_126;
const REPEATABLE = { seed: SEED, numRuns: 300 };

function expectNear(value: number, expected: number, tolerance: number): void {
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);
}

/** Error of a quotient of radiance differences, where a reading is right to 1e-8 K. */
function slack(band: Parameters<typeof radiance>[0], warmest: number, a: number, b: number): number {
  const step = Math.abs(radiance(band, warmest + 2e-8) - radiance(band, warmest - 2e-8));
  return 1e-9 + (4 * step) / Math.abs(radiance(band, a) - radiance(band, b));
}

describe(`measured inputs (fast-check seed ${SEED})`, () => {
  it("a window's transmission comes back from one target", () => {
    fc.assert(
      fc.property(temperatures, chains, bands, (object, s, band) => {
        const surface = { emissivity: s.emissivity, reflected: s.reflected };
        const { windowTemp, windowReflectance, outerReflected, windowTransmission: expected } = s;
        const readingWithout = apparent(object, surface, band);
        fc.pre(Math.abs(readingWithout - windowTemp) >= 10);
        const pane = { windowTransmission: expected, windowTemp, windowReflectance, outerReflected };
        const readingWith = apparent(object, { ...surface, ...pane }, band);
        const found = windowTransmission(
          { readingWithout, readingWith, windowTemp, windowReflectance, outerReflected },
          band,
        );
        expectNear(
          found,
          expected,
          slack(band, Math.max(object, outerReflected, windowTemp), readingWithout, windowTemp),
        );
      }),
      REPEATABLE,
    );
  });

  it("a window's transmission comes back from two targets, whatever it emits and mirrors and whatever air lies before it", () => {
    fc.assert(
      fc.property(temperatures, temperatures, chains, bands, (hot, cold, s, band) => {
        const { windowTransmission: expected, ...rest } = s;
        const surface = { emissivity: s.emissivity, reflected: s.reflected };
        // Only the window's own reading sees the air: without it both pairs would carry the same factor.
        const pane = { ...rest, airTransmission: 1, outerAirTransmission: 1, windowTransmission: expected };
        const [hotWithout, coldWithout] = [apparent(hot, surface, band), apparent(cold, surface, band)];
        fc.pre(Math.abs(hotWithout - coldWithout) >= 10);
        const [hotThrough, coldThrough] = [hot, cold].map((t) => apparent(t, { ...surface, ...pane }, band));
        const found = windowTransmissionPair(
          { hotWithout, coldWithout, hotThrough: hotThrough!, coldThrough: coldThrough! },
          band,
        );
        expectNear(found, expected, slack(band, Math.max(hot, cold), hotWithout, coldWithout));
      }),
      REPEATABLE,
    );
  });

  it("an emissivity comes back from contact", () => {
    fc.assert(
      fc.property(temperatures, chains, bands, (contactTemp, s, band) => {
        const { emissivity, reflected, airTransmission, airTemp } = s;
        fc.pre(Math.abs(contactTemp - reflected) >= 10);
        const reading = apparent(contactTemp, { emissivity, reflected, airTransmission, airTemp }, band);
        const found = emissivityByContact(
          { apparent: reading, contactTemp, reflected, airTransmission, airTemp },
          band,
        );
        expectNear(
          found,
          emissivity,
          slack(band, Math.max(contactTemp, reflected, airTemp), contactTemp, reflected) / 0.6,
        );
      }),
      REPEATABLE,
    );
  });

  it("what a reflector mirrors comes back: it is a surface of emissivity 1 - reflectance", () => {
    fc.assert(
      fc.property(surroundingTemps, surroundingTemps, between(0.5, 0.99), bands, (mirrored, own, reflectance, band) => {
        const reading = apparent(own, { emissivity: 1 - reflectance, reflected: mirrored }, band);
        const found = reflectedByReflector({ apparent: reading, reflectance, reflectorTemp: own }, band);
        const steeper = radiance(band, Math.max(own, mirrored)) / radiance(band, mirrored);
        expectNear(found, mirrored, 1e-7 * (1 + steeper));
      }),
      REPEATABLE,
    );
  });

  it("a mix lies between its parts, in radiance by their shares, and above the mean in degrees", () => {
    fc.assert(
      fc.property(surroundingTemps, surroundingTemps, between(0, 1), bands, (sky, ground, share, band) => {
        const found = reflectedMix({ temps: [sky, ground], shares: [share, 1 - share] }, band);
        const expected = share * radiance(band, sky) + (1 - share) * radiance(band, ground);
        expectNear(radiance(band, found) / expected, 1, 1e-12);
        expectNear(reflectedMix({ temps: [ground, sky], shares: [1 - share, share] }, band), found, 1e-10);
        // Radiance curves upwards with the temperature.
        expect(found).toBeGreaterThanOrEqual(share * sky + (1 - share) * ground - 1e-9);
        expect(found).toBeLessThanOrEqual(Math.max(sky, ground) + 1e-9);
        expectNear(reflectedMix({ temps: [sky, sky], shares: [share, 1 - share] }, band), sky, 1e-9);
      }),
      REPEATABLE,
    );
  });

  it("the farthest distance of the smallest spot is the distance", () => {
    fc.assert(
      fc.property(between(0.1, 30), between(1e-4, 0.02), between(1, 10), (distance, ifov, pixels) => {
        const target = spotSize({ distance, ifov, pixels });
        expectNear(farthest({ target, ifov, pixels }), distance, 1e-12 * distance);
      }),
      REPEATABLE,
    );
  });

  it("a rise brought to another wind and back is the rise, and more wind leaves less of it", () => {
    fc.assert(
      fc.property(between(0, 100), between(1, 7), between(1, 7), between(0.33, 0.81), (rise, wind, other, exponent) => {
        const brought = riseAtWind({ rise, wind, referenceWind: other, exponent });
        expectNear(riseAtWind({ rise: brought, wind: other, referenceWind: wind, exponent }), rise, 1e-10);
        if (other > wind) expect(brought).toBeLessThanOrEqual(rise);
        else expect(brought).toBeGreaterThanOrEqual(rise);
      }),
      REPEATABLE,
    );
  });
});
