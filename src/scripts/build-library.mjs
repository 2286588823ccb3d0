import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import path from "node:path";
import { spawnSync } from "node:child_process";
import { inRoot, root } from "./paths.mjs";

/** Compiles src/index.ts and what it imports into dist/ as ES modules with types, in a form that node 20 loads. */
export function buildLibrary() {
  for (const folder of ["core", "data"]) rmSync(inRoot("dist", folder), { recursive: true, force: true });
  const tsc = spawnSync(process.execPath, [inRoot("node_modules/typescript/bin/tsc"), "-p", "src/core/tsconfig.json"], {
    cwd: root,
    encoding: "utf8",
  });
  if (tsc.status !== 0) throw new Error(`the library does not compile\n${tsc.stdout}${tsc.stderr}`);
  for (const folder of ["core", "data"]) rewriteJson(inRoot("dist", folder));
  for (const file of ["index.js", "index.d.ts"]) rewriteImports(inRoot("dist", file));
}

/**
 * Node 20 refuses `import x from "./m.json"`, which is what tsc leaves: each m.json becomes m.json.js with types
 * beside it, and the imports follow.
 */
function rewriteJson(folder) {
  for (const name of filesUnder(folder)) {
    if (name.endsWith(".json")) {
      const text = readFileSync(name, "utf8").trim();
      writeFileSync(`${name}.js`, `export default ${text};\n`);
      writeFileSync(`${name}.d.ts`, `declare const data: ${typeOf(JSON.parse(text))};\nexport default data;\n`);
      rmSync(name);
    } else if (/\.(js|d\.ts)$/.test(name) && !/\.json\.(js|d\.ts)$/.test(name)) rewriteImports(name);
  }
}

function rewriteImports(file) {
  const text = readFileSync(file, "utf8");
  const rewritten = text.replace(
    /(from\s+|import\s*\(?\s*)"(\.{1,2}\/[^"]+\.json)"(\s*with\s*\{[^}]*\})?/g,
    '$1"$2.js"',
  );
  if (rewritten !== text) writeFileSync(file, rewritten);
}

function filesUnder(folder) {
  mkdirSync(folder, { recursive: true });
  const entries = readdirSync(folder, { recursive: true, withFileTypes: true });
  return entries.filter((entry) => entry.isFile()).map((entry) => path.join(entry.parentPath, entry.name));
}

/** The type of a JSON value as TypeScript would infer it for an import. */
function typeOf(value) {
  if (Array.isArray(value)) return `(${[...new Set(value.map(typeOf))].join(" | ") || "never"})[]`;
  if (value === null) return "null";
  if (typeof value !== "object") return typeof value;
  return `{ ${Object.entries(value)
    .map(([key, inner]) => `${JSON.stringify(key)}: ${typeOf(inner)};`)
    .join(" ")} }`;
}
