/** What the audit says of numbers that a report has rounded or cut off: an honest one is not accused. */
import type { Cell, Grid, Input } from "../../src/functions/contract.js";
import { EXPLAIN } from "../../src/functions/explain.js";
import { EXPLAIN_REPORT } from "../../src/functions/explain-report.js";
import { EXPLAIN_RISE } from "../../src/functions/explain-rise.js";
import { caseFrom, inSheet, object, seeded, settingsRow, SLIPS, type AuditCase } from "../support/slips.js";

/** 71.2 °C at emissivity 0.82, 24 °C reflected, 0.985 of air at 28 °C: 80.279 °C; at 0.95 73.847 °C. Planck's law by
 * quadrature, the inverse by bracketing, outside this code (numpy, scipy). */
const PUMP: Grid = [[71.2, 0.82, 24, 0.985, 28]];
const said = (stated: number, tolerance?: number, settings = PUMP): Cell | undefined =>
  EXPLAIN.evaluate([stated, settings, tolerance, undefined, "slip"])[0]?.[0];

describe("GREY.EXPLAIN of one number", () => {
  it("names an emissivity left as the camera starts up", () => {
    expect(said(73.8)).toMatch(/^emissivity 0\.95 as at start-up, all else as stated would give it/);
  });

  it("asks for the tolerance where a whole number matches nothing", () => {
    expect(said(77)).toBe("none of the usual slips; stated to whole °C? Then give tolerance 0.5");
    expect(said(77, 0.05)).toBe("none of the usual slips");
    expect(said(77.1)).toBe("none of the usual slips");
    // 170.6 °F is 77 °C; half a degree of that is 0.9 °F.
    const inF: Grid = [[160.16, 0.82, 75.2, 0.985, 82.4]];
    expect(EXPLAIN.evaluate([170.6, inF, undefined, undefined, "slip", "F"])).toEqual([
      ["none of the usual slips; stated to whole °C? Then give tolerance 0.9"],
    ]);
  });

  it("says that a whole number is as stated where it was rounded or cut off", () => {
    expect(said(80)).toBe("as stated, if rounded to whole °C: give tolerance 0.5");
    expect(said(80, 0.5)).toBe("as stated, no slip needed");
    expect(said(80, 0.05)).not.toMatch(/as stated/);
    // At an emissivity of 0.8252 the object is at 79.97 °C; 79 cuts it off.
    const near: Grid = [[71.2, 0.8252, 24, 0.985, 28]];
    expect(said(79, undefined, near)).toMatch(/^as stated, if cut off to whole °C, not rounded/);
    expect(said(79, 0.5, near)).toMatch(/^as stated, if cut off to whole °C, not rounded/);
    expect(said(79, 0.05, near)).not.toMatch(/cut off/);
    const table = EXPLAIN.evaluate([80, PUMP]);
    expect(table[1]?.[3]).toBe("if rounded to whole °C");
    expect(EXPLAIN.evaluate([79, near, 0.5])[1]?.[3]).toBe("if cut off to whole °C, not rounded");
  });

  it("says so of a rise", () => {
    // (55 − 37.5)·(62/41)^1.8 is 36.84 K; each rise at one load 50.3 K: 30·(62/41)^1.8 less the mean of 13 and 12.73.
    const rise = (stated: number, ...rest: Input[]): Cell | undefined =>
      EXPLAIN_RISE.evaluate([stated, [[38, 55, 37]], [[62, 41, 60]], 25, rest[0], "slip"])[0]?.[0];
    expect(rise(50)).toMatch(/^as stated, if rounded to whole K: give tolerance 0\.5/);
    expect(rise(27)).toBe("none of the usual slips; stated to whole K? Then give tolerance 0.5");
    expect(rise(27, 0.05)).toBe("none of the usual slips");
  });
});

type Print = (value: number) => number;
/** To a step of the sheet's own degrees. */
const rounded =
  (step: number): Print =>
  (value) =>
    Math.round(value / step) * step;
const toWholeF: Print = (celsius) => (Math.round(celsius * 1.8 + 32) - 32) / 1.8;
const toWholeC: Print = (fahrenheit) => Math.round((fahrenheit - 32) / 1.8) * 1.8 + 32;

/** Objects that a camera's scale holds, all in one band and one system of units. */
function rows(random: () => number, units: "C" | "F", count = 20): AuditCase[] {
  const found: AuditCase[] = [];
  while (found.length < count) {
    const g = caseFrom(random);
    if (g.units === units && g.band.join("-") === "7.5-14") found.push(g);
  }
  return found;
}
function report(cases: readonly AuditCase[], stated: readonly number[], tolerance?: number): Grid {
  return EXPLAIN_REPORT.evaluate([
    stated.map((value) => [value]),
    cases.map(settingsRow),
    tolerance,
    undefined,
    cases[0]?.units,
  ]);
}
const named = (table: Grid): Cell[] => table.slice(1).map(([slip = null]) => slip);

describe("GREY.EXPLAIN_REPORT of rounded numbers, tolerance left out", () => {
  test.each<[string, "C" | "F", Print, string]>([
    ["1 °C", "C", rounded(1), "all stated to whole °C: tolerance 0.5 K taken, as none is given"],
    ["1 °F", "F", rounded(1), "all stated to whole °F: tolerance 0.5 °F taken, as none is given"],
    ["0.5 °C", "C", rounded(0.5), "all stated to half °C: tolerance 0.25 K taken, as none is given"],
    ["0.5 °F", "F", rounded(0.5), "all stated to half °F: tolerance 0.25 °F taken, as none is given"],
    ["1 °F, brought to °C", "C", toWholeF, "all stated to whole °F: tolerance 0.278 K taken, as none is given"],
    ["1 °C, brought to °F", "F", toWholeC, "all stated to whole °C: tolerance 0.9 °F taken, as none is given"],
  ])("a clean report in steps of %s is as stated and nothing else", (_, units, print, note) => {
    const random = seeded(5);
    for (let round = 0; round < 10; round++) {
      for (const count of [1, 3, 20]) {
        const cases = rows(random, units, count);
        const table = report(
          cases,
          cases.map((g) => print(inSheet(object(g), g))),
        );
        expect(table[1]?.slice(0, 3)).toEqual(["as stated", count, count]);
        // One number alone may be whole in several ways.
        if (count === 20) expect(named(table)).toEqual(["as stated", note]);
        else expect(table).toHaveLength(3);
      }
    }
  });

  test.each<["C" | "F", string]>([
    [
      "C",
      "all stated to whole °C: tolerance 0.5 K taken, as none is given, and what half a digit of the readings (whole °C)",
    ],
    [
      "F",
      "all stated to whole °F: tolerance 0.5 °F taken, as none is given, and what half a digit of the readings (whole °F)",
    ],
  ])("a clean report is so where its readings are printed in whole °%s as well", (units, note) => {
    const random = seeded(15);
    for (let round = 0; round < 10; round++) {
      const cases = rows(random, units).filter(({ e }) => e > 0.5);
      // Recomputed from the readings as printed, where what is stated rests on what the camera had.
      const printed = cases.map((g): AuditCase => {
        const whole = Math.round(inSheet(g.a, g));
        return { ...g, a: units === "F" ? (whole - 32) / 1.8 : whole };
      });
      const table = report(
        printed,
        cases.map((g) => Math.round(inSheet(object(g), g))),
      );
      expect(named(table)).toEqual(["as stated", `${note} makes`]);
      expect(table[1]?.[1]).toBe(cases.length);
    }
  });

  it("takes a tenth as before and says nothing of it", () => {
    const cases = rows(seeded(6), "C");
    const table = report(
      cases,
      cases.map((g) => rounded(0.1)(object(g))),
    );
    expect(named(table)).toEqual(["as stated"]);
  });

  it("holds a report to the tolerance that is given", () => {
    const cases = rows(seeded(6), "C");
    const stated = cases.map((g) => rounded(1)(object(g)));
    expect(named(report(cases, stated, 0.5))).toEqual(["as stated"]);
    expect(Number(report(cases, stated, 0.05)[1]?.[1])).toBeLessThan(10);
  });

  it("still finds the slip of a report in whole degrees", () => {
    const cases = rows(seeded(8), "C");
    const start = "emissivity 0.95 as at start-up, all else as stated";
    const table = report(
      cases,
      cases.map((g) => rounded(1)(SLIPS[start]?.(g) ?? NaN)),
    );
    expect(table[1]?.[0]).toBe(start);
  });
});

describe("GREY.EXPLAIN_REPORT of numbers cut off", () => {
  const CUT = "as stated, but cut off and not rounded";
  test.each<[string, "C" | "F", number, number | undefined]>([
    ["whole °C", "C", 1, undefined],
    ["whole °C, tolerance 0.5", "C", 1, 0.5],
    ["whole °F", "F", 1, undefined],
    ["whole °F, tolerance 0.5", "F", 1, 0.5],
    ["half °C", "C", 0.5, undefined],
  ])("%s: no slip comes before that", (_, units, step, tolerance) => {
    const random = seeded(11);
    for (let round = 0; round < 10; round++) {
      const cases = rows(random, units);
      const table = report(
        cases,
        cases.map((g) => Math.floor(inSheet(object(g), g) / step) * step),
        tolerance,
      );
      expect(table[1]?.slice(0, 3)).toEqual([CUT, 20, 20]);
      expect(table[2]?.[0]).toBe("as stated");
    }
  });

  it("is not said of a tolerance finer than the digits, nor of a slip", () => {
    const cases = rows(seeded(12), "C");
    const floors = cases.map((g) => Math.floor(object(g)));
    expect(named(report(cases, floors, 0.05))).not.toContain(CUT);
    const twice = cases.map((g) => Math.floor(SLIPS["corrected twice"]?.(g) ?? NaN));
    expect(named(report(cases, twice))).not.toContain(CUT);
  });
});

describe("GREY.EXPLAIN_REPORT beside chance", () => {
  it("tells how many rows any of the slips would explain, by the chance that EXPLAIN has for each", () => {
    // Nineteen numbers that come from nowhere, and one that is the reading itself.
    const random = seeded(21);
    const cases = rows(random, "C");
    const stated = cases.map((g) => Math.round((object(g) + (random() * 2 - 1) * 20) * 100) / 100);
    stated[0] = cases[0]?.a ?? NaN;
    const table = report(cases, stated);
    expect(table[0]).toEqual(["slip", "rows explained", "rows", "median difference", "by chance"]);
    const any = table.slice(1).find(([slip, , shown]) => slip !== "as stated" && shown === 20);
    const expected = cases.reduce((sum, g, i) => {
      const lines = EXPLAIN.evaluate([stated[i], [settingsRow(g)]]);
      return sum + Number(lines.at(-1)?.[4]) - Number(lines[1]?.[4]);
    }, 0);
    expect(Math.abs(Number(any?.[4]) - expected)).toBeLessThan(0.06);
    // One row in twenty is what chance does.
    expect(any?.[1]).toBe(1);
    expect(Number(any?.[4])).toBeGreaterThan(0.9);
  });

  it("is reckoned over the rows left to explain, of as stated over all", () => {
    // Of as stated 0.1 of 40 K a row; the same in °F, where the same differences stand 1.8 times over.
    const cases = rows(seeded(3), "C", 4);
    const table = report(
      cases,
      cases.map((g, i) => Math.round((object(g) + (i < 3 ? 0 : 5)) * 100) / 100),
    );
    const own = table.find(([slip]) => slip === "as stated");
    expect(own?.[1]).toBe(3);
    expect(own?.[4]).toBeCloseTo(4 * 0.0025, 9);
    const inF = cases.map((g): AuditCase => ({ ...g, units: "F" }));
    const other = report(
      inF,
      inF.map((g, i) => Math.round((inSheet(object(g), g) + (i < 3 ? 0 : 9)) * 100) / 100),
    ).find(([slip]) => slip === "as stated");
    expect([other?.[1], other?.[4]]).toEqual([3, own?.[4]]);
    expect(Math.abs(Number(other?.[3]) - 1.8 * Number(own?.[3]))).toBeLessThan(0.02);
  });
});
