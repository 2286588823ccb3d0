/** Rows that are empty, half filled or wrongly filled: words in one column, calm everywhere else. */
import type { PointReading } from "../../../src/templates/mechanical/typed.js";
import { worked, type WorkedRoute } from "../route/fixture.js";
import { inThePumpHouse, read } from "./fixture.js";

const whole: PointReading = { ...read, asset_id: "P2-DE", reading: 42 };

const ROWS: readonly [what: string, row: PointReading, remarks: string][] = [
  ["an empty row", {}, ""],
  ["a point alone", { asset_id: "P2-DE" }, "needs: status, time"],
  [
    "an exception just begun",
    { asset_id: "P2-DE", status: "exception" },
    "needs: time, thermal image, reading, surrounding air, process load",
  ],
  ["a reading alone", { reading: 40 }, "needs: asset_id, status, time, surrounding air, process load"],
  ["no exception, nothing read", { asset_id: "P2-DE", status: "no exception", time: 0.4 }, ""],
  ["not inspected, no reason", { asset_id: "P2-DE", status: "not inspected", time: 0.4 }, "needs: reason"],
  ["not inspected", { asset_id: "P2-DE", status: "not inspected", time: 0.4, reason: "guard" }, "not inspected: guard"],
  ["an unknown point", { ...whole, asset_id: "NOPE" }, "needs: emissivity; NOPE is not in Assets"],
  ["emissivity in per cent", { ...whole, emissivity: 95 }, "emissivity 95: a number from 0.01 to 1"],
  ["a decimal comma", { ...whole, reading: "58,0" }, "reading 58,0: a number with a point, nothing else"],
  [
    "more than the camera reaches",
    { ...whole, reading: ">150" },
    "reading >150: type 150 and set reading_is to at least",
  ],
  [
    "at the end of the camera's range",
    { ...whole, reading: 150 },
    "at the end of the camera's range: set reading_is to at least",
  ],
  ["a load as words", { ...whole, process_load: "full" }, "process_load full: a number with a point, nothing else"],
  [
    "at most",
    { ...whole, reading: -20, reading_is: "at most" },
    "only known to be at most so hot: no grade; reading at the camera's limit: take it again in the next range",
  ],
  [
    "a date of greasing as words",
    { ...whole, last_greased: "monday" },
    "last_greased monday: a number with a point, nothing else",
  ],
  [
    "light load",
    { ...whole, process_load: 35 },
    "load 35 % against 80 % at its baseline: compare with care; 35 % load: a small rise proves nothing",
  ],
  ["strong wind", { ...whole, wind: 8 }, "wind 8.0 m/s: no grade"],
  ["a guard in front", { ...whole, asset_id: "C1" }, "indirect view: what is seen has no grade"],
  ["nothing to compare with", { ...whole, asset_id: "B1" }, ""],
];

let route: WorkedRoute;
beforeAll(async () => {
  [route] = (await worked(inThePumpHouse(ROWS.map(([, row]) => row)))) as [WorkedRoute];
});

test.each(ROWS.map(([what, , remarks], at) => [what, at, remarks] as const))("%s", (_, at, remarks) => {
  expect(route.remarks(at)).toBe(remarks);
});

test("no error value anywhere", () => {
  expect(route.errors).toEqual([]);
});

test("a row with nothing in it shows nothing", () => {
  const shown = Object.entries(route.columns).filter(
    // What is only reckoned with, 0 where grease is not fresh.
    ([key, column]) => key !== "fresh" && column[0] !== "" && column[0] !== null,
  );
  expect(shown).toEqual([]);
});

const gradeOf = (what: string): unknown =>
  route.cell(
    ROWS.findIndex(([name]) => name === what),
    "grade_found",
  );

test("a row with a reading and no grade says why", () => {
  expect(gradeOf("nothing to compare with")).toBe("no grade: needs a like point, a baseline or a limit of the surface");
  expect(gradeOf("an unknown point")).toBe("no grade: needs its asset in Assets");
  for (const what of ["at most", "strong wind", "a guard in front", "a decimal comma", "emissivity in per cent"])
    expect([what, gradeOf(what)]).toEqual([what, "no grade"]);
});
