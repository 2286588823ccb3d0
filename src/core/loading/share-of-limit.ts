import { requireAirTemp } from "../air/limits.js";
import { requireTemperature } from "../correction/settings.js";
import { requireAbove } from "./limit-at-load.js";

export interface ShareOfLimitInputs {
  /** Temperature of the part [K]. */
  readonly temp: number;
  /** Temperature it may reach [K]. */
  readonly limit: number;
  /** The air around it [K]. */
  readonly surroundingAir: number;
}

/**
 * How much of the permitted rise a part shows [-]: (temp − air)/(limit − air). 1 is the limit; below 0 it is colder than
 * the air.
 * @throws INVALID (which argument), REFUSED "limit" (not above the air)
 */
export function shareOfLimit({ temp, limit, surroundingAir }: ShareOfLimitInputs): number {
  requireTemperature("temp", temp);
  requireTemperature("limit", limit);
  requireAirTemp(surroundingAir, "surrounding_air");
  requireAbove("limit", limit, surroundingAir);
  return (temp - surroundingAir) / (limit - surroundingAir);
}
