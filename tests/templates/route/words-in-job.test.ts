/** Words where Job wants a number or a date: told on the rows they matter to, and no error value anywhere. */
import { inThePumpHouse, read } from "../mechanical/fixture.js";
import type { JobValues } from "../../../src/templates/route/job.js";
import { inTheDairy, worked, type WorkedRoute } from "./fixture.js";

const row = {
  ...{ asset_id: "MSB-Q5", status: "exception", time: 0.4, thermal_image: "IR-1", surrounding_air: 26.5 },
  ...{ left: 37, middle: 44.6, right: 37.3, amps_left: 148, amps_middle: 152, amps_right: 146 },
};
const JOBS: readonly JobValues[] = [
  { calibrated: "last spring" },
  { calibration_days: "a year" },
  { check_source: "kettle", check_reading: 99 },
  { check_source: 100, check_reading: "99 °C" },
];

let routes: readonly WorkedRoute[];
beforeAll(async () => {
  routes = await worked(
    inTheDairy([row]),
    ...JOBS.map((job) => inTheDairy([row], { job })),
    inThePumpHouse([{ ...read, asset_id: "P2-DE", reading: 60 }], { job: { calibrated: "last spring" } }),
  );
});

test("no error value on any sheet", () => {
  expect(routes.flatMap(({ errors }) => errors)).toEqual([]);
});

test("the grade is what it is without them, and what cannot be told of the camera is said", () => {
  const [plain, ...others] = routes;
  const grade = plain!.cell(0, "grade_found");
  expect(grade).toMatch(/^\d of 4: /);
  expect(others.slice(0, -1).map((one) => one.cell(0, "grade_found"))).toEqual(JOBS.map(() => grade));
  const isSaid = (one: WorkedRoute): boolean =>
    one.remarks(0).includes("calibration cannot be told: Job wants a date and days");
  expect(routes.map(isSaid)).toEqual([false, true, true, false, false, true]);
  expect(routes.at(-1)!.cell(0, "grade_found")).toMatch(/^\d of 4: /);
});
