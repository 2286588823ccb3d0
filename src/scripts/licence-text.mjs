/** Finds the licence text of an installed package; entries are those of license-checker-rseidelsohn. */
import { readFileSync, readdirSync } from "node:fs";
import path from "node:path";
import { inRoot } from "./paths.mjs";

const isTextFile = (name) => /^((un)?licen[cs]e|copying)(\.(md|txt|markdown))?$/i.test(name);

/** The licence that a package declares, or that its licence file plainly is where it declares none. */
export function licenceOf({ licenses, path: folder }) {
  const declared = [licenses].flat().join(" AND ");
  if (!declared.startsWith("Custom:")) return declared;
  return /^\s*Apache License\s+Version 2\.0/.test(ownText(folder) ?? "") ? "Apache-2.0" : declared;
}

/**
 * The text: the package's own file, else the licence section of its read-me, else that of another package of the same
 * repository under the same licence, else (MIT and ISC alone) the standard text in its author's name. Undefined where none is.
 */
export function licenceText(entry, all) {
  return ownText(entry.path) ?? readMeText(entry.path) ?? siblingText(entry, all) ?? standardText(entry);
}

function ownText(folder) {
  const file = readdirSync(folder).find(isTextFile);
  return file === undefined ? undefined : readFileSync(path.join(folder, file), "utf8").trim();
}

function readMeText(folder) {
  const file = readdirSync(folder).find((name) => /^readme(\.|$)/i.test(name));
  if (file === undefined) return undefined;
  const section = readFileSync(path.join(folder, file), "utf8").split(/^#+ *licen[cs]e *$/im)[1];
  return section !== undefined && /permission (is hereby granted|to use, copy)/i.test(section)
    ? section.trim()
    : undefined;
}

function siblingText(entry, all) {
  const sibling = all.find(
    (other) =>
      other.repository !== undefined &&
      other.repository === entry.repository &&
      licenceOf(other) === licenceOf(entry) &&
      ownText(other.path) !== undefined,
  );
  return sibling && ownText(sibling.path);
}

/** The ISC licence but for its line of copyright (opensource.org/license/isc). */
const ISC = `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted,
provided that the above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT,
INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN
ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF
THIS SOFTWARE.`;

function standardText(entry) {
  // Where no author is named, the owner of the repository is.
  const holder = entry.publisher ?? /github\.com[/:]([^/]+)\//.exec(entry.repository ?? "")?.[1];
  if (holder === undefined) return undefined;
  const copyright = `Copyright (c) ${holder}`;
  if (licenceOf(entry) === "ISC") return `ISC License\n\n${copyright}\n\n${ISC}`;
  if (licenceOf(entry) !== "MIT") return undefined;
  const ours = readFileSync(inRoot("LICENSE"), "utf8").trim();
  return ours.replace(/^Copyright .*$/m, copyright);
}
