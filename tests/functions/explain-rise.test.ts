/** What EXPLAIN_RISE says where there is no single reference, and where there is too little load to project from. */
import type { Cell, Grid } from "../../src/functions/contract.js";
import { EXPLAIN_RISE } from "../../src/functions/explain-rise.js";

const table = (stated: number, temps: number[], loads: number[], tolerance?: number): Grid =>
  EXPLAIN_RISE.evaluate([stated, [temps], [loads], 25, tolerance]);
const told = (show: string, stated: number, temps: number[], loads: number[], tolerance = 0.05): Cell | undefined =>
  EXPLAIN_RISE.evaluate([stated, [temps], [loads], 25, tolerance, show])[0]?.[0];

describe("two hot phases of three: 44, 75 and 75 °C at one load", () => {
  const temps = [44, 75, 75];
  const even = [100, 100, 100];
  const NONE = "no single reference, the others are 31 K apart; ";

  it("reads hot − lowest beside hot − mean, neither as a slip", () => {
    // 75 − (44 + 75)/2 = 15.5; 75 − 44 = 31.
    const [, mean, lowest] = table(31, temps, even);
    expect(mean?.slice(0, 4)).toEqual([
      "as stated, one reading: hot − mean of the others; no single reference, the others are 31 K apart",
      15.5,
      15.5,
      "no",
    ]);
    expect(lowest?.slice(0, 4)).toEqual(["as stated, the other reading: hot − lowest", 31, 0, "yes"]);
    expect(told("slip", 31, temps, even)).toBe(`${NONE}hot − lowest, no slip needed`);
    expect(told("slip", 15.5, temps, even)).toBe(`${NONE}hot − mean of the others, no slip needed`);
    expect(told("count", 31, temps, even)).toBe(0);
    expect(told("count", 15.5, temps, even)).toBe(0);
  });

  it("lists slips that come to the other reading as such that would not show", () => {
    const lines = table(31, temps, even);
    expect(lines.find(([slip]) => slip === "hot − lowest of three, not adjusted for load")?.[3]).toBe("would not show");
    expect(lines.some(([slip]) => slip === "hot − lowest of three")).toBe(false);
  });

  it("says it before any slip", () => {
    expect(told("slip", 50, temps, even)).toMatch(
      /^no single reference, the others are 31 K apart; over air in place of similar would give it/,
    );
    expect(told("slip", 40.2, temps, even)).toBe(`${NONE}none of the usual slips`);
    const inF = EXPLAIN_RISE.evaluate([55.8, [[111.2, 167, 167]], [even], 77, undefined, "slip", "F"]);
    expect(inF).toEqual([["no single reference, the others are 56 °F apart; hot − lowest, no slip needed"]]);
  });

  it("reads a rise rounded to whole degrees as the reading that it fits", () => {
    const rounded = EXPLAIN_RISE.evaluate([31, [[44.2, 75, 75.4]], [even], 25, undefined, "slip"]);
    expect(rounded[0]?.[0]).toMatch(/; as stated, the other reading: hot − lowest, if rounded to whole K: give /);
  });

  it.each<[string, number[], number[], boolean]>([
    ["others 3 K apart", [75, 34, 31], even, true],
    ["others 3.1 K apart", [75, 34.1, 31], even, false],
    // 15 % of 30 K is 4.5 K.
    ["others 4.4 K apart at a rise of 30 K", [90, 55, 50.6], even, true],
    ["others 4.6 K apart at a rise of 30 K", [90, 55, 50.4], even, false],
    // 20 K at 50 A is 20·2^1.8 = 69.6 K at 100 A, beside 68 K.
    ["others alike at one load only", [125, 45, 93], [100, 50, 100], true],
    ["others alike as found only", [125, 45, 45], [100, 60, 100], false],
  ])("%s", (_, temps, loads, single) => {
    expect(table(31, temps, loads)[1]?.[0]).toMatch(
      single ? /^as stated: each rise at one load/ : /no single reference/,
    );
  });

  it("leaves hot − lowest a slip where the others are alike", () => {
    // 75 − 36 = 39 where 75 − (38 + 36)/2 = 38.
    expect(told("slip", 39, [38, 75, 36], even)).toMatch(/^hot − lowest of three would give it/);
  });
});

describe("30 A of 131 A", () => {
  const temps = [38, 55, 37];
  const loads = [131, 30, 120];

  it("is not projected, as PHASE_RISE does not, and what leaves the load alone is judged", () => {
    const lines = table(17.5, temps, loads);
    expect(lines[1]).toEqual(["as stated, 23 % load: not projected", "no answer", "", "no", ""]);
    expect(lines[2]?.slice(0, 4)).toEqual(["not adjusted for load", 17.5, 0, "yes"]);
    const gives = lines.slice(2).map((line) => Number(line[1]));
    // 30·(131/30)^1.8 = 427 K, 582.8 K with 2 in place of 1.8: nobody is told such a number.
    expect(Math.max(...gives)).toBeLessThanOrEqual(30);
    expect(told("slip", 17.5, temps, loads)).toMatch(/^23 % load: not projected; not adjusted for load would give it/);
    expect(told("slip", 582.8, temps, loads)).toBe("23 % load: not projected; none of the usual slips");
  });

  it("is projected from 40 % on", () => {
    expect(table(17.5, temps, [75, 30, 75])[1]?.[1]).toBeCloseTo(30 * 2.5 ** 1.8 - 12.5, 9);
    expect(table(17.5, temps, [75.1, 30, 75])[1]?.[1]).toBe("no answer");
  });

  it("holds for a reference load above all three, where the largest load is still judged", () => {
    // Brought to 62 A in place of 205: 30·(62/41)^1.8 − (13 + 12·(62/60)^1.8)/2 = 50.34 K.
    const lines = EXPLAIN_RISE.evaluate([50.3, [temps], [[62, 41, 60, 205]], 25]);
    expect(lines[1]?.slice(0, 2)).toEqual(["as stated, 20 % load: not projected", "no answer"]);
    const largest = lines.find(([slip]) => slip === "brought to the largest load in place of the reference load");
    expect(largest?.[1]).toBeCloseTo(30 * (62 / 41) ** 1.8 - (13 + 12 * (62 / 60) ** 1.8) / 2, 9);
  });

  it("says of a phase without current that it has none", () => {
    expect(table(17.5, temps, [62, 0, 60])[1]?.[0]).toBe("as stated, a phase without current: not projected");
  });
});
