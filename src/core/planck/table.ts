import { HIGHEST_ANSWER, TEMPERATURE } from "../limits.js";
import type { Band } from "./band.js";
import { radiance, temperature } from "./exact.js";
import * as pool from "./pool.js";
import * as grid from "./quintics.js";

// The loops below read these at every step. Of a constant of its own module the engine knows place and value at compile
// time; what is imported it looks up each time, at twice the cost.
const POOL = pool.POOL;
const FROM = grid.FROM;
const TO = grid.TO;
const QUINTIC = grid.QUINTIC;
const BUCKET = grid.BUCKET;
const OCTAVE_SHIFT = grid.OCTAVE_SHIFT;

/** Longest run the loops work on at a time: its columns stay in the nearest cache. */
export const CHUNK = 512;
/** Radiances of the run at hand, filled by `radianceInto` or by hand, read by `temperatureInto`. */
export const SIGNAL = new Float64Array(CHUNK);
/** The same memory as halves of doubles: positive doubles sort like their bits. */
const signalHalves = new Int32Array(SIGNAL.buffer);

const HIGHEST = TEMPERATURE.max ?? Infinity;

const word = new Float64Array(1);
const halves = new Int32Array(word.buffer);
/** Which half holds sign, exponent and leading digits. */
const UPPER = ((): 0 | 1 => {
  word[0] = 1;
  return halves[1] === 0x3ff00000 ? 1 : 0;
})();

/** The leading bits of a positive double as an integer: a bucket's number before the first is taken off. */
function leadingBits(value: number): number {
  word[0] = value;
  return halves[UPPER]! >> OCTAVE_SHIFT;
}

/** The smallest double with these leading bits. */
function fromLeadingBits(bits: number): number {
  halves[1 - UPPER] = 0;
  halves[UPPER] = bits << OCTAVE_SHIFT;
  return word[0]!;
}

/**
 * Radiance of one band against temperature, tabulated both ways as quintics that carry value, slope and curvature at
 * their ends: forward on a uniform grid, inverse on buckets of the radiance's leading bits. Neither way calls exp or log.
 * Within 1e-8 K of the closed form (long-wave 1e-11 K), monotone; outside 150 to 2400 K the closed form itself.
 */
export class BandTable {
  readonly band: Band;
  private era = -1;
  private perKelvin = 0;
  /** Places in the pool. */
  private forwardAt = 0;
  private inverseAt = 0;
  private firstBucket = 0;
  private lowest = 0;
  private highest = 0;

  constructor(band: Band) {
    this.band = band;
    this.renew();
  }

  /** Builds the table again where the pool has been emptied since. */
  private renew(): void {
    if (this.era === pool.currentEra()) return;
    this.lowest = radiance(this.band, FROM);
    this.highest = radiance(this.band, TO);
    this.firstBucket = leadingBits(this.lowest);
    const forward = grid.buildForward(this.band);
    const inverse = grid.buildInverse(this.band, this.firstBucket, leadingBits(this.highest), fromLeadingBits);
    this.forwardAt = pool.allocate(forward.cells.length + inverse.length);
    this.inverseAt = this.forwardAt + forward.cells.length;
    POOL.set(forward.cells, this.forwardAt);
    POOL.set(inverse, this.inverseAt);
    this.perKelvin = 1 / forward.step;
    this.era = pool.currentEra();
  }

  /** Radiance [W/(m²·sr)] at one temperature [K]; NaN where there is none. */
  radiance(t: number): number {
    if (!(t >= FROM && t < TO)) return radiance(this.band, t);
    this.renew();
    const z = (t - FROM) * this.perKelvin;
    const k = z | 0;
    const u = z - k;
    return quintic(this.forwardAt + k * QUINTIC, u);
  }

  /** Temperature [K] with one radiance [W/(m²·sr)]; NaN for a radiance that is not positive. */
  temperature(l: number): number {
    if (!(l >= this.lowest && l < this.highest)) return temperature(this.band, l);
    this.renew();
    const o = this.inverseAt + (leadingBits(l) - this.firstBucket) * BUCKET;
    return quintic(o + 1, l - POOL[o]!);
  }

  /**
   * `to[i] = gain·L(from[at + i]) + offset` for a run of temperatures [K]; NaN where it cannot be a temperature.
   * The affine part rides along because a correction with fixed settings is just that.
   */
  radianceInto(from: Float64Array, at: number, to: Float64Array, count: number, gain: number, offset: number): void {
    this.renew();
    const { perKelvin, forwardAt } = this;
    let missed = 0;
    for (let i = 0; i < count; i++) {
      const t = from[at + i]!;
      if (t >= FROM && t < TO) {
        const z = (t - FROM) * perKelvin;
        const k = z | 0;
        const u = z - k;
        const v = u * u;
        const o = forwardAt + k * QUINTIC;
        // The quintic in two chains rather than one: the processor works on both at once.
        const value =
          POOL[o]! + u * POOL[o + 1]! + v * (POOL[o + 2]! + u * POOL[o + 3]! + v * (POOL[o + 4]! + u * POOL[o + 5]!));
        to[i] = gain * value + offset;
      } else missed++;
    }
    if (missed === 0) return;
    for (let i = 0; i < count; i++) {
      const t = from[at + i]!;
      if (!(t >= FROM && t < TO)) to[i] = t <= HIGHEST ? gain * radiance(this.band, t) + offset : NaN;
    }
  }

  /**
   * Takes a foreign part out of a run of signals: SIGNAL[i] ← (SIGNAL[i] − (1−s)·L(t))/s with share s = shares[shareAt + i]
   * and t = temps[at + i]; NaN where one of them cannot be. A NaN temperature is "not given": where that may be, it is
   * passed over with a share of 1.
   */
  unmix(
    temps: Float64Array,
    at: number,
    shares: Float64Array,
    shareAt: number,
    count: number,
    mayBeAbsent: boolean,
  ): void {
    this.renew();
    const { perKelvin, forwardAt } = this;
    for (let i = 0; i < count; i++) {
      const t = temps[at + i]!;
      const share = shares[shareAt + i]!;
      if (t >= FROM && t < TO && share > 0 && share <= 1) {
        const z = (t - FROM) * perKelvin;
        const k = z | 0;
        const u = z - k;
        const v = u * u;
        const o = forwardAt + k * QUINTIC;
        const l =
          POOL[o]! + u * POOL[o + 1]! + v * (POOL[o + 2]! + u * POOL[o + 3]! + v * (POOL[o + 4]! + u * POOL[o + 5]!));
        const signal = SIGNAL[i]!;
        // Not l + (signal − l)/share: a share of 1 must leave the signal as it is, also beside a far stronger l.
        SIGNAL[i] = signal + (signal - l) * ((1 - share) / share);
      } else SIGNAL[i] = this.unmixRare(SIGNAL[i]!, t, share, mayBeAbsent);
    }
  }

  private unmixRare(signal: number, t: number, share: number, mayBeAbsent: boolean): number {
    if (mayBeAbsent && share === 1 && Number.isNaN(t)) return signal;
    const l = t <= HIGHEST ? radiance(this.band, t) : NaN;
    return share > 0 && share <= 1 ? signal + (signal - l) * ((1 - share) / share) : NaN;
  }

  /** `to[at + i] = T(SIGNAL[i])` for a run; NaN where the signal is not positive or T is none that a body has (and the signal then too). Returns how many are NaN. */
  temperatureInto(to: Float64Array, at: number, count: number): number {
    this.renew();
    const { lowest, highest, firstBucket, inverseAt } = this;
    let missed = 0;
    for (let i = 0; i < count; i++) {
      const l = SIGNAL[i]!;
      if (l >= lowest && l < highest) {
        const o = inverseAt + ((signalHalves[2 * i + UPPER]! >> OCTAVE_SHIFT) - firstBucket) * BUCKET;
        const u = l - POOL[o]!;
        const v = u * u;
        to[at + i] =
          POOL[o + 1]! +
          u * POOL[o + 2]! +
          v * (POOL[o + 3]! + u * POOL[o + 4]! + v * (POOL[o + 5]! + u * POOL[o + 6]!));
      } else missed++;
    }
    let bad = 0;
    if (missed === 0) return bad;
    for (let i = 0; i < count; i++) {
      const l = SIGNAL[i]!;
      if (l >= lowest && l < highest) continue;
      const t = temperature(this.band, l);
      const isAnswer = t <= HIGHEST_ANSWER;
      to[at + i] = isAnswer ? t : NaN;
      if (isAnswer) continue;
      SIGNAL[i] = NaN;
      bad++;
    }
    return bad;
  }
}

function quintic(o: number, u: number): number {
  const v = u * u;
  return POOL[o]! + u * POOL[o + 1]! + v * (POOL[o + 2]! + u * POOL[o + 3]! + v * (POOL[o + 4]! + u * POOL[o + 5]!));
}
