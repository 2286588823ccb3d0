/** Cells that cannot be read, empty rows, single points, units. */
import { against, CALM, check } from "./route.js";
import type { Line } from "./route.js";

const gone = { error: "#REF!", message: "The cell it looks at is gone." } as const;

describe("cells that cannot be read", () => {
  test("text where a number is wanted, an error, a date that is none: each a finding of its row, never an error", () => {
    const { findings, texts } = check([
      { ...CALM, left: "abc", amps_left: gone, time: "noon" },
      { ...CALM, thermal_image: "IR-0" },
    ]);
    expect(findings.map(({ row, column, what }) => `${row} ${column}: ${what}`)).toEqual([
      '1 time: time "noon" is no date or time that can be read',
      '1 left: left "abc" is no number',
      "1 amps_left: amps_left shows #REF!",
    ]);
    expect(findings[2]?.why).toBe(gone.message);
    expect(texts[0]).toMatch(/^Stop: time "noon" .*; left "abc" is no number; amps_left shows #REF!\.$/);
    expect(texts[1]).toBe("");
  });

  test("a plain number as text is that number; a bound is none", () => {
    expect(against({ right: "60.0", amps_right: " 229 " })).toEqual([]);
    expect(against({ right: ">150" })).toEqual(['stop right: right ">150" is no number']);
    expect(against({ right: "60,0" })).toEqual(['stop right: right "60,0" is no number']);
    expect(against({ right: true })).toEqual(['stop right: right "true" is no number']);
  });

  test("words in a column that the sheet works out are the sheet's own", () => {
    expect(against({ corrected_left: "≥ 165.5", rise_similar: "no answer", spot_margin: "" })).toEqual([]);
  });
});

describe("rows with nothing typed", () => {
  const looked = { view: "direct", window_transmission: 1, emissivity_used: "", known_from: gone };
  const empty = Object.fromEntries(Object.keys(CALM).map((name) => [name, null]));
  const zeros = Object.fromEntries(Object.keys(CALM).map((name) => [name, 0]));

  test.each<[string, Line]>([
    ["empty", empty],
    ["blank text", { ...empty, asset_id: "", left: "" }],
    ["zeros, as Excel hands empty cells over", zeros],
    ["what the sheet looks up alone", { ...empty, ...looked }],
  ])("are calm: %s", (_, row) => {
    const { texts, findings } = check([CALM, row]);
    expect(texts).toEqual(["", ""]);
    expect(findings).toEqual([]);
  });

  test("one number is enough to be asked about", () => {
    expect(check([{ ...empty, amps_left: 5 }]).texts).toEqual(["Needed: asset_id, status, time."]);
  });
});

test("of what was not inspected wind and load are not asked, what cannot be still is", () => {
  const row = { asset_id: "Q1", status: "not inspected", reason: "locked", time: 0.4, wind: 9, minutes_door_open: 20 };
  expect(check([row]).texts).toEqual([""]);
  expect(check([{ ...row, humidity: 0.5 }]).texts).toEqual(["Implausible: humidity 0.5 %."]);
  expect(check([{ ...row, status: "no exception", view: "indirect" }]).texts).toEqual([
    "Stop: wind 9 m/s at the target. Caution: door open for 20 min.",
  ]);
});

test("no current at all is told as such", () => {
  expect(against({ amps_left: 0, amps_middle: 0, amps_right: 0 })).toEqual(["stop amps_right: no current"]);
});

test("a sheet of single points asks for a reading, not for phases", () => {
  const point = {
    asset_id: "P-102A",
    status: "exception",
    time: 0.4,
    reading: null,
    thermal_image: "IR-7",
    like: "P-102B",
  };
  const settings = {
    surrounding_air: 25,
    emissivity: 0.95,
    reflected: 25,
    distance: 1,
    humidity: 50,
    process_load: 80,
  };
  expect(check([{ ...point, ...settings }]).texts).toEqual(["Needed: reading."]);
  expect(check([{ ...point, ...settings, status: "no exception" }]).texts).toEqual([""]);
});

test("in °F what is told is told in °F, mph and inches", () => {
  const told = against(
    { left: 100, middle: 100, right: 140, surrounding_air: 80, reflected: 79, wind: 17 },
    { range_to: 120 },
    "F",
  );
  expect(told).toContain("stop wind: wind 17 mph at the target");
  expect(told).toContain("stop right: reading 140 °F outside the camera's range to 120 °F");
  expect(against({ humidity: 0.5, distance: 5000 }, undefined, "f")).toContain(
    "implausible distance: distance 5000 ft cannot be: 0.164042 to 3280.84 ft",
  );
});
