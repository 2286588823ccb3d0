import { GreybodyError } from "../errors.js";
import { HIGHEST_ANSWER, TEMPERATURE } from "../limits.js";
import type { Band } from "../planck/band.js";
import { radiance, radianceSlope, temperature } from "../planck/exact.js";
import { tableFor } from "../planck/tables.js";
import { forward, gainOf, invert, surroundings, windowEmissivity } from "./equation.js";
import type { CompleteSettings, Settings } from "./settings.js";
import { completeSettings, requireTemperature } from "./settings.js";

export interface Corrected {
  /** Temperature of the object [K]. */
  readonly temperature: number;
  /** The object's part of the signal [-]: below 0.03 the result hangs on the settings, not on the reading. */
  readonly signalShare: number;
}

/** A body within some kelvin of absolute zero radiates less in a band than a double can hold: no signal at all. */
function noRadiance(argument: string, given: number): GreybodyError {
  return new GreybodyError({ code: "NO_SOLUTION", argument, given, hint: { key: "no-radiance" } });
}

/** Thrown where the surroundings alone would show more than the reading; names the reading that they would show. */
export function noSolution(
  apparent: number,
  s: CompleteSettings,
  band: Band,
  surroundingsSignal: number,
): GreybodyError {
  const lowest = tableFor(band).temperature(surroundingsSignal);
  if (Number.isNaN(lowest)) return noRadiance("apparent", apparent);
  return new GreybodyError({
    code: "NO_SOLUTION",
    argument: "apparent",
    given: apparent,
    hint: { key: "surroundings-alone", values: { temperature: lowest, emissivity: s.emissivity } },
  });
}

/** The object's temperature, unless so little of it gets through that it would be hotter than anything that is measured. */
function requireHeld(temperature: number, apparent: number): number {
  if (temperature <= HIGHEST_ANSWER) return temperature;
  const hint =
    temperature < Infinity
      ? { key: "beyond-temperatures", values: { temperature, most: TEMPERATURE.max ?? NaN } }
      : { key: "beyond-numbers" };
  throw new GreybodyError({ code: "NO_SOLUTION", argument: "apparent", given: apparent, hint });
}

/**
 * Temperature of an object from its apparent temperature.
 * @param apparent what the camera shows with its own settings at 1 (uncompensated reading) [K]
 * @throws INVALID, NOT_GIVEN (which setting), NO_SOLUTION (no object of any temperature gives this reading, or only one
 * hotter than 10,000 °C)
 * Error ≤ 1e-8 K against the closed form. Source: ISO 18434-1 (quantities), measurement equation in equation.ts.
 */
export function correct(apparent: number, settings: Settings, band: Band): Corrected {
  requireTemperature("apparent", apparent);
  const s = completeSettings(settings);
  const table = tableFor(band);
  const l = surroundings(s, (t) => table.radiance(t));
  const signal = table.radiance(apparent);
  const { object } = invert(signal, s, l);
  if (!(object > 0)) throw noSolution(apparent, s, band, forward(0, s, l));
  const found = requireHeld(table.temperature(object), apparent);
  return { temperature: found, signalShare: (gainOf(s) * object) / signal };
}

/**
 * Apparent temperature [K] that an object shows under these settings: the other direction of `correct`.
 * @param objectTemp temperature of the object [K]
 * @throws INVALID, NOT_GIVEN (which setting), NO_SOLUTION (nothing radiates)
 */
export function apparent(objectTemp: number, settings: Settings, band: Band): number {
  requireTemperature("object_temp", objectTemp);
  const s = completeSettings(settings);
  const table = tableFor(band);
  const l = surroundings(s, (t) => table.radiance(t));
  const signal = forward(table.radiance(objectTemp), s, l);
  const shown = table.temperature(signal);
  // Of a signal with hardly a bit left in double precision there is no temperature either.
  if (Number.isNaN(shown)) throw noRadiance("object_temp", objectTemp);
  return shown;
}

/** ∂T(object)/∂(input): [K/K] for temperatures, [K] for fractions; 0 for what plays no part. */
export type Sensitivities = { readonly apparent: number } & { readonly [Name in keyof CompleteSettings]: number };

/**
 * Sensitivities of the corrected temperature to every input, analytic.
 * @param apparent [K]
 * @throws as `correct`
 * Source: derivatives of the measurement equation; first-order propagation as in JCGM 100:2008, 5.1.
 */
export function sensitivities(apparentTemp: number, settings: Settings, band: Band): Sensitivities {
  requireTemperature("apparent", apparentTemp);
  const s = completeSettings(settings);
  const l = surroundings(s, (t) => radiance(band, t));
  const { outside, inside, leaving, object } = invert(radiance(band, apparentTemp), s, l);
  if (!(object > 0)) throw noSolution(apparentTemp, s, band, forward(0, s, l));
  const slopeAt = (t: number): number => (Number.isNaN(t) ? 0 : radianceSlope(band, t));
  const perEmissivity = s.emissivity * radianceSlope(band, requireHeld(temperature(band, object), apparentTemp));
  const perAir = s.airTransmission * perEmissivity;
  const perWindow = s.windowTransmission * perAir;
  const perOuterAir = s.outerAirTransmission * perWindow;
  const airShare = (1 - s.outerAirTransmission) / perOuterAir + (1 - s.airTransmission) / perAir;
  const airKnown = !Number.isNaN(s.airTemp);
  const windowKnown = !Number.isNaN(s.windowTemp);
  return {
    apparent: radianceSlope(band, apparentTemp) / perOuterAir,
    emissivity: -(object - l.reflected) / perEmissivity,
    reflected: (-(1 - s.emissivity) * slopeAt(s.reflected)) / perEmissivity,
    airTransmission: airKnown ? (l.air - leaving) / perAir : 0,
    airTemp: airShare === 0 ? 0 : -airShare * slopeAt(s.airTemp),
    windowTransmission: windowKnown ? (l.window - inside) / perWindow : 0,
    windowTemp: (-windowEmissivity(s.windowTransmission, s.windowReflectance) * slopeAt(s.windowTemp)) / perWindow,
    windowReflectance: windowKnown && !Number.isNaN(s.outerReflected) ? (l.window - l.outerReflected) / perWindow : 0,
    outerReflected: (-s.windowReflectance * slopeAt(s.outerReflected)) / perWindow,
    outerAirTransmission: airKnown ? (l.air - outside) / perOuterAir : 0,
  };
}
