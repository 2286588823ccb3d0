/** MONTE_CARLO and RISE_UNCERTAINTY in a sheet: rows, what is shared, what is told. */
import type { Cell, Grid, Input } from "../../src/functions/contract.js";
import { isCellError } from "../../src/functions/contract.js";
import { findFunction } from "../../src/functions/catalogue.js";
import { passing } from "./fixture.js";

const ask = (name: string, ...inputs: Input[]): Grid => findFunction(name)?.evaluate(inputs) ?? [];
const told = (cell: Cell | undefined): string => (isCellError(cell) ? `${cell.error} ${cell.message}` : String(cell));
const toldFirst = (name: string, ...inputs: Input[]): string => told(ask(name, ...inputs)[0]?.[0]);

const READING = [58, 0.85, 22, 0.98, 20];
const U = [[0.5, 0.02, 1, 0.005, 1]];

describe("MONTE_CARLO", () => {
  test("a row's answer hangs on itself alone: neither its neighbours nor its place matter", () => {
    const other = [70, 0.6, 25, 1, null];
    const [alone] = ask("MONTE_CARLO", [READING], U, 5000);
    const among = ask("MONTE_CARLO", [other, READING, [">150", 0.9, 22, 1, null], READING], U, 5000);
    expect(among[1]).toEqual(alone);
    expect(among[3]).toEqual(alone);
    expect(among[2]?.map(told)).toEqual(Array(5).fill(expect.stringContaining("A bound is not a reading")));
    expect(among[0]).not.toEqual(alone);
  });

  test("another seed, other draws; a seed a row", () => {
    const [one, two] = ask("MONTE_CARLO", [READING, READING], U, 5000, [[1], [2]]);
    expect(one).not.toEqual(two);
    expect(ask("MONTE_CARLO", [READING], U, 5000, 2)).toEqual([two]);
  });

  test("too many draws together: the message names those that fit", () => {
    const rows = Array.from({ length: 60 }, () => READING);
    expect(toldFirst("MONTE_CARLO", rows, U)).toBe(
      "#VALUE! draws: 60 rows make 6000000 draws together. Allowed: 5000000. 83333 draws a row fit.",
    );
    const many = Array.from({ length: 5001 }, () => READING);
    expect(toldFirst("MONTE_CARLO", many, U, 1000)).toContain("Fewer rows in one call: 5000 at most.");
    expect(ask("MONTE_CARLO", rows, U, 1000)).toHaveLength(60);
  });

  test.each<[string, Input[], string]>([
    ["too few draws for the coverage", [[READING], U, 1000, 1, 0.999], "take 10000 or more"],
    ["a draw and a half", [[READING], U, 1000.5], "draws: 1000.5 cannot be. Allowed: 1000 to 5000000. A whole number"],
    ["a seed and a half", [[READING], U, 1000, 1.5], "seed: 1.5 cannot be. Allowed: 1 to 1000000000. A whole number"],
    ["per cent for a fraction", [[READING], U, 1000, 1, 95], "A fraction is wanted, not per cent: 0.95?"],
    ["nothing uncertain", [[READING], [[0, 0, 0]], 1000], "uncertainties: All are 0 or empty, and what"],
    ["no column of uncertainties", [[READING], [[0.5]], 1000], "uncertainties: 1 column cannot be"],
  ])("%s is told", (_, inputs, message) => {
    expect(toldFirst("MONTE_CARLO", ...inputs)).toContain(message);
  });

  test("draws that nearly all fail are told in words", () => {
    const ends = [58, 1, 22, 1, 20, 1, 25, null, null, 1];
    const u = [[0, 0.001, 0, 0.001, 0, 0.001, 0, 0, 0, 0.001]];
    expect(toldFirst("MONTE_CARLO", [ends], u, 10_000)).toMatch(
      /^#N\/A 9\d\.\d+ % of the draws have no answer: an emiss/,
    );
  });

  test("half-widths of rectangles keep their ends; what goes together may cancel", () => {
    const [black] = [[60, 1, 20]];
    const [row = []] = ask("MONTE_CARLO", [black], [[3, 0, 0]], 100_000, 1, 0.999, "rectangular");
    expect(row[2]).toBeGreaterThan(57);
    expect(row[3]).toBeLessThan(63);
    expect(row[3]).toBeGreaterThan(62.9);
    // At ε 0.5 and equal temperatures reading and reflected move the result by +2 and −1: together by 1.
    const [apart = []] = ask("MONTE_CARLO", [[30, 0.5, 30]], [[1, 0, 1]]);
    const together: Cell[][] = [["apparent", "reflected", 1]];
    const [same = []] = ask("MONTE_CARLO", [[30, 0.5, 30]], [[1, 0, 1]], "", "", "", "", together);
    expect(apart[1]).toBeCloseTo(Math.sqrt(5), 1);
    expect(same[1]).toBeCloseTo(1, 1);
  });

  // At ε 0.12 ± 0.1 some draws leave next to nothing of the object; what is hotter than 10,000 °C is no temperature.
  test("draws above 10,000 °C are rejected, and neither mean nor deviation is nonsense", () => {
    const [row = []] = ask("MONTE_CARLO", [[62, 0.12, 30]], [[1, 0.1, 3]]).map((cells) => cells.map(Number));
    const [mean = NaN, deviation = NaN, low = NaN, high = NaN, rejected = NaN] = row;
    expect(mean).toBeLessThan(350);
    expect(deviation).toBeLessThan(1000);
    expect(low).toBeLessThan(mean);
    expect(high).toBeLessThan(10_000);
    expect(rejected).toBeGreaterThan(0.1);
  });

  test("an empty cell that came as 0 is not given", () => {
    expect(ask("MONTE_CARLO", [READING], U, 0, 0, 0, 0, 0, 0, 0)).toEqual(ask("MONTE_CARLO", [READING], U));
  });
});

describe("RISE_UNCERTAINTY", () => {
  const hot = [68, 0.95, 25];
  const normal = [49, 0.95, 25];
  const u = [1.155, 0.0115, 1.7];
  const rise = (...inputs: Input[]): Cell | undefined => ask("RISE_UNCERTAINTY", ...inputs)[0]?.[0];

  test("is never assumed: without a relation it is not given", () => {
    expect(toldFirst("RISE_UNCERTAINTY", [hot], [normal], [u])).toMatch(/^#VALUE! relation is not given/);
    expect(toldFirst("RISE_UNCERTAINTY", [hot], [normal], [u], "everything")).toContain('"same image, same surface"');
  });

  test("rows: one reference and one row of uncertainties for all, or one each; a bad one spoils no other", () => {
    const rows = [hot, [75, 0.95, 25], [80, 95, 25]];
    const found = ask("RISE_UNCERTAINTY", rows, [normal], [u], "two images");
    expect(found.slice(0, 2)).toEqual(rows.slice(0, 2).map((row) => [rise([row], [normal], [u], "two images")]));
    expect(told(found[2]?.[0])).toMatch(/^#VALUE! hot, emissivity: 95 cannot be.*0\.95/);
    const each = ask(
      "RISE_UNCERTAINTY",
      rows,
      [normal, [50, 0.9, passing], [50, 0.95, 25]],
      [u, u, u],
      [["two images"], ["two images"], ["two images"]],
    );
    expect(each[0]).toEqual(found[0]);
    expect(each[1]).toEqual([passing]);
  });

  test("a single pair may have two rows of uncertainties", () => {
    const sure = [0, 0.0001, 0];
    const both = rise([hot], [normal], [u, u], "two images");
    expect(both).toEqual(rise([hot], [normal], [u], "two images"));
    const one = rise([hot], [normal], [u, sure], "two images") as number;
    expect(one).toBeLessThan(both as number);
    expect(one).toBeCloseTo(ask("UNCERTAINTY", [hot], [u])[0]?.[0] as number, 3);
  });

  test("air by thermometer: one column; its own uncertainty where a second row begins with it", () => {
    const by = (uncertainties: Grid): number => rise([hot], 30, uncertainties, "air by thermometer") as number;
    const ofHot = ask("UNCERTAINTY", [hot], [u])[0]?.[0] as number;
    expect(by([u])).toBeCloseTo(Math.hypot(ofHot, 1.959964 / Math.sqrt(3)), 5);
    expect(by([u, [0.2, null, null]])).toBeCloseTo(Math.hypot(ofHot, 1.959964 * 0.2), 5);
    // An empty cell, which Excel hands over as 0: one sheet gives one number in every host.
    for (const empty of [null, 0]) expect(by([u, [empty, null, null]])).toBe(by([u]));
    expect(
      ask("RISE_UNCERTAINTY", [hot, hot], [[30], [">40"]], [u], "air by thermometer").map(([cell]) => told(cell)),
    ).toEqual([String(by([u])), expect.stringMatching(/^#VALUE! reference: ">40" cannot be/)]);
  });

  test.each<[string, Input[], string]>([
    ["one column with another relation", [[hot], 30, [u], "two images"], "The reference is a reading of its own"],
    ["a reading as air", [[hot], [normal], [u], "air by thermometer"], "the reference is one column"],
    ["two columns", [[hot], [[49, 0.95]], [u], "two images"], "reference: 2 columns cannot be. Allowed: 3 to 10"],
    ["no reference", [[hot], null, [u], "two images"], "reference is not given"],
    [
      "two surfaces as one",
      [[hot], [[49, 0.9, 25]], [u], "same image, same surface"],
      "The two rows differ in emissivity",
    ],
    ["rows that do not fit", [[hot, hot], [normal, normal, normal], [u], "two images"], "hot has 2 rows, reference 3"],
    ["uncertainties that do not fit", [[hot], [normal], [u, u, u], "two images"], "hot has 1 row, uncertainties 3"],
    ["a misfit of relations", [[hot], [normal], [u], [["two images", "two images"]]], "relation is 1 × 2 cells"],
    [
      "a reading colder than all around",
      [[[-80, 0.3, 22]], [normal], [u], "two images"],
      "#N/A hot: No object gives this reading",
    ],
    [
      "a reference without its air",
      [[hot], [[49, 0.95, 25, 0.9]], [u], "two images"],
      "reference, air_temp is not given",
    ],
    ["a coverage in per cent", [[hot], [normal], [u], "two images", 95], "coverage: 95 cannot be"],
  ])("%s is told", (_, inputs, message) => {
    expect(toldFirst("RISE_UNCERTAINTY", ...inputs)).toContain(message);
  });
});

describe("CAMERA_UNCERTAINTY", () => {
  test("in °F: the half-width in °F, per cent of the reading in °C", () => {
    // 302 °F is 150 °C: 3 K, 5.4 °F.
    expect(ask("CAMERA_UNCERTAINTY", 302, 3.6, 2, "F")[0]?.[0]).toBeCloseTo(5.4 / Math.sqrt(3), 12);
    expect(ask("CAMERA_UNCERTAINTY", 68, "", "", "F")[0]?.[0]).toBeCloseTo(3.6 / Math.sqrt(3), 12);
  });

  test("a fraction for per cent is told; 0 is 0", () => {
    expect(toldFirst("CAMERA_UNCERTAINTY", 20, 2, 0.02)).toContain("Per cent are meant, 2 for ±2 %: 0.02 looks like");
    expect(ask("CAMERA_UNCERTAINTY", 300, 1, 0)[0]?.[0]).toBeCloseTo(1 / Math.sqrt(3), 12);
    expect(toldFirst("CAMERA_UNCERTAINTY", 300, 0, 0)).toContain("no camera is exact");
  });
});
