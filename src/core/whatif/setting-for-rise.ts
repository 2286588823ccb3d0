import { requireTemperature } from "../correction/settings.js";
import type { CompleteSettings } from "../correction/settings.js";
import { GreybodyError, requireInRange } from "../errors.js";
import type { Hint, Range } from "../errors.js";
import { TEMPERATURE } from "../limits.js";
import type { Band } from "../planck/band.js";
import { tableFor } from "../planck/tables.js";
import type { BandTable } from "../planck/table.js";
import { rootBetween } from "./itp.js";
import { LEVEL } from "./setting-for.js";
import { completeOthers, isTemperature, objectAt, rangeBeside, settingLine } from "./setting-line.js";
import type { OtherSettings, SettingLine, SettingName } from "./setting-line.js";
import { turningPoints } from "./turning.js";

/** Any rise between two objects that can be [K]. */
export const TARGET_RISE: Range = { min: -10_000, max: 10_000 };

export interface SettingForRiseInputs {
  /** Difference of the two corrected temperatures that is wanted, hot less reference [K]. */
  readonly targetRise: number;
  readonly setting: SettingName;
  /** Apparent temperatures of the two [K]. */
  readonly hot: number;
  readonly reference: number;
  /** The settings that both share; of several answers the one nearest to the sought one's own value is taken. */
  readonly others: OtherSettings;
}

/** Between these objects are looked for: twice what is answered for, and where hardly anything radiates [K]. */
const HOTTEST = 20_000;
const COLDEST = 10;
/** Where the table reaches, with both objects in it as a rule [K]. */
const USUAL = { from: 160, to: 2400 };
/** How near a temperature is found [K]. */
const NEAR = 1e-12;
/** An end of what the setting can be that is the answer but for rounding [K]. */
const ON_IT = 1e-9;

/** The two readings under one setting, all else fixed. */
interface Pair {
  readonly signals: readonly [hot: number, reference: number];
  readonly line: SettingLine;
  readonly table: BandTable;
  /** What the setting can be, in x. */
  readonly from: number;
  readonly to: number;
}

const noAnswer = (hint: Hint): GreybodyError =>
  new GreybodyError({ code: "NO_SOLUTION", argument: "target_rise", hint });

/**
 * Value of one setting that two readings share ([K] or [-]) at which their corrected temperatures differ by the target;
 * the reference moves with the setting too.
 * The setting is eliminated: what is left is one equation for the temperature of one object, without poles and without
 * inverting a radiance. Of a temperature or a reflectance it has one answer at most. Of an emissivity or a transmission
 * it may have several: the physical range is searched for all, objects of 160 to 2400 K first, and the one nearest to the
 * setting's own given value is taken, else the largest, which takes out least.
 * @throws INVALID, NOT_GIVEN (which argument), NO_SOLUTION (with the rises that can be reached)
 * Source: measurement equation of equation.ts; root by Oliveira & Takahashi 2020.
 */
export function settingForRise(inputs: SettingForRiseInputs, band: Band): number {
  const { targetRise, setting, hot, reference, others } = inputs;
  requireInRange("target_rise", targetRise, TARGET_RISE);
  requireTemperature("hot", hot);
  requireTemperature("reference", reference);
  const s = completeOthers(setting, others);
  const table = tableFor(band);
  const line = settingLine(setting, s, (t) => table.radiance(t));
  requirePart(setting, line, s);
  const signals = [table.radiance(hot), table.radiance(reference)] as const;
  if (signals[0] === signals[1]) throw noAnswer({ key: "rise-same-readings" });
  const pair = { signals, line, table, ...endsOf(setting, s, table) };
  const found = answers(pair, targetRise);
  if (found.length === 0) throw outOfReach(setting, pair);
  const given = others[setting] ?? NaN;
  const near = isTemperature(setting) ? table.radiance(given) : given;
  const best = nearest(found, near);
  return isTemperature(setting) ? table.temperature(best) : best;
}

/** What moves both signals alike by nothing moves no rise. */
function requirePart(setting: SettingName, line: SettingLine, s: CompleteSettings): void {
  if (line.gainSlope !== 0) return;
  const level = isTemperature(setting) ? line.offsetSlope <= LEVEL * line.gain : line.offsetSlope === 0;
  if (!level) return;
  const why = setting === "windowReflectance" && s.windowTransmission === 1 ? "no-window" : setting;
  throw noAnswer({ key: "rise-no-part", values: { why } });
}

function endsOf(setting: SettingName, s: CompleteSettings, table: BandTable): { from: number; to: number } {
  if (isTemperature(setting)) return { from: 0, to: table.radiance(TEMPERATURE.max ?? Infinity) };
  const { min = 0, max = 1 } = rangeBeside(setting, s);
  return { from: min, to: max };
}

/** Hot less reference [K]; NaN where one of them does not exist. */
function riseAt({ signals, line, table }: Pair, x: number): number {
  const [h, r] = signals.map((signal) => table.temperature(objectAt(line, signal, x)));
  return h! - r!;
}

/** Every value of the setting that gives the rise, rising. */
function answers(pair: Pair, rise: number): number[] {
  const { signals, line, table, from, to } = pair;
  const ends = [from, to].filter((x) => Math.abs(riseAt(pair, x) - rise) <= ON_IT);
  // Two objects of one temperature give one signal, and these are two.
  if (rise === 0) return ends;
  // Told from the object whose signal is further from what the setting leaves alone.
  const parts = signals.map((signal) => signal - line.offset);
  const main = Math.abs(parts[0]!) >= Math.abs(parts[1]!) ? 0 : 1;
  const away = main === 0 ? -rise : rise;
  const [own, other] = [parts[main]!, parts[1 - main]!];
  const { gain, gainSlope, offsetSlope } = line;
  const [lowest, highest] = objectsBetween(pair, main, away);
  if (!(highest > lowest)) return ends;
  const single = gainSlope === 0;
  const balance = single
    ? (t: number) => gain * (table.radiance(t + away) - table.radiance(t)) - (other - own)
    : (t: number) =>
        other * (gainSlope * table.radiance(t) + offsetSlope) -
        own * (gainSlope * table.radiance(t + away) + offsetSlope);
  const between = (low: number, high: number): number[] => {
    if (!(high > low)) return [];
    const grid = single ? [low, high] : withTurns(steps(low, high), balance);
    const all = rootsOf(balance, grid).map((t) => {
      const [l, lAway] = [table.radiance(t), table.radiance(t + away)];
      return single ? (own - gain * l) / offsetSlope : (other - own) / (gainSlope * (lAway - l));
    });
    return all.filter((x) => x >= from && x <= to && x > 0);
  };
  // Beyond what plant can be it is looked only where there is nothing within, and there it is slower.
  const usual = between(Math.max(lowest, USUAL.from), Math.min(highest, USUAL.to));
  const found = [...ends, ...usual];
  return (found.length > 0 ? found : between(lowest, highest)).sort((a, b) => a - b);
}

/** Temperatures that the object may have while the setting goes from end to end and both exist. */
function objectsBetween(pair: Pair, main: 0 | 1, away: number): [number, number] {
  const { signals, line, table, from, to } = pair;
  const signal = signals[main];
  const tempOf = (l: number): number =>
    l > table.radiance(HOTTEST) ? HOTTEST : l > 0 ? Math.max(table.temperature(l), COLDEST) : COLDEST;
  const atTo = tempOf(objectAt(line, signal, to));
  // As a fraction goes to 0 the object goes to where its part of the signal points.
  const goesUp = signal > line.offset;
  const atFrom = line.gainSlope === 0 ? tempOf(objectAt(line, signal, from)) : goesUp ? HOTTEST : COLDEST;
  const floor = Math.max(COLDEST, COLDEST - away);
  return [Math.max(Math.min(atFrom, atTo), floor), Math.max(atFrom, atTo)];
}

/** Steps of equal ratio. */
function steps(from: number, to: number): number[] {
  const count = 100;
  return Array.from({ length: count + 1 }, (_, i) => (i === count ? to : from * (to / from) ** (i / count)));
}

/** The grid and, between its points, where the function turns: two answers may lie between two points. */
function withTurns(grid: readonly number[], of: (x: number) => number): number[] {
  return [...grid, ...turningPoints(of, grid)].sort((a, b) => a - b);
}

function rootsOf(of: (x: number) => number, grid: readonly number[]): number[] {
  const values = grid.map(of);
  return grid.flatMap((b, i) => {
    const a = grid[i - 1];
    if (values[i] === 0) return [b];
    return a !== undefined && values[i - 1]! * values[i]! < 0 ? [rootBetween(of, a, b, NEAR)] : [];
  });
}

/** The one nearest to a value; where there is none, the largest. */
const nearest = (found: readonly number[], to: number): number =>
  found.reduce((best, one) => (Number.isNaN(to) || Math.abs(one - to) <= Math.abs(best - to) ? one : best));

/** The rises that the setting can give, looked at from end to end. */
function outOfReach(setting: SettingName, pair: Pair): GreybodyError {
  const { signals, line, table, from, to } = pair;
  const hottest = table.radiance(HOTTEST);
  const exist = (x: number): boolean =>
    signals.every((signal) => {
      const object = objectAt(line, signal, x);
      return object > 0 && object <= hottest;
    });
  const places = [from, ...Array.from({ length: 60 }, (_, i) => from + (to - from) * 0.75 ** i)].filter(exist);
  if (places.length === 0) return noAnswer({ key: "rise-outshone", values: { setting } });
  const reached = places.map((x) => riseAt(pair, x));
  const values = { setting, low: Math.min(...reached), high: Math.max(...reached) };
  return noAnswer({ key: "rise-out-of-reach", values });
}
