/** `npm run bench`: runs each file of tests/bench, or those named (`npm run bench -- correction`), in a process of its own. */
import { spawnSync } from "node:child_process";
import { readdirSync } from "node:fs";
import { findBrowser } from "./browser.mjs";
import { bundle } from "./bundle.mjs";
import { inRoot, root } from "./paths.mjs";

const files = readdirSync(inRoot("tests/bench")).filter((file) => file.endsWith(".ts"));
const all = files.map((file) => file.slice(0, -".ts".length));
const named = process.argv.slice(2);
const unknown = named.find((name) => !all.includes(name));
if (unknown !== undefined) {
  console.error(`There is no bench "${unknown}", only ${all.join(", ")}.`);
  process.exit(2);
}
await bundle("bench", "production");
const browser = findBrowser();
const env = browser === undefined ? process.env : { ...process.env, GREYBODY_BROWSER: browser };
for (const name of named.length > 0 ? named : all) {
  const { status } = spawnSync(process.execPath, ["--expose-gc", inRoot(".cache/bench", `${name}.mjs`)], {
    cwd: root,
    env,
    stdio: "inherit",
  });
  if (status !== 0) process.exitCode = 1;
}
