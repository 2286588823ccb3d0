/** A rise that a report has brought to another load. */
import { ZERO_CELSIUS } from "../../constants.js";
import { RULES } from "../../../data/rules.js";
import { SLACK } from "../judge.js";
import type { Claim, Printed } from "./claim.js";
import { candidate, differenceVerdict, type NumberVerdict } from "./number.js";
import type { Missing, Recomputed } from "./recompute.js";
import { type Ends, riseOf, weighedRise } from "./rise.js";

/** The exponents that reports go by; a report that names none is held to any of them. */
const USUAL_EXPONENTS = [1.8, 1.6, 2] as const;

/** Currents further apart than this make a difference between two phases no single phase's rise. */
const UNEQUAL = 0.1;
/** 0 °F [K]. */
const ZERO_FAHRENHEIT = 459.67 / 1.8;

export function isUnequal({ load, loadOfReference }: Claim): boolean {
  if (load === undefined || loadOfReference === undefined) return false;
  // A phase without current is like no other.
  if (loadOfReference.value === 0) return load.value > 0;
  return Math.abs(load.value / loadOfReference.value - 1) > UNEQUAL + 1e-9;
}

/** The share of the load that the rise is brought to; undefined where one is not given. */
function loadShare({ load, referenceLoad }: Claim): number | undefined {
  if (load === undefined || referenceLoad === undefined || referenceLoad.value === 0) return undefined;
  return load.value / referenceLoad.value;
}

/** Each phase's rise over the same air at the common load where currents are unequal, else the difference scaled. */
function atLoad(claim: Claim, ends: Ends, exponent: number): Recomputed {
  const { load, loadOfReference, referenceLoad, surroundingAir, reference } = claim;
  const rise = riseOf(ends);
  const separately = reference !== "ambient" && isUnequal(claim) && loadOfReference !== undefined;
  const missing: Missing[] = [];
  if (load === undefined) missing.push("load");
  else if (load.value <= 0) missing.push("load above 0");
  if (referenceLoad === undefined) missing.push("reference_load");
  if (separately && loadOfReference.value <= 0) missing.push("load_of_reference above 0");
  if (separately && surroundingAir === undefined) missing.push("surrounding_air");
  const { hot, reference: cool } = ends;
  if (missing.length > 0 || load === undefined || referenceLoad === undefined || rise.value === undefined)
    return { ...rise, value: undefined, missing: [...rise.missing, ...missing], span: undefined };
  const brought = (from: Printed): number => (referenceLoad.value / from.value) ** exponent;
  /** What half a digit of a load moves its share of the result by, in first order. */
  const ofDigits = (share: number, { half, value }: Printed): number => Math.abs((exponent * share * half) / value);
  const factor = brought(load);
  if (!separately || surroundingAir === undefined) {
    const scaled = weighedRise(ends, factor, factor);
    const ofLoads = ofDigits(scaled.value!, load) + ofDigits(scaled.value!, referenceLoad);
    return { ...scaled, inputTolerance: scaled.inputTolerance + ofLoads };
  }
  const air = surroundingAir.value;
  const factorOfReference = brought(loadOfReference);
  const [ofHot, ofCool] = [(hot.value! - air) * factor, (cool.value! - air) * factorOfReference];
  const scaled = weighedRise(ends, factor, factorOfReference);
  const overAir = (temp: number): number => temp - (factor - factorOfReference) * air;
  const ofLoads = ofDigits(ofHot, load) + ofDigits(ofCool, loadOfReference) + ofDigits(ofHot - ofCool, referenceLoad);
  return {
    ...scaled,
    value: ofHot - ofCool,
    span: scaled.span && [overAir(scaled.span[0]), overAir(scaled.span[1])],
    inputTolerance: scaled.inputTolerance + ofLoads + Math.abs(factor - factorOfReference) * surroundingAir.half,
  };
}

/**
 * The report's own rise may be what it scaled, or the rise before it was rounded: both are tried.
 * @param riseHolds whether the rise that the report states is reproduced
 */
export function atLoadVerdict(stated: Printed, claim: Claim, ends: Ends, riseHolds: boolean): NumberVerdict {
  const exponents = claim.exponent === undefined ? USUAL_EXPONENTS : [claim.exponent];
  const named = (exponent: number): { exponent?: number } => (claim.exponent === undefined ? { exponent } : {});
  const found = exponents.map((exponent) => differenceVerdict(stated, atLoad(claim, ends, exponent), []));
  const right = found.findIndex(({ kind }) => kind === "reproduced");
  if (right >= 0) return { ...found[right]!, ...named(exponents[right]!) };
  const fromRise = riseHolds ? exponents.findIndex((exponent) => isOfStatedRise(stated, claim, exponent)) : -1;
  if (fromRise >= 0 && found[fromRise]!.recomputed !== undefined)
    return { ...found[fromRise]!, kind: "reproduced", slips: [], from: "rise", ...named(exponents[fromRise]!) };
  const [exponent] = exponents;
  const best = differenceVerdict(stated, atLoad(claim, ends, exponent), slips(claim, ends, exponent));
  return best.kind === "needs" && isUnequal(claim) ? scaledAnyway(stated, claim, best) : best;
}

/** Whether the number is the printed rise scaled, which is right where the currents are alike. */
function isOfStatedRise(stated: Printed, claim: Claim, exponent: number): boolean {
  const { statedRise, load, referenceLoad, reference } = claim;
  if (statedRise === undefined || load === undefined || referenceLoad === undefined || load.value <= 0) return false;
  if (reference !== "ambient" && isUnequal(claim)) return false;
  const value = statedRise.value * (referenceLoad.value / load.value) ** exponent;
  const ofLoads = exponent * Math.abs(value) * (load.half / load.value + referenceLoad.half / referenceLoad.value);
  return Math.abs(stated.value - value) <= stated.half + ofLoads + SLACK;
}

const SCALED = "difference-scaled";

/** Of unequal currents without the air: the stated rise scaled is no way to it, and shows all the same. */
function scaledAnyway(stated: Printed, claim: Claim, found: NumberVerdict): NumberVerdict {
  const exponent = (claim.exponent === undefined ? USUAL_EXPONENTS : [claim.exponent]).find((one) =>
    isOfStatedRise(stated, { ...claim, reference: "ambient" }, one),
  );
  const gives = stated.value;
  const key = SCALED;
  return exponent === undefined ? found : { ...found, slips: [{ key, gives, chance: undefined }] };
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
  // On the bare number of the sheet's degrees, so that the zero of the scale counts.
  const zero = claim.degrees === "F" ? ZERO_FAHRENHEIT : ZERO_CELSIUS;
  const scaledTemp = at(ends.hot.value === undefined ? undefined : ends.hot.value - zero, from, to, exponent);
  const air = surroundingAir?.value;
  // Where the stated rise is the recomputed one, scaling it is what the lines below say more plainly.
  const holds = statedRise !== undefined && rise !== undefined && Math.abs(statedRise.value - rise) <= statedRise.half;
  const all = [
    candidate("of-stated-rise", holds ? undefined : at(statedRise?.value, from, to, exponent)),
    candidate("not-adjusted", rise),
    ...[1, 1.6, 1.7, 1.8, 2]
      .filter((n) => Math.abs(n - exponent) > 1e-9)
      .map((n) => candidate(`exponent-${n}`, atLoad(claim, ends, n).value)),
    candidate(SCALED, at(rise, from, to, exponent)),
    candidate("difference-scaled-1.6", isUnequal(claim) ? at(rise, from, to, 1.6) : undefined),
    candidate("difference-scaled-2", isUnequal(claim) ? at(rise, from, to, 2) : undefined),
    candidate("upside-down", at(rise, to, from, exponent)),
    candidate("currents-swapped", swapped(claim, ends, exponent)),
    candidate("other-current", at(rise, loadOfReference?.value, to, exponent)),
    candidate("rated-for-maximum", at(rise, from, ratedLoad?.value, exponent)),
    candidate("adjusted-twice", at(rise, from, to, 2 * exponent)),
    candidate(
      "temperature-scaled",
      scaledTemp === undefined || ends.reference.value === undefined
        ? undefined
        : scaledTemp - (ends.reference.value - zero),
    ),
    candidate(
      "over-air",
      air === undefined || ends.hot.value === undefined ? undefined : at(ends.hot.value - air, from, to, exponent),
    ),
    candidate("times-1.8", at(rise === undefined ? undefined : rise * 1.8, from, to, exponent)),
    candidate("over-1.8", at(rise === undefined ? undefined : rise / 1.8, from, to, exponent)),
    candidate("per-cent-for-fraction", at(rise, from, to === undefined ? undefined : to * 100, exponent)),
    candidate("fraction-for-per-cent", at(rise, from, to === undefined ? undefined : to / 100, exponent)),
  ];
  const right = atLoad(claim, ends, exponent).value;
  return all.filter(({ gives }) => gives === undefined || right === undefined || Math.abs(gives - right) > 1e-6);
}

/** The current of the hot one taken for its reference's and the other way round. */
function swapped(claim: Claim, ends: Ends, exponent: number): number | undefined {
  const { load, loadOfReference, ...others } = claim;
  if (load === undefined || loadOfReference === undefined || claim.reference === "ambient") return undefined;
  return atLoad({ ...others, load: loadOfReference, loadOfReference: load }, ends, exponent).value;
}

/** Below the least load nothing is projected: the rules of the trade forbid it, whatever the arithmetic gives. */
export function isProjectedFromTooLittle(claim: Claim): boolean {
  const share = loadShare(claim);
  return share !== undefined && share < (claim.minimumLoad || RULES.minimum_load.value) - 1e-9;
}
