/** The tables that are looked up: names that are one thing, ranges that are ranges, and what must not ship. */
import { MATERIALS } from "../../../src/data/emissivity.js";
import { INTERVALS } from "../../../src/data/intervals.js";
import { LIMITS } from "../../../src/data/limits.js";
import { PRIORITY_MATRICES } from "../../../src/data/priorities.js";
import { REFERENCES } from "../../../src/data/references.js";
import { WINDOWS } from "../../../src/data/windows.js";

const repeated = (names: readonly string[]): string[] =>
  names.map((name) => name.toLowerCase()).filter((name, i, all) => all.indexOf(name) !== i);

describe("materials", () => {
  it("are named once", () => {
    expect(repeated(MATERIALS.map(({ material }) => material))).toEqual([]);
  });
  it("none is a metal without the state of its surface", () => {
    const metals = MATERIALS.filter(({ kind }) => kind.endsWith("metal") && kind !== "non-metal");
    expect(metals.filter(({ material }) => !/[, ]/.test(material))).toEqual([]);
  });
  it.each(MATERIALS.map((one) => [one.material, one] as const))("%s: a range a band, low to high", (_, { ranges }) => {
    expect(repeated(ranges.map(({ band }) => band))).toEqual([]);
    for (const { low, high } of ranges) expect(low).toBeLessThanOrEqual(high);
  });
  it("what is from memory or without a document says so", () => {
    const rows = MATERIALS.flatMap(({ ranges }) => ranges);
    for (const row of rows.filter(({ source }) => source === "trade-practice")) {
      expect(["memory", "common practice"]).toContain(row.evidence);
    }
  });
  it("bare metal is shiny: nothing above 0.6 is called so", () => {
    const bare = MATERIALS.filter(({ kind }) => kind === "bare metal").flatMap(({ ranges }) => ranges);
    expect(Math.max(...bare.map(({ high }) => high))).toBeLessThan(0.6);
  });
});

describe("limits", () => {
  it("a part stands once in a standard", () => {
    expect(repeated(LIMITS.map(({ part, source }) => `${part} | ${source}`))).toEqual([]);
  });
  it("IEC 60694: temperature less rise is the air it is meant for", () => {
    const rows = LIMITS.filter(({ source }) => source === "iec-60694-1996");
    expect(rows).toHaveLength(32);
    for (const { temp, rise, air } of rows) expect(temp! - rise!).toBe(air);
  });
  it("every row with all three: temperature less rise is the air", () => {
    const rows = LIMITS.filter(({ temp, rise, air }) => [temp, rise, air].every((one) => one !== undefined));
    expect(rows.filter(({ temp, rise, air }) => temp! - rise! !== air)).toEqual([]);
  });
  it("a motor's row says that the frame is not the winding", () => {
    const motors = LIMITS.filter(({ part }) => part.startsWith("motor"));
    expect(motors.length).toBeGreaterThan(10);
    expect(motors.filter(({ note }) => !(note ?? "").includes("winding"))).toEqual([]);
  });
  it("what may not ship does not", () => {
    const sources = Object.values(REFERENCES).map(({ short, title }) => `${short} ${title}`);
    for (const excluded of [/62271-1:2017/, /62446/, /FIST/, /NSTM|Naval Ships/, /60947-1/, /UL 347/]) {
      expect(sources.filter((source) => excluded.test(source))).toEqual([]);
    }
  });
});

it("a window lets through no more than its ceiling says, uncoated and in service", () => {
  for (const { ranges } of WINDOWS) {
    for (const { band, what, high } of ranges) {
      const ceiling = ranges.find((one) => one.band === band && one.what === "ceiling uncoated")?.high ?? 1;
      if (what === "in service") expect(high).toBeLessThanOrEqual(ceiling);
    }
  }
});

it("the ceiling of a plate follows from its refractive index, (1 − R)/(1 + R)", () => {
  // Refractive indices as handbooks of optics have them, from memory.
  const indices: readonly (readonly [string, "short" | "long", number])[] = [
    ["calcium fluoride", "short", 1.41],
    ["barium fluoride", "short", 1.457],
    ["zinc selenide", "short", 2.433],
    ["zinc selenide", "long", 2.407],
    ["germanium", "long", 4.003],
  ];
  for (const [name, band, n] of indices) {
    const found = WINDOWS.find(({ material }) => material === name)?.ranges.find(
      (range) => range.band === band && range.what === "ceiling uncoated",
    );
    const R = ((n - 1) / (n + 1)) ** 2;
    expect(Math.abs(found!.high - (1 - R) / (1 + R))).toBeLessThan(0.001);
  }
});

it("every ceiling names the index that it follows from, to the last digit printed", () => {
  const ceilings = WINDOWS.flatMap(({ material, ranges }) =>
    ranges.filter(({ what }) => what === "ceiling uncoated").map((range) => ({ material, ...range })),
  );
  expect(ceilings.length).toBeGreaterThan(9);
  for (const { material, locator, low, high } of ceilings) {
    const n = Number(/refractive index (\d\.\d{3}) at \d+ µm \(index from memory\)/.exec(locator)?.[1]);
    // (1 − R)/(1 + R) with R = ((n − 1)/(n + 1))² is 2n/(n² + 1).
    expect([material, Math.abs((2 * n) / (n * n + 1) - high) < 0.0006, low]).toEqual([material, true, high]);
  }
});

it("worse condition or criticality never asks for less", () => {
  for (const { months } of INTERVALS) expect([...months].sort((a, b) => b - a)).toEqual(months);
  for (const { rows } of PRIORITY_MATRICES) {
    const order = [
      "nothing to do",
      "look again at the next survey",
      "plan a repair",
      "repair at the next stop",
      "act now",
    ];
    const ranks = rows.map(({ priorities }) => priorities.map((words) => order.indexOf(words)));
    expect(ranks.flat()).not.toContain(-1);
    for (const [i, row] of ranks.entries()) {
      for (const [j, rank] of row.entries()) {
        expect(rank).toBeGreaterThanOrEqual(row[j - 1] ?? 0);
        expect(rank).toBeGreaterThanOrEqual(ranks[i - 1]?.[j] ?? 0);
      }
    }
  }
});
