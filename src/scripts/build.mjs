/**
 * `npm run build`: makes dist/. `npm run build -- --only cli,page` makes those targets alone, `--dev` makes them
 * unminified and with source maps.
 */
import { parseArgs } from "node:util";
import { withBuildLock } from "./freshness.mjs";
import { build, targets } from "./make.mjs";

try {
  const { values } = parseArgs({ options: { only: { type: "string" }, dev: { type: "boolean", default: false } } });
  const names = values.only?.split(",");
  const unknown = names?.find((name) => !(name in targets));
  if (unknown !== undefined)
    throw new Error(`there is no target "${unknown}", only ${Object.keys(targets).join(", ")}`);
  await withBuildLock(() => build(names, values.dev ? "development" : "production"));
} catch (error) {
  console.error(`The build failed: ${error.message}`);
  process.exitCode = 1;
}
