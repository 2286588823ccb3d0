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

/** No fraction below it is looked at: no camera's number means anything there. */
const SMALLEST = 1e-6;
/** A point of the grid, an end among them, that is the answer but for rounding [K]. */
const ON_IT = 1e-10;
/** How near to the end where the colder object ceases to exist a double still tells one setting from the next. */
const SHORT_OF = 1e-12;

const noAnswer = (hint: Hint): GreybodyError =>
  new GreybodyError({ code: "NO_SOLUTION", argument: "target_rise", hint });

/**
 * Value of one setting that two readings share ([K] or [-]) at which their corrected temperatures differ by the target;
 * the reference moves with the setting too.
 * Of a temperature or a reflectance the rise is monotone in it. Of an emissivity or a transmission it need not be: the
 * physical range is searched for every answer and the one nearest to the setting's own given value is taken, else the
 * largest, which takes out least.
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
  const signals = [table.radiance(hot), table.radiance(reference)] as const;
  if (signals[0] === signals[1]) throw noAnswer({ key: "rise-same-readings" });
  const rise = (x: number): number => {
    const [h, r] = signals.map((signal) => table.temperature(objectAt(line, signal, x)));
    return h! - r!;
  };
  const [from, to] = physicalEnds(setting, line, signals, s, table);
  const monotone = line.gainSlope === 0;
  const grid = monotone ? [from, to] : withTurns(steps(from, to), rise);
  const roots = rootsOf((x) => rise(x) - targetRise, grid);
  if (roots.length === 0) {
    const reached = grid.map(rise).filter((value) => !Number.isNaN(value));
    const [low, high] = [Math.min(...reached), Math.max(...reached)];
    // As the fraction goes to 0 a rise has no end.
    const open = high > TARGET_RISE.max! ? "above" : low < TARGET_RISE.min! ? "below" : "no";
    throw noAnswer({ key: "rise-out-of-reach", values: { setting, low, high, open } });
  }
  const given = others[setting] ?? NaN;
  const near = isTemperature(setting) ? table.radiance(given) : given;
  const found = nearest(roots, Number.isNaN(near) ? Infinity : near);
  return isTemperature(setting) ? table.temperature(found) : found;
}

/** The ends between which the setting can be and both objects exist. */
function physicalEnds(
  setting: SettingName,
  line: SettingLine,
  signals: readonly [number, number],
  s: CompleteSettings,
  table: BandTable,
): [number, number] {
  const least = Math.min(...signals);
  let from: number;
  let to: number;
  if (isTemperature(setting)) {
    if (line.offsetSlope <= LEVEL * line.gain) throw noAnswer({ key: "rise-no-part", values: { why: setting } });
    [from, to] = [0, table.radiance(TEMPERATURE.max ?? Infinity)];
  } else {
    const { min = 0, max = 1, minExcluded } = rangeBeside(setting, s);
    [from, to] = [minExcluded === true ? SMALLEST : min, max];
  }
  // The colder object exists where its radiance is above 0: on one side of this value of the setting.
  const edge = (least - line.offset) / line.offsetSlope;
  const margin = (SHORT_OF * (least + line.offset)) / Math.abs(line.offsetSlope);
  if (line.offsetSlope > 0) to = Math.min(to, edge - margin);
  else if (line.offsetSlope < 0) from = Math.max(from, edge + margin);
  else if (line.gainSlope === 0) {
    const why = s.windowTransmission === 1 ? "no-window" : setting;
    throw noAnswer({ key: "rise-no-part", values: { why } });
  } else if (!(least > line.offset)) to = from;
  if (!(to > from)) throw noAnswer({ key: "rise-outshone", values: { setting } });
  return [from, to];
}

/** Steps of equal ratio, since what a transmission does goes with its inverse. */
function steps(from: number, to: number): number[] {
  const count = 200;
  return Array.from({ length: count + 1 }, (_, i) => (i === count ? to : from * (to / from) ** (i / count)));
}

/** The grid and, between its points, where the rise turns: two answers may lie between two points. */
function withTurns(grid: readonly number[], of: (x: number) => number): number[] {
  return [...grid, ...turningPoints(of, grid)].sort((a, b) => a - b);
}

function rootsOf(of: (x: number) => number, grid: readonly number[]): number[] {
  const roots: number[] = [];
  for (let i = 1; i < grid.length; i++) {
    const [a, b] = [grid[i - 1]!, grid[i]!];
    const [atA, atB] = [of(a), of(b)];
    if (Math.abs(atA) <= ON_IT) roots.push(a);
    else if (Math.sign(atA) * Math.sign(atB) < 0) roots.push(rootBetween(of, a, b, 1e-15 * Math.max(a, b)));
  }
  const last = grid.at(-1)!;
  if (Math.abs(of(last)) <= ON_IT) roots.push(last);
  return roots;
}

const nearest = (roots: readonly number[], to: number): number =>
  roots.reduce((best, root) => (Math.abs(root - to) <= Math.abs(best - to) || to === Infinity ? root : best));
