/** The tabulated radiance against the closed form: error, monotony, round trip, limits, and the pool that holds it. */
import { flatBand, responseBand, type Band } from "../../../src/core/planck/band.js";
import { radiance, radianceSlope, temperature } from "../../../src/core/planck/exact.js";
import { currentEra, POOL } from "../../../src/core/planck/pool.js";
import { BandTable, CHUNK, SIGNAL } from "../../../src/core/planck/table.js";
import { tableFor } from "../../../src/core/planck/tables.js";

/** Band and largest error [K] of its table; what exceeds 1e-11 in the long wave is the first cell, at 150 K. */
const BANDS: [string, Band, number][] = [
  ["7.5-14", flatBand(7.5, 14), 1e-11],
  ["8-14", flatBand(8, 14), 1e-11],
  ["7-20", flatBand(7, 20), 1e-11],
  ["3-5", flatBand(3, 5), 1e-8],
  ["2-5", flatBand(2, 5), 1e-8],
  ["1-3", flatBand(1, 3), 1e-8],
  ["0.7-1", flatBand(0.7, 1), 1e-8],
  ["0.7-0.7001", flatBand(0.7, 0.7001), 1e-8],
  ["0.7-20", flatBand(0.7, 20), 1e-8],
  ["10-10.001", flatBand(10, 10.001), 3e-11],
  ["response", responseBand([7, 8, 10, 13, 14.5], [0, 0.9, 1, 0.7, 0]), 2e-11],
  ["two windows", responseBand([1, 2, 2.1, 13, 13.1, 20], [1, 1, 0, 0, 1e-3, 1e-3]), 1e-8],
];

/** Temperatures [K] over the table, none of them on its grid. */
function* span(step: number): Generator<number> {
  for (let t = 150 + step / 7; t < 2400; t += step) yield t;
}

describe.each(BANDS)("%s", (_, band, tolerance) => {
  const table = tableFor(band);

  it("is the closed form, forward and back", () => {
    let forward = 0;
    let back = 0;
    let round = 0;
    for (const t of span(0.37)) {
      const l = table.radiance(t);
      forward = Math.max(forward, Math.abs(l - radiance(band, t)) / radianceSlope(band, t));
      back = Math.max(back, Math.abs(table.temperature(l) - temperature(band, l)));
      round = Math.max(round, Math.abs(table.temperature(l) - t));
    }
    expect(forward).toBeLessThanOrEqual(tolerance);
    expect(back).toBeLessThanOrEqual(tolerance);
    expect(round).toBeLessThanOrEqual(Math.max(tolerance, 5e-12));
  });

  it("rises everywhere, across the edges of cells and buckets and at both ends", () => {
    let before = 0;
    let beforeBack = 0;
    for (let t = 149.9; t < 2400.1; t += t < 151 || t > 2399 ? 1e-3 : 0.0173) {
      const l = table.radiance(t);
      const back = table.temperature(l);
      if (!(l > before && back > beforeBack)) throw new Error(`falls at ${t} K`);
      before = l;
      beforeBack = back;
    }
    expect(before).toBeGreaterThan(0);
  });

  it("is the closed form itself outside 150 to 2400 K", () => {
    for (const t of [20, 100, 149.9999, 2400, 2400.0001, 5000, 10273.15]) {
      const l = radiance(band, t);
      expect(table.radiance(t)).toBe(l);
      if (l > 1e-300) expect(Math.abs(table.temperature(l) / t - 1)).toBeLessThan(1e-14);
    }
    for (const none of [0, -1, NaN, Infinity]) {
      expect(table.radiance(none)).toBeNaN();
      expect(table.temperature(none)).toBeNaN();
    }
  });

  it("works through a run as through single values", () => {
    const temps = Float64Array.from({ length: CHUNK }, (__, i) => 100 + i * 5.1);
    [temps[3], temps[4], temps[5], temps[6]] = [NaN, -1, Infinity, 10274];
    const out = new Float64Array(CHUNK);
    table.radianceInto(temps, 0, out, CHUNK, 2, -0.5);
    table.radianceInto(temps, 0, SIGNAL, CHUNK, 1, 0);
    const back = new Float64Array(CHUNK);
    expect(table.temperatureInto(back, 0, CHUNK)).toBe(4);
    for (let i = 0; i < CHUNK; i++) {
      if (i >= 3 && i <= 6) {
        expect([out[i], back[i]]).toEqual([NaN, NaN]);
        continue;
      }
      const l = table.radiance(temps[i]!);
      expect(out[i]).toBe(2 * l - 0.5);
      expect(Math.abs(back[i]! / table.temperature(l) - 1)).toBeLessThan(1e-15);
    }
  });
});

describe("the pool of tables", () => {
  const bands = Array.from({ length: 200 }, (_, i) => flatBand(3 + i / 100, 8 + i / 50));

  it("holds any number of bands one after the other, old ones right again when asked", () => {
    const first = currentEra();
    const kept = bands.slice(0, 3).map((band) => new BandTable(band));
    const before = kept.map((table) => table.radiance(333.3));
    for (const band of bands) {
      expect(Math.abs(tableFor(band).temperature(radiance(band, 345.67)) - 345.67)).toBeLessThan(1e-8);
    }
    // Two hundred tables do not fit at once: the pool was emptied on the way.
    expect(currentEra()).toBeGreaterThan(first + 1);
    for (const band of bands.slice(0, 20)) {
      const table = tableFor(band);
      expect(Math.abs(table.radiance(400) - radiance(band, 400)) / radianceSlope(band, 400)).toBeLessThan(1e-8);
      expect(Math.abs(table.temperature(radiance(band, 290)) - 290)).toBeLessThan(1e-8);
    }
    expect(kept.map((table) => table.radiance(333.3))).toEqual(before);
  });

  it("gives one table for a band as long as it is there", () => {
    expect(tableFor(flatBand(7.5, 14))).toBe(tableFor(flatBand(7.5, 14)));
    expect(tableFor(responseBand([7.5, 14], [1, 1]))).not.toBe(tableFor(flatBand(7.5, 14)));
  });

  it("renews a table in the middle of work by every entrance", () => {
    const band = flatBand(7.77, 14);
    const table = new BandTable(band);
    const expected = radiance(band, 300);
    const uses: (() => number)[] = [
      () => table.radiance(300),
      () => radiance(band, table.temperature(expected)),
      () => {
        table.radianceInto(Float64Array.of(300), 0, SIGNAL, 1, 1, 0);
        return SIGNAL[0]!;
      },
      () => {
        SIGNAL[0] = expected;
        const out = new Float64Array(1);
        table.temperatureInto(out, 0, 1);
        return radiance(band, out[0]!);
      },
      () => {
        SIGNAL[0] = expected;
        table.unmix(Float64Array.of(300), 0, Float64Array.of(0.5), 0, 1, false);
        return SIGNAL[0];
      },
    ];
    for (const use of uses) {
      const era = currentEra();
      // Short-wave tables are the largest: two of them empty the pool.
      for (let i = 0; i < 5 && currentEra() === era; i++) new BandTable(flatBand(0.7, 1));
      expect(currentEra()).toBe(era + 1);
      POOL.fill(NaN);
      expect(Math.abs(use() / expected - 1)).toBeLessThan(1e-12);
    }
  });
});
