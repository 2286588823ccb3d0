import { GreybodyError } from "../errors.js";
import type { AirPath } from "../air/transmission.js";
import { correct } from "../correction/correct.js";
import type { Settings } from "../correction/settings.js";
import type { Band } from "../planck/band.js";

/** A corrected temperature to be explained: the reading and the settings that go with it. */
export interface TemperatureCase {
  /** [K] */
  readonly apparent: number;
  readonly settings: Settings;
  readonly band: Band;
  /** What the transmission of the air was worked out from, where that is known. */
  readonly path?: Pick<AirPath, "distance" | "humidity" | "pressure">;
  /** The degrees of the sheet, "C" where absent: slips on bare numbers hang on them. */
  readonly degrees?: "C" | "F";
}

/** A slip: what it would give for a case [K]; undefined where the case has no room for it or it has no answer. */
export interface TemperatureSlip<Key extends string = string> {
  readonly key: Key;
  readonly apply: (given: TemperatureCase) => number | undefined;
}

/** What an answer would be, or undefined where there is none. */
function orNone(answer: () => number): number | undefined {
  try {
    const value = answer();
    // A stated temperature is above absolute zero, so is what explains it.
    return Number.isFinite(value) && value > 0 ? value : undefined;
  } catch (error) {
    if (error instanceof GreybodyError) return undefined;
    throw error;
  }
}

/** Corrected temperature of the case with some settings changed [K]. @throws as `correct` */
export const corrected = (
  { apparent, settings, band }: TemperatureCase,
  change: Partial<Settings> = {},
  reading = apparent,
): number => correct(reading, { ...settings, ...change }, band).temperature;

/** The settings that a slip changes; undefined where the case has no room for it. */
export type Change = (settings: Settings, given: TemperatureCase) => Partial<Settings> | undefined;

export function slipOfSettings<Key extends string>(key: Key, change: Change): TemperatureSlip<Key> {
  return {
    key,
    apply: (given) => {
      const changed = orNothing(() => change(given.settings, given));
      return changed && orNone(() => corrected(given, changed));
    },
  };
}

/** A slip whose formula stands apart from the settings. */
export function slipOfFormula<Key extends string>(
  key: Key,
  formula: (given: TemperatureCase) => number | undefined,
): TemperatureSlip<Key> {
  return { key, apply: (given) => orNone(() => formula(given) ?? NaN) };
}

function orNothing<Value>(value: () => Value | undefined): Value | undefined {
  try {
    return value();
  } catch (error) {
    if (error instanceof GreybodyError) return undefined;
    throw error;
  }
}

export const transmissionOfAir = ({ airTransmission = 1, outerAirTransmission = 1 }: Settings): number =>
  airTransmission * outerAirTransmission;
export const hasAir = (s: Settings): boolean => transmissionOfAir(s) < 1;
export const hasWindow = ({ windowTransmission = 1, windowReflectance = 0 }: Settings): boolean =>
  windowTransmission < 1 || windowReflectance > 0;

export const NO_AIR: Partial<Settings> = { airTransmission: 1, outerAirTransmission: 1 };
export const NO_WINDOW: Partial<Settings> = { windowTransmission: 1, windowReflectance: 0 };
