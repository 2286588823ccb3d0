/** Where first order fails: 80 °C with emissivity 0.15 ± 0.05, whose draws were worked apart from this code. */
import { apparent } from "../../../src/core/correction/correct.js";
import { DEFAULT_BAND } from "../../../src/core/planck/band.js";
import { agreement } from "../../../src/core/uncertainty/agreement.js";
import type { Agreement } from "../../../src/core/uncertainty/agreement.js";
import { budget } from "../../../src/core/uncertainty/budget.js";
import type { InputUncertainty, UncertainReading } from "../../../src/core/uncertainty/inputs.js";
import { celsius, kelvin } from "../../support/radiometry.js";

function readingOf(emissivity: number, u: InputUncertainty, camera?: InputUncertainty): UncertainReading {
  const settings = { emissivity, reflected: kelvin(22) };
  const uncertainties = { emissivity: u, ...(camera && { apparent: camera }) };
  return { apparent: apparent(kelvin(80), settings, DEFAULT_BAND), settings, uncertainties };
}

function check(reading: UncertainReading, coverage = 0.95): Agreement | undefined {
  return agreement(budget(reading, coverage, DEFAULT_BAND), reading, coverage, DEFAULT_BAND);
}

test("emissivity 0.15 ± 0.05: 80 ± 16 °C by first order, 95 % of the draws from 59 to 151 °C", () => {
  const reading = readingOf(0.15, { stated: 0.05 });
  expect(Math.round(budget(reading, 0.95, DEFAULT_BAND).combined)).toBe(16);
  const found = check(reading);
  expect(found?.verdict).toBe("short");
  // The reflected temperature of that line is not on record; from 15 to 25 °C the ends move by 3 and 8 K.
  expect(Math.abs(celsius(found?.low ?? NaN) - 59)).toBeLessThan(1.5);
  expect(Math.abs(celsius(found?.high ?? NaN) - 151)).toBeLessThan(4);
  expect(found?.rejected).toBeGreaterThan(0);
});

test("emissivity 0.9 ± 0.01 agrees, and the same each time", () => {
  const reading = readingOf(0.9, { stated: 0.01 });
  expect(check(reading)?.verdict).toBe("agrees");
  expect(check(reading)).toEqual(check(reading));
});

test("one rectangle: the draws end before 1.96 u, first order is on the safe side", () => {
  // 95 % of a rectangle lies within 0.95 a, first order says 1.96 a/√3 = 1.13 a: 16 % apart.
  const found = check(readingOf(0.95, { stated: 0 }, { stated: 2, distribution: "rectangular" }));
  expect(found?.verdict).toBe("wide");
  expect(Math.abs((found?.difference ?? NaN) - 0.16)).toBeLessThan(0.015);
});

test("most draws without an answer: rejected", () => {
  // At the end of its range half the draws of an input cannot be; of four such inputs 15 in 16.
  const ends = { emissivity: 1, airTransmission: 1, windowTransmission: 1, outerAirTransmission: 1 };
  const u = { stated: 0.001 };
  const found = check({
    apparent: kelvin(58),
    settings: { reflected: kelvin(22), airTemp: kelvin(20), windowTemp: kelvin(25), ...ends },
    uncertainties: { emissivity: u, airTransmission: u, windowTransmission: u, outerAirTransmission: u },
  });
  expect(found).toMatchObject({ verdict: "rejected", low: NaN, high: NaN });
});

test("ends close to the middle take more draws to tell, too close they are not checked", () => {
  const reading = readingOf(0.9, { stated: 0.01 });
  // 20 %: 0.2533 u to each side, where the density is 0.3863/u (tables): √(0.4·0.6/n) over both is 0.02 at 62,700 draws.
  expect(Math.abs((check(reading, 0.2)?.draws ?? 0) / 62_700 - 1)).toBeLessThan(0.01);
  expect(check(reading, 0.05)).toBeUndefined();
});

test("a coverage nearer to 1 takes more draws, one too near is not checked", () => {
  const reading = readingOf(0.9, { stated: 0.01 });
  expect(check(reading, 0.95)?.draws).toBe(20_000);
  expect(check(reading, 0.999)?.draws).toBe(50_000);
  expect(check(reading, 0.999999)).toBeUndefined();
});
