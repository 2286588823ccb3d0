import { AIR_MODEL } from "../../data/air-model.js";
import type { Column } from "../correction/operands.js";
import type { Band } from "../planck/band.js";
import { saturationPressureOf, vapourDensityOf } from "./humidity.js";
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
import { airBand } from "./subbands.js";
import type { AirBand, Weights } from "./subbands.js";

const { T0_K: T0, P0_kPa, CO2_ref_ppm } = AIR_MODEL.constants;
const P0 = P0_kPa * 1000;
const CO2_REFERENCE = CO2_ref_ppm * 1e-6;
const PASCAL_PER_KILOPASCAL = 1000;
const METRES_PER_KILOMETRE = 1000;
/** The model's own cap of an optical depth. */
const DEEPEST = 90;

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
export const DEFAULT_PRESSURE = P0;
export const DEFAULT_SOURCE_TEMP = 300;

/**
 * What a sub-band takes from the temperature of the air, for all sub-bands of a band. Rows in a run mostly share one
 * temperature: it is computed when the temperature changes.
 */
class WarmBand {
  private readonly water: Float64Array;
  private readonly self: Float64Array;
  private readonly gas: Float64Array;
  private airTemp = NaN;
  private saturation = NaN;

  constructor(
    private readonly band: AirBand,
    private readonly excessCo2: number,
  ) {
    this.water = new Float64Array(band.count);
    this.self = new Float64Array(band.count);
    this.gas = new Float64Array(band.count);
  }

  private warm(airTemp: number): void {
    const { band } = this;
    const logTheta = Math.log(T0 / airTemp);
    for (let i = 0; i < band.count; i++) {
      this.water[i] = band.waterAmount[i]! * Math.exp(band.waterTemperature[i]! * logTheta);
      this.self[i] = band.selfContinuum[i]! * Math.exp(band.selfTemperature[i]! * logTheta);
      this.gas[i] =
        band.gasAmount[i]! *
        Math.exp(band.gasTemperature[i]! * logTheta) *
        (1 + band.carbonDioxide[i]! * this.excessCo2);
    }
    this.saturation = saturationPressureOf(airTemp);
    this.airTemp = airTemp;
  }

  /** τ = Σ W·exp(−k) / Σ W over the sub-bands, k from water lines, water continuum and the mixed gases. */
  transmission(distance: number, airTemp: number, humidity: number, pressure: number, weights: Weights): number {
    if (airTemp !== this.airTemp) this.warm(airTemp);
    const { band, water, self, gas } = this;
    const vapour = this.saturation * humidity;
    const p = pressure / P0;
    const w = vapourDensityOf(vapour, airTemp) * distance;
    const selfDensity = (vapour / PASCAL_PER_KILOPASCAL) * w;
    const foreignDensity = p * w;
    // u over B·γ: the pressure that broadens the lines also divides; in the gases it cancels the pressure of the amount.
    const waterRatio = w / p;
    const gasRatio = (distance / METRES_PER_KILOMETRE) * (T0 / airTemp);
    let sum = 0;
    for (let i = 0; i < band.count; i++) {
      const waterLines =
        band.waterGrowth[i]! * (Math.exp(band.waterExponent[i]! * Math.log(1 + water[i]! * waterRatio)) - 1);
      const gasLines = band.gasGrowth[i]! * (Math.exp(band.gasExponent[i]! * Math.log(1 + gas[i]! * gasRatio)) - 1);
      const continuum = self[i]! * selfDensity + band.foreignContinuum[i]! * foreignDensity;
      const depth = p * (waterLines + gasLines) + continuum;
      sum += weights.each[i]! * Math.exp(depth > DEEPEST ? -DEEPEST : -depth);
    }
    return sum / weights.total;
  }
}

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
  return new WarmBand(parts, co2 / CO2_REFERENCE - 1).transmission(
    distance,
    airTemp,
    humidity,
    pressure,
    parts.weightsAt(sourceTemp),
  );
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
  const warm = new WarmBand(parts, co2 / CO2_REFERENCE - 1);
  const distance = reader(columns.distance);
  const airTemp = reader(columns.airTemp);
  const humidity = reader(columns.humidity);
  const pressure = reader(columns.pressure ?? DEFAULT_PRESSURE);
  const sourceTemp = reader(columns.sourceTemp ?? DEFAULT_SOURCE_TEMP);
  let weights: Weights | undefined;
  let weighed = NaN;
  let bad = 0;
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
      out[i] = NaN;
      bad++;
      continue;
    }
    if (weights === undefined || s !== weighed) {
      weights = parts.weightsAt(s);
      weighed = s;
    }
    out[i] = warm.transmission(d, t, h, p, weights);
  }
  return bad;
}

function reader(column: Column): (row: number) => number {
  return typeof column === "number" ? () => column : (row) => column[row] ?? NaN;
}
