import { RULES } from "../../data/rules.js";
import { requireTemperature } from "../correction/settings.js";
import { GreybodyError, requireInRange } from "../errors.js";
import type { Band } from "../planck/band.js";
import { requireChoice } from "../severity/criteria.js";
import { budget } from "./budget.js";
import type { Budget } from "./budget.js";
import { coverageFactor } from "./coverage.js";
import { INPUT_NAMES, standardUncertainty, TEMPERATURE_UNCERTAINTY } from "./inputs.js";
import type { InputName, UncertainReading } from "./inputs.js";

/** How the two temperatures of a rise belong together; never assumed. */
export const RELATIONS = [
  "same image, same surface",
  "same image, other surface",
  "two images",
  "air by thermometer",
] as const;
export type Relation = (typeof RELATIONS)[number];

/** The air that a rise is over, where a thermometer measured it. */
export interface ThermometerAir {
  /** [K] */
  readonly temperature: number;
  /** Standard uncertainty [K]; that of ±1 K, rectangular, where absent. */
  readonly standard?: number;
}

export interface RiseUncertainty {
  /** [K] */
  readonly rise: number;
  /** Standard uncertainty of the rise [K]. */
  readonly standard: number;
  /** Coverage factor k [-]. */
  readonly factor: number;
  /** Expanded uncertainty [K]. */
  readonly expanded: number;
}

/** Settings of the surface itself; what stands between it and the camera is one thing for a whole image. */
const OF_THE_SURFACE: readonly InputName[] = ["emissivity", "reflected"];

/**
 * Uncertainty of a rise between two corrected temperatures, first order. What both share is counted as their difference:
 * - "same image, same surface": the camera's offset and every setting;
 * - "same image, other surface": the offset and the path (air, window), not emissivity and reflected temperature;
 * - "two images": nothing, so the root of the sum of both squares;
 * - "air by thermometer": nothing; the reference is the air's temperature, ±1 K where nothing better is known.
 * Of a reading's own uncertainty 0.3 K are repeatability, which no two readings share, also not within one image.
 * The coverage factor is that of the normal distribution: 1.96 at 0.95. With 2 a rise of 20 K over 50 °C, surroundings of
 * 25 ± 3 °C, camera ±2 K, ε 0.95 ± 0.02, all rectangular, has 0.96, 1.4, 3.6 and 2.8 K in the order above; ε 0.85 ± 0.05
 * has 1.4, 3.2, 4.8 and 3.9 K (8 to 14 µm).
 * Degrees of freedom play no part. Inputs of one reading may go together only where the two readings share nothing.
 * @throws as `budget`; INVALID "relation", "reference": one that the relation does not go with; INVALID "correlations" within
 * one image
 * Source: JCGM 100:2008, 5.2, with inputs shared or not; repeatability and thermometer in rules.json.
 */
export function riseUncertainty(
  hot: UncertainReading,
  reference: UncertainReading | ThermometerAir,
  relation: string,
  coverage: number,
  band: Band,
): RiseUncertainty {
  const of = (reading: UncertainReading): Budget => budget(reading, coverage, band);
  return riseBetween(of(hot), "apparent" in reference ? of(reference) : reference, relation, coverage);
}

/** `riseUncertainty` of readings whose budgets stand already. */
export function riseBetween(
  hot: Budget,
  reference: Budget | ThermometerAir,
  relation: string,
  coverage: number,
): RiseUncertainty {
  const known = requireChoice("relation", relation, RELATIONS);
  const isAir = !("contributions" in reference);
  if (isAir !== (known === "air by thermometer")) {
    const hint = { key: isAir ? "reference-reading" : "reference-air" };
    throw new GreybodyError({ code: "INVALID", argument: "reference", hint });
  }
  const variance = isAir ? hot.combined ** 2 + airVariance(reference) : varianceBetween(hot, reference, known);
  const standard = Math.sqrt(variance);
  const factor = coverageFactor(coverage, Infinity);
  return { rise: hot.temperature - reference.temperature, standard, factor, expanded: factor * standard };
}

function airVariance({ temperature, standard }: ThermometerAir): number {
  requireTemperature("reference", temperature);
  const u = standard ?? standardUncertainty(RULES.thermometer_half_width.value, "rectangular");
  requireInRange("apparent_u", u, TEMPERATURE_UNCERTAINTY);
  return u ** 2;
}

function varianceBetween(hot: Budget, reference: Budget, relation: Relation): number {
  if (relation === "two images") return hot.combined ** 2 + reference.combined ** 2;
  if (hot.pairs.length > 0 || reference.pairs.length > 0) {
    const hint = { key: "correlations-in-one-image" };
    throw new GreybodyError({ code: "INVALID", argument: "correlations", hint });
  }
  const sameSurface = relation === "same image, same surface";
  if (sameSurface) requireOneSurface(hot, reference);
  let variance = 0;
  for (const [i, name] of INPUT_NAMES.entries()) {
    const [a, b] = [hot.contributions[i] ?? 0, reference.contributions[i] ?? 0];
    if (name === "apparent") variance += readings(hot, reference);
    else variance += sameSurface || !OF_THE_SURFACE.includes(name) ? (a - b) ** 2 : a ** 2 + b ** 2;
  }
  return variance;
}

/** Two readings of one image: the offset is shared, repeatability is not. */
function readings(hot: Budget, reference: Budget): number {
  const parts = [hot, reference].map(({ inputs, sensitivities }) => {
    const standard = inputs[0]?.standard ?? 0;
    const repeatability = Math.min(standard, RULES.reading_repeatability.value);
    const offset = Math.sqrt(standard ** 2 - repeatability ** 2);
    return { offset: sensitivities.apparent * offset, repeatability: sensitivities.apparent * repeatability };
  });
  const [a, b] = parts as [(typeof parts)[0], (typeof parts)[0]];
  return (a.offset - b.offset) ** 2 + a.repeatability ** 2 + b.repeatability ** 2;
}

/** @throws INVALID "relation" where the settings tell of two surfaces */
function requireOneSurface(hot: Budget, reference: Budget): void {
  for (const name of OF_THE_SURFACE as readonly ("emissivity" | "reflected")[]) {
    if (hot.settings[name] === reference.settings[name]) continue;
    const hint = { key: "other-surface", values: { setting: name } };
    throw new GreybodyError({ code: "INVALID", argument: "relation", given: RELATIONS[0], hint });
  }
}
