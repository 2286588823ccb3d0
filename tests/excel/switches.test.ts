import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { catalogue } from "../../src/functions/catalogue.js";
import { describeInBrowser } from "../support/browser.js";
import { ExcelPane } from "../support/excel-pane.js";
import { excelResults } from "../support/excel-runtime.js";
import { runNode, type Outcome } from "../support/run.js";

jest.setTimeout(180_000);

const base = "https://tools.example.org/grey-body";
let folder: string;

/** Builds the add-in into a folder of its own. */
const build = (env: Readonly<Record<string, string>>): Promise<Outcome> => {
  const script = `import("./src/scripts/make-excel.mjs").then(({ makeExcel }) => makeExcel("production", process.argv[1]))`;
  return runNode(["-e", script, folder], { env });
};
const read = (file: string): string => readFileSync(path.join(folder, file), "utf8");

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), "greybody-excel-"));
  const env = { GREYBODY_BASE: `${base}/`, GREYBODY_OFFICE_JS: "own", GREYBODY_EXCEL_ERRORS: "blank" };
  const { status, stderr } = await build(env);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
});

afterAll(() => {
  rmSync(folder, { recursive: true });
});

test("GREYBODY_BASE stands wherever an address does", () => {
  const manifest = read("manifest.xml");
  expect(manifest).not.toContain("localhost");
  expect(manifest.split(`"${base}/`)).toHaveLength(21);
  const { functions } = JSON.parse(read("functions.json")) as { functions: { name: string; helpUrl: string }[] };
  expect(functions.map(({ helpUrl }) => helpUrl)).toEqual(catalogue.map(({ name }) => `${base}/help.html#${name}`));
  expect(read("help.html")).toContain(`served from ${base}:`);
});

test("GREYBODY_OFFICE_JS=own brings office.js with what Excel loads of it and its licence, and asks no other origin", () => {
  const files = ["office.js", "excel-win32-16.01.js", "excel-web-16.00.js", "excel-mac-16.00.js"];
  for (const file of [...files, "o15apptofilemappingtable.js", "en-us/office_strings.js", "LICENSE.md"])
    expect([file, existsSync(path.join(folder, "office", file))]).toEqual([file, true]);
  expect(read("pane.html")).toContain("src=office/office.js");
  expect(read("pane.html")).not.toMatch(/https:/);
});

test("GREYBODY_EXCEL_ERRORS=blank gives an empty text in place of each error", async () => {
  const [single, spill] = await excelResults(
    [
      ["CORRECTED", 58, 95, 22],
      ["CORRECTED", [[58], [58]], [[0.85], [95]], 22],
    ],
    path.join(folder, "functions.js"),
  );
  expect(single).toEqual([[""]]);
  expect(spill).toEqual([[expect.any(Number)], [""]]);
});

test.each([
  [
    { GREYBODY_BASE: "http://example.org" },
    /GREYBODY_BASE is "http:\/\/example\.org": it must be a plain https address/,
  ],
  [{ GREYBODY_BASE: 'https://example.org/"><x' }, /must be a plain https address/],
  [{ GREYBODY_OFFICE_JS: "self" }, /GREYBODY_OFFICE_JS is "self": it must be cdn or own/],
  [{ GREYBODY_EXCEL_ERRORS: "none" }, /GREYBODY_EXCEL_ERRORS is "none": it must be shown or blank/],
])("a wrong setting stops the build: %j", async (env, said) => {
  const { status, stderr } = await runNode(["src/scripts/build.mjs", "--only", "excel"], { env });
  expect(status).toBe(1);
  expect(stderr).toMatch(said);
});

describeInBrowser("Microsoft's own office.js", () => {
  test("takes every function under the page's policy, and the page knows that this is not Excel", async () => {
    const pane = await ExcelPane.open(undefined, {}, "pane.html", folder);
    try {
      await pane.page.getByText("opened outside Excel").waitFor();
      const names = await pane.page.evaluate(() => {
        const { CustomFunctions } = globalThis as unknown as {
          CustomFunctions: { _association: { mappings: Record<string, unknown> } };
        };
        return Object.keys(CustomFunctions._association.mappings);
      });
      expect(names.sort()).toEqual(catalogue.map(({ name }) => name).sort());
      expect(pane.faults.filter((fault) => !fault.startsWith("policy: frame-src"))).toEqual([]);
    } finally {
      await pane.close();
    }
  });
});
