import { readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { root } from "../support/run.js";

const read = (file: string): string => readFileSync(path.join(root, file), "utf8");

function filesUnder(folder: string, pattern: RegExp): readonly string[] {
  return readdirSync(path.join(root, folder), { recursive: true, withFileTypes: true })
    .filter((entry) => entry.isFile() && pattern.test(entry.name))
    .map((entry) => path.relative(root, path.join(entry.parentPath, entry.name)));
}

test("no file of ours is longer than 250 lines", () => {
  const files = ["src", "tests"].flatMap((folder) => filesUnder(folder, /\.(ts|tsx|mjs|cjs|css|html)$/));
  expect(files.length).toBeGreaterThan(20);
  const tooLong = files
    .map((file) => `${file}: ${read(file).trimEnd().split("\n").length}`)
    .filter((line) => Number(line.split(": ")[1]) > 250);
  expect(tooLong).toEqual([]);
});

test("the versions that work together are pinned exactly, and nothing runs on installation", () => {
  const pack = JSON.parse(read("package.json")) as Record<"devDependencies" | "scripts", Record<string, string>> & {
    dependencies?: Record<string, string>;
  };
  const all = Object.entries({ ...pack.dependencies, ...pack.devDependencies });
  expect(all.filter(([, version]) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
  expect(pack.devDependencies.typescript).toBe("5.9.3");
  expect(all.filter(([name, version]) => name.startsWith("@univerjs/") && version !== "0.25.1")).toEqual([]);
  expect(Object.keys(pack.scripts).filter((name) => /^(pre|post)?(install|prepare)$/.test(name))).toEqual([]);
});

test("the lock file names no registry", () => {
  expect(read("package-lock.json")).not.toContain('"resolved"');
});

test("nothing that ships names this machine's folder", () => {
  const files = filesUnder("dist", /\.(js|json|html|css|d\.ts)$/);
  expect(files).toEqual(
    expect.arrayContaining(
      ["dist/cli.js", "dist/index.js", "dist/page/main.js", "dist/page/worker.js"].map((file) => path.normalize(file)),
    ),
  );
  expect(files.filter((file) => read(file).includes(root))).toEqual([]);
});
