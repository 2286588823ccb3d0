import { spawnSync } from "node:child_process";
import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { makeWorkbook } from "../support/workbook-file.js";

/** A workbook of invented readings with eight single cells of ours a row, through `greybody recalc` (needs npm run build). */
const ROWS = Number(process.env.ROWS ?? 100_000);
const MOST_SECONDS = 20;
const MOST_MEMORY = 300 * 2 ** 20 + 5 * 1024 * ROWS * 8;

const FORMULAS = [
  (r: number) => `_xldudf_GREY_CORRECTED(A${r},B${r},C${r})`,
  (r: number) => `_xldudf_GREY_CORRECTED(IF(A${r}="","",A${r}),0.9,22,0.98,20)`,
  (r: number) => `_xldudf_GREY_APPARENT(F${r},B${r},$C$2)`,
  (r: number) => `_xldudf_GREY_RADIANCE(A${r})`,
  (r: number) => `_xldudf_GREY_RISE_AT_LOAD(D${r},E${r},100)`,
  (r: number) => `_xldudf_GREY_GRADE(J${r},"similar")`,
  (r: number) => `IFERROR(_xldudf_GREY_RISE_AT_LOAD(D${r},E${r},100,1.6),"")`,
  (r: number) => `IF(D${r}="","",_xldudf_GREY_GRADE(D${r},"ambient",,,"words"))`,
];

let state = 20261126;
const next = (): number => (state = (state * 48271) % 2147483647) / 2147483647;
const reading = (from: number, to: number): number => Math.round((from + (to - from) * next()) * 10) / 10;

function rows(isShared: boolean): string {
  const lines: string[] = [];
  for (let i = 0; i < ROWS; i++) {
    const r = i + 2;
    const inputs = [reading(30, 90), 0.5 + reading(0, 4) / 10, reading(15, 30), reading(1, 40), reading(45, 100)];
    const cells = inputs.map((value, c) => `<c r="${"ABCDE"[c]}${r}"><v>${value}</v></c>`);
    FORMULAS.forEach((formula, c) => {
      const text = formula(r).replaceAll('"', "&quot;");
      const head = i === 0 ? ` ref="${"FGHIJKLM"[c]}2:${"FGHIJKLM"[c]}${ROWS + 1}"` : "";
      const shared = `<f t="shared"${head} si="${c}"${i === 0 ? `>${text}</f>` : "/>"}`;
      cells.push(`<c r="${"FGHIJKLM"[c]}${r}">${isShared ? shared : `<f>${text}</f>`}<v>0</v></c>`);
    });
    lines.push(`<row r="${r}">${cells.join("")}</row>`);
  }
  return lines.join("");
}

const folder = mkdtempSync(path.join(tmpdir(), "greybody-bench-"));
try {
  for (const isShared of [false, true]) {
    const file = path.join(folder, isShared ? "shared.xlsx" : "written.xlsx");
    writeFileSync(file, makeWorkbook({ sheets: [{ name: "Route", rows: rows(isShared) }], level: 1 }));
    // Of the process itself, so that others on the machine do not count.
    const probe = "process.on('exit',()=>process.stderr.write(JSON.stringify(process.resourceUsage())))";
    const args = ["--import", `data:text/javascript,${encodeURIComponent(probe)}`, "dist/cli.js", "recalc", file];
    const start = performance.now();
    const run = spawnSync(process.execPath, [...args, "-o", path.join(folder, "out.xlsx")], { encoding: "utf8" });
    const wall = (performance.now() - start) / 1000;
    const used = JSON.parse(run.stderr) as NodeJS.ResourceUsage;
    const seconds = (used.userCPUTime + used.systemCPUTime) / 1e6;
    const memory = used.maxRSS * 1024;
    const how = isShared ? "shared" : "written out";
    console.log(`${ROWS} rows × ${FORMULAS.length} single cells, ${how}, greybody recalc with reading and writing`);
    console.log(
      `  ${seconds.toFixed(1)} s of the processor (limit ${MOST_SECONDS}; ${wall.toFixed(1)} s by the clock), ${Math.round(memory / 2 ** 20)} MB (limit ${Math.round(MOST_MEMORY / 2 ** 20)})`,
    );
    console.log(`  ${run.stdout.trim()}`);
    if (run.status !== 0 || seconds > MOST_SECONDS || !(memory <= MOST_MEMORY)) process.exitCode = 1;
  }
} finally {
  rmSync(folder, { recursive: true });
}
