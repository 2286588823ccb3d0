/** `.ci/run` ends here: the last line from jest's own result, and an honest exit status. */
import { existsSync, readFileSync } from "node:fs";
import { tally } from "./tally.mjs";

const [file, status] = process.argv.slice(2);
const { passed, failed } = tally(read(file));
// A run that ended badly without a failed test (npm ci, a crash) is a failure all the same.
const honest = status !== "0" && failed === 0 ? 1 : failed;
console.log(`${passed} passed, ${honest} failed`);
process.exitCode = honest === 0 && passed > 0 ? 0 : 1;

function read(path) {
  try {
    return existsSync(path) ? JSON.parse(readFileSync(path, "utf8")) : undefined;
  } catch {
    return undefined;
  }
}
