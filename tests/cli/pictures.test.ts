/** greybody pictures: a folder's pictures into a workbook's boxes; what is there stays, what is doubtful is told. */
import { mkdirSync, readFileSync, writeFileSync } from "node:fs";
import path from "node:path";
import { strFromU8, strToU8, zipSync } from "fflate";
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import type { BookDescription, FreeCell, PictureBox } from "../../src/templates/contract.js";
import { CLI } from "../support/calc.js";
import { all, brokenRules, type Node, partsOf, xmlOf } from "../support/package-rules.js";
import { exif, jpegWith, plainJpegFile, png, segment, tiffWith } from "../support/picture.js";
import { Folder, recalc } from "../support/recalc.js";
import { runNode } from "../support/run.js";

/** Two pages of a box for each kind, 200 × 100 pixels; the numbers are formulas over typed ones. */
function bookOf(typed: readonly (string | null)[], foreign = false): BookDescription {
  const box = (n: number, kind: PictureBox["kind"], own: Partial<PictureBox> = {}): PictureBox => ({
    key: `exception-${n}-${kind}`,
    row: 1 + 6 * n,
    column: kind === "photo" ? 2 : 0,
    rows: 5,
    columns: 2,
    numberAt: { row: 6 * n, column: kind === "photo" ? 2 : 0 },
    kind,
    ...own,
  });
  const cells = typed.flatMap((value, i): FreeCell[] => [
    {
      row: 6 * Math.floor(i / 2),
      column: 2 * (i % 2),
      value: `=IF(typed_${i}="","",typed_${i}&"")`,
      look: "label",
    },
    { row: i, column: 4, value, look: "typed", format: "@", name: `typed_${i}` },
  ]);
  const boxes = typed.map((_, i) => box(Math.floor(i / 2), i % 2 === 0 ? "thermogram" : "photo"));
  const other = { ...box(9, "photo"), base64: Buffer.from(png(4, 4)).toString("base64"), alternative: "the plan" };
  return {
    title: "Boxes",
    sheets: [
      {
        kind: "free",
        name: "Exception, pages",
        heading: ["Pages"],
        widths: [100, 100, 100, 100, 100],
        heights: Object.fromEntries(Array.from({ length: 12 }, (_, row) => [row, 20])),
        cells,
        pictures: foreign ? [...boxes, other] : boxes,
      },
    ],
  };
}

const folder = new Folder();
afterAll(() => folder.remove());
const bytesOf = (book: BookDescription): Uint8Array => packBook(describedBook(book));
const run = (...args: string[]) => runNode([CLI, "pictures", ...args], { cwd: folder.path });

function images(name: string, files: Readonly<Record<string, Uint8Array>>): string {
  mkdirSync(folder.at(name), { recursive: true });
  for (const [file, bytes] of Object.entries(files)) writeFileSync(path.join(folder.at(name), file), bytes);
  return name;
}

const DRAWING = "xl/drawings/drawing1.xml";
const media = (bytes: Uint8Array): string[] =>
  [...partsOf(bytes).keys()].filter((name) => name.startsWith("xl/media/"));
const anchors = (bytes: Uint8Array): Node[] => xmlOf(partsOf(bytes), DRAWING).children;
const shapes = (bytes: Uint8Array): string[] =>
  all(xmlOf(partsOf(bytes), DRAWING), "xdr:cNvPr").map(({ attributes }) => attributes.name!);

test("a copy of the page, whose boxes bear the same names for that sheet alone, takes no picture", async () => {
  const parts = new Map(partsOf(bytesOf(bookOf(["7"]))));
  const workbook = strFromU8(parts.get("xl/workbook.xml")!);
  const [own, formula] = /<definedName name="GREYBODY_PICTURE_[^>]*>([^<]+)<\/definedName>/.exec(workbook)!;
  // The copy's box stands elsewhere: ten rows further down.
  const moved = formula!.replaceAll(/\$(\d+)/g, (_, row: string) => `$${Number(row) + 10}`);
  const copied = own.replace(" name=", ' localSheetId="0" name=').replace(formula!, moved);
  parts.set("xl/workbook.xml", strToU8(workbook.replace(own, own + copied)));
  folder.put("copied.xlsx", zipSync(Object.fromEntries(parts)));
  const from = images("copied", { "7.png": png(40, 40) });
  const { stdout } = await run("copied.xlsx", from, "-o", "copied-out.xlsx");
  expect(stdout).toMatch(/^copied\.xlsx: 1 placed; /);
  const [anchor] = anchors(folder.read("copied-out.xlsx"));
  const rows = all(anchor!, "xdr:row").map(({ text }) => Number(text));
  expect(Math.max(...rows)).toBeLessThan(10);
}, 60_000);

test("each is placed in its box, turned, embedded once; nothing else of the workbook changes", async () => {
  const before = bytesOf(bookOf(["7", "DC_0008", "0009", ""]));
  folder.put("a.xlsx", before);
  const camera = segment(0xe1, "http://ns.adobe.com/xap/1.0/\0SERIAL 4711");
  const shot = jpegWith([exif(tiffWith(6)), camera]);
  const from = images("a", {
    "IR_0007.JPG": shot,
    "dc-8.jpg": jpegWith([exif(tiffWith(6))], strToU8("SERIAL 4711")),
    "9.png": png(40, 40),
    "IR_0017.jpg": plainJpegFile(),
    "notes.txt": strToU8("7"),
  });
  const outcome = await run("a.xlsx", from, "-o", "a-out.xlsx", "--report", "a.json");
  expect(outcome).toEqual({
    status: 0,
    stdout:
      "a.xlsx: 3 placed; written to a-out.xlsx\n  1 file fits no box: IR_0017.jpg\n  4 saved values were worked out anew\n",
    stderr: "",
  });
  expect(folder.read("a.xlsx")).toEqual(before);
  const after = folder.read("a-out.xlsx");
  expect(brokenRules(after)).toEqual([]);
  // The same pixels, the same orientation: one file of them.
  expect(media(after)).toHaveLength(2);
  for (const [name, part] of partsOf(after)) expect([name, strFromU8(part, true)]).not.toContain("4711");
  const [first, second, third] = anchors(after);
  // Box of 200 × 100 pixels, 4 free at each side; a picture of 48 × 32 on its side is 32 × 48: 92 / 48 of that.
  const extent = { cx: String(61 * 9525), cy: String(92 * 9525) };
  expect(all(first!, "xdr:ext")[0]!.attributes).toEqual(extent);
  const turned = all(all(first!, "xdr:pic")[0]!, "a:xfrm")[0]!;
  expect(turned.attributes).toEqual({ rot: "5400000" });
  // Within its group the shape is as wide as it is high when seen, around the same middle.
  expect(turned.children.map(({ attributes }) => attributes)).toEqual([
    // 31 pixels wider, 31 less high: half of 31 × 9525 to the left and down.
    { x: "-147637", y: "147638" },
    { cx: extent.cy, cy: extent.cx },
  ]);
  // Two heading rows stand above row 0 of the description; the box begins one row below its number.
  const place = (anchor: Node): string[] => anchor.children[0]!.children.map(({ text }) => text);
  expect([first, second, third].map((anchor) => place(anchor!))).toEqual([
    ["0", "38100", "3", "38100"],
    ["2", "38100", "3", "38100"],
    ["0", "38100", "9", "38100"],
  ]);
  expect(all(third!, "xdr:ext")[0]!.attributes).toEqual({ cx: String(92 * 9525), cy: String(92 * 9525) });
  const untouched = [...partsOf(before)].filter(([name]) => !/sheet1\.xml|Content_Types/.test(name));
  expect(untouched.length).toBeGreaterThan(5);
  for (const [name, part] of untouched) expect([name, partsOf(after).get(name)]).toEqual([name, part]);
  const report = JSON.parse(readFileSync(folder.at("a.json"), "utf8")) as { boxes: unknown[]; unused: string[] };
  expect(report.unused).toEqual(["IR_0017.jpg"]);
  expect(report.boxes[1]).toEqual({
    box: "exception_0_photo",
    at: "Exception, pages!C4",
    kind: "photo",
    shown: "DC_0008",
    outcome: "placed",
    files: ["dc-8.jpg"],
    cells: "C4:D8",
    numberCell: "C3",
  });
  const checked = await recalc(["--check", "--all", folder.at("a-out.xlsx")]);
  expect(checked.stdout).toMatch(/0 different, 0 kept; no difference/);
}, 60_000);

test("another run takes the place of the last one, and other people's pictures stay", async () => {
  folder.put("b.xlsx", bytesOf(bookOf(["7", "8", "9", ""], true)));
  const from = images("b", { "7.png": png(4, 3), "8.png": png(5, 3), "9.png": png(6, 3) });
  expect((await run("b.xlsx", from, "--in-place")).status).toBe(0);
  const once = folder.read("b.xlsx");
  expect(brokenRules(once)).toEqual([]);
  const three = ["exception_0_thermogram 7", "exception_0_photo 8", "exception_1_thermogram 9"];
  const named = (names: readonly string[]): string[] => [
    "Picture 1",
    ...names.map((name) => `GREYBODY_PICTURE_${name}`),
  ];
  expect(shapes(once)).toEqual(named(three));
  expect(media(once)).toHaveLength(4);
  expect((await run("b.xlsx", from, "--in-place")).status).toBe(0);
  expect(shapes(folder.read("b.xlsx"))).toEqual(named(three));
  expect(media(folder.read("b.xlsx"))).toEqual(media(once));

  // Another number is typed where 8 was; a folder in which only a new 7 lies: 9 stays, since its box still shows 9.
  const parts = new Map(partsOf(folder.read("b.xlsx")));
  const strings = strFromU8(parts.get("xl/sharedStrings.xml")!);
  parts.set("xl/sharedStrings.xml", strToU8(strings.replace("<t>8</t>", "<t>18</t>")));
  folder.put("b.xlsx", zipSync(Object.fromEntries(parts)));
  const { status, stdout } = await run("b.xlsx", images("b2", { "7.png": png(7, 3) }), "--in-place");
  expect(status).toBe(1);
  expect(stdout).toMatch(/1 placed, 1 kept from before, 1 missing/);
  const last = folder.read("b.xlsx");
  expect(brokenRules(last)).toEqual([]);
  expect(new Set(shapes(last))).toEqual(new Set(named([three[0]!, three[2]!])));
  // The plan, 9 and the new 7: nothing shows the old 7 and 8 any more.
  expect(media(last)).toHaveLength(3);
}, 60_000);

test("what is typed counts, not what was saved; doubtful, missing and refused ones are listed and left out", async () => {
  folder.put("c.xlsx", bytesOf(bookOf(["7", "8", "9", "no number"])));
  await recalc(["--all", "--in-place", folder.at("c.xlsx")]);
  const parts = new Map(partsOf(folder.read("c.xlsx")));
  const strings = strFromU8(parts.get("xl/sharedStrings.xml")!);
  parts.set("xl/sharedStrings.xml", strToU8(strings.replace("<t>7</t>", "<t>70</t>")));
  const stale = zipSync(Object.fromEntries(parts));
  folder.put("c.xlsx", stale);
  const from = images("c", {
    "IR_7.png": png(4, 3),
    "IR_08.png": png(4, 3),
    "DC_8.png": png(4, 3),
    "9.heic": strToU8("\0\0\0\u0018ftypheic"),
  });
  mkdirSync(folder.at("c/more"), { recursive: true });
  const { status, stdout } = await run("c.xlsx", from);
  expect(status).toBe(1);
  expect(stdout.trim().split("\n")).toEqual([
    "c.xlsx: 0 placed, 1 doubtful, 2 missing, 1 not taken; nothing written: -o OUT.xlsx or --in-place does",
    "  missing: thermogram 70 at Exception, pages!A4: no file of this folder has the number 70 in its name; copy the picture into the folder, or correct the column thermal_image",
    expect.stringMatching(
      /^ {2}doubtful: photo 8 at Exception, pages!C4: 2 files fit "8" \[DC_8.png, IR_08.png\]; type /,
    ),
    expect.stringMatching(/^ {2}not taken: thermogram 9 at .+: The file is HEIC .+ \[9.heic\]$/),
    expect.stringMatching(
      /^ {2}missing: photo no number at .+: "no number" is no image number; type one into the column photo/,
    ),
    "  1 file fits no box: IR_7.png",
    "  1 folder within it not looked into",
    "  1 saved value was worked out anew",
  ]);
  expect(folder.read("c.xlsx")).toEqual(stale);
}, 60_000);

test.each([
  [["a.xlsx"], /folder/],
  [["a.xlsx", "nowhere"], /there is no folder nowhere with pictures/],
  [["a.xlsx", "a", "-o", "x.xlsx", "--in-place"], /only one of -o and --in-place/],
  [["a.xlsx", "a", "-o", "a.xlsx"], /-o a.xlsx is the file a.xlsx itself. Use --in-place/],
  [["a.xlsx", "a", "-o", "x.xlsx", "--report", "a.xlsx"], /--report a.xlsx is the file a.xlsx itself/],
  [["none.xlsx", "a"], /none.xlsx: There is no such file/],
  [["a/notes.txt", "a"], /not an Excel workbook/],
  [["plain.xlsx", "a"], /no boxes for pictures: `greybody new route`/],
])(
  "%j is refused in one line",
  async (args, words) => {
    const notes: BookDescription = {
      title: "Notes",
      sheets: [{ kind: "notes", name: "Notes", heading: ["Notes"], lines: ["x"] }],
    };
    folder.put("plain.xlsx", bytesOf(notes));
    const { status, stdout, stderr } = await run(...args);
    expect({ status, stdout }).toEqual({ status: 2, stdout: "" });
    expect(stderr).toMatch(words);
    expect(stderr).toMatch(/^greybody: .+\n$/);
  },
  60_000,
);
