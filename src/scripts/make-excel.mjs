import { cpSync, mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { pathToFileURL } from "node:url";
import { bundle } from "./bundle.mjs";
import { DEVELOPMENT_BASE, excelSettings } from "./excel-settings.cjs";
import { writeIcons } from "./icons.mjs";
import { inRoot } from "./paths.mjs";

/** What Excel loads of office.js on Windows, in a browser and on a Mac; Office's own words in English. */
const officeFiles = [
  "dist/office.js",
  "dist/excel-win32-16.01.js",
  "dist/excel-web-16.00.js",
  "dist/excel-mac-16.00.js",
  "dist/o15apptofilemappingtable.js",
  "dist/en-us/office_strings.js",
  "LICENSE.md",
];

/** Makes the folder that any https host can serve: page, functions, their descriptions, help, icons, manifest. */
export async function makeExcel(mode, folder = inRoot("dist/excel")) {
  const { base, ownOfficeJs } = excelSettings();
  const { version } = JSON.parse(readFileSync(inRoot("package.json"), "utf8"));
  await bundle("excel", mode, { excel: folder });
  const { metadata } = await fromCatalogue("metadata");
  const { helpPage } = await fromCatalogue("help-page");
  const write = (name, text) => writeFileSync(path.join(folder, name), text);
  write("functions.json", `${JSON.stringify(metadata(base), undefined, 2)}\n`);
  write("help.html", helpPage(base, version));
  write("manifest.xml", manifest(base, version));
  writeIcons(path.join(folder, "icons"));
  if (ownOfficeJs) copyOfficeJs(path.join(folder, "office"));
}

/** What the excel target has bundled for node just before. */
async function fromCatalogue(name) {
  return import(pathToFileURL(inRoot(".cache/built", `${name}.mjs`)).href);
}

function manifest(base, version) {
  const source = readFileSync(inRoot("manifest.xml"), "utf8");
  const [before, after] = source.split(/(?<=<OfficeApp)(?=\s)/);
  const body = after
    .replaceAll(DEVELOPMENT_BASE, base)
    .replace(/<Version>[^<]*<\/Version>/, `<Version>${version}.0</Version>`);
  // The comment on top is for whoever changes the source.
  return before.replace(/<!--[^]*?-->\n/, "") + body;
}

function copyOfficeJs(folder) {
  const from = inRoot("node_modules/@microsoft/office-js");
  mkdirSync(folder, { recursive: true });
  for (const file of officeFiles) cpSync(path.join(from, file), path.join(folder, file.replace(/^dist\//, "")));
}
