/** greybody audit: workbooks and texts of invented clients, what is doubtful in them, and what is refused. */
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import { readContents } from "../../src/host/file/read/contents.js";
import { cellText } from "../../src/functions/check-names.js";
import type { Cell } from "../../src/functions/contract.js";
import { auditJsonOf } from "../support/audit-json.js";
import { CLI } from "../support/calc.js";
import { Folder, textsOf } from "../support/recalc.js";
import { runNode } from "../support/run.js";

const folder = new Folder();
afterAll(() => folder.remove());
const audit = (...args: string[]) => runNode([CLI, "audit", ...args], { cwd: folder.path });

beforeAll(() => {
  folder.put("client.csv", new TextEncoder().encode("Equipment,Max temp (°C),Severity\nP1,58.0,2\n"));
  folder.put("findings.json", new TextEncoder().encode("{}"));
});

/** A temperature as a report in °F prints it. */
const fahrenheit = (celsius: string): string => (Number(celsius) * 1.8 + 32).toFixed(1);

test("a workbook in °F: the units are the report's, and the numbers come out alike", async () => {
  // 136.4 °F are 58 °C, 113.0 °F are 45 °C and 71.6 °F are 22 °C, so the temperatures are those of 58 and 45 °C, in °F.
  const [hot, reference] = await Promise.all(
    ["58", "45"].map(async (reading) => {
      const { stdout } = await runNode([CLI, "calc", `GREY.CORRECTED(${reading},0.6,22)`]);
      return String((JSON.parse(stdout) as { value: number }).value);
    }),
  );
  const rows: Cell[][] = [
    [
      "Point",
      "Max temp (°F)",
      "Ref temp (°F)",
      "Rise over similar (°F)",
      "Raw reading (°F)",
      "Raw reading, reference (°F)",
      "Emissivity",
      "Reflected (°F)",
    ],
    [
      "P1",
      fahrenheit(hot!),
      fahrenheit(reference!),
      ((Number(hot) - Number(reference)) * 1.8).toFixed(1),
      "136.4",
      "113.0",
      0.6,
      "71.6",
    ],
    // The readings' difference, 13 K, is 23.4 °F: subtracted before corrected.
    ["P2", fahrenheit(hot!), fahrenheit(reference!), "23.4", "136.4", "113.0", 0.6, "71.6"],
    ["=1+1", fahrenheit(hot!), "", "", "136.4", "", 0.6, "71.6"],
  ];
  const book = describedBook({
    title: "A client's (invented)",
    sheets: [
      { kind: "notes", name: "Cover", heading: ["Cover"], lines: ["Nothing here."] },
      {
        kind: "free",
        name: "Data",
        heading: ["Survey"],
        widths: rows[0]!.map(() => 90),
        cells: rows.flatMap((cells, row) =>
          cells.map((value, column) => ({
            row,
            column,
            look: "label" as const,
            value: typeof value === "string" && value.startsWith("=") ? ` ${value}` : value,
          })),
        ),
      },
    ],
  });
  folder.put("client.xlsx", packBook(book));
  const outcome = await audit("client.xlsx", "-o", "findings.xlsx", "--job", "air_transmission=1");
  expect(outcome.stderr).toBe("");
  expect(outcome.stdout).toContain("sheet Data");
  expect(outcome.stdout).toContain("in °F (from the report's units)");
  expect(outcome.status).toBe(1);
  const again = await audit("findings.xlsx", "-o", "again.json");
  expect(again.status).toBe(1);
  const { rows: found } = auditJsonOf(folder, "again.json");
  const rises = found.filter(({ what }) => what === "rise");
  expect(rises.map(({ number }) => number)).toEqual([
    "reproduced",
    "method: subtracted before corrected would give it",
  ]);
  expect(found.filter(({ what }) => what === "temperature").map(({ number }) => number)).toEqual([
    "reproduced",
    "reproduced",
    "reproduced",
  ]);
  // 13 K of readings at emissivity 0.6 are more in temperature: the difference is stated less recomputed.
  expect(rises[1]!.difference).toBeCloseTo(23.4 - (Number(hot) - Number(reference)) * 1.8, 6);
  // What the client wrote is a text in the file, and no formula of his stands anywhere.
  const written = readContents(folder.read("findings.xlsx"));
  const claimSheet = written.sheets.find(({ name }) => name === "Claims")!;
  const cells = Array.from({ length: claimSheet.rows }, (_, r) => claimSheet.at(r, 0));
  expect(cells.filter(({ value }) => cellText(value).includes("1+1"))).toEqual([
    { value: expect.stringContaining("=1+1") as string, isWorkedOut: false },
  ]);
  const formulas = Object.values(textsOf(folder.read("findings.xlsx"))).flatMap(
    (text) => text.match(/<f[^>]*>[^<]*<\/f>/g) ?? [],
  );
  expect(formulas.length).toBeGreaterThan(5);
  expect(formulas.filter((one) => one.includes(">1+1<"))).toEqual([]);
}, 120_000);

test("a CSV of findings holds no text that a sheet would take for a formula; everything reproduced is status 0", async () => {
  const { stdout } = await runNode([CLI, "calc", "GREY.CORRECTED(58,0.6,22)"]);
  const stated = (JSON.parse(stdout) as { value: number }).value.toFixed(1);
  const text = `Item,Corrected temp (C),Apparent temp (C),Emissivity,Reflected (C)\n"=HYPERLINK(""x"")",${stated},58.0,0.60,22\n@x,${stated},58.0,0.60,22\n`;
  folder.put("bad.csv", new TextEncoder().encode(text));
  const outcome = await audit("bad.csv", "-o", "out.csv", "--job", "air_transmission=1");
  expect([outcome.status, outcome.stderr]).toEqual([0, ""]);
  const written = new TextDecoder().decode(folder.read("out.csv"));
  const fields = written.split(/\r\n/).flatMap((line) => line.match(/(?:^|,)("(?:[^"]|"")*"|[^,]*)/g) ?? []);
  expect(fields.map((one) => one.replace(/^,/, "").replace(/^"/, "")).filter((one) => /^[=+@\t\r]/.test(one))).toEqual(
    [],
  );
  expect(written).toContain("'=HYPERLINK");
  expect(written).toContain("'@x");
});

test("what is doubtful is not taken and told; --map takes it, none leaves it out", async () => {
  const text = "Point,Temp (C),Reading (C),Emissivity,Reflected (C)\nP1,61.2,58.0,0.95,22\n";
  folder.put("doubt.csv", new TextEncoder().encode(text));
  const first = await audit("doubt.csv");
  expect(first.status).toBe(2);
  expect(first.stderr).toMatch(/none of "Point", "Temp \(C\)".* --map/);
  const second = await audit(
    "doubt.csv",
    "--map",
    "Temp (C)=stated_temp",
    "--map",
    "reading (c)=apparent",
    "-o",
    "d.json",
  );
  expect(second.status).toBe(1);
  expect(second.stdout).toMatch(/"Temp \(C\)"\s+stated_temp \(C\), by --map/);
  const third = await audit("doubt.csv", "--map", "Temp (C)=stated_temp", "--map", "Emissivity=none");
  expect(third.stdout).toContain("not taken: left out, as told");
});

test("what is said for all rows stands in the workbook of findings too", async () => {
  const text = "Point,ΔT (K),Max temp (°C),Ref temp (°C)\nP1,13.0,58.0,45.0\n";
  folder.put("all.csv", new TextEncoder().encode(text));
  expect((await audit("all.csv")).stdout).toContain("--job reference=similar");
  expect((await audit("all.csv", "-o", "all.xlsx", "--job", "reference=similar", "--job", "exponent=1.7")).status).toBe(
    0,
  );
  const again = await audit("all.xlsx", "-o", "all.json");
  expect([again.status, again.stderr]).toEqual([0, ""]);
  expect(auditJsonOf(folder, "all.json").rows.find(({ what }) => what === "rise")?.number).toBe("reproduced");
  const { names, sheets } = readContents(folder.read("all.xlsx"));
  const exponent = names.find(({ name }) => name === "report_exponent")!;
  expect(sheets.find(({ name }) => name === exponent.sheet)?.at(exponent.startRow, exponent.startColumn).value).toBe(
    1.7,
  );
}, 60_000);

test("two rises over different things are held both, under the client's row", async () => {
  const text =
    "Point,ΔT ambient (K),ΔT similar (K),Max temp (°C),Ref temp (°C),Ambient (°C)\nP1,36.0,13.0,58.0,45.0,22.0\nP2,30.0,13.0,58.0,45.0,22.0\n";
  folder.put("two.csv", new TextEncoder().encode(text));
  const outcome = await audit("two.csv", "-o", "two.json");
  expect(outcome.status).toBe(1);
  const rises = auditJsonOf(folder, "two.json").rows.filter(({ what }) => what === "rise");
  expect(rises.map(({ row, stated, reproduced }) => [row, stated, reproduced])).toEqual([
    [1, 36, true],
    [1, 13, true],
    [2, 30, false],
    [2, 13, true],
  ]);
});

test.each([
  [["client.csv", "--map", "Nothing=item"], /no such header, only "Equipment"/],
  [["client.csv", "--map", "Severity=grad"], /there is no column grad/],
  [["client.csv", "--map", "Severity"], /write "Client header=our_column"/],
  [["client.csv", "--job", "colour=red"], /there is no line colour/],
  [["client.csv", "-o", "x.pdf"], /\.xlsx, \.csv, \.json/],
  [["client.csv", "-o", "findings.json"], /is there already/],
  [["absent.csv"], /no such file/],
  [["client.csv", "--sheet", "Data"], /no workbook/],
])("%j is refused in one line", async (args, message) => {
  const { status, stderr } = await audit(...args);
  expect(status).toBe(2);
  expect(stderr).toMatch(message);
  expect(stderr.trim().split("\n")).toHaveLength(1);
});
