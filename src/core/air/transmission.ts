import { AIR_MODEL } from "../../data/air-model.js";
import type { Column } from "../correction/operands.js";
import type { Band } from "../planck/band.js";
import {
  AIR_TEMP,
  HUMIDITY,
  pathWithin,
  PRESSURE,
  requireAirBand,
  requireAirTemp,
  requireCarbonDioxide,
  requireHumidity,
  requirePath,
  requirePressure,
  requireSourceTemp,
  SOURCE_TEMP,
  within,
} from "./limits.js";
import { AirRows, P0 } from "./rows.js";
import { airBand } from "./subbands.js";

const CO2_REFERENCE = AIR_MODEL.constants.CO2_ref_ppm * 1e-6;
/** Rows worked on at a time: their columns stay in the nearest cache. */
const RUN = 256;

/** The air between camera and object. */
export interface AirPath {
  /** Length of the path [m], 0…1000; 0…30 where the air is outside −30…50 °C. */
  readonly distance: number;
  /** Temperature of the air [K], −45…65 °C. */
  readonly airTemp: number;
  /** Relative humidity over water [-], 0…1. */
  readonly humidity: number;
  /** Pressure [Pa], 70…105 kPa; 101.325 kPa where absent. */
  readonly pressure?: number;
  /** Temperature of what is looked at [K]: weighs the parts of the band; 300 K where absent. */
  readonly sourceTemp?: number;
  /** Carbon dioxide [mol/mol]; 420 ppm where absent. */
  readonly co2?: number;
}

/** The same for many rows, each one value or one a row. */
export interface AirColumns {
  readonly distance: Column;
  readonly airTemp: Column;
  readonly humidity: Column;
  readonly pressure?: Column;
  readonly sourceTemp?: Column;
  readonly co2?: number;
}

/** Pressure [Pa] and source temperature [K] taken where none is given. */
const DEFAULT_PRESSURE = P0;
const DEFAULT_SOURCE_TEMP = 300;

/**
 * Transmission of the air on a level path near the ground, mean over the band as the source fills it [-].
 * @param path see `AirPath`
 * @param band within 3.0–14.7 µm; below some 100 cm⁻¹ of width the model's own sub-bands show
 * @throws INVALID (which argument)
 * Standard uncertainty (judgement): long-wave 0.0005 to 3 m, 0.001 at 10 m, 0.003 at 100 m (0.008 hot and humid),
 * 0.015–0.03 at 1 km; mid-wave 0.003, 0.006, 0.015 at 10, 100, 1000 m. No haze, rain or dust. Exactly 1 at distance 0.
 * Source: air-model.json (fitted to LOWTRAN7 line shapes, anchored to line-by-line band means).
 */
export function airTransmission(path: AirPath, band: Band): number {
  const {
    distance,
    airTemp,
    humidity,
    pressure = DEFAULT_PRESSURE,
    sourceTemp = DEFAULT_SOURCE_TEMP,
    co2 = CO2_REFERENCE,
  } = path;
  requireAirTemp(airTemp);
  requirePath(distance, airTemp);
  requireHumidity(humidity);
  requirePressure(pressure);
  requireSourceTemp(sourceTemp);
  requireCarbonDioxide(co2);
  requireAirBand(band);
  const parts = airBand(band);
  const row = new AirRows(parts, co2 / CO2_REFERENCE - 1, 1);
  const out = new Float64Array(1);
  row.add(distance, airTemp, humidity, pressure);
  row.transmissions(parts.weightsAt(sourceTemp), out, 0);
  return out[0]!;
}

/**
 * `airTransmission` for many rows, without an object a row.
 * @param columns each one value or one a row, at least as long as `out`
 * @param out written: τ, NaN where a row has no answer (`airTransmission` on that row says why)
 * @returns how many rows have no answer
 * @throws INVALID "band", "co2": what holds for all rows
 */
export function airTransmissionBlock(columns: AirColumns, band: Band, out: Float64Array): number {
  const { co2 = CO2_REFERENCE } = columns;
  requireCarbonDioxide(co2);
  requireAirBand(band);
  const parts = airBand(band);
  const run = new AirRows(parts, co2 / CO2_REFERENCE - 1, RUN);
  const distance = reader(columns.distance);
  const airTemp = reader(columns.airTemp);
  const humidity = reader(columns.humidity);
  const pressure = reader(columns.pressure ?? DEFAULT_PRESSURE);
  const sourceTemp = reader(columns.sourceTemp ?? DEFAULT_SOURCE_TEMP);
  // The run in hand: rows without a gap, seen against one source temperature.
  let start = 0;
  let source = NaN;
  let bad = 0;
  const finishRun = (end: number): void => {
    if (end > start) run.transmissions(parts.weightsAt(source), out, start);
  };
  for (let i = 0; i < out.length; i++) {
    const d = distance(i);
    const t = airTemp(i);
    const h = humidity(i);
    const p = pressure(i);
    const s = sourceTemp(i);
    if (!(
      within(t, AIR_TEMP) &&
      pathWithin(d, t) &&
      within(h, HUMIDITY) &&
      within(p, PRESSURE) &&
      within(s, SOURCE_TEMP)
    )) {
      finishRun(i);
      start = i + 1;
      out[i] = NaN;
      bad++;
      continue;
    }
    if (s !== source || i - start === RUN) {
      finishRun(i);
      start = i;
      source = s;
    }
    run.add(d, t, h, p);
  }
  finishRun(out.length);
  return bad;
}

function reader(column: Column): (row: number) => number {
  return typeof column === "number" ? () => column : (row) => column[row] ?? NaN;
}
