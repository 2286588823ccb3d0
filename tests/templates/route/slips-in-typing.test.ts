/** What is easily typed wrong, told in words on the sheet. By hand: 62/41 − 1 = 51 %, |41/62 − 1| = 34 %, 25 min = 25/1440. */
import type { Reading } from "../../../src/templates/route/typed.js";
import { inThePumpHouse, read } from "../mechanical/fixture.js";
import { inTheDairy, worked, type WorkedRoute } from "./fixture.js";

const fine: Reading = {
  ...{ asset_id: "MSB-Q3", status: "exception", thermal_image: "IR-1", time: 9 / 24, surrounding_air: 25 },
  ...{ left: 30, middle: 40, right: 30, amps_left: 200, amps_middle: 200, amps_right: 200 },
};
const currents = (amps_left: number, amps_middle: number, amps_right: number): Reading => ({
  ...fine,
  ...{ asset_id: "DB-WKS", left: 38, middle: 55, right: 37, amps_left, amps_middle, amps_right },
});

let electrical: WorkedRoute;
let mechanical: WorkedRoute;
let ofJob: WorkedRoute;
beforeAll(async () => {
  [electrical, mechanical, ofJob] = (await worked(
    inTheDairy([
      fine,
      { ...fine, asset_id: "msb-q3" },
      { ...fine, asset_id: "MSB-Q5", time: 9.2 },
      { ...fine, asset_id: "MSB-Q8", time: "9h20", amps_time: 9.45 },
      { ...fine, asset_id: "UPS-IN", humidity: 0.45 },
      currents(62, 41, 60),
      {},
      {},
      { ...fine, asset_id: "MCC1-P1", amps_time: 9 / 24 + 25 / 1440 },
    ]),
    inThePumpHouse([
      { ...read, asset_id: "P1-DE", reading: 50, reference: 40 },
      { ...read, asset_id: "P1-DE", reading: 50, reference: 40, time: 14.3 },
    ]),
    inTheDairy([fine], { job: { humidity: 0.5 } }),
  )) as [WorkedRoute, WorkedRoute, WorkedRoute];
}, 120_000);

const remarks = (row: number, route = electrical): string => String(route.cell(row, "remarks"));

test("the same asset in two rows, in any case, is told in the later one", () => {
  expect(remarks(0)).not.toContain("row above");
  expect(remarks(1)).toContain("msb-q3 stands in a row above as well");
  expect(remarks(1, mechanical)).toContain("P1-DE stands in a row above as well");
  // Empty rows are alike, and calm.
  expect([remarks(6), remarks(7)]).toEqual(["", ""]);
});

test("a number or a text that is no time of day", () => {
  expect(remarks(2)).toContain("time 9.2 is no time of day: type it with a colon, as 9:20");
  expect(remarks(3)).toContain("time 9h20 is no time of day");
  expect(remarks(3)).toContain("amps_time 9.45 is no time of day");
  expect(remarks(1, mechanical)).toContain("time 14.3 is no time of day");
  // Nothing is reckoned with it, and the grade stands.
  expect(remarks(3)).not.toContain("min from the image");
  expect(remarks(8)).toContain("current read 25 min from the image");
  expect(electrical.cell(2, "grade_found")).toMatch(/of 4/);
});

test("a humidity typed as a fraction, in the row and in Job", () => {
  expect(remarks(4)).toContain("humidity 0.45: a number from 1 to 100, per cent and no fraction: 45?");
  expect(remarks(0, ofJob)).toContain("humidity (%) in Job 0.5: a number from 1 to 100, per cent and no fraction: 50?");
});

test("currents more than 10 % apart: how far the hottest phase's is from the others'", () => {
  expect(electrical.cell(5, "currents")).toBe("differ by 51 %, |I_hot/I_ref − 1| = 34 %, compared at 62 A");
});
