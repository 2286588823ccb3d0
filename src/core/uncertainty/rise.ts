import { RULES } from "../../data/rules.js";
import { ZERO_CELSIUS } from "../constants.js";
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
 * Of a reading's own uncertainty 0.3 K are repeatability, which no two readings share, also not within one image. Above
 * 100 °C, where a camera's accuracy is usually in per cent, its error may be a gain and then does not cancel whole.
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

/**
 * Two readings of one image: repeatability is each one's own, the camera's error is shared. That error may be an offset, the
 * same at both, which cancels; or, above the reading from which a camera's accuracy is usually stated in per cent, a gain,
 * which moves both in proportion to their readings in °C and does not cancel between a hot one and a cool one. Which of the
 * two it is nobody knows, so the one that leaves more is taken.
 */
function readings(hot: Budget, reference: Budget): number {
  const parts = [hot, reference].map(({ inputs, sensitivities }) => {
    const { standard = 0, value = NaN } = inputs[0] ?? {};
    const repeatability = Math.min(standard, RULES.reading_repeatability.value);
    return {
      sensitivity: sensitivities.apparent,
      celsius: value - ZERO_CELSIUS,
      shared: Math.sqrt(standard ** 2 - repeatability ** 2),
      repeatability: sensitivities.apparent * repeatability,
    };
  });
  const [a, b] = parts as [(typeof parts)[0], (typeof parts)[0]];
  const offset = a.sensitivity * a.shared - b.sensitivity * b.shared;
  const [most, least] = Math.abs(a.celsius) >= Math.abs(b.celsius) ? [a, b] : [b, a];
  const gain =
    Math.abs(most.celsius) > GAIN_FROM
      ? most.shared * (most.sensitivity - (least.sensitivity * least.celsius) / most.celsius)
      : 0;
  return Math.max(offset ** 2, gain ** 2) + a.repeatability ** 2 + b.repeatability ** 2;
}

/** Reading [°C] above which the share of a camera's usual accuracy is more than its half-width in kelvin. */
const GAIN_FROM = RULES.camera_accuracy.value / RULES.camera_accuracy_share.value;

/** @throws INVALID "relation" where the settings tell of two surfaces */
function requireOneSurface(hot: Budget, reference: Budget): void {
  for (const name of OF_THE_SURFACE as readonly ("emissivity" | "reflected")[]) {
    if (hot.settings[name] === reference.settings[name]) continue;
    const hint = { key: "other-surface", values: { setting: name } };
    throw new GreybodyError({ code: "INVALID", argument: "relation", given: RELATIONS[0], hint });
  }
}
