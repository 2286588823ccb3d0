import { GreybodyError, inRange } from "../errors.js";
import type { Hint, Range } from "../errors.js";

/** A stretch of the spectral response, linear between its ends. Wavelengths in metres, response dimensionless. */
export interface Segment {
  readonly lo: number;
  readonly hi: number;
  readonly responseLo: number;
  readonly responseHi: number;
}

/** The spectral band a camera sees: adjoining segments in order of wavelength. */
export interface Band {
  /** Tells bands apart in caches; equal bands have equal keys. */
  readonly key: string;
  readonly segments: readonly Segment[];
}

const MICROMETRE = 1e-6;
/** Wavelengths the computation is meant for [m]. */
const WAVELENGTH_RANGE: Range = { min: 0.7 * MICROMETRE, max: 20 * MICROMETRE };

function requireWavelength(value: number, hint: Hint): void {
  // Written so that NaN is refused too.
  if (!(value >= 0.7 && value <= 20)) {
    throw new GreybodyError({ code: "INVALID", argument: "band", given: value, allowed: WAVELENGTH_RANGE, hint });
  }
}

/**
 * A band of uniform response.
 * @param from shorter wavelength [µm], 0.7 to 20
 * @param to longer wavelength [µm], above `from`
 * @throws INVALID "band"
 */
export function flatBand(from: number, to: number): Band {
  requireWavelength(from, { key: "band-wavelengths" });
  requireWavelength(to, { key: "band-wavelengths" });
  if (from >= to) {
    throw new GreybodyError({ code: "INVALID", argument: "band", given: `${from}-${to}`, hint: { key: "band-order" } });
  }
  return {
    key: `${from}-${to}`,
    segments: [{ lo: from * MICROMETRE, hi: to * MICROMETRE, responseLo: 1, responseHi: 1 }],
  };
}

/** Far wider than any table of responses, and still clear of where powers of a radiance leave double precision. */
const RESPONSE: Range = { min: 0, max: 1e12 };
const SMALLEST_PEAK = 1e-12;

/**
 * A band from a table of the camera's spectral response, linear between the rows, nothing outside them.
 * Scaling every response by one factor changes no temperature.
 * @param wavelengths rising [µm], 0.7 to 20, at least two
 * @param responses as many, 0 to 1e12, the largest at least 1e-12 [-]
 * @throws INVALID "band"
 */
export function responseBand(wavelengths: readonly number[], responses: readonly number[]): Band {
  const segments: Segment[] = [];
  for (const [i, wavelength] of wavelengths.entries()) {
    requireWavelength(wavelength, { key: "band-response-wavelength", values: { row: i + 1 } });
    const response = responses[i] ?? NaN;
    if (!inRange(response, RESPONSE)) {
      throw new GreybodyError({
        code: "INVALID",
        argument: "band",
        given: response,
        hint: { key: "band-response", values: { row: i + 1 } },
      });
    }
    const before = wavelengths[i - 1];
    if (before === undefined) continue;
    if (wavelength <= before) {
      throw new GreybodyError({
        code: "INVALID",
        argument: "band",
        given: wavelength,
        hint: { key: "band-rising", values: { row: i + 1 } },
      });
    }
    const responseBefore = responses[i - 1] ?? NaN;
    if (response === 0 && responseBefore === 0) continue;
    segments.push({
      lo: before * MICROMETRE,
      hi: wavelength * MICROMETRE,
      responseLo: responseBefore,
      responseHi: response,
    });
  }
  if (segments.length === 0 || Math.max(...responses) < SMALLEST_PEAK) {
    throw new GreybodyError({ code: "INVALID", argument: "band", hint: { key: "band-empty" } });
  }
  return { key: wavelengths.map((w, i) => `${w}:${responses[i] ?? ""}`).join(";"), segments };
}

/** The band taken where none is given: long-wave, 7.5 to 14 µm. */
export const DEFAULT_BAND = flatBand(7.5, 14);

/** Response at a wavelength [m]; 0 outside the band. */
export function responseAt(band: Band, wavelength: number): number {
  for (const s of band.segments) {
    if (wavelength >= s.lo && wavelength <= s.hi) {
      return s.responseLo + ((wavelength - s.lo) / (s.hi - s.lo)) * (s.responseHi - s.responseLo);
    }
  }
  return 0;
}
