import fc from "fast-check";
import { airTransmission, airTransmissionBlock, type AirPath } from "../../../src/core/air/transmission.js";
import { flatBand, responseBand } from "../../../src/core/planck/band.js";
import { plainAir } from "../../support/plain-air.js";
import { refusal } from "../../support/refusal.js";
import { rowsOf } from "../../support/rows.js";

const LONG_WAVE = flatBand(7.5, 14);
const BANDS = { "LW7.5-14": LONG_WAVE, "LW8-14": flatBand(8, 14), "MW3-5": flatBand(3, 5) };
const kelvin = (t: number): number => t + 273.15;
const path = (change: Partial<AirPath> = {}): AirPath => ({
  distance: 10,
  airTemp: kelvin(20),
  humidity: 0.5,
  ...change,
});

describe("worked checks of the model, six decimals", () => {
  const rows = rowsOf("atmosphere/worked_checks.csv");
  it("has all 39 rows", () => {
    expect(rows).toHaveLength(39);
  });
  it.each(rows.map((row) => [Object.values(row).slice(0, 7).join(" "), row] as const))("%s", (_, row) => {
    const value = airTransmission(
      {
        distance: Number(row.d_m),
        airTemp: kelvin(Number(row.T_air_C)),
        humidity: Number(row.RH) / 100,
        pressure: Number(row.P_kPa) * 1000,
        sourceTemp: Number(row.T_source_K),
        co2: Number(row.CO2_ppm) * 1e-6,
      },
      BANDS[row.band as keyof typeof BANDS],
    );
    expect(Math.abs(value - Number(row.tau_model))).toBeLessThanOrEqual(0.51e-6);
  });
});

const edges = (band: string): [number, number] => band.split("-").map(Number) as [number, number];

const anyPath = fc.record({
  distance: fc.double({ min: 0, max: 1000, noNaN: true }),
  airTemp: fc.double({ min: -30, max: 50, noNaN: true }),
  humidity: fc.double({ min: 0, max: 1, noNaN: true }),
  kPa: fc.double({ min: 70, max: 105, noNaN: true }),
  source: fc.double({ min: 200, max: 1500, noNaN: true }),
  ppm: fc.double({ min: 280, max: 1000, noNaN: true }),
  band: fc.constantFrom("7.5-14", "8-14", "3-5", "3.2-4.15", "10-11.3"),
});

describe("against the formulae as the model's file prints them", () => {
  it("agrees to 1e-12", () => {
    fc.assert(
      fc.property(anyPath, ({ distance, airTemp, humidity, kPa, source, ppm, band }) => {
        const ours = airTransmission(
          { distance, airTemp: kelvin(airTemp), humidity, pressure: kPa * 1000, sourceTemp: source, co2: ppm * 1e-6 },
          flatBand(...edges(band)),
        );
        const plain = plainAir(distance, airTemp, humidity * 100, kPa, source, ...edges(band), ppm);
        expect(Math.abs(ours - plain)).toBeLessThanOrEqual(1e-12);
      }),
      { numRuns: 2000 },
    );
  });
});

describe("what must hold", () => {
  it("is exactly 1 without a path", () => {
    fc.assert(
      fc.property(anyPath, ({ airTemp, humidity, kPa, source, band }) => {
        const value = airTransmission(
          { distance: 0, airTemp: kelvin(airTemp), humidity, pressure: kPa * 1000, sourceTemp: source },
          flatBand(...edges(band)),
        );
        expect(value).toBe(1);
      }),
    );
  });

  it("falls with distance, humidity and carbon dioxide, and stays between 0 and 1", () => {
    for (const band of Object.values(BANDS)) {
      const falling = [path({ distance: 1 }), path(), path({ humidity: 0.9 }), path({ humidity: 0.9, distance: 1000 })];
      const values = falling.map((p) => airTransmission(p, band));
      expect([...values].sort((a, b) => b - a)).toEqual(values);
      expect(values.every((v) => v > 0 && v < 1)).toBe(true);
      expect(airTransmission(path({ co2: 800e-6 }), band)).toBeLessThan(values[1]!);
    }
  });

  it("is next to nothing where water blocks the band, and still a number", () => {
    const wet = airTransmission({ distance: 1000, airTemp: kelvin(50), humidity: 1 }, flatBand(5.8, 6.2));
    expect(wet).toBeGreaterThan(0);
    expect(wet).toBeLessThan(1e-30);
  });

  it("is the same for a response table with one factor, and for a band cut into segments", () => {
    const flat = airTransmission(path(), LONG_WAVE);
    expect(airTransmission(path(), responseBand([7.5, 14], [0.3, 0.3]))).toBeCloseTo(flat, 14);
    // The cut moves the points of quadrature; the sub-bands are narrow enough that it hardly shows.
    expect(airTransmission(path(), responseBand([7.5, 8.1, 11, 14], [1, 1, 1, 1]))).toBeCloseTo(flat, 8);
  });

  it("weighs the parts of a band by the response and by the source", () => {
    const whole = airTransmission(path({ distance: 100 }), responseBand([8, 11, 14], [1, 1, 1]));
    // Above 13 µm carbon dioxide absorbs: a response that falls towards it sees more.
    expect(airTransmission(path({ distance: 100 }), responseBand([8, 11, 14], [1, 1, 0]))).toBeGreaterThan(
      whole + 0.01,
    );
    const hot = airTransmission(path({ sourceTemp: 1200 }), BANDS["LW8-14"]);
    expect(hot).not.toBeCloseTo(airTransmission(path(), BANDS["LW8-14"]), 4);
  });

  it("takes 101.325 kPa, a source at 300 K and 420 ppm where they are not given", () => {
    const given = airTransmission(path({ pressure: 101325, sourceTemp: 300, co2: 420e-6 }), LONG_WAVE);
    expect(airTransmission(path(), LONG_WAVE)).toBe(given);
  });
});

describe("refusals", () => {
  const cases: [string, Partial<AirPath>, string, string | undefined][] = [
    ["a distance below 0", { distance: -1 }, "distance", undefined],
    ["a distance above 1000 m", { distance: 1001 }, "distance", undefined],
    ["more than 30 m in air above 50 °C", { distance: 30.1, airTemp: kelvin(51) }, "distance", "air-outside-fit"],
    ["more than 30 m in air below −30 °C", { distance: 31, airTemp: kelvin(-31) }, "distance", "air-outside-fit"],
    ["air below −45 °C", { airTemp: kelvin(-45.1) }, "air_temp", undefined],
    ["air above 65 °C", { airTemp: kelvin(65.1) }, "air_temp", undefined],
    ["humidity below 0", { humidity: -0.01 }, "humidity", undefined],
    ["humidity in per cent", { humidity: 50 }, "humidity", "per-cent"],
    ["pressure below 70 kPa", { pressure: 69_000 }, "pressure", undefined],
    ["pressure in kPa", { pressure: 101.325 }, "pressure", "pressure-unit"],
    ["pressure above 105 kPa", { pressure: 106_000 }, "pressure", undefined],
    ["a source below 100 K", { sourceTemp: 99 }, "source_temp", undefined],
    ["carbon dioxide in ppm", { co2: 420 }, "co2", undefined],
    ["NaN", { distance: NaN }, "distance", undefined],
    ["infinity", { humidity: Infinity }, "humidity", undefined],
  ];
  it.each(cases)("%s", (_, change, argument, hint) => {
    const error = refusal(() => airTransmission(path(change), LONG_WAVE));
    expect(error).toMatchObject({ code: "INVALID", argument });
    expect(error.hint?.key).toBe(hint);
    expect(error.allowed).toBeDefined();
  });

  it.each([
    ["2-5", flatBand(2, 5)],
    ["8-14.8", flatBand(8, 14.8)],
  ])("a band outside 3.0–14.7 µm: %s", (key, band) => {
    const error = refusal(() => airTransmission(path(), band));
    expect(error).toMatchObject({
      code: "INVALID",
      argument: "band",
      given: key,
      allowed: { min: 3.0e-6, max: 14.7e-6 },
    });
    expect(error.hint?.key).toBe("air-band");
  });

  it.each([
    ["within a sub-band", flatBand(7.5, 7.500000001)],
    ["at the end of the model", flatBand(14.69999999999, 14.7)],
    ["as a response table", responseBand([10, 10.000000001], [1, 1])],
  ])("a band too narrow to hold anything, %s: alone and as a block", (_, band) => {
    const error = refusal(() => airTransmission(path(), band));
    expect(error).toMatchObject({ code: "INVALID", argument: "band", hint: { key: "air-band-narrow" } });
    expect(refusal(() => airTransmissionBlock(path(), band, new Float64Array(2)))).toEqual(error);
  });

  it("answers on the limits themselves, also when they come from °F, ft and whole tenths", () => {
    const fahrenheit = (f: number): number => (f - 32) / 1.8 + 273.15;
    for (const change of [
      { airTemp: fahrenheit(-49) },
      { airTemp: fahrenheit(149), distance: 30 },
      { airTemp: kelvin(-45), distance: 98.4 * 0.3048 },
      { airTemp: kelvin(50), distance: 1000, humidity: 1, pressure: 70_000 },
      { airTemp: kelvin(-30), distance: 1000, humidity: 0, pressure: 105_000 },
    ]) {
      expect(airTransmission(path(change), LONG_WAVE)).toBeLessThan(1);
    }
    expect(airTransmission(path(), flatBand(3, 14.7))).toBeLessThan(1);
    const rankine = (f: number): number => ((f + 459.67) * 5) / 9;
    for (const f of [-49, 149]) expect(airTransmission(path({ airTemp: rankine(f) }), LONG_WAVE)).toBeLessThan(1);
    for (const f of [-22, 122]) {
      expect(airTransmission(path({ airTemp: rankine(f), distance: 1000 * (1 + 1e-12) }), LONG_WAVE)).toBeLessThan(1);
    }
  });
});

describe("block form", () => {
  const rows = 700;
  const fill = (of: (i: number) => number): Float64Array => Float64Array.from({ length: rows }, (_, i) => of(i));
  const distance = fill((i) => (i * 7) % 1000);
  const airTemp = fill((i) => kelvin(-30 + ((i * 13) % 80)));
  const humidity = fill((i) => ((i * 17) % 101) / 100);
  const pressure = fill((i) => 70_000 + ((i * 1009) % 35_000));
  const sourceTemp = fill((i) => 260 + ((i * 31) % 400));

  it.each(Object.entries(BANDS))("gives what the single form gives, every column: %s", (_, band) => {
    const columns = { distance, airTemp, humidity, pressure };
    // One source for all rows, one a row, and one for a few rows each.
    for (const source of [() => 300, (i: number) => sourceTemp[i]!, (i: number) => sourceTemp[i >> 3]!]) {
      const out = new Float64Array(rows);
      const given = fill(source);
      expect(airTransmissionBlock({ ...columns, sourceTemp: given }, band, out)).toBe(0);
      const single = fill((i) =>
        airTransmission(
          {
            distance: distance[i]!,
            airTemp: airTemp[i]!,
            humidity: humidity[i]!,
            pressure: pressure[i]!,
            sourceTemp: given[i]!,
          },
          band,
        ),
      );
      expect(out).toEqual(single);
    }
  });

  it("takes single values for columns, and its defaults", () => {
    const out = new Float64Array(3);
    airTransmissionBlock({ distance: Float64Array.of(0, 10, 100), airTemp: kelvin(20), humidity: 0.5 }, LONG_WAVE, out);
    expect([...out]).toEqual([0, 10, 100].map((d) => airTransmission(path({ distance: d }), LONG_WAVE)));
  });

  it("marks a row without an answer and no other, and counts them", () => {
    const out = new Float64Array(5);
    const bad = airTransmissionBlock(
      {
        distance: Float64Array.of(10, 10, -1, 31, 10),
        airTemp: Float64Array.of(kelvin(20), NaN, kelvin(20), kelvin(60), kelvin(20)),
        humidity: 0.5,
      },
      LONG_WAVE,
      out,
    );
    expect(bad).toBe(3);
    const answered = airTransmission(path(), LONG_WAVE);
    expect([...out]).toEqual([answered, NaN, NaN, NaN, answered]);
  });

  it("refuses what holds for all rows", () => {
    const out = new Float64Array(1);
    expect(refusal(() => airTransmissionBlock(path(), flatBand(2, 5), out)).argument).toBe("band");
    expect(refusal(() => airTransmissionBlock({ ...path(), co2: 420 }, LONG_WAVE, out)).argument).toBe("co2");
  });
});
