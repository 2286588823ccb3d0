/** What the lookups tell: the state of a surface, evidence, the standard, tables of the workbook's own, dates that are text. */
import { BUILT_IN_LIMITS } from "../../src/core/severity/part-limit.js";
import { MATERIALS } from "../../src/data/emissivity.js";
import type { Cell, Grid, Input } from "../../src/functions/contract.js";
import { isCellError } from "../../src/functions/contract.js";
import { findFunction } from "../../src/functions/catalogue.js";

const evaluate = (name: string, ...inputs: Input[]): Grid => findFunction(name)?.evaluate(inputs) ?? [];
const answer = (name: string, ...inputs: Input[]): Cell => evaluate(name, ...inputs)[0]?.[0] ?? null;
/** "#N/A: message", or what stands in its place. */
function told(name: string, ...inputs: Input[]): string {
  const cell = answer(name, ...inputs);
  return isCellError(cell) ? `${cell.error}: ${cell.message}` : `no error but ${String(cell)}`;
}

describe("EMISSIVITY", () => {
  test("bare metal is measured; its ends are given", () => {
    expect(told("EMISSIVITY", "copper, polished")).toMatch(/^#N\/A: Measure it: copper, polished .* 0\.02 to 0\.03/);
    expect(answer("EMISSIVITY", "copper, polished", undefined, "low")).toBe(0.02);
    expect(answer("EMISSIVITY", "copper, polished", undefined, "high")).toBe(0.03);
    expect(told("EMISSIVITY", "silver, tarnished")).toMatch(/^#N\/A: Measure it: .*0\.1 to 0\.5/);
  });

  test("no single emissivity for copper: the states near it", () => {
    expect(told("EMISSIVITY", "copper")).toMatch(/^#N\/A: No material is called "copper"\. Near it: copper, polished;/);
    expect(told("EMISSIVITY", "copper oxidized")).toContain("copper, oxidised");
    expect(told("EMISSIVITY", "brass", "3-5")).toContain("brass, oxidised");
  });

  test("what stands in, and how far it can be trusted, in the words of the source", () => {
    const source = (material: string, band?: string): Cell => answer("EMISSIVITY", material, band, "source");
    expect(source("porcelain, glazed")).toMatch(
      /^total emissivity, which stands for the long wave here: .*\(from memory\)/,
    );
    expect(source("concrete", "3-5")).toMatch(
      /Vlcek 1982 and Jones et al\. 1977.*\(read where quoted\); check your edition$/,
    );
    expect(source("vinyl electrical tape")).toMatch(/^trade practice, no document \(common practice\); below 80 °C/);
  });

  test("a band that no column speaks for", () => {
    expect(told("EMISSIVITY", "porcelain, glazed", "3-5")).toContain("total emissivity only");
    expect(told("EMISSIVITY", "porcelain, glazed", "1-2")).toMatch(
      /^#N\/A: The table has emissivities for bands within/,
    );
  });

  test("a middle has no more figures than its ends call for", () => {
    const values = MATERIALS.map(({ material }) => answer("EMISSIVITY", material)).filter(
      (one) => typeof one === "number",
    );
    expect(values.length).toBeGreaterThan(40);
    for (const value of values) expect(String(value).length).toBeLessThanOrEqual(6);
  });
});

describe("tables", () => {
  test("MATERIALS has every material, its source in words and what must be measured", () => {
    const [header = [], ...rows] = evaluate("MATERIALS");
    expect(rows).toHaveLength(MATERIALS.length);
    const [value, source] = ["value", "source"].map((name) => header.indexOf(name));
    for (const row of rows) {
      expect(row[source!]).toMatch(/check your edition|trade practice|tables without an author/);
      if (row[1] === "bare metal") expect(row[value!]).toBe("measure it");
    }
    expect(rows.filter((row) => JSON.stringify(row[source!]).includes("from memory")).length).toBeGreaterThan(20);
  });

  test("LIMITS has every limit with its source in words; a motor's rows say what the frame is not", () => {
    const [header = [], ...rows] = evaluate("LIMITS");
    expect(rows).toHaveLength(BUILT_IN_LIMITS.length);
    for (const row of rows)
      expect(row[header.indexOf("source")]).toMatch(/^numbers cited from .*; check your edition$/);
    const motors = evaluate("LIMITS", "motor winding class").slice(1);
    for (const row of motors) expect(row[header.indexOf("note")]).toContain("never graded");
  });

  test("a search takes its words in any order; what nothing has is answered with what is near", () => {
    expect(
      evaluate("LIMITS", "SF6 bolted bare")
        .slice(1)
        .map(([part]) => part),
    ).toEqual(["bolted joint, bare, in SF6"]);
    expect(told("MATERIALS", "coper")).toMatch(/^#N\/A: search: nothing has "coper"\. Near it: copper, polished/);
    expect(told("MATERIALS", "zzz")).toContain("the whole table");
  });

  test("LIMITS is a range that LIMIT takes", () => {
    for (const units of ["C", "F"]) {
      const table = evaluate("LIMITS", "IEC 60694", units);
      const args = ["contact, tin coated, in oil", undefined, "temp"] as const;
      expect(answer("LIMIT", ...args, table, units)).toBe(answer("LIMIT", ...args, undefined, units));
    }
  });

  test("ABOUT follows a rule, a figure, a window, an interval and a priority to its source", () => {
    const line = (what: string): readonly Cell[] => evaluate("ABOUT", what)[1] ?? [];
    expect(line("rule: minimum load").slice(1)).toEqual([0.4, "", expect.stringContaining("NFPA 70B-2023")]);
    expect(line("rolling bearing: alert").slice(1, 3)).toEqual(["93 to 121", "°C"]);
    expect(line("window: germanium")[1]).toContain("long wave ceiling uncoated 0.47");
    expect(line("intervals NFPA")[1]).toBe("12; 12; 6");
    expect(line("priorities house: grade 4")[1]).toBe(
      "criticality 1: act now; criticality 2: act now; criticality 3: act now",
    );
    for (const row of evaluate("ABOUT").slice(1)) expect(row[3]).not.toBe("");
  });
});

describe("LIMIT", () => {
  const own: Cell[][] = [
    ["part", "standard", "temp", "rise", "source"],
    ["lug", "job", 194, "", "specification, page 3"],
    [0, 0, 0, 0, 0],
    ["bar", "job", 0, 90, 0],
  ];

  test("a workbook's own: heading and empty rows passed over, an empty figure that Excel hands over as 0, °F", () => {
    expect(answer("LIMIT", "Lug", undefined, "temp", own, "F")).toBe(194);
    expect(answer("LIMIT", "bar", undefined, "rise", own, "F")).toBe(90);
    expect(answer("LIMIT", "lug", undefined, "source", own)).toBe("specification, page 3");
    expect(answer("LIMIT", "bar", undefined, "source", own)).toBe("the workbook's own limits");
    expect(told("LIMIT", "bar", undefined, "temp", own, "F")).toContain("a rise of 90 °F and names no temperature");
  });

  test("a fault is told by its row, as it was typed", () => {
    const row = (...cells: Cell[]): string => told("LIMIT", "lug", undefined, "temp", [...own, cells]);
    expect(row("rod", "job", "90 C", 0)).toContain(
      'limits: "90 C" cannot be. Row 5 of the limits: temperature and rise',
    );
    expect(row("rod", "job", 9000, 0)).toContain("limits: 9000 °C cannot be. Allowed: 0 to 1500 °C. Row 5");
    expect(row("rod", "job", 90, -2)).toContain("limits: -2 K cannot be. Allowed: above 0, up to 1000 K. Row 5");
    expect(row("", "job", 90, 50)).toContain("Row 5 of the limits: the first column names the part");
    expect(row("Lug", "job", 90, 50)).toContain('"Lug" cannot be. Row 5 of the limits: that part stands');
    expect(row("rod", "job", "", "")).toContain("Row 5 of the limits has neither");
    expect(told("LIMIT", "lug", undefined, "temp", "mine")).toMatch(
      /^#VALUE!: limits: "mine" cannot be\. A range part/,
    );
    expect(told("LIMIT", "lug", undefined, "temp", [own[0]!])).toMatch(/^#VALUE!: limits: A range part/);
  });

  test("from memory, so told and not given", () => {
    expect(told("LIMIT", "conductor, PVC insulated")).toBe(
      "#N/A: From memory, so not given as a number: 70 °C for conductor, PVC insulated. Look it up in IEC 60364-5-52 and hand it in as limits, with where you read it.",
    );
    expect(answer("LIMIT", "conductor, PVC insulated", undefined, "source")).toContain("from memory");
  });

  test("a figure from memory does not get surer by passing through a sheet", () => {
    const limits = evaluate("LIMITS");
    expect(told("LIMIT", "conductor, PVC insulated", undefined, "temp", limits)).toBe(
      told("LIMIT", "conductor, PVC insulated"),
    );
    expect(answer("LIMIT", "bolted joint, bare, in air", undefined, "temp", limits)).toBe(90);
    const read = limits.map(([part, standard, temp, rise]): Cell[] => [part!, standard!, temp!, rise!, "read, p. 12"]);
    expect(answer("LIMIT", "conductor, PVC insulated", undefined, "temp", read)).toBe(70);
    const mine: Cell[][] = [["lug", "", 90, "", "From memory of the foreman"]];
    expect(told("LIMIT", "lug", undefined, "temp", mine.concat(own.slice(3)))).toContain(
      "Look it up in its source and",
    );
  });
});

describe("PRIORITY", () => {
  test("a matrix of the workbook's own, with its heading and rows as they stand", () => {
    const heading: Cell[] = ["grade", 1, 2, 3];
    expect(answer("PRIORITY", 2, 3, [heading, [2, "a", "b", "c"]])).toBe("c");
    expect(answer("PRIORITY", 0, 1, [[0, "a", "b", "c"]])).toBe("a");
    expect(told("PRIORITY", 3, 1, [heading, [2, "a", "b", "c"]])).toContain("no row for grade 3, only for 2");
    expect(told("PRIORITY", 2, 1, [heading, [2, "a", 0, "c"]])).toMatch(
      /^#VALUE!: matrix: .*Row 2 of the matrix: words/,
    );
    expect(told("PRIORITY", 2, 1, [heading, ["2", "a", "b", "c"], [2, "a", "b", "c"]])).toContain(
      "Row 3 of the matrix",
    );
    expect(told("PRIORITY", 2, 1, [["", "a", "b", "c"]])).toContain("Row 1 of the matrix: a grade is a whole number");
    expect(told("PRIORITY", 2.5, 1)).toBe("#VALUE!: grade: 2.5 cannot be. Allowed: 0 to 4. A whole number is wanted.");
  });
});

test("0 is an empty cell where 0 cannot be, and a scale says which end is the worst", () => {
  const calls: [string, Input[]][] = [
    ["last_date", [0, 1, 1, 1]],
    ["physical_condition", [46082, 0, 1, 1]],
    ["criticality", [46082, 1, 0, 1]],
    ["environment", [46082, 1, 1, 0]],
  ];
  for (const [name, inputs] of calls) {
    expect(told("NEXT_DUE", ...inputs)).toMatch(
      new RegExp(`^#VALUE!: ${name} is not given. 0 is read as an empty cell`),
    );
  }
  expect(told("PRIORITY", 2, 0)).toMatch(/^#VALUE!: criticality is not given. 0 is read as an empty cell/);
  expect(told("PRIORITY", 2, 4)).toBe("#VALUE!: criticality: 4 cannot be. Allowed: 1 to 3. The worst is 3.");
  expect(told("PRIORITY", 5, 2)).toBe("#VALUE!: grade: 5 cannot be. Allowed: 0 to 4. The worst grade is 4.");
  expect(told("NEXT_DUE", 46082, 1, 1, 4)).toContain("Allowed: 1 to 3. The worst is 3.");
});

describe("NEXT_DUE", () => {
  test.each(["2026-03-01", "1/3/2026", "01.03.2026", "1 March 2026", "Mar 1, 2026"])(
    "%s is text, and how to mend it",
    (text) => {
      expect(told("NEXT_DUE", text, 1, 1, 1)).toMatch(/^#VALUE!: last_date: .*DATEVALUE/);
    },
  );

  test("a date as one number, or a year, is no date", () => {
    for (const given of [20260301, 2026]) expect(told("NEXT_DUE", given, 1, 1, 1)).toContain("1980-01-01 is 29221");
  });

  test("three intervals of the workbook's own, down or across", () => {
    // 46082 is 2026-03-01; 36 months on it is 2029-03-01, 47178.
    expect(answer("NEXT_DUE", 46082, 1, 1, 1, [[36, 12, 6]])).toBe(47178);
    expect(answer("NEXT_DUE", 46082, 1, 1, 1, [["36"], [12], [6]])).toBe(47178);
    expect(told("NEXT_DUE", 46082, 1, 1, 1, [[36, 12, 0]])).toMatch(/^#VALUE!: intervals: Three whole numbers/);
    expect(told("NEXT_DUE", 46082, 1, 1, 1, [[6, 12, 36]])).toMatch(/^#VALUE!: intervals: Condition 3 is the worst/);
    expect(told("NEXT_DUE", 46082, 1, 1, 1, 12)).toContain('Allowed: "NFPA-70B-2023"');
  });
});
