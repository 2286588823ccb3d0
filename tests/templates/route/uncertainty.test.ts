/**
 * The uncertainty of each row's rises, worked out again by differences: settings and half-widths are written down here, as
 * the demo's lists and the notes of its sheets have them. Emissivity 0.02 (0.05 below 0.9), reflected 3 K, of what the air
 * takes 20 %, a window's transmission 0.05 and its temperature 5 K, all to either side and rectangular.
 */
import { airTransmission } from "../../../src/core/air/transmission.js";
import { ZERO_CELSIUS } from "../../../src/core/constants.js";
import type { Settings } from "../../../src/core/correction/settings.js";
import { DEFAULT_BAND } from "../../../src/core/planck/band.js";
import { assets } from "../../../src/templates/route/demo/assets.js";
import { demoRoute } from "../../../src/templates/route/demo/route.js";
import { readings } from "../../../src/templates/route/demo/readings.js";
import { surfaces } from "../../../src/templates/route/demo/plant.js";
import { overAirU, overSimilarU, type Standard } from "../../support/rise-u.js";
import { inTheDairy, worked, type WorkedRoute } from "./fixture.js";

const q3 = readings.find(({ asset_id }) => asset_id === "MSB-Q3")!;
const cap = readings.find(({ asset_id }) => asset_id === "CAP-1")!;

let routes: Record<"demo" | "fahrenheit" | "same" | "two" | "row" | "typed" | "camera" | "half" | "blank", WorkedRoute>;
beforeAll(async () => {
  const own = (job: Parameters<typeof inTheDairy>[1]) => inTheDairy([q3, cap], job);
  const [demo, fahrenheit, same, two, row, typed, camera, half, blank] = (await worked(
    demoRoute("C"),
    demoRoute("F"),
    own({ job: { similar_is: "on the same surface" } }),
    own({ job: { similar_is: "in another image" } }),
    inTheDairy([{ ...q3, similar_is: "in another image" }]),
    own({ job: { u_similar_typed: 5, u_air_typed: 6 } }),
    own({ job: { accuracy: 1, accuracy_percent: 0 } }),
    own({ job: { reflected_half: 0, air_half: 0 } }),
    inTheDairy([{}, { asset_id: "MSB-Q3" }, { ...q3, left: "?" }, { ...q3, emissivity: "x" }]),
  )) as [WorkedRoute, ...WorkedRoute[]];
  routes = { demo, fahrenheit, same, two, row, typed, camera, half, blank } as typeof routes;
}, 120_000);

interface Case {
  readonly asset: string;
  readonly emissivity: number;
  readonly reflected: number;
  readonly air: number;
  readonly window?: { readonly transmission: number; readonly temp: number };
}

const CASES: readonly Case[] = [
  { asset: "MSB-Q3", emissivity: 0.93, reflected: 24, air: 26.5 },
  { asset: "CAP-1", emissivity: 0.55, reflected: 24, air: 28 },
  { asset: "TX1-HV", emissivity: 0.95, reflected: 24, air: 18 },
  { asset: "MV-C1", emissivity: 0.94, reflected: 18, air: 18, window: { transmission: 0.72, temp: 18.5 } },
];

function settingsOf({ emissivity, reflected, air, window }: Case): Settings {
  const kelvin = (celsius: number): number => celsius + ZERO_CELSIUS;
  const path = { distance: 1, airTemp: kelvin(air), humidity: 0.45 };
  return {
    ...{ emissivity, reflected: kelvin(reflected), airTemp: kelvin(air) },
    airTransmission: airTransmission(path, DEFAULT_BAND),
    ...(window && {
      ...{ windowTransmission: window.transmission, windowTemp: kelvin(window.temp), windowReflectance: 0.05 },
      outerReflected: kelvin(24),
    }),
  };
}

function standardOf({ emissivity, window }: Case, { airTransmission: air = 1 }: Settings): Standard {
  const of = (half: number): number => half / Math.sqrt(3);
  return {
    ...{ emissivity: of(emissivity < 0.9 ? 0.05 : 0.02), reflected: of(3), airTransmission: of(0.2 * (1 - air)) },
    ...(window && { windowTransmission: of(0.05), windowTemp: of(5) }),
  };
}

/** The hottest reading, and the mean of the other two. */
function pairOf(asset: string): [number, number] {
  const all = ["left", "middle", "right"].map((phase) => routes.demo.number(asset, phase));
  const hot = Math.max(...all);
  return [hot, (all.reduce((sum, one) => sum + one, 0) - hot) / 2];
}

const caseOf = (asset: string): [Settings, Standard, [number, number]] => {
  const one = CASES.find((each) => each.asset === asset)!;
  const settings = settingsOf(one);
  return [settings, standardOf(one, settings), pairOf(asset)];
};

test.each(CASES.map(({ asset }) => asset))("%s: by the row's own settings, in both units", (asset) => {
  const [settings, standard, pair] = caseOf(asset);
  const similar = overSimilarU(pair, settings, standard, "other surface");
  const air = overAirU(pair[0], settings, standard);
  expect(routes.demo.number(asset, "rise_U_similar")).toBeCloseTo(similar, 3);
  expect(routes.demo.number(asset, "rise_U_air")).toBeCloseTo(air, 3);
  expect(routes.fahrenheit.number(asset, "rise_U_similar")).toBeCloseTo(1.8 * similar, 2);
  expect(routes.fahrenheit.number(asset, "rise_U_air")).toBeCloseTo(1.8 * air, 2);
});

test("what governs is shown, with its U in words beside the grade", () => {
  const [settings, standard, pair] = caseOf("MSB-Q3");
  const u = overSimilarU(pair, settings, standard, "other surface");
  expect(routes.demo.number("MSB-Q3", "rise_U")).toBeCloseTo(u, 3);
  expect(routes.demo.cell("MSB-Q3", "grade_found_u")).toBe(`± ${u.toFixed(1)} K`);
});

test("how the similar component is seen: by Job, by the row", () => {
  const [settings, standard, pair] = caseOf("MSB-Q3");
  const same = overSimilarU(pair, settings, standard, "same surface");
  const two = overSimilarU(pair, settings, standard, "two images");
  expect(two).toBeGreaterThan(3 * same);
  expect(routes.same.number("MSB-Q3", "rise_U_similar")).toBeCloseTo(same, 3);
  expect(routes.two.number("MSB-Q3", "rise_U_similar")).toBeCloseTo(two, 3);
  expect(routes.row.number("MSB-Q3", "rise_U_similar")).toBeCloseTo(two, 3);
});

test("half-widths of Job count, and figures typed there replace what is worked out", () => {
  expect(routes.typed.number("MSB-Q3", "rise_U_similar")).toBe(5);
  expect(routes.typed.number("CAP-1", "rise_U_air")).toBe(6);
  expect(routes.typed.cell("MSB-Q3", "grade_found_u")).toMatch(/^± 5\.0 K/);
  const [settings, { emissivity }, [hot]] = caseOf("MSB-Q3");
  expect(routes.half.number("MSB-Q3", "rise_U_air")).toBeCloseTo(
    overAirU(hot, settings, { emissivity: emissivity! }),
    3,
  );
  // ±1 K in place of ±2 K.
  expect(routes.camera.number("MSB-Q3", "camera_u")).toBeCloseTo(1 / Math.sqrt(3), 6);
});

test("± of the emissivity stands with the surface", async () => {
  const asset = assets.find(({ asset_id }) => asset_id === "MSB-Q3")!;
  const book = demoRoute("C");
  const sheets = book.sheets.map((sheet) => {
    if (sheet.kind !== "table" || sheet.tableName !== "SurfaceList") return sheet;
    const at = sheet.columns.findIndex(({ key }) => key === "emissivity_half");
    const line = surfaces.findIndex(({ surface }) => surface === asset.surface);
    return { ...sheet, rows: sheet.rows.map((row, r) => row.map((cell, c) => (r === line && c === at ? 0.1 : cell))) };
  });
  const [route] = await worked({ ...book, sheets });
  const [settings, standard, [hot]] = caseOf("MSB-Q3");
  expect(route!.number("MSB-Q3", "rise_U_air")).toBeCloseTo(
    overAirU(hot, settings, { ...standard, emissivity: 0.1 / Math.sqrt(3) }),
    3,
  );
}, 60_000);

test("where it cannot be worked out nothing stands, never an error", () => {
  for (const row of [0, 1, 2, 3])
    for (const key of ["rise_U", "rise_U_similar", "grade_found_u"]) expect(routes.blank.cell(row, key)).toBe("");
  for (const route of Object.values(routes)) expect(route.errors).toEqual([]);
});
