/**
 * LOWTRAN7 itself (Kneizys et al. 1988, AFGL-TR-88-0177; public domain): columns lt7_* of
 * tests/data/atmosphere/band_transmittance.csv, the published outside check.
 * LOWTRAN7 absorbs too much close up: its band law exp(−(Cu)^a) with a < 1 has an infinite slope at no distance, and its
 * water self-continuum is frozen above 23 °C. Its stated mean difference from modern work, 7.5–14 µm, is −0.003
 * (0.3–3 m), −0.006 (3–10 m), −0.0085 (10–30 m), −0.012 (30–100 m). So, in air to 20 °C, short of that freeze: ours lies
 * above LOWTRAN7 by that mean within a third of it or 0.001, and on no path by less than nothing or more than twice it.
 */
import { airTransmission } from "../../src/core/air/transmission.js";
import { flatBand } from "../../src/core/planck/band.js";
import { rowsOf } from "../support/rows.js";

const LONG_WAVE = flatBand(7.5, 14);
const differences = rowsOf("atmosphere/band_transmittance.csv")
  .filter((row) => row.band === "LW7.5-14" && Number(row.T_air_C) <= 20)
  .map((row) => {
    const distance = Number(row.d_m);
    const airTemp = Number(row.T_air_C) + 273.15;
    const humidity = Number(row.RH_pct) / 100;
    return { distance, lower: airTransmission({ distance, airTemp, humidity }, LONG_WAVE) - Number(row.lt7_Ts300) };
  });

describe("LOWTRAN7 [read], 7.5–14 µm, source at 300 K, air −20…20 °C", () => {
  it.each([
    [0.3, 3, 0.003],
    [3, 10, 0.006],
    [10, 30, 0.0085],
    [30, 100, 0.012],
  ])("from %d to %d m LOWTRAN7 is lower by %d on average", (from, to, stated) => {
    const lower = differences.filter((row) => row.distance > from && row.distance <= to).map((row) => row.lower);
    expect(lower.length).toBeGreaterThanOrEqual(28);
    const mean = lower.reduce((sum, value) => sum + value, 0) / lower.length;
    expect(Math.abs(mean - stated)).toBeLessThanOrEqual(Math.max(stated / 3, 0.001));
    expect(Math.min(...lower)).toBeGreaterThan(0);
    expect(Math.max(...lower)).toBeLessThan(2 * stated);
  });
});
