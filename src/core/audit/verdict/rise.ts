/** Rises of a report: over what they are said to be over, and brought to another load. */
import type { ReferenceKind } from "../../../data/criteria.js";
import type { Claim, Printed } from "./claim.js";
import { SLACK } from "../judge.js";
import { candidate, differenceVerdict, isAirAlone, type NumberVerdict } from "./number.js";
import { type Missing, recompute, type Recomputed, type RecomputedTemperature } from "./recompute.js";

interface Candidate {
  readonly key: string;
  readonly gives: number | undefined;
}

/** Ends of a rise: what is hot and what it is over. */
export interface Ends {
  readonly hot: End;
  readonly reference: End;
  /** As read, not corrected. */
  readonly hotRead: number | undefined;
  readonly referenceRead: number | undefined;
}

/** A temperature with what may move it: its printed digits, the band, what is missing. */
export interface End extends Pick<
  RecomputedTemperature,
  "value" | "ofDigits" | "bandShift" | "cornerTemps" | "missing" | "impossible"
> {
  /** As the report states it, not from a reading. */
  readonly isStated: boolean;
}

const EXACT = { bandShift: 0, cornerTemps: [], missing: [], impossible: false } as const;

const printed = ({ value, half }: Printed): End => ({ ...EXACT, value, ofDigits: half, isStated: true });
const absent = (missing: Missing): End => ({
  ...EXACT,
  value: undefined,
  ofDigits: NaN,
  missing: [missing],
  isStated: false,
});

/**
 * From readings where they can be corrected, else from the temperatures that the report states: of both ends where it
 * states both, since what is missing moves two readings alike and two stated temperatures not at all.
 */
export function endsOf(claim: Claim): Ends {
  const { apparent, referenceApparent, statedTemp, statedReferenceTemp, surroundingAir, reference } = claim;
  const isOverAir = reference === "ambient";
  const corrected = (reading: Printed | undefined, name: Missing): End =>
    reading === undefined ? absent(name) : { ...recompute(claim, reading), isStated: false };
  const [hot, cool] = [corrected(apparent, "apparent"), corrected(referenceApparent, "reference_apparent")];
  const isSure = ({ value, missing }: End): boolean => value !== undefined && isAirAlone(missing);
  const canBothBeRead = hot.value !== undefined && cool.value !== undefined && !isOverAir;
  const areBothStated = statedTemp !== undefined && (isOverAir || statedReferenceTemp !== undefined);
  const choose = (end: End, stated: Printed | undefined): End =>
    isSure(end) || stated === undefined || (canBothBeRead && !areBothStated) ? end : printed(stated);
  const other = (): End => {
    if (reference === undefined) return absent("reference");
    if (isOverAir) return surroundingAir === undefined ? absent("surrounding_air") : printed(surroundingAir);
    return choose(cool, statedReferenceTemp);
  };
  return {
    hot: choose(hot, statedTemp),
    reference: other(),
    hotRead: apparent?.value,
    referenceRead: isOverAir ? surroundingAir?.value : referenceApparent?.value,
  };
}

/**
 * What a rise is over. Where the report does not say it, a subtraction can be checked all the same: over what it is
 * compared with, or over the air, whichever gives the number. A grade is never taken from that.
 */
export function overOf(claim: Claim): ReferenceKind | undefined {
  const { reference, referenceApparent, statedReferenceTemp, surroundingAir, statedRise } = claim;
  if (reference !== undefined || statedRise === undefined) return reference;
  const kinds: ReferenceKind[] = [];
  if ((referenceApparent ?? statedReferenceTemp) !== undefined) kinds.push("similar");
  if (surroundingAir !== undefined) kinds.push("ambient");
  const gives = (kind: ReferenceKind): boolean => {
    const over = { ...claim, reference: kind };
    return riseVerdict(statedRise, over, endsOf(over), true).kind === "reproduced";
  };
  return kinds.find(gives) ?? kinds[0];
}

/** The rise itself, without looking at what the report states. */
export function riseOf(ends: Ends): Recomputed {
  return weighedRise(ends, 1, 1);
}

/** Hot one times a factor less its reference times another, with what may move that. */
export function weighedRise({ hot, reference }: Ends, ofHot: number, ofReference: number): Recomputed {
  const missing = [...new Set([...hot.missing, ...reference.missing])];
  const impossible = hot.impossible || reference.impossible;
  if (hot.value === undefined || reference.value === undefined)
    return { value: undefined, inputTolerance: NaN, missing, span: undefined, impossible };
  const value = ofHot * hot.value - ofReference * reference.value;
  // What is missing is missing for both and moves both at once; so does the band.
  const corners = Array.from(
    { length: Math.max(hot.cornerTemps.length, reference.cornerTemps.length) },
    (_, c) => ofHot * (hot.cornerTemps[c] ?? hot.value!) - ofReference * (reference.cornerTemps[c] ?? reference.value!),
  );
  return {
    value,
    inputTolerance:
      Math.abs(ofHot) * hot.ofDigits +
      Math.abs(ofReference) * reference.ofDigits +
      Math.abs(ofHot * hot.bandShift - ofReference * reference.bandShift),
    missing,
    span: corners.length === 0 ? undefined : [Math.min(value, ...corners), Math.max(value, ...corners)],
    impossible: false,
  };
}

/**
 * The rise as stated. A report that rounds its temperatures and then subtracts them has made no slip: where both hold, so
 * does their difference as it is printed.
 * @param temperaturesHold whether what the report states of either end is reproduced
 */
export function riseVerdict(stated: Printed, claim: Claim, ends: Ends, temperaturesHold: boolean): NumberVerdict {
  const found = differenceVerdict(stated, riseOf(ends), riseSlips(claim, ends));
  if (found.kind === "reproduced" || found.recomputed === undefined || !temperaturesHold) return found;
  const ofStated = ofStatedTemperatures(claim);
  return ofStated !== undefined && Math.abs(stated.value - ofStated) <= stated.half + SLACK
    ? { ...found, kind: "reproduced", slips: [], from: "temperatures" }
    : found;
}

function ofStatedTemperatures({
  reference,
  statedTemp,
  statedReferenceTemp,
  surroundingAir,
}: Claim): number | undefined {
  return minus(statedTemp?.value, reference === "ambient" ? surroundingAir?.value : statedReferenceTemp?.value);
}

const minus = (a: number | undefined, b: number | undefined): number | undefined =>
  a === undefined || b === undefined ? undefined : a - b;
const over = (a: number | undefined, by: (value: number) => number): number | undefined =>
  a === undefined ? undefined : by(a);

/** 32 degrees Fahrenheit as a difference [K]. */
const THIRTY_TWO = 32 / 1.8;

function riseSlips(claim: Claim, { hot, reference, hotRead, referenceRead }: Ends): Candidate[] {
  const right = minus(hot.value, reference.value);
  const read = minus(hotRead, referenceRead);
  const isOverAir = claim.reference === "ambient";
  const { surroundingAir, roomAir, statedReferenceTemp, degrees } = claim;
  const emissivity = claim.settings.emissivity;
  const other = recompute(claim, claim.referenceApparent).value ?? statedReferenceTemp?.value;
  const bare = degrees === "F" ? THIRTY_TWO : 32;
  return [
    candidate("subtracted-before-corrected", read),
    candidate("only-hot-corrected", minus(hot.value, referenceRead)),
    candidate("only-reference-corrected", isOverAir ? undefined : minus(hotRead, reference.value)),
    candidate(
      "readings-over-emissivity",
      over(read, (rise) => (emissivity === undefined ? NaN : rise / emissivity)),
    ),
    candidate("of-stated-temperatures", ofStatedTemperatures(claim)),
    candidate("air-for-similar", isOverAir ? undefined : minus(hot.value, surroundingAir?.value)),
    candidate("similar-for-air", isOverAir ? minus(hot.value, other) : undefined),
    candidate("room-air-for-enclosure", isOverAir ? minus(hot.value, roomAir?.value) : undefined),
    candidate(
      "reversed",
      over(right, (rise) => -rise),
    ),
    candidate(
      "thirty-two-added",
      over(right, (rise) => rise + bare),
    ),
    candidate(
      "thirty-two-taken",
      over(right, (rise) => rise - bare),
    ),
    candidate(
      "times-1.8",
      over(right, (rise) => rise * 1.8),
    ),
    candidate(
      "over-1.8",
      over(right, (rise) => rise / 1.8),
    ),
    candidate(
      "converted-as-temperature",
      over(right, (rise) => rise * 1.8 + bare),
    ),
  ].map(({ key, gives }) => ({ key, gives: gives !== undefined && Number.isFinite(gives) ? gives : undefined }));
}
