import { RULES } from "../../data/rules.js";
import { GreybodyError, requireInRange } from "../errors.js";
import type { Range } from "../errors.js";

/** Slack of ratios that should meet a limit exactly (40 of 100 at 0.4), absolute. */
export const RATIO_SLACK = 1e-9;

/** Exponent of the current that a rise follows [-]. */
export const EXPONENT: Range = { min: RULES.exponent_least.value, max: RULES.exponent_most.value };
/** Smallest share of the reference load that is projected from [-]. */
export const MINIMUM_LOAD: Range = { min: RULES.minimum_load_least.value, max: 1 };
/** A load, in any unit that its reference has too: amperes, per cent, a fraction. */
export const LOAD: Range = { min: 0, max: 500_000 };
export const REFERENCE_LOAD: Range = { ...LOAD, minExcluded: true };
/** A rise [K]. */
export const RISE: Range = { min: -300, max: 3000 };

/** How a rise depends on load; every member has a default. */
export interface LoadLaw {
  /** Exponent of the current [-], 1…2.5; 1.8 where absent. */
  readonly exponent?: number;
  /** Smallest share of the reference load that is answered for [-], 0.1…1; 0.4 where absent. */
  readonly minimumLoad?: number;
}

/** The law with its defaults, checked. @throws INVALID "exponent", "minimum_load" */
export function completeLaw({
  exponent = RULES.exponent.value,
  minimumLoad = RULES.minimum_load.value,
}: LoadLaw): Required<LoadLaw> {
  requireInRange("exponent", exponent, EXPONENT);
  requireMinimumLoad(minimumLoad);
  return { exponent, minimumLoad };
}

/** @throws INVALID "minimum_load" */
function requireMinimumLoad(minimumLoad: number): void {
  const perCent = minimumLoad > 1 && minimumLoad <= 100;
  const hint = perCent ? { key: "per-cent", values: { meant: minimumLoad / 100 } } : undefined;
  requireInRange("minimum_load", minimumLoad, MINIMUM_LOAD, hint);
}

/** A load and the name of the argument that it came in. */
export interface NamedLoad {
  readonly argument: string;
  readonly value: number;
}

/**
 * load / reference, where the trade allows to reckon with it.
 * @throws INVALID a load that cannot be, or one in per cent against one as a fraction; REFUSED no current, or too little
 */
export function loadRatio(load: NamedLoad, reference: NamedLoad, minimumLoad: number): number {
  requireInRange(load.argument, load.value, LOAD);
  requireInRange(reference.argument, reference.value, REFERENCE_LOAD);
  requireCurrent(load);
  const ratio = load.value / reference.value;
  const values = { load: load.value, [reference.argument]: reference.value, ratio };
  if (ratio > RULES.load_ratio_most.value + RATIO_SLACK || ratio < RULES.load_ratio_least.value - RATIO_SLACK) {
    throw new GreybodyError({
      code: "INVALID",
      argument: load.argument,
      given: load.value,
      allowed: {
        min: RULES.load_ratio_least.value * reference.value,
        max: RULES.load_ratio_most.value * reference.value,
      },
      hint: { key: "per-cent-against-fraction", values },
    });
  }
  requireEnough(load, reference, minimumLoad);
  return ratio;
}

/** @throws REFUSED "no-current": heat that does not come from the current does not follow it */
export function requireCurrent(load: NamedLoad): void {
  if (load.value === 0) {
    throw new GreybodyError({ code: "REFUSED", argument: load.argument, given: 0, hint: { key: "no-current" } });
  }
}

/**
 * By how much the load of a hot part differs from that of what it is compared with [-]: |hot / reference − 1|. Up to 5 %
 * a difference of the two may be scaled, up to 10 % with care; beyond, each rise is brought to one load first.
 * Infinite against a part without load, 0 where neither has any. Source: ours (rules.json, load_difference_most).
 */
export function loadDifference(hot: number, reference: number): number {
  return hot === reference ? 0 : Math.abs(hot / reference - 1);
}

/** @throws REFUSED "load-below-minimum" */
export function requireEnough(load: NamedLoad, reference: NamedLoad, minimumLoad: number): void {
  const ratio = load.value / reference.value;
  if (ratio >= minimumLoad - RATIO_SLACK) return;
  throw new GreybodyError({
    code: "REFUSED",
    argument: load.argument,
    given: load.value,
    allowed: { min: minimumLoad * reference.value },
    hint: { key: "load-below-minimum", values: { ratio, minimum_load: minimumLoad, reference: reference.value } },
  });
}
