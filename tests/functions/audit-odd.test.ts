/** AUDIT over what reports hold in practice: odd numbers, mixed digits, blank rows, settings that cannot be, times of day. */
import { airTransmission } from "../../src/core/air/transmission.js";
import { flatBand } from "../../src/core/planck/band.js";
import { AUDIT } from "../../src/functions/audit-call.js";
import { auditReport } from "../../src/functions/audit-report.js";
import { auditCells, auditFindings } from "../../src/functions/audit-shown.js";
import type { Cell } from "../../src/functions/contract.js";
import { type AuditCase, object, SLIPS } from "../support/slips.js";

type Row = readonly Cell[];

const CASE: AuditCase = {
  ...{ a: 58, e: 0.95, r: 25, t1: 1, ta: 20, tw: 1, win: undefined, rho: 0, rc: undefined, t2: 1 },
  ...{ band: [7.5, 14], units: "C" },
};

function audited(headers: readonly Cell[], rows: readonly Row[], job: readonly Row[] = []) {
  const report = auditReport(headers, rows, job, "C");
  return { report, show: (name: string): Cell[] => auditCells(report, name).map(([cell]) => cell!) };
}

const SETTINGS = ["apparent", "emissivity", "reflected", "air_transmission", "path_air", "stated_temp"];
const of = (apparent: Cell, stated: Cell): Row => [apparent, 0.85, 22, 0.98, 20, stated];

test("no number of a row ends the whole audit", () => {
  // 58 °C: 64.132 (physics.md 2).
  const { show } = audited(SETTINGS, [
    of(58, -300),
    of(58, 99999),
    of(-300, 64.1),
    of(5_000_000, 64.1),
    of(58, 64.132),
    of({ error: "#N/A", message: "" }, 64.1),
  ]);
  expect(show("verdict")).toEqual([...Array<string>(4).fill("not reproduced"), "reproduced", "cannot be reproduced"]);
});

test("two programs' numbers with all their digits agree to a thousandth", () => {
  // physics.md 2 has 64.1319672049731; in one band no band moves it.
  const full = (stated: number): Row => [58.000001, 1, 22, 1, 20, stated];
  const { show } = audited(SETTINGS, [full(58.0000012), full(58.0123456)], [["band", "8-14"]]);
  expect(show("verdict")).toEqual(["reproduced", "not reproduced"]);
});

describe("digits that a column was printed to", () => {
  const half = (rows: readonly Row[], row = 0): number => {
    const { report } = audited(["stated_rise"], rows);
    return report.rows[row]!.audit!.claim.statedRise!.half;
  };
  test.each<[string, Cell[], number]>([
    ["58.0 among tenths is shown as 58", [58, 57.9, 60.1, 44.3], 0.05],
    ["one number computed beside those printed says nothing", [12.4, 57.9 - 45.5, 7.1234567891, 3.2], 0.05],
    ["one of two decimals does not make the others so", [12.4, 10.25, 11.1, 9.9], 0.05],
    ["whole numbers", [12, 10, 11, 9.5], 0.5],
  ])("%s", (_, numbers, expected) => {
    expect(half(numbers.map((one) => [one]))).toBeCloseTo(expected, 12);
  });
  test("a number computed is read to the digits that it means", () => {
    expect(half([[57.9 - 45.5]])).toBeCloseTo(0.05, 12);
  });
});

test("blank rows, ragged rows and headers said twice are calm", () => {
  const headers = ["Apparent [°C]", "emissivity ", "REFLECTED", "stated temp", "remark of theirs", "apparent", null];
  const { report, show } = audited(headers, [[58, 0.95, 22, 59.6, 1, 70], [null, "", " "], [], ["", "", "", "", 5]]);
  expect(show("verdict")).toEqual(["reproduced", "", "", ""]);
  expect(report.notRead).toEqual(["remark of theirs", "apparent"]);
});

test("what stands in a row and is no number is told, and the row is not called empty or right", () => {
  const { show } = audited(["apparent", "stated_temp"], [["see photo", ""]]);
  expect([show("verdict")[0], show("missing")[0]]).toEqual(["not read", 'apparent "see photo"']);
  const table = AUDIT.evaluate([
    [["apparent", "emissivity", "reflected", "stated_temp"]],
    [["see photo", 0.95, 22, 60]],
  ]) as Cell[][];
  expect(table[1]![10]).toContain('apparent "see photo"');
});

test("values of the job that cannot be are told and not used", () => {
  const { report } = audited(
    ["apparent", "reflected", "stated_temp"],
    [[58, 22, 59.6]],
    [
      ["emissivity", 95],
      ["exponent", 18],
      ["band", "wide"],
    ],
  );
  expect(report.notRead).toEqual(['band "wide"', "job_emissivity 95 cannot be", "job_exponent 18 cannot be"]);
  expect(report.rows[0]!.audit!.claim.settings.emissivity).toBeUndefined();
  expect(auditFindings(report)[1]).toEqual([
    'not read: band "wide"',
    "The value is none that is read.",
    "Correct it, or leave it.",
  ]);
});

describe("over the whole report", () => {
  const slips = (headers: readonly Cell[], rows: readonly Row[]): string[] =>
    audited(headers, rows).report.findings.flatMap((one) =>
      one.id === "slip" ? [`${one.slip} ${one.rows} of ${one.of}`] : [],
    );

  test("a slip of rises counts the rows that state one, and only beyond chance", () => {
    const headers = ["stated_temp", "stated_reference_temp", "reference", "surrounding_air", "stated_rise"];
    // 60.0 − 40.0 in air of 25.0: 20.0; × 1.8 is 36.0.
    const right = ["60.0", "40.0", "similar", "25.0", "20.0"];
    const wrong = ["60.0", "40.0", "similar", "25.0", "36.0"];
    const none = ["60.0", "40.0", "similar", "25.0", ""];
    expect(slips(headers, [right, wrong, none, wrong, right])).toEqual(["times-1.8 2 of 4"]);
    expect(slips(headers, [right, wrong, none, right])).toEqual([]);
    // To 5 K nothing is beyond chance: of two rows one slip has 20 · (5.05/20)² of it.
    const job = [["stated_to", 10]];
    expect(audited(headers, [wrong, wrong], job).report.findings).toEqual([]);
  });

  test("rows of which a setting is missing accuse nobody", () => {
    // Taken at 30 °C reflected, which the report does not print: some 0.15 K from what 22 °C would give.
    const headers = ["apparent", "emissivity", "surrounding_air", "stated_temp", "distance", "humidity"];
    const t1 = airTransmission({ distance: 1, airTemp: 295.15, humidity: 0.45 }, flatBand(7.5, 14));
    const rows = Array.from({ length: 6 }, (_, i): Row => {
      const stated = object({ ...CASE, a: 50 + i, e: 0.97, r: 30, t1, ta: 22 });
      return [`${50 + i}.0`, 0.97, 22, stated.toFixed(1), 1, 45];
    });
    expect(slips(headers, rows)).toEqual([]);
  });

  test("a time of day does not make a day late", () => {
    const { report } = audited(
      ["date", "stated_rise"],
      [
        [46_365.6, 3],
        [46_000.3, 3],
        [46_366.2, 3],
      ],
      [
        ["date", 46_000.7],
        ["calibrated", 46_000],
      ],
    );
    expect(report.findings).toEqual([{ id: "calibration-out", rows: [3] }]);
  });
});

test("a slip of units is arithmetic, no other method", () => {
  // Air of 45 °C that absorbs a tenth, read as 113.
  const words = "air temperature × 1.8 + 32: °F taken for °C";
  const g = { ...CASE, a: 65, t1: 0.9, ta: 45 };
  const row = ["65.0", g.e, g.r, g.t1, g.ta, SLIPS[words]!(g).toFixed(1)];
  expect(Math.abs(SLIPS[words]!(g) - object(g))).toBeGreaterThan(5);
  const { show } = audited(SETTINGS, [row]);
  expect([show("number")[0], show("method")[0]]).toEqual([`arithmetic: ${words} would give it`, "sound"]);
});

test("a setting that is not printed hides no slip that hangs on none", () => {
  const headers = ["apparent", "emissivity", "surrounding_air", "stated_temp"];
  const { show } = audited(headers, [
    ["58.0", 0.6, 22, "58.0"],
    ["58.0", 0.6, 22, "75.0"],
  ]);
  expect(show("number")).toEqual([
    "method: the reading itself, not corrected or emissivity 1 would give it",
    expect.stringMatching(/^cannot be reproduced: needs reflected/),
  ]);
});
