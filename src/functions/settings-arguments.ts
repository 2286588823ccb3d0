import type { Settings } from "../core/correction/settings.js";
import { EMISSIVITY, REFLECTANCE, TEMPERATURE, TRANSMISSION } from "../core/limits.js";
import type { ArgumentSpec } from "./contract.js";
import type { Values } from "./lift.js";

export const WINDOW_REFLECTANCE_ARGUMENT: ArgumentSpec = {
  name: "window_reflectance",
  quantity: "fraction",
  help: "reflectance of the window on the camera's side",
  optional: true,
  default: 0,
  range: REFLECTANCE,
};

export const OUTER_REFLECTED_ARGUMENT: ArgumentSpec = {
  name: "outer_reflected",
  quantity: "temperature",
  help: "reflected apparent temperature on the camera's side; needed where the window reflects",
  optional: true,
  range: TEMPERATURE,
};

/** CORRECTED's arguments two to ten: what stands between the object and its reading. */
export const SETTINGS_ARGUMENTS: readonly ArgumentSpec[] = [
  {
    name: "emissivity",
    quantity: "fraction",
    help: "emissivity of the surface in the camera's band",
    range: EMISSIVITY,
    zeroIsBlank: true,
  },
  {
    name: "reflected",
    quantity: "temperature",
    help: "reflected apparent temperature on the object's side",
    range: TEMPERATURE,
  },
  {
    name: "air_transmission",
    quantity: "fraction",
    help: "transmission of the air, between object and window where there is one",
    optional: true,
    default: 1,
    range: TRANSMISSION,
  },
  {
    name: "air_temp",
    quantity: "temperature",
    help: "temperature of the air on the path; needed where a transmission of air is below 1",
    optional: true,
    range: TEMPERATURE,
  },
  {
    name: "window_transmission",
    quantity: "fraction",
    help: "transmission of the window",
    optional: true,
    default: 1,
    range: TRANSMISSION,
  },
  {
    name: "window_temp",
    quantity: "temperature",
    help: "temperature of the window; needed where its transmission is below 1",
    optional: true,
    range: TEMPERATURE,
  },
  WINDOW_REFLECTANCE_ARGUMENT,
  OUTER_REFLECTED_ARGUMENT,
  {
    name: "outer_air_transmission",
    quantity: "fraction",
    help: "transmission of the air between window and camera",
    optional: true,
    default: 1,
    range: TRANSMISSION,
  },
];

/** CORRECTED's first ten arguments: the reading and what stands between. */
export const READING_ARGUMENTS: readonly ArgumentSpec[] = [
  {
    name: "apparent",
    quantity: "temperature",
    help: "apparent temperature: the camera's reading with emissivity and transmission at 1",
    range: TEMPERATURE,
  },
  ...SETTINGS_ARGUMENTS,
];

/** The argument of each setting of the core. */
export const SETTING_NAMES: { readonly [Name in keyof Required<Settings>]: string } = {
  emissivity: "emissivity",
  reflected: "reflected",
  airTransmission: "air_transmission",
  airTemp: "air_temp",
  windowTransmission: "window_transmission",
  windowTemp: "window_temp",
  windowReflectance: "window_reflectance",
  outerReflected: "outer_reflected",
  outerAirTransmission: "outer_air_transmission",
};

type SettingName = keyof typeof SETTING_NAMES;

/** Something for each setting, by the name of its argument. */
export function mapSettings<Value>(of: (argument: string) => Value): Record<SettingName, Value> {
  const entries = Object.entries(SETTING_NAMES).map(([name, argument]) => [name, of(argument)] as const);
  return Object.fromEntries(entries) as Record<SettingName, Value>;
}

/** The settings of one cell; what is not given is left out. */
export function settingsOf(values: Values): Settings {
  return settingsFrom(values.number);
}

/** The settings that numbers by the names of their arguments make; NaN is not given. */
export function settingsFrom(value: (argument: string) => number): Settings {
  const all = Object.entries(mapSettings(value));
  return Object.fromEntries(all.filter(([, given]) => !Number.isNaN(given))) as unknown as Settings;
}
