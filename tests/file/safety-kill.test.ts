/** A run that is killed at any moment leaves the old file or the new one, whole. */
import { spawn } from "node:child_process";
import { CLI } from "../support/calc.js";
import { generatorOf } from "./safety-files.js";
import { Folder, recalc, textsOf } from "../support/recalc.js";
import { makeWorkbook } from "../support/workbook-file.js";

const ROWS = 4000;
const KILLS = 50;

/** Spot sizes by hand: three pixels of 1.36 mrad from r metres are 4.08·r mm. A picture of noise makes the file large. */
function made(): Uint8Array {
  const next = generatorOf(7);
  const rows = Array.from({ length: ROWS }, (_, i) => {
    const r = i + 1;
    return `<row r="${r}"><c r="A${r}"><v>${r}</v></c><c r="B${r}"><f>GREY.SPOT_SIZE(A${r},1.36)</f><v>0</v></c></row>`;
  });
  const noise = Uint8Array.from({ length: 8 * 2 ** 20 }, () => next() * 256);
  return makeWorkbook({
    sheets: [{ name: "S", rows: rows.join("") }],
    parts: { "xl/media/image1.png": noise },
    level: 1,
  });
}

test(`killed at ${KILLS} random moments`, async () => {
  const folder = new Folder();
  try {
    const old = made();
    const file = folder.put("a.xlsx", old);
    const start = performance.now();
    expect(await recalc([file, "--in-place"])).toMatchObject({ status: 0 });
    const whole = performance.now() - start;
    const fresh = folder.read("a.xlsx");
    expect(textsOf(fresh)["xl/worksheets/sheet1.xml"]).toMatch(/<v>4\.08<\/v>.*<v>8\.16<\/v>/);
    const next = generatorOf(20261126);
    const left = { old: 0, fresh: 0, temporary: 0 };
    for (let i = 0; i < KILLS; i++) {
      folder.put("a.xlsx", old);
      const child = spawn(process.execPath, [CLI, "recalc", file, "--in-place"], { stdio: "ignore" });
      const ended = new Promise((resolve) => child.once("close", resolve));
      // Most of them late, where files are written.
      const moment = setTimeout(() => child.kill("SIGKILL"), whole * (i % 4 === 0 ? next() : 0.5 + next() * 0.6));
      await ended;
      clearTimeout(moment);
      const now = Buffer.from(folder.read("a.xlsx"));
      if (now.equals(old)) left.old++;
      else if (now.equals(fresh)) left.fresh++;
      else throw new Error(`after kill ${i} the file is neither the old nor the new one`);
      const others = folder.names.filter((name) => name !== "a.xlsx");
      for (const name of others) expect(name).toMatch(/^\.a\.xlsx\..+\.greybody-tmp$/);
      left.temporary += others.length;
    }
    expect(left.old).toBeGreaterThan(0);
    expect(left.old + left.fresh).toBe(KILLS);
    await recalc([file, "--in-place"]);
    folder.put("a.xlsx", old);
    await recalc([file, "--in-place"]);
    expect(folder.names).toEqual(["a.xlsx"]);
  } finally {
    folder.remove();
  }
}, 600_000);
