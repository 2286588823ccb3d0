/** CHECK knows the names of our own sheets, has words for every rule, and reads days as a sheet counts them. */
import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import { CHECK_WORDS } from "../../../src/functions/check.js";
import { RULES_OF_A_ROW } from "../../../src/core/check/check.js";
import { IMPOSSIBLE } from "../../../src/core/check/impossible.js";
import { COLUMN_LIMITS } from "../../../src/core/check/limits.js";
import { isBareMetal } from "../../../src/core/check/surface.js";
import { MATERIALS } from "../../../src/data/emissivity.js";
import { CHECK_COLUMNS, JOB_LINES } from "../../../src/functions/check-columns.js";
import { columnNamed, jobLineNamed } from "../../../src/functions/check-names.js";
import { dayInWords, dayOf } from "../../../src/functions/days.js";
import { newRoute } from "../../../src/templates/new.js";

describe("names of our routes", () => {
  const sheets = [
    ...newRoute({ kind: "electrical", title: "", units: "C", rows: 1, criteria: "house" }).sheets,
    ...newRoute({ kind: "mechanical", title: "", units: "C", rows: 1, criteria: "house-mechanical" }).sheets,
  ];
  const headers = sheets.flatMap((sheet) =>
    sheet.kind === "table" && ["Route", "Assets"].includes(sheet.name)
      ? [...sheet.columns, ...sheet.computed].map(({ header }) => header)
      : [],
  );
  const lines = sheets.flatMap((sheet) =>
    sheet.kind === "form"
      ? sheet.fields.flatMap(({ definedName = "" }) => (definedName === "" ? [] : [definedName]))
      : [],
  );

  test.each([...new Set(headers)])("%s", (header) => {
    const { name, isPassedOver } = columnNamed(header);
    expect(name !== undefined || isPassedOver).toBe(true);
  });

  it("are known as the page breaks them, the unit in the last line", () => {
    for (const [broken, name] of [
      ["amps_\nleft\nA", "amps_left"],
      ["surrounding_\nair\n°C", "surrounding_air"],
      ["left\n°C", "left"],
    ] as const)
      expect(columnNamed(broken).name).toBe(name);
  });

  test.each([...new Set(lines)])("%s", (line) => {
    const { name, isPassedOver } = jobLineNamed(line);
    expect(name !== undefined || isPassedOver).toBe(true);
  });

  it("of a job are known by what stands before them on the sheet", () => {
    for (const sheet of sheets) {
      if (sheet.kind !== "form") continue;
      for (const { label, definedName } of sheet.fields)
        if (definedName !== undefined) expect([label, jobLineNamed(label)]).toEqual([label, jobLineNamed(definedName)]);
    }
  });

  it("are unique, and every limit is of one", () => {
    const names = CHECK_COLUMNS.map(({ name }) => name.toLowerCase());
    expect(new Set(names).size).toBe(names.length);
    const all = new Set([...CHECK_COLUMNS, ...JOB_LINES].map(({ name }) => name));
    expect(Object.keys(COLUMN_LIMITS).filter((name) => !all.has(name))).toEqual([]);
  });
});

describe("words", () => {
  const core = path.join(__dirname, "../../../src");
  const sources = [path.join(core, "core/check"), path.join(core, "functions")].flatMap((folder) =>
    readdirSync(folder)
      .filter((file) => file.endsWith(".ts"))
      .map((file) => readFileSync(path.join(folder, file), "utf8")),
  );

  test.each([...RULES_OF_A_ROW.map(({ id }) => id), ...IMPOSSIBLE])("%s has its own", (id) => {
    expect(CHECK_WORDS[id]).toBeDefined();
  });

  test.each(Object.keys(CHECK_WORDS))("%s is a rule's", (id) => {
    expect(sources.some((text) => text.includes(`"${id}"`))).toBe(true);
  });
});

test("a surface is bare metal where our materials say so", () => {
  // A lead is a cable too, so its name says nothing.
  const wrong = MATERIALS.filter(({ material }) => !material.startsWith("lead")).filter(
    ({ material, kind }) => isBareMetal(material) !== ["bare metal", "oxidised metal"].includes(kind),
  );
  expect(wrong.map(({ material }) => material)).toEqual([]);
  expect(["Cu bar", "Al", "tin-plated copper", "stainless"].every(isBareMetal)).toBe(true);
  expect(
    ["cable insulation", "heat-shrink sleeve", "tape patch", "moulded case", "metal, painted"].some(isBareMetal),
  ).toBe(false);
});

describe("days", () => {
  // As spreadsheets count them: 1 is 1900-01-01, 36526 the first day of 2000, 45351 the leap day of 2024.
  test.each([
    ["2000-01-01", 36526],
    ["2024-02-29", 45351],
    ["2026-03-01", 46082],
    ["2026-12-31", 46387],
  ])("%s is %d", (text, day) => {
    expect(dayOf(text)).toBe(day);
    expect(dayInWords(day + 0.6)).toBe(text);
  });

  test.each([
    ["06:00", 0.25],
    ["18:30:00", 18.5 / 24],
    ["2000-01-01 12:00", 36526.5],
    ["2000-01-01T12:00", 36526.5],
  ])("%s is %d", (text, day) => {
    expect(dayOf(text)).toBeCloseTo(day, 9);
  });

  test.each([
    "",
    "noon",
    "25:00",
    "12:60",
    "2026-13-01",
    "2026-02-30",
    "11.03.2026",
    "12:00 2000-01-01",
    "2000-01-01 12:00 Z",
  ])('"%s" is none', (text) => {
    expect(dayOf(text)).toBeUndefined();
  });
});
