/** Rows that are empty, half filled or wrongly filled: words in one column, calm everywhere else. */
import type { Reading } from "../../../src/templates/route/typed.js";
import { inTheDairy, worked, type WorkedRoute } from "./fixture.js";

const whole: Reading = {
  asset_id: "MSB-Q5",
  status: "exception",
  time: 0.4,
  thermal_image: "IR-1",
  left: 37,
  middle: 44.6,
  right: 37.3,
  amps_left: 148,
  amps_middle: 152,
  amps_right: 146,
  surrounding_air: 26.5,
};
const nothingRead = { left: null, middle: null, right: null };

const RIGHT_3730 = "right 3730: a number from -40 to 1500; reading outside the camera's range -20 to 150 °C";

const ROWS: readonly [what: string, row: Reading, remarks: string][] = [
  ["an empty row", {}, ""],
  ["an asset alone", { asset_id: "MSB-Q5" }, "needs: status, time"],
  [
    "an exception just begun",
    { asset_id: "MSB-Q5", status: "exception" },
    "needs: time, thermal image, reading left, reading middle, reading right, current left, current middle, current right, surrounding air",
  ],
  ["a reading alone", { left: 40 }, "needs: asset_id, status, time, surrounding air"],
  [
    "no exception, no currents",
    { asset_id: "MSB-Q5", status: "no exception", time: 0.4 },
    "needs: current left, current middle, current right",
  ],
  ["not inspected, no reason", { ...whole, ...nothingRead, status: "not inspected" }, "needs: reason"],
  ["an unknown asset", { ...whole, asset_id: "NOPE" }, "needs: emissivity; NOPE is not in Assets"],
  ["one reading short", { ...whole, right: null }, "needs: reading right"],
  ["emissivity in per cent", { ...whole, emissivity: 95 }, "emissivity 95: a number from 0.01 to 1"],
  ["a decimal comma", { ...whole, left: "58,0" }, "left 58,0: a number with a point, nothing else"],
  ["a reading with its unit", { ...whole, middle: "44.6 °C" }, "middle 44.6 °C: a number with a point, nothing else"],
  [
    "more than the camera reaches",
    { ...whole, middle: ">150" },
    "middle >150: type 150 and set reading_is to at least",
  ],
  [
    "less than the camera reaches",
    { ...whole, right: "<= -20" },
    "right <= -20: type -20 and set reading_is to at most",
  ],
  [
    "more than the camera reaches, with a unit",
    { ...whole, middle: "> 150,5 °C" },
    "middle > 150,5 °C: type 150.5 and set reading_is to at least",
  ],
  ["a reading that cannot be", { ...whole, right: 3730 }, RIGHT_3730],
  ["beyond the camera's range", { ...whole, right: 150.1 }, "reading outside the camera's range -20 to 150 °C"],
  ["below the camera's range", { ...whole, right: -20.1 }, "reading outside the camera's range -20 to 150 °C"],
  [
    "at the end of the camera's range",
    { ...whole, right: 150 },
    "at the end of the camera's range: set reading_is to at least",
  ],
  [
    "at the lower end of the camera's range",
    { ...whole, right: -20, reading_is: "exact" },
    "at the end of the camera's range: set reading_is to at most",
  ],
  [
    "a status of one's own",
    { ...whole, status: "hot" },
    "status hot: one of no exception, exception, partly seen, not inspected",
  ],
  [
    "a word of one's own beside the reading",
    { ...whole, reading_is: "over" },
    "reading_is over: one of exact, at least, at most",
  ],
  ["a furnace for an air", { ...whole, surrounding_air: 260 }, "surrounding_air 260: a number from -45 to 65"],
  ["a furnace in the path", { ...whole, path_air: 260 }, "path_air 260: a number from -45 to 65"],
  [
    "words for the air",
    { ...whole, surrounding_air: "warm" },
    "surrounding_air warm: a number with a point, nothing else",
  ],
  ["words for a current", { ...whole, amps_left: "148 A" }, "amps_left 148 A: a number with a point, nothing else"],
  [
    "a surface that mirrors more than it emits",
    { ...whole, emissivity: 0.4, left: 20, middle: 20, right: 21, reflected: 60 },
    "no answer: a reading is colder than what it would reflect; emissivity 0.40: wide uncertainty",
  ],
  [
    "colder than what it reflects",
    { ...whole, left: 25, middle: 25, right: 25, surrounding_air: 22, reflected: 30 },
    "colder than what it reflects: check reflected and reading",
  ],
  ["strong wind", { ...whole, wind: 8 }, "wind 8.0 m/s: no grade"],
  ["a small target far away", { ...whole, distance: 8 }, "target smaller than 3 × 3 pixels at this distance"],
  [
    "sun on an indirect view",
    { ...whole, asset_id: "TX1-HV", amps_left: 31, amps_middle: 31, amps_right: 31, hours_since_sun: 1 },
    "sun within 2 h on an indirect view",
  ],
  [
    "grade 4 and nobody told",
    { ...whole, middle: 80 },
    "needs: told_to: a grade 4 is told to the person responsible at once",
  ],
  ["an exception marked as none", { ...whole, status: "no exception" }, "marked no exception"],
  [
    "heat without current",
    { ...whole, amps_left: 0, amps_middle: 0, amps_right: 0 },
    "no current on any phase; 0 % load: a small rise proves nothing",
  ],
  [
    "far above the expected load",
    { ...whole, amps_left: 300, amps_middle: 305, amps_right: 300 },
    "153 % of the expected load: check current and asset list",
  ],
];

let route: WorkedRoute;
beforeAll(async () => {
  [route] = (await worked(inTheDairy(ROWS.map(([, row]) => row)))) as [WorkedRoute];
});

test.each(ROWS.map(([what, , remarks], at) => [what, at, remarks] as const))("%s", (_, at, remarks) => {
  expect(route.remarks(at)).toBe(remarks);
});

test("an asset that is in no list is what the grade needs", () => {
  const at = ROWS.findIndex(([name]) => name === "an unknown asset");
  expect(route.cell(at, "grade_found")).toBe("no grade: needs its asset in Assets");
});

test("no error value anywhere", () => {
  expect(route.errors).toEqual([]);
});

test("a row with nothing in it shows nothing", () => {
  const shown = Object.entries(route.columns).filter(([, column]) => column[0] !== "" && column[0] !== null);
  expect(shown).toEqual([]);
});

test("what cannot be corrected has no number and no grade", () => {
  for (const what of ["emissivity in per cent", "a surface that mirrors more than it emits"]) {
    const at = ROWS.findIndex(([name]) => name === what);
    expect(route.cell(at, "corrected_left")).toBe("no answer");
    expect(route.cell(at, "rise_left")).toBe("");
    expect(route.cell(at, "grade_found")).toBe("no grade");
  }
});

test.each([
  "a decimal comma",
  "a reading with its unit",
  "more than the camera reaches",
  "less than the camera reaches",
  "a reading that cannot be",
])("%s: the other phases do not speak for the row", (what) => {
  const at = ROWS.findIndex(([name]) => name === what);
  for (const key of ["hottest", "pattern", "rise_similar", "rise_lowest", "limit_at_load", "share_of_limit", "finding"])
    expect([key, route.cell(at, key)]).toEqual([key, ""]);
  expect(route.cell(at, "grade_found")).toBe("no grade");
});

test("outside the camera's range, or at its end without a word: no grade", () => {
  for (const what of ["beyond the camera's range", "below the camera's range", "at the end of the camera's range"]) {
    const at = ROWS.findIndex(([name]) => name === what);
    expect(route.cell(at, "share_of_limit")).toBe("");
    expect(route.cell(at, "grade_found")).toBe("no grade");
  }
});
