/**
 * greybody new route --from: orders, dates and rises traced by hand. The last route is written without saved values, as
 * a file is whose caches are older than what was typed.
 *
 * The surfaces are black and 5 cm away in dry air, so a temperature is its reading to a hundredth; days: 45658 is
 * 2025-01-01 (44927 is 2023-01-01, 2024 has 366 days).
 */
import { describedBook } from "../../src/host/file/write/described.js";
import { readContents } from "../../src/host/file/read/contents.js";
import { packBook } from "../../src/host/file/write/package.js";
import type { Cell } from "../../src/functions/contract.js";
import { recordsIn, type RowRecord } from "../../src/templates/refill/records.js";
import { refill } from "../../src/templates/refill/refill.js";
import { routeBook } from "../../src/templates/route/book.js";
import { CLI } from "../support/calc.js";
import { Folder } from "../support/recalc.js";
import { runNode } from "../support/run.js";

const folder = new Folder();
afterAll(() => folder.remove());
const make = (...args: string[]) => runNode([CLI, "new", ...args], { cwd: folder.path });

const JANUARY_2025 = 45_658;
/** 2025-03-03: 31 + 28 + 2 days on. */
const MARCH_2025 = JANUARY_2025 + 61;
const good = { surface: "black", physical_condition: "1", criticality: "1", environment: "1" } as const;
const seen = { time: 0.5, surrounding_air: 20, amps_left: 100, amps_middle: 100, amps_right: 100 } as const;

const last = routeBook({
  title: "Yard (invented)",
  about: ["Demonstration: everything is invented."],
  job: {
    id: "J-1",
    date: MARCH_2025,
    thermographer: "N. N. (invented)",
    permit: "P-9",
    reflected: 20,
    distance: 0.05,
    humidity: 1,
    criteria: "NETA-100.18",
  },
  assets: [
    // D was surveyed a year before the first day of 2025, a leap year, so it is due on 2025-01-01 (12 months).
    { ...good, asset_id: "D", order: 4, last_survey: JANUARY_2025 - 366, last_grade: "0 of 4", last_rise: 0.5 },
    { ...good, asset_id: "A", order: 1, expected_max_A: 125 },
    { ...good, asset_id: "B", order: 2, expected_max_A: 125, next_due: MARCH_2025 },
    { ...good, asset_id: "C", order: 3, expected_max_A: 125 },
    { ...good, asset_id: "E", order: 5 },
  ],
  windows: [{ window_id: "W1", transmission: 0.7 }],
  surfaces: [{ surface: "black", emissivity: 1, known_from: "assumed" }],
  rows: [
    // Half a kelvin over the air, alike: below the first band.
    { ...seen, asset_id: "A", status: "no exception", left: 20.5, middle: 20.5, right: 20.5 },
    // 60 − (40 + 40)/2 = 20 K over similar: above 15 K, so grade 4; 40 K over air are grade 3 (ANSI/NETA ATS-2003, table 100.18).
    { ...seen, asset_id: "B", status: "exception", thermal_image: "IR-1", left: 60, middle: 40, right: 40 },
    // 28 − 22 = 6 K over similar: grade 2; 8 K over air: grade 1.
    { ...seen, asset_id: "C", status: "exception", thermal_image: "IR-2", left: 22, middle: 28, right: 22 },
    { asset_id: "D", status: "not inspected", reason: "locked" },
  ],
  followUp: [
    {
      asset_id: "C",
      found_on: MARCH_2025,
      grade_found: "2 of 4: probable fault",
      repair_date: MARCH_2025 + 7,
      repair_found: "screw loose",
      closed_on: MARCH_2025 + 8,
    },
  ],
  units: "C",
});

const bytes = packBook(describedBook(last, { marks: { GREYBODY_TEMPLATE: "route", GREYBODY_UNITS: "C" } }));
folder.put("last.xlsx", bytes);

interface Made {
  readonly stdout: string;
  readonly rows: (table: string) => RowRecord[];
  readonly job: (name: string) => Cell | undefined;
  readonly told: readonly string[];
  readonly about: readonly string[];
}

async function next(from: string, file: string, ...args: string[]): Promise<Made> {
  const { status, stdout, stderr } = await make("route", "--from", from, "-o", file, ...args);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  const contents = readContents(folder.read(file));
  const { book } = refill(contents);
  const notes = book.sheets.at(-1)!;
  return {
    stdout,
    rows: (table) => recordsIn(contents, book, table),
    job: (name) =>
      book.sheets
        .flatMap((sheet) => (sheet.kind === "form" ? sheet.fields : []))
        .find(({ definedName }) => definedName === `job_${name}`)?.value,
    told: notes.kind === "notes" ? notes.lines : [],
    about: book.sheets[0]!.heading,
  };
}

let made: Made;
beforeAll(async () => {
  made = await next("last.xlsx", "next.xlsx", "--date", "2025-12-01");
}, 60_000);

const byAsset = (rows: readonly RowRecord[], id: string): RowRecord => rows.find(({ asset_id }) => asset_id === id)!;

test("repeats stand on top, then what is overdue by the new date, then the rest in the order of Assets", () => {
  const rows = made.rows("Readings");
  // E has no survey at all; A and C are due a year after 2025-03-03.
  expect(rows.map(({ asset_id }) => asset_id)).toEqual(["B", "E", "D", "A", "C"]);
  for (const row of rows)
    expect([row.left, row.amps_left, row.thermal_image, row.status, row.time]).toEqual([null, null, null, null, null]);
});

test("grade, rise, load, repair and date of last time stand in Assets and on the route", () => {
  const b = byAsset(made.rows("AssetList"), "B");
  expect([b.last_survey, b.last_grade, b.last_over, b.last_amps, b.repaired]).toEqual([
    MARCH_2025,
    "4 of 4",
    "similar",
    100,
    "none noted",
  ]);
  expect(b.last_rise).toBeCloseTo(20, 1);
  // The date that was planned is used up: 12 months from the survey.
  expect([b.next_due, b.due]).toEqual([null, MARCH_2025 + 365]);
  const c = byAsset(made.rows("AssetList"), "C");
  expect([c.last_grade, c.repaired]).toEqual(["2 of 4", "screw loose, 2025-03-10"]);
  expect(c.last_rise).toBeCloseTo(6, 1);
  // Nobody was there: what was known before stays.
  const d = byAsset(made.rows("AssetList"), "D");
  expect([d.last_survey, d.last_grade, d.last_rise]).toEqual([JANUARY_2025 - 366, "0 of 4", 0.5]);
  const row = byAsset(made.rows("Readings"), "B");
  expect(row.last_rise).toBeCloseTo(20, 1);
  expect([row.last_grade, row.last_load, row.last_time]).toEqual([
    "4 of 4",
    100,
    "look again: graded 4 of 4 on 2025-03-03, no repair noted",
  ]);
  expect(byAsset(made.rows("Readings"), "C").last_time).toBe(
    "look again: graded 2 of 4 on 2025-03-03, repaired: screw loose, 2025-03-10",
  );
});

test("what is open goes on in the follow-up, what is closed does not", () => {
  const rows = made.rows("FollowUp");
  expect(rows.map(({ asset_id, found_on, over, load_found }) => [asset_id, found_on, over, load_found])).toEqual([
    ["B", MARCH_2025, "similar", 100],
  ]);
  expect(rows[0]!.grade_found).toEqual(expect.stringMatching(/^4 of 4: /));
  expect(rows[0]!.rise_found).toBeCloseTo(20, 1);
});

test("the job's defaults are carried, the day's are not; all is told, also in the file", () => {
  expect(["thermographer", "criteria", "distance", "date", "permit", "reflected", "id"].map(made.job)).toEqual([
    "N. N. (invented)",
    "NETA-100.18",
    0.05,
    // 2025-12-01: the first of March is 45717, and 275 days on.
    45_717 + 275,
    null,
    null,
    null,
  ]);
  expect(made.rows("WindowList").map(({ window_id, transmission }) => [window_id, transmission])).toEqual([
    ["W1", 0.7],
  ]);
  expect(made.rows("SurfaceList").map(({ surface }) => surface)).toEqual(["black"]);
  expect(made.about).toContain("Demonstration: everything is invented.");
  expect(made.stdout.split("\n")[0]).toBe("next.xlsx written");
  for (const line of made.told) expect(made.stdout).toContain(line);
  const told = made.told.join("\n");
  expect(told).toContain('"Yard (invented)", job J-1, surveyed on 2025-03-03');
  expect(told).toContain("1 repeat, graded 1 of 4 or more last time or open from before, and not closed: B (4 of 4).");
  expect(told).toContain("2 overdue on 2025-12-01: E (no survey known), D (due 2025-01-01).");
  expect(told).toMatch(
    /belong to the day and were not carried over: Job id, Survey date, Reflected, indoors, Humidity, Permit number/,
  );
});

test("the last route is not touched, and is not written over", async () => {
  expect(folder.read("last.xlsx")).toEqual(bytes);
  const { status, stderr } = await make("route", "--from", "last.xlsx", "-o", "last.xlsx");
  expect([status, stderr]).toEqual([
    2,
    "greybody: -o last.xlsx is the last route itself, which stays as it is: choose another name.\n",
  ]);
}, 60_000);

test("a second time, and in °F: what is open stays on top, differences become °F", async () => {
  const again = await next("next.xlsx", "again.xlsx", "--units", "f");
  expect(again.rows("Readings").map(({ asset_id }) => asset_id)).toEqual(["B", "E", "D", "A", "C"]);
  const b = byAsset(again.rows("AssetList"), "B");
  // 20 K are 36 °F; nobody has been there since, so all of it stays.
  expect(b.last_rise).toBeCloseTo(36, 1);
  expect([b.last_survey, b.last_grade]).toEqual([MARCH_2025, "4 of 4"]);
  expect(again.rows("FollowUp")[0]!.rise_found).toBeCloseTo(36, 1);
  // 0.05 m are 0.164 ft.
  expect(again.job("distance")).toBe(0.16);
  expect(again.told.join("\n")).toContain("B (4 of 4, open since 2025-03-03)");
}, 60_000);

test.each([
  [["audit", "--from", "last.xlsx"], /--from makes the next route or mechanical-route, not audit/],
  [["mechanical-route", "--from", "last.xlsx"], /of the template route: use greybody new route --from/],
  [["route", "--from", "absent.xlsx"], /absent\.xlsx: There is no such file/],
  [["route", "--from", "last.xlsx", "--date", "2025-02-30"], /--date 2025-02-30: a day such as/],
  [["route", "--from", "last.xlsx", "--rows", "9"], /no --rows/],
  [["route", "--date", "2025-02-03"], /--date goes with --from/],
])(
  "%j is refused in one line",
  async (args, words) => {
    const { status, stdout, stderr } = await make(...args);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toMatch(words);
    expect(stderr).toMatch(/^greybody: .+\n$/);
  },
  60_000,
);
