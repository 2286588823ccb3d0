import { ZERO_CELSIUS } from "../constants.js";
import { inRange } from "../errors.js";
import { REFLECTANCE, SUM_SLACK, TRANSMISSION } from "../limits.js";
import type { Band } from "../planck/band.js";
import * as tables from "../planck/table.js";
import type { BandTable } from "../planck/table.js";
import { tableFor } from "../planck/tables.js";
import { gainOf, invert, surroundings } from "./equation.js";
import { Operand, RadianceOperand } from "./operands.js";
import type { Column } from "./operands.js";
import type { CompleteSettings, Settings } from "./settings.js";
import { completeSettings, SETTING_LIMITS } from "./settings.js";

/** Settings of many readings; what is absent takes the default of `Settings`. */
export type SettingsColumns = { readonly [Name in keyof Settings]: Column | undefined } & {
  readonly emissivity: Column;
  readonly reflected: Column;
};

// A constant of this module, not an import: see table.ts.
const SIGNAL = tables.SIGNAL;
const CHUNK = tables.CHUNK;
/** Radiances of the run at hand. */
const WINDOW = new Float64Array(CHUNK);
const OUTER = new Float64Array(CHUNK);
const TOTAL = new Float64Array(CHUNK);

export interface CorrectedBlock {
  /** Corrected temperatures [K]; NaN where a row has no answer (`correct` on that row says why). */
  readonly temperature: Float64Array;
  /** The object's part of each signal [-], where wanted; NaN as above. */
  readonly signalShare?: Float64Array;
}

/**
 * `correct` for many readings: the same equation, limits and table, without an object a row.
 * @param apparent apparent temperatures [K]
 * @param columns settings, each one value or one a reading, as long as `apparent`
 * @param out arrays to write into, as long as `apparent`
 * @param sumSlack how far a window's transmission and reflectance may exceed 1 together where they vary by row [-]
 * @returns how many rows have no answer; those hold NaN
 * Never throws for a value; a bad row never spoils another.
 */
export function correctBlock(
  apparent: Float64Array,
  columns: SettingsColumns,
  band: Band,
  out: CorrectedBlock,
  sumSlack = SUM_SLACK,
): number {
  const table = tableFor(band);
  if (!constantsPossible(columns)) return refuseAll(apparent.length, out);
  const { emissivity, reflected, ...path } = columns;
  if (varies(path)) return correctRows(apparent, columns, stagesOf(columns, table, sumSlack), 1, 0, table, out);
  // What stands between surface and camera is the same for all rows: one gain and one offset.
  const surface = typeof emissivity === "number" && typeof reflected === "number" ? { emissivity, reflected } : BLACK;
  const constant = constantSettings({ ...path, ...surface });
  if (!constant) return refuseAll(apparent.length, out);
  const offset = invert(
    0,
    constant,
    surroundings(constant, (t) => table.radiance(t)),
  ).object;
  const gain = 1 / gainOf(constant);
  return surface === BLACK
    ? correctRows(apparent, columns, {}, gain, offset, table, out)
    : correctConstant(apparent, gain, offset, table, out);
}

/** A surface that reflects nothing; its temperature plays no part. */
const BLACK = { emissivity: 1, reflected: ZERO_CELSIUS };

function varies(columns: Record<string, Column | undefined>): boolean {
  return Object.values(columns).some((column) => typeof column === "object");
}

/** Settings in which NaN is "not given"; in the others it cannot be. */
const MAY_BE_ABSENT: ReadonlySet<string> = new Set(["airTemp", "windowTemp", "outerReflected"]);

/** False where a setting that holds for all rows is out of its range. */
function constantsPossible(columns: SettingsColumns): boolean {
  return Object.entries(SETTING_LIMITS).every(([name, limit]) => {
    const column = columns[name as keyof Settings];
    return typeof column !== "number" || inRange(column, limit) || (Number.isNaN(column) && MAY_BE_ABSENT.has(name));
  });
}

function refuseAll(rows: number, out: CorrectedBlock): number {
  out.temperature.fill(NaN, 0, rows);
  out.signalShare?.fill(NaN, 0, rows);
  return rows;
}

/** The settings where none varies by row; undefined where they do not fit together. */
function constantSettings(columns: SettingsColumns): CompleteSettings | undefined {
  const given = Object.entries(columns).filter(([, column]) => column !== undefined && !Number.isNaN(column));
  try {
    return completeSettings(Object.fromEntries(given) as unknown as Settings);
  } catch {
    return undefined;
  }
}

/** One gain and one offset for all rows. */
function correctConstant(
  apparent: Float64Array,
  gain: number,
  offset: number,
  table: BandTable,
  out: CorrectedBlock,
): number {
  let bad = 0;
  for (let at = 0; at < apparent.length; at += CHUNK) {
    const count = Math.min(CHUNK, apparent.length - at);
    table.radianceInto(apparent, at, SIGNAL, count, gain, offset);
    bad += table.temperatureInto(out.temperature, at, count);
    if (!out.signalShare) continue;
    for (let i = 0; i < count; i++) out.signalShare[at + i] = SIGNAL[i]! > 0 ? SIGNAL[i]! / (SIGNAL[i]! - offset) : NaN;
  }
  return bad;
}

/** Stages of the way back that some row needs; the others are passed over whole. */
interface Stages {
  readonly outerAir?: Operand | undefined;
  readonly window?: WindowOperands | undefined;
  readonly innerAir?: Operand | undefined;
  readonly airTemp?: Operand;
}

function stagesOf(c: SettingsColumns, table: BandTable, sumSlack: number): Stages {
  const playsNoPart = (column: Column | undefined, neutral: number): boolean =>
    column === undefined || column === neutral;
  // A column of air temperatures is read even where no air absorbs: an impossible one is refused all the same.
  const airAnyway = typeof c.airTemp === "object";
  const windowAnyway = typeof c.windowTemp === "object" || typeof c.outerReflected === "object";
  const windowPlays = !playsNoPart(c.windowTransmission, 1) || !playsNoPart(c.windowReflectance, 0) || windowAnyway;
  return {
    outerAir: playsNoPart(c.outerAirTransmission, 1) ? undefined : new Operand(c.outerAirTransmission ?? 1),
    innerAir: playsNoPart(c.airTransmission, 1) && !airAnyway ? undefined : new Operand(c.airTransmission ?? 1),
    airTemp: new Operand(c.airTemp ?? NaN),
    window: windowPlays
      ? {
          transmission: new Operand(c.windowTransmission ?? 1),
          reflectance: new Operand(c.windowReflectance ?? 0),
          temp: new RadianceOperand(c.windowTemp ?? NaN, table, WINDOW),
          outer: new RadianceOperand(c.outerReflected ?? NaN, table, OUTER),
          sumSlack,
        }
      : undefined,
  };
}

/** Stage by stage; the signal enters as gain·L + offset. */
function correctRows(
  apparent: Float64Array,
  c: SettingsColumns,
  stages: Stages,
  gain: number,
  offset: number,
  table: BandTable,
  out: CorrectedBlock,
): number {
  const emissivity = new Operand(c.emissivity);
  const reflected = new Operand(c.reflected);
  const { outerAir, window, innerAir, airTemp } = stages;
  let bad = 0;
  for (let at = 0; at < apparent.length; at += CHUNK) {
    const count = Math.min(CHUNK, apparent.length - at);
    const unmix = (temps: Operand, shares: Operand, mayBeAbsent: boolean): void => {
      table.unmix(temps.values, temps.start(at), shares.values, shares.start(at), count, mayBeAbsent);
    };
    table.radianceInto(apparent, at, SIGNAL, count, gain, offset);
    if (out.signalShare) TOTAL.set(SIGNAL);
    if (outerAir && airTemp) unmix(airTemp, outerAir, true);
    if (window) removeWindow(window, at, count);
    if (innerAir && airTemp) unmix(airTemp, innerAir, true);
    unmix(reflected, emissivity, false);
    bad += table.temperatureInto(out.temperature, at, count);
    if (out.signalShare)
      shareOf(out.signalShare, [emissivity, outerAir, innerAir, window?.transmission], offset, at, count);
  }
  return bad;
}

interface WindowOperands {
  readonly transmission: Operand;
  readonly reflectance: Operand;
  readonly temp: RadianceOperand;
  readonly outer: RadianceOperand;
  readonly sumSlack: number;
}

/** signal ← (signal − εw·L(win) − ρw·L(refl,cam))/τw, NaN where something needed is absent or cannot be. */
function removeWindow(w: WindowOperands, at: number, count: number): void {
  w.temp.load(at, count);
  w.outer.load(at, count);
  const transmissions = w.transmission.values;
  const reflectances = w.reflectance.values;
  const tauStart = w.transmission.start(at);
  const rhoStart = w.reflectance.start(at);
  for (let i = 0; i < count; i++) {
    const tau = transmissions[tauStart + i]!;
    const rho = reflectances[rhoStart + i]!;
    const rest = 1 - tau - rho;
    const emitted = rest > SUM_SLACK ? rest * WINDOW[i]! : 0;
    const value = (SIGNAL[i]! - emitted - rho * OUTER[i]!) / tau;
    // A row in which nothing is absent or impossible is done; the rare others are looked at one by one.
    if (tau > 0 && tau <= 1 && rho > 0 && rho < 1 && rest >= -SUM_SLACK && WINDOW[i]! >= 0 && OUTER[i]! >= 0)
      SIGNAL[i] = value;
    else SIGNAL[i] = windowEdge(w, at, i, tau, rho);
  }
}

/** The rows in which the window does not reflect, is absent, cannot be, or lets through and reflects too much together. */
function windowEdge(w: WindowOperands, at: number, i: number, tau: number, rho: number): number {
  const rest = 1 - tau - rho;
  const absent = (o: RadianceOperand): boolean => Number.isNaN(o.values[o.start(at) + i]!);
  const possible = inRange(tau, TRANSMISSION) && inRange(rho, REFLECTANCE) && rest >= -w.sumSlack;
  const windowKnown = WINDOW[i]! >= 0 || (tau === 1 && absent(w.temp));
  const outerKnown = OUTER[i]! >= 0 || (rho === 0 && absent(w.outer));
  if (!possible || !windowKnown || !outerKnown) return NaN;
  const emitted = Math.abs(rest) > SUM_SLACK ? rest * WINDOW[i]! : 0;
  return (SIGNAL[i]! - emitted - (rho > 0 ? rho * OUTER[i]! : 0)) / tau;
}

/** TOTAL is the whole signal in units of the gain it entered with, plus the offset. */
function shareOf(
  share: Float64Array,
  factors: readonly (Operand | undefined)[],
  offset: number,
  at: number,
  count: number,
): void {
  for (let i = 0; i < count; i++) {
    let gain = 1;
    for (const f of factors) if (f) gain *= f.values[f.start(at) + i]!;
    share[at + i] = SIGNAL[i]! > 0 ? (gain * SIGNAL[i]!) / (TOTAL[i]! - offset) : NaN;
  }
}
