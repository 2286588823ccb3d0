/** Findings of a route as a whole, their order, names of columns, the job. */
import { columnNamed } from "../../../src/functions/check-names.js";
import { CHECK } from "../../../src/functions/check.js";
import type { Cell, Grid, Input } from "../../../src/functions/contract.js";
import { isCellError } from "../../../src/functions/contract.js";
import { against, CALM, check } from "./route.js";
import type { Line } from "./route.js";

const gone = { error: "#REF!", message: "The cell it looks at is gone." } as const;

/** Rows that differ in their image only, but for `of`. */
const rows = (count: number, of: (index: number) => Line = () => ({})): Line[] =>
  Array.from({ length: count }, (_, i) => ({ ...CALM, asset_id: `Q${i}`, thermal_image: `IR-${i}`, ...of(i) }));
const ofRoute = (route: readonly Line[], job?: Line): string[] =>
  check(route, job)
    .findings.filter(({ row }) => row === 0)
    .map(({ column, kind, what }) => `${kind} ${column}: ${what}`);
const message = (...inputs: Input[]): string => {
  const cell = CHECK.evaluate(inputs)[0]?.[0];
  return isCellError(cell) ? `${cell.error} ${cell.message}` : `no error but ${String(cell)}`;
};

describe("the whole route", () => {
  test("the same image twice is told on both rows", () => {
    const { findings } = check([CALM, { ...CALM, asset_id: "MSB-Q4" }, ...rows(1)]);
    expect(findings.map(({ row, what }) => `${row} ${what}`)).toEqual([
      "1 image IR-0101 stands in row 2 too",
      "2 image IR-0101 stands in row 1 too",
    ]);
  });

  test.each([
    [10, ["copper", "paint", "tape"], ["caution emissivity: emissivity 0.95 on 10 exceptions, 3 surfaces"]],
    [9, ["copper", "paint", "tape"], []],
    [10, ["paint", "tape"], []],
  ])("one emissivity on %d exceptions of %j", (count, surfaces, expected) => {
    const route = rows(count, (i) => ({ surface: surfaces[i % surfaces.length] ?? "", known_from: "measured" }));
    expect(ofRoute(route)).toEqual(expected);
  });

  test.each([
    [10, 0.89, ["caution reflected: reflected equals the air on 10 rows with emissivity below 0.9"]],
    [9, 0.89, []],
    [10, 0.9, []],
  ])("reflected the air on %d rows at emissivity %d", (count, emissivity, expected) => {
    expect(ofRoute(rows(count, () => ({ emissivity, reflected: 26.5 })))).toEqual(expected);
  });

  test.each<[string, number, Line, string[]]>([
    ["round", 10, { amps_left: 230, amps_middle: 220, amps_right: 230 }, ["all currents of 10 rows are round"]],
    ["round, but one", 10, { amps_left: 230, amps_middle: 221, amps_right: 230 }, []],
    ["round, on nine rows", 9, { amps_left: 230, amps_middle: 220, amps_right: 230 }, []],
    [
      "full",
      10,
      { amps_left: 229, amps_middle: 229, amps_right: 229, expected_max_A: 229 },
      ["all 10 loads stand at 100 %"],
    ],
  ])("loads that are all %s", (_, count, currents, expected) => {
    expect(check(rows(count, () => currents)).findings.map(({ what }) => what)).toEqual(expected);
  });

  test("what stops the whole route is told once in the table, and in the text of every row with readings", () => {
    const job = { date: "2026-03-11", calibrated: "2025-03-10" };
    const { findings, texts } = check(
      [...rows(2), { asset_id: "Q9", status: "not inspected", reason: "shut", time: 0.4 }],
      job,
    );
    expect(findings.map(({ row, column }) => `${row} ${column}`)).toEqual(["0 job_calibrated"]);
    expect(texts).toEqual([
      "Stop: the camera's calibration ran out on 2026-03-10.",
      "Stop: the camera's calibration ran out on 2026-03-10.",
      "",
    ]);
  });
});

describe("order", () => {
  const row = { ...CALM, time: null, wind: 8, humidity: 0.5, minutes_door_open: 9, load: null };

  test("needed, stop, implausible, caution, in table and text", () => {
    const { findings, texts } = check([row]);
    expect(findings.map(({ kind }) => kind)).toEqual(["needed", "stop", "implausible", "caution"]);
    expect(texts[0]).toBe(
      "Needed: time. Stop: wind 8 m/s at the target. Implausible: humidity 0.5 %. Caution: door open for 9 min.",
    );
  });

  test("the whole route first, then row by row", () => {
    const { findings } = check([row, ...rows(1), { ...CALM, thermal_image: "IR-2", status: null }], { check_error: 3 });
    expect(findings.map(({ row: at }) => at)).toEqual([0, 1, 1, 1, 1, 3]);
  });

  test("columns come in any order", () => {
    const names = Object.keys(row).reverse();
    const values = names.map((name) => (row as Line)[name] ?? null);
    expect(CHECK.evaluate([[names], [values]])).toEqual([[check([row]).texts[0]]]);
  });
});

describe("names", () => {
  test.each([
    ["Thermal Image", "thermal_image"],
    ["surrounding air (°C)", "surrounding_air"],
    ["AMPS_LEFT [A]", "amps_left"],
    ["expected_max_a", "expected_max_A"],
    ["corrected left", "corrected_left"],
    ["left\n°C", "left"],
  ])("%s is %s", (header, name) => {
    const { [name]: own = 20, ...others } = CALM;
    expect(check([{ ...others, [header]: own }]).findings).toEqual([]);
    expect(columnNamed(header).name).toBe(name);
  });

  test.each([
    ["emisivity", "emissivity"],
    ["left temp", "left"],
    ["Current middle", "amps_middle"],
    ["ambient temperature", "surrounding_air"],
  ])("%s is not known, %s was meant", (header, name) => {
    expect(against({ [header]: 1 })).toEqual([`caution ${header}: not read: ${header}: was ${name} meant?`]);
  });

  test("one like no other is told without a guess; one of our sheet's that no rule asks for is not told", () => {
    expect(against({ colour: "red" })).toEqual(["caution colour: not read: colour"]);
    expect(against({ photo: "P-1", "grade as found": "2 of 4", told_to: "T. Okafor" })).toEqual([]);
  });

  test("a column without a name and a second one of a name are told by their place", () => {
    const table = CHECK.evaluate([[["asset_id", null, "Asset ID"]], [["Q1", 5, "Q2"]], null, "findings"]);
    expect(table.slice(1).map(([row, , , what]) => [row, what])).toEqual([
      [0, "not read: column 2, which has no name"],
      [0, "not read: column 3, a second asset_id"],
      [1, "is empty"],
      [1, "is empty"],
    ]);
  });

  test("none that is known is an error", () => {
    expect(message([["a", "b"]], [[1, 2]])).toMatch(
      /^#VALUE! headers: none of "a", "b" is a name that is read\. There are, in any order, asset_id, status,/,
    );
  });

  test("headers as wide as the rows", () => {
    expect(message([["asset_id", "status"]], [["Q1"]])).toBe(
      "#VALUE! headers has 1 row by 2 columns, rows 1 row by 1 column: give one row of headers, as wide as the rows.",
    );
    expect(message([["asset_id"], ["status"]], [["Q1"]])).toMatch(/^#VALUE! headers has 2 rows by 1 column/);
    expect(message([["asset_id", gone]], [["Q1", 1]])).toBe(`#REF! ${gone.message}`);
  });
});

describe("the job", () => {
  test("with job_ in front or without, under a heading, between headings and empty lines", () => {
    const job: Grid = [
      ["name", "value"],
      ["Camera", null],
      ["job_range_to", 50],
      [null, null],
      ["client", "an invented dairy"],
    ];
    const names = Object.keys(CALM);
    const ask = (given: Grid): Cell => CHECK.evaluate([[names], [Object.values(CALM)], given])[0]?.[0] ?? null;
    expect(ask(job)).toBe("Stop: reading 60 °C outside the camera's range to 50 °C.");
    expect(ask([["range_to", 50]])).toBe(ask(job));
  });

  test("a name that is not known, a number that is none or cannot be, criteria and band that are not", () => {
    const found = (job: Line): string[] => ofRoute([CALM], job);
    expect(found({ ifof: 1.4 })).toEqual(["caution ifof: not read in the job: ifof: was ifov meant?"]);
    expect(found({ ifov: "1,4" })).toEqual(['stop job_ifov: job_ifov "1,4" is no number']);
    expect(found({ ifov: gone })).toEqual(["stop job_ifov: job_ifov shows #REF!"]);
    expect(found({ humidity: 0.4 })).toEqual(["implausible job_humidity: job_humidity 0.4 %"]);
    expect(found({ distance: 2000 })).toEqual([
      "implausible job_distance: job_distance 2000 m cannot be: 0.05 to 1000 m",
    ]);
    expect(found({ criteria: "mine" })).toEqual(['caution job_criteria: criteria "mine" is no table of ours']);
    expect(found({ band: "long" })).toEqual(['caution job_band: band "long" cannot be read']);
  });

  test("what belongs into the rows is told so, and what a job may have is listed", () => {
    const { findings } = check([CALM], { window_transmission: 0.55, wind: 3, colour: "red" });
    expect(findings.map(({ what, todo }) => `${what}. ${todo}`)).toEqual([
      "not read in the job: window_transmission is a column of the rows. Give the rows a column window_transmission; on our route it stands on the sheet Windows, by window_id.",
      "not read in the job: wind is a column of the rows. Give the rows a column wind.",
      "not read in the job: colour. Give it one of these names, or leave it out.",
    ]);
    expect(findings[2]?.why).toMatch(/A job has date, criteria, band, ifov, .*u_air_low\.$/);
    expect(against({ calibration_days: 365 })).toEqual([
      "caution calibration_days: not read in the rows: calibration_days is a line of the job",
    ]);
  });

  test("two columns, no more", () => {
    expect(message([["asset_id"]], [["Q1"]], [["ifov", 1.4, "mrad"]])).toMatch(/^#VALUE! job: 3 columns cannot be/);
    expect(
      message(
        [["asset_id"]],
        [["Q1"]],
        [
          ["ifov", 1.4],
          [gone, 1],
        ],
      ),
    ).toBe(`#REF! ${gone.message}`);
  });
});
