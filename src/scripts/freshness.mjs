/** Whether dist/ was made from what stands in the tree, and one build at a time. */
import { createHash } from "node:crypto";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { excelSettings } from "./excel-settings.cjs";
import { inRoot, root } from "./paths.mjs";

const record = inRoot("dist/.built-from");
const lock = inRoot(".cache/build.lock");

/** A digest of everything that a build reads. */
export function currentInputs() {
  const digest = createHash("sha256").update(process.version).update(JSON.stringify(excelSettings()));
  const sources = readdirSync(inRoot("src"), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.join(entry.parentPath, entry.name))
    .sort();
  const settings = ["package.json", "package-lock.json", "tsconfig.json", "webpack.config.cjs", "manifest.xml"].map(
    (name) => inRoot(name),
  );
  for (const file of [...sources, ...settings])
    digest.update(path.relative(root, file)).update("\0").update(readFileSync(file));
  return digest.digest("hex");
}

/** Notes that dist/ as a whole was made from these inputs. */
export function recordBuild(inputs) {
  writeFileSync(record, inputs);
}

/** From now on dist/ is not known to be whole. */
export function forgetBuild() {
  rmSync(record, { force: true });
}

/** True where dist/ as a whole was made from the tree as it is. */
export function isFresh() {
  return existsSync(record) && readFileSync(record, "utf8") === currentInputs();
}

/** Runs make while no other build runs in this checkout; a lock whose process is gone does not count. */
export async function withBuildLock(make) {
  mkdirSync(inRoot(".cache"), { recursive: true });
  for (let told = false; !takeLock(); told = true) {
    if (!told) console.log("Another build is running here: waiting for it …");
    await wait(500);
  }
  try {
    return await make();
  } finally {
    rmSync(lock, { force: true });
  }
}

function takeLock() {
  try {
    writeFileSync(lock, String(process.pid), { flag: "wx" });
    return true;
  } catch (error) {
    if (error.code !== "EEXIST") throw error;
    if (!isRunning(lockHolder())) rmSync(lock, { force: true });
    return false;
  }
}

function lockHolder() {
  return existsSync(lock) ? Number(readFileSync(lock, "utf8")) : Number.NaN;
}

function isRunning(pid) {
  try {
    process.kill(pid, 0);
    return true;
  } catch (error) {
    // Another user's process exists all the same.
    return error.code === "EPERM";
  }
}
