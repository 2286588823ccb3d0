/** Uncertainty of one corrected temperature, first order, with all that went into it. */
import { correct, sensitivities } from "../correction/correct.js";
import type { Sensitivities } from "../correction/correct.js";
import type { Band } from "../planck/band.js";
import { coverageFactor, wholeFreedom } from "./coverage.js";
import { firstOrder } from "./gum.js";
import type { FirstOrder } from "./gum.js";
import { completeReading } from "./inputs.js";
import type { CompleteReading, UncertainReading } from "./inputs.js";

export interface Budget extends CompleteReading, FirstOrder {
  /** Corrected temperature [K]. */
  readonly temperature: number;
  /** ∂(temperature)/∂(input): [K/K] for temperatures, [K] for fractions. */
  readonly sensitivities: Sensitivities;
  /** Effective degrees of freedom, cut to a whole number; Infinity where inputs go together. */
  readonly freedom: number;
  /** Coverage factor k [-]. */
  readonly factor: number;
  /** Expanded uncertainty [K]. */
  readonly expanded: number;
}

/**
 * The budget of one reading: standard, combined and expanded uncertainty, and what each input adds.
 * @param coverage coverage probability [-], above 0, below 1
 * @throws as `correct`, and as `completeReading` and `coverageFactor` for what is said of the uncertainties
 * Source: JCGM 100:2008, 5.1, 5.2, G.4; sensitivities are the analytic ones of the measurement equation.
 */
export function budget(reading: UncertainReading, coverage: number, band: Band): Budget {
  const complete = completeReading(reading);
  const { apparent, settings } = reading;
  const { temperature } = correct(apparent, settings, band);
  const slopes = sensitivities(apparent, settings, band);
  const terms = complete.inputs.map(({ name, standard, freedom }) => ({
    sensitivity: slopes[name],
    standard,
    freedom,
  }));
  const combined = firstOrder(terms, complete.correlation);
  const freedom = wholeFreedom(combined.freedom);
  const factor = coverageFactor(coverage, freedom);
  return {
    ...complete,
    ...combined,
    temperature,
    sensitivities: slopes,
    freedom,
    factor,
    expanded: factor * combined.combined,
  };
}
