/**
 * The measurement equation seen from one setting: everything else fixed, gain and offset are straight lines in it,
 *   L(app) = (gain + gainSlope·x)·L(obj) + offset + offsetSlope·x,
 * with x the fraction itself or, of a temperature, its radiance. So each setting has a closed form.
 */
import { gainOf, surroundings, windowEmissivity } from "../correction/equation.js";
import type { RadianceOf } from "../correction/equation.js";
import { completeSettings, SETTING_LIMITS } from "../correction/settings.js";
import type { CompleteSettings, Settings } from "../correction/settings.js";
import type { Range } from "../errors.js";
import { SUM_SLACK } from "../limits.js";

export type SettingName = keyof Required<Settings>;

/** The settings beside the one that is sought; its own may be absent and is not looked at. */
export type OtherSettings = Partial<Settings>;

export interface SettingLine {
  readonly gain: number;
  readonly gainSlope: number;
  readonly offset: number;
  readonly offsetSlope: number;
}

const TEMPERATURES: readonly SettingName[] = ["reflected", "airTemp", "windowTemp", "outerReflected"];

/** True where x is a radiance. */
export const isTemperature = (setting: SettingName): boolean => TEMPERATURES.includes(setting);

/** Any value in the place of the one sought, such that the check of the others asks for all that it needs. */
function standIn(setting: SettingName, others: OtherSettings): number {
  if (isTemperature(setting)) return 300;
  const rest = (taken = 0): number => (taken > 0 && taken < 1 ? (1 - taken) / 2 : 0.5);
  if (setting === "windowTransmission") return rest(others.windowReflectance);
  // A window that lets all through has nothing left to reflect: 0 then, and the line is level.
  if (setting === "windowReflectance") {
    const { windowTransmission = 1 } = others;
    return windowTransmission < 1 - SUM_SLACK ? rest(windowTransmission) : 0;
  }
  return 0.5;
}

/**
 * The others, checked and complete, with some value in the place of the one sought.
 * @throws INVALID, NOT_GIVEN with the name of the setting
 */
export function completeOthers(setting: SettingName, others: OtherSettings): CompleteSettings {
  const own = { [setting]: standIn(setting, others) };
  // What is absent that must be there is refused by the check itself, which never trusts its types.
  return completeSettings({ ...others, ...own } as Settings);
}

/** What the setting can be beside the others: a window's transmission and reflectance are at most 1 together. */
export function rangeBeside(setting: SettingName, s: CompleteSettings): Range {
  const limits = SETTING_LIMITS[setting];
  if (setting === "windowTransmission") return { ...limits, max: 1 - s.windowReflectance };
  if (setting === "windowReflectance") return { min: 0, max: 1 - s.windowTransmission };
  return limits;
}

/** @param s complete, the sought one's own value not looked at */
export function settingLine(setting: SettingName, s: CompleteSettings, radianceOf: RadianceOf): SettingLine {
  const l = surroundings(s, radianceOf);
  const { emissivity, airTransmission: tau1, windowTransmission: tauW, outerAirTransmission: tau2 } = s;
  const rho = s.windowReflectance;
  const emitted = windowEmissivity(tauW, rho) * l.window;
  const mirrored = rho * l.outerReflected;
  const airOutside = (1 - tau2) * l.air;
  const airInside = (1 - tau1) * l.air;
  const reflection = (1 - emissivity) * l.reflected;
  /** Signal before the window of an object that radiates nothing. */
  const dark = tau1 * reflection + airInside;
  const through = tau2 * tauW * tau1;
  const gain = gainOf(s);
  switch (setting) {
    case "emissivity":
      return {
        gain: 0,
        gainSlope: through,
        offset: tau2 * (tauW * (tau1 * l.reflected + airInside) + emitted + mirrored) + airOutside,
        offsetSlope: -through * l.reflected,
      };
    case "reflected":
      return {
        gain,
        gainSlope: 0,
        offset: tau2 * (tauW * airInside + emitted + mirrored) + airOutside,
        offsetSlope: through * (1 - emissivity),
      };
    case "airTransmission":
      return {
        gain: 0,
        gainSlope: tau2 * tauW * emissivity,
        offset: tau2 * (tauW * l.air + emitted + mirrored) + airOutside,
        offsetSlope: tau2 * tauW * (reflection - l.air),
      };
    case "airTemp":
      return {
        gain,
        gainSlope: 0,
        offset: tau2 * (tauW * tau1 * reflection + emitted + mirrored),
        offsetSlope: tau2 * tauW * (1 - tau1) + (1 - tau2),
      };
    case "windowTransmission":
      return {
        gain: 0,
        gainSlope: tau2 * tau1 * emissivity,
        offset: tau2 * ((1 - rho) * l.window + mirrored) + airOutside,
        offsetSlope: tau2 * (dark - l.window),
      };
    case "windowTemp":
      return {
        gain,
        gainSlope: 0,
        offset: tau2 * (tauW * dark + mirrored) + airOutside,
        offsetSlope: tau2 * windowEmissivity(tauW, rho),
      };
    case "windowReflectance":
      return {
        gain,
        gainSlope: 0,
        offset: tau2 * (tauW * dark + (1 - tauW) * l.window) + airOutside,
        offsetSlope: tauW < 1 - SUM_SLACK ? tau2 * (l.outerReflected - l.window) : 0,
      };
    case "outerReflected":
      return {
        gain,
        gainSlope: 0,
        offset: tau2 * (tauW * dark + emitted) + airOutside,
        offsetSlope: tau2 * rho,
      };
    case "outerAirTransmission":
      return {
        gain: 0,
        gainSlope: tauW * tau1 * emissivity,
        offset: l.air,
        offsetSlope: tauW * dark + emitted + mirrored - l.air,
      };
  }
}

/** Radiance of the object at a value of the setting. */
export function objectAt(line: SettingLine, signal: number, x: number): number {
  return (signal - line.offset - line.offsetSlope * x) / (line.gain + line.gainSlope * x);
}
