/** When an asset is due: NFPA 70B-2023, 12, 12 or 6 months for condition 1, 2 and 3, the worst of three; dates by calendar. */
import { day } from "../../src/templates/route/demo/moments.js";
import { workedOut, type Worked } from "../support/worked.js";
import { asset, below, book, freeSheet, row } from "./report-fixture.js";

const seen = { status: "no exception", surrounding_air: 29.8 };
const assets = [
  // Inspected on 2026-03-11: criticality 3 is 6 months, all 1 is 12.
  asset("D1", { criticality: "3" }),
  asset("D2"),
  // Not inspected: 12 months after 2025-03-01, ten days before the survey.
  asset("D3", { criticality: "2", last_survey: day("2025-03-01") }),
  // In part only: 6 months after 2024-12-15.
  asset("D4", { environment: "3", last_survey: day("2024-12-15") }),
  // Planned earlier than 12 months after 2025-09-11.
  asset("D5", { last_survey: day("2025-09-11"), next_due: day("2026-02-11") }),
  asset("D6", { last_survey: null }),
  asset("D7", { environment: null }),
  // Inspected: what was planned before is done with.
  asset("D8", { environment: "2", next_due: day("2026-02-11") }),
];
const described = book(
  [
    row("D1", 30.1, seen),
    row("D2", 30.1, seen),
    row("D3", null, { status: "not inspected", reason: "no key" }),
    row("D4", null, { status: "partly seen", reason: "half" }),
    row("D7", 30.1, seen),
    row("D8", 30.1, seen),
  ],
  assets,
);
const due = freeSheet(described, "Due");
let done: Worked;

beforeAll(async () => {
  done = await workedOut(described);
}, 120_000);

test("what has no known survey first, then the longest overdue, what lacks a condition last", () => {
  expect(below(done, due, "asset_id", 9)).toEqual(["D6", "D4", "D5", "D3", "D1", "D2", "D8", "D7", null]);
  expect(below(done, due, "next due", 8)).toEqual([
    "no survey known",
    day("2025-06-15"),
    day("2026-02-11"),
    day("2026-03-01"),
    day("2026-09-11"),
    day("2027-03-11"),
    day("2027-03-11"),
    "needs: environment",
  ]);
  // 15 June to 11 March, 11 February to 11 March, 1 to 11 March.
  expect(below(done, due, "overdue, d", 5)).toEqual(["", 269, 28, 10, ""]);
});

test("what governs is told, and what this route saw", () => {
  expect(below(done, due, "by", 8)).toEqual([
    "",
    "environment 3: 6 months",
    "next_due, as planned",
    "criticality 2: 12 months",
    "criticality 3: 6 months",
    "physical condition, criticality, environment 1: 12 months",
    "environment 2: 12 months",
    "",
  ]);
  expect(below(done, due, "on this route", 4)).toEqual(["no row", "partly seen", "no row", "not inspected"]);
  expect(below(done, due, "surveyed last", 5)).toEqual([
    "",
    day("2024-12-15"),
    day("2025-09-11"),
    day("2025-03-01"),
    day("2026-03-11"),
  ]);
});
