/** `npm test`: every test, those in a browser included; what follows `--` goes to jest. */
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, readFileSync, rmSync } from "node:fs";
import { ensureBrowser } from "./browser.mjs";
import { inRoot, root } from "./paths.mjs";
import { skipped } from "./tally.mjs";

const browser = ensureBrowser();
if (browser === undefined) {
  console.log("No Chromium, Chrome or Edge was found: install one, or name its program in GREYBODY_BROWSER.");
  console.log(`The tests in a browser will be ${process.env.GREYBODY_REQUIRE_BROWSER === "1" ? "failed" : "skipped"}.`);
}

const output = process.env.GREYBODY_TEST_RESULT ?? inRoot(".cache/test-result.json");
mkdirSync(inRoot(".cache"), { recursive: true });
rmSync(output, { force: true });
const args = ["--json", `--outputFile=${output}`, ...process.argv.slice(2)];
const { status } = spawnSync(process.execPath, [inRoot("node_modules/jest/bin/jest.js"), ...args], {
  cwd: root,
  stdio: "inherit",
  env: { ...process.env, GREYBODY_BUILD: "1", ...(browser === undefined ? {} : { GREYBODY_BROWSER: browser }) },
});

if (existsSync(output)) {
  const names = skipped(JSON.parse(readFileSync(output, "utf8")));
  if (names.length > 0) console.log(`${names.length} skipped:\n${names.map((name) => `  ${name}`).join("\n")}`);
}
process.exitCode = status ?? 1;
