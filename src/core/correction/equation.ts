/**
 * The measurement equation of ISO 18434-1, extended by a window:
 *   L(app) = τ₂·{ τw·[ τ₁·( ε·L(obj) + (1−ε)·L(refl) ) + (1−τ₁)·L(air) ] + εw·L(win) + ρw·L(refl,cam) } + (1−τ₂)·L(air)
 * with εw = 1 − τw − ρw. It is linear in L(obj), so both directions are one gain and one offset.
 */
import { SUM_SLACK } from "../limits.js";
import type { CompleteSettings } from "./settings.js";

/** Radiance of a black body at a temperature, [K] → [W/(m²·sr)]. */
export type RadianceOf = (t: number) => number;

/** Radiances of the surroundings; 0 where the term plays no part. */
export interface Surroundings {
  readonly reflected: number;
  readonly air: number;
  readonly window: number;
  readonly outerReflected: number;
}

/** What the window itself emits, never below 0 for rounding's sake. */
export function windowEmissivity(transmission: number, reflectance: number): number {
  const rest = 1 - transmission - reflectance;
  return rest > SUM_SLACK ? rest : 0;
}

export function surroundings(s: CompleteSettings, radianceOf: RadianceOf): Surroundings {
  const orNothing = (t: number): number => (Number.isNaN(t) ? 0 : radianceOf(t));
  return {
    reflected: radianceOf(s.reflected),
    air: orNothing(s.airTemp),
    window: orNothing(s.windowTemp),
    outerReflected: orNothing(s.outerReflected),
  };
}

/** The way back from the signal, step by step: before the outer air, the window, the inner air, the reflection. */
export interface Inverse {
  /** Signal on the window's outer side. */
  readonly outside: number;
  /** Signal on the window's inner side. */
  readonly inside: number;
  /** Signal leaving the object. */
  readonly leaving: number;
  /** Radiance of the object taken as black. */
  readonly object: number;
}

export function invert(signal: number, s: CompleteSettings, l: Surroundings): Inverse {
  const tau2 = s.outerAirTransmission;
  const tauW = s.windowTransmission;
  const tau1 = s.airTransmission;
  const outside = tau2 === 1 ? signal : (signal - (1 - tau2) * l.air) / tau2;
  const emitted = windowEmissivity(tauW, s.windowReflectance) * l.window;
  const inside = (outside - emitted - s.windowReflectance * l.outerReflected) / tauW;
  const leaving = tau1 === 1 ? inside : (inside - (1 - tau1) * l.air) / tau1;
  const object = s.emissivity === 1 ? leaving : (leaving - (1 - s.emissivity) * l.reflected) / s.emissivity;
  return { outside, inside, leaving, object };
}

/** The signal of an object of this radiance. */
export function forward(object: number, s: CompleteSettings, l: Surroundings): number {
  const tau1 = s.airTransmission;
  const tau2 = s.outerAirTransmission;
  const leaving = s.emissivity * object + (1 - s.emissivity) * l.reflected;
  const inside = tau1 * leaving + (1 - tau1) * l.air;
  const emitted = windowEmissivity(s.windowTransmission, s.windowReflectance) * l.window;
  const outside = s.windowTransmission * inside + emitted + s.windowReflectance * l.outerReflected;
  return tau2 * outside + (1 - tau2) * l.air;
}

/** Share of the object's own radiance that reaches the camera. */
export function gainOf(s: CompleteSettings): number {
  return s.outerAirTransmission * s.windowTransmission * s.airTransmission * s.emissivity;
}
