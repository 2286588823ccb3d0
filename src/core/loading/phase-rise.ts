import { requireAirTemp } from "../air/limits.js";
import { requireTemperature } from "../correction/settings.js";
import { GreybodyError, inRange, requireInRange } from "../errors.js";
import { completeLaw, LOAD, loadRatio, REFERENCE_LOAD, requireCurrent, requireEnough } from "./load.js";
import type { LoadLaw, NamedLoad } from "./load.js";
import { projection, requireNotColder } from "./rise-at-load.js";

export interface PhaseRiseInputs extends LoadLaw {
  /** Temperature of each phase [K]; undefined where not given. */
  readonly temps: readonly (number | undefined)[];
  /** Load of each phase, all in one unit; 0 is a phase without current, undefined is not given. */
  readonly loads: readonly (number | undefined)[];
  /** The air the rises are over [K]. */
  readonly surroundingAir: number;
  /** The load the rises are brought to; the largest of the set where absent. */
  readonly commonLoad?: number;
}

/**
 * Rise of each phase over the same air at one common load [K]: what may be subtracted from one another.
 * A phase without an answer holds its error (INVALID, NOT_GIVEN, REFUSED "temps" or "loads"); the others keep theirs.
 * @throws INVALID what holds for the whole set
 */
export function phaseRise(inputs: PhaseRiseInputs): (number | GreybodyError)[] {
  const { temps, loads, surroundingAir, commonLoad, ...law } = inputs;
  const { exponent, minimumLoad } = completeLaw(law);
  requireAirTemp(surroundingAir, "surrounding_air");
  if (commonLoad !== undefined) requireInRange("common_load", commonLoad, REFERENCE_LOAD);
  if (temps.length !== loads.length) {
    const hint = { key: "phases-do-not-fit", values: { temps: temps.length, loads: loads.length } };
    throw new GreybodyError({ code: "INVALID", argument: "loads", hint });
  }
  const largest = loads.reduce<number>((most, load = 0) => (inRange(load, LOAD) && load > most ? load : most), 0);
  return temps.map((temp, i) =>
    answerOrError(() => {
      const phase = i + 1;
      const given = requireGiven("temps", temp, phase);
      const load: NamedLoad = { argument: "loads", value: requireGiven("loads", loads[i], phase) };
      requireTemperature("temps", given);
      const rise = given - surroundingAir;
      requireNotColder("temps", rise);
      const ratio =
        commonLoad === undefined
          ? shareOfLargest(load, largest, minimumLoad)
          : loadRatio(load, { argument: "common_load", value: commonLoad }, minimumLoad);
      return rise * projection(load, ratio, exponent, minimumLoad);
    }),
  );
}

/** Against its own sisters a small load is a light one, never per cent against a fraction. */
function shareOfLargest(load: NamedLoad, largest: number, minimumLoad: number): number {
  requireInRange(load.argument, load.value, LOAD);
  requireCurrent(load);
  requireEnough(load, { argument: "common_load", value: largest }, minimumLoad);
  return load.value / largest;
}

function requireGiven(argument: string, value: number | undefined, phase: number): number {
  if (value !== undefined) return value;
  throw new GreybodyError({ code: "NOT_GIVEN", argument, hint: { key: "phase", values: { phase } } });
}

function answerOrError(answer: () => number): number | GreybodyError {
  try {
    return answer();
  } catch (error) {
    if (error instanceof GreybodyError) return error;
    throw error;
  }
}
