/** Whether drawing from the distributions bears first order out. */
import { RULES } from "../../data/rules.js";
import { GreybodyError } from "../errors.js";
import type { Band } from "../planck/band.js";
import type { Budget } from "./budget.js";
import { coverageFactor } from "./coverage.js";
import type { UncertainReading } from "./inputs.js";
import { monteCarlo } from "./monte-carlo.js";

const DRAWS = 20_000;
const MOST_DRAWS = 200_000;
/** Draws wanted beyond the ends of the interval, so that they tell where it ends. */
const BEYOND = 50;
/** An end of the draws scatters by no more than this share of the expanded uncertainty, or nothing could be told from it. */
const SCATTER = 0.02;

/** Draws that tell both ends of an interval: a quantile scatters by √(p(1 − p)/n) over the density there. */
function drawsFor(coverage: number): number {
  const tail = (1 - coverage) / 2;
  const factor = coverageFactor(coverage, Infinity);
  const density = Math.exp(-0.5 * factor ** 2) / Math.sqrt(2 * Math.PI);
  const told = (tail * (1 - tail)) / (density * factor * SCATTER) ** 2;
  return Math.max(DRAWS, Math.ceil(BEYOND / (1 - coverage)), Math.ceil(told));
}

export interface Agreement {
  /**
   * agrees: both ends within 10 % of the expanded uncertainty; wide: first order holds the whole interval of the draws, and
   * more; short: it leaves part of that interval out; rejected: nearly no draw has an answer.
   */
  readonly verdict: "agrees" | "wide" | "short" | "rejected";
  readonly draws: number;
  /** Ends of the interval of the draws [K]; NaN where they are rejected. */
  readonly low: number;
  readonly high: number;
  /** Larger difference of the ends, as a share of the expanded uncertainty [-]. */
  readonly difference: number;
  /** Share of draws without an answer [-]. */
  readonly rejected: number;
}

/**
 * Compares the interval of first order with that of draws, both without regard to degrees of freedom; undefined where the
 * coverage is so near to 1, or to 0, that too many draws would be needed. Pure: the draws are the same each time.
 * Source: JCGM 101:2008, clause 8, with a tolerance of 10 % instead of digits.
 */
export function agreement(
  found: Budget,
  reading: UncertainReading,
  coverage: number,
  band: Band,
): Agreement | undefined {
  const draws = drawsFor(coverage);
  if (draws > MOST_DRAWS || found.combined === 0) return undefined;
  const reach = coverageFactor(coverage, Infinity) * found.combined;
  try {
    const { low, high, rejected } = monteCarlo(reading, band, { draws, coverage });
    const below = found.temperature - reach - low;
    const above = high - found.temperature - reach;
    const difference = Math.max(Math.abs(below), Math.abs(above)) / reach;
    const past = Math.max(below, above) / reach;
    const tolerance = RULES.first_order_tolerance.value;
    const verdict = difference <= tolerance ? "agrees" : past <= tolerance ? "wide" : "short";
    return { verdict, draws, low, high, difference, rejected };
  } catch (error) {
    if (!(error instanceof GreybodyError) || error.code !== "REFUSED") throw error;
    return { verdict: "rejected", draws, low: NaN, high: NaN, difference: NaN, rejected: 1 };
  }
}
