/**
 * AUDIT accuses no honest row: what rounding, printed digits, inputs left out or a missing table leave open is told as such.
 * Numbers are worked out beside each case, or by tests/support/slips.ts over the exact radiance.
 */
import { auditReport } from "../../src/functions/audit-report.js";
import { auditCells } from "../../src/functions/audit-shown.js";
import type { Cell } from "../../src/functions/contract.js";
import { type AuditCase, object } from "../support/slips.js";

type Row = readonly Cell[];
const OURS: Row[] = [["grades_count", "4 = worst"]];

function audited(headers: readonly string[], rows: readonly Row[], job: readonly Row[] = [], units: "C" | "F" = "C") {
  const report = auditReport(headers, rows, job, units);
  const show = (name: string): Cell[] => auditCells(report, name).map(([cell]) => cell!);
  return { report, show };
}

/** 56.2 and 39.6 °C at emissivity 0.95 and 23 °C reflected, no air: 57.72 and 40.41 °C by the equation over exact radiance. */
const plain = (a: number, more: Partial<AuditCase> = {}): AuditCase => ({
  a,
  e: 0.95,
  r: 23,
  t1: 1,
  ta: undefined,
  tw: 1,
  win: undefined,
  rho: 0,
  rc: undefined,
  t2: 1,
  band: [7.5, 14],
  units: "C",
  ...more,
});
const corrected = (a: number, more?: Partial<AuditCase>): number => object(plain(a, more));

describe("a grade", () => {
  const headers = ["stated_temp", "stated_reference_temp", "reference", "load", "stated_rise", "stated_grade"];
  test.each<[Row, string, string]>([
    // 60.04 − 45.00 is 15.04, above 15, and printed as 15.0.
    [["60.04", "45.00", "similar", 97, "15.0", 4], "follows only from digits that are not printed", "reproduced"],
    // 3.96 is below 4 and printed as 4.0.
    [["43.96", "40.00", "similar", 97, "4.0", 1], "follows only from digits that are not printed", "reproduced"],
    // 15.00 exactly, to hundredths: nothing is left to be above 15.
    [["60.000", "45.000", "similar", 97, "15.000", 4], "follows only from digits that are not printed", "reproduced"],
    // 15.04 again, but the temperatures say 14.98 ± 0.01: not above 15.
    [["59.98", "45.00", "similar", 97, "15.0", 4], "does not follow", "not reproduced"],
    // 15.1 and 27.1 °F are above 15 K however they were rounded.
    [["60.1", "45.0", "similar", 97, "15.1", 2], "follows only if rounded first, to 1 K or 1 °F", "not reproduced"],
  ])("%j: %s", (row, grade, verdict) => {
    const { show } = audited(headers, [row], OURS);
    expect(show("grade")[0]).toMatch(new RegExp(`^${grade}`));
    expect(show("verdict")[0]).toBe(verdict);
  });

  test("by criteria that are not known here is not checked, and the name is told", () => {
    const { show, report } = audited(
      ["stated_rise", "reference", "load", "stated_grade"],
      [[12, "similar", 97, 3]],
      [["criteria", "the client's own"]],
    );
    expect(show("grade")[0]).toBe("cannot be checked: the criteria are none that are known here");
    expect(show("verdict")[0]).toBe("cannot be reproduced");
    expect(report.notRead).toEqual(['criteria "the client\'s own"']);
  });

  test("by a table for that view is no direct table", () => {
    const row = [6, "similar", 97, 3, "indirect"];
    const headers = ["stated_rise", "reference", "load", "stated_grade", "view"];
    const { show } = audited(headers, [row], [["criteria", "house-indirect"], ...OURS]);
    expect([show("method")[0], show("grade")[0]]).toEqual(["sound", "follows"]);
    expect(audited(headers, [row], OURS).show("method")[0]).toBe("no direct view, graded by a table for direct views");
  });

  test("of a report that counts the other way is told in the report's own numbers too", () => {
    const rows = [["12.0", "similar", 97, 4]];
    const { show } = audited(["stated_rise", "reference", "load", "stated_grade"], rows, [
      ["grades_count", "1 = worst"],
    ]);
    expect(show("grade")[0]).toBe(
      "does not follow: the stated rise is grade 2 of 4 (4 = worst), 3 as the report counts (1 = worst)",
    );
  });

  test("of the recomputed rise is said to be that", () => {
    const { show } = audited(
      ["stated_temp", "stated_reference_temp", "reference", "load", "stated_grade"],
      [["52.0", "40.0", "similar", 97, 1]],
      OURS,
    );
    expect(show("grade")[0]).toBe("does not follow: the recomputed rise is grade 2 of 4");
  });

  test.each<[Cell, number | undefined]>([
    [0, 0],
    ["P1", 1],
    ["2 of 4, soon", 2],
    ["3 - repair within 30 d", 3],
    ["3/4", 3],
    ["2.5", undefined],
    ["1-2", undefined],
    ["1 or 2", undefined],
    ["2 of 3", undefined],
    [-1, undefined],
    [5, undefined],
    ["III", undefined],
  ])("%j is read as %s", (typed, grade) => {
    const { report } = audited(["stated_rise", "stated_grade"], [[12, typed]]);
    expect(report.rows[0]!.audit!.claim.statedGrade).toBe(grade);
    expect(report.rows[0]!.unread).toHaveLength(grade === undefined ? 1 : 0);
  });
});

describe("a rise", () => {
  const headers = [
    ...["apparent", "reference_apparent", "emissivity", "reflected", "reference", "air_transmission", "path_air"],
    ...["stated_temp", "stated_reference_temp", "stated_rise"],
  ];
  const row = (...stated: Cell[]): Cell[] => ["56.2", "39.6", 0.95, 23, "similar", 1, 20, ...stated];

  test("of temperatures that were rounded first is theirs", () => {
    expect([corrected(56.2), corrected(39.6)].map(Math.round)).toEqual([58, 40]);
    // The readings give 17.3.
    expect(corrected(56.2) - corrected(39.6)).toBeCloseTo(17.3, 1);
    const { show } = audited(headers, [row("58", "40", "18.0"), row("59", "40", "19.0")]);
    expect(show("number")).toEqual([
      expect.stringContaining("rise: reproduced from the stated temperatures as printed"),
      // 59 is none that the reading gives, so neither is what comes of it.
      expect.stringContaining("rise: arithmetic: the difference of the stated temperatures would give it"),
    ]);
  });

  test("through a longer-wave camera moves by what the band moves both ends", () => {
    // One band's shift of the difference, not the sum of both shifts: 90 and 80 °C at emissivity 0.6.
    const shift = (a: number): number => corrected(a, { e: 0.6, band: [8, 14] }) - corrected(a, { e: 0.6 });
    const digits = 0.05 * 1.7 * 2;
    const { report } = audited(headers, [["90.0", "80.0", 0.6, 23, "similar", 1, 20, "", "", "16.0"]]);
    const { tolerance } = report.rows[0]!.audit!.lines[0]!.number!;
    expect(Math.abs(shift(90)) + Math.abs(shift(80))).toBeGreaterThan(0.3);
    expect(tolerance!).toBeLessThan(0.05 + digits + Math.abs(shift(90) - shift(80)) + 0.01);
  });

  test("of which reflected is not printed moves by as much as that leaves open", () => {
    // Between 12 and 32 °C reflected the rise of 58 over 45 °C at 0.97 is the same to 0.05 K: 13.33 by the equation.
    const rise = (r: number): number => corrected(58, { e: 0.97, r }) - corrected(45, { e: 0.97, r });
    expect(Math.abs(rise(12) - rise(32))).toBeLessThan(0.06);
    const given = ["apparent", "reference_apparent", "emissivity", "surrounding_air", "reference", "air_transmission"];
    const { show } = audited(
      [...given, "stated_rise"],
      [
        ["58.0", "45.0", 0.97, 22, "similar", 1, rise(22).toFixed(1)],
        ["58.0", "45.0", 0.97, 22, "similar", 1, "15.6"],
      ],
    );
    expect(show("number")).toEqual(["reproduced, reflected immaterial", "not reproduced, no usual slip"]);
  });

  test("whose air is not printed is not called a slip where the air would do", () => {
    // 1 m of air and more: transmission 0.98 at 20 °C, reflected 20 °C as stated.
    const stated = corrected(60, { e: 0.9, r: 20, t1: 0.98, ta: 20 });
    const { show } = audited(
      ["apparent", "emissivity", "reflected", "stated_temp"],
      [["60.0", 0.9, 20, stated.toFixed(1)]],
    );
    expect(show("number")[0]).toMatch(/^cannot be reproduced: needs air_transmission; between 6\d\.\d and 6\d\.\d °C$/);
    expect([show("verdict")[0], show("method")[0]]).toEqual(["cannot be reproduced", "sound"]);
  });
});

describe("a rise at load", () => {
  const headers = [
    ...["stated_temp", "stated_reference_temp", "reference", "load", "load_of_reference", "reference_load"],
    ...["surrounding_air", "exponent", "stated_rise", "stated_rise_at_load"],
  ];
  test("of the printed rise is that of the printed rise", () => {
    // 12.24 K is printed 12, and 12 · (100/45)^1.8 is 50.51; 12.24 would be 51.52.
    const row = ["52.24", "40.00", "similar", "45.00", "", "100.0", "", 1.8, "12", "50.51"];
    expect(audited(headers, [row]).show("number")[0]).toBe(
      "rise: reproduced; rise at load: reproduced from the stated rise as printed",
    );
  });

  // trade.md 6.3: rises over 25 °C of 30 K at 41 A and 13 K at 62 A, brought to 62 A: 63.16 − 13.00 = 50.16 K (n 1.8);
  // the difference scaled is 17 · (62/41)^1.8 = 35.79 K.
  const unequal = (air: Cell, stated: string): Cell[] => [
    ...["55.00", "38.00", "similar", "41.00", "62.00", "62.00", air, 1.8, "17.00", stated],
  ];
  test.each([
    [unequal("25.0", "50.2"), "reproduced", "sound"],
    [
      unequal("25.0", "35.8"),
      "method: the difference scaled in place of each rise would give it",
      "unequal currents: scaling the difference would give the number",
    ],
    [
      unequal("", "35.8"),
      "cannot be reproduced: needs surrounding_air",
      "unequal currents: scaling the difference would give the number",
    ],
  ])("of unequal currents %j: %s", (row, number, method) => {
    const { show } = audited(headers, [row]);
    expect(show("number")[0]).toBe(`rise: reproduced; rise at load: ${number}`);
    expect(show("method")[0]).toBe(method);
  });

  test("from no current is not projected, and not reproduced either", () => {
    const { show } = audited(headers, [
      ["60.0", "40.0", "similar", 0, "", 100, 25, 2, "", "40"],
      ["60.0", "40.0", "similar", 50, 0, 100, 25, 2, "", "40"],
    ]);
    expect(show("number")).toEqual([
      "cannot be reproduced: needs load above 0",
      "cannot be reproduced: needs load_of_reference above 0",
    ]);
  });

  test("names the slip that was made: loads upside down, the temperature scaled, on °F", () => {
    // 36 °F at 80 of 100 A and n 2: right 56.25; upside down 36 · 0.64 = 23.04; 140 · 1.5625 − 104 = 114.75.
    const row = (stated: string): Cell[] => ["140.0", "104.0", "similar", "80.0", "", "100.0", "", 2, "", stated];
    const { show } = audited(headers, [row("56.3"), row("23.0"), row("114.8")], [], "F");
    expect(show("number")).toEqual([
      "reproduced",
      "arithmetic: load and reference load swapped would give it",
      "method: the hot temperature scaled in place of its rise would give it",
    ]);
  });
});
