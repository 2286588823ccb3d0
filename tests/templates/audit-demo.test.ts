/**
 * The demo audit: what is planted in its report is found, and nothing else. What each planted number comes to stands in
 * tests/support/audit-planted.ts.
 */
import { claims, demoAudit } from "../../src/templates/audit/demo.js";
import { GRADES_PLANTED, METHODS_PLANTED, planted as valueOf, SLIPS_PLANTED } from "../support/audit-planted.js";
import { brokenRules } from "../support/package-rules.js";
import { type Worked, workedOut } from "../support/worked.js";

test.each(SLIPS_PLANTED)("row %d: %s is what it is said to be", (row, key, value) => {
  expect(valueOf(row, key)).toBeCloseTo(value(), 1);
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
    // Row 27 is marked as read at the end of the camera's range: nobody can recompute it.
    expect(column("verdict")[26]).toBe("cannot be reproduced");
    planted.add(27);
    expect(new Set(others("verdict"))).toEqual(new Set(["reproduced"]));
    expect(new Set(others("slips"))).toEqual(new Set([""]));
    const methods = column("method").flatMap((words, at) =>
      planted.has(at + 1) || words === "sound" ? [] : [[at + 1, words]],
    );
    expect(methods).toEqual([[16, "projected from too little load"]]);
    // Of a planted slip in a temperature the grade still follows, and the other way round.
    const grades = column("grade").flatMap((words, at) => (words === "follows" ? [] : [at + 1]));
    expect(grades).toEqual(Object.keys(GRADES_PLANTED).map(Number));
  });

  test("sends what is over the whole report: one emissivity over many materials, one image twice", () => {
    const found = done.block("Findings", "B1", "B40").map(([cell]) => String(cell ?? ""));
    const whole = found.filter((words) => /materials|^image|explain/.test(words));
    expect(whole).toEqual([
      expect.stringMatching(/^emissivity 0\.95 on \d+ rows of \d materials\. /),
      expect.stringMatching(/^image D-0234 on rows 34, 35\. .*Ask/),
    ]);
    expect(["audit_rows", "audit_reproduced", "audit_open", "audit_not"].map((name) => done.named(name))).toEqual([
      40, 24, 1, 15,
    ]);
  });
});
