import { RULES } from "../../data/rules.js";
import { GreybodyError, requireInRange } from "../errors.js";
import { completeLaw, loadRatio, RATIO_SLACK, RISE } from "./load.js";
import type { LoadLaw, NamedLoad } from "./load.js";

export interface RiseAtLoadInputs extends LoadLaw {
  /** Rise as found [K]. */
  readonly rise: number;
  /** Load as found, in the unit of the reference. */
  readonly load: number;
  readonly referenceLoad: number;
}

/**
 * A rise as it would be at another load [K]: rise·(reference/load)ⁿ. For the fault as it is: the resistance of a joint
 * that fails grows, so read it as "at least".
 * @throws INVALID (which argument), REFUSED (no current, too little load, a factor too large, colder than the air)
 * Source: n as in rules.json (1.6 to 2, 1.8 where not given); least load NFPA 70B-2023, 7.4.5.
 */
export function riseAtLoad({ rise, load, referenceLoad, ...law }: RiseAtLoadInputs): number {
  const { exponent, minimumLoad } = completeLaw(law);
  requireInRange("rise", rise, RISE);
  requireNotColder("rise", rise);
  const found = { argument: "load", value: load };
  const ratio = loadRatio(found, { argument: "reference_load", value: referenceLoad }, minimumLoad);
  return rise * projection(found, ratio, exponent, minimumLoad);
}

/**
 * A rise that the current can have made, but for the chance of two readings.
 * @throws REFUSED "negative-rise"
 */
export function requireNotColder(argument: string, rise: number): void {
  if (rise < -RULES.colder_than_ambient.value - RATIO_SLACK) {
    throw new GreybodyError({
      code: "REFUSED",
      argument,
      given: rise,
      hint: { key: "negative-rise", values: { rise } },
    });
  }
}

/**
 * Factor of a rise from a load that is `ratio` of the reference to the reference.
 * At most 6.25, or what the square law gives at a smaller minimum that was asked for.
 * @throws REFUSED "factor-too-large"
 */
export function projection(load: NamedLoad, ratio: number, exponent: number, minimumLoad: number): number {
  const factor = ratio ** -exponent;
  const most = Math.max(RULES.factor_most.value, minimumLoad ** -RULES.exponent_high.value);
  if (factor > most * (1 + RATIO_SLACK)) {
    throw new GreybodyError({
      code: "REFUSED",
      argument: load.argument,
      given: load.value,
      hint: { key: "factor-too-large", values: { factor, most, exponent, ratio } },
    });
  }
  return factor;
}
