/** The block form against the single form: same answers, NaN exactly where the single form refuses, whatever varies. */
import { correctBlock, type SettingsColumns } from "../../../src/core/correction/block.js";
import { correct } from "../../../src/core/correction/correct.js";
import type { Column } from "../../../src/core/correction/operands.js";
import type { Settings } from "../../../src/core/correction/settings.js";
import { GreybodyError } from "../../../src/core/errors.js";
import { flatBand, responseBand } from "../../../src/core/planck/band.js";
import type { Band } from "../../../src/core/planck/band.js";
import { kelvin } from "../../support/radiometry.js";

const ROWS = 1100;
const BANDS: Record<string, Band> = {
  "7.5-14": flatBand(7.5, 14),
  "3-5": flatBand(3, 5),
  response: responseBand([7, 8, 10, 13, 14.5], [0, 0.9, 1, 0.7, 0]),
};
const TEMPERATURES = new Set(["airTemp", "windowTemp", "outerReflected"]);

const fill = (of: (i: number) => number, rows = ROWS): Float64Array =>
  Float64Array.from({ length: rows }, (_, i) => of(i));
/** Numbers that wander through a range without a pattern that the chunks share. */
const wander = (from: number, to: number, stride: number) => (i: number) =>
  from + ((i * stride) % 997) * ((to - from) / 997);

/** Readings warmer than what is reflected, colder, and out of the table both ways. */
const APPARENT = fill((i) => (i % 97 === 5 ? 80 + i / 20 : i % 89 === 7 ? 2380 + i : kelvin(wander(-30, 400, 31)(i))));
type AllColumns = Readonly<Record<keyof Settings, Column>>;
const VARIED: AllColumns & { readonly emissivity: Float64Array } = {
  emissivity: fill(wander(0.3, 1, 17)),
  reflected: fill((i) => (i % 101 === 9 ? 120 : kelvin(wander(-40, 60, 43)(i)))),
  airTransmission: fill((i) => (i % 13 === 0 ? 1 : wander(0.7, 1, 29)(i))),
  airTemp: fill((i) => (i % 13 === 0 && i % 2 === 0 ? NaN : kelvin(wander(-30, 45, 53)(i)))),
  windowTransmission: fill((i) => (i % 11 === 0 ? 1 : wander(0.4, 0.9, 37)(i))),
  windowTemp: fill((i) => (i % 11 === 0 && i % 3 !== 0 ? NaN : kelvin(wander(-10, 70, 61)(i)))),
  windowReflectance: fill((i) => (i % 11 === 0 || i % 5 === 0 ? 0 : wander(0, 0.1, 23)(i))),
  outerReflected: fill((i) => (i % 5 === 0 && i % 2 === 0 ? NaN : kelvin(wander(0, 40, 71)(i)))),
  outerAirTransmission: fill((i) => (i % 13 === 0 ? 1 : wander(0.8, 1, 83)(i))),
};
const CONSTANT: AllColumns = {
  emissivity: 0.85,
  reflected: kelvin(22),
  airTransmission: 0.96,
  airTemp: kelvin(20),
  windowTransmission: 0.7,
  windowTemp: kelvin(30),
  windowReflectance: 0.1,
  outerReflected: kelvin(24),
  outerAirTransmission: 0.99,
};

/** The settings of one row as the single form takes them: NaN in a temperature that may be absent is "not given". */
function settingsAt(columns: SettingsColumns, row: number): Settings {
  const given = Object.entries(columns).flatMap(([name, column]) => {
    if (column === undefined) return [];
    const value = typeof column === "number" ? column : column[row]!;
    return Number.isNaN(value) && TEMPERATURES.has(name) ? [] : [[name, value] as const];
  });
  return Object.fromEntries(given) as unknown as Settings;
}

function firstRows(columns: AllColumns, rows: number): SettingsColumns {
  const cut = (column: Column): Column => (typeof column === "number" ? column : column.slice(0, rows));
  const entries = Object.entries<Column>(columns).map(([name, column]) => [name, cut(column)] as const);
  return Object.fromEntries(entries) as unknown as SettingsColumns;
}

/** Compares every row; returns how many were refused. */
function compare(apparent: Float64Array, columns: SettingsColumns, band: Band): number {
  const rows = apparent.length;
  // Room before and after that must stay untouched.
  const out = { temperature: new Float64Array(rows + 3).fill(7), signalShare: new Float64Array(rows + 3).fill(7) };
  const bad = correctBlock(apparent, columns, band, out);
  let refused = 0;
  for (let row = 0; row < rows; row++) {
    const [t, share] = [out.temperature[row]!, out.signalShare[row]!];
    try {
      const expected = correct(apparent[row]!, settingsAt(columns, row), band);
      const tolerance = 1e-9 + 1e-12 * expected.temperature;
      if (!(Math.abs(t - expected.temperature) <= tolerance && Math.abs(share - expected.signalShare) <= 1e-11)) {
        throw new Error(`row ${row}: ${t}, ${share} for ${expected.temperature}, ${expected.signalShare}`);
      }
    } catch (error) {
      if (!(error instanceof GreybodyError)) throw error;
      refused++;
      if (!Number.isNaN(t) || !Number.isNaN(share))
        throw new Error(`row ${row} answered: ${t}, ${share}; ${error.message}`);
    }
  }
  expect(bad).toBe(refused);
  expect([...out.temperature.subarray(rows), ...out.signalShare.subarray(rows)]).toEqual(Array<number>(6).fill(7));
  const alone = { temperature: new Float64Array(rows) };
  correctBlock(apparent, columns, band, alone);
  expect(alone.temperature).toEqual(out.temperature.slice(0, rows));
  return refused;
}

const { emissivity, reflected, airTransmission, airTemp } = CONSTANT;
const WAYS: [string, SettingsColumns][] = [
  ["single values", { emissivity, reflected }],
  ["single values through air", { emissivity, reflected, airTransmission, airTemp }],
  ["single values through a window", CONSTANT],
  ["black, nothing between", { emissivity: 1, reflected }],
  ["columns of emissivity and reflected", { emissivity: VARIED.emissivity, reflected: VARIED.reflected }],
  ["a column of emissivity", { emissivity: VARIED.emissivity, reflected }],
  ["a column of reflected", { emissivity, reflected: VARIED.reflected }],
  ["both columns, one path", { ...CONSTANT, emissivity: VARIED.emissivity, reflected: VARIED.reflected }],
  ["every setting a column", VARIED],
  ["a window in columns", { ...VARIED, emissivity, reflected, airTransmission, airTemp }],
  ...Object.entries(VARIED).map(([name, column]): [string, SettingsColumns] => [
    `a column of ${name} alone`,
    { ...CONSTANT, [name]: column },
  ]),
];

describe.each(Object.entries(BANDS))("%s", (_, band) => {
  it.each(WAYS)("%s", (__, columns) => {
    const refused = compare(APPARENT, columns, band);
    // Cold readings have no answer; the test would be empty if most had none.
    expect(refused).toBeLessThan(ROWS / 2);
  });
});

it.each([0, 1, 2, 511, 512, 513, 1023, 1024, 1025])("%d rows", (rows) => {
  for (const columns of [CONSTANT, VARIED]) {
    compare(APPARENT.slice(0, rows), firstRows(columns, rows), BANDS["7.5-14"]!);
  }
});

describe("rows that cannot be", () => {
  const nonsense = [NaN, Infinity, -Infinity, -1, 0, 1e-12, 95, 1.0000001, 10273.15, 10273.16];
  const places = ["apparent", ...Object.keys(VARIED)];

  it.each(places)("%s, a row at a time and for all rows", (place) => {
    for (const base of [CONSTANT, VARIED]) {
      for (const value of nonsense) {
        const apparent = place === "apparent" ? fill((i) => (i % 3 === 1 ? value : 330), 30) : fill(() => 330, 30);
        const rest = firstRows(base, 30);
        if (place === "apparent") {
          compare(apparent, rest, BANDS["7.5-14"]!);
          continue;
        }
        const own = base[place as keyof Settings];
        const usual = (i: number): number => (typeof own === "number" ? own : own[i]!);
        compare(apparent, { ...rest, [place]: fill((i) => (i % 3 === 1 ? value : usual(i)), 30) }, BANDS["7.5-14"]!);
        compare(apparent, { ...rest, [place]: value }, BANDS["7.5-14"]!);
      }
    }
  });

  it("a window that passes and reflects more than everything", () => {
    const windowReflectance = Float64Array.of(0.3, 0.3 + 1e-10, 0.31, 0.3);
    const columns = { ...CONSTANT, windowReflectance };
    expect(compare(Float64Array.of(330, 330, 330, 330), columns, BANDS["7.5-14"]!)).toBe(1);
  });

  it("a reflected temperature that is none, also where nothing reflects", () => {
    const columns = { emissivity: fill(() => 1, 3), reflected: Float64Array.of(NaN, 295, -1) };
    expect(
      compare(
        fill(() => 330, 3),
        columns,
        BANDS["7.5-14"]!,
      ),
    ).toBe(2);
    expect(
      compare(
        fill(() => 330, 3),
        { ...columns, emissivity: 1 },
        BANDS["7.5-14"]!,
      ),
    ).toBe(2);
  });

  it("an impossible temperature, also of what plays no part", () => {
    for (const name of TEMPERATURES) {
      const columns = { emissivity: fill(() => 0.9, 4), reflected: 295, [name]: Float64Array.of(300, -1, NaN, 300) };
      expect(
        compare(
          fill(() => 330, 4),
          columns,
          BANDS["7.5-14"]!,
        ),
      ).toBe(1);
      expect(
        compare(
          fill(() => 330, 4),
          { ...columns, emissivity: 1, [name]: -1 },
          BANDS["7.5-14"]!,
        ),
      ).toBe(4);
    }
  });

  it("what is needed but not given", () => {
    const apparent = fill(() => 330, 4);
    for (const name of TEMPERATURES) {
      expect(compare(apparent, { ...CONSTANT, [name]: Float64Array.of(NaN, 300, NaN, 300) }, BANDS["7.5-14"]!)).toBe(2);
      expect(compare(apparent, { ...CONSTANT, [name]: NaN }, BANDS["7.5-14"]!)).toBe(4);
      expect(
        compare(
          apparent,
          { ...CONSTANT, emissivity: VARIED.emissivity.slice(0, 4), [name]: undefined },
          BANDS["7.5-14"]!,
        ),
      ).toBe(4);
    }
  });
});

it("a black surface with nothing between shows its own temperature, however hot the surroundings", () => {
  const apparent = fill((i) => 160 + i, 600);
  for (const band of [flatBand(0.7, 1), flatBand(3, 5)]) {
    const clear = {
      emissivity: fill(() => 1, 600),
      reflected: fill(() => 2300, 600),
      airTransmission: fill(() => 1, 600),
      airTemp: fill(() => 2000, 600),
      windowTransmission: fill(() => 1, 600),
      windowTemp: fill(() => 1500, 600),
      windowReflectance: fill(() => 0, 600),
      outerReflected: fill(() => 1500, 600),
    };
    const out = { temperature: new Float64Array(600) };
    expect(correctBlock(apparent, clear, band, out)).toBe(0);
    for (let i = 0; i < 600; i++) expect(Math.abs(out.temperature[i]! - apparent[i]!)).toBeLessThanOrEqual(1e-8);
  }
});
