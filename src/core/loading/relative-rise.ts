import { RULES } from "../../data/rules.js";
import { requireAirTemp } from "../air/limits.js";
import { requireTemperature } from "../correction/settings.js";
import { GreybodyError, requireInRange } from "../errors.js";
import { LOAD, loadDifference, RATIO_SLACK, requireCurrent } from "./load.js";

export interface RelativeRiseInputs {
  /** Temperature of the hotter part [K]. */
  readonly hot: number;
  /** Temperature of a like part that is sound [K]. */
  readonly normal: number;
  /** The air around both [K]. */
  readonly surroundingAir: number;
  /** Loads of the two parts; compared where both are given. */
  readonly hotLoad?: number;
  readonly normalLoad?: number;
}

/**
 * Relative rise [-]: (hot − normal)/(hot − air). To first order it does not depend on the load, so it serves where the
 * load is light.
 * @throws INVALID (which argument), REFUSED (hot less than 10 K over the air, normal colder than the air or hotter than
 * hot, loads that differ by more than 10 %, a part without current)
 * Source: formula and 10 K of DL/T 664 (as quoted); the other limits are ours.
 */
export function relativeRise({ hot, normal, surroundingAir, hotLoad, normalLoad }: RelativeRiseInputs): number {
  requireTemperature("hot", hot);
  requireTemperature("normal", normal);
  requireAirTemp(surroundingAir, "surrounding_air");
  requireLikeLoads(hotLoad, normalLoad);
  const rise = hot - surroundingAir;
  const refuse = (argument: string, given: number, key: string, values: Record<string, number>): GreybodyError =>
    new GreybodyError({ code: "REFUSED", argument, given, hint: { key, values } });
  const floor = RULES.relative_rise_floor.value;
  if (rise < floor - RATIO_SLACK) throw refuse("hot", hot, "rise-below-floor", { rise, floor });
  const below = RULES.normal_below_air.value;
  if (normal < surroundingAir - below - RATIO_SLACK) {
    throw refuse("normal", normal, "normal-below-air", { normal, surrounding_air: surroundingAir, most: below });
  }
  if (hot - normal < -RULES.colder_than_similar.value - RATIO_SLACK)
    throw refuse("hot", hot, "hot-below-normal", { hot, normal });
  return (hot - normal) / rise;
}

function requireLikeLoads(hotLoad: number | undefined, normalLoad: number | undefined): void {
  if (hotLoad !== undefined) requireInRange("hot_load", hotLoad, LOAD);
  if (normalLoad !== undefined) requireInRange("normal_load", normalLoad, LOAD);
  if (hotLoad === undefined || normalLoad === undefined) return;
  requireCurrent({ argument: "hot_load", value: hotLoad });
  requireCurrent({ argument: "normal_load", value: normalLoad });
  const difference = loadDifference(hotLoad, normalLoad);
  const most = RULES.load_difference_most.value;
  if (difference <= most + RATIO_SLACK) return;
  const hint = { key: "loads-differ", values: { hot_load: hotLoad, normal_load: normalLoad, difference, most } };
  throw new GreybodyError({ code: "REFUSED", argument: "hot_load", given: hotLoad, hint });
}
