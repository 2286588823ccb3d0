import { AIR_MODEL } from "../../data/air-model.js";
import { ZERO_CELSIUS } from "../constants.js";
import { requireAirTemp, requireHumidity } from "./limits.js";

const { magnus, Rv_J_kgK: WATER_GAS_CONSTANT } = AIR_MODEL.constants;
const PASCAL_PER_HECTOPASCAL = 100;

/** As `saturationPressure`, unchecked. */
export function saturationPressureOf(airTemp: number): number {
  const t = airTemp - ZERO_CELSIUS;
  return PASCAL_PER_HECTOPASCAL * magnus.A_hPa * Math.exp((magnus.b * t) / (magnus.c_C + t));
}

/**
 * Saturation vapour pressure over water, also below freezing [Pa].
 * @param airTemp [K], −45…65 °C
 * @throws INVALID "air_temp"
 * Source: WMO-No. 8, Annex 4.B (pure phase). Within 0.3 % of tables over water, 0…50 °C.
 */
export function saturationPressure(airTemp: number): number {
  requireAirTemp(airTemp);
  return saturationPressureOf(airTemp);
}

/**
 * Partial pressure of water vapour [Pa].
 * @param airTemp [K], −45…65 °C
 * @param humidity relative humidity over water [-], 0…1
 * @throws INVALID "air_temp", "humidity"
 */
export function vapourPressure(airTemp: number, humidity: number): number {
  requireHumidity(humidity);
  return saturationPressure(airTemp) * humidity;
}

/**
 * Mass of water vapour in a volume of air [kg/m³].
 * @param airTemp [K], −45…65 °C
 * @param humidity relative humidity over water [-], 0…1
 * @throws INVALID "air_temp", "humidity"
 */
export function absoluteHumidity(airTemp: number, humidity: number): number {
  return vapourDensityOf(vapourPressure(airTemp, humidity), airTemp);
}

/** As `absoluteHumidity`, from the vapour pressure [Pa], unchecked. */
export function vapourDensityOf(pressure: number, airTemp: number): number {
  return pressure / (WATER_GAS_CONSTANT * airTemp);
}

/**
 * Water vapour along a level path [kg/m²], which is its depth as liquid in mm.
 * @param airTemp [K], −45…65 °C
 * @param humidity relative humidity over water [-], 0…1
 * @param distance length of the path [m]
 * @throws INVALID "air_temp", "humidity"
 */
export function precipitableWater(airTemp: number, humidity: number, distance: number): number {
  return absoluteHumidity(airTemp, humidity) * distance;
}
