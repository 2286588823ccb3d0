import { RULES } from "../../data/rules.js";
import { requireFraction, requireTemperature, temperatureWhere } from "../correction/settings.js";
import { GreybodyError } from "../errors.js";
import { REFLECTANCE, SUM_SLACK } from "../limits.js";
import { requireContrast } from "../measured/contrast.js";
import type { Band } from "../planck/band.js";
import { radiance } from "../planck/exact.js";

export interface WindowTransmissionInputs {
  /** What the camera shows of a target without the window, with its own settings at 1 [K]. */
  readonly readingWithout: number;
  /** The same target through the window [K]. */
  readonly readingWith: number;
  readonly windowTemp: number;
  /** Reflectance of the window on the camera's side [-]; 0 where absent. */
  readonly windowReflectance?: number;
  /** Reflected apparent temperature on the camera's side [K]; required where the window reflects. */
  readonly outerReflected?: number;
}

/**
 * Transmission of a window [-], 0.05 to 1, from one target read without it and through it. Both readings are taken from
 * the same place; air that counts is taken out of both beforehand (`correct` with an emissivity of 1).
 * @throws INVALID, NOT_GIVEN (which argument), REFUSED (target and window less than 10 K apart), NO_SOLUTION (the window
 * would let through next to nothing, or more than there is)
 * Source: ASTM E1897-14, with the window's own terms of equation.ts.
 */
export function windowTransmission(inputs: WindowTransmissionInputs, band: Band): number {
  const { readingWithout, readingWith, windowTemp, windowReflectance = 0 } = inputs;
  requireTemperature("reading_without", readingWithout);
  requireTemperature("reading_with", readingWith);
  requireTemperature("window_temp", windowTemp);
  requireFraction("window_reflectance", windowReflectance, REFLECTANCE);
  const outer = temperatureWhere(
    windowReflectance > 0,
    "outer_reflected",
    inputs.outerReflected,
    "outer-reflected-needed",
  );
  const least = RULES.window_contrast_least.value;
  requireContrast("reading_without", readingWithout, windowTemp, least, "window-contrast");
  const own = radiance(band, windowTemp);
  const mirrored = windowReflectance === 0 ? 0 : windowReflectance * (radiance(band, outer) - own);
  const found = (radiance(band, readingWith) - own - mirrored) / (radiance(band, readingWithout) - own);
  return requirePossible(found, windowReflectance, "reading_with", readingWith);
}

export interface WindowTransmissionPairInputs {
  /** Readings of a hot target without and through the window, with the camera's own settings at 1 [K]. */
  readonly hotWithout: number;
  readonly hotThrough: number;
  /** The same of a cold target, in the same surroundings [K]. */
  readonly coldWithout: number;
  readonly coldThrough: number;
}

/**
 * Transmission of a window [-], 0.05 to 1, from two targets: what the window emits and reflects, and what the air adds,
 * is in both and falls out, so no temperature of the window is needed.
 * @throws INVALID (which argument), REFUSED (hot and cold less than 10 K apart), NO_SOLUTION (as `windowTransmission`)
 * Source: ASTM E1897-14; the difference of two measurement equations.
 */
export function windowTransmissionPair(inputs: WindowTransmissionPairInputs, band: Band): number {
  const { hotWithout, hotThrough, coldWithout, coldThrough } = inputs;
  requireTemperature("hot_without", hotWithout);
  requireTemperature("hot_through", hotThrough);
  requireTemperature("cold_without", coldWithout);
  requireTemperature("cold_through", coldThrough);
  requireContrast("hot_without", hotWithout, coldWithout, RULES.window_contrast_least.value, "pair-contrast");
  const through = radiance(band, hotThrough) - radiance(band, coldThrough);
  const without = radiance(band, hotWithout) - radiance(band, coldWithout);
  return requirePossible(through / without, 0, "hot_through", hotThrough);
}

/** The transmission, unless no window has it; what rounding alone puts above 1 is 1. */
function requirePossible(transmission: number, reflectance: number, argument: string, given: number): number {
  const most = 1 - reflectance;
  const least = RULES.window_transmission_least.value;
  const isPair = argument === "hot_through";
  const refuse = (key: string): GreybodyError => {
    const hint = { key, values: { transmission, most, least } };
    return new GreybodyError({ code: "NO_SOLUTION", argument, given, hint });
  };
  if (!Number.isFinite(transmission)) throw refuse("no-radiance");
  if (transmission > most + SUM_SLACK) throw refuse("window-above-most");
  if (transmission <= SUM_SLACK) throw refuse(isPair ? "pair-opaque" : "window-opaque");
  if (transmission < least - SUM_SLACK) throw refuse(isPair ? "pair-below-least" : "window-below-least");
  return Math.min(1, transmission);
}
