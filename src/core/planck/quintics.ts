import type { Band } from "./band.js";
import { radianceTerms, temperature } from "./exact.js";

/** Table limits [K]; outside them the closed form answers. */
export const FROM = 150;
export const TO = 2400;
/** Numbers a cell of the forward table: the coefficients of a quintic in the cell's own 0…1. */
export const QUINTIC = 6;
/** Numbers a bucket of the inverse: its lowest radiance, then a quintic in what the radiance exceeds it by. */
export const BUCKET = 7;
/** Buckets an octave of radiance are 2⁶: the six digits after the leading one. */
export const OCTAVE_SHIFT = 20 - 6;
/** Largest error [K] accepted in the middle of a cell. */
const TOLERANCE = 1e-8;
const COARSEST = 2;
const FINEST = 1 / 16;

/** Value, slope and curvature at one end of a cell. */
interface End {
  readonly value: number;
  readonly slope: number;
  readonly curvature: number;
}

/** The quintic on 0…width that has these ends, coefficients from the lowest; in units of `width` where scaled. */
function hermite(low: End, high: End, width: number): number[] {
  const d0 = width * low.slope;
  const s0 = (width * width * low.curvature) / 2;
  const rise = high.value - low.value - d0 - s0;
  const turn = width * high.slope - d0 - 2 * s0;
  const bend = width * width * high.curvature - 2 * s0;
  return [
    low.value,
    d0,
    s0,
    10 * rise - 4 * turn + bend / 2,
    -15 * rise + 7 * turn - bend,
    6 * rise - 3 * turn + bend / 2,
  ];
}

function radianceEnd(band: Band, t: number): End {
  const { radiance: value, slope, curvature } = radianceTerms(band, t, true);
  return { value, slope, curvature };
}

function forwardCells(band: Band, step: number): Float64Array {
  const count = Math.round((TO - FROM) / step);
  const cells = new Float64Array(count * QUINTIC);
  let low = radianceEnd(band, FROM);
  for (let k = 0; k < count; k++) {
    const high = radianceEnd(band, FROM + (k + 1) * step);
    cells.set(hermite(low, high, step), k * QUINTIC);
    low = high;
  }
  return cells;
}

/** Error [K] in the middle of the coldest cells, where the curve bends most for its height. */
function midCellError(band: Band, step: number): number {
  let worst = 0;
  for (let k = 0; k < 8; k++) {
    const t = FROM + k * step;
    const c = hermite(radianceEnd(band, t), radianceEnd(band, t + step), step);
    const exact = radianceTerms(band, t + step / 2, true);
    const value = c.reduceRight((sum, coefficient) => sum / 2 + coefficient, 0);
    worst = Math.max(worst, Math.abs(value - exact.radiance) / exact.slope);
  }
  return worst;
}

/** Forward cells on the coarsest grid that keeps the tolerance: 2 K for bands above 2 µm, finer below. */
export function buildForward(band: Band): { readonly step: number; readonly cells: Float64Array } {
  let step = COARSEST;
  while (step > FINEST && midCellError(band, step) > TOLERANCE) step /= 2;
  return { step, cells: forwardCells(band, step) };
}

/** dT/dL and d²T/dL² from the derivatives the other way. */
function temperatureEnd(band: Band, radiance: number): End {
  const value = temperature(band, radiance);
  const { slope, curvature } = radianceTerms(band, value, true);
  return { value, slope: 1 / slope, curvature: -curvature / slope ** 3 };
}

/** One quintic of T in L for each bucket from `first` to `last`; `edge` gives a bucket's lowest radiance. */
export function buildInverse(band: Band, first: number, last: number, edge: (bucket: number) => number): Float64Array {
  const buckets = new Float64Array((last - first + 1) * BUCKET);
  let from = edge(first);
  let low = temperatureEnd(band, from);
  for (let bucket = first; bucket <= last; bucket++) {
    const to = edge(bucket + 1);
    const high = temperatureEnd(band, to);
    const width = to - from;
    const coefficients = hermite(low, high, width).map((coefficient, power) => coefficient / width ** power);
    buckets.set([from, ...coefficients], (bucket - first) * BUCKET);
    from = to;
    low = high;
  }
  return buckets;
}
