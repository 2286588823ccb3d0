/** Whether a stated number is what its inputs give, and if not, which usual slip would give it. */
import { TEMPERATURE } from "../../limits.js";
import { inRange } from "../../errors.js";
import { AS_STATED, explain, type TemperatureSlipKey } from "../explain.js";
import { type Explanation, judge, SLACK, TOLERANCE, type Judged } from "../judge.js";
import type { ReferenceKind } from "../../../data/criteria.js";
import type { Printed } from "./claim.js";
import type { Missing, Recomputed, RecomputedTemperature } from "./recompute.js";

export interface NumberVerdict {
  /**
   * needs: what is missing decides it; unexplained: not what the inputs give, and no usual slip would give it;
   * outside: not what the inputs give whatever is missing; limit: the reading stands at the camera's limit;
   * no-answer: no object gives this reading under these settings.
   */
  readonly kind: "reproduced" | "slips" | "unexplained" | "needs" | "outside" | "limit" | "no-answer";
  readonly recomputed: number | undefined;
  /** Stated less recomputed. */
  readonly difference: number | undefined;
  readonly tolerance: number | undefined;
  readonly missing: readonly Missing[];
  /** What the number may be for all that is missing. */
  readonly span: readonly [number, number] | undefined;
  /** Slips that would give the stated number. */
  readonly slips: readonly FoundSlip[];
  /** Of a rise at another load: the exponent that reproduces it, where the report names none. */
  readonly exponent?: number;
  /** Of a temperature: what each slip would give, for the whole report to count. */
  readonly explanation?: Explanation<TemperatureSlipKey | typeof AS_STATED>;
  /** Reproduced from other numbers of the report as they are printed, and not from its readings. */
  readonly from?: "temperatures" | "rise";
  /** Of a rise: what it is over, where the report does not say it and only its number does. */
  readonly over?: ReferenceKind;
}

/** What a slip of a rise would give; undefined where the row has no room for it. */
export const candidate = (key: string, gives: number | undefined): { key: string; gives: number | undefined } => ({
  key,
  gives,
});

export interface FoundSlip {
  readonly key: string;
  readonly gives: number;
  /** Of a number drawn within ±20 K to match this slip or one before it. */
  readonly chance: number | undefined;
}

const nothing = {
  recomputed: undefined,
  difference: undefined,
  tolerance: undefined,
  span: undefined,
  slips: [],
} as const;

export const atLimit: NumberVerdict = { kind: "limit", ...nothing, missing: [] };

/** A report that names no air at all most often took none: so is the air taken, and varied only where that does not do. */
export const isAirAlone = (missing: readonly Missing[]): boolean =>
  missing.every((name) => name === "air_transmission");

/** Two programs agree no better than that on a number that has all of its digits [K]. */
const LEAST_TOLERANCE = 0.001;

/** How far stated and recomputed may lie apart [K]: the digits that are printed, the band, and what is missing and immaterial. */
function toleranceOf(stated: Printed, found: Recomputed): number {
  const reach = isAirAlone(found.missing) ? 0 : reachOf(found);
  return Math.max(stated.half + found.inputTolerance + reach, LEAST_TOLERANCE);
}

/** The verdict where what is missing, or the lack of an answer, settles it; undefined where the number is to be judged. */
function settled(stated: Printed, found: Recomputed): NumberVerdict | undefined {
  const { value, missing, span, inputTolerance, impossible } = found;
  if (impossible) return { kind: "no-answer", ...nothing, missing };
  if (value === undefined) return { kind: "needs", ...nothing, missing };
  const tolerance = Math.max(stated.half + inputTolerance, LEAST_TOLERANCE);
  if (span === undefined || isAirAlone(missing) || reachOf(found) <= tolerance) return undefined;
  return ofSpan(stated, found, tolerance);
}

/** The printed digits alone leave so much open that any slip would match. */
function blunt(stated: Printed, { value, missing, span }: Recomputed, tolerance: number): NumberVerdict {
  const difference = stated.value - value!;
  const kind = Math.abs(difference) <= tolerance + SLACK ? "reproduced" : "unexplained";
  return { kind, recomputed: value, difference, tolerance, missing, span, slips: [] };
}

/** How far the number may lie from the recomputed one for all that is missing. */
function reachOf({ value, span }: Recomputed): number {
  return span === undefined || value === undefined ? 0 : Math.max(span[1] - value, value - span[0]);
}

function ofSpan(stated: Printed, { value, missing, span }: Recomputed, tolerance: number): NumberVerdict {
  const [low, high] = span!;
  const inside = stated.value >= low - tolerance - SLACK && stated.value <= high + tolerance + SLACK;
  const difference = stated.value - value!;
  return { kind: inside ? "needs" : "outside", recomputed: value, difference, tolerance, missing, span, slips: [] };
}

/** Of a corrected temperature. */
export function temperatureVerdict(stated: Printed, found: RecomputedTemperature): NumberVerdict {
  const before = settled(stated, found);
  if (before?.kind === "outside") {
    const slips = ofEveryCorner(stated, found, before.tolerance!);
    return slips.length === 0 ? before : { ...before, kind: "slips", slips };
  }
  if (before !== undefined || found.given === undefined)
    return before ?? { kind: "needs", ...nothing, missing: found.missing };
  const tolerance = toleranceOf(stated, found);
  // What is no temperature is explained by nothing.
  if (tolerance > TOLERANCE.max! || !inRange(stated.value, TEMPERATURE)) return blunt(stated, found, tolerance);
  const explanation = explain(stated.value, found.given, tolerance);
  const { reproduced, lines } = explanation;
  return { ...verdict(stated, found, tolerance, reproduced, lines), explanation };
}

/** Slips that would give the number whatever is missing: the reading itself hangs on no setting. */
function ofEveryCorner(stated: Printed, { corners }: RecomputedTemperature, tolerance: number): FoundSlip[] {
  if (tolerance > TOLERANCE.max! || !inRange(stated.value, TEMPERATURE)) return [];
  const [first = [], ...others] = corners.map((corner) => matching(explain(stated.value, corner, tolerance).lines));
  return first.filter(({ key }) => others.every((slips) => slips.some((slip) => slip.key === key)));
}

/** Of a rise, by the slips that its own inputs have. */
export function differenceVerdict(
  stated: Printed,
  found: Recomputed,
  slips: readonly { readonly key: string; readonly gives: number | undefined }[],
): NumberVerdict {
  const before = settled(stated, found);
  if (before !== undefined) return before;
  const tolerance = toleranceOf(stated, found);
  if (tolerance > TOLERANCE.max!) return blunt(stated, found, tolerance);
  const { reproduced, lines } = judge<string>(stated.value, candidate(AS_STATED, found.value), slips, tolerance);
  return verdict(stated, found, tolerance, reproduced, lines);
}

function verdict(
  stated: Printed,
  { value, missing, span }: Recomputed,
  tolerance: number,
  reproduced: boolean,
  lines: readonly Judged[],
): NumberVerdict {
  const slips = reproduced ? [] : matching(lines);
  if (!reproduced && span !== undefined && isAirAlone(missing)) {
    // Air that the report does not print is the plainer reason; slips that would give the number stand beside it.
    const found = ofSpan(stated, { value, missing, span, inputTolerance: tolerance, impossible: false }, tolerance);
    if (found.kind === "needs") return { ...found, slips };
  }
  return {
    kind: reproduced ? "reproduced" : slips.length > 0 ? "slips" : "unexplained",
    recomputed: value,
    difference: value === undefined ? undefined : stated.value - value,
    tolerance,
    missing,
    span,
    slips,
  };
}

function matching(lines: readonly Judged[]): FoundSlip[] {
  return lines.flatMap(({ key, gives, verdict: found, chance }, at) =>
    at > 0 && found === "matches" && gives !== undefined ? [{ key, gives, chance }] : [],
  );
}
