import { requireAirTemp } from "../air/limits.js";
import { requireTemperature } from "../correction/settings.js";
import { GreybodyError, requireInRange } from "../errors.js";
import { LOAD, REFERENCE_LOAD, RISE } from "../loading/load.js";
import { AS_STATED } from "./explain.js";
import { DEFAULT_TOLERANCE, judge, TOLERANCE } from "./judge.js";
import type { Explanation } from "./judge.js";
import { OTHER_READING, Phases, RISE_SLIPS, rightRise, tooLittle } from "./rise-slips.js";
import type { RiseCase } from "./rise-slips.js";

export type RiseSlipKey = (typeof RISE_SLIPS)[number]["key"];

export interface RiseExplanation extends Explanation<RiseSlipKey | typeof AS_STATED> {
  /** How far apart the rises of the others are [K], where they make no single reference. */
  readonly othersApart: number | undefined;
  /** The smallest load over the one that rises are brought to, where that is too little to project from. */
  readonly notProjected: number | undefined;
}

const orUndefined = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined);

/**
 * Which usual slips would give a stated rise. As stated is each phase's rise over the same air brought to one load with
 * the exponent 1.8, the hot one less the mean of the others; where the others are no single reference (further apart than
 * 3 K and 15 %) the hot one less the lowest is no slip but the other reading. Where a load is below 40 % of the one that
 * rises are brought to, what would be projected has no answer.
 * @param stated [K]
 * @param tolerance [K], half the last digit stated; 0.05 K where absent
 * @throws INVALID (which argument)
 */
export function explainRise(stated: number, given: RiseCase, tolerance = DEFAULT_TOLERANCE): RiseExplanation {
  requireInRange("stated", stated, RISE);
  requireInRange("tolerance", tolerance, TOLERANCE);
  requireCase(given);
  const phases = new Phases(given);
  const { othersApart, smallestShare } = phases;
  const right = { key: AS_STATED, gives: orUndefined(rightRise(phases)) } as const;
  const isReading = (key: RiseSlipKey): boolean => othersApart !== undefined && key === OTHER_READING;
  const all = RISE_SLIPS.map(({ key, apply }) => ({ key, gives: orUndefined(apply(phases)) }));
  const slips = all.filter(({ key }) => !isReading(key));
  const also = all.filter(({ key }) => isReading(key));
  return {
    ...judge<RiseSlipKey | typeof AS_STATED>(stated, right, slips, tolerance, also),
    othersApart,
    notProjected: tooLittle(smallestShare) ? smallestShare : undefined,
  };
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
