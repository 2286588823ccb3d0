import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { fillFile, manyRows } from "../support/fill-file.js";

/** A route of `greybody new`, empty and filled by a script, against plain arithmetic of the engine (needs npm run build). */
const ROWS = Number(process.env.ROWS ?? 2000);
const ROUNDS = 3;
const PLAIN = "=SUM(SEQUENCE(1000000)*2)";
const MOST = { new: 8, recalc: 7 } as const;
const MOST_MEMORY = 800 * 2 ** 20;

interface Used {
  readonly seconds: number;
  readonly memory: number;
  readonly said: string;
}

/** Of the process itself, so that others on the machine count little. */
function run(...args: string[]): Used {
  const probe = "process.on('exit',()=>process.stderr.write(JSON.stringify(process.resourceUsage())))";
  const { stdout, stderr, status } = spawnSync(
    process.execPath,
    ["--import", `data:text/javascript,${encodeURIComponent(probe)}`, "dist/cli.js", ...args],
    { encoding: "utf8" },
  );
  if (status !== 0) throw new Error(`greybody ${args[0]}: ${stdout} ${stderr}`);
  const used = JSON.parse(stderr) as NodeJS.ResourceUsage;
  return { seconds: (used.userCPUTime + used.systemCPUTime) / 1e6, memory: used.maxRSS * 1024, said: stdout.trim() };
}

const least = (one: Used, other: Used | undefined): Used => (other && other.seconds < one.seconds ? other : one);

const folder = mkdtempSync(path.join(tmpdir(), "greybody-bench-"));
try {
  const [empty, filled, done] = ["empty.xlsx", "filled.xlsx", "done.xlsx"].map((name) => path.join(folder, name));
  let plain: Used | undefined;
  const best: { new?: Used; recalc?: Used } = {};
  for (let round = 0; round < ROUNDS; round++) {
    plain = least(run("calc", PLAIN), plain);
    rmSync(empty!, { force: true });
    best.new = least(run("new", "route", "--rows", String(ROWS), "-o", empty!), best.new);
    if (round === 0) writeFileSync(filled!, fillFile(new Uint8Array(readFileSync(empty!)), manyRows(ROWS)));
    best.recalc = least(run("recalc", filled!, "-o", done!), best.recalc);
  }
  console.log(`A route of ${ROWS} rows through greybody, multiples of greybody calc "${PLAIN}", best of ${ROUNDS}`);
  for (const what of ["new", "recalc"] as const) {
    const { seconds, memory, said } = best[what]!;
    const ratio = seconds / plain!.seconds;
    const isGood = ratio <= MOST[what] && memory <= MOST_MEMORY;
    console.log(
      `  ${what.padEnd(8)} ${ratio.toFixed(2)}  (limit ${MOST[what]}; ${seconds.toFixed(1)} s of the processor, plain ${plain!.seconds.toFixed(1)} s; ${Math.round(memory / 2 ** 20)} MB, limit ${MOST_MEMORY / 2 ** 20})${isGood ? "" : "  TOO MUCH"}`,
    );
    console.log(`           ${said.replaceAll(folder + path.sep, "")}`);
    if (!isGood) process.exitCode = 1;
  }
} finally {
  rmSync(folder, { recursive: true });
}
