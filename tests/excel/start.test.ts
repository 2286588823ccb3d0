import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { get } from "node:https";
import { tmpdir } from "node:os";
import path from "node:path";
import { generateCertificates } from "office-addin-dev-certs";
import { serve } from "../../src/cli/serve.js";
import { root, runNode } from "../support/run.js";

let home: string;

beforeAll(() => {
  home = mkdtempSync(path.join(tmpdir(), "greybody-home-"));
});

afterAll(() => {
  rmSync(home, { recursive: true });
});

test("without a trusted certificate npm run start:excel says what to do and fails", async () => {
  const env = { HOME: home, USERPROFILE: home };
  const { status, stdout, stderr } = await runNode(["src/scripts/start-excel.mjs"], { env });
  expect([status, stdout]).toEqual([1, ""]);
  expect(stderr).toContain("npx office-addin-dev-certs install");
});

test.each(["http", "0", "65536"])("%s is no port", async (port) => {
  const { status, stderr } = await runNode(["src/scripts/start-excel.mjs", "--port", port]);
  expect([status, stderr]).toEqual([1, `A port is a whole number from 1 to 65535, not "${port}".\n`]);
});

test("over https it serves the add-in to Excel, on the web too, without a second policy beside the page's", async () => {
  jest.spyOn(console, "log").mockImplementation(() => undefined);
  const [ca, cert, key] = ["ca.crt", "localhost.crt", "localhost.key"].map((name) => path.join(home, name));
  await generateCertificates(ca, cert, key, 2, ["localhost", "127.0.0.1"]);
  const pem = (file: string | undefined): string => readFileSync(file ?? "", "utf8");
  const headers = { "Access-Control-Allow-Origin": "*" };
  const tls = { cert: pem(cert), key: pem(key) };
  const serving = await serve({ port: 0, root: path.join(root, "dist/excel"), tls, headers });
  try {
    expect(serving.address).toMatch(/^https:\/\/localhost:\d+\/$/);
    const answer = await new Promise<{ status: number | undefined; headers: NodeJS.Dict<string | string[]> }>(
      (resolve, reject) => {
        get(`${serving.address}functions.json`, { ca: pem(ca) }, (response) => {
          response.resume();
          resolve({ status: response.statusCode, headers: response.headers });
        }).on("error", reject);
      },
    );
    expect(answer.status).toBe(200);
    expect(answer.headers).toMatchObject({
      "access-control-allow-origin": "*",
      "content-type": expect.stringContaining("json") as string,
    });
    expect(answer.headers).not.toHaveProperty("content-security-policy");
  } finally {
    await serving.close();
  }
});
