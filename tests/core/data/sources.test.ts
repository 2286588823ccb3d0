/** The tables under src/data: their shape, and that every number says where it comes from. */
import Ajv from "ajv";
import { readFileSync } from "node:fs";
import path from "node:path";
import { BUILT_IN_CRITERIA } from "../../../src/data/criteria.js";
import { MATERIALS } from "../../../src/data/emissivity.js";
import { FIGURES } from "../../../src/data/figures.js";
import { INTERVALS } from "../../../src/data/intervals.js";
import { LIMITS } from "../../../src/data/limits.js";
import { METHODS } from "../../../src/data/methods.js";
import { PRIORITY_MATRICES } from "../../../src/data/priorities.js";
import { REFERENCES } from "../../../src/data/references.js";
import { CHECK_RULES } from "../../../src/data/check-rules.js";
import { RULES } from "../../../src/data/rules.js";
import { WINDOWS } from "../../../src/data/windows.js";
import { catalogue } from "../../../src/functions/catalogue.js";
import * as schemas from "../../support/data-schemas.js";

const file = (name: string): unknown =>
  JSON.parse(readFileSync(path.join(__dirname, "../../../src/data", name), "utf8"));

describe("shape", () => {
  const ajv = new Ajv({ allErrors: true });
  it.each([
    ["criteria.json", schemas.CRITERIA],
    ["rules.json", schemas.RULES],
    ["check-rules.json", schemas.RULES],
    ["references.json", schemas.REFERENCES],
    ["methods.json", schemas.METHODS],
    ["air-model.json", schemas.AIR_MODEL],
    ["emissivity.json", schemas.EMISSIVITY],
    ["windows.json", schemas.WINDOWS],
    ["limits.json", schemas.LIMITS],
    ["intervals.json", schemas.INTERVALS],
    ["priorities.json", schemas.PRIORITIES],
    ["figures.json", schemas.FIGURES],
  ])("%s", (name, schema) => {
    const valid = ajv.validate(schema, file(name));
    expect(ajv.errors ?? []).toEqual([]);
    expect(valid).toBe(true);
  });
});

describe("the bibliography", () => {
  const used = new Set([
    ...BUILT_IN_CRITERIA.flatMap((set) => set.rows.map((row) => row.source)),
    ...Object.values(RULES).map((rule) => rule.source),
    ...Object.values(CHECK_RULES).map((rule) => rule.source),
    ...MATERIALS.flatMap(({ ranges }) => ranges.flatMap((range) => [range.source, ...(range.also ?? [])])),
    ...WINDOWS.flatMap(({ ranges }) => ranges.map((range) => range.source)),
    ...[...LIMITS, ...INTERVALS, ...PRIORITY_MATRICES, ...FIGURES].map((row) => row.source),
    ...METHODS.flatMap((method) => method.sources),
    ...catalogue.flatMap((spec) => spec.sources),
  ]);
  it("has every key that is used", () => {
    expect([...used].filter((key) => !(key in REFERENCES))).toEqual([]);
  });
  it("has no key that is not used", () => {
    expect(Object.keys(REFERENCES).filter((key) => !used.has(key))).toEqual([]);
  });
});

describe("built-in criteria", () => {
  it("are named once, NETA's numbers first", () => {
    const names = ["NETA-100.18", "house", "house-limit", "house-indirect", "house-mechanical", "historic-military"];
    expect(BUILT_IN_CRITERIA.map((set) => set.name)).toEqual(names);
  });
  it.each(BUILT_IN_CRITERIA.map((set) => [set.name, set] as const))(
    "%s: edges and grades rise within a reference",
    (_, set) => {
      for (const reference of new Set(set.rows.map((row) => row.reference))) {
        const rows = set.rows.filter((row) => row.reference === reference);
        for (const of of [(i: number) => rows[i]!.edge, (i: number) => rows[i]!.grade]) {
          expect(rows.map((_row, i) => of(i))).toEqual(
            [...new Set(rows.map((_row, i) => of(i)))].sort((a, b) => a - b),
          );
        }
      }
    },
  );
  it("ship only what was read, or is our own, or historic and from a secondary source, and say so", () => {
    const shipped = BUILT_IN_CRITERIA.flatMap((set) => set.rows);
    expect([...new Set(shipped.map((row) => row.evidence))].sort()).toEqual(["own", "read", "secondary"]);
    for (const { name, about, rows } of BUILT_IN_CRITERIA) {
      if (rows.some((row) => row.evidence === "secondary")) expect(`${name}: ${about}`).toMatch(/^historic.*secondary/);
    }
    expect(shipped.every((row) => (row.evidence === "own") === (row.source === "greybody-house"))).toBe(true);
  });
  it("house, over air: what a joint with 50 K permitted shows at 60, 75, 88 and 100 % load, to half a kelvin", () => {
    const edges = BUILT_IN_CRITERIA.find((set) => set.name === "house")!.rows.filter(
      (row) => row.reference === "ambient",
    );
    for (const [i, load] of [0.6, 0.75, 0.88, 1].entries()) {
      expect(Math.abs(50 * load ** RULES.exponent.value - edges[i]!.edge)).toBeLessThan(0.5);
    }
  });
});

describe("rules that follow from others", () => {
  it("the largest factor is the square law at the usual minimum load", () => {
    expect(RULES.factor_most.value).toBeCloseTo(RULES.minimum_load.value ** -RULES.exponent_high.value, 12);
  });
  it("the low exponent is free convection's", () => {
    expect(RULES.exponent_low.value).toBeCloseTo(2 / 1.25, 12);
  });
});
