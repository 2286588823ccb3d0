import { airTransmission } from "../air/transmission.js";
import { ZERO_CELSIUS } from "../constants.js";
import type { Settings } from "../correction/settings.js";
import { windowEmissivity } from "../correction/equation.js";
import { hasAir, hasWindow, NO_AIR, NO_WINDOW, slipOfSettings, transmissionOfAir } from "./temperature-case.js";
import type { TemperatureCase } from "./temperature-case.js";

const celsius = (t: number): number => t + ZERO_CELSIUS;
/** 0 °F. */
const ZERO_FAHRENHEIT = 459.67 / 1.8;

/** A number of °C written as °F and taken for °C again; the same in a sheet of °F. */
export const timesUp = (t: number): number => celsius(1.8 * (t - ZERO_CELSIUS) + 32);
/** A number of °F taken for °C and written as °C; the same in a sheet of °F. */
export const timesDown = (t: number): number => celsius((t - ZERO_CELSIUS - 32) / 1.8);

/** As a camera starts up. */
const START: Settings = { emissivity: 0.95, reflected: celsius(20) };
/** Humidity of a metre of air where none is known: between dry and damp it makes 0.1 %. */
const ORDINARY_HUMIDITY = 0.5;

/** A metre of air, which the camera takes off by itself. */
function metreOfAir({ settings, band, path }: TemperatureCase): Partial<Settings> {
  const airTemp = settings.airTemp ?? START.reflected;
  const humidity = path?.humidity ?? ORDINARY_HUMIDITY;
  return { airTemp, airTransmission: airTransmission({ distance: 1, airTemp, humidity }, band) };
}

/** The air's transmission with another length or humidity of the path, where they are known. */
function otherPath(
  { settings, band, path }: TemperatureCase,
  change: (path: { distance: number; humidity: number }) => { distance: number; humidity: number },
): Partial<Settings> | undefined {
  if (path === undefined || settings.airTemp === undefined) return undefined;
  const air = { ...path, ...change(path), airTemp: settings.airTemp };
  return { airTransmission: airTransmission(air, band) };
}

const FOOT = 0.3048;

/** Slips in the settings: one of them, or two that go together, is another than stated. */
export const SETTING_SLIPS = [
  slipOfSettings("emissivity-1", () => ({ emissivity: 1 })),
  slipOfSettings("emissivity-start", () => ({ emissivity: START.emissivity })),
  slipOfSettings("air-left-out", (s) => (hasAir(s) ? NO_AIR : undefined)),
  slipOfSettings("inner-air-left-out", (s) => (hasTwoAirs(s) ? { airTransmission: 1 } : undefined)),
  slipOfSettings("outer-air-left-out", (s) => (hasTwoAirs(s) ? { outerAirTransmission: 1 } : undefined)),
  slipOfSettings("window-left-out", (s) => (hasWindow(s) ? NO_WINDOW : undefined)),
  slipOfSettings("air-and-window-left-out", (s) =>
    hasWindow(s) && hasAir(s) ? { ...NO_WINDOW, ...NO_AIR } : undefined,
  ),
  slipOfSettings("air-of-a-metre", (s, given) => (hasAir(s) ? { ...NO_AIR, ...metreOfAir(given) } : undefined)),
  slipOfSettings("window-temp-air", ({ airTemp, windowTransmission = 1, windowReflectance = 0 }) =>
    airTemp !== undefined && windowEmissivity(windowTransmission, windowReflectance) > 0
      ? { windowTemp: airTemp }
      : undefined,
  ),
  slipOfSettings("window-reflectance-left-out", ({ windowReflectance = 0 }) =>
    windowReflectance > 0 ? { windowReflectance: 0 } : undefined,
  ),
  slipOfSettings("reflected-air", ({ airTemp }) => (airTemp === undefined ? undefined : { reflected: airTemp })),
  slipOfSettings("reflected-20", () => ({ reflected: celsius(20) })),
  slipOfSettings("reflected-0", () => ({ reflected: ZERO_CELSIUS })),
  slipOfSettings("reflected-0-fahrenheit", (_, { degrees }) =>
    degrees === "F" ? { reflected: ZERO_FAHRENHEIT } : undefined,
  ),
  slipOfSettings("reflected-sides-swapped", ({ reflected, outerReflected }) =>
    outerReflected === undefined ? undefined : { reflected: outerReflected, outerReflected: reflected },
  ),
  slipOfSettings("start-up", () => ({ ...START, ...NO_AIR, ...NO_WINDOW })),
  slipOfSettings("start-up-metre", (_, given) => ({ ...START, ...NO_AIR, ...NO_WINDOW, ...metreOfAir(given) })),
  slipOfSettings("start-up-same-path", (s) => (hasAir(s) || hasWindow(s) ? START : undefined)),
  slipOfSettings("start-up-same-window", (s) => (hasAir(s) && hasWindow(s) ? { ...START, ...NO_AIR } : undefined)),
  slipOfSettings("start-up-metre-same-window", (s, given) =>
    hasWindow(s) ? { ...START, ...NO_AIR, ...metreOfAir(given) } : undefined,
  ),
  slipOfSettings("window-into-emissivity", (s) =>
    hasWindow(s) ? { ...NO_WINDOW, emissivity: s.emissivity * (s.windowTransmission ?? 1) } : undefined,
  ),
  slipOfSettings("path-into-emissivity", (s) =>
    hasAir(s)
      ? {
          ...NO_WINDOW,
          ...NO_AIR,
          emissivity: s.emissivity * (s.windowTransmission ?? 1) * transmissionOfAir(s),
        }
      : undefined,
  ),
  slipOfSettings("inner-path-into-emissivity", (s) =>
    hasTwoAirs(s)
      ? {
          ...NO_WINDOW,
          airTransmission: 1,
          emissivity: s.emissivity * (s.windowTransmission ?? 1) * (s.airTransmission ?? 1),
        }
      : undefined,
  ),
  slipOfSettings("reflectance-for-emissivity", ({ emissivity }) =>
    emissivity < 1 ? { emissivity: 1 - emissivity } : undefined,
  ),
  slipOfSettings("reflected-in-fahrenheit", ({ reflected }) => ({ reflected: timesUp(reflected) })),
  slipOfSettings("reflected-in-celsius", ({ reflected }) => ({ reflected: timesDown(reflected) })),
  slipOfSettings("air-in-fahrenheit", (s) =>
    hasAir(s) && s.airTemp !== undefined ? { airTemp: timesUp(s.airTemp) } : undefined,
  ),
  slipOfSettings("air-in-celsius", (s) =>
    hasAir(s) && s.airTemp !== undefined ? { airTemp: timesDown(s.airTemp) } : undefined,
  ),
  slipOfSettings("feet-for-metres", (_, given) =>
    otherPath(given, (path) => ({ ...path, distance: path.distance / FOOT })),
  ),
  slipOfSettings("metres-for-feet", (_, given) =>
    otherPath(given, (path) => ({ ...path, distance: path.distance * FOOT })),
  ),
  slipOfSettings("humidity-as-fraction", (_, given) =>
    otherPath(given, (path) => ({ ...path, humidity: path.humidity / 100 })),
  ),
] as const;

function hasTwoAirs({ airTransmission = 1, outerAirTransmission = 1 }: Settings): boolean {
  return airTransmission < 1 && outerAirTransmission < 1;
}
