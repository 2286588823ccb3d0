/** What ships: which packages, under which licences, and their texts. Only what the bundles hold counts. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { promisify } from "node:util";
import * as checker from "license-checker-rseidelsohn";
import { licenceOf, licenceText } from "./licence-text.mjs";
import { inRoot, root } from "./paths.mjs";

/** Licences that let us ship a package with its text and ask for nothing else. */
const allowed = new Set([
  "MIT",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "BSL-1.0",
  "0BSD",
  "CC0-1.0",
  "Unlicense",
  "Zlib",
  "BlueOak-1.0.0",
]);
/** The paid edition of the grid: its packages may never be taken. */
const forbiddenScope = "@univerjs-pro/";

/** True where an SPDX expression leaves a way to ship under the allowed licences; a nested one is left to a person. */
function isAllowed(expression) {
  const plain = /^\(([^()]*)\)$/.exec(expression)?.[1] ?? expression;
  const choices = plain.split(/\s+OR\s+/);
  if (choices.length > 1) return choices.some((licence) => allowed.has(licence));
  return plain.split(/\s+AND\s+/).every((licence) => allowed.has(licence));
}

/** One sentence for each package that may not ship; packages are { name, licence, text }. */
export function objections(packages) {
  return packages.flatMap(({ name, licence, text }) => {
    if (name.startsWith(forbiddenScope)) return [`${name} belongs to the paid edition of the grid and may not ship.`];
    if (!isAllowed(licence))
      return [`${name} ships under "${licence}", which is not on the allow-list in src/scripts/licences.mjs.`];
    return text === undefined ? [`${name} ships without a licence text.`] : [];
  });
}

/** The packages that the last build's bundles hold, with licence and text, by name. */
export async function shippedPackages() {
  const lists = ["cli", "page", "excel"].map((target) => inRoot("dist/.shipped", `${target}.json`));
  const folders = new Set(
    lists.filter((file) => existsSync(file)).flatMap((file) => JSON.parse(readFileSync(file, "utf8"))),
  );
  const installed = Object.entries(await promisify(checker.init)({ start: root, relativeLicensePath: false }));
  const entries = installed.map(([, entry]) => entry);
  return [...folders].sort().map((folder) => {
    const found = installed.find(([, entry]) => entry.path === inRoot(folder));
    if (!found) return { name: folder.replace(/^.*node_modules\//, ""), licence: "unknown" };
    const [name, entry] = found;
    return { name, licence: licenceOf(entry), text: licenceText(entry, entries) };
  });
}

/** Writes dist/THIRD-PARTY-LICENCES: each text once, under the packages it stands for. */
export async function writeLicenceTexts() {
  const byText = new Map();
  for (const { name, licence, text = "" } of await shippedPackages()) {
    byText.set(text, [...(byText.get(text) ?? []), `${name} (${licence})`]);
  }
  const parts = [...byText].map(([text, names]) => `${names.join("\n")}\n\n${text}\n`);
  const head = "Greybody's bundles hold the packages named below, each under the licence that follows its name.\n";
  writeFileSync(inRoot("dist/THIRD-PARTY-LICENCES"), [head, ...parts].join(`\n${"-".repeat(80)}\n\n`));
}
