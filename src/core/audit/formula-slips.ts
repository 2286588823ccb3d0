import { ZERO_CELSIUS } from "../constants.js";
import { apparent, correct } from "../correction/correct.js";
import { invert, surroundings, windowEmissivity } from "../correction/equation.js";
import type { RadianceOf } from "../correction/equation.js";
import { completeSettings } from "../correction/settings.js";
import type { Settings } from "../correction/settings.js";
import { DEFAULT_BAND, flatBand } from "../planck/band.js";
import { tableFor } from "../planck/tables.js";
import { timesDown, timesUp } from "./setting-slips.js";
import { corrected, slipOfFormula } from "./temperature-case.js";
import type { TemperatureCase } from "./temperature-case.js";

/** A formula on the bare number of the sheet's degrees. */
function onNumber(t: number, degrees: "C" | "F", formula: (number: number) => number): number {
  return degrees === "F" ? formula(t * 1.8 - 459.67) / 1.8 + 459.67 / 1.8 : formula(t - ZERO_CELSIUS) + ZERO_CELSIUS;
}

/** The way back through window and air by hand: what the window adds is `added`. */
function throughWindow(
  { apparent: reading, settings, band }: TemperatureCase,
  added: (emitted: number, mirrored: number) => number,
): number {
  const s = completeSettings(settings);
  const table = tableFor(band);
  const l = surroundings(s, (t) => table.radiance(t));
  const { outside } = invert(table.radiance(reading), s, l);
  const emitted = windowEmissivity(s.windowTransmission, s.windowReflectance) * l.window;
  const inside = (outside - added(emitted, s.windowReflectance * l.outerReflected)) / s.windowTransmission;
  const bare = { ...s, windowTransmission: 1, windowReflectance: 0, outerAirTransmission: 1 };
  return table.temperature(invert(inside, bare, l).object);
}

/** All radiation taken to go with T⁴, whatever the band. */
const FOURTH_POWER: RadianceOf = (t) => t ** 4;

function fourthPower({ apparent: reading, settings }: TemperatureCase): number {
  const s = completeSettings(settings);
  return invert(FOURTH_POWER(reading), s, surroundings(s, FOURTH_POWER)).object ** 0.25;
}

const windowEmits = ({ windowTransmission = 1, windowReflectance = 0 }: Settings): boolean =>
  windowEmissivity(windowTransmission, windowReflectance) > 0;
const windowReflects = ({ windowReflectance = 0 }: Settings): boolean => windowReflectance > 0;

/** All temperatures of the settings changed alike. */
function everyTemperature(s: Settings, change: (t: number) => number): Settings {
  const { reflected, airTemp, windowTemp, outerReflected } = s;
  return {
    ...s,
    reflected: change(reflected),
    ...(airTemp === undefined ? {} : { airTemp: change(airTemp) }),
    ...(windowTemp === undefined ? {} : { windowTemp: change(windowTemp) }),
    ...(outerReflected === undefined ? {} : { outerReflected: change(outerReflected) }),
  };
}

const inBand = (given: TemperatureCase, from: number, to: number): number | undefined => {
  const band = flatBand(from, to);
  return band.key === given.band.key ? undefined : corrected({ ...given, band });
};

/** Slips in the formula, in the direction, in the band. */
export const FORMULA_SLIPS = [
  slipOfFormula("reading-itself", (given) => given.apparent),
  slipOfFormula("window-reflection-left-out", (given) =>
    windowReflects(given.settings) ? throughWindow(given, (emitted) => emitted) : undefined,
  ),
  slipOfFormula("window-emission-left-out", (given) =>
    windowEmits(given.settings) ? throughWindow(given, (_, mirrored) => mirrored) : undefined,
  ),
  slipOfFormula("window-only-divided", (given) =>
    windowEmits(given.settings) && windowReflects(given.settings) ? throughWindow(given, () => 0) : undefined,
  ),
  slipOfFormula("reflected-term-left-out", (given) => {
    const s = completeSettings(given.settings);
    const table = tableFor(given.band);
    const l = surroundings(s, (t) => table.radiance(t));
    return table.temperature(invert(table.radiance(given.apparent), s, l).leaving / s.emissivity);
  }),
  slipOfFormula("corrected-twice", (given) => corrected(given, {}, corrected(given))),
  slipOfFormula("wrong-way", ({ apparent: reading, settings, band }) => apparent(reading, settings, band)),
  slipOfFormula("fourth-power", fourthPower),
  slipOfFormula("band-8-14", (given) => inBand(given, 8, 14)),
  slipOfFormula("band-3-5", (given) => inBand(given, 3, 5)),
  slipOfFormula("band-usual", (given) =>
    given.band.key === DEFAULT_BAND.key ? undefined : corrected({ ...given, band: DEFAULT_BAND }),
  ),
  slipOfFormula(
    "degrees-over-reflected",
    ({ apparent: a, settings: { emissivity, reflected } }) => reflected + (a - reflected) / emissivity,
  ),
  slipOfFormula("degrees-over-air", ({ apparent: a, settings: { emissivity, airTemp } }) =>
    airTemp === undefined ? undefined : airTemp + (a - airTemp) / emissivity,
  ),
  slipOfFormula("degrees-over-emissivity", ({ apparent: a, settings: { emissivity }, degrees = "C" }) =>
    onNumber(a, degrees, (number) => number / emissivity),
  ),
  slipOfFormula("celsius-over-emissivity", ({ apparent: a, settings: { emissivity }, degrees = "C" }) =>
    degrees === "F" ? onNumber(a, "C", (number) => number / emissivity) : undefined,
  ),
  slipOfFormula("fourth-root", ({ apparent: a, settings: { emissivity } }) => a / emissivity ** 0.25),
] as const;

/** 459.67 °F. */
const RANKINE_SHIFT = 459.67 / 1.8;

/** Slips of degrees. */
export const DEGREE_SLIPS = [
  slipOfFormula("result-in-fahrenheit", (given) => timesUp(corrected(given))),
  slipOfFormula("result-in-celsius", (given) => timesDown(corrected(given))),
  slipOfFormula("reading-in-fahrenheit", ({ apparent: a }) => timesUp(a)),
  slipOfFormula("reading-in-celsius", ({ apparent: a }) => timesDown(a)),
  slipOfFormula("corrected-in-fahrenheit", (given) => corrected(given, {}, timesUp(given.apparent))),
  slipOfFormula("corrected-in-celsius", (given) => corrected(given, {}, timesDown(given.apparent))),
  slipOfFormula("fahrenheit-and-back", (given) => timesDown(corrected(given, {}, timesUp(given.apparent)))),
  slipOfFormula("all-fahrenheit-and-back", ({ apparent: a, settings, band }) =>
    timesDown(correct(timesUp(a), everyTemperature(settings, timesUp), band).temperature),
  ),
  slipOfFormula("kelvin-added", (given) => corrected(given) + ZERO_CELSIUS),
  slipOfFormula("kelvin-taken", (given) => corrected(given) - ZERO_CELSIUS),
  slipOfFormula("reading-kelvin-added", ({ apparent: a }) => a + ZERO_CELSIUS),
  slipOfFormula("reading-kelvin-taken", ({ apparent: a }) => a - ZERO_CELSIUS),
  slipOfFormula("corrected-kelvin-added", (given) => corrected(given, {}, given.apparent + ZERO_CELSIUS)),
  slipOfFormula("rankine-added", (given) => (given.degrees === "F" ? corrected(given) + RANKINE_SHIFT : undefined)),
  slipOfFormula("rankine-taken", (given) => (given.degrees === "F" ? corrected(given) - RANKINE_SHIFT : undefined)),
  slipOfFormula("kelvin-number-added", (given) =>
    given.degrees === "F" ? corrected(given) + ZERO_CELSIUS / 1.8 : undefined,
  ),
  slipOfFormula("kelvin-number-taken", (given) =>
    given.degrees === "F" ? corrected(given) - ZERO_CELSIUS / 1.8 : undefined,
  ),
] as const;
