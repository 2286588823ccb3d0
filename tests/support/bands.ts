import type { Band } from "../../src/core/planck/band.js";

/** A flat band outside what the library takes, wavelengths in metres: for sources that speak of all radiation, or of one line. */
export function anyBand(lo: number, hi: number): Band {
  return { key: `test ${lo}-${hi}`, segments: [{ lo, hi, responseLo: 1, responseHi: 1 }] };
}

/** All thermal radiation, near enough. */
export const EVERYTHING = anyBand(1e-8, 1);
