import { GreybodyError, requireWhole } from "../errors.js";
import type { Range } from "../errors.js";
import { COVERAGE, requireCoverage } from "./coverage.js";
import { Generator } from "./generator/xoshiro.js";
import { shortestInterval, symmetricInterval } from "./interval.js";

/** Draws of one propagation. */
export const DRAWS = { min: 1000, max: 5_000_000 } satisfies Range;
export const DEFAULT_DRAWS = 100_000;
export const DEFAULT_SEED = 1;
/** Coverage probability of an interval of draws [-]: beyond 0.9999 hardly a draw tells where it ends. */
export const DRAWN_COVERAGE: Range = { ...COVERAGE, max: 0.9999, maxExcluded: false };
/** Fewer draws than this beyond the interval say little of where it ends. */
const FEWEST_BEYOND = 10;
/** With fewer draws left than this share the inputs do not describe what was measured. */
const LEAST_ACCEPTED = 0.1;
/** Draws at a time: few enough to stay in the processor's cache, enough that a call for them costs nothing. */
const BLOCK = 1024;

/** Fills each input's column with draws, one an element; all columns have one length. */
export type Draw = (generator: Generator, columns: readonly Float64Array[]) => void;
/** Puts the model's value for each row of columns into `out`; NaN where there is none. */
export type Model = (columns: readonly Float64Array[], out: Float64Array) => void;

export interface DrawOptions {
  /** Whole number, 1000 to 5,000,000; 100,000 where absent. */
  readonly draws?: number;
  /** Whole number, 1 to 1,000,000,000; 1 where absent. */
  readonly seed?: number;
  /** Coverage probability [-]; 0.95 where absent. */
  readonly coverage?: number;
  /** "symmetric" (where absent): as many draws below as above; or "shortest". */
  readonly interval?: "symmetric" | "shortest";
}

/** What draws give, in the unit of the model. */
export interface Drawn {
  readonly mean: number;
  readonly standardDeviation: number;
  /** Ends of the coverage interval. */
  readonly low: number;
  readonly high: number;
  /** Share of draws for which the model had no value [-]; the others alone make the rest. */
  readonly rejected: number;
}

/** @throws INVALID "draws", "coverage": out of range, or too few draws for that coverage */
function requireDraws(draws: number, coverage: number): void {
  requireWhole("draws", draws, DRAWS);
  requireCoverage(coverage, DRAWN_COVERAGE);
  if (draws * (1 - coverage) >= FEWEST_BEYOND - 1e-6) return;
  const hint = { key: "draws-too-few", values: { needed: Math.ceil(FEWEST_BEYOND / (1 - coverage)) } };
  throw new GreybodyError({ code: "INVALID", argument: "draws", given: draws, hint });
}

/**
 * Propagates distributions through a model by drawing from them. The same seed gives the same draws, in every host.
 * @param inputs how many columns the model takes
 * @throws INVALID "draws", "seed", "coverage"; REFUSED where nearly all draws are rejected
 * Source: JCGM 101:2008, clause 7, with a number of draws chosen beforehand.
 */
export function propagate(inputs: number, draw: Draw, model: Model, options: DrawOptions): Drawn {
  const { draws = DEFAULT_DRAWS, seed = DEFAULT_SEED, coverage = 0.95, interval = "symmetric" } = options;
  requireDraws(draws, coverage);
  const generator = Generator.seeded(seed);
  const columns = Array.from({ length: inputs }, () => new Float64Array(Math.min(BLOCK, draws)));
  const values = new Float64Array(draws);
  for (let at = 0; at < draws; at += BLOCK) {
    const count = Math.min(BLOCK, draws - at);
    const block = count === columns[0]?.length ? columns : columns.map((column) => column.subarray(0, count));
    draw(generator, block);
    model(block, values.subarray(at, at + count));
  }
  const accepted = withoutNaN(values);
  const rejected = 1 - accepted.length / draws;
  if (accepted.length < LEAST_ACCEPTED * draws || accepted.length * (1 - coverage) < 2) {
    throw new GreybodyError({ code: "REFUSED", hint: { key: "draws-rejected", values: { rejected } } });
  }
  const ends = interval === "symmetric" ? symmetricInterval : shortestInterval;
  return { ...moments(accepted), ...ends(accepted, coverage), rejected };
}

/** The values that are numbers, moved to the front. */
function withoutNaN(values: Float64Array): Float64Array {
  let kept = 0;
  for (const value of values) if (Number.isFinite(value)) values[kept++] = value;
  return values.subarray(0, kept);
}

function moments(values: Float64Array): { mean: number; standardDeviation: number } {
  const [first = 0] = values;
  let sum = 0;
  for (let i = 0; i < values.length; i++) sum += values[i]! - first;
  const mean = first + sum / values.length;
  let squares = 0;
  for (let i = 0; i < values.length; i++) squares += (values[i]! - mean) ** 2;
  return { mean, standardDeviation: Math.sqrt(squares / (values.length - 1)) };
}
