import { apparent as apparentOf } from "../correction/correct.js";
import { requireTemperature } from "../correction/settings.js";
import type { CompleteSettings, Settings } from "../correction/settings.js";
import { GreybodyError } from "../errors.js";
import type { Hint, Range } from "../errors.js";
import { SUM_SLACK, TEMPERATURE } from "../limits.js";
import type { Band } from "../planck/band.js";
import { tableFor } from "../planck/tables.js";
import type { BandTable } from "../planck/table.js";
import { completeOthers, isTemperature, objectAt, rangeBeside, settingLine } from "./setting-line.js";
import type { OtherSettings, SettingLine, SettingName } from "./setting-line.js";

export interface SettingForInputs {
  /** Corrected temperature that is wanted [K]. */
  readonly target: number;
  /** Which setting, or the reading itself. */
  readonly setting: SettingName | "apparent";
  /** Apparent temperature [K]; not looked at where it is sought itself. */
  readonly apparent?: number;
  /** The settings as given; the one sought is not looked at. */
  readonly others: OtherSettings;
}

/** A setting that moves the signal by less than this share of it moves the temperature by some 1e-7 K: it plays no part. */
export const LEVEL = 1e-9;

const noAnswer = (hint: Hint): GreybodyError => new GreybodyError({ code: "NO_SOLUTION", argument: "target", hint });

/** A fraction that misses an end by no more than rounding is that end. */
function onEnd(value: number, { min, max }: Range): number {
  if (max !== undefined && value > max && value - max <= SUM_SLACK) return max;
  if (min !== undefined && value < min && min - value <= SUM_SLACK) return min;
  return value;
}

/**
 * Value of one setting ([K] or [-]) at which the corrected temperature equals the target, the others as given; closed
 * form in radiance, since every setting is linear there.
 * @throws INVALID, NOT_GIVEN (which argument), NO_SOLUTION (no value of it does that, with what it would take)
 * Source: measurement equation of equation.ts (quantities of ISO 18434-1), solved for the setting.
 */
export function settingFor({ target, setting, apparent = NaN, others }: SettingForInputs, band: Band): number {
  requireTemperature("target", target);
  if (setting === "apparent") return readingFor(target, others, band);
  requireTemperature("apparent", apparent);
  const s = completeOthers(setting, others);
  const table = tableFor(band);
  const line = settingLine(setting, s, (t) => table.radiance(t));
  const signal = table.radiance(apparent);
  const object = table.radiance(target);
  const slope = line.gainSlope * object + line.offsetSlope;
  const scale = isTemperature(setting) ? line.gain : line.gainSlope * object || signal;
  if (Math.abs(slope) <= LEVEL * scale) {
    throw playsNoPart({ setting, target, line, signal, s, table });
  }
  const x = (signal - line.gain * object - line.offset) / slope;
  return isTemperature(setting)
    ? temperatureFor(setting, x, line, signal, table)
    : fractionFor(setting, x, line, signal, s, table);
}

function readingFor(target: number, others: OtherSettings, band: Band): number {
  let found: number;
  try {
    found = apparentOf(target, others as Settings, band);
  } catch (error) {
    // What APPARENT calls object_temp is the target here.
    if (!(error instanceof GreybodyError) || error.argument !== "object_temp") throw error;
    throw new GreybodyError({ ...error, code: error.code, argument: "target" });
  }
  if (found <= (TEMPERATURE.max ?? Infinity)) return found;
  throw noAnswer({ key: "setting-too-hot", values: { setting: "apparent", temperature: found } });
}

/** The object's temperature at a value of the setting; NaN where there is none. */
function objectTemp(line: SettingLine, signal: number, x: number, table: BandTable): number {
  const object = objectAt(line, signal, x);
  return object > 0 && object < Infinity ? table.temperature(object) : NaN;
}

interface NoPart {
  readonly setting: SettingName;
  readonly target: number;
  readonly line: SettingLine;
  readonly signal: number;
  readonly s: CompleteSettings;
  readonly table: BandTable;
}

/** Whatever the setting is, the same comes out: the target by any value, or by none. */
function playsNoPart({ setting, target, line, signal, s, table }: NoPart): GreybodyError {
  const { max = 1 } = rangeBeside(setting, s);
  const somewhere = isTemperature(setting) ? table.radiance(300) : max;
  const temperature = objectTemp(line, signal, somewhere, table);
  const any = Math.abs(temperature - target) <= 1e-6;
  // Where only this target makes it play no part, every other value gives another temperature, none the target.
  const fits = any ? "any" : line.gainSlope === 0 && !Number.isNaN(temperature) ? "fixed" : "none";
  const why = setting === "windowReflectance" && s.windowTransmission === 1 ? "no-window" : setting;
  return noAnswer({ key: "setting-no-part", values: { why, fits, temperature } });
}

function temperatureFor(setting: SettingName, x: number, line: SettingLine, signal: number, table: BandTable): number {
  const found = x > 0 ? table.temperature(x) : NaN;
  if (Number.isNaN(found)) {
    const temperature = objectTemp(line, signal, 0, table);
    if (Number.isNaN(temperature)) throw noAnswer({ key: "setting-outshone", values: { setting } });
    throw noAnswer({ key: "setting-too-cold", values: { setting, temperature } });
  }
  if (found <= (TEMPERATURE.max ?? Infinity)) return found;
  throw noAnswer({ key: "setting-too-hot", values: { setting, temperature: found } });
}

function fractionFor(
  setting: SettingName,
  x: number,
  line: SettingLine,
  signal: number,
  s: CompleteSettings,
  table: BandTable,
): number {
  const range = rangeBeside(setting, s);
  const { min = 0, max = 1, minExcluded } = range;
  const value = onEnd(x, range);
  if (value <= max && (minExcluded === true ? value > min : value >= min)) return value;
  const together = asOneAir(setting, value, s);
  if (together !== undefined) throw noAnswer({ key: "setting-air-as-one", values: { setting, value, together } });
  const end = value > max ? max : min;
  const temperature = objectTemp(line, signal, end, table);
  const reached = Number.isNaN(temperature) ? "no" : "yes";
  throw noAnswer({ key: "setting-beyond", values: { setting, value, end, reached, temperature } });
}

/** Without a window both airs are one: what one of them alone cannot be, both may be together. */
function asOneAir(setting: SettingName, value: number, s: CompleteSettings): number | undefined {
  if (s.windowTransmission !== 1 || !(value > 1)) return undefined;
  const other =
    setting === "airTransmission" ? s.outerAirTransmission : setting === "outerAirTransmission" ? s.airTransmission : 1;
  return value * other <= 1 + SUM_SLACK ? Math.min(value * other, 1) : undefined;
}
