/** Whether a stated grade follows from the report's own rise, and by which reading of the criteria. */
import type { ReferenceKind } from "../../../data/criteria.js";
import { GreybodyError } from "../../errors.js";
import { REFERENCE_KINDS } from "../../severity/criteria.js";
import { grade as gradeOf } from "../../severity/grade.js";
import type { Claim } from "./claim.js";

/** How a report counts its grades: ours 4 = worst, others 1 = worst; by itself a number tells neither. */
export type Numbering = "4 = worst" | "1 = worst";
export const NUMBERINGS: readonly Numbering[] = ["4 = worst", "1 = worst"];

export interface GradeVerdict {
  readonly kind:
    | "follows"
    | "rounded"
    | "other column"
    | "other numbering"
    | "projected"
    | "recomputed"
    | "does not follow"
    | "refused"
    | "needs";
  /** Of the stated rise, in our numbering; undefined where it has none. */
  readonly follows: number | undefined;
  /** The stated grade in our numbering. */
  readonly stated: number;
  /** Step of rounding that fits [K], column that fits. */
  readonly roundTo?: number;
  readonly reference?: ReferenceKind;
  /** Why the criteria give no grade: the key of the refusal. */
  readonly because?: string;
}

/** Rounded as reports round: to 0.1 K, 1 K, 1 °F. */
const ROUNDINGS = [0.1, 1, 1 / 1.8] as const;

/** A grade in our numbering: 4 is the worst, and 0 is below the first band in either. */
export function inOurs(stated: number, numbering: Numbering): number {
  return numbering === "1 = worst" && stated > 0 ? 5 - stated : stated;
}

export function gradeFor(claim: Claim, rise: number, reference: ReferenceKind, roundTo?: number): number | undefined {
  try {
    return gradeOf({
      rise,
      reference,
      criteria: claim.criteria,
      view: claim.view,
      ...(roundTo === undefined ? {} : { roundTo }),
    }).grade;
  } catch (error) {
    if (error instanceof GreybodyError) return undefined;
    throw error;
  }
}

function refusal(claim: Claim, rise: number, reference: ReferenceKind): string | undefined {
  try {
    gradeOf({ rise, reference, criteria: claim.criteria, view: claim.view });
    return undefined;
  } catch (error) {
    if (error instanceof GreybodyError) return error.hint?.key ?? error.argument;
    throw error;
  }
}

/** @param recomputed the rise as recomputed, where that differs from what the report states */
export function gradeVerdict(
  claim: Claim,
  written: number,
  numbering: Numbering | undefined,
  recomputed: number | undefined,
): GradeVerdict {
  const { reference, statedRiseAtLoad } = claim;
  const rise = claim.statedRise?.value ?? recomputed;
  const assumed = numbering ?? "4 = worst";
  const stated = inOurs(written, assumed);
  if (rise === undefined) return { kind: "needs", follows: undefined, stated };
  if (reference === undefined) {
    // Never graded without its reference: it is said over what it would follow.
    const fits = REFERENCE_KINDS.filter((kind) => kind !== "limit" && gradeFor(claim, rise, kind) === stated);
    return { kind: "needs", follows: undefined, stated, ...(fits[0] === undefined ? {} : { reference: fits[0] }) };
  }
  const follows = gradeFor(claim, rise, reference);
  const other = NUMBERINGS.find((one) => one !== assumed)!;
  const turned = inOurs(written, other);
  if (follows === stated) return { kind: "follows", follows, stated };
  if (follows === undefined)
    return { kind: "refused", follows, stated, because: refusal(claim, rise, reference) ?? "" };
  const roundTo = ROUNDINGS.find((step) => gradeFor(claim, rise, reference, step) === stated);
  if (roundTo !== undefined) return { kind: "rounded", follows, stated, roundTo };
  if (numbering === undefined && follows === turned && turned !== stated)
    return { kind: "other numbering", follows, stated: turned };
  const column = REFERENCE_KINDS.find(
    (kind) => kind !== reference && kind !== "limit" && gradeFor(claim, rise, kind) === stated,
  );
  if (statedRiseAtLoad !== undefined && gradeFor(claim, statedRiseAtLoad.value, reference) === stated)
    return { kind: "projected", follows, stated };
  if (recomputed !== undefined && gradeFor(claim, recomputed, reference) === stated)
    return { kind: "recomputed", follows, stated };
  if (column !== undefined) return { kind: "other column", follows, stated, reference: column };
  return { kind: "does not follow", follows, stated };
}
