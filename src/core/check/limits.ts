import { RULES } from "../../data/rules.js";
import { AIR_TEMP } from "../air/limits.js";
import { ZERO_CELSIUS } from "../constants.js";
import type { Range } from "../errors.js";
import { EXPONENT, LOAD, MINIMUM_LOAD } from "../loading/load.js";
import { IFOV, TARGET } from "../optics/spot.js";
import { DATE } from "../plan/calendar.js";

const celsius = (min: number, max: number): Range => ({ min: min + ZERO_CELSIUS, max: max + ZERO_CELSIUS });

const READING = celsius(-40, 1500);
const REFLECTED = celsius(-80, 500);
const WINDOW_TEMP = celsius(-40, 100);
const DISTANCE: Range = { min: 0.05, max: 1000 };
const HUMIDITY: Range = { min: 0.01, max: 1 };
const EMISSIVITY: Range = { min: 0.01, max: 1 };
const AIR_TRANSMISSION: Range = { min: 0, minExcluded: true, max: 1 };
const WINDOW_TRANSMISSION: Range = { min: RULES.window_transmission_least.value, max: 1 };
const MINUTES: Range = { min: 0, max: 60 * 24 * 365 };
const DIFFERENCE: Range = { min: -100, max: 100 };
const EXPANDED: Range = { min: 0, max: 100 };
/** A time of day, or one with its day; which days there may be is asked apart (impossible.ts). */
const TIME: Range = { min: 0, max: 2_958_465 };

/** What a number on a route or in its job can be, by the name of its column, in SI; one that is not here has no limits. */
export const COLUMN_LIMITS: Readonly<Record<string, Range>> = {
  left: READING,
  middle: READING,
  right: READING,
  reading: READING,
  reference: READING,
  amps_left: LOAD,
  amps_middle: LOAD,
  amps_right: LOAD,
  load: LOAD,
  reference_load: LOAD,
  process_load: { min: 0, max: 1.5 },
  expected_max_A: LOAD,
  surrounding_air: AIR_TEMP,
  room_air: AIR_TEMP,
  path_air: AIR_TEMP,
  path_air_used: AIR_TEMP,
  set_air_temp: AIR_TEMP,
  emissivity: EMISSIVITY,
  emissivity_used: EMISSIVITY,
  set_emissivity: EMISSIVITY,
  reflected: REFLECTED,
  reflected_used: REFLECTED,
  reflected_outdoors: REFLECTED,
  outer_reflected: REFLECTED,
  set_reflected: REFLECTED,
  distance: DISTANCE,
  set_distance: DISTANCE,
  humidity: HUMIDITY,
  set_humidity: HUMIDITY,
  air_transmission: AIR_TRANSMISSION,
  set_air_transmission: AIR_TRANSMISSION,
  window_transmission: WINDOW_TRANSMISSION,
  set_window_transmission: WINDOW_TRANSMISSION,
  window_reflectance: { min: 0, max: 0.6 },
  window_temp: WINDOW_TEMP,
  set_window_temp: WINDOW_TEMP,
  ifov: IFOV,
  target_size: TARGET,
  wind: { min: 0, max: 30 },
  hours_since_sun: { min: 0, max: 24 * 365 },
  minutes_since_load_change: MINUTES,
  settling: MINUTES,
  minutes_door_open: MINUTES,
  minutes_camera_out: MINUTES,
  date: DATE,
  time: TIME,
  amps_time: TIME,
  calibrated: DATE,
  calibration_days: { min: 1, max: 3653 },
  range_from: celsius(-273, 3000),
  range_to: celsius(-273, 3000),
  check_source: READING,
  check_reading: READING,
  check_error: DIFFERENCE,
  pressure: { min: 70_000, max: 105_000 },
  minimum_load: MINIMUM_LOAD,
  exponent_high: EXPONENT,
  u_similar: EXPANDED,
  u_similar_low: EXPANDED,
  u_air: EXPANDED,
  u_air_low: EXPANDED,
  rise_U: EXPANDED,
  rise_U_similar: EXPANDED,
  rise_U_air: EXPANDED,
};
