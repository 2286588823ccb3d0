import { mkdirSync, mkdtempSync, rmSync, symlinkSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { root, runNode } from "../support/run.js";

let folder: string;

beforeAll(() => {
  folder = mkdtempSync(path.join(tmpdir(), "greybody-"));
  mkdirSync(path.join(folder, "node_modules"));
  symlinkSync(root, path.join(folder, "node_modules/greybody"), "junction");
});

afterAll(() => rmSync(folder, { recursive: true }));

const program = `import { GreybodyError } from "greybody";
const error: GreybodyError = new GreybodyError({ code: "INVALID", argument: "emissivity", given: 95 });
export const said: string = error.code;
`;

test("a program in plain node imports the library by its name", async () => {
  writeFileSync(path.join(folder, "use.mjs"), `${program.replace(/: \w+ =/g, " =")}console.log(said);\n`);
  const { status, stdout, stderr } = await runNode(["use.mjs"], { cwd: folder });
  expect([status, stdout, stderr]).toEqual([0, "INVALID\n", ""]);
});

test("a strict TypeScript program finds its types, without those of the page, node or Office", async () => {
  writeFileSync(path.join(folder, "use.ts"), program);
  const options = ["--strict", "--noEmit", "--module", "nodenext", "--target", "es2022", "--lib", "es2022"];
  const tsc = path.join(root, "node_modules/typescript/bin/tsc");
  const { status, stdout } = await runNode([tsc, ...options, "use.ts"], { cwd: folder });
  expect([stdout, status]).toEqual(["", 0]);
});
