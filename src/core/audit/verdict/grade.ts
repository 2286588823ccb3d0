/** Whether a stated grade follows from the report's own rise, and by which reading of the criteria. */
import type { CriteriaSet, ReferenceKind } from "../../../data/criteria.js";
import { GreybodyError } from "../../errors.js";
import { criteriaNamed, REFERENCE_KINDS } from "../../severity/criteria.js";
import { grade as gradeOf } from "../../severity/grade.js";
import type { Claim, Printed } from "./claim.js";

/** How a report counts its grades: ours 4 = worst, others 1 = worst; by itself a number tells neither. */
export type Numbering = "4 = worst" | "1 = worst";
export const NUMBERINGS: readonly Numbering[] = ["4 = worst", "1 = worst"];

export interface GradeVerdict {
  readonly kind:
    | "follows"
    | "before rounding"
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
  /** Which rise was graded: the stated one, or the recomputed one where the report states none. */
  readonly of: "stated" | "recomputed";
  /** How the report's grades were taken to count. */
  readonly numbering: Numbering;
  /** Steps of rounding that fit [K], column that fits. */
  readonly roundTo?: readonly number[];
  readonly reference?: ReferenceKind;
  /** Why the criteria give no grade: the key of the refusal; of "needs": what is needed. */
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

/** The criteria that the report names; undefined where they are not among ours. */
export function knownCriteria(criteria: string): CriteriaSet | undefined {
  try {
    return criteriaNamed(criteria);
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

/** @param recomputed the rise as recomputed, with how far its digits leave it open */
export function gradeVerdict(
  claim: Claim,
  written: number,
  numbering: Numbering | undefined,
  recomputed: Printed | undefined,
): GradeVerdict {
  const ours = verdictIn(numbering ?? "4 = worst", claim, written, recomputed);
  if (numbering !== undefined || ours.kind === "follows" || ours.kind === "needs") return ours;
  // More of the report's grades fit the other way to count, so it is held to that one.
  const theirs = verdictIn("1 = worst", claim, written, recomputed);
  return theirs.kind === "follows" && theirs.stated !== ours.stated ? { ...theirs, kind: "other numbering" } : theirs;
}

function verdictIn(numbering: Numbering, claim: Claim, written: number, recomputed: Printed | undefined): GradeVerdict {
  const { reference, statedRiseAtLoad } = claim;
  const printed = claim.statedRise ?? recomputed;
  const stated = inOurs(written, numbering);
  const of = claim.statedRise === undefined ? ("recomputed" as const) : ("stated" as const);
  const needs = { kind: "needs", follows: undefined, stated, of, numbering } as const;
  if (knownCriteria(claim.criteria) === undefined) return { ...needs, because: "criteria" };
  if (printed === undefined) return { ...needs, because: reference === undefined ? "reference or rise" : "rise" };
  const rise = printed.value;
  if (reference === undefined) {
    // Never graded without its reference: it is said over what it would follow.
    const fits = REFERENCE_KINDS.find((kind) => kind !== "limit" && gradeFor(claim, rise, kind) === stated);
    return { ...needs, because: "reference", ...(fits === undefined ? {} : { reference: fits }) };
  }
  const follows = gradeFor(claim, rise, reference);
  const known = { follows, stated, of, numbering };
  if (follows === stated) return { kind: "follows", ...known };
  if (follows === undefined) return { kind: "refused", ...known, because: refusal(claim, rise, reference) ?? "" };
  if (isWithinDigits(claim, reference, stated, recomputed)) return { kind: "before rounding", ...known };
  const roundTo = ROUNDINGS.filter((step) => gradeFor(claim, rise, reference, step) === stated);
  if (roundTo.length > 0) return { kind: "rounded", ...known, roundTo };
  const column = REFERENCE_KINDS.find(
    (kind) => kind !== reference && kind !== "limit" && gradeFor(claim, rise, kind) === stated,
  );
  if (statedRiseAtLoad !== undefined && gradeFor(claim, statedRiseAtLoad.value, reference) === stated)
    return { kind: "projected", ...known };
  if (recomputed !== undefined && gradeFor(claim, recomputed.value, reference) === stated)
    return { kind: "recomputed", ...known };
  if (column !== undefined) return { kind: "other column", ...known, reference: column };
  return { kind: "does not follow", ...known };
}

/**
 * Whether a rise that is printed as the stated one may have had the stated grade before it was rounded: 15.04 K is above 15
 * and printed as 15.0. What the readings leave open narrows that where the two meet.
 */
function isWithinDigits(
  claim: Claim,
  reference: ReferenceKind,
  stated: number,
  recomputed: Printed | undefined,
): boolean {
  const printed = claim.statedRise ?? recomputed;
  if (printed === undefined) return false;
  let [low, high] = [printed.value - printed.half, printed.value + printed.half];
  if (recomputed !== undefined) {
    const [from, to] = [recomputed.value - recomputed.half, recomputed.value + recomputed.half];
    if (from <= high && to >= low) [low, high] = [Math.max(low, from), Math.min(high, to)];
  }
  // A number halfway is rounded away from zero, so the upper end itself belongs to the next one.
  return [low, high - 2e-6].some((rise) => rise >= low && gradeFor(claim, rise, reference) === stated);
}
