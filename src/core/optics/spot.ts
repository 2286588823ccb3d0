import { RULES } from "../../data/rules.js";
import { inRange, requireInRange } from "../errors.js";
import type { Hint, Range } from "../errors.js";

/** From the camera to the target [m]. */
export const SPOT_DISTANCE: Range = { min: 0, minExcluded: true, max: 1000 };
/** What a target measures across [m]; 10.16 m are 400 inches. */
export const TARGET: Range = { min: 0, minExcluded: true, max: 10.16 };
/** Angle that one pixel sees [rad]. */
export const IFOV: Range = { min: 1e-5, max: 0.1 };
/** Pixels across a target. */
export const PIXELS: Range = { min: 1, max: 100 };

export interface SpotSizeInputs {
  /** From the camera to the target [m], above 0 to 1000. */
  readonly distance: number;
  /** Angle that one pixel sees [rad], 1e-5 to 0.1. */
  readonly ifov: number;
  /** Pixels across that are needed to measure, 1 to 100; 3 where absent. */
  readonly pixels?: number;
}

/**
 * Smallest target that can be measured from a distance [m]: pixels·ifov·distance; with one pixel what a pixel covers.
 * Small angles: below 1 % at the largest angle allowed and three pixels.
 * @throws INVALID (which argument)
 * Source: an infrared handbook, p. 350 (mm = m × mrad) and p. 163 (about three pixels to measure).
 */
export function spotSize({ distance, ifov, pixels = RULES.spot_pixels.value }: SpotSizeInputs): number {
  requireInRange("distance", distance, SPOT_DISTANCE);
  return angleOf(ifov, pixels) * distance;
}

export interface FarthestInputs {
  /** What the target measures across [m], above 0 to 10.16. */
  readonly target: number;
  /** As in `SpotSizeInputs`. */
  readonly ifov: number;
  readonly pixels?: number;
}

/**
 * Largest distance from which a target can be measured [m]: `spotSize` the other way round.
 * @throws INVALID (which argument)
 * Source: as `spotSize`.
 */
export function farthest({ target, ifov, pixels = RULES.spot_pixels.value }: FarthestInputs): number {
  requireInRange("target", target, TARGET);
  return target / angleOf(ifov, pixels);
}

function angleOf(ifov: number, pixels: number): number {
  requireInRange("ifov", ifov, IFOV, ifovHint(ifov));
  requireInRange("pixels", pixels, PIXELS);
  return pixels * ifov;
}

/** What is typed in mrad but far too small was meant in rad; far too large, the whole picture was meant. */
function ifovHint(ifov: number): Hint | undefined {
  const asRadians = ifov * 1000;
  if (inRange(asRadians, IFOV)) return { key: "ifov-radians", values: { meant: asRadians * 1000 } };
  return ifov > (IFOV.max ?? Infinity) ? { key: "ifov-of-picture" } : undefined;
}
