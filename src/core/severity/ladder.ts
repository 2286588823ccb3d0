import type { Bound, CriteriaRow, CriteriaSet, ReferenceKind } from "../../data/criteria.js";
import type { Provenance } from "../../data/provenance.js";
import { bandsFor } from "./criteria.js";

/** One end of a band. */
export interface Edge {
  /** [K], or a share of the limit [-]. */
  readonly value: number;
  /** Whether the band that begins here holds the value itself ("from") or not ("above"). */
  readonly bound: Bound;
}

export interface Grade {
  /** 0 (below the first band) to 4 (worst). */
  readonly grade: number;
  readonly words: string;
  readonly action: string;
  readonly criteria: string;
  readonly reference: ReferenceKind;
  /** Where its band begins; absent for grade 0. */
  readonly lower?: Edge;
  /** Where the next band begins; absent for the worst. */
  readonly upper?: Edge;
  /** Where the numbers come from; absent for a workbook's own criteria. */
  readonly source?: Provenance;
}

/** The grades of a table for one reference, lowest first: grade 0, then one for each band. */
export interface Ladder {
  readonly edges: readonly Edge[];
  readonly grades: readonly Grade[];
}

const ladders = new WeakMap<CriteriaSet, Map<ReferenceKind, Ladder>>();

/**
 * The ladder of a table for one reference; made once, for a column asks for it on every row.
 * @throws REFUSED "reference" where the table has none
 */
export function ladderFor(set: CriteriaSet, reference: ReferenceKind): Ladder {
  let known = ladders.get(set);
  if (known === undefined) ladders.set(set, (known = new Map<ReferenceKind, Ladder>()));
  let ladder = known.get(reference);
  if (ladder === undefined) known.set(reference, (ladder = makeLadder(set, reference)));
  return ladder;
}

function makeLadder(set: CriteriaSet, reference: ReferenceKind): Ladder {
  const bands: readonly (CriteriaRow & Partial<Provenance>)[] = bandsFor(set, reference);
  const ends = bands.map(({ edge, bound }) => ({ value: edge, bound }));
  const grades = [undefined, ...bands].map((band, i): Grade => {
    const { words, action } = band ?? set.below;
    const [lower, upper] = [ends[i - 1], ends[i]];
    const source = sourceOf(band ?? bands[0]);
    return {
      ...{ grade: band?.grade ?? 0, words, action, criteria: set.name, reference },
      ...(lower && { lower }),
      ...(upper && { upper }),
      ...(source && { source }),
    };
  });
  // Edges come from °F and from cells too, so they are rounded like the rise.
  return { edges: ends.map(({ value, bound }) => ({ value: settle(value), bound })), grades };
}

function sourceOf(row: Partial<Provenance> | undefined): Provenance | undefined {
  if (row?.source === undefined) return undefined;
  const { source, locator = "", edition = "", evidence = "own" } = row;
  return { source, locator, edition, evidence };
}

/** The grade of a rise [K, -], rounded to 1e-6; a rise below nothing is below the first band. */
export function gradeOn(ladder: Ladder, rise: number): Grade {
  const settled = settle(rise);
  let reached = 0;
  for (const { value, bound } of ladder.edges) {
    if (!(bound === "from" ? settled >= value : settled > value)) break;
    reached++;
  }
  return ladder.grades[reached]!;
}

/** To 1e-6, half away from zero: what floating point adds to a difference of two readings is not heat. */
export function settle(value: number): number {
  return roundHalfAway(value * 1e6) / 1e6;
}

export function roundHalfAway(value: number): number {
  return Math.sign(value) * Math.round(Math.abs(value));
}
