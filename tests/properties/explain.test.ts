/** The audit on hundreds of random cases: a slip that was made is found, and chance finds no more than is said. */
import { EXPLAIN } from "../../src/functions/explain.js";
import { EXPLAIN_REPORT } from "../../src/functions/explain-report.js";
import type { Cell, Grid } from "../../src/functions/contract.js";
import { caseFrom, object, seeded, settingsRow, SLIPS, stated, inSheet, type AuditCase } from "../support/slips.js";

const bandText = ({ band }: AuditCase): string => band.join("-");
const explain = (value: number, g: AuditCase, show: string): Grid =>
  EXPLAIN.evaluate([value, [settingsRow(g)], undefined, bandText(g), show, g.units]);
const slipsOf = (g: AuditCase): [words: string, gives: number][] =>
  Object.entries(SLIPS)
    .map(([words, gives]): [string, number] => [words, gives(g)])
    // A printed temperature is above absolute zero; a slip of less than 0.2 K does not show.
    .filter(([, gives]) => gives > -273 && gives < 9000 && Math.abs(gives - object(g)) >= 0.2);

test("a slip that was made is among the matches in 97 % of 500 cases and more", () => {
  const random = seeded(20261126);
  const missed: string[] = [];
  const made = new Set<string>();
  for (let count = 0; count < 500;) {
    const g = caseFrom(random);
    const slips = slipsOf(g);
    const [words, gives] = slips[Math.floor(random() * slips.length)] ?? ["", NaN];
    if (words === "") continue;
    count++;
    made.add(words);
    const row = explain(stated(gives, g), g, "table").find(([slip]) => slip === words);
    if (row?.[3] !== "yes") missed.push(`${words}: ${JSON.stringify(row)} of ${gives} for ${JSON.stringify(g)}`);
  }
  expect(missed.slice(0, 15)).toEqual([]);
  // Every slip had its turn.
  expect(made.size).toBe(Object.keys(SLIPS).length);
});

test.each([
  ["as it comes", (value: number) => value],
  ["printed to 0.1", (value: number) => Math.round(value * 10) / 10],
])("without a slip, matches come as often as chance says: %s", (_, print) => {
  const random = seeded(4711);
  let matched = 0;
  let expected = 0;
  const draws = 1200;
  for (let count = 0; count < draws;) {
    const g = caseFrom(random);
    const right = object(g);
    const drawn = right + (random() * 2 - 1) * 20;
    if (!(drawn > -273)) continue;
    count++;
    const table = explain(print(inSheet(drawn, g)), g, "table");
    matched += table.some(([, , , matches]) => matches === "yes") ? 1 : 0;
    expected += table.at(-1)?.[4] as number;
  }
  expect(matched / draws).toBeLessThanOrEqual(expected / draws + 0.02);
  expect(matched / draws).toBeGreaterThanOrEqual(expected / draws - 0.02);
  // What is said is a number to go by: some in a hundred.
  expect(expected / draws).toBeLessThan(0.12);
});

describe("a report of 20 rows in which three carry other slips", () => {
  const report = (rows: readonly (readonly [number, AuditCase])[]): Grid =>
    EXPLAIN_REPORT.evaluate([
      rows.map(([value]): Cell[] => [value]),
      rows.map(([, g]) => settingsRow(g)),
      undefined,
      bandText(rows[0]![1]),
      rows[0]![1].units,
    ]);

  /** Twenty rows, the slip in seventeen; undefined where it shows in fewer than five of them. */
  function rowsWith(words: string, random: () => number): (readonly [number, AuditCase])[] | undefined {
    const rows: (readonly [number, AuditCase])[] = [];
    let showing = 0;
    const first = caseFrom(random);
    for (let tries = 0; rows.length < 20 && tries < 2000; tries++) {
      const g = caseFrom(random);
      if (g.units !== first.units || bandText(g) !== bandText(first)) continue;
      const others = slipsOf(g).filter(([other]) => other !== words);
      const odd = others[Math.floor(random() * others.length)];
      const own = SLIPS[words]?.(g) ?? NaN;
      const shows = Math.abs(own - object(g)) >= 0.2;
      // Where there is no room for the slip the row is as it should be.
      const value = rows.length < 3 ? odd?.[1] : Number.isNaN(own) ? object(g) : own;
      if (value === undefined || !(value > -273 && value < 9000)) continue;
      if (rows.length >= 3 && shows) showing++;
      rows.push([stated(value, g), g]);
    }
    return rows.length === 20 && showing >= 5 ? rows : undefined;
  }

  test("its common slip comes first in 97 % of reports and more", () => {
    const random = seeded(99);
    const missed: string[] = [];
    let count = 0;
    for (let round = 0; round < 3; round++) {
      for (const words of Object.keys(SLIPS)) {
        const rows = rowsWith(words, random);
        if (!rows) continue;
        count++;
        const [, best] = report(rows);
        if (best?.[0] !== words) missed.push(`${words}: ${JSON.stringify(report(rows).slice(1, 4))}`);
      }
    }
    expect(count).toBeGreaterThan(60);
    expect({ count, missed }).toEqual({ count, missed: missed.length <= 0.03 * count ? missed : [] });
  });

  test("and where nothing is wrong in seventeen, as stated comes first", () => {
    const random = seeded(7);
    for (let round = 0; round < 30; round++) {
      const rows = rowsWith("the reading itself, not corrected", random);
      if (!rows) continue;
      const sound = rows.map(([value, g], i) => [i < 3 ? value : stated(object(g), g), g] as const);
      expect(report(sound)[1]?.slice(0, 1)).toEqual(["as stated"]);
      expect(Number(report(sound)[1]?.[1])).toBeGreaterThanOrEqual(17);
    }
  });
});
