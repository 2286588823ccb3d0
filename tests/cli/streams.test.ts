/** What the command line does where its own streams fail: one clear line at most, never a stack trace. */
import { spawn, type StdioOptions } from "node:child_process";
import { closeSync, existsSync, openSync } from "node:fs";
import { tmpdir } from "node:os";
import { once } from "node:events";
import { CLI } from "../support/calc.js";

async function end(args: readonly string[], stdio: StdioOptions): Promise<{ status: unknown; complaint: string }> {
  const child = spawn(process.execPath, [CLI, ...args], { stdio });
  let complaint = "";
  child.stderr?.setEncoding("utf8").on("data", (text: string) => (complaint += text));
  // A reader that has gone before anything was written.
  child.stdout?.destroy();
  const [status] = (await once(child, "close")) as [unknown];
  return { status, complaint };
}

test.each([[["--help"]], [["functions"]], [["calc", "=1+1"]]])("%j into a pipe that nobody reads", async (args) => {
  expect(await end(args, ["ignore", "pipe", "pipe"])).toEqual({ status: 0, complaint: "" });
});

const full = existsSync("/dev/full") ? test : test.skip;
full.each([[["--help"]], [["functions"]], [["calc", "=1+1"]]])("%j onto a full disk", async (args) => {
  const disk = openSync("/dev/full", "w");
  const { status, complaint } = await end(args, ["ignore", disk, "pipe"]);
  closeSync(disk);
  expect(status).toBe(2);
  expect(complaint).toMatch(/^greybody: .*no space left.*\n$/);
});

const folders = process.platform === "win32" ? test.skip : test;
folders("a folder is no list of formulas", async () => {
  const folder = openSync(tmpdir(), "r");
  const { status, complaint } = await end(["calc"], [folder, "ignore", "pipe"]);
  closeSync(folder);
  expect(status).toBe(2);
  expect(complaint).toBe("greybody: standard input is a folder, not a list of formulas.\n");
});
