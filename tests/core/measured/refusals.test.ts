/** What the measured inputs refuse, and that they answer on the edge of it. */
import {
  emissivityByContact,
  type EmissivityByContactInputs,
} from "../../../src/core/measured/emissivity-by-contact.js";
import { reflectedByReflector, reflectedMix } from "../../../src/core/measured/reflected.js";
import { DEFAULT_BAND, flatBand } from "../../../src/core/planck/band.js";
import { windowTransmission, windowTransmissionPair } from "../../../src/core/window/transmission.js";
import { celsius, kelvin } from "../../support/radiometry.js";
import { refusal } from "../../support/refusal.js";

const BAND = DEFAULT_BAND;
const contact = (app: number, temp: number, refl: number, more: Partial<EmissivityByContactInputs> = {}): number =>
  emissivityByContact({ apparent: kelvin(app), contactTemp: kelvin(temp), reflected: kelvin(refl), ...more }, BAND);
const window = (without: number, through: number, temp: number, rho?: number, outer?: number): number =>
  windowTransmission(
    {
      readingWithout: kelvin(without),
      readingWith: kelvin(through),
      windowTemp: kelvin(temp),
      ...(rho === undefined ? {} : { windowReflectance: rho }),
      ...(outer === undefined ? {} : { outerReflected: kelvin(outer) }),
    },
    BAND,
  );
const pair = (hot: number, hotThrough: number, cold: number, coldThrough: number): number =>
  windowTransmissionPair(
    {
      hotWithout: kelvin(hot),
      hotThrough: kelvin(hotThrough),
      coldWithout: kelvin(cold),
      coldThrough: kelvin(coldThrough),
    },
    BAND,
  );
const reflector = (app: number, reflectance?: number, own?: number): number =>
  reflectedByReflector(
    {
      apparent: kelvin(app),
      ...(reflectance === undefined ? {} : { reflectance }),
      ...(own === undefined ? {} : { reflectorTemp: kelvin(own) }),
    },
    BAND,
  );
const mix = (temps: (number | undefined)[], shares: (number | undefined)[]): number =>
  celsius(reflectedMix({ temps: temps.map((t) => (t === undefined ? t : kelvin(t))), shares }, BAND));

describe("exactly 10 K apart answers, whatever the temperatures, either way", () => {
  it.each([1, -1])("sign %d", (sign) => {
    for (let tenths = -300; tenths <= 600; tenths++) {
      const [low, high] = [tenths / 10, (tenths + 100 * sign) / 10];
      expect(contact(high, high, low)).toBe(1);
      expect(window(high, high, low)).toBe(1);
      expect(pair(high, high, low, low)).toBe(1);
    }
  });
});

it("what a cold surface shows is answered too: colder than what it reflects", () => {
  expect(contact(14, 5, 40)).toBeGreaterThan(0.7);
  expect(contact(14, 5, 40)).toBeLessThan(0.8);
});

it.each([
  ["surface and reflected 9.9 K apart", () => contact(30, 31.9, 22), "REFUSED", "contact_temp", "emissivity-contrast"],
  ["the same, the surface colder", () => contact(15, 12.1, 22), "REFUSED", "contact_temp", "emissivity-contrast"],
  ["a reading above the contact", () => contact(63, 62, 22), "NO_SOLUTION", "apparent", "emissivity-above-one"],
  ["a reading of reflected alone", () => contact(22, 62, 22), "NO_SOLUTION", "apparent", "emissivity-none"],
  ["a reading below reflected", () => contact(20, 62, 22), "NO_SOLUTION", "apparent", "emissivity-none"],
  [
    "air without its temperature",
    () => contact(58, 62, 22, { airTransmission: 0.9 }),
    "NOT_GIVEN",
    "air_temp",
    "air-temp-needed",
  ],
  ["air in per cent", () => contact(58, 62, 22, { airTransmission: 98 }), "INVALID", "air_transmission", "per-cent"],
  ["air of 0", () => contact(58, 62, 22, { airTransmission: 0 }), "INVALID", "air_transmission", "zero-or-empty"],
  ["a contact below absolute zero", () => contact(58, -280, 22), "INVALID", "contact_temp", "absolute-zero"],
  ["target and window 9.9 K apart", () => window(34.9, 32, 25), "REFUSED", "reading_without", "window-contrast"],
  ["the same, the target colder", () => window(15.1, 20, 25), "REFUSED", "reading_without", "window-contrast"],
  ["the two readings swapped", () => window(68, 90, 25), "NO_SOLUTION", "reading_with", "window-above-most"],
  ["a reading of the window alone", () => window(90, 25, 25), "NO_SOLUTION", "reading_with", "window-opaque"],
  ["a reading below the window", () => window(90, 24, 25), "NO_SOLUTION", "reading_with", "window-opaque"],
  [
    "transmission and reflectance above 1",
    () => window(90, 87, 25, 0.1, 25),
    "NO_SOLUTION",
    "reading_with",
    "window-above-most",
  ],
  [
    "a reflectance without what it mirrors",
    () => window(90, 68, 25, 0.08),
    "NOT_GIVEN",
    "outer_reflected",
    "outer-reflected-needed",
  ],
  ["a reflectance in per cent", () => window(90, 68, 25, 8, 22), "INVALID", "window_reflectance", "per-cent"],
  ["a window of NaN", () => window(90, 68, NaN), "INVALID", "window_temp", undefined],
  ["hot and cold 9.9 K apart", () => pair(39.9, 35, 30, 28), "REFUSED", "hot_without", "pair-contrast"],
  ["hot and cold swapped through", () => pair(90, 28.5, 30, 68), "NO_SOLUTION", "hot_through", "pair-opaque"],
  ["more through than without", () => pair(90, 95, 30, 28), "NO_SOLUTION", "hot_through", "window-above-most"],
  [
    "a reflector without its temperature",
    () => reflector(18, 0.95),
    "NOT_GIVEN",
    "reflector_temp",
    "reflector-temp-needed",
  ],
  ["a reflector that outshines", () => reflector(-60, 0.5, 60), "NO_SOLUTION", "apparent", "reflector-alone"],
  ["a reflectance of 0", () => reflector(18, 0, 22), "INVALID", "reflector_reflectance", undefined],
  ["a reflectance of 95", () => reflector(18, 95, 22), "INVALID", "reflector_reflectance", "per-cent"],
  ["a reflector below absolute zero", () => reflector(18, 1, -300), "INVALID", "reflector_temp", "absolute-zero"],
  ["shares that miss 1", () => mix([-50, 15], [0.5, 0.4]), "INVALID", "shares", "mix-sum"],
  ["shares that miss 1 by 2e-6", () => mix([-50, 15], [0.5, 0.500002]), "INVALID", "shares", "mix-sum"],
  ["shares in per cent", () => mix([-50, 15], [50, 50]), "INVALID", "shares", "per-cent"],
  ["a share below 0", () => mix([-50, 15], [-0.5, 1.5]), "INVALID", "shares", undefined],
  ["a share without a temperature", () => mix([-50, undefined], [0.5, 0.5]), "NOT_GIVEN", "temps", "mix-temp"],
  ["a temperature without a share", () => mix([-50, 15], [1, undefined]), "NOT_GIVEN", "shares", "mix-share"],
  ["no share at all", () => mix([undefined, -50], [undefined, 0]), "NOT_GIVEN", "shares", "mix-empty"],
  ["no part at all", () => mix([], []), "NOT_GIVEN", "shares", "mix-empty"],
  ["sky below absolute zero", () => mix([-300, 15], [0.5, 0.5]), "INVALID", "temps", "absolute-zero"],
  ["nothing to mirror", () => mix([-273.1], [1]), "NO_SOLUTION", "temps", "no-radiance"],
])("refuses %s", (_, call, code, argument, hint) => {
  const error = refusal(call);
  expect(error).toMatchObject({ code, argument });
  expect(error.hint?.key).toBe(hint);
});

it("says so where nothing is radiated in the band: at 15 K below 1 µm", () => {
  const [cold, colder] = [15, 2];
  const pairs = { hotWithout: cold, hotThrough: cold, coldWithout: colder, coldThrough: colder };
  for (const call of [
    () => emissivityByContact({ apparent: cold, contactTemp: cold, reflected: colder }, flatBand(0.7, 1)),
    () => windowTransmission({ readingWithout: cold, readingWith: cold, windowTemp: colder }, flatBand(0.7, 1)),
    () => windowTransmissionPair(pairs, flatBand(0.7, 1)),
  ])
    expect(refusal(call)).toMatchObject({ code: "NO_SOLUTION", hint: { key: "no-radiance" } });
});

describe("a mix", () => {
  it("passes over what has neither share nor temperature, and what has a share of 0", () => {
    const two = mix([-50, 15], [0.5, 0.5]);
    expect(mix([undefined, -50, 15], [undefined, 0.5, 0.5])).toBe(two);
    expect(mix([-50, 15, undefined], [0.5, 0.5, 0])).toBe(two);
  });

  it("takes thirds typed with six digits, and gives their common temperature", () => {
    expect(mix([20, 20, 20], [0.333333, 0.333333, 0.333333])).toBeCloseTo(20, 10);
  });
});
