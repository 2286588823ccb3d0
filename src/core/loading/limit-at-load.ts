import { RULES } from "../../data/rules.js";
import { requireAirTemp } from "../air/limits.js";
import { ZERO_CELSIUS } from "../constants.js";
import { requireTemperature } from "../correction/settings.js";
import { GreybodyError, requireInRange } from "../errors.js";
import type { Range } from "../errors.js";
import { completeLaw, loadRatio, RATIO_SLACK } from "./load.js";
import type { LoadLaw } from "./load.js";

/** A rise that a standard permits [K]. */
export const RATED_RISE: Range = { min: 0, minExcluded: true, max: 500 };
/** Air up to which a permitted rise stands alone [K]. */
const RATED_AIR = RULES.rated_air.value + ZERO_CELSIUS;

export interface LimitAtLoadInputs extends LoadLaw {
  /** Rise permitted at the rated load [K]. */
  readonly ratedRise: number;
  /** Load as found, in the unit of the rated load. */
  readonly load: number;
  readonly ratedLoad: number;
  /** The air the rise is over [K]. */
  readonly surroundingAir: number;
  /** Temperature never to be exceeded [K]; needed above the rated load and in air above 40 °C. */
  readonly maximumTemp?: number;
}

/**
 * Temperature that a sound part may reach at the load found [K]: air + rated rise·(load/rated load)ⁿ, and never more than
 * the highest temperature permitted.
 * @throws INVALID (which argument), REFUSED (no current, too little load, no highest temperature where one is needed)
 * Source: scaling of IEEE C37.010 (from memory); air at most 40 °C from IEC 60694:1996, Table 3.
 */
export function limitAtLoad(inputs: LimitAtLoadInputs): number {
  const { ratedRise, load, ratedLoad, surroundingAir, maximumTemp, ...law } = inputs;
  const { exponent, minimumLoad } = completeLaw(law);
  requireInRange("rated_rise", ratedRise, RATED_RISE);
  requireAirTemp(surroundingAir, "surrounding_air");
  const ratio = loadRatio({ argument: "load", value: load }, { argument: "rated_load", value: ratedLoad }, minimumLoad);
  const scaled = surroundingAir + ratedRise * ratio ** exponent;
  if (maximumTemp === undefined) {
    requireOrdinary(load, ratio, surroundingAir);
    return scaled;
  }
  requireTemperature("maximum_temp", maximumTemp);
  requireAbove("maximum_temp", maximumTemp, surroundingAir);
  return Math.min(maximumTemp, scaled);
}

/** A permitted rise alone says nothing above its load or in air hotter than it was set for. */
function requireOrdinary(load: number, ratio: number, surroundingAir: number): void {
  if (ratio > 1 + RATIO_SLACK) {
    const hint = { key: "overload-needs-maximum", values: { load, ratio } };
    throw new GreybodyError({ code: "REFUSED", argument: "maximum_temp", hint });
  }
  if (surroundingAir > RATED_AIR * (1 + RATIO_SLACK)) {
    const hint = { key: "hot-air-needs-maximum", values: { surrounding_air: surroundingAir, most: RATED_AIR } };
    throw new GreybodyError({ code: "REFUSED", argument: "maximum_temp", hint });
  }
}

/** @throws REFUSED "limit-not-above-air": nothing is left for the part itself */
export function requireAbove(argument: string, limit: number, surroundingAir: number): void {
  if (limit > surroundingAir) return;
  const hint = { key: "limit-not-above-air", values: { limit, surrounding_air: surroundingAir } };
  throw new GreybodyError({
    code: "REFUSED",
    argument,
    given: limit,
    allowed: { min: surroundingAir, minExcluded: true },
    hint,
  });
}
