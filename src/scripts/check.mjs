/** `npm run check`: all steps, or those named. Each prints what is wrong; the exit status is 1 if any found something. */
import { spawnSync } from "node:child_process";
import { objections, shippedPackages } from "./licences.mjs";
import { ensureBuilt } from "./make.mjs";
import { inRoot, root } from "./paths.mjs";

/** Runs a package's program; true where it found nothing wrong. */
const tool = (program, ...args) =>
  spawnSync(process.execPath, [inRoot("node_modules", program), ...args], { cwd: root, stdio: "inherit" }).status === 0;

const steps = {
  types: () =>
    ["tsconfig.json", "src/core/tsconfig.json"]
      .map((file) => tool("typescript/bin/tsc", "-p", file, "--noEmit"))
      .every(Boolean),
  // No cache: what a line means depends on the types of other files.
  lint: () => tool("eslint/bin/eslint.js", ".", "--max-warnings", "0"),
  format: () =>
    tool(
      "prettier/bin/prettier.cjs",
      "--check",
      "--log-level",
      "warn",
      "--cache",
      "--cache-location",
      ".cache/prettier",
      ".",
    ),
  arrows: () => tool("dependency-cruiser/bin/dependency-cruise.mjs", "--config", ".dependency-cruiser.cjs", "src"),
  unused: () => tool("knip/bin/knip.js"),
  licences: async () => {
    await ensureBuilt();
    const found = objections(await shippedPackages());
    for (const objection of found) console.error(objection);
    return found.length === 0;
  },
};

const named = process.argv.slice(2);
const unknown = named.find((name) => !(name in steps));
if (unknown !== undefined) {
  console.error(`There is no step "${unknown}", only ${Object.keys(steps).join(", ")}.`);
  process.exit(2);
}
const failed = [];
for (const name of named.length > 0 ? named : Object.keys(steps)) {
  console.log(`Checking ${name} …`);
  if (!(await steps[name]())) failed.push(name);
}
if (failed.length > 0) {
  console.error(`Not in order: ${failed.join(", ")}.`);
  process.exitCode = 1;
}
