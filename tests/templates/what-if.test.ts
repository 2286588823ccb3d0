/**
 * The what-if through the file writer. Numbers from outside: reference rows of shared/data/radiometry (34-digit
 * implementation, README there), trade.md (58 and 45 °C at 0.95 and 22 °C: 15 K at emissivity 0.833; check 1 of
 * section 6), and black bodies at no distance, of which anybody can reckon the rise.
 */
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import { templates } from "../../src/templates/registry.js";
import { whatIfBook } from "../../src/templates/what-if/book.js";
import { demoWhatIf } from "../../src/templates/what-if/demo.js";
import type { WhatIfValues } from "../../src/templates/what-if/form.js";
import type { WhatIfRow } from "../../src/templates/what-if/typed.js";
import { brokenRules } from "../support/package-rules.js";
import { type Value, type Worked, workedOut } from "../support/worked.js";

function book(values: WhatIfValues, rows: readonly WhatIfRow[]): Promise<Worked> {
  return workedOut(whatIfBook({ title: "Test", about: [], values, rows, units: "C" }));
}
const of = (done: Worked, key: string): Value[] => done.column("WhatIf", key);
const black = { emissivity: 1, reflected: 20 } as const;

describe("against the reference rows", () => {
  let done: Worked;
  beforeAll(async () => {
    done = await book({ band: "8-14" }, [
      // o-corrected_nowindow-004
      { apparent: 77.33, emissivity: 0.908, reflected: -8.2, air_transmission: 0.907, air_temp: -13 },
      // o-corrected_window-003
      {
        apparent: 82.61,
        emissivity: 0.795,
        reflected: 29.7,
        air_transmission: 0.997,
        air_temp: 40.8,
        window_transmission: 0.836,
        window_reflectance: 0.059,
        window_temp: 41.8,
        outer_reflected: 27,
        outer_air_transmission: 0.989,
      },
    ]);
  }, 120_000);

  test("a row's own settings override those of Settings, all nine", () => {
    const [first, second] = of(done, "temp");
    expect(first).toBeCloseTo(90.472210108762833, 6);
    expect(second).toBeCloseTo(103.32391444733625, 6);
  });

  test("without a span and a reference the rest stays empty", () => {
    for (const key of ["rise", "u", "grade_given", "temp_low", "spread", "grade_span", "flips", "remarks"])
      expect([key, ...of(done, key)]).toEqual([key, "", ""]);
    expect(done.errors()).toEqual([]);
  });
});

describe("emissivity from 0.7 to 0.98", () => {
  let done: Worked;
  beforeAll(async () => {
    done = await book(
      { varied: "emissivity", from: 0.7, to: 0.98, emissivity: 0.95, reflected: 22, over: "similar", row: 2 },
      [
        { item: "edge inside", apparent: 58, reference_apparent: 45 },
        // Both mirror as much as they send out: no emissivity moves either, and no rise is there.
        { item: "as its surroundings", apparent: 22, reference_apparent: 22 },
        { item: "of no reference", apparent: 58 },
        {},
        { item: "not read yet" },
      ],
    );
  }, 120_000);

  test("15 K, the edge from grade 2 to 4, needs an emissivity of 0.833", () => {
    expect(of(done, "edge_above")[0]).toBe(15);
    expect(of(done, "flip_up")[0]).toBeCloseTo(0.833, 3);
    expect(of(done, "flips")[0]).toMatch(/the edge of 15 K at 0\.833, within the span$/);
    expect(of(done, "grade_given")[0]).toMatch(/^2 of 4: /);
    expect(of(done, "grade_span")[0]).toBe("depends: 2 to 4 of 4");
  });

  test("lowest and highest of a temperature that falls all the way are its ends, and the spread lies between", () => {
    const [low, high] = [of(done, "temp_low")[0] as number, of(done, "temp_high")[0] as number];
    expect(of(done, "temp_from")[0]).toBe(high);
    expect(of(done, "temp_to")[0]).toBe(low);
    expect(of(done, "spread")[0]).toBeCloseTo(high - low, 9);
    expect(low).toBeGreaterThan(58);
  });

  test("a grade that is the same throughout says so", () => {
    expect(of(done, "temp_low")[1]).toBeCloseTo(22, 6);
    expect(of(done, "spread")[1]).toBeCloseTo(0, 6);
    expect(of(done, "grade_span")[1]).toBe("same throughout: 0 of 4");
    expect(of(done, "flips")[1]).toMatch(/at no value$/);
  });

  test("rows say what they need, an empty one says nothing", () => {
    expect(of(done, "remarks")).toEqual(["", "", "needs the similar component's reading", "", "needs a reading"]);
    expect(done.errors()).toEqual([]);
  });

  test("the sheet Span shows the row that is asked for", () => {
    const column = (key: string): Value[] => done.column("SpanSteps", key);
    expect(column("value")).toEqual([0.7, 0.728, 0.756, 0.784, 0.812, 0.84, 0.868, 0.896, 0.924, 0.952, 0.98]);
    for (const temp of column("temp")) expect(temp).toBeCloseTo(22, 6);
  });
});

test("a step that has no answer is counted, and told where none has one", async () => {
  const done = await book({ varied: "emissivity", from: 0, to: 1, emissivity: 1, reflected: 60 }, [
    // A surface of 0.4 sends out 0.6 of 60 °C by reflection alone, more than 20 °C radiates (about 0.53 of it in 7.5-14 µm).
    { apparent: 20 },
    { apparent: 20, emissivity: 0.2 },
  ]);
  expect(of(done, "answered")).toEqual([6, 6]);
  expect(of(done, "remarks")[0]).toBe("over the span an answer at 6 of 11 steps only");
  expect(of(done, "remarks")[1]).toMatch(/^no answer at the given settings: /);
  expect(of(done, "temp")[1]).toBe("");
  expect(done.errors()).toEqual([]);
}, 120_000);

test("over air, of a black body: the flip of its reading is air and edge together", async () => {
  const done = await book({ varied: "apparent", from: 30, to: 50, ...black, surrounding_air: 24, over: "ambient" }, [
    { apparent: 41.5 },
    { apparent: 10 },
  ]);
  expect(of(done, "rise")).toEqual([expect.closeTo(17.5, 6), expect.closeTo(-14, 6)]);
  // NETA over air: 1 to 10, 11 to 20, 21 to 40, above: with the gaps closed 17.5 lies between the edges 11 and 21.
  expect(of(done, "flip_down")[0]).toBeCloseTo(24 + 11, 3);
  expect(of(done, "flip_up")[0]).toBeCloseTo(24 + 21, 3);
  expect(of(done, "flips")[0]).toBe(
    "the edge of 11 K at 35.0 °C, within the span; the edge of 21 K at 45.0 °C, within the span",
  );
  // 30 to 50 °C over 24 °C: rises of 6 to 26 K, grades 1 to 3.
  expect(of(done, "grade_span")[0]).toBe("depends: 1 to 3 of 4");
  expect(of(done, "grade_given")[1]).toBe("no grade: colder than its reference");
}, 120_000);

test("at the reference load: check 1 of trade.md, 12 K at 45 of 100 A", async () => {
  const done = await book({ ...black, over: "similar", accuracy: 0, accuracy_percent: 0, reflected_half: 0 }, [
    { apparent: 42, reference_apparent: 30, load: 45, reference_load: 100 },
    { apparent: 42, reference_apparent: 30, load: 30, reference_load: 100 },
  ]);
  const [projected, refused] = of(done, "rise_at_load");
  expect(projected).toBeCloseTo(50.51, 2);
  // 43.06 K at exponent 1.6, 59.26 K at 2: both beyond 15 K.
  expect(of(done, "grade_at_load")).toEqual(["projected 4 of 4 throughout", ""]);
  expect(refused).toBe("not projected: load 30 %");
}, 120_000);

test("in °F the same grades, and every difference 1.8 times as large", async () => {
  const [celsius, fahrenheit] = await Promise.all([workedOut(demoWhatIf("C")), workedOut(demoWhatIf("F"))]);
  for (const key of ["grade_given", "grade_span"]) expect(of(fahrenheit, key)).toEqual(of(celsius, key));
  const pairs = ["rise", "spread", "rise_high", "u"].flatMap((key) =>
    of(celsius, key).map((value, row) => [value, of(fahrenheit, key)[row]] as const),
  );
  for (const [metric, own] of pairs) expect(own).toBeCloseTo((metric as number) * 1.8, 1);
  expect([...celsius.errors(), ...fahrenheit.errors()]).toEqual([]);
}, 120_000);

test("empty it is calm", async () => {
  const done = await workedOut(templates.find(({ name }) => name === "what-if")!.empty({ units: "F", rows: 3 }));
  for (const key of ["remarks", "temp", "rise", "u", "grade_given", "grade_u", "grade_span", "flips", "rise_at_load"])
    expect([key, ...of(done, key)]).toEqual([key, "", "", ""]);
  expect(done.column("SpanSteps", "temp").every((value) => value === "")).toBe(true);
  expect(done.errors()).toEqual([]);
}, 120_000);

test("as a file it keeps the rules that Excel holds one to", () => {
  for (const one of [
    demoWhatIf("F"),
    templates.find(({ name }) => name === "what-if")!.empty({ units: "C", rows: 40 }),
  ])
    expect(brokenRules(packBook(describedBook(one)))).toEqual([]);
});
