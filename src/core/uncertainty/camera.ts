import { RULES } from "../../data/rules.js";
import { ZERO_CELSIUS } from "../constants.js";
import { GreybodyError, requireInRange } from "../errors.js";
import type { Range } from "../errors.js";
import { requireTemperature } from "../correction/settings.js";
import { standardUncertainty } from "./inputs.js";

/** A camera's stated accuracy: in kelvin, and as a share of its reading in °C [-]. */
export const ACCURACY: Range = { min: 0, max: 100 };
export const ACCURACY_SHARE: Range = { min: 0, max: 0.5 };

/**
 * Standard uncertainty [K] of a camera's reading from its stated accuracy, the greater of two half-widths, rectangular.
 * @param reading apparent temperature [K]; the share is of its amount in °C
 * @param absolute half-width [K]
 * @param share half-width as a share of the reading in °C [-]
 * @throws INVALID "reading", "absolute", "percent"
 * Source: JCGM 100:2008, 4.3.7, unless the certificate says otherwise.
 */
export function cameraUncertainty(reading: number, absolute: number, share: number): number {
  requireTemperature("reading", reading);
  requireInRange("absolute", absolute, ACCURACY);
  requireInRange("percent", share, ACCURACY_SHARE);
  if (share > 0 && share < RULES.camera_accuracy_share_least.value) {
    const hint = { key: "percent-meant", values: { meant: share * 100 } };
    throw new GreybodyError({ code: "INVALID", argument: "percent", given: share, hint });
  }
  if (absolute === 0 && share === 0) {
    throw new GreybodyError({ code: "INVALID", argument: "absolute", given: absolute, hint: { key: "camera-exact" } });
  }
  return standardUncertainty(Math.max(absolute, share * Math.abs(reading - ZERO_CELSIUS)), "rectangular");
}
