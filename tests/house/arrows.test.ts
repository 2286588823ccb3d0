import { cpSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { root, runNode } from "../support/run.js";

/** Imports with the grain: none of them breaks a rule. */
const sound: readonly (readonly [string, string])[] = [
  ["src/core/sound.ts", "../data/leaf.js"],
  ["src/functions/sound.ts", "../core/leaf.js"],
  ["src/templates/sound.ts", "../functions/leaf.js"],
  ["src/host/embedded/sound.ts", "../../functions/leaf.js"],
  ["src/host/excel/sound.ts", "../port.js"],
  ["src/host/file/sound.ts", "../embedded/leaf.js"],
  ["src/host/embedded/layout.ts", "../../templates/contract.js"],
  ["src/pane/sound.ts", "../templates/leaf.js"],
  ["src/pane/excel/sound.ts", "../../host/excel/leaf.js"],
  ["src/page/sound.ts", "../pane/leaf.js"],
  ["src/cli/sound.ts", "../host/embedded/leaf.js"],
  ["src/index.ts", "./core/leaf.js"],
];

/** Imports against it, each with the rule that it breaks. */
const wrong: readonly (readonly [string, string, string])[] = [
  ["src/core/a.ts", "../functions/leaf.js", "core-knows-data-only"],
  ["src/data/a.ts", "../core/leaf.js", "data-knows-nobody"],
  ["src/functions/a.ts", "../host/port.js", "functions-rest-on-core"],
  ["src/functions/b.ts", "../templates/leaf.js", "functions-rest-on-core"],
  ["src/templates/a.ts", "../host/port.js", "templates-rest-on-functions"],
  ["src/templates/b.ts", "../data/leaf.js", "templates-rest-on-functions"],
  ["src/host/a.ts", "../page/leaf.js", "host-rests-on-functions"],
  ["src/host/b.ts", "../data/leaf.js", "host-rests-on-functions"],
  ["src/host/c.ts", "../templates/leaf.js", "host-rests-on-functions"],
  ["src/host/file/a.ts", "../excel/leaf.js", "file-has-the-embedded-engine"],
  ["src/host/embedded/a.ts", "../file/leaf.js", "hosts-know-no-other"],
  ["src/pane/a.ts", "../page/leaf.js", "pane-rests-on-the-port"],
  ["src/pane/b.ts", "../host/excel/leaf.js", "only-its-pane-reaches-excel"],
  ["src/pane/excel/a.ts", "../../page/leaf.js", "pane-rests-on-the-port"],
  ["src/page/a.ts", "../cli/leaf.js", "page-holds-grid-and-pane"],
  ["src/page/b.ts", "../data/leaf.js", "page-holds-grid-and-pane"],
  ["src/page/c.ts", "../host/excel/leaf.js", "only-its-pane-reaches-excel"],
  ["src/cli/a.ts", "../data/leaf.js", "cli-has-no-screen"],
  ["src/cli/b.ts", "../page/leaf.js", "cli-has-no-screen"],
  ["src/cli/c.ts", "../scripts/leaf.js", "scripts-stand-apart"],
  ["src/core/b.ts", "../index.js", "core-knows-data-only"],
  ["src/core/c.ts", "./circle.js", "no-cycles"],
  ["src/core/d.ts", "./nowhere.js", "found"],
  ["src/core/e.ts", "node:fs", "core-is-bare"],
  ["src/functions/e.ts", "node:fs", "core-is-bare"],
  ["src/page/e.ts", "node:fs", "no-node-in-the-browser"],
];

let folder: string;
/** "file breaks rule", for every violation that the project's own rules find in a tree of these imports. */
let found: readonly string[];

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), "greybody-"));
  for (const file of [".dependency-cruiser.cjs", "tsconfig.json"])
    cpSync(path.join(root, file), path.join(folder, file));
  const leaves = [
    "data",
    "core",
    "functions",
    "templates",
    "host/embedded",
    "host/excel",
    "host/file",
    "pane",
    "page",
    "cli",
    "scripts",
  ];
  for (const name of leaves) plant(`src/${name}/leaf.ts`, "export const leaf = 1;\n");
  for (const name of ["src/host/port.ts", "src/templates/contract.ts", "src/page/frame/function-list.ts"])
    plant(name, "export const leaf = 1;\n");
  // A circle is reported once, at the file that comes first.
  const circle = ["src/core/circle.ts", "./c.js"] as const;
  for (const [file, target] of [...sound, ...wrong, circle])
    plant(file, `import { leaf } from "${target}";\nexport const user = leaf;\n`);

  const program = path.join(root, "node_modules/dependency-cruiser/bin/dependency-cruise.mjs");
  const args = [program, "--config", ".dependency-cruiser.cjs", "--output-type", "json", "src"];
  const { stdout } = await runNode(args, { cwd: folder });
  const { summary } = JSON.parse(stdout) as { summary: { violations: { from: string; rule: { name: string } }[] } };
  found = summary.violations.map(({ from, rule }) => `${from} breaks ${rule.name}`);
});

afterAll(() => rmSync(folder, { recursive: true }));

function plant(file: string, text: string): void {
  mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
  writeFileSync(path.join(folder, file), text);
}

test.each(sound)("%s may import %s", (file) => {
  expect(found.filter((line) => line.startsWith(`${file} `))).toEqual([]);
});

test.each(wrong)("%s may not import %s", (file, _target, rule) => {
  expect(found).toContain(`${file} breaks ${rule}`);
});
