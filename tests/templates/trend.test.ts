/**
 * The trend through the file writer. Visits of a black body at the common load, so that a rise is what is typed; least
 * squares and Student's factor of the test's own (t of 0.975 with 3 degrees of freedom: 3.18245, any table); check 1 of
 * section 6 of trade.md (12 K at 45 of 100 A); 5.2.8 there for what a change is.
 */
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import type { PointValues } from "../../src/templates/trend/form.js";
import { trendBook } from "../../src/templates/trend/book.js";
import { demoTrend } from "../../src/templates/trend/demo.js";
import type { Visit } from "../../src/templates/trend/typed.js";
import { day } from "../../src/templates/route/demo/moments.js";
import { templates } from "../../src/templates/registry.js";
import { brokenRules } from "../support/package-rules.js";
import { type Value, type Worked, workedOut } from "../support/worked.js";

const T_3 = 3.182446;

function trend(point: PointValues, visits: readonly Visit[]): Promise<Worked> {
  return workedOut(
    trendBook({ title: "Test", about: [], point: { over: "similar", reflected: 20, ...point }, visits, units: "C" }),
  );
}
const of = (done: Worked, key: string): Value[] => done.column("Visits", key);

/** At the common load of 100 A over a similar component of 30 °C. */
function visit(date: string, rise: number, rest: Visit = {}): Visit {
  return {
    date: day(date),
    hot: 30 + rise,
    reference: 30,
    current: 100,
    expected_max: 100,
    emissivity: 1,
    camera: "A",
    ...rest,
  };
}

/** Slope and its expanded uncertainty a year, and when the line has the limit. */
function line(points: readonly (readonly [date: string, value: number])[], limit: number) {
  const x = points.map(([date]) => day(date) / 365.25);
  const y = points.map(([, value]) => value);
  const n = x.length;
  const [mx, my] = [x, y].map((all) => all.reduce((sum, one) => sum + one, 0) / n) as [number, number];
  const sxx = x.reduce((sum, one) => sum + (one - mx) ** 2, 0);
  const slope = x.reduce((sum, one, i) => sum + (one - mx) * (y[i]! - my), 0) / sxx;
  const squares = x.reduce((sum, one, i) => sum + (y[i]! - my - slope * (one - mx)) ** 2, 0);
  return {
    slope,
    u: T_3 * Math.sqrt(squares / (n - 2) / sxx),
    crossing: (mx + (limit - my) / slope) * 365.25,
    start: my + slope * (x[0]! - mx),
  };
}

const RISING = [
  ["2020-05-04", 5],
  ["2021-05-10", 7.5],
  ["2022-04-25", 9],
  ["2023-05-15", 12],
  ["2024-05-06", 13.5],
] as const;

describe("five visits at the common load", () => {
  let done: Worked;
  const expected = line(RISING, 25);
  beforeAll(async () => {
    // In any order, as they may be typed.
    const visits = [3, 0, 4, 1, 2].map((i) => visit(...(RISING[i] as readonly [string, number])));
    done = await trend({ limit: 25 }, visits);
  }, 120_000);

  test("slope, its uncertainty, the line at the first visit", () => {
    expect(done.named("trend_slope_central")).toBeCloseTo(expected.slope, 6);
    expect(done.named("trend_slope_u_central")).toBeCloseTo(expected.u, 5);
    expect(done.named("trend_start_central")).toBeCloseTo(expected.start, 6);
    expect(done.named("trend_verdict_central")).toBe("rising");
  });

  test("the limit is reached where the line has it, between an earlier and a later date", () => {
    const [low, at, high] = ["crossing_low", "crossing", "crossing_high"].map((name) =>
      done.named(`trend_${name}_central`),
    ) as number[];
    expect(at).toBeCloseTo(expected.crossing, 4);
    expect(low).toBeLessThan(at!);
    expect(high).toBeGreaterThan(at!);
  });

  test("at the common load the exponent does not matter", () => {
    for (const which of ["low", "high"]) expect(done.named(`trend_slope_${which}`)).toBeCloseTo(expected.slope, 6);
  });

  test("changes are since the visit before by date, not by row", () => {
    // 2023, 2020, 2024, 2021, 2022 as typed.
    const changes = of(done, "change").map((value) => (typeof value === "number" ? Number(value.toFixed(6)) : value));
    expect(changes).toEqual([3, "", 1.5, 2.5, 1.5]);
    const since = of(done, "since_first").map((value) =>
      typeof value === "number" ? Number(value.toFixed(6)) : value,
    );
    expect(since).toEqual([7, "", 8.5, 2.5, 4]);
  });

  test("the sentence on top says it, and nothing is an error", () => {
    expect(done.named("trend_sentence")).toMatch(
      /^At 100 A: rising, 2\.1 ± 0\.\d K a year; limit of 25 K: reached on 20\d\d/,
    );
    expect(done.errors()).toEqual([]);
  });
});

test("a change counts beyond the root of both squares, and only such a change has a grade", async () => {
  // Two images, ±2 K each, nothing else uncertain: U of a rise is 1.96·√2·2/√3 = 3.2006 K, of a change √2 times that, 4.526 K.
  const point = { relation: "in two images", emissivity_half: 0, reflected_half: 0, accuracy: 2, accuracy_percent: 0 };
  const done = await trend(point, [
    visit("2022-05-02", 5),
    visit("2023-05-02", 9.4),
    visit("2024-05-02", 14),
    visit("2025-05-02", 9.4),
  ]);
  for (const u of of(done, "u")) expect(u).toBeCloseTo(1.959964 * Math.SQRT2 * (2 / Math.sqrt(3)), 2);
  expect(of(done, "change_u")[1]).toBeCloseTo(4.526, 2);
  expect(of(done, "step")).toEqual([
    "",
    "no change beyond its uncertainty",
    "more, beyond its uncertainty",
    "less, beyond its uncertainty",
  ]);
  // Since the first: 4.4 (within), 9 (house: from 5, below 10), 4.4.
  const grades = of(done, "baseline_grade");
  expect(grades[1]).toBe("no grade: no change beyond its uncertainty");
  expect(grades[2]).toMatch(/^1 of 4: /);
  expect(done.named("trend_verdict_central")).toBe("no change beyond its uncertainty");
}, 120_000);

describe("what a trend may not use, and why", () => {
  let done: Worked;
  beforeAll(async () => {
    done = await trend({ common_load: 100, limit: 40 }, [
      visit("2019-05-06", 12, { current: 45 }),
      visit("2020-05-04", 12, { current: 39 }),
      visit("2021-05-10", 120, { reading_is: "at least" }),
      visit("2022-04-25", 9, { over: "ambient", surrounding_air: 20 }),
      visit("2023-05-15", 50, { camera: "B" }),
      visit("2024-05-06", 50, { camera: "B", emissivity: 0.9 }),
      { date: day("2025-05-05"), hot: 50 },
      {},
      visit("2026-05-04", 50, { camera: null, hot: null }),
    ]);
  }, 120_000);

  test("used or not, in words", () => {
    expect(of(done, "used")).toEqual(["yes", "no", "no", "no", "yes", "yes", "no", "", "no"]);
    expect(of(done, "why")).toEqual([
      "",
      "not projected: load 39 % of 100",
      "a limit reading: at least",
      "over ambient: the trend is over similar",
      "",
      "",
      "needs reference, current, emissivity",
      "",
      "needs hot",
    ]);
  });

  test("another camera and another emissivity are remarks, not reasons", () => {
    const remarks = of(done, "remarks");
    expect(remarks[4]).toBe("another camera than before (A)");
    expect(remarks[5]).toBe("emissivity was 1 before");
    expect(remarks.filter((remark) => remark === "")).toHaveLength(7);
  });

  test("a rise is brought to the common load, a limit reading is shown as one", () => {
    const [first, second] = of(done, "at_load");
    expect(first).toBeCloseTo(50.51, 2);
    expect(second).toBe("not projected");
    expect(of(done, "at_load_low")[0]).toBeCloseTo(43.06, 2);
    expect(of(done, "at_load_high")[0]).toBeCloseTo(59.26, 2);
    expect(of(done, "rise")[2]).toBe("≥ 120.0");
    expect(done.errors()).toEqual([]);
  });
});

test("readings that are corrected already are not corrected again", async () => {
  const [typed, corrected] = await Promise.all(
    (["apparent", "corrected already"] as const).map((readings_are) =>
      trend({ readings_are }, [visit("2024-05-06", 10, { emissivity: 0.8 })]),
    ),
  );
  expect(of(corrected!, "rise")[0]).toBe(10);
  expect(of(typed!, "rise")[0]).toBeGreaterThan(11);
  // What the camera would have read is what the uncertainty is worked out from: nearer to the 20 °C that are mirrored.
  expect(of(corrected!, "apparent_hot")[0]).toBeLessThan(40);
  expect(of(corrected!, "u")[0]).toEqual(expect.any(Number));
}, 120_000);

test("two visits are no trend; falling ones reach no limit", async () => {
  const [two, falling] = await Promise.all([
    trend({ limit: 25 }, [visit("2023-05-15", 5), visit("2024-05-06", 9)]),
    trend(
      { limit: 25 },
      RISING.map(([date], i) => visit(date, RISING[4 - i]![1])),
    ),
  ]);
  expect(two.named("trend_sentence")).toBe("A trend needs three visits that can be compared: 2 so far.");
  expect(two.named("trend_verdict_central")).toBe("needs three visits");
  expect(falling.named("trend_verdict_central")).toBe("falling");
  expect(falling.named("trend_crossing_central")).toBe("no date: falling");
  expect([...two.errors(), ...falling.errors()]).toEqual([]);
}, 120_000);

test("in °F the same verdicts and dates, slopes 1.8 times as large", async () => {
  const [celsius, fahrenheit] = await Promise.all([workedOut(demoTrend("C")), workedOut(demoTrend("F"))]);
  for (const key of ["used", "step"]) expect(of(fahrenheit, key)).toEqual(of(celsius, key));
  expect(fahrenheit.named("trend_slope_central")).toBeCloseTo(
    1.8 * (celsius.named("trend_slope_central") as number),
    3,
  );
  expect(fahrenheit.named("trend_crossing_central")).toBeCloseTo(celsius.named("trend_crossing_central") as number, 0);
  expect([...celsius.errors(), ...fahrenheit.errors()]).toEqual([]);
}, 120_000);

test("empty it is calm", async () => {
  const done = await workedOut(templates.find(({ name }) => name === "trend")!.empty({ units: "C", rows: 3 }));
  for (const key of ["used", "why", "remarks", "rise", "at_load", "u", "change", "step", "baseline_grade"])
    expect([key, ...of(done, key)]).toEqual([key, "", "", ""]);
  expect(done.named("trend_sentence")).toBe("No visits yet.");
  expect(done.named("trend_verdict_low")).toBe("");
  expect(done.errors()).toEqual([]);
}, 120_000);

test("as a file it keeps the rules that Excel holds one to", () => {
  for (const one of [demoTrend("F"), templates.find(({ name }) => name === "trend")!.empty({ units: "C", rows: 40 })])
    expect(brokenRules(packBook(describedBook(one)))).toEqual([]);
});
