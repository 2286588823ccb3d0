import { RULES } from "../../data/rules.js";
import { GreybodyError, requireInRange } from "../errors.js";
import type { Range } from "../errors.js";
import { RATIO_SLACK, RISE } from "./load.js";
import { requireNotColder } from "./rise-at-load.js";

/** A wind that can be [m/s]; what is answered for is narrower. */
export const WIND: Range = { min: 0, max: 30 };
/** Power of the wind with which a rise falls [-]. */
export const WIND_EXPONENT: Range = { min: RULES.wind_exponent_least.value, max: RULES.wind_exponent_most.value };

export interface RiseAtWindInputs {
  /** Rise as found [K]. */
  readonly rise: number;
  /** Wind at the target as found [m/s], 1 to 7. */
  readonly wind: number;
  /** Wind to bring the rise to [m/s], 1 to 7; 1 where absent. */
  readonly referenceWind?: number;
  /** Power of the wind [-], 0.33 to 0.81; 0.54 where absent. */
  readonly exponent?: number;
}

/**
 * A rise as it would be in another wind [K], the heat being the same: rise·(wind/reference)^exponent. For bare small parts
 * seen directly, and as advice: a rise so changed is not graded as found. Up to 5 m/s the usual exponent is within 4 % of
 * Churchill & Bernstein for parts 20 to 50 mm across and within 6 % for 10 to 100 mm.
 * @throws INVALID (which argument), REFUSED (below 1 m/s, where calm is not defined; above 7 m/s; colder than the air)
 * Source: cross-flow over a cylinder, Hilpert 1933 (from memory), Churchill & Bernstein 1977; limits in rules.json.
 */
export function riseAtWind(inputs: RiseAtWindInputs): number {
  const { rise, wind, referenceWind = RULES.wind_least.value, exponent = RULES.wind_exponent.value } = inputs;
  requireInRange("rise", rise, RISE);
  requireInRange("wind", wind, WIND);
  requireInRange("reference_wind", referenceWind, WIND);
  requireInRange("exponent", exponent, WIND_EXPONENT);
  requireNotColder("rise", rise);
  requireAnswerable("wind", wind);
  requireAnswerable("reference_wind", referenceWind);
  return rise * (wind / referenceWind) ** exponent;
}

/** @throws REFUSED "wind-too-little", "wind-too-strong" */
function requireAnswerable(argument: string, wind: number): void {
  const least = RULES.wind_least.value;
  const most = RULES.wind_most.value;
  const refuse = (key: string): GreybodyError =>
    new GreybodyError({ code: "REFUSED", argument, given: wind, hint: { key, values: { wind, least, most } } });
  if (wind < least - RATIO_SLACK) throw refuse("wind-too-little");
  if (wind > most + RATIO_SLACK) throw refuse("wind-too-strong");
}
