/**
 * The plan sheet through the file writer. Outside: trade.md 5.6 (uncertainty of a rise, k = 2: "computed there"), trade.md
 * 6, rows 6 and 7 (spot; window), the edges of NETA Table 100.18 as trade.md 2.1 cites them; the rest is reckoned beside it.
 */
import { mechanicalBook } from "../../src/templates/mechanical/book.js";
import { routeBook } from "../../src/templates/route/book.js";
import type { JobValues } from "../../src/templates/route/job.js";
import type { PlannedView } from "../../src/templates/route/plan-typed.js";
import { type Value, type Worked, workedOut } from "../support/worked.js";

/** Everything at 25 °C, 5 cm from the target: the air's own part is below 0.1 %. */
const JOB: JobValues = {
  ifov: 1.36,
  band: "8-14",
  reflected: 25,
  path_air: 25,
  distance: 0.05,
  range_from: -20,
  range_to: 150,
};
const LISTS = { title: "Test", about: [], assets: [], windows: [], surfaces: [], rows: [] } as const;
const route = (plan: readonly PlannedView[], units: "C" | "F" = "C", job: JobValues = {}): Promise<Worked> =>
  workedOut(routeBook({ ...LISTS, job: { ...JOB, ...job }, plan, units }));

const hot: PlannedView = { over: "similar", target_size: 20, emissivity: 0.95, expected_temp: 70, expected_rise: 20 };
const shown = (done: Worked, key: string): Value[] => done.column("PlanList", key);
const numbers = (done: Worked, key: string): number[] => shown(done, key).map(Number);

/** By relation: same surface, other surface, two images, air by thermometer. */
const RELATIONS: readonly PlannedView[] = [
  { similar_is: "on the same surface" },
  {},
  { similar_is: "in another image" },
  { over: "ambient" },
];
const OF_THE_HOUSE: Readonly<Record<number, readonly number[]>> = {
  0.95: [0.96, 1.4, 3.6, 2.8],
  0.85: [1.4, 3.2, 4.8, 3.9],
};

describe("uncertainty of a rise of 20 K", () => {
  const cases = [0.95, 0.85].flatMap((emissivity) =>
    RELATIONS.map((relation, i) => ({
      view: { ...hot, emissivity, ...relation },
      figure: OF_THE_HOUSE[emissivity]![i]!,
    })),
  );
  let done: Worked;
  beforeAll(async () => {
    done = await route(cases.map(({ view }) => view));
  }, 90_000);

  test("is the house's figure by the usual half-widths, with the 1.96 of 95 % for its 2, its digits rounded", () => {
    // 1.4 stands for 1.35 to 1.45: 3.6 % more; 1.96/2 is 2 % less.
    numbers(done, "u").forEach((u, i) => expect(Math.abs(u / (cases[i]!.figure * 0.98) - 1)).toBeLessThan(0.04));
  });

  test("on top of the first edge, 1 K over either, is where a grade is sure", () => {
    const [u, from] = [numbers(done, "u"), numbers(done, "graded_from")];
    from.forEach((rise, i) => expect(rise).toBeCloseTo(u[i]! + 1, 9));
    // 16 K and more over similar, 11 to 20 K over air: table 100.18.
    expect(shown(done, "grade_expected").map((words) => String(words).slice(0, 6))).toEqual(
      cases.map(({ view }) => (view.over === "ambient" ? "2 of 4" : "4 of 4")),
    );
    expect(shown(done, "verdict")).toEqual(cases.map(() => "go"));
  });

  test("what is typed of the half-widths counts: with none, camera and thermometer are left", async () => {
    // Emissivity 1, nothing mirrored: what is left are the camera and the thermometer in the air.
    const only = await route([{ ...hot, emissivity: 1, emissivity_half: 0, reflected_half: 0, over: "ambient" }]);
    // √((2/√3)² + (1/√3)²) K, ±1 K of the air being a rectangle too, and 5 cm of air.
    expect(numbers(only, "u")[0]).toBeCloseTo(1.96 * Math.sqrt((4 + 1) / 3), 1);
  }, 60_000);
});

describe("in words", () => {
  const views: readonly (readonly [string, PlannedView, string | RegExp])[] = [
    ["nothing typed", {}, ""],
    ["all is missing", { what: "Board" }, "needs over what, target_size, emissivity, expected_temp, expected_rise"],
    ["a window without its temperature", { ...hot, window_transmission: 0.55 }, "needs window_temp"],
    // 3 · 1.36 mrad · 3 m = 12.24 mm; 10 mm fill three pixels from 10/4.08 = 2.45 m.
    ["too far", { ...hot, distance: 3, target_size: 10 }, "come closer: from at most 2.5 m, or with a longer lens"],
    ["just close enough", { ...hot, distance: 3, target_size: 12.24 }, /^go, with care: closer is better/],
    ["bare metal", { ...hot, emissivity: 0.2 }, "not quantitative: emissivity below 0.3"],
    ["dull", { ...hot, emissivity: 0.5, expected_rise: 30 }, "go, with care: emissivity below 0.6"],
    [
      "beyond the range",
      { ...hot, emissivity: 1, expected_temp: 300 },
      /^not in this range: the reading would be (299\.\d|300\.0) °C$/,
    ],
    [
      "2 K over air",
      { ...hot, over: "ambient", expected_rise: 2 },
      /^not quantitative: the rise lies within its uncertainty, ± 2\.[678] K$/,
    ],
    [
      "3 K over air",
      { ...hot, over: "ambient", expected_rise: 3 },
      /^not quantitative: it can be read, but a grade is sure only from 3\.[678] K on$/,
    ],
    [
      "a window, exact",
      { ...hot, window_transmission: 0.55, window_temp: 25 },
      "go, with care: ± U is more: the window counts as exact",
    ],
    ["a window, to 0.03", { ...hot, window_transmission: 0.55, window_temp: 25, window_half: 0.03 }, "go"],
    ["no number", { ...hot, emissivity: "shiny" }, "no answer: a number of this view, or of Job, cannot be"],
  ];
  let done: Worked;
  beforeAll(async () => {
    done = await route(views.map(([, view]) => view));
  }, 90_000);

  test.each(views.map(([name, , words], row) => [name, row, words] as const))("%s", (_, row, words) => {
    if (typeof words === "string") expect(shown(done, "verdict")[row]).toBe(words);
    else expect(shown(done, "verdict")[row]).toMatch(words);
  });

  test("an empty row says nothing, and no cell holds an error", () => {
    for (const key of [
      "verdict",
      "smallest_target",
      "spot_margin",
      "farthest",
      "air_transmission",
      "u",
      "graded_from",
      "grade_expected",
    ])
      expect([key, shown(done, key)[0]]).toEqual([key, ""]);
    expect(done.errors()).toEqual([]);
  });

  test("the spot of row 6, the window's uncertainty above none", () => {
    expect(numbers(done, "smallest_target")[3]).toBeCloseTo(12.24, 9);
    expect(numbers(done, "farthest")[3]).toBeCloseTo(10 / 4.08, 9);
    const u = numbers(done, "u");
    expect(u[11]!).toBeGreaterThan(u[10]!);
    // Without a window 1.4 K, at most 1.45: what is not shared of reading and emissivity counts for more through one.
    expect(u[10]!).toBeGreaterThan(1.45);
  });
});

test("80 °C behind a window of 0.55, all else at 25 °C, would read 56.49 °C (trade.md 6, row 7)", async () => {
  const done = await route([{ ...hot, expected_temp: 80, window_transmission: 0.55, window_temp: 25 }]);
  // 5 cm of air take 0.05 K of it.
  expect(Math.abs(numbers(done, "apparent")[0]! - 56.49)).toBeLessThan(0.06);
}, 60_000);

test("without an IFOV, or without the day's reflected and air, Job is asked for it", async () => {
  const done = await route([hot], "C", { ifov: null, reflected: null, path_air: null });
  expect(shown(done, "verdict")).toEqual(["needs IFOV in Job, reflected in Job, air between camera and target in Job"]);
}, 60_000);

test("in °F the same view says the same, in K times 1.8, inches and feet", async () => {
  const views = [hot, { ...hot, distance: 3, target_size: 10 }];
  const [metric, fahrenheit] = [await route(views), await route(views, "F")];
  const [u, uF] = [numbers(metric, "u"), numbers(fahrenheit, "u")];
  expect(uF[0]! / u[0]!).toBeCloseTo(1.8, 2);
  // 3 m are 9.84 ft on the sheet.
  expect(numbers(fahrenheit, "smallest_target")[1]).toBeCloseTo(12.24 / 25.4, 3);
  // 10 mm are 0.39 in there: 0.39 · 25.4 / 4.08 / 0.3048 = 7.97 ft.
  expect(shown(fahrenheit, "verdict")).toEqual(["go", "come closer: from at most 8.0 ft, or with a longer lens"]);
}, 60_000);

test("a machine: over its like, or over a baseline by two rises over air, from 5 K on", async () => {
  const view = { ...hot, emissivity: 0.95 };
  const plan = [view, { ...view, over: "baseline" }, { ...view, over: "ambient" }];
  const done = await workedOut(mechanicalBook({ ...LISTS, job: JOB, plan, units: "C" }));
  const [u, from] = [numbers(done, "u"), numbers(done, "graded_from")];
  // 2.8 K and another 2.8 K; the criteria for machines begin at 5 K (ours: docs of CRITERIA).
  expect(Math.abs(u[1]! / (2.8 * 0.98 * Math.SQRT2) - 1)).toBeLessThan(0.04);
  expect([from[0]! - u[0]!, from[1]! - u[1]!]).toEqual([expect.closeTo(5, 9), expect.closeTo(5, 9)]);
  expect(shown(done, "verdict")).toEqual(["go", "go", "no grade: the criteria of Job have none over ambient"]);
}, 60_000);
