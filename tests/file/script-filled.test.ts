/** A route of `greybody new` that a script has filled: recalculated without an option, all that is worked out is there. */
import { templates } from "../../src/templates/registry.js";
import { CLI } from "../support/calc.js";
import { fillFile, manyRows } from "../support/fill-file.js";
import { Folder, recalc } from "../support/recalc.js";
import { runNode } from "../support/run.js";
import { Worked } from "../support/worked.js";

const ROWS = 60;
const folder = new Folder();
afterAll(() => folder.remove());

test("a filled route needs no --all: look-ups, loads, grades and the list of exceptions are those of what was typed", async () => {
  const [empty, filled, done] = ["empty.xlsx", "filled.xlsx", "done.xlsx"].map((name) => folder.at(name));
  await runNode([CLI, "new", "route", "--rows", String(ROWS), "-o", empty!]);
  folder.put("filled.xlsx", fillFile(folder.read("empty.xlsx"), manyRows(ROWS)));
  const { status, stdout, stderr } = await recalc([filled!, "-o", done!]);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toContain(" 0 kept");

  const template = templates.find(({ name }) => name === "route")!;
  const worked = new Worked(folder.read("done.xlsx"), template.empty({ units: "C", rows: ROWS }));
  const column = (key: string) => worked.column("Readings", key);
  expect(worked.errors()).toEqual([]);
  // The asset's own: the emissivity of its surface, and what it may carry.
  expect(new Set(column("emissivity_used"))).toEqual(new Set([0.95]));
  expect(new Set(column("expected_max"))).toEqual(new Set([200]));
  // Row 5: right is hottest, at 119 + 5 mod 3 A of 200; row 13: 160 A of 200, 32 % above the 121 A beside it.
  expect([column("hottest")[5], column("load_share")[5], column("currents")[5]]).toEqual(["right", 121 / 200, "alike"]);
  expect([column("load_share")[13], column("imbalance")[13]]).toEqual([160 / 200, Number((160 / 121 - 1).toFixed(6))]);
  // Two rows of three are called exceptions, each with a rank, the reading at the limit nowhere among them: row 0 is not.
  const ranks = column("exception_rank").filter((rank) => typeof rank === "number");
  expect(ranks.sort((a, b) => a - b)).toEqual(Array.from({ length: 40 }, (_, i) => i + 1));
  expect(worked.named("exception_count")).toBe(40);
  expect(worked.block("Exceptions", "A14", "B53").every(([, asset]) => asset === "A-1")).toBe(true);

  // Nothing was forgotten: with --all nothing differs.
  const check = await recalc([done!, "--check", "--all"]);
  expect(check.status).toBe(0);
  expect(check.stdout).toContain(" 0 different");
}, 120_000);

test("an asset that is in no list stops no other row: what is looked for in vain is empty, as in Excel, and no error", async () => {
  const filling = manyRows(6);
  const rows = filling.tables.Readings!.map((row, at) => (at === 2 ? { ...row, asset_id: "A-typo" } : row));
  await runNode([CLI, "new", "route", "--rows", "6", "-o", folder.at("typo-empty.xlsx")]);
  folder.put(
    "typo.xlsx",
    fillFile(folder.read("typo-empty.xlsx"), { ...filling, tables: { ...filling.tables, Readings: rows } }),
  );
  const { status, stdout } = await recalc([folder.at("typo.xlsx"), "-o", folder.at("typo-done.xlsx")]);
  expect([status, stdout.includes(" 0 kept")]).toEqual([0, true]);
  const template = templates.find(({ name }) => name === "route")!;
  const worked = new Worked(folder.read("typo-done.xlsx"), template.empty({ units: "C", rows: 6 }));
  expect(worked.errors()).toEqual([]);
  expect(worked.column("Readings", "emissivity_used")).toEqual([0.95, 0.95, "", 0.95, 0.95, 0.95]);
}, 60_000);
