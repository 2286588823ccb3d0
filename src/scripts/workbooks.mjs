/**
 * `npm run workbooks`: makes the workbooks in workbooks/ by the command line, as anybody can. With --built the command
 * line is taken as it stands; --to FOLDER writes them elsewhere.
 */
import { spawnSync } from "node:child_process";
import { rmSync } from "node:fs";
import path from "node:path";
import { parseArgs } from "node:util";
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
  }
} catch (error) {
  console.error(`The workbooks could not be made: ${error.message}`);
  process.exitCode = 1;
}
