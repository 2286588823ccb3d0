import { readFileSync } from "node:fs";
import path from "node:path";
import { root, runNode } from "../support/run.js";

interface Package {
  readonly name: string;
  readonly licence: string;
  readonly text?: string;
}

/** Calls one export of src/scripts/licences.mjs with JSON in and out. */
async function ask(name: string, ...args: readonly unknown[]): Promise<unknown> {
  const call = `import * as rules from "./src/scripts/licences.mjs";
    console.log(JSON.stringify(await rules[process.argv[1]](...JSON.parse(process.argv[2]))));`;
  const { stdout, stderr } = await runNode(["--input-type=module", "-e", call, name, JSON.stringify(args)]);
  expect(stderr).toBe("");
  return JSON.parse(stdout);
}

const judge = (...packages: readonly Package[]): Promise<unknown> => ask("objections", packages);

test("a package under an allowed licence, with its text, may ship", async () => {
  expect(
    await judge({ name: "good@1.0.0", licence: "(MIT OR GPL-3.0)", text: "Permission is hereby granted" }),
  ).toEqual([]);
});

test.each([
  "GPL-3.0",
  "UNLICENSED",
  "unknown",
  "MIT*",
  "(MIT AND GPL-2.0)",
  "(MIT OR GPL-2.0) AND GPL-3.0",
  "SSPL-1.0",
])("one under %s may not", async (licence) => {
  expect(await judge({ name: "bad@1.0.0", licence, text: "text" })).toEqual([
    `bad@1.0.0 ships under "${licence}", which is not on the allow-list in src/scripts/licences.mjs.`,
  ]);
});

test("nor one without a licence text, nor one of the grid's paid edition", async () => {
  const found = await judge(
    { name: "bare@1.0.0", licence: "MIT" },
    { name: "@univerjs-pro/x@1.0.0", licence: "MIT", text: "text" },
  );
  expect(found).toEqual([
    "bare@1.0.0 ships without a licence text.",
    "@univerjs-pro/x@1.0.0 belongs to the paid edition of the grid and may not ship.",
  ]);
});

test("every package that the bundles hold stands in dist/THIRD-PARTY-LICENCES", async () => {
  const shipped = (await ask("shippedPackages")) as Package[];
  const names = shipped.map(({ name }) => name.replace(/@[^@]+$/, ""));
  expect(names).toEqual(expect.arrayContaining(["@univerjs/core", "@univerjs/engine-formula", "commander", "react"]));
  const file = readFileSync(path.join(root, "dist/THIRD-PARTY-LICENCES"), "utf8").split("\n");
  expect(shipped.filter(({ name, licence }) => !file.includes(`${name} (${licence})`))).toEqual([]);
});

test("no package of the grid's paid edition is installed", () => {
  const lock = JSON.parse(readFileSync(path.join(root, "package-lock.json"), "utf8")) as {
    packages: Record<string, unknown>;
  };
  expect(Object.keys(lock.packages).filter((name) => name.includes("@univerjs-pro/"))).toEqual([]);
});
