/** Rises of a report: over what they are said to be over, and brought to another load. */
import type { Claim, Printed } from "./claim.js";
import { candidate, differenceVerdict, type NumberVerdict } from "./number.js";
import { type Missing, recompute, type Recomputed } from "./recompute.js";

interface Candidate {
  readonly key: string;
  readonly gives: number | undefined;
}

/** Ends of a rise: what is hot and what it is over, with what their digits may move them. */
export interface Ends {
  readonly hot: Known;
  readonly reference: Known;
  /** As read, not corrected. */
  readonly hotRead: number | undefined;
  readonly referenceRead: number | undefined;
}

export interface Known {
  readonly value: number | undefined;
  readonly tolerance: number;
  readonly missing: readonly Missing[];
  readonly span: readonly [number, number] | undefined;
  readonly impossible: boolean;
}

const known = ({ value, inputTolerance, missing, span, impossible }: Recomputed): Known => ({
  value,
  tolerance: inputTolerance,
  missing,
  span,
  impossible,
});
const printed = ({ value, half }: Printed): Known => ({
  value,
  tolerance: half,
  missing: [],
  span: undefined,
  impossible: false,
});
const absent = (missing: Missing): Known => ({
  value: undefined,
  tolerance: NaN,
  missing: [missing],
  span: undefined,
  impossible: false,
});

/** From readings where they can be corrected, else from the temperatures that the report states. */
export function endsOf(claim: Claim): Ends {
  const { apparent, referenceApparent, statedTemp, statedReferenceTemp, surroundingAir, reference } = claim;
  const corrected = (reading: Printed | undefined, stated: Printed | undefined): Known => {
    const found = recompute(claim, reading);
    const isSure = found.value !== undefined && found.missing.every((name) => name === "air_transmission");
    if (isSure || stated === undefined) return known(found);
    return printed(stated);
  };
  const other = (): Known => {
    if (reference === undefined) return absent("reference");
    if (reference === "ambient")
      return surroundingAir === undefined ? absent("surrounding_air") : printed(surroundingAir);
    if (referenceApparent === undefined && statedReferenceTemp === undefined) return absent("reference_apparent");
    return corrected(referenceApparent, statedReferenceTemp);
  };
  return {
    hot: corrected(apparent, statedTemp),
    reference: other(),
    hotRead: apparent?.value,
    referenceRead: reference === "ambient" ? surroundingAir?.value : referenceApparent?.value,
  };
}

/** The rise itself, without looking at what the report states. */
export function riseOf({ hot, reference }: Ends): Omit<Recomputed, "given"> {
  const missing = [...new Set([...hot.missing, ...reference.missing])];
  if (hot.value === undefined || reference.value === undefined)
    return {
      value: undefined,
      inputTolerance: NaN,
      missing,
      span: undefined,
      impossible: hot.impossible || reference.impossible,
    };
  return {
    value: hot.value - reference.value,
    inputTolerance: hot.tolerance + reference.tolerance,
    missing,
    // What is missing moves both ends alike, the hot one more: the rise moves by no more than the difference of the two.
    span: hot.span && spanBetween(hot.span, reference.span ?? [reference.value, reference.value]),
    impossible: false,
  };
}

function spanBetween(hot: readonly [number, number], reference: readonly [number, number]): readonly [number, number] {
  const ends = [hot[0] - reference[0], hot[1] - reference[1]];
  return [Math.min(...ends), Math.max(...ends)];
}

export function riseVerdict(stated: Printed, claim: Claim, ends: Ends): NumberVerdict {
  return differenceVerdict(stated, riseOf(ends), riseSlips(claim, ends));
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
  const { surroundingAir, roomAir, statedTemp, statedReferenceTemp, degrees } = claim;
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
    candidate(
      "of-stated-temperatures",
      minus(statedTemp?.value, isOverAir ? surroundingAir?.value : statedReferenceTemp?.value),
    ),
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
