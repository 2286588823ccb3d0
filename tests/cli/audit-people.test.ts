/** greybody audit of what people do in a sheet: totals below, a cell that reaches down, severities in words. Invented. */
import { auditJsonOf } from "../support/audit-json.js";
import { CLI } from "../support/calc.js";
import { Folder } from "../support/recalc.js";
import { runNode } from "../support/run.js";

const folder = new Folder();
afterAll(() => folder.remove());
const audit = (...args: string[]) => runNode([CLI, "audit", ...args], { cwd: folder.path });
const put = (name: string, lines: readonly string[]): void => {
  folder.put(name, new TextEncoder().encode(lines.join("\n")));
};

test("totals are left out and told; a cell that reaches down names the rows below it; a word is read by the criteria or as told", async () => {
  put("people.csv", [
    "Equipment,Max temp (°C),Ref temp (°C),ΔT similar (K),Load (A),Severity",
    "Panel 4,58.0,45.0,13.0,80,Probable",
    ",62.0,45.0,17.0,80,Urgent",
    "Panel 5,46.0,45.0,1.0,80,Possible",
    "Total findings,,,31.0,,3",
  ]);
  const first = await audit("people.csv", "-o", "first.json");
  expect([first.status, first.stderr]).toEqual([0, ""]);
  expect(first.stdout).toContain("line 5 looks like a total or a mean and was left out");
  expect(first.stdout).toContain('--grade "Urgent=4"');
  const { rows } = auditJsonOf(folder, "first.json");
  expect([...new Set(rows.map(({ item }) => item))]).toEqual(["Panel 4", "Panel 4 (as above)", "Panel 5"]);
  const grade = (row: number) => rows.find((one) => one.row === row)?.grade;
  expect([grade(1), grade(2), grade(3)]).toEqual([
    "follows",
    'not judged: "Urgent": no word of the criteria',
    "follows",
  ]);
  // 17 K over similar is above 15 K, grade 4 (ANSI/NETA ATS-2003, table 100.18); 3 would not follow.
  const right = await audit("people.csv", "--grade", "urgent=4");
  expect([right.status, right.stdout.includes("4 rows")]).toEqual([0, false]);
  const wrong = await audit("people.csv", "--grade", "Urgent=3", "-o", "wrong.json");
  expect(wrong.status).toBe(1);
  expect(auditJsonOf(folder, "wrong.json").rows.find(({ row, grade: words }) => row === 2 && words !== "")?.grade).toBe(
    "does not follow: the stated rise is grade 4 of 4",
  );
}, 60_000);

test("a method with a defect is told though every number is reproduced", async () => {
  // 35 of 100 A is below the 40 % from which NFPA 70B-2023 lets anything be projected; (100/35)^1.8 × 5.0 = 33.1.
  put("load.csv", [
    "Equipment,Max temp (°C),Ref temp (°C),ΔT similar (K),Load (A),Max load (A),ΔT at full load (K)",
    "Bucket 6,50.0,45.0,5.0,35,100,33.1",
  ]);
  const outcome = await audit("load.csv", "--job", "exponent=1.8", "--job", "minimum_load=0.4");
  expect(outcome.stdout).toMatch(/row 1 \(line 2\), Bucket 6[\s\S]*method: projected from too little load/);
});

test.each([
  [["people.csv", "--grade", "Urgent=5"], /whole number from 0 to 4/],
  [["people.csv", "--job", "criteria=NETA"], /only NETA-100\.18/],
])("%j is refused in one line", async (args, message) => {
  const { status, stderr } = await audit(...args);
  expect([status, stderr.trim().split("\n").length]).toEqual([2, 1]);
  expect(stderr).toMatch(message);
});
