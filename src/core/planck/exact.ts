import { FIRST_RADIATION_CONSTANT, SECOND_RADIATION_CONSTANT } from "../constants.js";
import type { Band, Segment } from "./band.js";
import { gaussLegendre, planckIntegral } from "./integrals.js";
import type { Moment } from "./integrals.js";

const C2 = SECOND_RADIATION_CONSTANT;
/** L = c·Tᵐ·∫x^(m−1)/(eˣ−1)dx: c1L/c2ᵐ for plain (m = 4) and wavelength-weighted (m = 3) radiance. */
const SCALE: Readonly<Record<Moment, number>> = {
  3: FIRST_RADIATION_CONSTANT / C2 ** 3,
  4: FIRST_RADIATION_CONSTANT / C2 ** 4,
};
/** Below this width in x the closed form would subtract nearly equal numbers; twelve points are then exact. */
const NARROW = 1;
const { nodes, weights } = gaussLegendre(12);
/** e^(−x) is 0 in double precision beyond. */
const NOTHING = 745;

/** Radiance of a band and its first two derivatives by temperature. */
export interface RadianceTerms {
  /** [W/(m²·sr)] */
  radiance: number;
  /** [W/(m²·sr·K)] */
  slope: number;
  /** [W/(m²·sr·K²)] */
  curvature: number;
}

/** Adds factor·(the m-th moment's part) between x2 and x1. */
function addMoment(
  m: Moment,
  factor: number,
  x2: number,
  x1: number,
  t: number,
  derivatives: boolean,
  out: RadianceTerms,
): void {
  const scale = factor * SCALE[m] * t ** m;
  const j = planckIntegral(m, x2, x1);
  out.radiance += scale * j;
  if (!derivatives) return;
  const q2 = Math.exp(-x2);
  const q1 = Math.exp(-x1);
  const d2 = -Math.expm1(-x2);
  const d1 = -Math.expm1(-x1);
  const edge2 = (x2 ** m * q2) / d2;
  const edge1 = (x1 ** m * q1) / d1;
  const b = edge2 - edge1;
  const d = (x2 * edge2) / d2 - (x1 * edge1) / d1;
  out.slope += (scale / t) * (m * j + b);
  out.curvature += (scale / (t * t)) * (m * (m - 1) * j + (m - 1) * b + d);
}

/** Adds a segment that is narrow in x, by quadrature on the integrand itself. */
function addNarrow(s: Segment, x2: number, x1: number, t: number, out: RadianceTerms): void {
  const middle = (x1 + x2) / 2;
  // From the wavelengths, not from x1 − x2: in a very narrow band that difference is mostly rounding, another at each t.
  const half = (C2 * (s.hi - s.lo)) / (2 * s.lo * s.hi * t);
  const scale = SCALE[4] * t ** 4 * half;
  for (let i = 0; i < nodes.length; i++) {
    const x = middle + half * (nodes[i] ?? 0);
    // How far along the segment, again without a difference of wavelengths: (λ − lo)/(hi − lo), in x and the node.
    const along = (x2 * (1 - (nodes[i] ?? 0))) / (2 * x);
    const response = s.responseLo + along * (s.responseHi - s.responseLo);
    const d = -Math.expm1(-x);
    const q = Math.exp(-x);
    const part = scale * (weights[i] ?? 0) * response * ((x * x * x * q) / d);
    out.radiance += part;
    out.slope += (part * x) / (d * t);
    out.curvature += ((part * x) / (d * t * t)) * ((x * (1 + q)) / d - 2);
  }
}

/**
 * Radiance of a black body in a band by the closed form, with derivatives where asked for.
 * @param t temperature [K], above 0
 */
export function radianceTerms(band: Band, t: number, derivatives: boolean): RadianceTerms {
  const out: RadianceTerms = { radiance: 0, slope: 0, curvature: 0 };
  for (const s of band.segments) {
    const x1 = C2 / (s.lo * t);
    const x2 = C2 / (s.hi * t);
    if (x2 > NOTHING) continue;
    if (x1 - x2 < NARROW) {
      addNarrow(s, x2, x1, t, out);
      continue;
    }
    const b = (s.responseHi - s.responseLo) / (s.hi - s.lo);
    addMoment(4, s.responseLo - b * s.lo, x2, x1, t, derivatives, out);
    if (b !== 0) addMoment(3, b, x2, x1, t, derivatives, out);
  }
  return out;
}

/**
 * Radiance of a black body in a band, ∫R(λ)·Lλ(λ,T)dλ [W/(m²·sr)].
 * @param t temperature [K], above 0; anything else gives NaN
 * Relative error about 4e-15. Source: CODATA 2018 constants; series Widger & Woodall 1976, Chang & Rhee 1984.
 */
export function radiance(band: Band, t: number): number {
  return t > 0 && t < Infinity ? radianceTerms(band, t, false).radiance : NaN;
}

/** dL/dT [W/(m²·sr·K)], analytic; t [K] above 0, anything else gives NaN. */
export function radianceSlope(band: Band, t: number): number {
  return t > 0 && t < Infinity ? radianceTerms(band, t, true).slope : NaN;
}

/** A first guess: the band taken as one wavelength in its middle. */
function firstGuess(band: Band, target: number): number {
  const first = band.segments[0];
  const last = band.segments[band.segments.length - 1];
  if (!first || !last) return 300;
  const middle = (first.lo + last.hi) / 2;
  let area = 0;
  for (const s of band.segments) area += ((s.responseLo + s.responseHi) / 2) * (s.hi - s.lo);
  const ratio = (FIRST_RADIATION_CONSTANT * area) / (middle ** 5 * target);
  return C2 / (middle * Math.log1p(ratio));
}

/**
 * Temperature [K] of the black body with this radiance in the band.
 * @param target radiance [W/(m²·sr)], above 0; anything else gives NaN, and so does what no double can hold
 * Newton on ln L against 1/T, in which the curve is nearly straight.
 */
export function temperature(band: Band, target: number): number {
  if (!(target > 0 && target < Infinity)) return NaN;
  const wanted = Math.log(target);
  let t = Math.max(firstGuess(band, target), 1);
  for (let step = 0; step < 60; step++) {
    const { radiance: l, slope } = radianceTerms(band, t, true);
    let next: number;
    if (l > 0 && slope > 0) {
      const inverse = 1 / t + ((Math.log(l) - wanted) * l) / (slope * t * t);
      next = inverse > 0 ? 1 / inverse : t * 4;
    } else next = t * 4;
    next = Math.min(Math.max(next, t / 4), t * 4);
    const change = Math.abs(next - t);
    t = next;
    if (!(t < Infinity)) return NaN;
    if (change <= 2e-15 * t) return t;
  }
  // The last digits may swing for ever; what is further off lies where double precision ends.
  const reached = radianceTerms(band, t, false).radiance;
  return Math.abs(Math.log(reached) - wanted) < 1e-9 ? t : NaN;
}
