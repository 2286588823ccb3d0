/** As found and as left: rises brought to one load, and whether they differ beyond their uncertainties, by hand. */
import { mechanicalBook } from "../../src/templates/mechanical/book.js";
import { day } from "../../src/templates/route/demo/moments.js";
import type { FollowUp } from "../../src/templates/report/follow-up-typed.js";
import { workedOut, type Worked } from "../support/worked.js";
import { asset, below, book, freeSheet, job, surfaces, SURVEY } from "./report-fixture.js";

const found = { asset_id: "F", found_on: day("2026-01-10"), over: "similar", load_found: 200 } as const;
const repaired = { repair_date: day("2026-01-20"), left_date: day("2026-01-22") };
const left = (hot: number, reference: number, load: number): FollowUp => ({
  ...repaired,
  left_hot: hot,
  left_reference: reference,
  left_load: load,
});

const rows: readonly FollowUp[] = [
  // 0.5 K at 232 A is 0.5·(240/232)² = 0.5351 K at 240 A; U = 1.4·√(1 + (240/232)⁴) = 2.0505 K.
  { ...found, rise_found: 6.2, load_found: 240, ...left(37.4, 36.9, 232), closed_on: day("2026-01-22") },
  // Downwards the low exponent leaves more: 3·(200/300)^1.6 = 1.5681 K.
  { ...found, rise_found: 2, ...left(43, 40, 300), closed_on: day("2026-01-30") },
  // 60 of 200 A, below 40 %.
  { ...found, rise_found: 6, ...left(35, 34, 60) },
  // 9 K against 3 K at the same load; U = 1.4·√2.
  { ...found, rise_found: 3, ...left(39, 30, 200) },
  { ...found, rise_found: 6, ...left(35, 34, 200), left_reference_load: 160 },
  // 0.6 K less, U = √(0.3² + 0.4²) = 0.5 K.
  { ...found, rise_found: 3, ...left(32.4, 30, 200), u_found: 0.3, u_left: 0.4 },
  // Over air: 50 − 30 = 20 K against 40 K; U = 3.9·√2 = 5.515 K.
  { ...found, rise_found: 40, over: "air", ...repaired, left_hot: 50, left_load: 200, left_air: 30 },
  { ...found, rise_found: 6 },
  { ...found, rise_found: 6, repair_date: day("2026-01-20") },
  { ...found, rise_found: 6, ...repaired, left_hot: 35, left_reference: 34 },
];

let done: Worked;

beforeAll(async () => {
  done = await workedOut(book([{}], [asset("F")], rows));
}, 120_000);

const column = (key: string) => done.column("FollowUp", key);

test("rises as left at the load found", () => {
  const at = column("left_at_load");
  expect(at[0]).toBeCloseTo(0.5351, 4);
  expect(at[1]).toBeCloseTo(1.5681, 4);
  expect(at[2]).toBe("");
  expect(at[6]).toBeCloseTo(20, 9);
  expect(column("change_u").slice(0, 2)).toEqual([expect.closeTo(2.0505, 4), expect.any(Number)]);
  expect(column("change_u")[5]).toBeCloseTo(0.5, 9);
  expect(column("change_u")[6]).toBeCloseTo(5.515, 3);
});

test("what it shows, in words", () => {
  expect(column("verdict")).toEqual([
    "cooler than found beyond the uncertainty",
    "not shown: the change lies within the uncertainty",
    "not comparable: load 30 % of 200 A",
    "hotter than found beyond the uncertainty",
    "not comparable: 200 A against 160 A of its reference",
    "cooler than found beyond the uncertainty",
    "cooler than found beyond the uncertainty",
    "no repair noted yet",
    "as left not measured",
    "needs: load as left",
  ]);
});

test("closed by a person only, and the days until then or until the survey", () => {
  expect(column("closed").slice(0, 3)).toEqual(["yes", "yes: a smaller rise is not shown", "no"]);
  expect(column("days_open").slice(0, 3)).toEqual([12, 20, SURVEY - day("2026-01-10")]);
});

test("a mechanical route: nothing is projected, grease keeps a rise from a grade, the worst stands first", async () => {
  const point = (asset_id: string, like: string | null = null) => ({ asset_id, like, surface: "black", machine: "M" });
  const reading = (asset_id: string, value: number) => ({
    asset_id,
    status: "exception",
    reading: value,
    surrounding_air: 20,
    process_load: 80,
    thermal_image: "IR-1",
  });
  const described = mechanicalBook({
    title: "Test",
    about: [],
    job,
    windows: [],
    surfaces,
    units: "C",
    assets: [point("M1", "M0"), point("M2", "M0"), point("M3", "M0"), point("M0")],
    // The house's criteria for machines: from 5 K watch, 10 plan, 20 act. Over 30 °C: 12, 12 and 22 K.
    rows: [
      { ...reading("M1", 42), last_greased: SURVEY - 1 },
      reading("M2", 42),
      reading("M3", 52),
      { ...reading("M0", 30), status: "no exception" },
    ],
    followUp: [
      { ...found, over: "like", load_found: 80, rise_found: 12, ...left(35, 34, 50) },
      { ...found, over: "like", load_found: 80, rise_found: 12, ...left(35, 34, 75) },
    ],
  });
  const worked = await workedOut(described);
  expect(worked.errors()).toEqual([]);
  expect(below(worked, freeSheet(described, "Exceptions"), "asset_id", 4)).toEqual(["M3", "M2", "M1", null]);
  expect(below(worked, freeSheet(described, "Exceptions"), "judged by", 2)).toEqual([
    "22.0 K over like",
    "12.0 K over like",
  ]);
  expect(worked.column("FollowUp", "verdict")).toEqual([
    "not comparable: load 50 % against 80 %",
    "cooler than found beyond the uncertainty",
  ]);
}, 120_000);
