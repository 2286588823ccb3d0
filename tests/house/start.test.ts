import { spawn, type ChildProcess } from "node:child_process";
import { once } from "node:events";
import { createServer } from "node:net";
import { root, runNode } from "../support/run.js";

// A stale dist/ is built first.
jest.setTimeout(300_000);

/** A port that was free a moment ago. */
async function freePort(): Promise<number> {
  const server = createServer().listen(0, "127.0.0.1");
  await once(server, "listening");
  const bound = server.address();
  server.close();
  await once(server, "close");
  if (bound === null || typeof bound === "string") throw new Error("The server has no port.");
  return bound.port;
}

function start(port: number): ChildProcess {
  return spawn(process.execPath, ["src/scripts/start.mjs", "--port", String(port)], { cwd: root });
}

/** Everything that a program says until it says this. */
async function said(child: ChildProcess, words: string): Promise<string> {
  let text = "";
  for await (const part of child.stdout ?? []) {
    text += String(part);
    if (text.includes(words)) return text;
  }
  throw new Error(`It ended before it said "${words}": ${text}`);
}

test("npm start serves the page, with its script and worker, at the address that it prints, and ends when told", async () => {
  const port = await freePort();
  const child = start(port);
  await said(child, `http://localhost:${port}/`);
  const page = await (await fetch(`http://localhost:${port}/`)).text();
  const scripts = [...page.matchAll(/<script[^>]* src="?([^"> ]+)/g)].map(([, source]) => source);
  expect(scripts).toContain("main.js");
  // Nothing inline: the policy would refuse it.
  expect(page).not.toMatch(/<script[^>]*>[^<]|<style|javascript:| on\w+=/);
  for (const file of [...scripts, "worker.js"]) {
    expect([file, (await fetch(`http://localhost:${port}/${file}`)).status]).toEqual([file, 200]);
  }
  child.kill("SIGTERM");
  await once(child, "exit");
  await expect(fetch(`http://localhost:${port}/`)).rejects.toThrow();
});

test("a taken port is told in one line, with exit status 2", async () => {
  const other = createServer().listen(0, "127.0.0.1");
  await once(other, "listening");
  const port = (other.address() as { port: number }).port;
  const { status, stderr } = await runNode(["src/scripts/start.mjs", "--port", String(port)]);
  other.close();
  expect(status).toBe(2);
  expect(stderr).toBe(
    `greybody: Port ${port} is taken by another program. Choose another one, for example --port ${port + 1}.\n`,
  );
});

test("a port that is none is bad usage", async () => {
  const { status, stderr } = await runNode(["src/scripts/start.mjs", "--port", "http"]);
  expect(status).toBe(2);
  expect(stderr).toMatch(/^greybody: .*port.*\n$/);
});
