import criteria from "./criteria.json";
import type { Provenance } from "./provenance.js";

/** What a rise is over; "limit" makes it a share of the permitted rise. */
export type ReferenceKind = "similar" | "ambient" | "baseline" | "limit";
/** How the part was seen: itself, through something that insulates it, or not at all. */
export type View = "direct" | "indirect" | "enclosed";
/** A band begins at its lower edge, or only above it. */
export type Bound = "from" | "above";

/** One band of a table of criteria. */
export interface CriteriaRow {
  readonly reference: ReferenceKind;
  /** 1 to 4, 4 the worst. */
  readonly grade: number;
  readonly bound: Bound;
  /** Lower edge [K], or a share of the limit [-]. */
  readonly edge: number;
  readonly words: string;
  readonly action: string;
}

/** A table of criteria. */
export interface CriteriaSet<Row extends CriteriaRow = CriteriaRow> {
  readonly name: string;
  /** What it is, what it is for and where it comes from. */
  readonly about: string;
  /** The views it may be used for. */
  readonly views: readonly View[];
  /** What grade 0 says: a rise below the first band. */
  readonly below: { readonly words: string; readonly action: string };
  readonly rows: readonly Row[];
}

export type SourcedRow = CriteriaRow & Provenance;

/** The tables that come with this tool, the one taken by default first. */
export const BUILT_IN_CRITERIA = criteria as readonly CriteriaSet<SourcedRow>[];
