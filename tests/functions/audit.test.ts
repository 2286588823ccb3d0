/**
 * AUDIT over claims whose numbers are worked out apart from it: by tests/support/slips.ts, straight from the measurement
 * equation over the exact radiance, or by hand in the test.
 */
import { auditReport } from "../../src/functions/audit-report.js";
import { auditCells, auditLines } from "../../src/functions/audit-shown.js";
import type { Cell } from "../../src/functions/contract.js";
import { caseFrom, inSheet, object, seeded, SLIPS, type AuditCase } from "../support/slips.js";

const HEADERS = ["apparent", "emissivity", "reflected", "air_transmission", "path_air", "stated_temp"];

function verdicts(
  headers: readonly string[],
  rows: readonly (readonly Cell[])[],
  job: readonly (readonly Cell[])[] = [],
  units: "C" | "F" = "C",
) {
  const report = auditReport(headers, rows, job, units);
  const show = (name: string): Cell[] => auditCells(report, name).map(([cell]) => cell!);
  return { report, show };
}

/** Cases without a window, which a report of a row would print in these columns. */
function plainCases(count: number, seed: number): AuditCase[] {
  const random = seeded(seed);
  const found: AuditCase[] = [];
  while (found.length < count) {
    const one = caseFrom(random);
    if (one.win === undefined && one.t2 === 1 && one.band[0] === 7.5 && one.a > -20 && object(one) > one.r + 2)
      found.push(one);
  }
  return found;
}

const printed = (value: number, decimals: number): string => value.toFixed(decimals);

function row(g: AuditCase, stated: number, decimals: number): Cell[] {
  const temp = (t: number | undefined): Cell => (t === undefined ? "" : Number(inSheet(t, g).toFixed(3)));
  return [printed(inSheet(g.a, g), 1), g.e, temp(g.r), g.t1, temp(g.ta), printed(stated, decimals)];
}

test("what an honest report prints, to tenths or whole degrees, is reproduced", () => {
  for (const g of plainCases(300, 7))
    for (const decimals of [0, 1]) {
      const { show } = verdicts(HEADERS, [row(g, inSheet(object(g), g), decimals)], [], g.units);
      expect([g, show("number")[0]]).toEqual([g, "reproduced"]);
    }
});

test("so it is where the reading was rounded before it was printed", () => {
  for (const g of plainCases(200, 11)) {
    const honest = inSheet(object({ ...g, a: g.a + 0.049 * (g.units === "F" ? 1 / 1.8 : 1) }), g);
    expect([g, verdicts(HEADERS, [row(g, honest, 1)], [], g.units).show("number")[0]]).toEqual([g, "reproduced"]);
  }
});

test("each usual slip that shows is among those that would give the number", () => {
  let looked = 0;
  for (const g of plainCases(60, 3))
    for (const [words, slip] of Object.entries(SLIPS)) {
      const wrong = slip(g);
      if (!Number.isFinite(wrong) || Math.abs(wrong - object(g)) < 2 || wrong < -200) continue;
      const { report } = verdicts(HEADERS, [row(g, inSheet(wrong, g), 1)], [], g.units);
      const [line] = report.rows[0]!.audit!.lines;
      if (Math.abs(wrong - object(g)) <= 2 * line!.number!.tolerance!) continue;
      expect([words, g, line!.number!.kind]).toEqual([words, g, "slips"]);
      const [, cells] = auditLines(report);
      expect(cells![11]).toContain(`${words} would give`);
      looked++;
    }
  expect(looked).toBeGreaterThan(500);
});

describe("a rise", () => {
  // 60.0 − 40.0 printed; 20.0 K.
  const headers = [
    "stated_temp",
    "stated_reference_temp",
    "reference",
    "surrounding_air",
    "stated_rise",
    "stated_grade",
  ];
  test.each([
    ["20.0", "reproduced"],
    ["20.1", "reproduced"],
    ["-20.0", "arithmetic: reference less hot one would give it"],
    ["36.0", "arithmetic: × 1.8 once too often would give it"],
    ["35.0", "method: over air in place of similar would give it"],
    ["27.3", "not reproduced, no usual slip"],
  ])("of 60.0 over a similar 40.0 in air of 25.0, stated as %s: %s", (stated, words) => {
    const { show } = verdicts(headers, [["60.0", "40.0", "similar", "25.0", stated, ""]]);
    expect(show("number")[0]).toBe(words);
  });

  test("without its reference is only subtracted, never graded", () => {
    const { show } = verdicts(headers, [["60.0", "40.0", "", "25.0", "20.0", "4"]]);
    expect(show("number")[0]).toBe("reproduced over similar, which is not stated");
    expect(show("grade")[0]).toBe("cannot be checked: needs reference; over similar it would follow");
    expect(show("method")[0]).toBe("reference not stated; load not stated");
  });
});

describe("a rise at load (12 K from 45 to 100 A: 43.06, 50.51, 59.26 K at 1.6, 1.8, 2; trade.md 6.1)", () => {
  const headers = [
    "stated_temp",
    "stated_reference_temp",
    "reference",
    "load",
    "reference_load",
    "exponent",
    "stated_rise_at_load",
  ];
  const claim = (stated: string, exponent: Cell = ""): Cell[] => [
    "52.00",
    "40.00",
    "similar",
    "45.0",
    "100.0",
    exponent,
    stated,
  ];
  test.each([
    [claim("43.1"), "reproduced with exponent 1.6, which is not stated"],
    [claim("50.5"), "reproduced with exponent 1.8, which is not stated"],
    [claim("59.3", 2), "reproduced"],
    [claim("12.0", 2), "method: not adjusted for load would give it"],
  ])("%j: %s", (row, words) => {
    expect(verdicts(headers, [row]).show("number")[0]).toBe(words);
  });

  test("below 40 % of the load the method is told, whatever the number", () => {
    // 12 · (100/30)^2 = 133.3
    const row: Cell[] = ["52.00", "40.00", "similar", "30.00", "100.0", 2, "133"];
    const { show } = verdicts(headers, [row], [["minimum_load", 0.4]]);
    expect(show("method")[0]).toBe("projected from too little load");
  });
});

describe("a grade by ANSI/NETA Table 100.18 as cited in criteria.json", () => {
  const headers = ["stated_rise", "reference", "load", "stated_grade"];
  test.each<[Cell[], string]>([
    [["3.0", "similar", 50, "1 of 4"], "follows"],
    [["3.5", "similar", 50, 2], "follows only if rounded first, to 1 K: the stated rise is grade 1 of 4"],
    [["15.4", "similar", 50, 2], "follows only if rounded first, to 1 K: the stated rise is grade 4 of 4"],
    [["30.0", "ambient", 50, 4], "other column: over similar it would follow: the stated rise is grade 3 of 4"],
    [["12.0", "similar", 50, 1], "does not follow: the stated rise is grade 2 of 4"],
  ])("%j: %s", (row, words) => {
    // The report says how it counts: 1 would else be a 4.
    expect(verdicts(headers, [row], [["grades_count", "4 = worst"]]).show("grade")[0]).toBe(words);
  });

  test("a report that counts the other way is known by its rows together", () => {
    const rows: Cell[][] = [
      ["30.0", "similar", 50, 1],
      ["12.0", "similar", 50, 3],
      ["2.0", "similar", 50, 4],
    ];
    const { report, show } = verdicts(headers, rows);
    expect(show("grade")).toEqual(Array(3).fill("other numbering: follows where 1 is the worst"));
    expect(report.findings).toEqual([{ id: "numbering", numbering: "1 = worst", rows: 3 }]);
  });
});

test("findings of the whole report", () => {
  const headers = [
    "image",
    "date",
    "material",
    "apparent",
    "emissivity",
    "reflected",
    "surrounding_air",
    "stated_temp",
  ];
  const rows = Array.from({ length: 10 }, (_, i): Cell[] => [
    i === 9 ? "IR-1" : `IR-${i + 1}`,
    46_000 + i,
    ["paint", "copper, oxidised", "tape"][i % 3]!,
    "50.0",
    0.85,
    21,
    21,
    "50.0",
  ]);
  const { report } = verdicts(headers, rows, [
    ["date", 46_001],
    ["calibrated", 46_008 - 365],
  ]);
  expect(report.findings).toEqual(
    expect.arrayContaining([
      { id: "slip", slip: "reading-itself", rows: 10, of: 10 },
      { id: "same-emissivity", emissivity: 0.85, rows: 10, materials: 3 },
      { id: "reflected-is-air", rows: 10 },
      { id: "same-image", image: "IR-1", rows: [1, 10] },
      { id: "before-job", rows: [1] },
      { id: "calibration-out", rows: [10] },
    ]),
  );
});

test("what is missing is varied over what it may be", () => {
  const headers = ["apparent", "emissivity", "reflected", "surrounding_air", "stated_temp"];
  // At emissivity 0.98 the reflected part is 2 %: 10 K of it move the result by some 0.2 K, less than half a whole degree.
  expect(verdicts(headers, [["58.0", 0.98, "", "22.0", "59"]]).show("number")[0]).toBe(
    "reproduced, reflected immaterial, air taken as 1",
  );
  const [words] = verdicts(headers, [["58.0", 0.6, "", "22.0", "75.0"]]).show("number");
  expect(words).toMatch(/^cannot be reproduced: needs reflected, air_transmission; between 7\d\.\d and [78]\d\.\d °C$/);
});

test("a row that holds nothing is calm, and a limit is no value", () => {
  const headers = ["apparent", "reading_is", "emissivity", "reflected", "stated_temp"];
  const { show } = verdicts(headers, [
    ["", "", "", "", ""],
    ["150", "at least", 0.95, 22, "155"],
  ]);
  for (const name of ["number", "method", "grade", "consequence", "slips", "missing", "formula", "temp"])
    expect(show(name)[0]).toBe("");
  expect(show("number")[1]).toBe("stated of a reading at the camera's limit: not recomputed");
});
