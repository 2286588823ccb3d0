/**
 * The demo audit: what is planted in its report is found, and nothing else. What each planted number comes to is worked out
 * here from the row's own inputs, by tests/support/slips.ts over the exact radiance or by hand.
 */
import { airTransmission } from "../../src/core/air/transmission.js";
import { flatBand } from "../../src/core/planck/band.js";
import { claims, demoAudit } from "../../src/templates/audit/demo.js";
import { type AuditCase, object, SLIPS } from "../support/slips.js";
import { brokenRules } from "../support/package-rules.js";
import { type Worked, workedOut } from "../support/worked.js";

const BAND: AuditCase["band"] = [7.5, 14];
const number = (row: number, key: keyof (typeof claims)[number]): number => Number(claims[row - 1]![key]);

function caseOf(row: number, apparent = number(row, "apparent")): AuditCase {
  const air = number(row, "surrounding_air");
  const t1 = airTransmission({ distance: 1, airTemp: air + 273.15, humidity: 0.45 }, flatBand(...BAND));
  const window =
    claims[row - 1]!.window_transmission === undefined
      ? {}
      : { tw: number(row, "window_transmission"), win: number(row, "window_temp") };
  return {
    a: apparent,
    e: number(row, "emissivity"),
    r: number(row, "reflected"),
    t1,
    ta: air,
    tw: 1,
    win: undefined,
    rho: 0,
    rc: undefined,
    t2: 1,
    band: BAND,
    units: "C",
    ...window,
  };
}
const hot = (row: number): number => object(caseOf(row));
const rise = (row: number): number => hot(row) - object(caseOf(row, number(row, "reference_apparent")));
const ratio = (row: number): number => number(row, "reference_load") / number(row, "load");

/** Row, column, what it comes to, and the words that the audit must say. */
const SLIPS_PLANTED: readonly [
  row: number,
  key: "stated_temp" | "stated_rise" | "stated_rise_at_load",
  value: () => number,
  words: string,
][] = [
  [3, "stated_temp", () => number(3, "apparent"), "the reading itself, not corrected"],
  [
    8,
    "stated_temp",
    () => SLIPS["reflected temperature 20 °C (68 °F)"]!(caseOf(8)),
    "reflected temperature 20 °C (68 °F)",
  ],
  [12, "stated_temp", () => SLIPS["corrected twice"]!(caseOf(12)), "corrected twice"],
  [18, "stated_rise", () => number(18, "apparent") - number(18, "reference_apparent"), "subtracted before corrected"],
  [
    20,
    "stated_temp",
    () => SLIPS["reflected temperature × 1.8 + 32: °F taken for °C"]!(caseOf(20)),
    "reflected temperature × 1.8 + 32: °F taken for °C",
  ],
  [23, "stated_rise", () => rise(23) * 1.8, "× 1.8 once too often"],
  [24, "stated_rise", () => hot(24) - number(24, "surrounding_air"), "over air in place of similar"],
  [30, "stated_rise_at_load", () => rise(30) * ratio(30) ** -1.8, "load and reference load swapped"],
  [33, "stated_rise_at_load", () => rise(33) * ratio(33) ** 3.6, "adjusted for load twice"],
  [
    36,
    "stated_temp",
    () => SLIPS["emissivity 0.95 as at start-up, all else as stated"]!(caseOf(36)),
    "emissivity 0.95 as at start-up, all else as stated",
  ],
  [38, "stated_temp", () => SLIPS["window left out"]!(caseOf(38)), "window left out"],
];
const GRADES_PLANTED: Readonly<Record<number, string>> = {
  9: "follows from the rise at load, not from the rise found",
  26: "other column: over similar it would follow",
  28: "follows only if rounded first, to 1 K",
  31: "does not follow",
};
/** Projected from 15 of 40 A. */
const METHODS_PLANTED: Readonly<Record<number, string>> = { 16: "projected from too little load" };

test.each(SLIPS_PLANTED)("row %d: %s is what it is said to be", (row, key, value) => {
  expect(number(row, key)).toBeCloseTo(value(), 1);
});

describe("the template", () => {
  let done: Worked;
  beforeAll(async () => {
    done = await workedOut(demoAudit());
  }, 120_000);
  const column = (key: string): string[] => done.column("ClaimList", key).map((cell) => String(cell ?? ""));

  test("has 40 rows, keeps Excel's rules and shows no error value", () => {
    expect(claims).toHaveLength(40);
    expect(brokenRules(done.bytes)).toEqual([]);
    expect(done.errors()).toEqual([]);
  });

  test("finds every planted slip", () => {
    const slips = column("slips");
    for (const [row, , , words] of SLIPS_PLANTED)
      expect([row, slips[row - 1]]).toEqual([row, expect.stringContaining(`${words} would give`)]);
  });

  test("finds every planted grade and method", () => {
    const [grades, methods] = [column("grade"), column("method")];
    for (const [row, words] of Object.entries(GRADES_PLANTED))
      expect([row, grades[Number(row) - 1]]).toEqual([row, expect.stringContaining(words)]);
    for (const [row, words] of Object.entries(METHODS_PLANTED))
      expect([row, methods[Number(row) - 1]]).toEqual([row, words]);
  });

  test("accuses no other row of anything", () => {
    const planted = new Set([...SLIPS_PLANTED.map(([row]) => row), ...Object.keys(GRADES_PLANTED).map(Number)]);
    const others = (key: string): string[] => column(key).filter((_, at) => !planted.has(at + 1));
    expect(new Set(others("verdict"))).toEqual(new Set(["reproduced"]));
    expect(new Set(others("slips"))).toEqual(new Set([""]));
    const methods = column("method").flatMap((words, at) =>
      planted.has(at + 1) || words === "sound" ? [] : [[at + 1, words]],
    );
    expect(methods).toEqual([
      [16, "projected from too little load"],
      [27, "reading at the camera's limit given as a value"],
    ]);
    // Of a planted slip in a temperature the grade still follows, and the other way round.
    const grades = column("grade").flatMap((words, at) => (words === "follows" ? [] : [at + 1]));
    expect(grades).toEqual(Object.keys(GRADES_PLANTED).map(Number));
  });

  test("sends what is over the whole report: one emissivity over many materials, one image twice", () => {
    const found = done.block("Findings", "B1", "B40").map(([cell]) => String(cell ?? ""));
    const whole = found.filter((words) => /materials|^image|explain/.test(words));
    expect(whole).toEqual([
      expect.stringMatching(/^emissivity 0\.95 on \d+ rows of \d materials$/),
      "image D-0234 on rows 34, 35",
    ]);
    expect(["audit_rows", "audit_reproduced", "audit_not"].map((name) => done.named(name))).toEqual([40, 25, 15]);
  });
});
