/**
 * A second reader: LibreOffice, where it is installed, turns the demo into pages. It knows no spill of our functions, so
 * the formulas are taken out first and what is saved is shown.
 */
import { spawnSync } from "node:child_process";
import { readFileSync } from "node:fs";
import path from "node:path";
import { strFromU8, strToU8, zipSync } from "fflate";
import { partsOf } from "../support/package-rules.js";
import { Folder } from "../support/recalc.js";
import { root } from "../support/run.js";

const isThere = (program: string, option: string): boolean => spawnSync(program, [option]).status === 0;
const inOffice = isThere("soffice", "--version") && isThere("pdftotext", "-v") ? test : test.skip;

inOffice(
  "LibreOffice shows the demo's saved values on pages with a foot",
  () => {
    const folder = new Folder();
    try {
      const parts = new Map(partsOf(new Uint8Array(readFileSync(path.join(root, "workbooks/demo-route.xlsx")))));
      for (const [name, bytes] of parts)
        if (name.startsWith("xl/worksheets/sheet"))
          parts.set(
            name,
            strToU8(
              strFromU8(bytes)
                .replaceAll(/<f[ >].*?<\/f>/gs, "")
                .replaceAll(' cm="1"', ""),
            ),
          );
      const file = folder.put("demo.xlsx", zipSync(Object.fromEntries(parts)));
      const home = `-env:UserInstallation=file://${folder.at("office")}`;
      const args = [home, "--headless", "--convert-to", "pdf", "--outdir", folder.path, file];
      expect(spawnSync("soffice", args).status).toBe(0);
      const { stdout } = spawnSync("pdftotext", ["-layout", folder.at("demo.pdf"), "-"], { encoding: "utf8" });
      for (const words of [
        "Electrical route, demo",
        "4 of 4: serious fault",
        "no grade: needs window temperature",
        "MSB-Q3",
      ])
        expect(stdout).toContain(words);
      const pages = stdout.split("\f").filter((page) => page.trim() !== "");
      pages.forEach((page, i) => {
        expect(page).toContain(`Page ${i + 1} of ${pages.length}`);
        expect(page).toContain("Arithmetic only: a qualified person decides");
        // But for the sentence that says what to do about it.
        // What the first sheet says of #NAME? is no cell that shows it.
        expect(page.replaceAll(/shows #NAME\?/g, "")).not.toMatch(/#NAME\?|#REF!|#VALUE!|#N\/A|Err:/);
      });
    } finally {
      folder.remove();
    }
  },
  120_000,
);
