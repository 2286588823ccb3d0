/** A report of one row or a few, printed to tenths, is not accused by what the rounding of its readings makes. */
import { EXPLAIN_REPORT } from "../../src/functions/explain-report.js";
import { caseFrom, inSheet, object, seeded, settingsRow } from "../support/slips.js";

describe("EXPLAIN_REPORT of few rows printed to tenths", () => {
  test("puts no slip before as stated where the readings' rounding would do", () => {
    const random = seeded(29);
    let apart = 0;
    for (let n = 0; n < 60; n++) {
      const g = caseFrom(random);
      if (!(object(g) > g.r + 2)) continue;
      // The camera knew more digits of the reading than the report prints.
      const degree = g.units === "F" ? 1 / 1.8 : 1;
      const honest = Number(inSheet(object({ ...g, a: g.a + 0.045 * degree }), g).toFixed(1));
      const table = EXPLAIN_REPORT.evaluate([[[honest]], [settingsRow(g)], null, g.band.join("-"), g.units]);
      expect([g, table[1]?.[0]]).toEqual([g, "as stated"]);
      if (table[1]?.[1] === 1) continue;
      expect(table.at(-1)?.[0]).toMatch(
        /^1 row is as stated if the readings were rounded to tenths of °[CF]: give tolerance/,
      );
      apart++;
    }
    expect(apart).toBeGreaterThan(20);
  });

  test("still names what a reading's rounding does not explain", () => {
    // trade.md 6.7: through a window of 0.55, which was left out.
    const stated = [[57.95], [45.45], [39.39]];
    const settings = [56.5, 44.5, 38.7].map((a) => [a, 0.95, 25, 1, 25, 0.55, 25]);
    expect(EXPLAIN_REPORT.evaluate([stated, settings, null, "8-14"])[1]?.slice(0, 3)).toEqual([
      "window left out",
      3,
      3,
    ]);
  });
});
