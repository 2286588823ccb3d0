/**
 * The grid through the file writer. A block of a black body at a transmission of 1, so that what is pasted is what comes
 * out and every statistic is reckoned here; a reference row of shared/data/radiometry for the correction itself; edges
 * of NETA's table for similar components and over air.
 */
import { describedBook } from "../../src/host/file/write/described.js";
import type { WrittenSheet } from "../../src/host/file/write/model.js";
import { storedFormula } from "../../src/host/file/write/stored-formula.js";
import { packBook } from "../../src/host/file/write/package.js";
import type { FreeSheet } from "../../src/templates/contract.js";
import { bandsOf, MOST, sizeOf } from "../../src/templates/grid/block.js";
import { gridBook, type GridOfReadings } from "../../src/templates/grid/book.js";
import { demoGrid } from "../../src/templates/grid/demo.js";
import { templates } from "../../src/templates/registry.js";
import { Folder, recalc } from "../support/recalc.js";
import { brokenRules } from "../support/package-rules.js";
import { type Value, Worked, workedOut } from "../support/worked.js";

type Readings = readonly (readonly Value[])[];

/** Pasted into the block of a description and worked out. */
async function pasted(
  readings: Readings,
  given: Pick<GridOfReadings, "values"> & Partial<Pick<GridOfReadings, "boxes" | "differences">>,
): Promise<Worked> {
  const size = { rows: readings.length, columns: readings[0]!.length };
  const book = gridBook({ title: "Test", about: [], size, units: "C", ...given });
  const first = book.sheets[0]!.heading.length + 2;
  const written = describedBook(book);
  const sheets = written.sheets.map((sheet, at): WrittenSheet => {
    if (at > 0) return sheet;
    const cells = sheet.cells.map((cell) => {
      const value = readings[cell.row - first]?.[cell.column - 1];
      return value === undefined || value === null ? cell : { ...cell, value };
    });
    return { ...sheet, cells };
  });
  const folder = new Folder();
  try {
    const [from, to] = [folder.put("in.xlsx", packBook({ ...written, sheets })), folder.at("out.xlsx")];
    const { status, stdout, stderr } = await recalc(["--all", "-o", to, from]);
    if (status !== 0 || !stdout.includes(" 0 kept")) throw new Error(`recalc: ${stdout} ${stderr}`);
    return new Worked(folder.read("out.xlsx"), book);
  } finally {
    folder.remove();
  }
}

const numbers = (values: readonly Value[]): number[] =>
  values.filter((value): value is number => typeof value === "number");
const mean = (all: readonly number[]): number => all.reduce((sum, one) => sum + one, 0) / all.length;
const deviation = (all: readonly number[]): number =>
  Math.sqrt(all.reduce((sum, one) => sum + (one - mean(all)) ** 2, 0) / (all.length - 1));

/** As the camera is next to a black body. */
const plain = { emissivity: 1, reflected: 20, air_transmission: 1 } as const;

/** 70 rows of 8, so two bands, of 20 to 30 °C; one cell is empty, one holds words, one is by far the hottest. */
const READINGS: Readings = Array.from({ length: 70 }, (_, r) =>
  Array.from({ length: 8 }, (__, c) => {
    if (r === 2 && c === 1) return null;
    if (r === 3 && c === 1) return "n/a";
    return r === 65 && c === 6 ? 55 : Math.round((20 + ((r * 7 + c * 3) % 11)) * 10) / 10;
  }),
);

describe("a block that is pasted", () => {
  let done: Worked;
  const all = numbers(READINGS.flat());
  const part = (top: number, left: number, bottom: number, right: number): number[] =>
    numbers(READINGS.slice(top - 1, bottom).flatMap((row) => row.slice(left - 1, right)));
  /** cells, maximum, row, column, minimum, mean, deviation, share above */
  const results = (box: number): Value[] => {
    const [, from = "", to = ""] = /!\$(.+):\$(.+)$/.exec(done.names.get(`grid_box_${box}`)!) ?? [];
    return done.block("Boxes", from.replace("$", ""), to.replace("$", ""))[0]!;
  };
  beforeAll(async () => {
    done = await pasted(READINGS, {
      values: { ...plain, above: 29.5, surrounding_air: 20 },
      boxes: [
        { name: "over both bands", corners: [60, 5, 68, 8] },
        { name: "one column", corners: [2, 2, 5, 2] },
        { name: "one cell", corners: [1, 1, 1, 1] },
        { name: "the wrong way", corners: [9, 5, 3, 8] },
        { name: "the empty cell", corners: [3, 2, 3, 2] },
      ],
      differences: [
        { box: "over both bands", taken: "maximum", reference: "one cell", referenceTaken: "mean" },
        { box: "one cell", taken: "maximum", reference: "over both bands" },
        { box: "over both bands", taken: "maximum", reference: "air" },
        { box: "one cell", taken: "mean", reference: "nowhere" },
      ],
    });
  }, 120_000);

  test("is corrected cell by cell in two bands; what holds no number stays empty", () => {
    const block = done.block("Corrected", "B6", "I75");
    expect(numbers(block.flat())).toHaveLength(all.length);
    READINGS.forEach((row, r) =>
      row.forEach((reading, c) => {
        if (typeof reading === "number") expect(block[r]![c]).toBeCloseTo(reading, 6);
        else expect(["", null]).toContain(block[r]![c]);
      }),
    );
  });

  test("numbers of the whole", () => {
    expect(done.named("grid_count_readings")).toBe(558);
    expect(done.named("grid_count")).toBe(558);
    expect(done.named("grid_no_number")).toBe(1);
    expect(done.named("grid_maximum")).toBeCloseTo(55, 6);
    expect(done.named("grid_maximum_place")).toBe(66_007);
    expect(done.named("grid_minimum")).toBeCloseTo(20, 6);
    expect(done.named("grid_minimum_place")).toBe(1001);
    expect(done.named("grid_mean")).toBeCloseTo(mean(all), 6);
    expect(done.named("grid_deviation")).toBeCloseTo(deviation(all), 6);
    expect(done.named("grid_share")).toBeCloseTo(all.filter((one) => one > 29.5).length / all.length, 9);
    // Radiance grows faster than temperature: its mean is that of a hotter cell.
    const difference = (done.named("grid_mean_radiance") as number) - mean(all);
    expect(difference).toBeGreaterThan(0);
    expect(difference).toBeLessThan(0.2);
  });

  test("a box over the edge of two bands", () => {
    const own = part(60, 5, 68, 8);
    const found = results(1);
    expect(found.slice(0, 4)).toEqual([36, expect.closeTo(55, 6), 66, 7]);
    expect(found[4]).toBeCloseTo(Math.min(...own), 6);
    expect(found[5]).toBeCloseTo(mean(own), 6);
    expect(found[6]).toBeCloseTo(deviation(own), 6);
    expect(found[7]).toBeCloseTo(own.filter((one) => one > 29.5).length / 36, 9);
  });

  test("boxes of a column, of a cell, of nothing", () => {
    const own = part(2, 2, 5, 2);
    expect(own).toHaveLength(2);
    expect(results(2).slice(0, 2)).toEqual([2, expect.closeTo(Math.max(...own), 6)]);
    expect(results(3).slice(0, 5)).toEqual([1, expect.closeTo(20, 6), 1, 1, expect.closeTo(20, 6)]);
    for (const box of [4, 5, 6]) expect(results(box).every((value) => value === "")).toBe(true);
    const remarks = done.block("Boxes", "N1", "N40").flat();
    expect(remarks).toContain("first row or column lies behind the last");
    expect(remarks).toContain("no corrected cell in it");
  });

  test("differences are graded by what they are over, beside their uncertainty", () => {
    expect(done.named("grid_pair_1_difference")).toBeCloseTo(35, 6);
    expect(done.named("grid_pair_3_difference")).toBeCloseTo(35, 6);
    const words = done.block("Boxes", "I1", "L60").map(([grade, , , u]) => [grade, u]);
    // 35 K is grade 4 over a similar component (above 15 K), 3 over air (21 to 40 K).
    expect(words).toContainEqual([expect.stringMatching(/^4 of 4: /), expect.stringMatching(/^± \d\.\d K$/)]);
    expect(words).toContainEqual([expect.stringMatching(/^3 of 4: /), expect.stringMatching(/^± \d\.\d K/)]);
    expect(words).toContainEqual(["no grade: colder than its reference", expect.anything()]);
    expect(words).toContainEqual(["no corrected reference box of that name", ""]);
    expect(done.errors()).toEqual([]);
  });
});

test("the settings of the form: o-corrected_nowindow-004", async () => {
  const done = await pasted(
    [
      [77.33, -200],
      [null, null],
    ],
    {
      values: { band: "8-14", emissivity: 0.908, reflected: -8.2, air_transmission: 0.907, path_air: -13 },
    },
  );
  expect(done.named("grid_maximum")).toBeCloseTo(90.472210108762833, 6);
  // Less than what the air alone sends out has no answer: empty, and counted.
  expect(done.named("grid_count")).toBe(1);
  expect(done.named("grid_count_readings")).toBe(2);
  expect(done.errors()).toEqual([]);
}, 120_000);

test("nothing is corrected before the settings are given, and they say which", async () => {
  const done = await pasted([[30, 31]], { values: { emissivity: 0.9, window_transmission: 0.6 } });
  expect(done.named("grid_needs")).toBe(
    "reflected, distance and air on the path (or a transmission of the air), window temperature",
  );
  expect(done.named("grid_count")).toBe(0);
  expect(done.named("grid_maximum")).toBe("");
  expect(done.named("grid_told")).toMatch(/^Nothing is corrected yet\. Settings still need: reflected/);
  expect(done.errors()).toEqual([]);
}, 120_000);

test("the demo in °C and °F: the same boxes, the same grades", async () => {
  const [celsius, fahrenheit] = await Promise.all([workedOut(demoGrid("C")), workedOut(demoGrid("F"))]);
  expect(celsius.named("grid_maximum_place")).toBe(44_080);
  expect(fahrenheit.named("grid_maximum_place")).toBe(44_080);
  expect(fahrenheit.named("grid_maximum")).toBeCloseTo(1.8 * (celsius.named("grid_maximum") as number) + 32, 0);
  expect(fahrenheit.named("grid_pair_1_difference")).toBeCloseTo(
    1.8 * (celsius.named("grid_pair_1_difference") as number),
    0,
  );
  expect([...celsius.errors(), ...fahrenheit.errors()]).toEqual([]);
}, 120_000);

test("empty it is 480 rows of 640 in bands that a call can hold, or as high as is asked for", () => {
  const grid = templates.find(({ name }) => name === "grid")!;
  expect(grid.rows).toEqual({ usual: 480, most: 480 });
  expect(sizeOf(240)).toEqual({ rows: 240, columns: 320 });
  // 5 MB a call; a number takes at most 25 characters with what separates it.
  for (const { rows } of bandsOf(MOST)) expect(rows * MOST.columns * 25).toBeLessThan(5_000_000);
  expect(bandsOf(MOST).reduce((sum, { rows }) => sum + rows, 0)).toBe(480);
  const block = (grid.empty({ units: "C", rows: 480 }).sheets[0] as FreeSheet).cells.find(
    ({ name }) => name === "grid_readings",
  );
  expect(block?.size).toEqual(MOST);
});

test("an empty block is calm", async () => {
  const done = await workedOut(templates.find(({ name }) => name === "grid")!.empty({ units: "C", rows: 30 }));
  for (const name of ["maximum", "minimum", "mean", "mean_radiance", "deviation", "share", "pair_1_difference"])
    expect([name, done.named(`grid_${name}`)]).toEqual([name, ""]);
  expect(done.errors()).toEqual([]);
}, 120_000);

test("as a file it keeps the rules that Excel holds one to", () => {
  for (const one of [demoGrid("F")]) expect(brokenRules(packBook(describedBook(one)))).toEqual([]);
});

test("the formulas of the largest block are no longer than Excel takes", () => {
  const book = templates.find(({ name }) => name === "grid")!.empty({ units: "F", rows: 480 });
  const formulas = describedBook(book).sheets.flatMap(({ cells }) =>
    cells.flatMap(({ formula }) => (formula === undefined ? [] : [storedFormula(formula)])),
  );
  expect(formulas.length).toBeGreaterThan(100);
  expect(Math.max(...formulas.map(({ length }) => length))).toBeLessThan(8192);
});
