import { requireAirTemp } from "../air/limits.js";
import { requireTemperature } from "../correction/settings.js";
import { GreybodyError, requireInRange } from "../errors.js";
import { LOAD, REFERENCE_LOAD, RISE } from "../loading/load.js";
import { AS_STATED } from "./explain.js";
import { DEFAULT_TOLERANCE, judge, TOLERANCE } from "./judge.js";
import type { Explanation } from "./judge.js";
import { Phases, RISE_SLIPS, rightRise } from "./rise-slips.js";
import type { RiseCase } from "./rise-slips.js";

export type RiseSlipKey = (typeof RISE_SLIPS)[number]["key"];

const orUndefined = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);

/**
 * Which usual slips would give a stated rise. As stated is each phase's rise over the same air brought to one load with
 * the exponent 1.8, the hot one less the mean of the others.
 * @param stated [K]
 * @param tolerance [K], half the last digit stated; 0.05 K where absent
 * @throws INVALID (which argument)
 */
export function explainRise(
  stated: number,
  given: RiseCase,
  tolerance = DEFAULT_TOLERANCE,
): Explanation<RiseSlipKey | typeof AS_STATED> {
  requireInRange("stated", stated, RISE);
  requireInRange("tolerance", tolerance, TOLERANCE);
  requireCase(given);
  const phases = new Phases(given);
  const slips = RISE_SLIPS.map(({ key, apply }) => ({ key, gives: orUndefined(apply(phases)) }));
  const right = { key: AS_STATED, gives: orUndefined(rightRise(phases)) } as const;
  return judge<RiseSlipKey | typeof AS_STATED>(stated, right, slips, tolerance);
}

function requireCase({ temps, loads, surroundingAir, referenceLoad }: RiseCase): void {
  const values = { temps: temps.length, loads: loads.length };
  if (temps.length !== 2 && temps.length !== 3) {
    throw new GreybodyError({ code: "INVALID", argument: "temps", hint: { key: "two-or-three-temps", values } });
  }
  if (loads.length !== temps.length) {
    throw new GreybodyError({ code: "INVALID", argument: "loads", hint: { key: "loads-of-temps", values } });
  }
  for (const temp of temps) requireTemperature("temps", temp);
  for (const load of loads) requireInRange("loads", load, LOAD);
  if (referenceLoad !== undefined) requireInRange("loads", referenceLoad, REFERENCE_LOAD);
  requireAirTemp(surroundingAir, "surrounding_air");
}
