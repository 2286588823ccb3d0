/** What ships: which packages, under which licences, and their texts. Only what the bundles hold counts. */
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { basename } from "node:path";
import { promisify } from "node:util";
import * as checker from "license-checker-rseidelsohn";
import { inRoot, root } from "./paths.mjs";

/** Licences that let us ship a package with its text and ask for nothing else. */
const allowed = new Set([
  "MIT",
  "ISC",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "Apache-2.0",
  "0BSD",
  "CC0-1.0",
  "Unlicense",
  "Zlib",
  "BlueOak-1.0.0",
]);
/** The paid edition of the grid: its packages may never be taken. */
const forbiddenScope = "@univerjs-pro/";

/** True where an SPDX expression leaves a way to ship under the allowed licences. */
export function isAllowed(expression) {
  const plain = expression.replace(/[()]/g, " ").trim();
  return plain
    .split(/\s+OR\s+/)
    .some((choice) => choice.split(/\s+AND\s+/).every((licence) => allowed.has(licence.trim())));
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
  return [...folders].sort().map((folder) => {
    const found = installed.find(([, entry]) => entry.path === inRoot(folder));
    if (!found) return { name: folder.replace(/^.*node_modules\//, ""), licence: "unknown" };
    const [name, { licenses, licenseFile }] = found;
    const isText = licenseFile !== undefined && /^(un)?licen[cs]e|^copying|^notice/i.test(basename(licenseFile));
    return {
      name,
      licence: [licenses].flat().join(" AND "),
      ...(isText ? { text: readFileSync(licenseFile, "utf8").trim() } : {}),
    };
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
