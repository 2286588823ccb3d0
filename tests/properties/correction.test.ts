/** What must hold for every reading and every set of settings. The seed is fixed: a failure repeats itself. */
import fc from "fast-check";
import { apparent, correct, sensitivities } from "../../src/core/correction/correct.js";
import type { Settings } from "../../src/core/correction/settings.js";
import { GreybodyError } from "../../src/core/errors.js";
import { responseBand, type Band } from "../../src/core/planck/band.js";
import { radiance } from "../../src/core/planck/exact.js";
import { tableFor } from "../../src/core/planck/tables.js";
import { atOneTemperature, bands, between, chains, surroundingTemps, temperatures } from "./generators.js";

const SEED = 20_181_120;
const REPEATABLE = { seed: SEED, numRuns: 400 };

/** The corrected temperature and the object's share, or nothing where the surroundings alone outshine the reading. */
function corrected(reading: number, settings: Settings, band: Band): ReturnType<typeof correct> | undefined {
  try {
    return correct(reading, settings, band);
  } catch (error) {
    if (error instanceof GreybodyError && error.code === "NO_SOLUTION") return undefined;
    throw error;
  }
}

/** Error [K] that the table and the last digits may bring in front of a chain that lets only this share through. */
const slack = (share: number): number => 2e-8 + 1e-9 / share;

function expectNear(value: number, expected: number, tolerance: number): void {
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(tolerance);
}

describe(`correction (fast-check seed ${SEED})`, () => {
  it("is the identity where emissivity and transmissions are 1, whatever surrounds it", () => {
    fc.assert(
      fc.property(temperatures, chains, bands, (t, s, band) => {
        const { reflected, airTemp, windowTemp, outerReflected } = s;
        const { temperature, signalShare } = correct(
          t,
          { emissivity: 1, reflected, airTransmission: 1, airTemp, windowTransmission: 1, windowTemp, outerReflected },
          band,
        );
        expectNear(temperature, t, 2e-8);
        expect(signalShare).toBe(1);
      }),
      REPEATABLE,
    );
  });

  it("gives T where every temperature is T, for any emissivity, transmission and reflectance", () => {
    fc.assert(
      fc.property(temperatures, chains, bands, (t, s, band) => {
        const { temperature, signalShare } = correct(t, atOneTemperature(s, t), band);
        expectNear(temperature, t, slack(signalShare));
        expectNear(apparent(t, atOneTemperature(s, t), band), t, 2e-8);
      }),
      REPEATABLE,
    );
  });

  it("there the sensitivities to the temperatures sum to 1, and none to a fraction is left", () => {
    fc.assert(
      fc.property(temperatures, chains, bands, (t, s, band) => {
        const found = sensitivities(t, atOneTemperature(s, t), band);
        const sum = found.apparent + found.reflected + found.airTemp + found.windowTemp + found.outerReflected;
        expectNear(sum, 1, 1e-10 * found.apparent);
        for (const name of ["emissivity", "airTransmission", "windowTransmission", "windowReflectance"] as const) {
          expectNear(found[name], 0, 1e-9 * t * found.apparent);
        }
      }),
      REPEATABLE,
    );
  });

  it("rises strictly with the reading", () => {
    fc.assert(
      fc.property(temperatures, between(1e-4, 50), chains, bands, (t, more, s, band) => {
        const higher = corrected(t + more, s, band);
        const lower = corrected(t, s, band);
        // Once there is an answer there is one for every higher reading.
        if (lower) expect(higher?.temperature).toBeGreaterThan(lower.temperature);
      }),
      REPEATABLE,
    );
  });

  it("of the reading that an object gives is the object, and the other way round", () => {
    let answered = 0;
    fc.assert(
      fc.property(temperatures, chains, bands, (t, s, band) => {
        const back = correct(apparent(t, s, band), s, band);
        expectNear(back.temperature, t, slack(back.signalShare));
        const object = corrected(t, s, band);
        if (!object || object.temperature > 2000) return;
        answered++;
        expectNear(apparent(object.temperature, s, band), t, 2e-8);
      }),
      REPEATABLE,
    );
    expect(answered).toBeGreaterThan(REPEATABLE.numRuns / 2);
  });

  it("with a window of transmission 1 and reflectance 0 is that without a window; two airs are one", () => {
    fc.assert(
      fc.property(temperatures, chains, bands, (t, s, band) => {
        const { emissivity, reflected, airTransmission, airTemp, windowTemp, outerReflected, outerAirTransmission } = s;
        const none = { emissivity, reflected, airTransmission, airTemp };
        const neutral = { windowTransmission: 1, windowTemp, windowReflectance: 0, outerReflected };
        const plain = corrected(t, none, band);
        const through = corrected(t, { ...none, ...neutral, outerAirTransmission: 1 }, band);
        expect(through === undefined).toBe(plain === undefined);
        if (plain && through) expectNear(through.temperature, plain.temperature, 1e-11 / plain.signalShare);
        const apart = corrected(t, { ...none, outerAirTransmission }, band);
        const together = corrected(t, { ...none, airTransmission: airTransmission * outerAirTransmission }, band);
        if (apart && together) expectNear(apart.temperature, together.temperature, slack(apart.signalShare));
      }),
      REPEATABLE,
    );
  });

  it("does not change when every response is multiplied by one factor", () => {
    fc.assert(
      fc.property(temperatures, chains, fc.integer({ min: -12, max: 12 }), (t, s, power) => {
        const wavelengths = [7, 8, 10, 13, 14.5];
        const responses = [0, 0.9, 1, 0.7, 0];
        const factor = 10 ** power;
        const one = corrected(t, s, responseBand(wavelengths, responses));
        const scaled = corrected(
          t,
          s,
          responseBand(
            wavelengths,
            responses.map((response) => response * factor),
          ),
        );
        expect(scaled === undefined).toBe(one === undefined);
        if (one && scaled) expectNear(scaled.temperature, one.temperature, slack(one.signalShare));
      }),
      // Each factor is a band with a table of its own.
      { ...REPEATABLE, numRuns: 10 },
    );
  });

  it("does not depend on temperatures of what plays no part", () => {
    fc.assert(
      fc.property(temperatures, chains, surroundingTemps, bands, (t, s, other, band) => {
        const noAir = { ...s, airTransmission: 1, outerAirTransmission: 1 };
        expect(corrected(t, { ...noAir, airTemp: other }, band)).toEqual(corrected(t, noAir, band));
        const still = { ...s, windowReflectance: 0 };
        expect(corrected(t, { ...still, outerReflected: other }, band)).toEqual(corrected(t, still, band));
        const black = { ...s, emissivity: 1 };
        expect(corrected(t, { ...black, reflected: other }, band)).toEqual(corrected(t, black, band));
      }),
      REPEATABLE,
    );
  });
});

describe(`sensitivities (fast-check seed ${SEED})`, () => {
  const STEPS = {
    apparent: 0.4,
    emissivity: 2e-3,
    reflected: 0.4,
    airTransmission: 2e-3,
    airTemp: 0.4,
    windowTransmission: 2e-3,
    windowTemp: 0.4,
    windowReflectance: 2e-3,
    outerReflected: 0.4,
    outerAirTransmission: 2e-3,
  };

  it.each(Object.entries(STEPS))("to %s is what a small change shows", (name, step) => {
    fc.assert(
      fc.property(temperatures, chains, bands, (t, chain, band) => {
        // Room for a step either way.
        const squeeze = (value: number): number => 0.01 + 0.97 * value;
        const s: Required<Settings> = {
          ...chain,
          emissivity: squeeze(chain.emissivity),
          airTransmission: squeeze(chain.airTransmission),
          outerAirTransmission: squeeze(chain.outerAirTransmission),
          windowReflectance: 0.005 + 0.8 * chain.windowReflectance,
          windowTransmission: 0.95 * chain.windowTransmission,
        };
        fc.pre((corrected(t, s, band)?.signalShare ?? 0) > 0.2);
        const shifted = (by: number): number => {
          const reading = name === "apparent" ? t + by : t;
          const changed = name === "apparent" ? s : { ...s, [name]: s[name as keyof Settings] + by };
          return correct(reading, changed, band).temperature;
        };
        const slope = (h: number): number => (shifted(h) - shifted(-h)) / (2 * h);
        const expected = (4 * slope(step / 2) - slope(step)) / 3;
        const found = sensitivities(t, s, band)[name as keyof typeof STEPS];
        expectNear(found, expected, 1e-5 * Math.abs(found) + 1e-7 / step);
      }),
      { ...REPEATABLE, numRuns: 150 },
    );
  });
});

describe(`the table (fast-check seed ${SEED})`, () => {
  /** Any response a camera may have: gaps, spikes, lobes far apart and of very different height. */
  const responses = fc
    .array(
      fc.tuple(
        between(0.01, 4),
        fc.oneof(
          fc.constant(0),
          between(-6, 0).map((p) => 10 ** p),
        ),
      ),
      {
        minLength: 2,
        maxLength: 9,
      },
    )
    .map((rows) => {
      let wavelength = 0.7;
      return rows.map(([step, response]) => [(wavelength += step), response] as const).filter(([w]) => w <= 20);
    })
    .filter((rows) => rows.length > 1 && rows.some(([, response]) => response > 0));

  it("is the closed form to 1e-8 K for any response, forward and back", () => {
    fc.assert(
      fc.property(responses, fc.array(between(150, 2400), { minLength: 40, maxLength: 40 }), (rows, temps) => {
        const band = responseBand(
          rows.map(([wavelength]) => wavelength),
          rows.map(([, response]) => response),
        );
        const table = tableFor(band);
        for (const t of [150.5, 151, ...temps]) {
          const l = radiance(band, t);
          expectNear(table.temperature(l), t, 1e-8);
          expectNear(table.temperature(table.radiance(t)), t, 1e-8);
        }
      }),
      { ...REPEATABLE, numRuns: 25 },
    );
  });
});
