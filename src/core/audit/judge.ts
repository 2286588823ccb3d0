import type { Range } from "../errors.js";

/** What a number would have come to by one slip. */
export interface Candidate<Key extends string = string> {
  readonly key: Key;
  /** [K]; undefined where these inputs have no such value. */
  readonly gives: number | undefined;
}

/** matches: the stated number is what the slip gives; hidden: nothing tells the slip from the inputs as stated. */
export type Verdict = "matches" | "no" | "hidden";

export interface Judged<Key extends string = string> {
  readonly key: Key;
  /** What it would give [K]; undefined for the inputs as stated where they have no answer. */
  readonly gives: number | undefined;
  /** Stated less given [K]. */
  readonly difference: number | undefined;
  readonly verdict: Verdict;
  /** Of a number drawn evenly within ±`CHANCE_SPAN` of the right one to match this line or one above it [-]. */
  readonly chance: number | undefined;
}

export interface Explanation<Key extends string = string> {
  /** The inputs as stated, then the slips: best match first, at the end those that would not show. */
  readonly lines: readonly Judged<Key>[];
  /** How many of the first lines are no slips: one, or more where the inputs as stated may be read in several ways. */
  readonly readings: number;
  readonly reproduced: boolean;
  /** How far apart two numbers were taken for one [K]. */
  readonly tolerance: number;
  /** Slips that match, readings of the inputs as stated not counted. */
  readonly count: number;
}

/** How far two numbers may lie apart to be taken for one [K]. */
export const TOLERANCE: Range = { min: 0, minExcluded: true, max: 10 };
/** A number printed to one decimal is within this of what was printed [K]. */
export const DEFAULT_TOLERANCE = 0.05;
/** Half the width that `chance` is reckoned over [K]. */
export const CHANCE_SPAN = 20;
/** A hair, so that a number exactly half a digit away is within half a digit in binary too [K]. */
export const SLACK = 1e-9;

/** Closer than this two differences are one [K]. */
const LIKE = 1e-6;

const within = (one: number, other: number, tolerance: number): boolean => Math.abs(one - other) <= tolerance + SLACK;

/**
 * Sets a stated number beside what each slip would give. A slip that matches is a possibility, no more: several may
 * match, and by chance alone some do as often as `chance` of the last line says.
 * @param stated the number in question [K]
 * @param right what the inputs as stated give; candidates that have no value are left out
 * @param tolerance [K], half the last digit stated
 * @param also what the inputs as stated give too, read another way that is none of the slips
 */
export function judge<Key extends string>(
  stated: number,
  right: Candidate<Key>,
  slips: readonly Candidate<Key>[],
  tolerance: number,
  also: readonly Candidate<Key>[] = [],
): Explanation<Key> {
  const readings = [right, ...also];
  const isReading = (value: number): boolean =>
    readings.some(({ gives }) => gives !== undefined && within(value, gives, tolerance));
  const reproduced = isReading(stated);
  const verdictOf = (gives: number): Verdict => {
    const hidden = isReading(gives);
    // At the edge of a digit a slip may still be told from the inputs as stated: one of them matches, the other not.
    if (hidden && (reproduced || !within(stated, gives, tolerance))) return "hidden";
    return within(stated, gives, tolerance) ? "matches" : "no";
  };
  const judged = slips.flatMap(({ key, gives }) =>
    gives === undefined ? [] : [{ key, gives, difference: stated - gives, verdict: verdictOf(gives) }],
  );
  const rank = ({ verdict }: { verdict: Verdict }): number => (verdict === "hidden" ? 1 : 0);
  // Of slips that come to the same the one listed first stays first, whatever their last bits are.
  const distance = ({ difference }: { difference: number }): number => Math.round(Math.abs(difference) / LIKE);
  judged.sort((a, b) => rank(a) - rank(b) || distance(a) - distance(b));
  const first = readings.map(({ key, gives }) => ({
    key,
    gives,
    difference: gives === undefined ? undefined : stated - gives,
    verdict: gives !== undefined && within(stated, gives, tolerance) ? ("matches" as const) : ("no" as const),
  }));
  const covered = new Coverage(right.gives, tolerance);
  return {
    lines: [...first, ...judged].map((line) => ({ ...line, chance: covered.add(line.gives) })),
    readings: readings.length,
    reproduced,
    tolerance,
    count: judged.filter(({ verdict }) => verdict === "matches").length,
  };
}

/** What part of the span around the right number lies within the tolerance of some value so far. */
class Coverage {
  /** Stretches that do not overlap. */
  private spans: (readonly [from: number, to: number])[] = [];
  private length = 0;

  constructor(
    private readonly middle: number | undefined,
    private readonly tolerance: number,
  ) {}

  add(value: number | undefined): number | undefined {
    if (this.middle === undefined) return undefined;
    if (value !== undefined) {
      const from = Math.max(value - this.tolerance, this.middle - CHANCE_SPAN);
      const to = Math.min(value + this.tolerance, this.middle + CHANCE_SPAN);
      if (to > from) this.cover(from, to);
    }
    return this.length / (2 * CHANCE_SPAN);
  }

  /** Whatever the new stretch touches becomes one with it. */
  private cover(from: number, to: number): void {
    const touched = this.spans.filter((span) => span[0] <= to && span[1] >= from);
    const start = Math.min(from, ...touched.map((span) => span[0]));
    const end = Math.max(to, ...touched.map((span) => span[1]));
    this.length += end - start - touched.reduce((sum, span) => sum + span[1] - span[0], 0);
    this.spans = [...this.spans.filter((span) => !touched.includes(span)), [start, end]];
  }
}
