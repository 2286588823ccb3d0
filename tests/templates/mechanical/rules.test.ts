/**
 * Rules of the trade on a mechanical route. Readings are of black surfaces close by: rises are plain differences. Edges
 * are our own judgement, written here apart from the data (over like and over the baseline from 5 watch, 10 plan, 20 K
 * act; share of limit from 75, 90, 100, 120 %), the 17 K and 48 h after greasing a lubrication magazine's, as quoted.
 */
import { airTransmission } from "../../../src/core/air/transmission.js";
import { ZERO_CELSIUS } from "../../../src/core/constants.js";
import type { Settings } from "../../../src/core/correction/settings.js";
import { DEFAULT_BAND } from "../../../src/core/planck/band.js";
import type { PointReading } from "../../../src/templates/mechanical/typed.js";
import { worked, type WorkedRoute } from "../route/fixture.js";
import { overAirU, overSimilarU, readingU, type Standard } from "../../support/rise-u.js";
import { DAY, inThePumpHouse, read } from "./fixture.js";

const at = (asset_id: string, reading: number, rest: PointReading = {}): PointReading => ({
  ...read,
  asset_id,
  reading,
  ...rest,
});
/** Hours before the image, which was taken at noon. */
const greased = (hours: number): PointReading => ({ last_greased: DAY + 0.5 - hours / 24 });

const airTemp = 20 + ZERO_CELSIUS;
/** Of the fixture: black, surroundings and air of 20 °C, 5 cm of dry air. */
const black: Settings = {
  ...{ emissivity: 1, reflected: airTemp, airTemp },
  airTransmission: airTransmission({ distance: 0.05, airTemp, humidity: 0.01 }, DEFAULT_BAND),
};
/** Half-widths over √3: emissivity 0.02, reflected 3 K, 20 % of what the air takes. */
const standard: Standard = {
  emissivity: 0.02 / Math.sqrt(3),
  reflected: 3 / Math.sqrt(3),
  airTransmission: (0.2 * (1 - black.airTransmission!)) / Math.sqrt(3),
};

const BOOKS = {
  like: inThePumpHouse([at("P1-DE", 52), at("P1-NDE", 46, { process_load: 60 })]),
  own: inThePumpHouse([at("P1-DE", 52, { reference: 51 }), at("P1-NDE", 40)]),
  ladder: inThePumpHouse([44.9, 45.1, 46, 50.1, 60.1].map((hot) => at("P2-NDE", hot, { reference: 40 }))),
  absent: inThePumpHouse([at("P1-DE", 52)]),
  baseline: inThePumpHouse([
    at("P2-DE", 44.9),
    at("P2-DE", 45.1),
    at("P2-DE", 50.1),
    at("P2-DE", 60.1),
    at("P2-DE", 36),
    at("P2-DE", 60.1, { told_to: "shift" }),
  ]),
  pair: inThePumpHouse([at("P1-DE", 52), at("P1-NDE", 40), at("P2-NDE", 52, { reference: 40 })]),
  grease: inThePumpHouse([
    at("P2-DE", 52, greased(20)),
    at("P2-DE", 56.9, greased(47)),
    at("P2-DE", 57.1, greased(47)),
    at("P2-DE", 52, greased(49)),
    at("P2-DE", 52, greased(-3)),
    at("P2-DE", 42, greased(20)),
  ]),
  undated: inThePumpHouse([at("P2-DE", 52, greased(20))], { job: { date: null } }),
  fraction: inThePumpHouse([at("P2-DE", 42), at("P2-DE", 42, { humidity: 45 }), {}], { job: { humidity: 0.45 } }),
  limit: inThePumpHouse([
    at("G1", 83.1),
    at("G1", 90.1, greased(20)),
    at("G2", 83),
    at("G3", 83),
    at("M1-F", 100),
    at("M2-F", 79),
  ]),
  range: inThePumpHouse([at("P1-DE", 150, { reading_is: "at least" }), at("P1-NDE", 46)]),
  fahrenheit: inThePumpHouse([at("P2-DE", 50.1), at("G1", 83.1), at("M1-F", 100)], { units: "F" }),
};

const routes = {} as Record<keyof typeof BOOKS, WorkedRoute>;
beforeAll(async () => {
  const names = Object.keys(BOOKS) as (keyof typeof BOOKS)[];
  const all = await worked(...names.map((name) => BOOKS[name]));
  names.forEach((name, index) => (routes[name] = all[index]!));
});

test("no error value on any sheet", () => {
  for (const route of Object.values(routes)) expect(route.errors).toEqual([]);
});

test("the row of the like point is the reference, of both for one another", () => {
  const { like } = routes;
  expect(like.number(0, "corrected_reading")).toBeCloseTo(52, 2);
  expect(like.number(0, "rise_similar")).toBeCloseTo(6, 2);
  expect(like.cell(0, "compared_with")).toBe("P1-NDE");
  expect(like.cell(0, "grade_found")).toBe("1 of 4: watch, warmer than its like");
  expect(like.cell(0, "judged_by")).toBe("over like (house-mechanical)");
  expect(like.remarks(0)).toBe("load 80 % against 60 % of its like: compare with care");
  // The sound one is colder than the other: no grade, and the row says which question that leaves.
  expect(like.cell(1, "grade_found")).toBe("no grade: colder than its like");
  expect(like.remarks(1)).toContain("which is the sound one?");
});

test("over a like point from 5, 10 and 20 K: watch, plan, act; a fault is never read off 6 K", () => {
  const grades = [0, 1, 2, 3, 4].map((row) => routes.ladder.cell(row, "grade_found"));
  expect(grades).toEqual([
    "0 of 4: nothing unusual",
    "1 of 4: watch, warmer than its like",
    "1 of 4: watch, warmer than its like",
    "2 of 4: plan, clearly warmer than its like",
    "4 of 4: act, far warmer than its like",
  ]);
});

test("a reference in the same image comes before the like point's row", () => {
  const { own } = routes;
  expect(own.number(0, "rise_similar")).toBeCloseTo(1, 2);
  expect(own.cell(0, "compared_with")).toBe("its reference");
  expect(own.cell(0, "grade_found")).toBe("0 of 4: nothing unusual");
});

test("a like point that was not read is no reference", () => {
  expect(routes.absent.cell(0, "grade_found")).toBe(
    "no grade: needs a like point, a baseline or a limit of the surface",
  );
  expect(routes.absent.remarks(0)).toBe("no reading of P1-NDE: nothing to compare with");
});

test("over the baseline from 5, 10 and 20 K, rises compared and never temperatures", () => {
  const grades = [0, 1, 2, 3].map((row) => String(routes.baseline.cell(row, "grade_found")).slice(0, 6));
  expect(grades).toEqual(["0 of 4", "1 of 4", "2 of 4", "4 of 4"]);
  expect(routes.baseline.number(2, "rise_baseline")).toBeCloseTo(10.1, 2);
  expect(routes.baseline.cell(4, "grade_found")).toBe("0 of 4: nothing unusual");
  expect(routes.baseline.remarks(4)).toBe("colder than its baseline: load, air or position differ");
  expect(routes.baseline.remarks(3)).toContain("told_to: a grade 4");
  expect(routes.baseline.remarks(5)).toBe("");
});

test("beside every grade stands its uncertainty: of a rise over the baseline, that of two rises", () => {
  const u = Math.SQRT2 * overAirU(50.1, black, standard);
  expect(routes.baseline.number(2, "rise_U")).toBeCloseTo(u, 3);
  expect(routes.baseline.cell(2, "grade_found_u")).toBe(`± ${u.toFixed(1)} K, edge 10 K inside`);
});

test("over a like in another row: two images; over a reference in the same one its relation of Job", () => {
  const [one, two] = [readingU(52, black, standard), readingU(40, black, standard)];
  expect(routes.pair.number(0, "rise_U")).toBeCloseTo(Math.hypot(one, two), 3);
  expect(routes.pair.number(2, "rise_U")).toBeCloseTo(overSimilarU([52, 40], black, standard, "other surface"), 3);
});

test("fresh grease keeps a rise up to 17 K from a grade for 48 h, and says so", () => {
  const { grease } = routes;
  const grades = [0, 1, 2, 3, 4, 5].map((row) => grease.cell(row, "grade_found"));
  expect(grades).toEqual([
    "no grade: greased 20 h before: not graded up to 17",
    "no grade: greased 47 h before: not graded up to 17",
    "2 of 4: plan, clearly warmer than at its baseline",
    "2 of 4: plan, clearly warmer than at its baseline",
    "2 of 4: plan, clearly warmer than at its baseline",
    "0 of 4: nothing unusual",
  ]);
  expect(grease.remarks(0)).toBe("greased 20 h before: up to 17 K may be grease, look again");
  expect(grease.remarks(4)).toBe("greased after the image: check both times");
  expect(routes.undated.remarks(0)).toBe("needs: survey date in Job");
});

test("a humidity in Job as a fraction is told by its name, where it is used", () => {
  const { fraction } = routes;
  expect(fraction.remarks(0)).toBe("humidity (%) in Job 0.45: a number from 1 to 100, per cent and no fraction: 45?");
  expect([1, 2].map((row) => fraction.remarks(row))).toEqual(["", ""]);
});

test("a limit is the user's own and of the surface that is seen; fresh grease does not suspend it", () => {
  const { limit } = routes;
  expect(limit.number(0, "share_of_limit")).toBeCloseTo(63.1 / 70, 3);
  expect(limit.cell(0, "grade_found")).toBe("2 of 4: close to its limit");
  expect(limit.cell(1, "grade_found")).toBe("3 of 4: at or above its limit");
  expect(limit.cell(2, "limit_used")).toBe("not used: whose limit is it? see limit_is_of");
  expect(limit.cell(3, "limit_used")).toBe("not used: oil is hotter than its housing");
  expect(limit.remarks(3)).toBe("limit not used: oil is hotter than its housing");
});

test("a frame is never graded against a winding's class, whatever Assets call it", () => {
  const { limit } = routes;
  expect(limit.cell(4, "limit_used")).toBe("155 is a winding's class: no limit of a frame");
  expect(limit.cell(5, "limit_used")).toBe("a frame is never judged by its winding");
  for (const row of [4, 5]) {
    expect(limit.cell(row, "share_of_limit")).toBe("");
    expect(limit.cell(row, "grade_found")).toBe("no grade: needs a like point, a baseline or a limit of the surface");
  }
});

test("a reading at the camera's limit gives at least, and is no reference for its like", () => {
  const { range } = routes;
  expect(range.cell(0, "corrected_reading")).toBe("≥ 150.0");
  expect(range.cell(0, "rise_similar")).toBe("≥ 104.0");
  expect(range.cell(0, "grade_found")).toBe("4 of 4 at least: act, far warmer than its like");
  expect(range.cell(1, "rise_similar")).toBe("");
});

test("in °F: the same grades, rises without the offset, the winding's class in °F", () => {
  const { fahrenheit } = routes;
  expect(fahrenheit.number(0, "rise_baseline")).toBeCloseTo(10.1 * 1.8, 1);
  expect(fahrenheit.cell(0, "grade_found")).toBe("2 of 4: plan, clearly warmer than at its baseline");
  expect(fahrenheit.cell(1, "grade_found")).toBe("2 of 4: close to its limit");
  // 155 °C is 311 °F.
  expect(fahrenheit.cell(2, "limit_used")).toBe("311 is a winding's class: no limit of a frame");
});

test("nothing is projected to another load", () => {
  const keys = Object.keys(routes.like.columns);
  expect(keys.filter((key) => key.startsWith("full_") || key === "grade_full")).toEqual([]);
});
