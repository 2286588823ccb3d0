/** Rules of the trade at their edges, and the trade's own worked figures, on a route sheet. */
import { ZERO_CELSIUS } from "../../../src/core/constants.js";
import { correct } from "../../../src/core/correction/correct.js";
import { DEFAULT_BAND } from "../../../src/core/planck/band.js";
import type { BookDescription } from "../../../src/templates/contract.js";
import type { JobValues } from "../../../src/templates/route/job.js";
import type { Reading } from "../../../src/templates/route/typed.js";
import { inTheDairy, worked, type WorkedRoute } from "./fixture.js";

/** Black, close by, in dry air: what is read is what it is, to a hundredth. */
const plain: Reading = {
  asset_id: "X",
  status: "exception",
  time: 0.5,
  thermal_image: "IR-1",
  emissivity: 1,
  distance: 0.05,
  humidity: 1,
};
const asset = { asset_id: "X", rated_A: 200, expected_max_A: 100, permitted_rise: 65, target_size: 20 };

type Three = readonly [left: number, middle: number, right: number];

function row(
  [left, middle, right]: Three,
  [first, second, third]: Three,
  surrounding_air: number,
  rest: Reading = {},
): Reading {
  return {
    ...plain,
    left,
    middle,
    right,
    amps_left: first,
    amps_middle: second,
    amps_right: third,
    surrounding_air,
    ...rest,
  };
}

const inX = (rows: readonly Reading[], job: JobValues = {}): BookDescription =>
  inTheDairy(rows, { assets: [asset], job });

const EQUAL: Three = [80, 80, 80];
const HOT_RIGHT: Three = [30, 30, 45];
const READ: Three = [37, 44.6, 37.3];

/** What a camera set to emissivity 0.95 and 20 °C shows for an apparent temperature. */
const inCamera = READ.map((apparent) => {
  const settings = { emissivity: 0.95, reflected: 20 + ZERO_CELSIUS };
  return correct(apparent + ZERO_CELSIUS, settings, DEFAULT_BAND).temperature - ZERO_CELSIUS;
}) as unknown as Three;
const oxidised = { emissivity: 0.7 };
const corrected: JobValues = { readings_are: "corrected in the camera" };

const BOOKS = {
  figures: inX(
    [
      row([30, 30, 42], [45, 45, 45], 28),
      row([38, 55, 37], [62, 41, 60], 25),
      row([40, 40, 40.2], [120, 120, 120], 28),
    ],
    { u_similar_typed: 0, exponent: 1.6 },
  ),
  edges: inX([
    row(HOT_RIGHT, [110, 100, 100], 25),
    row(HOT_RIGHT, [111, 100, 100], 25),
    row(HOT_RIGHT, [40, 40, 40], 25),
    row(HOT_RIGHT, [39, 39, 39], 25),
    row([30, 30, 32.9], EQUAL, 25),
    row([30, 30, 33.1], EQUAL, 25),
    row([40, 40, 40.2], [120, 120, 120], 28),
    row([0, 0.5, 0.2], EQUAL, 0, { reflected: 0 }),
  ]),
  limits: inX([
    row([150, 150, 40], EQUAL, 25, { reading_is: "at least" }),
    row([-20, -10, -10], EQUAL, -15, { reading_is: "at most" }),
  ]),
  // A camera in its range from 100 °C on.
  high: inX(
    [
      row([100, 100, 100], EQUAL, 25, { reading_is: "at most" }),
      row([100, 100, 140], EQUAL, 25, { reading_is: "at most" }),
    ],
    { range_from: 100, range_to: 650 },
  ),
  halfKnown: inX([row(READ, EQUAL, 26.5, oxidised)], {
    ...corrected,
    set_emissivity: 0.95,
    set_reflected: null,
    set_air_transmission: 0.9,
    set_air_temp: null,
  }),
  apparent: inX([row(READ, EQUAL, 26.5, oxidised)]),
  camera: inX([row(inCamera, EQUAL, 26.5, oxidised)], { ...corrected, set_emissivity: 0.95, set_reflected: 20 }),
  unknown: inX([row(READ, EQUAL, 26.5, oxidised)], corrected),
  uncalibrated: inX([row(HOT_RIGHT, EQUAL, 25)], { calibration_days: 90 }),
  // 2 % of the reading is more than 2 K above 100 °C: 2.4 K at 120 °C.
  hot: inX([row([40, 40, 99.9], EQUAL, 25), row([40, 40, 120], EQUAL, 25)]),
  unequal: inX([row([38, 55, 37], [60, 60, 60], 25), row([38, 55, 37], [60, 40, 60], 25)]),
  house: inX([row([30, 30, 48], EQUAL, 27)], { criteria: "house" }),
};

let routes: Record<keyof typeof BOOKS, WorkedRoute>;
beforeAll(async () => {
  const all = await worked(...Object.values(BOOKS));
  routes = Object.fromEntries(Object.keys(BOOKS).map((name, at) => [name, all[at]])) as typeof routes;
});

test("no error value in any of them", () => {
  expect(Object.values(routes).flatMap(({ errors }) => errors)).toEqual([]);
});

test("worked figures of the trade: 12 K at 45 A to 100 A", () => {
  expect(routes.figures.number(0, "full_low")).toBeCloseTo(43.06, 1);
  expect(routes.figures.number(0, "full_high")).toBeCloseTo(59.26, 1);
});

test("worked figures of the trade: three phases at a common load", () => {
  expect(routes.figures.number(1, "c_left")).toBeCloseTo(13.0, 1);
  expect(routes.figures.number(1, "c_middle")).toBeCloseTo(58.14, 1);
  expect(routes.figures.number(1, "c_right")).toBeCloseTo(12.65, 1);
});

test("worked figures of the trade: 65 K, 120 of 200 A, air of 28 °C", () => {
  expect(routes.figures.number(2, "limit_at_load")).toBeCloseTo(56.7, 2);
  expect(routes.edges.number(6, "limit_at_load")).toBeCloseTo(53.92, 2);
});

test("currents up to 10 % apart are compared as they are, beyond at the largest", () => {
  expect(routes.edges.number(0, "rise_similar")).toBeCloseTo(15, 1);
  expect(routes.edges.number(1, "rise_similar")).toBeCloseTo(20 * 1.11 ** 1.8 - (5 + 5 * 1.11 ** 1.8) / 2, 1);
});

test("what is brought to the largest current brings its uncertainty along", () => {
  const [alike, apart] = [0, 1].map((at) => routes.unequal.number(at, "rise_U_similar"));
  // 40 A to 60 A by the central exponent, 1.8.
  expect(apart! / alike!).toBeCloseTo(1.5 ** 1.8, 6);
  expect(routes.unequal.cell(1, "grade_found_u")).toBe(`more than ± ${apart!.toFixed(1)} K`);
});

test("40 % load is projected, 39 % is not", () => {
  expect(routes.edges.cell(2, "grade_full")).toMatch(/^4 of 4/);
  expect(routes.edges.cell(3, "grade_full")).toBe("39 % load: not projected");
});

test("within 3 K is balanced, beyond is one hot phase", () => {
  expect(routes.edges.cell(4, "pattern")).toBe("balanced");
  expect(routes.edges.cell(5, "pattern")).toBe("one hot");
});

test("0 °C is a reading like any other", () => {
  expect(routes.edges.number(7, "corrected_left")).toBeCloseTo(0, 6);
  expect(routes.edges.number(7, "rise_middle")).toBeCloseTo(0.5, 1);
  expect(routes.edges.remarks(7)).toBe("");
});

test("what stands at a limit of the camera's range is no reference", () => {
  expect(routes.limits.cell(0, "grade_similar")).toBe("fewer than two similar phases");
  expect(routes.limits.cell(0, "grade_found")).toMatch(/^4 of 4 at least: /);
  expect(routes.limits.cell(1, "corrected_left")).toBe("≤ -20.0");
  expect(routes.limits.cell(1, "grade_similar")).toBe("fewer than two similar phases");
});

test("what is at most so hot is no more than that: only a hotter phase beside it has a grade, which is exact", () => {
  expect(routes.high.cell(0, "grade_found")).toBe("no grade");
  expect(routes.high.remarks(0)).toContain("only known to be at most so hot: no grade");
  expect(routes.high.cell(1, "grade_found")).toMatch(/^4 of 4: /);
  expect(routes.high.cell(1, "grade_found_u")).toMatch(/^± /);
  // 115 K at 80 A are at least 115 · (100/80)^1.6 = 164 K at 100 A, less U.
  expect(routes.high.number(1, "full_low")).toBeGreaterThan(150);
  expect(routes.high.cell(1, "grade_full")).toBe("4 of 4 throughout, over air");
});

test("of what the camera has corrected with, all that it takes to take it back is asked for", () => {
  expect(routes.halfKnown.remarks(0)).toBe("needs: set reflected, set air temperature in Job");
});

test("readings corrected in the camera are taken back first", () => {
  const expected = routes.apparent.number(0, "corrected_middle");
  expect(routes.camera.number(0, "corrected_middle")).toBeCloseTo(expected, 8);
});

test("corrected in the camera with what, nobody knows: nothing is assumed", () => {
  expect(routes.unknown.remarks(0)).toBe("needs: set emissivity, set reflected");
  expect(routes.unknown.cell(0, "corrected_middle")).toBe("");
});

test("the camera's calibration had run out on the day", () => {
  expect(routes.uncalibrated.remarks(0)).toBe("the camera's calibration had run out");
  expect(routes.uncalibrated.cell(0, "grade_found")).toBe("no grade");
});

test("where the camera's per cent counts, the uncertainty grows with the reading", () => {
  expect(routes.hot.number(0, "camera_u")).toBeCloseTo(2 / Math.sqrt(3), 9);
  expect(routes.hot.number(1, "camera_u")).toBeCloseTo(2.4 / Math.sqrt(3), 9);
  expect(routes.hot.number(1, "rise_U_air")).toBeGreaterThan(routes.hot.number(0, "rise_U_air") + 0.4);
});

test("the house's criteria, chosen in the job", () => {
  expect(routes.house.cell(0, "grade_found")).toBe("3 of 4: fault");
  expect(routes.house.cell(0, "criteria_action")).toBe("repair at the next stop");
});
