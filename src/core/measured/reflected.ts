import { requireFraction, requireTemperature, temperatureWhere } from "../correction/settings.js";
import { GreybodyError } from "../errors.js";
import type { Range } from "../errors.js";
import type { Band } from "../planck/band.js";
import { radiance, temperature } from "../planck/exact.js";

/** Reflectance of a reflector held into the picture [-]. */
export const REFLECTOR_REFLECTANCE: Range = { min: 0, minExcluded: true, max: 1 };
/** Share of what a surface mirrors [-]. */
export const SHARE: Range = { min: 0, max: 1 };
/** How far shares may miss 1 together: thirds typed with six digits, and no more. */
const SHARES_SLACK = 1e-6 + 1e-9;

export interface ReflectorInputs {
  /** What the camera shows of the reflector with its own settings at 1 [K]. */
  readonly apparent: number;
  /** Reflectance of the reflector [-], above 0 to 1; 1 where absent. */
  readonly reflectance?: number;
  /** The reflector's own temperature [K]; required where its reflectance is below 1. */
  readonly reflectorTemp?: number;
}

/**
 * Reflected apparent temperature [K] off a reflector in the place of the surface: what it emits itself is taken out.
 * @throws INVALID, NOT_GIVEN (which argument), NO_SOLUTION (the reflector alone would show more)
 * Source: ASTM E1862-14 (reflector method).
 */
export function reflectedByReflector(inputs: ReflectorInputs, band: Band): number {
  const { apparent, reflectance = 1 } = inputs;
  requireTemperature("apparent", apparent);
  requireFraction("reflector_reflectance", reflectance, REFLECTOR_REFLECTANCE);
  const own = temperatureWhere(reflectance < 1, "reflector_temp", inputs.reflectorTemp, "reflector-temp-needed");
  if (reflectance === 1) return apparent;
  const emitted = (1 - reflectance) * radiance(band, own);
  const mirrored = (radiance(band, apparent) - emitted) / reflectance;
  if (mirrored > 0) return held("apparent", apparent, temperature(band, mirrored));
  const alone = held("apparent", apparent, temperature(band, emitted));
  const hint = { key: "reflector-alone", values: { temperature: alone } };
  throw new GreybodyError({ code: "NO_SOLUTION", argument: "apparent", given: apparent, hint });
}

export interface MixInputs {
  /** Apparent temperatures of what is mirrored [K]; undefined where not given. */
  readonly temps: readonly (number | undefined)[];
  /** The share of each [-], 1 together; undefined where not given. */
  readonly shares: readonly (number | undefined)[];
}

/**
 * Reflected apparent temperature [K] of surroundings at several temperatures: mixed in radiance, not in degrees. A part
 * without share and temperature is passed over; a share of 0 needs no temperature.
 * @throws INVALID (a temperature, a share, shares that miss 1 by more than 1e-6), NOT_GIVEN (which part)
 * Source: the reflected term of ISO 18434-1, a sum over the surroundings.
 */
export function reflectedMix({ temps, shares }: MixInputs, band: Band): number {
  let mixed = 0;
  let sum = 0;
  for (let i = 0; i < Math.max(temps.length, shares.length); i++) {
    const temp = temps[i];
    const share = shares[i];
    if (temp !== undefined) requireTemperature("temps", temp);
    if (share !== undefined) requireFraction("shares", share, SHARE);
    if (share === undefined && temp !== undefined) throw notGiven("shares", "mix-share", i + 1);
    if (share === undefined || share === 0) continue;
    if (temp === undefined) throw notGiven("temps", "mix-temp", i + 1);
    mixed += share * radiance(band, temp);
    sum += share;
  }
  if (sum === 0) throw new GreybodyError({ code: "NOT_GIVEN", argument: "shares", hint: { key: "mix-empty" } });
  if (Math.abs(sum - 1) > SHARES_SLACK) {
    throw new GreybodyError({ code: "INVALID", argument: "shares", hint: { key: "mix-sum", values: { sum } } });
  }
  return held("temps", temps[0] ?? NaN, temperature(band, mixed / sum));
}

function notGiven(argument: string, key: string, part: number): GreybodyError {
  return new GreybodyError({ code: "NOT_GIVEN", argument, hint: { key, values: { part } } });
}

/** The temperature, unless so little is radiated that no double holds it. */
function held(argument: string, given: number, found: number): number {
  if (Number.isFinite(found)) return found;
  throw new GreybodyError({ code: "NO_SOLUTION", argument, given, hint: { key: "no-radiance" } });
}
