/** Makes dist/, target by target. */
import { rmSync } from "node:fs";
import { buildLibrary } from "./build-library.mjs";
import { currentInputs, forgetBuild, isFresh, recordBuild, withBuildLock } from "./freshness.mjs";
import { writeLicenceTexts } from "./licences.mjs";
import { bundle } from "./bundle.mjs";
import { makeExcel } from "./make-excel.mjs";
import { inRoot } from "./paths.mjs";

/** What each target is and how long it took on two cores, first and with a warm cache. */
export const targets = {
  library: { what: "the library (dist/index.js with types)", usual: "5 s", make: () => buildLibrary() },
  cli: {
    what: "the command line (dist/cli.js)",
    usual: "5 to 10 s",
    make: async (mode) => {
      for (const old of ["dist/cli", "dist/cli.js.map"]) rmSync(inRoot(old), { recursive: true, force: true });
      await bundle("cli", mode);
    },
  },
  page: {
    what: "the page and its worker (dist/page/)",
    usual: "half a minute to a minute, 10 s when little has changed",
    make: (mode) => bundle("page", mode),
  },
  excel: {
    what: "the add-in for Excel (dist/excel/)",
    usual: "5 to 10 s",
    make: (mode) => makeExcel(mode),
  },
};

/** Builds the named targets one after another, each with a line of its own; throws when one fails. */
export async function build(names = Object.keys(targets), mode = "production") {
  const inputs = currentInputs();
  forgetBuild();
  const complete = names.length === Object.keys(targets).length && mode === "production";
  for (const name of names) {
    const { what, usual, make } = targets[name];
    console.log(`Building ${what}; usually ${usual} …`);
    const start = performance.now();
    await make(mode);
    console.log(`  done in ${((performance.now() - start) / 1000).toFixed(1)} s`);
  }
  await writeLicenceTexts();
  if (complete) recordBuild(inputs);
}

/** Builds dist/ unless it was made from the tree as it is. */
export async function ensureBuilt() {
  await withBuildLock(async () => {
    if (isFresh()) console.log("dist/ is up to date.");
    else await build();
  });
}
