/** A rise that a report has brought to another load. */
import { ZERO_CELSIUS } from "../../constants.js";
import { RULES } from "../../../data/rules.js";
import type { Claim, Printed } from "./claim.js";
import { candidate, differenceVerdict, type NumberVerdict } from "./number.js";
import type { Missing, Recomputed } from "./recompute.js";
import { type Ends, riseOf } from "./rise.js";

/** The exponents that reports go by; a report that names none is held to any of them. */
const USUAL_EXPONENTS = [1.8, 1.6, 2] as const;

/** Currents further apart than this make a difference between two phases no single phase's rise. */
const UNEQUAL = 0.1;

export function isUnequal({ load, loadOfReference }: Claim): boolean {
  if (load === undefined || loadOfReference === undefined || loadOfReference.value === 0) return false;
  return Math.abs(load.value / loadOfReference.value - 1) > UNEQUAL + 1e-9;
}

/** The share of the load that the rise is brought to; undefined where one is not given. */
function loadShare({ load, referenceLoad }: Claim): number | undefined {
  if (load === undefined || referenceLoad === undefined || referenceLoad.value === 0) return undefined;
  return load.value / referenceLoad.value;
}

/** Each phase's rise over the same air at the common load where currents are unequal, else the difference scaled. */
function atLoad(claim: Claim, ends: Ends, exponent: number): Omit<Recomputed, "given"> {
  const { load, loadOfReference, referenceLoad, surroundingAir, reference } = claim;
  const missing: Missing[] = [];
  if (load === undefined) missing.push("load");
  if (referenceLoad === undefined) missing.push("reference_load");
  const rise = riseOf(ends);
  if (load === undefined || referenceLoad === undefined || rise.value === undefined)
    return { ...rise, value: undefined, missing: [...rise.missing, ...missing], span: undefined };
  const factor = (referenceLoad.value / load.value) ** exponent;
  // Half a digit of each current, in first order.
  const ofLoads = exponent * (load.half / load.value + referenceLoad.half / referenceLoad.value);
  const separately = reference !== "ambient" && isUnequal(claim) && loadOfReference !== undefined;
  if (separately && surroundingAir === undefined)
    return { ...rise, value: undefined, missing: ["surrounding_air"], span: undefined };
  const value = separately
    ? (ends.hot.value! - surroundingAir!.value) * factor -
      (ends.reference.value! - surroundingAir!.value) * (referenceLoad.value / loadOfReference.value) ** exponent
    : rise.value * factor;
  const largest = separately ? Math.abs(ends.hot.value! - surroundingAir!.value) * factor : Math.abs(value);
  return {
    value,
    inputTolerance: rise.inputTolerance * factor + largest * ofLoads + (separately ? surroundingAir!.half * factor : 0),
    missing: rise.missing,
    span: rise.span && [rise.span[0] * factor, rise.span[1] * factor],
    impossible: false,
  };
}

/** The report's own rise may be what it scaled: both are tried. */
export function atLoadVerdict(stated: Printed, claim: Claim, ends: Ends): NumberVerdict {
  const exponents = claim.exponent === undefined ? USUAL_EXPONENTS : [claim.exponent];
  for (const exponent of exponents) {
    const found = differenceVerdict(stated, atLoad(claim, ends, exponent), []);
    if (found.kind === "reproduced") return claim.exponent === undefined ? { ...found, exponent } : found;
  }
  const [exponent] = exponents;
  const found = atLoad(claim, ends, exponent);
  return differenceVerdict(stated, found, slips(claim, ends, exponent));
}

function slips(claim: Claim, ends: Ends, exponent: number): { key: string; gives: number | undefined }[] {
  const { load, loadOfReference, referenceLoad, ratedLoad, statedRise, surroundingAir } = claim;
  const rise = riseOf(ends).value;
  const at = (
    base: number | undefined,
    from: number | undefined,
    to: number | undefined,
    n: number,
  ): number | undefined =>
    base === undefined || from === undefined || to === undefined || from === 0 ? undefined : base * (to / from) ** n;
  const [from, to] = [load?.value, referenceLoad?.value];
  const scaledTemp = at(ends.hot.value === undefined ? undefined : ends.hot.value - ZERO_CELSIUS, from, to, exponent);
  const air = surroundingAir?.value;
  const all = [
    candidate("of-stated-rise", at(statedRise?.value, from, to, exponent)),
    candidate("not-adjusted", rise),
    ...[1, 1.6, 1.7, 1.8, 2]
      .filter((n) => Math.abs(n - exponent) > 1e-9)
      .map((n) => candidate(`exponent-${n}`, atLoad(claim, ends, n).value)),
    candidate("difference-scaled", at(rise, from, to, exponent)),
    candidate("difference-scaled-1.6", isUnequal(claim) ? at(rise, from, to, 1.6) : undefined),
    candidate("difference-scaled-2", isUnequal(claim) ? at(rise, from, to, 2) : undefined),
    candidate("currents-swapped", at(rise, to, from, exponent)),
    candidate("other-current", at(rise, loadOfReference?.value, to, exponent)),
    candidate("rated-for-maximum", at(rise, from, ratedLoad?.value, exponent)),
    candidate("adjusted-twice", at(rise, from, to, 2 * exponent)),
    candidate(
      "temperature-scaled",
      scaledTemp === undefined || ends.reference.value === undefined
        ? undefined
        : scaledTemp - (ends.reference.value - ZERO_CELSIUS),
    ),
    candidate(
      "over-air",
      air === undefined || ends.hot.value === undefined ? undefined : at(ends.hot.value - air, from, to, exponent),
    ),
    candidate("times-1.8", at(rise === undefined ? undefined : rise * 1.8, from, to, exponent)),
  ];
  const right = atLoad(claim, ends, exponent).value;
  return all.filter(({ gives }) => gives === undefined || right === undefined || Math.abs(gives - right) > 1e-6);
}

/** Below the least load nothing is projected: the rules of the trade forbid it, whatever the arithmetic gives. */
export function isProjectedFromTooLittle(claim: Claim): boolean {
  const share = loadShare(claim);
  return share !== undefined && share < (claim.minimumLoad || RULES.minimum_load.value) - 1e-9;
}
