/**
 * greybody audit: the demo's report as a client would send it, under headers of the client's own, as text with decimal commas.
 * What is planted in it must be found, and nothing else (tests/support/audit-planted.ts).
 */
import { cellText } from "../../src/functions/check-names.js";
import { claims } from "../../src/templates/audit/demo.js";
import { GRADES_PLANTED, METHODS_PLANTED, SLIPS_PLANTED } from "../support/audit-planted.js";
import { CLI } from "../support/calc.js";
import { type AuditJson, auditJsonOf } from "../support/audit-json.js";
import { Folder } from "../support/recalc.js";
import { runNode } from "../support/run.js";

const folder = new Folder();
afterAll(() => folder.remove());
const audit = (...args: string[]) => runNode([CLI, "audit", ...args], { cwd: folder.path });

type Key = keyof (typeof claims)[number];
/** A client's headers, what ours they are, and the decimals printed. */
const COLUMNS: readonly (readonly [header: string, key: Key, decimals?: number])[] = [
  ["Equipment", "item"],
  ["IR image no.", "image"],
  ["Hot spot temp. [°C]", "stated_temp", 1],
  ["Ref. temperature [°C]", "stated_reference_temp", 1],
  ["ΔT [K]", "stated_rise", 1],
  ["Compared with", "reference"],
  ["ΔT at full load [K]", "stated_rise_at_load", 1],
  ["Severity", "stated_grade"],
  ["Apparent temp. [°C]", "apparent", 1],
  ["Apparent ref. temp. [°C]", "reference_apparent", 1],
  ["ε", "emissivity", 2],
  ["T refl. [°C]", "reflected", 0],
  ["Ambient [°C]", "surrounding_air", 1],
  ["Current [A]", "load", 0],
  ["Max. current [A]", "reference_load", 0],
  ["Surface", "material"],
  ["IR window transmission", "window_transmission", 2],
  ["Window temp. [°C]", "window_temp", 0],
  ["Access", "access"],
];
const WORDS: Readonly<Record<string, string>> = {
  similar: "adjacent phase",
  ambient: "ambient air",
  window: "IR window",
};

function printed(row: number, key: Key, decimals: number | undefined): string {
  const value = claims[row]![key] ?? null;
  if (value === null) return "";
  // Row 27 was read at the end of the camera's range.
  const before = row === 26 && key === "apparent" ? ">" : "";
  if (typeof value === "number" && decimals !== undefined) return before + value.toFixed(decimals).replace(".", ",");
  const text = cellText(value);
  return WORDS[text] ?? text;
}

const JOB = ["exponent=1.8", "date=2026-03-03", "calibrated=2025-09-01", "distance=1", "humidity=45"];
const jobArgs = JOB.flatMap((line) => ["--job", line]);

describe("a client's CSV with decimal commas", () => {
  let found: AuditJson;
  beforeAll(async () => {
    const lines = [
      "Thermographic survey, bakery (invented)",
      "",
      [...COLUMNS.map(([header]) => header), "Remarks"].join(";"),
      ...claims.map((_, row) =>
        [...COLUMNS.map(([, key, decimals]) => `"${printed(row, key, decimals)}"`), "-"].join(";"),
      ),
    ];
    folder.put("client.csv", new TextEncoder().encode(lines.join("\r\n")));
    const outcome = await audit("client.csv", "-o", "findings.json", ...jobArgs);
    expect(outcome.stderr).toBe("");
    // Not everything is reproduced.
    expect(outcome.status).toBe(1);
    expect(outcome.stdout).toContain("headers in line 3, 40 rows, in °C");
    found = auditJsonOf(folder, "findings.json");
  }, 60_000);

  test("every header is taken for what it is, and the remarks for nothing", () => {
    expect(found.mapping.map(({ header, column }) => [header, column])).toEqual([
      ...COLUMNS.map(([header, key]) => [header, key]),
      ["Remarks", null],
    ]);
  });

  test("every planted slip, grade and method is found", () => {
    for (const [row, , , words] of SLIPS_PLANTED) {
      const slips = found.rows.filter((one) => one.row === row).flatMap((one) => one.slips);
      expect([row, slips.join("; ")]).toEqual([row, expect.stringContaining(`${words} would give`)]);
    }
    for (const [row, words] of Object.entries(GRADES_PLANTED))
      expect(found.rows.find((one) => one.row === Number(row))?.grade).toContain(words);
    for (const [row, words] of Object.entries(METHODS_PLANTED))
      expect(found.rows.find((one) => one.row === Number(row))?.method).toContain(words);
  });

  test("no other row is accused", () => {
    // Row 27 was read at the end of the camera's range: nobody can reproduce it.
    const planted = new Set([27, ...SLIPS_PLANTED.map(([row]) => row), ...Object.keys(GRADES_PLANTED).map(Number)]);
    const others = new Set(found.rows.filter(({ reproduced }) => !reproduced).map(({ row }) => row));
    expect([...others].filter((row) => !planted.has(row))).toEqual([]);
    expect(found.rows.filter(({ row }) => !planted.has(row)).flatMap(({ slips }) => slips)).toEqual([]);
  });

  test("the reading beyond the range is understood and shown; one image twice and one emissivity are told", () => {
    expect(found.rows.find(({ row }) => row === 27)?.understood).toContain('apparent ">72,8" as 72.8 °C, at least');
    const whole = found.report_findings.map(({ what }) => what);
    expect(whole).toEqual([expect.stringMatching(/^emissivity 0\.95 on/), "image D-0234 on rows 34, 35"]);
  });
});
