import { mkdtempSync, mkdirSync, rmSync, writeFileSync } from "node:fs";
import { request } from "node:http";
import { tmpdir } from "node:os";
import path from "node:path";
import { PortTakenError, serve, type Serving } from "../../src/cli/serve.js";

interface Answer {
  readonly status: number | undefined;
  readonly headers: Readonly<Record<string, string | string[] | undefined>>;
  readonly body: string;
}

let folder: string;
let serving: Serving;
let port: number;

beforeAll(async () => {
  folder = mkdtempSync(path.join(tmpdir(), "greybody-"));
  mkdirSync(path.join(folder, "page/sub"), { recursive: true });
  mkdirSync(path.join(folder, "page-other"));
  writeFileSync(path.join(folder, "secret.txt"), "outside");
  writeFileSync(path.join(folder, "page-other/secret.txt"), "outside");
  writeFileSync(path.join(folder, "page/index.html"), "<title>page</title>");
  writeFileSync(path.join(folder, "page/.hidden"), "hidden");
  writeFileSync(path.join(folder, "page/sub/worker.js"), "1;");
  serving = await serve({ port: 0, root: path.join(folder, "page") });
  port = Number(new URL(serving.address).port);
});

afterAll(async () => {
  await serving.close();
  rmSync(folder, { recursive: true });
});

/** A request whose path is sent as it stands: fetch would tidy it up first. */
function ask(target: string, options: { method?: string; host?: string; via?: string } = {}): Promise<Answer> {
  return new Promise((resolve, reject) => {
    const { method = "GET", host = `localhost:${port}`, via = "127.0.0.1" } = options;
    const sent = request({ host: via, port, path: target, method, headers: { host } }, (response) => {
      let body = "";
      response.setEncoding("utf8").on("data", (text: string) => (body += text));
      response.on("end", () => resolve({ status: response.statusCode, headers: response.headers, body }));
    });
    sent.on("error", reject).end();
  });
}

test("the folder's page answers at / with its type and the content security policy", async () => {
  const { status, headers, body } = await ask("/");
  expect([status, body, headers["content-type"]]).toEqual([200, "<title>page</title>", "text/html; charset=utf-8"]);
  expect(String(headers["content-security-policy"]).split("; ")).toEqual(
    expect.arrayContaining([
      "default-src 'none'",
      "script-src 'self'",
      "worker-src 'self'",
      "connect-src 'self'",
      "base-uri 'none'",
    ]),
  );
  expect(headers["x-frame-options"]).toBeUndefined();
});

test("a script has the type that a browser asks of a worker, whatever follows the question mark", async () => {
  const { status, headers } = await ask("/sub/worker.js?v=1");
  expect([status, headers["content-type"], headers["x-content-type-options"]]).toEqual([
    200,
    "text/javascript; charset=utf-8",
    "nosniff",
  ]);
});

test.each([
  "/../secret.txt",
  "/sub/../../secret.txt",
  "/..%2fsecret.txt",
  "/%2e%2e/secret.txt",
  "/sub/%2e%2e/%2e%2e/secret.txt",
  "/..\\secret.txt",
  "/..%5csecret.txt",
  "/../page-other/secret.txt",
  "//etc/passwd",
  "/%00",
  "/%zz",
  "/.hidden",
])("%s leads nowhere", async (target) => {
  const { status, body } = await ask(target);
  expect(status).toBe(404);
  expect(body).toBe("There is nothing at this address.\n");
});

test.each(["/sub", "/sub/"])("a folder (%s) is not listed", async (target) => {
  expect((await ask(target)).status).toBe(404);
});

test("HEAD answers without a body, anything that would write is refused", async () => {
  const head = await ask("/", { method: "HEAD" });
  expect([head.status, head.body]).toEqual([200, ""]);
  const post = await ask("/", { method: "POST" });
  expect([post.status, post.headers.allow]).toEqual([405, "GET, HEAD"]);
});

test("another site's name for this machine is refused", async () => {
  expect((await ask("/", { host: "elsewhere.example" })).status).toBe(403);
});

test("a taken port is an error that says so and what to do", async () => {
  const again = serve({ port, root: folder });
  await expect(again).rejects.toThrow(PortTakenError);
  await expect(again).rejects.toThrow(
    `Port ${port} is taken by another program. Choose another one, for example --port ${port + 1}.`,
  );
});

test("after closing nothing answers and the port is free again", async () => {
  const other = await serve({ port: 0, root: folder });
  await other.close();
  const again = await serve({ port: Number(new URL(other.address).port), root: folder });
  expect(again.address).toBe(other.address);
  await again.close();
});
