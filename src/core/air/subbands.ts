import { AIR_MODEL } from "../../data/air-model.js";
import type { SubBand } from "../../data/air-model.js";
import { SECOND_RADIATION_CONSTANT } from "../constants.js";
import { GreybodyError } from "../errors.js";
import type { Band, Segment } from "../planck/band.js";

const PER_METRE = 100;
/** Intervals of Simpson's rule over the part of a sub-band that one segment of the response covers. */
const INTERVALS = 20;
/** A sliver that only rounding makes (8 µm is 1250 cm⁻¹, an edge of the model), relative. */
const SLIVER = 1e-9;
const BANDS_KEPT = 24;
/** Weights kept a band: readings of one route share few source temperatures. */
const TEMPERATURES_KEPT = 64;

/** How a band divides its weight over its sub-bands, for a source of one temperature. */
export interface Weights {
  readonly each: Float64Array;
  readonly total: number;
}

/** The sub-bands that a band has a share in, a column a parameter, for loops without lookups. */
export class AirBand {
  readonly count: number;
  readonly waterAmount: Float64Array;
  readonly waterGrowth: Float64Array;
  readonly waterExponent: Float64Array;
  readonly waterTemperature: Float64Array;
  readonly selfContinuum: Float64Array;
  readonly selfTemperature: Float64Array;
  readonly foreignContinuum: Float64Array;
  readonly gasAmount: Float64Array;
  readonly gasGrowth: Float64Array;
  readonly gasExponent: Float64Array;
  readonly gasTemperature: Float64Array;
  readonly carbonDioxide: Float64Array;
  private readonly points: readonly SourcePoints[];
  private readonly weights = new Map<number, Weights>();

  constructor(band: Band) {
    const shares = AIR_MODEL.subbands
      .map((sub) => ({ sub, points: pointsOf(sub, band.segments) }))
      .filter((s) => s.points.nu.length > 0);
    const column = (of: (sub: SubBand) => number): Float64Array => Float64Array.from(shares, ({ sub }) => of(sub));
    // Narrower than rounding, a band holds nothing to take a mean of.
    if (shares.length === 0) {
      throw new GreybodyError({ code: "INVALID", argument: "band", given: band.key, hint: { key: "air-band-narrow" } });
    }
    this.count = shares.length;
    this.points = shares.map((s) => s.points);
    // G(u, B, γ) = B·((1 + u/(Bγ))^γ − 1): u/(Bγ) is wanted, so a is stored over Bγ; γ for 2 to the γ·ln.
    this.waterAmount = column((s) => s.a_w / (s.B_w * s.gamma_w));
    this.waterGrowth = column((s) => s.B_w);
    this.waterExponent = column((s) => s.gamma_w * Math.LOG2E);
    this.waterTemperature = column((s) => s.n_w);
    this.selfContinuum = column((s) => s.c_s);
    this.selfTemperature = column((s) => s.n_s);
    this.foreignContinuum = column((s) => s.c_f);
    this.gasAmount = column((s) => s.a_g / (s.B_g * s.gamma_g));
    this.gasGrowth = column((s) => s.B_g);
    this.gasExponent = column((s) => s.gamma_g * Math.LOG2E);
    this.gasTemperature = column((s) => s.n_g);
    this.carbonDioxide = column((s) => s.phi_co2);
  }

  /** The weights for a source of this temperature [K]; kept for the next call with it. */
  weightsAt(sourceTemp: number): Weights {
    return kept(this.weights, sourceTemp, TEMPERATURES_KEPT, () => {
      const each = Float64Array.from(this.points, (p) => weightOf(p, sourceTemp));
      return { each, total: each.reduce((sum, weight) => sum + weight, 0) };
    });
  }
}

/** Points of quadrature: wavenumbers [m⁻¹] and, at each, rule × response × ν³. */
interface SourcePoints {
  readonly nu: readonly number[];
  readonly factor: readonly number[];
}

function pointsOf(sub: SubBand, segments: readonly Segment[]): SourcePoints {
  const nu: number[] = [];
  const factor: number[] = [];
  for (const s of segments) {
    const from = Math.max(sub.nu1 * PER_METRE, 1 / s.hi);
    const to = Math.min(sub.nu2 * PER_METRE, 1 / s.lo);
    if (to - from <= SLIVER * to) continue;
    const step = (to - from) / INTERVALS;
    for (let i = 0; i <= INTERVALS; i++) {
      const at = from + i * step;
      const rule = i === 0 || i === INTERVALS ? 1 : i % 2 === 1 ? 4 : 2;
      const response = s.responseLo + ((1 / at - s.lo) / (s.hi - s.lo)) * (s.responseHi - s.responseLo);
      nu.push(at);
      factor.push((rule * step * response * at ** 3) / 3);
    }
  }
  return { nu, factor };
}

/** ∫ R(ν)·ν³/(exp(c₂ν/T) − 1) dν over the points: what the source sends through the sub-band, but for a constant. */
function weightOf({ nu, factor }: SourcePoints, sourceTemp: number): number {
  return nu.reduce((sum, at, i) => sum + factor[i]! / Math.expm1((SECOND_RADIATION_CONSTANT * at) / sourceTemp), 0);
}

const bands = new Map<string, AirBand>();

/**
 * A band's sub-bands, made at its first use; the first made are dropped when many are in use.
 * @throws INVALID "band" narrower than rounding
 */
export function airBand(band: Band): AirBand {
  return kept(bands, band.key, BANDS_KEPT, () => new AirBand(band));
}

function kept<Key, Value>(cache: Map<Key, Value>, key: Key, capacity: number, make: () => Value): Value {
  const known = cache.get(key);
  if (known !== undefined) return known;
  if (cache.size >= capacity) {
    const first = cache.keys().next();
    if (first.done !== true) cache.delete(first.value);
  }
  const made = make();
  cache.set(key, made);
  return made;
}
