/** The closed form: its derivatives, its inverse, and narrow bands, each by another way of working it out. */
import { FIRST_RADIATION_CONSTANT, SECOND_RADIATION_CONSTANT } from "../../../src/core/constants.js";
import { flatBand, responseBand, type Band } from "../../../src/core/planck/band.js";
import { radiance, radianceSlope, radianceTerms, temperature } from "../../../src/core/planck/exact.js";
import { expectRelative } from "../../support/radiometry.js";

/** Planck's law [W/(m³·sr)]. */
function spectral(wavelength: number, t: number): number {
  const x = SECOND_RADIATION_CONSTANT / (wavelength * t);
  return FIRST_RADIATION_CONSTANT / (wavelength ** 5 * Math.expm1(x));
}

/** ∫R·Lλ dλ over one straight stretch of response by Simpson's rule; limits in µm. */
function simpson(from: number, to: number, responseFrom: number, responseTo: number, t: number, steps = 4000): number {
  const h = (to - from) / steps;
  let sum = 0;
  for (let i = 0; i <= steps; i++) {
    const share = i / steps;
    const response = responseFrom + share * (responseTo - responseFrom);
    const weight = i === 0 || i === steps ? 1 : i % 2 === 1 ? 4 : 2;
    sum += weight * response * spectral((from + share * (to - from)) * 1e-6, t);
  }
  return (sum * h * 1e-6) / 3;
}

/** f′(t) from central differences, extrapolated to a step of nothing (Richardson). */
function derivative(f: (t: number) => number, t: number): number {
  const rows: number[][] = [];
  for (let i = 0, h = t / 12; i < 6; i++, h /= 2) {
    const row = [(f(t + h) - f(t - h)) / (2 * h)];
    for (let j = 1; j <= i; j++) row.push(row[j - 1]! + (row[j - 1]! - rows[i - 1]![j - 1]!) / (4 ** j - 1));
    rows.push(row);
  }
  return rows.at(-1)!.at(-1)!;
}

const BANDS: Record<string, Band> = {
  "7.5-14": flatBand(7.5, 14),
  "8-14": flatBand(8, 14),
  "3-5": flatBand(3, 5),
  "2-5": flatBand(2, 5),
  "1-3": flatBand(1, 3),
  "0.7-1": flatBand(0.7, 1),
  "0.7-20": flatBand(0.7, 20),
  "10-10.001": flatBand(10, 10.001),
  response: responseBand([7, 8, 10, 13, 14.5], [0, 0.9, 1, 0.7, 0]),
  "counts photons": responseBand([3, 5], [3, 5]),
};
const TEMPERATURES = [180, 233.15, 300, 373.15, 600, 1200, 2400, 6000];

describe.each(Object.entries(BANDS))("%s", (_, band) => {
  it("has the slope that differences of the radiance show", () => {
    for (const t of TEMPERATURES)
      expectRelative(
        radianceSlope(band, t),
        derivative((x) => radiance(band, x), t),
        1e-9,
      );
  });

  it("has the curvature that differences of the slope show", () => {
    for (const t of TEMPERATURES) {
      const { radiance: value, curvature } = radianceTerms(band, t, true);
      const expected = derivative((x) => radianceSlope(band, x), t);
      // Where the curve is nearly straight its curvature is small beside L/T².
      expectRelative(curvature, expected, 1e-8, (1e-8 * value) / t ** 2);
    }
  });

  it("finds the temperature again", () => {
    for (let t = 40; t < 20000; t *= 1.13) {
      expect(Math.abs(temperature(band, radiance(band, t)) / t - 1)).toBeLessThanOrEqual(5e-15);
    }
  });
});

describe("bands by quadrature", () => {
  const flat: [number, number][] = [
    [10, 10.001],
    [0.7, 0.7001],
    [19.99, 20],
    [8, 9],
    [7.5, 14],
    [3, 5],
    [0.7, 20],
  ];
  it.each(flat)("%d to %d µm", (from, to) => {
    const band = flatBand(from, to);
    for (const t of [150, 293.15, 1000, 5000]) {
      expectRelative(radiance(band, t), simpson(from, to, 1, 1, t), from === 0.7 && to === 20 ? 1e-9 : 3e-12);
    }
  });

  it("of a response that rises and falls, stretch by stretch", () => {
    const wavelengths = [7, 8, 10, 10.01, 13, 14.5];
    const responses = [0, 0.9, 1, 0.2, 0.7, 0];
    const band = responseBand(wavelengths, responses);
    for (const t of [200, 300, 800, 3000]) {
      let sum = 0;
      for (let i = 1; i < wavelengths.length; i++) {
        sum += simpson(wavelengths[i - 1]!, wavelengths[i]!, responses[i - 1]!, responses[i]!, t);
      }
      expectRelative(radiance(band, t), sum, 3e-12);
    }
  });

  it("of one stretch cut in many, wherever the cuts lie", () => {
    for (const t of [200, 300, 1500]) {
      const whole = radiance(flatBand(3, 14), t);
      const cuts = [3, 3.001, 3.7, 5, 8, 8.5, 12, 13.999, 14];
      expectRelative(radiance(responseBand(cuts, Array<number>(cuts.length).fill(1)), t), whole, 1e-13);
    }
  });
});

describe("a steep response between two wavelengths that are nearly one", () => {
  // Lλ·Δλ·(mean response): over so short a stretch Planck's law is straight to far within 1e-6.
  it.each([1e-5, 1e-6, 1e-8, 1e-9])("%d µm apart, falling, rising, and as the edges of a band", (apart) => {
    for (const t of [150, 300, 1000, 2600, 10000]) {
      for (const responses of [[0, 1] as const, [1, 0] as const, [0.5, 1e-6] as const]) {
        const band = responseBand([8, 8 + apart], responses);
        const width = (8 + apart) * 1e-6 - 8 * 1e-6;
        const mean = (responses[0] + responses[1]) / 2;
        expectRelative(radiance(band, t), spectral(8e-6, t) * width * mean, 1e-5);
        expect(Math.abs(temperature(band, radiance(band, t)) - t)).toBeLessThanOrEqual(1e-8);
      }
      const edged = responseBand([8 - apart, 8, 14, 14 + apart], [0, 1, 1, 0]);
      expectRelative(radiance(edged, t), radiance(flatBand(8, 14), t), 1e-5);
    }
  });
});

describe("what is no temperature and no radiance", () => {
  const band = flatBand(7.5, 14);
  it.each([0, -1, NaN, Infinity, -Infinity])("%d", (value) => {
    expect(radiance(band, value)).toBeNaN();
    expect(radianceSlope(band, value)).toBeNaN();
    expect(temperature(band, value)).toBeNaN();
  });

  it("answers for faint and strong radiances far from any camera's", () => {
    for (const l of [1e-300, 1e12, 1e50]) expectRelative(radiance(band, temperature(band, l)), l, 1e-12);
  });

  it("is NaN, not a wrong number, where double precision ends", () => {
    for (const l of [5e-324, 1e-320, 1e100, 1e300, Number.MAX_VALUE]) {
      const t = temperature(band, l);
      if (!Number.isNaN(t)) expectRelative(radiance(band, t), l, 1e-8);
    }
    expect(temperature(flatBand(10, 10.001), Number.MAX_VALUE)).toBeNaN();
  });
});
