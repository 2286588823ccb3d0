/** The demo route's numbers, worked out again from the core and by hand, with settings written down here and not looked up. */
import { airTransmission } from "../../../src/core/air/transmission.js";
import { ZERO_CELSIUS } from "../../../src/core/constants.js";
import { correct } from "../../../src/core/correction/correct.js";
import { DEFAULT_BAND } from "../../../src/core/planck/band.js";
import { demoRoute } from "../../../src/templates/route/demo/route.js";
import { worked, type WorkedRoute } from "./fixture.js";

const PHASES = ["left", "middle", "right"] as const;

interface Case {
  readonly asset: string;
  readonly emissivity: number;
  readonly reflected: number;
  readonly pathAir: number;
  /** The air the rise is over; absent where none was noted. */
  readonly air?: number;
  readonly distance?: number;
  readonly humidity?: number;
  readonly window?: { readonly transmission: number; readonly temp: number; readonly outerReflected: number };
  readonly hottest: (typeof PHASES)[number];
}

const CASES: readonly Case[] = [
  { asset: "MSB-INC", emissivity: 0.96, reflected: 24, pathAir: 26.5, air: 26.5, hottest: "middle" },
  { asset: "MSB-Q3", emissivity: 0.93, reflected: 24, pathAir: 26.5, air: 26.5, hottest: "right" },
  { asset: "CAP-1", emissivity: 0.55, reflected: 24, pathAir: 28, air: 28, hottest: "right" },
  // The air of the path is the job's where the air was taken in the enclosure; the rise is over the room's.
  { asset: "GEN-ATS", emissivity: 0.93, reflected: 24, pathAir: 23, air: 25, hottest: "middle" },
  { asset: "TX1-HV", emissivity: 0.95, reflected: 24, pathAir: 18, air: 18, hottest: "right" },
  {
    asset: "MV-C1",
    emissivity: 0.94,
    reflected: 18,
    pathAir: 18,
    air: 18,
    window: { transmission: 0.72, temp: 18.5, outerReflected: 24 },
    hottest: "right",
  },
  { asset: "DB-WKS", emissivity: 0.93, reflected: 24, pathAir: 25, air: 25, hottest: "middle" },
  { asset: "MCC2-M7", emissivity: 0.93, reflected: 24, pathAir: 23, hottest: "right" },
  {
    asset: "ROOF-CH1",
    emissivity: 0.93,
    reflected: -12,
    pathAir: 8,
    air: 8,
    distance: 2,
    humidity: 60,
    hottest: "right",
  },
];

let route: WorkedRoute;
beforeAll(async () => {
  [route] = (await worked(demoRoute())) as [WorkedRoute];
});

function temperature(one: Case, reading: number): number {
  const kelvin = (celsius: number): number => celsius + ZERO_CELSIUS;
  const { distance = 1, humidity = 45, window } = one;
  const path = { distance, airTemp: kelvin(one.pathAir), humidity: humidity / 100 };
  const settings = {
    emissivity: one.emissivity,
    reflected: kelvin(one.reflected),
    airTransmission: airTransmission(path, DEFAULT_BAND),
    airTemp: kelvin(one.pathAir),
    ...(window === undefined
      ? {}
      : {
          windowTransmission: window.transmission,
          windowTemp: kelvin(window.temp),
          windowReflectance: 0.05,
          outerReflected: kelvin(window.outerReflected),
        }),
  };
  return correct(kelvin(reading), settings, DEFAULT_BAND).temperature - ZERO_CELSIUS;
}

const read = (asset: string): number[] => PHASES.map((phase) => route.number(asset, phase));
const amps = (asset: string): number[] => PHASES.map((phase) => route.number(asset, `amps_${phase}`));

describe.each(CASES)("$asset", (one) => {
  const temperatures = (): number[] => read(one.asset).map((reading) => temperature(one, reading));

  test("corrected temperatures and rises over air", () => {
    temperatures().forEach((expected, at) => {
      const phase = PHASES[at] ?? "";
      expect(route.number(one.asset, `corrected_${phase}`)).toBeCloseTo(expected, 8);
      if (one.air === undefined) expect(route.cell(one.asset, `rise_${phase}`)).toBe("");
      else expect(route.number(one.asset, `rise_${phase}`)).toBeCloseTo(expected - one.air, 8);
    });
  });

  test("hottest phase, its rise over the mean of the others and over the lowest", () => {
    const compared =
      one.asset === "DB-WKS"
        ? temperatures().map((t, at) => (t - 25) * (62 / (amps(one.asset)[at] ?? NaN)) ** 1.8)
        : temperatures();
    const [lowest = NaN, middle = NaN, highest = NaN] = [...compared].sort((a, b) => a - b);
    expect(route.cell(one.asset, "hottest")).toBe(one.hottest);
    expect(route.number(one.asset, "rise_similar")).toBeCloseTo(highest - (lowest + middle) / 2, 8);
    expect(route.number(one.asset, "rise_lowest")).toBeCloseTo(highest - lowest, 8);
  });
});

test("relative rise, by its formula", () => {
  const one = CASES.find(({ asset }) => asset === "MSB-Q3")!;
  const [left = NaN, middle = NaN, right = NaN] = read("MSB-Q3").map((reading) => temperature(one, reading));
  expect(route.number("MSB-Q3", "relative_rise")).toBeCloseTo((right - (left + middle) / 2) / (right - 26.5), 8);
});

test("limit and share of limit: 65 K at 909 A, 880 A in air of 30 °C", () => {
  const limit = 30 + 65 * (880 / 909) ** 1.8;
  expect(route.number("TX1-LV", "limit_at_load")).toBeCloseTo(limit, 8);
  const share = (route.number("TX1-LV", "corrected_middle") - 30) / (limit - 30);
  expect(route.number("TX1-LV", "share_of_limit")).toBeCloseTo(share, 8);
});

/** The expanded uncertainty as it stands in the row; its numbers have a test of their own. */
const ownU = (asset: string): number => route.number(asset, "rise_U");

test("rise at full load: exponents 1.6 and 2, widened by the uncertainty of the rise", () => {
  const similar = route.number("MSB-Q3", "rise_similar");
  const u = ownU("MSB-Q3");
  expect(route.number("MSB-Q3", "full_low")).toBeCloseTo((similar - u) * (320 / 229) ** 1.6, 5);
  expect(route.number("MSB-Q3", "full_high")).toBeCloseTo((similar + u) * (320 / 229) ** 2, 5);
});

test("unequal currents are projected from the largest of them", () => {
  const similar = route.number("DB-WKS", "rise_similar");
  expect(route.number("DB-WKS", "full_low")).toBeCloseTo((similar - ownU("DB-WKS")) * (80 / 62) ** 1.6, 5);
});

test("at least: the numbers begin with the sign, and are those of the reading at the limit", () => {
  const one: Case = { asset: "BLR-CB1", emissivity: 0.92, reflected: 24, pathAir: 31, hottest: "middle" };
  const [left = NaN, middle = NaN, right = NaN] = read("BLR-CB1").map((reading) => temperature(one, reading));
  expect(route.cell("BLR-CB1", "corrected_middle")).toBe(`≥ ${middle.toFixed(1)}`);
  expect(route.cell("BLR-CB1", "rise_middle")).toBe(`≥ ${(middle - 31).toFixed(1)}`);
  expect(route.cell("BLR-CB1", "rise_similar")).toBe(`≥ ${(middle - (left + right) / 2).toFixed(1)}`);
  expect(route.number("BLR-CB1", "corrected_left")).toBeCloseTo(left, 8);
  expect(route.cell("BLR-CB1", "share_of_limit")).toMatch(/^≥ \d+ %$/);
});

test("load share and spot margin", () => {
  expect(route.number("MSB-Q3", "load_share")).toBeCloseTo(229 / 320, 12);
  expect(route.number("ROOF-AH2", "spot_margin")).toBeCloseTo(18 / (3 * 1.2 * 4), 12);
});
