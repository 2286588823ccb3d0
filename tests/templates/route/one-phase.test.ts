/** What stands in one row belongs together: the rise that is judged and its load are of one phase, and there is one U. */
import { inTheDairy, worked, type WorkedRoute } from "./fixture.js";

const asset = { asset_id: "X", rated_A: 400, expected_max_A: 300, permitted_rise: 65, target_size: 20 };
// Black, close by, in dry air: what is read is what it is.
const plain = {
  asset_id: "X",
  status: "exception",
  time: 0.5,
  thermal_image: "IR-1",
  emissivity: 1,
  distance: 0.05,
  humidity: 1,
} as const;

let route: WorkedRoute;
beforeAll(async () => {
  const rows = [
    // At 210 A the right one would rise by 27.7 × (210/180)^1.8 = 36.6 K, more than the 30 K of the middle one, which reads highest.
    {
      ...plain,
      left: 54.4,
      middle: 55.6,
      right: 53.3,
      amps_left: 200,
      amps_middle: 210,
      amps_right: 180,
      surrounding_air: 25.6,
    },
    {
      ...plain,
      left: 40,
      middle: 40,
      right: 52,
      amps_left: 150,
      amps_middle: 150,
      amps_right: 150,
      surrounding_air: 25,
    },
    // Partly seen, the current of the unseen phase unknown: no grade, but 29.4 K over air.
    {
      ...plain,
      status: "partly seen",
      reason: "barrier",
      left: 29.4,
      middle: 49.4,
      amps_left: 150,
      amps_middle: 150,
      surrounding_air: 20,
    },
    {
      ...plain,
      status: "exceptoin",
      left: 40,
      middle: 40,
      right: 60,
      amps_left: 150,
      amps_middle: 150,
      amps_right: 150,
      surrounding_air: 25,
    },
    {
      ...plain,
      status: "no exception",
      left: 40,
      middle: 40,
      right: 60,
      amps_left: 150,
      amps_middle: 150,
      amps_right: 150,
      surrounding_air: 25,
    },
  ];
  [route] = (await worked(inTheDairy(rows, { assets: [asset] }))) as [WorkedRoute];
}, 120_000);

test("the rise over air and the load that it is kept with are of the phase that reads highest", () => {
  expect(route.cell(0, "hottest")).toBe("right");
  expect(route.cell(0, "governs")).toBe("over air");
  expect(route.number(0, "rise_judged")).toBeCloseTo(30, 1);
  expect(route.cell(0, "load_judged")).toBe(210);
});

test("the range at full load is wider than the projected rise by the U of the row", () => {
  // 27 K over air at 150 of 300 A: low end (27 − U)·2^1.6, high end (27 + U)·2^2 (JCGM 100: the factor scales both).
  expect(route.cell(1, "projected")).toBe("ambient");
  const u = route.number(1, "rise_U_air");
  expect(route.number(1, "full_low")).toBeCloseTo((27 - u) * 2 ** 1.6, 1);
  expect(route.number(1, "full_high")).toBeCloseTo((27 + u) * 4, 1);
});

test("nothing hot falls off the list of exceptions for want of a grade or by a misspelt status", () => {
  expect(route.cell(2, "grade_found")).toMatch(/^no grade: needs current right/);
  const ranks = [0, 1, 2, 3, 4].map((row) => typeof route.cell(row, "exception_rank"));
  expect(ranks).toEqual(["number", "number", "number", "number", "string"]);
});
