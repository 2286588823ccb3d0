import { writeFileSync } from "node:fs";
import { pathToFileURL } from "node:url";
import { inRoot } from "./paths.mjs";

/** Writes dist/excel/functions.json from the catalogue (bundled for node by the excel target just before). */
export async function writeFunctionsJson() {
  const { metadata } = await import(pathToFileURL(inRoot(".cache/built/metadata.mjs")).href);
  writeFileSync(inRoot("dist/excel/functions.json"), `${JSON.stringify(metadata(), undefined, 2)}\n`);
}
