/** The workbooks of the repository: made from the descriptions as they are, sound, and right in every saved value. */
import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { strFromU8, strToU8, zipSync } from "fflate";
import { columnIndex } from "../../src/host/reference.js";
import { all, brokenRules, partsOf, xmlOf } from "../support/package-rules.js";
import { Folder, recalc } from "../support/recalc.js";
import { root, runNode } from "../support/run.js";

const folder = path.join(root, "workbooks");
const names = readdirSync(folder).filter((name) => name.endsWith(".xlsx"));
const read = (name: string): Uint8Array => new Uint8Array(readFileSync(path.join(folder, name)));
const scratch = new Folder();

afterAll(() => scratch.remove());

test("are as the descriptions make them today (else: npm run workbooks)", async () => {
  const { status, stderr } = await runNode(["src/scripts/workbooks.mjs", "--built", "--to", scratch.path]);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(scratch.names).toEqual([...names].sort());
  for (const name of names) expect([name, Buffer.from(read(name)).equals(scratch.read(name))]).toEqual([name, true]);
}, 120_000);

test.each(names)("%s keeps the rules of a package", (name) => {
  expect(brokenRules(read(name))).toEqual([]);
});

test("no saved value differs from what its formula gives, and none is missing", async () => {
  const { status, stdout } = await recalc(["--check", "--all", ...names.map((name) => path.join(folder, name))]);
  expect(stdout.trim().split("\n")).toHaveLength(names.length);
  for (const line of stdout.trim().split("\n")) expect(line).toMatch(/ 0 different, 0 kept; no difference$/);
  expect(status).toBe(0);
}, 120_000);

test("no cell holds an error, and no empty row says anything", () => {
  for (const name of names) {
    const parts = partsOf(read(name));
    const sheets = [...parts.keys()].filter((part) => part.startsWith("xl/worksheets/sheet"));
    for (const part of sheets) expect(strFromU8(parts.get(part)!)).not.toMatch(/<c [^>]*t="e"/);
    if (name.startsWith("demo")) continue;
    // Folded columns hold counts that others reckon with; headings and headers are shared strings.
    const route = xmlOf(parts, sheets[0]!);
    const [table] = [...parts.keys()].filter((part) => part.startsWith("xl/tables/"));
    // Of Grid the first sheet is one block to paste into.
    if (table === undefined) continue;
    const headerRow = Number(/\d+/.exec(xmlOf(parts, table).attributes.ref!)![0]);
    const folded = new Set(
      all(route, "col").flatMap(({ attributes }) => (attributes.hidden === "1" ? [attributes.min] : [])),
    );
    const says = all(route, "c").filter(({ attributes, children }) => {
      const isShown = !folded.has(String(columnIndex(attributes.r!.replace(/\d/g, "")) + 1));
      const isBody = Number(attributes.r!.replace(/\D/g, "")) > headerRow;
      return isShown && isBody && children.some((one) => one.name === "v" && one.text !== "");
    });
    expect(says.map(({ attributes }) => attributes.r)).toEqual([]);
  }
});

test("a value that was tampered with is found, with its cell, both values and its formula", async () => {
  const parts = new Map(partsOf(read("demo-route.xlsx")));
  const part = "xl/worksheets/sheet1.xml";
  const xml = strFromU8(parts.get(part)!);
  const [cell = "", address = "", formula = "", value = ""] =
    /<c r="([A-Z]+\d+)"[^>]*><f[^>]*>((?:(?!<\/f>).)*_xldudf_GREY_CORRECTED[^<]*)<\/f><v>([\d.]+)<\/v><\/c>/.exec(
      xml,
    ) ?? [];
  expect(address).not.toBe("");
  parts.set(part, strToU8(xml.replace(cell, cell.replace(`<v>${value}</v>`, "<v>99.5</v>"))));
  const file = scratch.put("tampered.xlsx", zipSync(Object.fromEntries(parts)));
  const { status, stdout } = await recalc(["--check", file]);
  expect(status).toBe(1);
  const [line = ""] = stdout.split("\n");
  for (const words of [`Route!${address}`, "99.5", value.slice(0, 8), formula.slice(0, 40).split("&")[0]!])
    expect(line).toContain(words);
}, 60_000);
