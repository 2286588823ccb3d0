/**
 * `npm run workbooks`: makes the workbooks in workbooks/ by the command line, as anybody can. With --built the command
 * line is taken as it stands; --to FOLDER writes them elsewhere.
 */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { parseArgs } from "node:util";
import { standIn } from "./demo-pictures.mjs";
import { withBuildLock } from "./freshness.mjs";
import { build } from "./make.mjs";
import { inRoot } from "./paths.mjs";

/** Every template and every demo as `greybody new --help` lists them, each file named after its own; the route in °F too. */
function workbooksOf(cli) {
  const { stdout } = spawnSync(process.execPath, [cli, "new", "--help"], { encoding: "utf8" });
  const [, list = ""] = stdout.split("Templates:\n");
  const names = list.split("\n").flatMap((line) => /^ {2}([\w-]+) {2}/.exec(line)?.[1] ?? []);
  if (names.length === 0) throw new Error("`greybody new --help` lists no templates");
  return [...names.map((name) => [`${name}.xlsx`, [name]]), ["route-F.xlsx", ["route", "--units", "F"]]];
}

/** Pictures for the boxes of a demo: drawn after the numbers that they ask for, and placed by the command itself. */
function placePictures(cli, file) {
  const folder = mkdtempSync(path.join(tmpdir(), "greybody-pictures-"));
  try {
    const report = path.join(folder, "report.json");
    const run = (...args) =>
      spawnSync(process.execPath, [cli, "pictures", file, folder, ...args], { encoding: "utf8" });
    run("--report", report);
    for (const { kind, shown } of JSON.parse(readFileSync(report, "utf8")).boxes) {
      const picture = standIn(kind, shown);
      if (picture !== undefined) writeFileSync(path.join(folder, `${shown}.png`), picture);
    }
    const { status, stdout, stderr } = run("--in-place");
    if (status !== 0) throw new Error(`${path.basename(file)} has not all of its pictures: ${stdout}${stderr}`);
  } finally {
    rmSync(folder, { recursive: true });
  }
}

const { values } = parseArgs({ options: { to: { type: "string" }, built: { type: "boolean", default: false } } });
const folder = values.to ?? inRoot("workbooks");
try {
  if (!values.built) await withBuildLock(() => build(["cli"]));
  for (const [name, args] of workbooksOf(inRoot("dist/cli.js"))) {
    const file = path.join(folder, name);
    rmSync(file, { force: true });
    const { status } = spawnSync(process.execPath, [inRoot("dist/cli.js"), "new", ...args, "-o", file], {
      stdio: "inherit",
    });
    if (status !== 0) throw new Error(`${name} was not made`);
    if (/^demo-.*route\.xlsx$/.test(name)) placePictures(inRoot("dist/cli.js"), file);
  }
} catch (error) {
  console.error(`The workbooks could not be made: ${error.message}`);
  process.exitCode = 1;
}
