/** Whether a stated number is what its inputs give, and if not, which usual slip would give it. */
import { explain } from "../explain.js";
import { judge, SLACK, type Judged } from "../judge.js";
import type { Printed } from "./claim.js";
import type { Missing, Recomputed } from "./recompute.js";

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
}

export interface FoundSlip {
  readonly key: string;
  readonly gives: number;
  /** Of a number drawn within ±20 K to match this slip or one before it. */
  readonly chance: number | undefined;
}

/** What is not known of a number moves it by this part of the tolerance at most, or it matters. */
const IMMATERIAL = 1;

const nothing = {
  recomputed: undefined,
  difference: undefined,
  tolerance: undefined,
  span: undefined,
  slips: [],
} as const;

export const atLimit: NumberVerdict = { kind: "limit", ...nothing, missing: [] };

/** The verdict where what is missing, or the lack of an answer, settles it; undefined where the number is to be judged. */
function settled(stated: Printed, found: Recomputed): NumberVerdict | undefined {
  const { value, missing, span, inputTolerance, impossible } = found;
  if (impossible) return { kind: "no-answer", ...nothing, missing };
  if (value === undefined) return { kind: "needs", ...nothing, missing };
  const tolerance = stated.half + inputTolerance;
  const known = { recomputed: value, difference: stated.value - value, tolerance, missing, span, slips: [] };
  if (span === undefined) return undefined;
  const reach = Math.max(span[1] - value, value - span[0]);
  if (reach <= IMMATERIAL * tolerance) return undefined;
  // As if what is missing had been left out: the usual case of a report without any air.
  if (
    Math.abs(stated.value - value) <= tolerance + SLACK &&
    !missing.includes("reflected") &&
    !missing.includes("emissivity")
  )
    return { kind: "reproduced", ...known };
  const inside = stated.value >= span[0] - tolerance - SLACK && stated.value <= span[1] + tolerance + SLACK;
  return { kind: inside ? "needs" : "outside", ...known };
}

/** Of a corrected temperature. */
export function temperatureVerdict(stated: Printed, found: Recomputed): NumberVerdict {
  const before = settled(stated, found);
  if (before !== undefined || found.given === undefined)
    return before ?? { kind: "needs", ...nothing, missing: found.missing };
  const reach = found.span === undefined ? 0 : Math.max(found.span[1] - found.value!, found.value! - found.span[0]);
  const tolerance = stated.half + found.inputTolerance;
  const { reproduced, lines } = explain(stated.value, found.given, tolerance + reach);
  return verdict(stated, found, tolerance, reproduced, lines);
}

/** Of a rise, by the slips that its own inputs have. */
export function differenceVerdict(
  stated: Printed,
  found: Omit<Recomputed, "given">,
  slips: readonly { readonly key: string; readonly gives: number | undefined }[],
): NumberVerdict {
  const before = settled(stated, { ...found, given: undefined });
  if (before !== undefined) return before;
  const tolerance = stated.half + found.inputTolerance;
  const { reproduced, lines } = judge<string>(stated.value, { key: "as-stated", gives: found.value }, slips, tolerance);
  return verdict(stated, found, tolerance, reproduced, lines);
}

function verdict(
  stated: Printed,
  { value, missing, span }: Omit<Recomputed, "given">,
  tolerance: number,
  reproduced: boolean,
  lines: readonly Judged[],
): NumberVerdict {
  const slips = reproduced ? [] : matching(lines);
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
