import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { root, runNode } from "../support/run.js";

const scratch = mkdtempSync(path.join(tmpdir(), "greybody-"));
afterAll(() => rmSync(scratch, { recursive: true }));

const suite = (status: string, ...statuses: string[]): object => ({
  status,
  assertionResults: statuses.map((each) => ({ status: each })),
});

/** What `.ci/run` prints last, and its exit status, for a result of jest and the exit status of the test command. */
async function count(result: string | undefined, exitStatus: string): Promise<readonly [string, number | null]> {
  const file = path.join(scratch, "result.json");
  rmSync(file, { force: true });
  if (result !== undefined) writeFileSync(file, result);
  const { stdout, status } = await runNode(["src/scripts/ci-count.mjs", file, exitStatus]);
  return [stdout, status];
}

const result = (...testResults: object[]): string => JSON.stringify({ testResults });

test("all suites are added up", async () => {
  const two = result(suite("passed", "passed", "passed"), suite("passed", "passed"));
  expect(await count(two, "0")).toEqual(["3 passed, 0 failed\n", 0]);
});

test("a failed test is counted and makes the run fail", async () => {
  const failing = result(suite("passed", "passed"), suite("failed", "failed", "passed", "failed"));
  expect(await count(failing, "1")).toEqual(["2 passed, 2 failed\n", 1]);
});

test("a suite that could not run counts as one failure", async () => {
  expect(await count(result(suite("passed", "passed"), suite("failed")), "1")).toEqual(["1 passed, 1 failed\n", 1]);
});

test("skipped, pending and to-do tests have not passed", async () => {
  const waiting = result(suite("passed", "passed", "pending", "todo", "skipped", "disabled"));
  expect(await count(waiting, "0")).toEqual(["1 passed, 0 failed\n", 0]);
});

test("a run in which nothing passed is no success", async () => {
  expect(await count(result(), "0")).toEqual(["0 passed, 0 failed\n", 1]);
});

test.each([undefined, "", "{"])("no readable result (%j) is a failure, whatever the exit status", async (text) => {
  expect(await count(text, "0")).toEqual(["0 passed, 1 failed\n", 1]);
});

test("a command that ended badly without a failed test is a failure", async () => {
  expect(await count(result(suite("passed", "passed")), "137")).toEqual(["1 passed, 1 failed\n", 1]);
});

test("what .ci/run runs is the README's test command, with a browser required", () => {
  const script = readFileSync(path.join(root, ".ci/run"), "utf8");
  const command = "npm ci && npm test";
  expect(script).toMatch(new RegExp(`^${command}$`, "m"));
  expect(script).toContain("GREYBODY_REQUIRE_BROWSER=1");
  expect(readFileSync(path.join(root, "README.md"), "utf8")).toContain(command);
});
