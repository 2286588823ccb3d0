/**
 * Real workbooks that other programs have saved (GREYBODY_SHARED/data/xlsx, skipped without it): what a recalculation
 * leaves, what it changes and what it refuses. What is expected of each file comes from its index.json; nothing here is
 * our own output but the list of what is not computed, which is read through when it changes.
 */
import { unzipSync } from "fflate";
import { readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { corpus, folder, isThere, read, stripped, withoutValues } from "../support/corpus.js";
import type { CorpusFile } from "../support/corpus.js";
import { BY_CORPUS } from "./trusted-notes.js";
import { Folder, recalc, type ReportFile } from "../support/recalc.js";

const LIST = path.join(__dirname, "not-computed.json");
const good = corpus("good");
const [GOOD, BAD, STRIPPED] = [
  "real workbooks (skipped without GREYBODY_SHARED/data/xlsx)",
  "broken workbooks (skipped without GREYBODY_SHARED/data/xlsx)",
  "real workbooks without saved values (skipped without GREYBODY_SHARED/data/xlsx)",
];
const describeThere = isThere ? describe : describe.skip;
const LONG = 300_000;

type Cells = ReportFile["cells"];
interface Run {
  readonly out: ReadonlyMap<string, Uint8Array>;
  readonly cells: ReadonlyMap<string, Cells>;
}

let made: Folder;
let ours: Run;
let all: Run;
beforeAll(async () => {
  made = new Folder();
  if (!isThere) return;
  ours = await run("ours", inPlace, []);
  all = await run("all", inPlace, ["--all"]);
}, LONG);
afterAll(() => made.remove());

/** All of them at once, as one command. */
async function run(name: string, paths: readonly string[], options: readonly string[]): Promise<Run> {
  const report = made.at(`${name}.json`);
  const { status, stderr } = await recalc([...paths, "-o", `${made.at(name)}/`, "--report", report, ...options]);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  const files = JSON.parse(readFileSync(report, "utf8")) as ReportFile[];
  const names = paths.map((file) => path.basename(file));
  return {
    out: new Map(names.map((file) => [file, new Uint8Array(readFileSync(path.join(made.at(name), file)))])),
    cells: new Map(names.map((file, i) => [file, files[i]!.cells])),
  };
}

const inPlace = good.map(({ file }) => path.join(folder, file));
const isRight = ({ compare, not_compared: not = [] }: CorpusFile, { sheet, cell, stored }: Cells[number]): boolean =>
  compare !== "none" && compare !== undefined && stored !== null && !not.includes(`${sheet}!${cell}`);

describeThere(GOOD, () => {
  test.each(good.flatMap((one) => ["ours", "all"].map((which): [string, string] => [one.file, which])))(
    "%s (%s): nothing but saved values changes, and no right one",
    (file, which) => {
      const one = good.find((entry) => entry.file === file)!;
      const { out, cells } = which === "all" ? all : ours;
      const [before, after] = [unzipSync(read(file)), unzipSync(out.get(file)!)];
      expect(Object.keys(after)).toEqual(Object.keys(before));
      const sheets = Object.keys(before).filter((name) => {
        const isSame = Buffer.compare(Buffer.from(before[name]!), Buffer.from(after[name]!)) === 0;
        if (!isSame) expect(withoutValues(text(after[name]!))).toBe(withoutValues(text(before[name]!)));
        return !isSame;
      });
      const changed = cells.get(file)!.filter(({ status }) => status === "changed");
      expect(sheets.length > 0).toBe(changed.length > 0);
      expect(changed.filter((cell) => isRight(one, cell))).toEqual([]);
      if (which === "ours" || one.formulas === 0) expect(out.get(file)).toEqual(read(file));
    },
  );
});

describeThere("what only the corpus supports (skipped without GREYBODY_SHARED/data/xlsx)", () => {
  test.each(BY_CORPUS)("%s", (name) => {
    const call = new RegExp(`(?:^|[^\\w.]|_xlfn\\.)${name.replaceAll(".", "\\.")}\\(`);
    const supporting = good.flatMap((one) =>
      all.cells
        .get(one.file)!
        .filter((cell) => cell.status === "same" && isRight(one, cell) && call.test(cell.formula)),
    );
    expect(supporting.length).toBeGreaterThan(0);
  });
});

describeThere(STRIPPED, () => {
  const equal = good.filter((one) => one.recalc_equal === true);
  let bare: Run;
  beforeAll(async () => {
    const paths = equal.map(({ file }) => made.put(`bare-${file}`, stripped(read(file))));
    bare = await run("bare", paths, ["--all"]);
  }, LONG);

  test("at least 95 % of the formulas come back, every other one is listed with its reason", () => {
    const missing: Record<string, Record<string, string>> = {};
    let [formulas, computed] = [0, 0];
    for (const one of equal) {
      const after = new Map(bare.cells.get(`bare-${one.file}`)!.map((cell) => [`${cell.sheet}!${cell.cell}`, cell]));
      for (const saved of all.cells.get(one.file)!) {
        const place = `${saved.sheet}!${saved.cell}`;
        const found = after.get(place);
        // A cell without a formula of its own, in the range of an array, still holds its value.
        if (!isRight(one, saved) || found?.stored !== null) continue;
        formulas++;
        if (found.status !== "kept" && saved.status === "same" && isNear(found.recalculated, saved.recalculated))
          computed++;
        else (missing[one.file] ??= {})[place] = `=${saved.formula}: ${found.reason ?? "another value"}`;
      }
    }
    expect(formulas).toBeGreaterThan(20_000);
    expect(computed / formulas).toBeGreaterThan(0.95);
    if (process.env.GREYBODY_UPDATE === "1") writeFileSync(LIST, `${JSON.stringify(missing, undefined, 2)}\n`);
    expect(missing).toEqual(JSON.parse(readFileSync(LIST, "utf8")));
  });
});

describeThere(BAD, () => {
  test.each(corpus("bad").map(({ file }) => file))("%s is refused in one line and nothing is written", async (file) => {
    const target = made.at(`refused-${path.basename(file)}`);
    const { status, stdout, stderr } = await recalc([path.join(folder, file), "--all", "-o", target]);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toMatch(/^greybody: \S.*: \S.*\.\n$/);
    expect(stderr).not.toMatch(/cannot be worked through/);
    expect(made.names).not.toContain(path.basename(target));
  });
});

const text = (bytes: Uint8Array): string => new TextDecoder().decode(bytes);

/** The rule of index.json: numbers to 1e-9 of their size; the full run has held them against what cancels. */
function isNear(a: Cells[number]["stored"], b: Cells[number]["stored"]): boolean {
  if (typeof a !== "number" || typeof b !== "number") return JSON.stringify(a) === JSON.stringify(b);
  return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
}
