import type { Band } from "./band.js";
import { radiance, radianceTerms, temperature } from "./exact.js";

/** Table limits [K]; outside them the closed form answers. */
const FROM = 150;
const TO = 2400;
/** Cells of the inverse per octave of radiance, as a power of two. */
const OCTAVE_BITS = 5;
/** Coefficients a cell of the forward table: a quintic. */
const QUINTIC = 6;
/** Numbers a bucket of the inverse: its lower radiance, one over its width, a cubic. */
const BUCKET = 6;
/** Largest error [K] accepted in the middle of a cell. */
const TOLERANCE = 1e-8;

/** The radiance whose upper half the inverse reads as an integer: doubles of one sign sort like their bits. */
const word = new Float64Array(1);
const halves = new Int32Array(word.buffer);
const littleEndian = ((): boolean => {
  word[0] = 1;
  return halves[1] === 0x3ff00000;
})();
const UPPER = littleEndian ? 1 : 0;

function upperHalf(value: number): number {
  word[0] = value;
  return halves[UPPER] ?? 0;
}

/**
 * Radiance of one band against temperature, tabulated: forward a quintic Hermite on a uniform grid (nodes carry L, L′
 * and L″), inverse a cubic seed from a bucket of the radiance's leading bits and one Newton step on the same quintic.
 * Neither way calls exp or log. Error ≤ 1e-8 K against the closed form, monotone; outside the table the closed form.
 */
export class BandTable {
  readonly band: Band;
  private readonly perKelvin: number;
  private readonly cells: Float64Array;
  private readonly buckets: Float64Array;
  private readonly firstBucket: number;
  private readonly lowest: number;
  private readonly highest: number;

  constructor(band: Band) {
    this.band = band;
    let step = 2;
    let cells = buildCells(band, step);
    while (step > 1 / 16 && midCellError(band, step, cells) > TOLERANCE) {
      step /= 2;
      cells = buildCells(band, step);
    }
    this.perKelvin = 1 / step;
    this.cells = cells;
    this.lowest = radiance(band, FROM);
    this.highest = radiance(band, TO);
    this.firstBucket = upperHalf(this.lowest) >> (20 - OCTAVE_BITS);
    this.buckets = buildBuckets(band, this.firstBucket, upperHalf(this.highest) >> (20 - OCTAVE_BITS));
  }

  /** Radiance [W/(m²·sr)] at one temperature [K]; NaN where there is none. */
  radiance(t: number): number {
    if (!(t >= FROM && t < TO)) return radiance(this.band, t);
    const z = (t - FROM) * this.perKelvin;
    const k = z | 0;
    const u = z - k;
    const o = k * QUINTIC;
    const c = this.cells;
    return c[o]! + u * (c[o + 1]! + u * (c[o + 2]! + u * (c[o + 3]! + u * (c[o + 4]! + u * c[o + 5]!))));
  }

  /** Temperature [K] with one radiance [W/(m²·sr)]; NaN for a radiance that is not positive. */
  temperature(l: number): number {
    if (!(l >= this.lowest && l < this.highest)) return temperature(this.band, l);
    const b = this.buckets;
    const at = ((upperHalf(l) >> (20 - OCTAVE_BITS)) - this.firstBucket) * BUCKET;
    const v = (l - b[at]!) * b[at + 1]!;
    return this.polish(l, b[at + 2]! + v * (b[at + 3]! + v * (b[at + 4]! + v * b[at + 5]!)));
  }

  /** One Newton step from a seed that is good to some 1e-6 K. */
  private polish(l: number, seed: number): number {
    const c = this.cells;
    const z = (seed - FROM) * this.perKelvin;
    const k = Math.max(0, Math.min(z | 0, c.length / QUINTIC - 1));
    const u = z - k;
    const o = k * QUINTIC;
    const c1 = c[o + 1]!;
    const c2 = c[o + 2]!;
    const c3 = c[o + 3]!;
    const c4 = c[o + 4]!;
    const c5 = c[o + 5]!;
    const value = c[o]! + u * (c1 + u * (c2 + u * (c3 + u * (c4 + u * c5))));
    const slope = (c1 + u * (2 * c2 + u * (3 * c3 + u * (4 * c4 + u * 5 * c5)))) * this.perKelvin;
    return seed + (l - value) / slope;
  }

  /**
   * `to[i] = gain·L(from[i]) + offset` for a run of temperatures [K]; NaN where there is no radiance.
   * The affine part rides along because a correction with fixed settings is just that.
   */
  radianceInto(from: Float64Array, at: number, to: Float64Array, toAt: number, count: number, gain: number, offset: number): void {
    const c = this.cells;
    const { perKelvin } = this;
    for (let i = 0; i < count; i++) {
      const t = from[at + i]!;
      if (t >= FROM && t < TO) {
        const z = (t - FROM) * perKelvin;
        const k = z | 0;
        const u = z - k;
        const o = k * QUINTIC;
        to[toAt + i] =
          gain * (c[o]! + u * (c[o + 1]! + u * (c[o + 2]! + u * (c[o + 3]! + u * (c[o + 4]! + u * c[o + 5]!))))) + offset;
      } else to[toAt + i] = gain * radiance(this.band, t) + offset;
    }
  }

  /** `to[i] = T(from[i])` for a run of radiances; NaN where not positive. Returns how many are NaN. */
  temperatureInto(from: Float64Array, at: number, to: Float64Array, toAt: number, count: number): number {
    const { lowest, highest, firstBucket, perKelvin } = this;
    const b = this.buckets;
    const c = this.cells;
    const last = c.length / QUINTIC - 1;
    const bits = halvesOf(from);
    let bad = 0;
    for (let i = 0; i < count; i++) {
      const l = from[at + i]!;
      if (l >= lowest && l < highest) {
        const cell = ((bits[2 * (at + i) + UPPER]! >> (20 - OCTAVE_BITS)) - firstBucket) * BUCKET;
        const v = (l - b[cell]!) * b[cell + 1]!;
        const seed = b[cell + 2]! + v * (b[cell + 3]! + v * (b[cell + 4]! + v * b[cell + 5]!));
        const z = (seed - FROM) * perKelvin;
        let k = z | 0;
        if (k > last) k = last;
        const u = z - k;
        const o = k * QUINTIC;
        const c1 = c[o + 1]!;
        const c2 = c[o + 2]!;
        const c3 = c[o + 3]!;
        const c4 = c[o + 4]!;
        const c5 = c[o + 5]!;
        const value = c[o]! + u * (c1 + u * (c2 + u * (c3 + u * (c4 + u * c5))));
        const slope = (c1 + u * (2 * c2 + u * (3 * c3 + u * (4 * c4 + u * 5 * c5)))) * perKelvin;
        to[toAt + i] = seed + (l - value) / slope;
      } else {
        const t = temperature(this.band, l);
        to[toAt + i] = t;
        if (t !== t) bad++;
      }
    }
    return bad;
  }
}

/** The halves of an array's doubles, on the same memory. */
function halvesOf(values: Float64Array): Int32Array {
  return new Int32Array(values.buffer, values.byteOffset, 2 * values.length);
}

function buildCells(band: Band, step: number): Float64Array {
  const count = Math.round((TO - FROM) / step);
  const c = new Float64Array(count * QUINTIC);
  let low = radianceTerms(band, FROM, true);
  for (let k = 0; k < count; k++) {
    const high = radianceTerms(band, FROM + (k + 1) * step, true);
    const d0 = step * low.slope;
    const s0 = (step * step * low.curvature) / 2;
    const rise = high.radiance - low.radiance - d0 - s0;
    const turn = step * high.slope - d0 - 2 * s0;
    const bend = step * step * high.curvature - 2 * s0;
    c.set([low.radiance, d0, s0, 10 * rise - 4 * turn + bend / 2, -15 * rise + 7 * turn - bend, 6 * rise - 3 * turn + bend / 2], k * QUINTIC);
    low = high;
  }
  return c;
}

/** Error [K] in the middle of the coldest cells, where the curve bends most for its height. */
function midCellError(band: Band, step: number, c: Float64Array): number {
  let worst = 0;
  for (let k = 0; k < 8; k++) {
    const o = k * QUINTIC;
    let value = 0;
    for (let j = QUINTIC - 1; j >= 0; j--) value = value * 0.5 + c[o + j]!;
    const exact = radianceTerms(band, FROM + (k + 0.5) * step, true);
    worst = Math.max(worst, Math.abs(value - exact.radiance) / exact.slope);
  }
  return worst;
}

function buildBuckets(band: Band, first: number, last: number): Float64Array {
  const b = new Float64Array((last - first + 1) * BUCKET);
  const knot = (index: number): { l: number; t: number; slope: number } => {
    halves[1 - UPPER] = 0;
    halves[UPPER] = index << (20 - OCTAVE_BITS);
    const l = word[0]!;
    const t = temperature(band, l);
    return { l, t, slope: 1 / radianceTerms(band, t, true).slope };
  };
  let low = knot(first);
  for (let i = first; i <= last; i++) {
    const high = knot(i + 1);
    const width = high.l - low.l;
    const d0 = low.slope * width;
    const d1 = high.slope * width;
    const rise = high.t - low.t;
    b.set([low.l, 1 / width, low.t, d0, 3 * rise - 2 * d0 - d1, d0 + d1 - 2 * rise], (i - first) * BUCKET);
    low = high;
  }
  return b;
}
