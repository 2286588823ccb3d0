/** One reading with the uncertainties of its ten inputs: what both ways of propagating them start from. */
import { RULES } from "../../data/rules.js";
import type { Sensitivities } from "../correction/correct.js";
import type { CompleteSettings, Settings } from "../correction/settings.js";
import { completeSettings, requireTemperature } from "../correction/settings.js";
import { GreybodyError, requireInRange } from "../errors.js";
import type { Range } from "../errors.js";
import type { Correlation } from "./correlation.js";
import { correlationMatrix } from "./correlation.js";

export type InputName = keyof Sensitivities;

/** The ten inputs, in the order in which they are given. */
export const INPUT_NAMES: readonly InputName[] = [
  "apparent",
  "emissivity",
  "reflected",
  "airTransmission",
  "airTemp",
  "windowTransmission",
  "windowTemp",
  "windowReflectance",
  "outerReflected",
  "outerAirTransmission",
];

const TEMPERATURES: ReadonlySet<InputName> = new Set([
  "apparent",
  "reflected",
  "airTemp",
  "windowTemp",
  "outerReflected",
]);

/** True for a temperature [K], false for a fraction [-]. */
export function isTemperature(name: InputName): boolean {
  return TEMPERATURES.has(name);
}

/** The argument of an input: "air_temp". */
export function argumentOf(name: InputName): string {
  return name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`);
}

/** What an uncertainty is called beside its input: "air_temp_u". */
export function uncertaintyOf(name: InputName): string {
  return `${argumentOf(name)}_u`;
}

export const DISTRIBUTIONS = ["normal", "rectangular", "triangular"] as const;
export type Distribution = (typeof DISTRIBUTIONS)[number];

/** Uncertainty of a temperature [K] and of a fraction [-]; degrees of freedom [-]. */
export const TEMPERATURE_UNCERTAINTY: Range = { min: 0, max: RULES.temperature_uncertainty_most.value };
export const FRACTION_UNCERTAINTY: Range = { min: 0, max: 1 };
export const FREEDOM: Range = { min: 1 };

export interface InputUncertainty {
  /** Standard uncertainty where normal, else the half-width [K] or [-]; 0 is exact. */
  readonly stated: number;
  /** "normal" where absent. */
  readonly distribution?: Distribution;
  /** Degrees of freedom of `stated`, 1 or more; infinite where absent. */
  readonly freedom?: number;
}

/** What is uncertain about one reading; an input without an entry is exact. */
export interface UncertainReading {
  /** Apparent temperature [K]. */
  readonly apparent: number;
  readonly settings: Settings;
  readonly uncertainties: Readonly<Partial<Record<InputName, InputUncertainty>>>;
  readonly correlations?: readonly Correlation<InputName>[];
}

/** An input with everything in its place. */
export interface UncertainInput {
  readonly name: InputName;
  /** [K] or [-]; NaN for a temperature that is not given and plays no part. */
  readonly value: number;
  readonly stated: number;
  readonly distribution: Distribution;
  readonly freedom: number;
  /** Standard uncertainty (k = 1) [K] or [-]. */
  readonly standard: number;
}

export interface CompleteReading {
  /** Ten, in the order of INPUT_NAMES. */
  readonly inputs: readonly UncertainInput[];
  readonly settings: CompleteSettings;
  /** Coefficients of correlation by the places of the inputs, 1 on the diagonal. */
  readonly correlation: readonly (readonly number[])[];
}

/**
 * Standard uncertainty of a distribution: itself where normal, a/√3 rectangular, a/√6 triangular.
 * Source: JCGM 100:2008, 4.3.7 and 4.3.9.
 */
export function standardUncertainty(stated: number, distribution: Distribution): number {
  if (distribution === "normal") return stated;
  return stated / Math.sqrt(distribution === "rectangular" ? 3 : 6);
}

/** Temperatures without which an uncertain fraction has no effect that could be told. */
const NEEDED: readonly (readonly [InputName, keyof CompleteSettings & InputName])[] = [
  ["airTransmission", "airTemp"],
  ["outerAirTransmission", "airTemp"],
  ["windowTransmission", "windowTemp"],
  ["windowReflectance", "windowTemp"],
  ["windowReflectance", "outerReflected"],
];

/**
 * An uncertainty as large as its fraction says that next to nothing of the object may get through. A reflectance alone may be 0.
 * @throws INVALID
 */
function requireLessThanFraction(name: InputName, value: number, stated: number): void {
  if (isTemperature(name) || name === "windowReflectance" || stated < value) return;
  throw new GreybodyError({
    code: "INVALID",
    argument: uncertaintyOf(name),
    given: stated,
    allowed: { max: value, maxExcluded: true },
    hint: { key: "uncertainties-exchanged" },
  });
}

function completeInput(name: InputName, value: number, given: InputUncertainty | undefined): UncertainInput {
  const { stated = 0, distribution = "normal", freedom = Infinity } = given ?? {};
  const allowed = isTemperature(name) ? TEMPERATURE_UNCERTAINTY : FRACTION_UNCERTAINTY;
  const perCent = allowed === FRACTION_UNCERTAINTY && stated > 1 && stated <= 100;
  const hint = perCent ? { key: "per-cent", values: { meant: stated / 100 } } : { key: "uncertainties-exchanged" };
  requireInRange(uncertaintyOf(name), stated, allowed, stated > 0 ? hint : undefined);
  requireLessThanFraction(name, value, stated);
  if (freedom !== Infinity) requireInRange("freedom", freedom, FREEDOM);
  return { name, value, stated, distribution, freedom, standard: standardUncertainty(stated, distribution) };
}

/**
 * Checks a reading and puts every default in its place.
 * @throws INVALID or NOT_GIVEN with the name of a setting, of an uncertainty ("emissivity_u"), "freedom" or "correlations";
 * INVALID "uncertainties" where none is above 0: a result is not exact because nothing was said
 */
export function completeReading(reading: UncertainReading): CompleteReading {
  requireTemperature("apparent", reading.apparent);
  const settings = completeSettings(reading.settings);
  const inputs = INPUT_NAMES.map((name) =>
    completeInput(name, name === "apparent" ? reading.apparent : settings[name], reading.uncertainties[name]),
  );
  const isUncertain = (name: InputName): boolean => inputs.some((input) => input.name === name && input.standard > 0);
  for (const [fraction, temperature] of NEEDED) {
    if (!isUncertain(fraction) || !Number.isNaN(settings[temperature])) continue;
    const hint = { key: "temperature-of-uncertain", values: { input: argumentOf(fraction) } };
    throw new GreybodyError({ code: "NOT_GIVEN", argument: argumentOf(temperature), hint });
  }
  if (!inputs.some((input) => input.standard > 0)) {
    throw new GreybodyError({ code: "INVALID", argument: "uncertainties", hint: { key: "all-exact" } });
  }
  return { inputs, settings, correlation: correlationMatrix(INPUT_NAMES, reading.correlations ?? []) };
}
