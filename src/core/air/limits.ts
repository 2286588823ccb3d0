import { AIR_MODEL } from "../../data/air-model.js";
import { ZERO_CELSIUS } from "../constants.js";
import { GreybodyError, inRange, requireInRange } from "../errors.js";
import type { Hint, Range } from "../errors.js";
import type { Band } from "../planck/band.js";

/** Slack for limits that a conversion of units reaches only to rounding (−49 °F, 98.4 ft), relative. */
const SLACK = 1e-9;
const celsius = (t: number): number => t + ZERO_CELSIUS;
const { validity } = AIR_MODEL;

function range([min = NaN, max = NaN]: readonly number[], toSi: (value: number) => number): Range {
  return { min: toSi(min), max: toSi(max) };
}

/** Temperature of the air [K]: wider than the fit, where only a short path is accepted. */
export const AIR_TEMP: Range = { min: celsius(-45), max: celsius(65) };
/** Temperature of the air over which the model was fitted [K]. */
const FITTED_AIR_TEMP = range(validity.T_air_C, celsius);
/** Length of the path [m]. */
export const DISTANCE = range(validity.d_m, (d) => d);
/** Length of the path outside the fitted temperatures [m]: what is absorbed over 30 m is small, and so is its error. */
const DISTANCE_OUTSIDE_FIT: Range = { min: 0, max: 30 };
/** Relative humidity [-]. */
export const HUMIDITY = range(validity.RH_pct, (percent) => percent / 100);
/** Pressure of the air [Pa]. */
export const PRESSURE = range(validity.P_kPa, (kilopascal) => kilopascal * 1000);
/** Temperature of what is looked at [K]: it only weighs the parts of the band. */
export const SOURCE_TEMP: Range = { min: 100, max: 5000 };
/** Carbon dioxide [mol/mol], around the 420 ppm of the fit. */
const CARBON_DIOXIDE: Range = { min: 280e-6, max: 1000e-6 };
/** Wavelengths of a band [m]: the whole tenths of a micrometre within the model's wavenumbers. */
const AIR_WAVELENGTHS: Range = { min: 3.0e-6, max: 14.7e-6 };

/** In range but for the rounding of a conversion of units. */
export function within(value: number, { min = -Infinity, max = Infinity }: Range): boolean {
  return value >= min - SLACK * Math.abs(min) && value <= max + SLACK * Math.abs(max);
}

function requireWithin(argument: string, value: number, allowed: Range, hint?: Hint): void {
  if (!within(value, allowed)) requireInRange(argument, value, allowed, hint);
}

/** True where the path may be as long as that at this temperature of the air. */
export function pathWithin(distance: number, airTemp: number): boolean {
  return within(distance, within(airTemp, FITTED_AIR_TEMP) ? DISTANCE : DISTANCE_OUTSIDE_FIT);
}

/** @throws INVALID the argument, "air_temp" where not named */
export function requireAirTemp(airTemp: number, argument = "air_temp"): void {
  requireWithin(argument, airTemp, AIR_TEMP);
}

/** @throws INVALID "humidity" */
export function requireHumidity(humidity: number): void {
  const hint = humidity > 1 && humidity <= 100 ? { key: "per-cent", values: { meant: humidity / 100 } } : undefined;
  requireWithin("humidity", humidity, HUMIDITY, hint);
}

/** @throws INVALID "distance" */
export function requirePath(distance: number, airTemp: number): void {
  requireWithin("distance", distance, DISTANCE);
  if (pathWithin(distance, airTemp)) return;
  throw new GreybodyError({
    code: "INVALID",
    argument: "distance",
    given: distance,
    allowed: DISTANCE_OUTSIDE_FIT,
    hint: {
      key: "air-outside-fit",
      values: {
        air_temp: airTemp,
        from: FITTED_AIR_TEMP.min ?? 0,
        to: FITTED_AIR_TEMP.max ?? 0,
        short: DISTANCE_OUTSIDE_FIT.max ?? 0,
        long: DISTANCE.max ?? 0,
      },
    },
  });
}

/** What a pressure is off by where another unit was meant, each a power of ten: Pa, hPa, bar, MPa against kPa. */
const PRESSURE_SLIPS = [1e-3, 0.1, 100, 1000];

/** @throws INVALID "pressure" */
export function requirePressure(pressure: number): void {
  const meant = PRESSURE_SLIPS.map((slip) => pressure * slip).find((value) => inRange(value, PRESSURE));
  const hint = meant === undefined ? undefined : { key: "pressure-unit", values: { meant } };
  requireWithin("pressure", pressure, PRESSURE, hint);
}

/** @throws INVALID "source_temp" */
export function requireSourceTemp(sourceTemp: number): void {
  requireWithin("source_temp", sourceTemp, SOURCE_TEMP);
}

/** @throws INVALID "co2" */
export function requireCarbonDioxide(co2: number): void {
  requireWithin("co2", co2, CARBON_DIOXIDE);
}

/** @throws INVALID "band", saying which wavelengths the model has */
export function requireAirBand(band: Band): void {
  const outside = band.segments.flatMap((s) => [s.lo, s.hi]).find((wavelength) => !within(wavelength, AIR_WAVELENGTHS));
  if (outside !== undefined) {
    throw new GreybodyError({
      code: "INVALID",
      argument: "band",
      given: band.key,
      allowed: AIR_WAVELENGTHS,
      hint: { key: "air-band", values: { wavelength: outside } },
    });
  }
}
