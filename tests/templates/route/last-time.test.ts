/** Today's rise beside that of last time: only over the same, and at one load. */
import { inTheDairy, worked, type WorkedRoute } from "./fixture.js";
import { clock } from "../../../src/templates/route/demo/moments.js";
import type { Asset } from "../../../src/templates/route/lists.js";

const asset: Asset = { surface: "paint", expected_max_A: 300, last_rise: 6, last_over: "similar", last_amps: 240 };
const row = {
  time: clock("09:00"),
  status: "exception",
  thermal_image: "IR-1",
  left: 30,
  middle: 30,
  right: 40,
  surrounding_air: 29.5,
} as const;
const at = (amps: number) => ({ amps_left: amps, amps_middle: amps, amps_right: amps });

let route: WorkedRoute;
beforeAll(async () => {
  const assets: Asset[] = [
    { ...asset, asset_id: "SAME", last_grade: "2 of 4", last_survey: 45_719, repaired: "remade" },
    { ...asset, asset_id: "AIR", last_over: "air", last_grade: "0 of 4" },
    { ...asset, asset_id: "OLD", last_over: null },
    { ...asset, asset_id: "LOW" },
    { ...asset, asset_id: "NEW", last_rise: null, last_over: null, last_amps: null },
  ];
  const rows = [
    { ...row, ...at(200), asset_id: "SAME" },
    { ...row, ...at(200), asset_id: "AIR" },
    { ...row, ...at(200), asset_id: "OLD" },
    // From 240 A nothing is brought to 700 A: 34 % of it, below the least load of Job, 40 %.
    { ...row, ...at(700), asset_id: "LOW" },
    { ...row, ...at(200), asset_id: "NEW" },
  ];
  [route] = (await worked(inTheDairy(rows, { assets }))) as [WorkedRoute];
}, 60_000);

test("the last rise is brought to today's load by the central exponent before it is taken away", () => {
  expect(route.cell("SAME", "judged_over")).toBe("similar");
  expect(route.cell("SAME", "load_judged")).toBe(200);
  const was = 6 * (200 / 240) ** 1.8;
  expect(route.number("SAME", "rise_change")).toBeCloseTo(route.number("SAME", "rise_judged") - was, 9);
  expect(route.number("SAME", "rise_judged")).toBeGreaterThan(10);
});

test("what cannot be compared is said in words", () => {
  expect(["AIR", "OLD", "LOW", "NEW"].map((id) => route.cell(id, "rise_change"))).toEqual([
    "then over air",
    "reference of then not noted",
    "loads not comparable",
    "",
  ]);
});

test("a grade that comes again is called a repeat", () => {
  expect(["SAME", "AIR", "NEW"].map((id) => route.cell(id, "last_time"))).toEqual([
    "repeat: graded 2 of 4 on 2025-03-03, repaired: remade",
    "graded 0 of 4",
    "",
  ]);
  expect(route.errors).toEqual([]);
});
