/** Whatever a file holds: refused in one line within a second or kept, never a stack trace, never a hang, never much memory. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import path from "node:path";
import { CLI } from "../support/calc.js";
import { generatorOf, SPOILT } from "./safety-files.js";
import { Folder, recalc } from "../support/recalc.js";
import { root, runNode } from "../support/run.js";
import { makeWorkbook } from "../support/workbook-file.js";

const BAD = path.resolve(root, process.env.GREYBODY_SHARED ?? "../shared", "data/xlsx/bad");

let folder: Folder;
beforeEach(() => (folder = new Folder()));
afterEach(() => folder.remove());

/** Its largest memory in bytes, told by the process itself when it ends, and how long it took. */
async function measured(
  file: string,
  options: readonly string[],
): Promise<{
  status: number | null;
  stdout: string;
  lines: string[];
  memory: number;
  milliseconds: number;
}> {
  const probe = "process.on('exit',()=>process.stderr.write('\\nmemory '+process.resourceUsage().maxRSS))";
  const start = performance.now();
  const run = await runNode([
    "--import",
    `data:text/javascript,${encodeURIComponent(probe)}`,
    CLI,
    "recalc",
    file,
    ...options,
  ]);
  const milliseconds = performance.now() - start;
  const [text = "", memory = ""] = run.stderr.split("\nmemory ");
  return { ...run, lines: text.trimEnd().split("\n"), memory: Number(memory) * 1024, milliseconds };
}

function expectRefusal({ status, stdout, lines, memory }: Awaited<ReturnType<typeof measured>>): void {
  expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
  expect(lines).toHaveLength(1);
  expect(lines[0]).toMatch(/^greybody: .+\.$/);
  expect(lines[0]).not.toMatch(/cannot be worked through/);
  expect(memory).toBeLessThan(1e9);
  expect(folder.names).not.toContain("out.xlsx");
}

const bad = existsSync(BAD) ? readdirSync(BAD) : [];
(bad.length > 0 ? test : test.skip)(
  "the refused files of other projects, where they lie (skipped where the folder is absent)",
  async () => {
    for (const name of bad) expectRefusal(await measured(path.join(BAD, name), ["-o", folder.at("out.xlsx")]));
  },
);

test.each(Object.keys(SPOILT))("%s", async (name) => {
  const file = folder.put("in.xlsx", SPOILT[name]!.make());
  const found = await measured(file, ["-o", folder.at("out.xlsx")]);
  expectRefusal(found);
  expect(found.lines[0]).toMatch(SPOILT[name]!.says);
});

/** A good file with all that a scan meets, to be spoilt. */
const GOOD = makeWorkbook({
  sheets: [
    {
      name: "Route",
      rows: Array.from({ length: 30 }, (_, i) => {
        const r = i + 1;
        const shared = `<f t="shared"${i === 0 ? ' ref="C1:C30"' : ""} si="0"${i === 0 ? ">GREY.GRADE(A1,&quot;similar&quot;)</f>" : "/>"}`;
        return (
          `<row r="${r}"><c r="A${r}"><v>${r}</v></c><c r="B${r}" t="s"><v>${i % 3}</v></c><c r="C${r}">${shared}<v>1</v></c>` +
          `<c r="D${r}"><f>_xldudf_GREY_SPOT_SIZE(A${r},1.36)</f><v>0</v></c></row>`
        );
      }).join(""),
      after: '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
      tables: [
        '<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="T" displayName="T" ref="A1:B30"><tableColumns count="2"><tableColumn id="1" name="a"/><tableColumn id="2" name="b"/></tableColumns></table>',
      ],
    },
    {
      name: "Sum",
      rows: '<row r="1"><c r="A1" cm="1"><f t="array" ref="A1:A30">GREY.GRADE(Route!A1:A30,"ambient")</f><v>0</v></c></row>',
    },
  ],
  sharedStrings: ["a", "b", "c"],
  hasDynamicArrays: true,
  names: '<definedName name="All">Route!$A$1:$A$30</definedName>',
});
const STORED = makeWorkbook({
  sheets: [{ name: "S", rows: '<row r="1"><c r="A1"><f>GREY.SPOT_SIZE(3,1.36)*2</f><v>0</v></c></row>' }],
  level: 0,
});

test("200 spoilt copies of good files: cut short, bits turned over, pieces repeated or taken out", async () => {
  const next = generatorOf(20261126);
  const files = Array.from({ length: 200 }, (_, i) => {
    // A stored file's own texts are spoilt too: its checksums are set right again.
    const bytes = i % 2 === 0 ? spoil(GOOD, next) : makeSpoiltTexts(next);
    return folder.put(`${i}.xlsx`, bytes);
  });
  const start = performance.now();
  const { status, stdout, stderr } = await recalc([...files, "-o", folder.at("out")]);
  const seconds = (performance.now() - start) / 1000;
  expect([0, 2]).toContain(status);
  const refused = stderr.trimEnd().split("\n");
  const kept = stdout
    .trimEnd()
    .split("\n")
    .filter((line) => !line.startsWith("  "));
  expect(refused.length + kept.length).toBe(200);
  for (const line of refused) expect(line).toMatch(/^greybody: \S+\.xlsx: .+\.$/);
  expect(stderr).not.toMatch(/\bat .+:\d+:\d+|cannot be worked through/);
  expect(readdirSync(folder.at("out"))).toHaveLength(kept.length);
  expect(refused.length).toBeGreaterThan(60);
  expect(kept.length).toBeGreaterThan(5);
  expect(seconds).toBeLessThan(60);
});

function spoil(good: Uint8Array, next: () => number): Uint8Array {
  const at = (): number => Math.floor(next() * good.length);
  const copy = good.slice();
  switch (Math.floor(next() * 4)) {
    case 0:
      return copy.slice(0, at());
    case 1:
      for (let i = 0; i < 1 + next() * 4; i++) copy[at()]! ^= 1 << Math.floor(next() * 8);
      return copy;
    case 2: {
      const [from, to] = [at(), at()].sort((a, b) => a - b) as [number, number];
      return Uint8Array.from([...copy.slice(0, to), ...copy.slice(from)]);
    }
    default: {
      const from = at();
      return Uint8Array.from([...copy.slice(0, from), ...copy.slice(from + 1 + Math.floor(next() * 40))]);
    }
  }
}

/** The sheet's text with some characters changed, packed rightly: what the zip layer lets through. */
function makeSpoiltTexts(next: () => number): Uint8Array {
  const rows =
    '<row r="1"><c r="A1"><f>GREY.SPOT_SIZE(3,1.36)&amp;"x"</f><v>0</v></c><c r="B1" t="s"><v>0</v></c><c r="C1" cm="1"><f t="array" ref="C1:D4">A1:B2</f><v>1</v></c></row>';
  const pieces = [
    "<",
    ">",
    '"',
    "&",
    "/",
    "1",
    "A",
    "c",
    "=",
    " ",
    "9999999",
    "XFD",
    "-1",
    "(",
    ":",
    "#",
    "&#0;",
    "]]>",
    "<![CDATA[",
    "<!--",
    "ref",
  ];
  let text = rows;
  for (let i = 0; i < 1 + next() * 3; i++) {
    const place = Math.floor(next() * text.length);
    const piece = pieces[Math.floor(next() * pieces.length)]!;
    text = text.slice(0, place) + piece + text.slice(place + Math.floor(next() * 3));
  }
  return makeWorkbook({ sheets: [{ name: "S", rows: text }], sharedStrings: ["x"], hasDynamicArrays: true, level: 0 });
}

test("the file that was spoilt is good", async () => {
  const files = [folder.put("good.xlsx", GOOD), folder.put("stored.xlsx", STORED)];
  expect(await recalc([...files, "-o", folder.at("out")])).toMatchObject({ status: 0, stderr: "" });
  expect(readFileSync(files[0]!).equals(GOOD)).toBe(true);
});
