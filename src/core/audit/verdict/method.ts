/** What speaks against the way a number was arrived at, whether it is reproduced or not. */
import { below, above } from "../../check/hit.js";
import { knownCriteria } from "./grade.js";
import { isProjectedFromTooLittle, isUnequal } from "./at-load.js";
import type { Claim } from "./claim.js";
import type { NumberVerdict } from "./number.js";

export type Defect =
  | "no-reference"
  | "no-load"
  | "too-little-load"
  | "unequal-scaled"
  | "indirect-in-direct"
  | "subtracted-before-corrected"
  | "qualitative-only"
  | "reflected-is-air-outdoors"
  | "window-left-out"
  | "no-emissivity"
  | "no-reflected"
  | "bare-metal-emissivity"
  | "limit-reading"
  | "slip-of-method";

/** Below it a reading is no temperature measurement (trade usage; rules.json holds the same figure for CHECK). */
const QUALITATIVE = 0.3;
/** Where the reflected part is small nothing hangs on it. */
const HIGH_EMISSIVITY = 0.9;
const BARE_METAL = 0.5;
/** Two temperatures printed alike. */
const ALIKE = 0.05;

/** Slips that are another method, not another sum. */
const METHODS =
  /^(reading-itself|emissivity-|air-(left|of|for)|inner-air|outer-air|window-|reflected-(air|20|0|term)|start-up|path-into|inner-path|fourth-|band-|degrees-|celsius-over|subtracted|only-|readings-over|similar-for|room-air|less-|not-adjusted|exponent-|difference-scaled|over-air|temperature-scaled|rated-for)/;

export function isMethod(slip: string): boolean {
  return METHODS.test(slip);
}

/** A reading at an end of the camera's range is no reading. */
export function isBeyondRange({ readingIs }: Claim): boolean {
  return readingIs !== undefined && readingIs !== "exact";
}

/** @param verdicts of the numbers that the row states */
export function defectsOf(claim: Claim, verdicts: readonly NumberVerdict[]): Defect[] {
  const { settings, reference, load, view, statedTemp, statedRise, statedRiseAtLoad, statedGrade } = claim;
  const graded = statedGrade !== undefined;
  const ofRise = statedRise !== undefined || statedRiseAtLoad !== undefined || graded;
  const corrects = statedTemp !== undefined && claim.apparent !== undefined;
  const { emissivity, reflected } = settings;
  const isAbsent = (name: string, value: unknown): boolean => value === undefined && claim.unread?.has(name) !== true;
  // Where something missing may be the reason instead, a slip that would also give the number is no defect.
  const accused = verdicts.filter(({ kind }) => kind === "slips");
  const slipsOf = new Set(accused.flatMap(({ slips }) => slips.map(({ key }) => key)));
  const isScaled = verdicts.some(({ slips }) => slips.some(({ key }) => key.startsWith("difference-scaled")));
  const air = settings.airTemp ?? claim.surroundingAir?.value;
  const found: [Defect, boolean][] = [
    ["no-reference", ofRise && isAbsent("reference", reference)],
    ["no-load", (graded || statedRiseAtLoad !== undefined) && view === "direct" && isAbsent("load", load)],
    ["too-little-load", statedRiseAtLoad !== undefined && isProjectedFromTooLittle(claim)],
    ["unequal-scaled", statedRiseAtLoad !== undefined && reference !== "ambient" && isUnequal(claim) && isScaled],
    // Of criteria that are not known here nobody can say which views they are for.
    [
      "indirect-in-direct",
      graded && view !== "direct" && knownCriteria(claim.criteria)?.views.includes(view) === false,
    ],
    ["subtracted-before-corrected", slipsOf.has("subtracted-before-corrected")],
    [
      "qualitative-only",
      emissivity !== undefined && below(emissivity, QUALITATIVE) && (statedTemp !== undefined || ofRise),
    ],
    ["bare-metal-emissivity", claim.isMetal && claim.isOxidised !== true && above(emissivity, BARE_METAL)],
    [
      "reflected-is-air-outdoors",
      claim.isOutdoors &&
        reflected !== undefined &&
        air !== undefined &&
        Math.abs(reflected - air) <= ALIKE &&
        (emissivity ?? 1) < HIGH_EMISSIVITY + ALIKE,
    ],
    ["window-left-out", claim.isThroughWindow && isAbsent("window_transmission", settings.windowTransmission)],
    ["no-emissivity", corrects && isAbsent("emissivity", emissivity)],
    ["no-reflected", corrects && isAbsent("reflected", reflected) && (emissivity ?? 0) < HIGH_EMISSIVITY],
    ["limit-reading", isBeyondRange(claim) && claim.isStatedAsBound !== true],
  ];
  const known = found.filter(([, holds]) => holds).map(([defect]) => defect);
  const slip = [...slipsOf].some(isMethod);
  return slip && !known.includes("subtracted-before-corrected") && !known.includes("unequal-scaled")
    ? [...known, "slip-of-method"]
    : known;
}
