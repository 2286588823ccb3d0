/** Arguments that the functions of severity share, and how they are read. */
import { GreybodyError } from "../core/errors.js";
import { RISE } from "../core/loading/load.js";
import { REFERENCE_KINDS, VIEWS } from "../core/severity/criteria.js";
import type { CriteriaSet } from "../data/criteria.js";
import type { ArgumentSpec } from "./contract.js";
import type { Values } from "./lift.js";
import { fromSI, unitOf } from "./units.js";

export const RISE_ARGUMENT: ArgumentSpec = {
  name: "rise",
  quantity: "difference",
  help: 'rise over its reference; with reference "limit" the share of the permitted rise, a fraction',
  range: RISE,
};
export const REFERENCE_ARGUMENT: ArgumentSpec = {
  name: "reference",
  quantity: "text",
  help: "what the rise is over; there is no default",
  choices: REFERENCE_KINDS,
};
export const VIEW_ARGUMENT: ArgumentSpec = {
  name: "view",
  quantity: "text",
  help: "how the part was seen",
  optional: true,
  default: "direct",
  choices: VIEWS,
};

/** A difference of the sheet as the core takes it: against a limit it is a share, which no unit changes. */
export function difference(values: Values, name: string, isShare: boolean): number {
  const si = values.number(name);
  return isShare ? fromSI(si, unitOf("difference", values.units)) : si;
}

export const criteriaOf = (whole: unknown): CriteriaSet => whole as CriteriaSet;

/** Runs a grading; against a limit a range in kelvin would mislead, so the message names the share instead. */
export function againstLimit<Result>(isShare: boolean, work: () => Result): Result {
  try {
    return work();
  } catch (error) {
    if (!isShare || !(error instanceof GreybodyError) || error.code !== "INVALID" || error.argument !== "rise")
      throw error;
    throw new GreybodyError({ code: "INVALID", argument: "rise", hint: error.hint ?? { key: "share-of-limit" } });
  }
}
