/** greybody audit: reports that are odd or hostile. All of them are invented. */
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import { readContents } from "../../src/host/file/read/contents.js";
import { cellText } from "../../src/functions/check-names.js";
import { auditJsonOf } from "../support/audit-json.js";
import { CLI } from "../support/calc.js";
import { Folder } from "../support/recalc.js";
import { runNode } from "../support/run.js";

const folder = new Folder();
afterAll(() => folder.remove());

/** At emissivity 1 through air that takes nothing a corrected temperature is the reading. */
const HEADERS = "Item,Max temp (C),Apparent temp (C),Emissivity,Reflected (C)";
const BLACK = ["--job", "air_transmission=1"];

async function audit(name: string, text: string, ...args: string[]) {
  folder.put(`${name}.csv`, new TextEncoder().encode(text));
  return runNode([CLI, "audit", `${name}.csv`, ...BLACK, ...args], { cwd: folder.path });
}

test("what is stated and cannot be read is not reproduced; what states nothing is no fault", async () => {
  const rows = ["P1,58.0,58.0,1,22", "P2,58.0,58.0,1,22", "P3,n/a,58.0,1,22", "P4,58.0,58.0,1,22"];
  expect((await audit("none", [HEADERS, ...rows].join("\n"))).status).toBe(0);
  const outcome = await audit("unread", [HEADERS, ...rows, "P5,58.0.1,58.0,1,22"].join("\n"), "-o", "unread.json");
  expect(outcome.status).toBe(1);
  expect(outcome.stdout).toMatch(/row 5 \(line 6\), P5\n\s+not read: stated_temp "58\.0\.1"/);
  expect(outcome.stdout).toContain("5 rows: 1 nothing stated, 3 reproduced, 1 not read, 0 not reproduced");
  const [last] = auditJsonOf(folder, "unread.json").rows.slice(-1);
  expect([last?.what, last?.stated, last?.reproduced]).toEqual(["not read", null, false]);
});

test("an air of <20 says nothing of the camera's range, which a row would be let off for", async () => {
  const outcome = await audit(
    "air",
    `${HEADERS},Ambient (C)\nP1,99.0,58.0,1,22,20\nP2,99.0,58.0,1,22,<20\nP3,99.0,58.0,1,22,20\n`,
  );
  expect(outcome.stdout).toContain('not read: surrounding_air "<20": "at most" is no value');
  expect(outcome.stdout).toContain("0 reproduced, 3 not");
});

test("the delimiter is the one that makes headers, whatever stands in names and decimals", async () => {
  const text = "Item;Max temp (°C);Apparent temp (°C);Emissivity;Reflected (°C)\n";
  const rows = [1, 2, 3, 4].map((n) => `Pump, left, lower, end, no, ${n};58,${n};58,${n};1,0;22,0\n`);
  const outcome = await audit("comma", text + rows.join(""));
  expect([outcome.status, outcome.stderr]).toEqual([0, ""]);
  expect(outcome.stdout).toContain("4 rows: 4 reproduced");
});

test("lines are the file's, where a field holds several", async () => {
  const outcome = await audit("lines", `Survey\n${HEADERS}\n"P1\nleft\nlower",58.0,58.0,1,22\n\nP2,59.0,58.0,1,22\n`);
  expect(outcome.stdout).toContain("headers in line 2");
  expect(outcome.stdout).toContain("row 2 (line 7), P2");
});

test("a header of two lines is named in one; two headers for one column are refused", async () => {
  const text = 'Item,"Temp\n(C)",Temp 2 (C),Apparent temp (C),Emissivity,Reflected (C)\nP1,58.0,99.0,58.0,1,22\n';
  const told = ["--map", "temp (C)=stated_temp"];
  expect((await audit("map", text, ...told)).status).toBe(0);
  const twice = await audit("map", text, ...told, "--map", "Temp 2 (C)=stated_temp");
  expect(twice.status).toBe(2);
  expect(twice.stderr).toMatch(/both "Temp \(C\)" and "Temp 2 \(C\)" would be stated_temp/);
});

test("no text of a client is obeyed: by a terminal, by a sheet that parts fields elsewhere, by Excel's limits", async () => {
  const long = "x".repeat(100_000);
  const text = `${HEADERS},"${long}"\n"a;=1+1",58.0,58.0,1,22,\n\u001b[31mred\u0007,58.0,58.0,1,22,\n${long},58.0,58.0,1,22,\n`;
  const outcome = await audit("odd", text, "-o", "odd-out.csv");
  expect([outcome.status, outcome.stderr]).toEqual([0, ""]);
  expect(outcome.stdout).not.toMatch(/[\u0007\u001b]/);
  expect(Math.max(...outcome.stdout.split("\n").map((line) => line.length))).toBeLessThan(5000);
  const csv = new TextDecoder().decode(folder.read("odd-out.csv"));
  expect(csv).not.toMatch(/;\s*=|[\u0007\u001b]/);
  expect((await audit("odd", text, "-o", "odd.xlsx")).status).toBe(0);
  const lengths = readContents(folder.read("odd.xlsx")).sheets.flatMap(({ rows, columns, at }) =>
    Array.from({ length: rows * columns }, (_, n) => cellText(at(Math.floor(n / columns), n % columns).value).length),
  );
  expect(Math.max(...lengths)).toBe(32_767);
  const refused = await audit("escape", "Item,Emissivity,\u001b[2Jx\nP1,1,2\n");
  expect(refused.status).toBe(2);
  expect(refused.stderr).not.toContain("\u001b");
  expect(refused.stderr.trim().split("\n")).toHaveLength(1);
});

test("a stray cell far down on another sheet keeps no report from being read", async () => {
  const free = (name: string, cells: readonly (readonly [number, number, string | number])[], columns: number) => ({
    kind: "free" as const,
    name,
    heading: [name],
    widths: Array.from({ length: columns }, () => 90),
    cells: cells.map(([row, column, value]) => ({ row, column, look: "label" as const, value })),
  });
  const table = [HEADERS.split(","), ["P1", "58.0", "58.0", 1, 22]].flatMap((cells, row) =>
    cells.map((value, column) => [row, column, value] as const),
  );
  const sheets = [free("Far", [[2100, 999, "x"]], 1000), free("Data", table, 5)];
  folder.put("far.xlsx", packBook(describedBook({ title: "A client's (invented)", sheets })));
  folder.put("only.xlsx", packBook(describedBook({ title: "A client's (invented)", sheets: sheets.slice(0, 1) })));
  const outcome = await runNode([CLI, "audit", "far.xlsx", ...BLACK], { cwd: folder.path });
  expect([outcome.status, outcome.stderr]).toEqual([0, ""]);
  expect(outcome.stdout).toContain("Far (not looked through: more than 2,000,000 cells)");
  const only = await runNode([CLI, "audit", "only.xlsx"], { cwd: folder.path });
  expect([only.status, only.stderr.trim()]).toEqual([
    2,
    "greybody: only.xlsx: Sheet Far has more than 2,000,000 cells.",
  ]);
});
