/** `npm run readme`: writes the parts of README.md that are made from the catalogue; its own test checks them. */
import { spawnSync } from "node:child_process";
import { inRoot } from "./paths.mjs";

const { status } = spawnSync(process.execPath, [inRoot("node_modules/jest/bin/jest.js"), "tests/docs/readme.test.ts"], {
  stdio: "inherit",
  env: { ...process.env, GREYBODY_WRITE_README: "1" },
});
process.exitCode = status ?? 1;
