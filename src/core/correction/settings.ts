import { GreybodyError, requireInRange } from "../errors.js";
import type { Hint, Range } from "../errors.js";
import { EMISSIVITY, REFLECTANCE, SUM_SLACK, TEMPERATURE, TRANSMISSION } from "../limits.js";

/**
 * What stands between an object and the reading of it. Temperatures [K], the rest fractions [-].
 * Names and roles as in ISO 18434-1; the window's own terms as in the measurement equation of equation.ts.
 */
export interface Settings {
  /** Emissivity of the surface, above 0 to 1. */
  readonly emissivity: number;
  /** Reflected apparent temperature on the object's side. */
  readonly reflected: number;
  /** Transmission of the air between object and window (or camera); 1 where absent. */
  readonly airTransmission?: number;
  /** Temperature of the air on the path; required where a transmission of air is below 1. */
  readonly airTemp?: number;
  /** Transmission of the window; 1 where absent. */
  readonly windowTransmission?: number;
  /** Temperature of the window; required where its transmission is below 1. */
  readonly windowTemp?: number;
  /** Reflectance of the window on the camera's side; 0 where absent. */
  readonly windowReflectance?: number;
  /** Reflected apparent temperature on the camera's side; required where the window reflects. */
  readonly outerReflected?: number;
  /** Transmission of the air between window and camera; 1 where absent. */
  readonly outerAirTransmission?: number;
}

/** Settings with every default in its place; NaN stands for a temperature that plays no part. */
export interface CompleteSettings {
  readonly emissivity: number;
  readonly reflected: number;
  readonly airTransmission: number;
  readonly airTemp: number;
  readonly windowTransmission: number;
  readonly windowTemp: number;
  readonly windowReflectance: number;
  readonly outerReflected: number;
  readonly outerAirTransmission: number;
}

/** The range of each setting, by its name. */
export const SETTING_LIMITS: { readonly [Name in keyof Required<Settings>]: Range } = {
  emissivity: EMISSIVITY,
  reflected: TEMPERATURE,
  airTransmission: TRANSMISSION,
  airTemp: TEMPERATURE,
  windowTransmission: TRANSMISSION,
  windowTemp: TEMPERATURE,
  windowReflectance: REFLECTANCE,
  outerReflected: TEMPERATURE,
  outerAirTransmission: TRANSMISSION,
};

/** From 2 on per cent may be meant; just above 1 a fraction was meant and is wrong. */
function fractionHint(value: number): Hint | undefined {
  return value >= 2 && value <= 100 ? { key: "per-cent", values: { meant: value / 100 } } : undefined;
}

export function requireTemperature(argument: string, value: number): void {
  requireInRange(argument, value, TEMPERATURE, value <= 0 ? { key: "absolute-zero" } : undefined);
}

/** @throws INVALID; from 2 on it asks whether per cent were meant */
export function requireFraction(argument: string, value: number, allowed: Range): void {
  requireInRange(argument, value, allowed, fractionHint(value));
}

/** @throws INVALID; a 0 is told to be an empty cell, maybe */
export function requireTransmission(argument: string, value: number): void {
  requireInRange(argument, value, TRANSMISSION, value === 0 ? { key: "zero-or-empty" } : fractionHint(value));
}

/** A temperature that is needed under a condition; NaN where it plays no part. @throws INVALID, NOT_GIVEN */
export function temperatureWhere(
  needed: boolean,
  argument: string,
  value: number | undefined,
  because: string,
): number {
  if (value !== undefined) requireTemperature(argument, value);
  else if (needed) throw new GreybodyError({ code: "NOT_GIVEN", argument, hint: { key: because } });
  return value ?? NaN;
}

/**
 * Checks every setting and fills in the defaults.
 * @throws INVALID, NOT_GIVEN with the name of the setting
 */
export function completeSettings(s: Settings): CompleteSettings {
  const { airTransmission = 1, windowTransmission = 1, windowReflectance = 0, outerAirTransmission = 1 } = s;
  requireFraction("emissivity", s.emissivity, EMISSIVITY);
  requireTemperature("reflected", s.reflected);
  requireTransmission("air_transmission", airTransmission);
  requireTransmission("window_transmission", windowTransmission);
  requireFraction("window_reflectance", windowReflectance, REFLECTANCE);
  requireTransmission("outer_air_transmission", outerAirTransmission);
  if (windowTransmission + windowReflectance > 1 + SUM_SLACK) {
    // 1 is the default: whoever gave a reflectance alone is not helped by a sum he did not write.
    const key = windowTransmission === 1 ? "window-transmission-needed" : "window-sum";
    throw new GreybodyError({
      code: "INVALID",
      argument: "window_reflectance",
      given: windowReflectance,
      allowed: { min: 0, max: 1 - windowTransmission },
      hint: { key, values: { window_transmission: windowTransmission } },
    });
  }
  const throughAir = airTransmission < 1 || outerAirTransmission < 1;
  return {
    emissivity: s.emissivity,
    reflected: s.reflected,
    airTransmission,
    airTemp: temperatureWhere(throughAir, "air_temp", s.airTemp, "air-temp-needed"),
    windowTransmission,
    windowTemp: temperatureWhere(windowTransmission < 1, "window_temp", s.windowTemp, "window-temp-needed"),
    windowReflectance,
    outerReflected: temperatureWhere(
      windowReflectance > 0,
      "outer_reflected",
      s.outerReflected,
      "outer-reflected-needed",
    ),
    outerAirTransmission,
  };
}
