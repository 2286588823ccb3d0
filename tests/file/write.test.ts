/** Workbooks as they are written, before their formulas are worked out: by the rules that Excel holds a file to. */
import { strFromU8 } from "fflate";
import { describedBook } from "../../src/host/file/write/described.js";
import type { WrittenBook, WrittenSheet } from "../../src/host/file/write/model.js";
import { pictureSize } from "../../src/host/file/write/drawing.js";
import { packBook } from "../../src/host/file/write/package.js";
import { blankSheet } from "../../src/host/file/write/sheet-base.js";
import { newRoute } from "../../src/templates/new.js";
import { demoRoute } from "../../src/templates/route/demo/route.js";
import { jpegHead, png } from "../support/picture.js";
import { all, brokenRules, partsOf, xmlOf } from "../support/package-rules.js";

const empty = { title: "Empty", rows: 3, criteria: "house" } as const;
const books = {
  "the demo": describedBook(demoRoute("C")),
  "the demo in °F": describedBook(demoRoute("F"), { paper: "Letter" }),
  "an empty route": describedBook(newRoute({ ...empty, kind: "electrical", units: "C" })),
  "an empty mechanical route": describedBook(newRoute({ ...empty, kind: "mechanical", units: "F" })),
};

describe.each(Object.entries(books))("%s", (_, book) => {
  const bytes = packBook(book);

  test("keeps every rule", () => expect(brokenRules(bytes)).toEqual([]));

  test("is the same whenever it is made", () => expect(packBook(book)).toEqual(bytes));

  test("tells nothing of anybody", () => {
    const parts = partsOf(bytes);
    for (const name of ["docProps/core.xml", "docProps/app.xml"])
      expect(strFromU8(parts.get(name)!)).not.toMatch(/creator|lastModifiedBy|Company|Manager|created|modified/);
    expect(strFromU8(parts.get("docProps/app.xml")!)).toContain("<Application>Greybody</Application>");
  });
});

test("a spill is a dynamic array over its rows, its cells await their values", () => {
  const sheet = xmlOf(partsOf(packBook(books["the demo"])), "xl/worksheets/sheet1.xml");
  const spills = all(sheet, "c").filter(({ attributes }) => attributes.cm === "1");
  const { computed, rows } = demoRoute("C").sheets.flatMap((one) => (one.kind === "table" ? [one] : []))[0]!;
  expect(spills).toHaveLength(computed.length);
  for (const { attributes, children } of spills) {
    const [, letters = "", row = ""] = /^([A-Z]+)(\d+)$/.exec(attributes.r!)!;
    expect(children[0]!.attributes).toEqual({
      t: "array",
      ref: `${attributes.r!}:${letters}${Number(row) + rows.length - 1}`,
    });
  }
});

test("limits of what is typed stop, choices ask, what is worked out cannot be typed over", () => {
  const sheet = xmlOf(partsOf(packBook(books["the demo"])), "xl/worksheets/sheet1.xml");
  const validations = all(sheet, "dataValidation");
  const says = (part: string) => validations.find(({ attributes }) => attributes.error?.includes(part))!;
  const left = says("left: a number from -40 to 1500 °C");
  expect(left.attributes).toMatchObject({ type: "decimal", showErrorMessage: "1" });
  expect(left.attributes.errorStyle).toBeUndefined();
  expect(left.children.map(({ text }) => text)).toEqual(["-40", "1500"]);
  expect(says("status is usually").attributes).toMatchObject({ type: "list", errorStyle: "warning" });
  expect(says("worked out from").children[0]!.text).toBe("FALSE");
  const job = xmlOf(partsOf(packBook(books["the demo"])), "xl/worksheets/sheet2.xml");
  const [protection] = all(job, "sheetProtection");
  expect(protection!.attributes).toMatchObject({ sheet: "1" });
  expect(Object.keys(protection!.attributes)).not.toContain("password");
});

const sheet: WrittenSheet = {
  ...blankSheet("Pictures", "A4"),
  cells: [
    { row: 1, column: 0, value: ' 1 < 2 & "so"\u0007 ' },
    { row: 1, column: 1, value: true },
    { row: 2, column: 0, formula: "=SEQUENCE(3)", spill: { rows: 3, columns: 1 } },
    { row: 2, column: 1, formula: "=SUM(A3#)" },
    { row: 2, column: 2, formula: '=GREY.ABOUT("version")' },
  ],
  columns: [
    { column: 0, width: 100 },
    { column: 1, width: 200, folded: true },
  ],
};
const box = { startRow: 1, endRow: 10, startColumn: 0, endColumn: 1 };
const bookOf = (...sheets: WrittenSheet[]): WrittenBook => ({ title: "Test", sheets, names: [] });

test("a picture is embedded once, scaled into its box, with its words", () => {
  const pictures = [png(8, 8), png(4, 2), png(8, 8)].map((bytes) => ({ bytes, box, alternative: 'Lug "B"' }));
  const bytes = packBook(bookOf({ ...sheet, pictures }));
  expect(brokenRules(bytes)).toEqual([]);
  const parts = partsOf(bytes);
  expect([...parts.keys()].filter((name) => name.startsWith("xl/media/"))).toEqual([
    "xl/media/image1.png",
    "xl/media/image2.png",
  ]);
  const drawing = xmlOf(parts, "xl/drawings/drawing1.xml");
  // The box has 300 × 240 pixels, 4 are left free on each side: 232 pixels of 9525 EMU (ECMA-376 part 1, 20.1.2.1).
  expect(all(drawing, "xdr:ext")[0]!.attributes).toEqual({ cx: String(232 * 9525), cy: String(232 * 9525) });
  expect(all(drawing, "xdr:cNvPr")[0]!.attributes.descr).toBe('Lug "B"');
  expect(all(drawing, "a:blip").map(({ attributes }) => attributes["r:embed"])).toEqual(["rId1", "rId2", "rId1"]);
});

test("the size of a picture is read from its file, whatever stands before it", () => {
  expect(pictureSize(png(640, 480))).toEqual({ kind: "png", width: 640, height: 480 });
  expect(pictureSize(jpegHead(1440, 1080))).toEqual({ kind: "jpeg", width: 1440, height: 1080 });
  for (const bytes of [new Uint8Array(0), jpegHead(2, 2).slice(0, 12), jpegHead(0, 4), new Uint8Array(30)])
    expect(pictureSize(bytes)).toBeUndefined();
});

test("text comes through whole, and only spills and our functions are dynamic arrays", () => {
  const parts = partsOf(packBook(bookOf(sheet)));
  // U+0007 cannot stand in XML: ECMA-376 part 1, 22.9.2.19.
  expect(all(xmlOf(parts, "xl/sharedStrings.xml"), "t")[0]!.text).toBe(' 1 < 2 & "so"_x0007_ ');
  const cells = all(xmlOf(parts, "xl/worksheets/sheet1.xml"), "c").filter(({ children }) => children[0]?.name === "f");
  expect(cells.map(({ attributes, children }) => [attributes.r, attributes.cm, children[0]!.attributes.ref])).toEqual([
    ["A3", "1", "A3:A5"],
    ["B3", undefined, undefined],
    ["C3", "1", "C3"],
  ]);
});

const table = { name: "Readings", area: { startRow: 0, endRow: 1, startColumn: 0, endColumn: 0 }, columns: ["a"] };
const header = { row: 0, column: 0, value: "a" };
const named = (name: string): WrittenBook => ({ ...bookOf(sheet), names: [{ name, formula: "1" }] });

test.each<[string, WrittenBook, RegExp]>([
  ["no sheet", bookOf(), /needs a sheet/],
  ["a sheet's name with a slash", bookOf({ ...sheet, name: "a/b" }), /no sheet of the name/],
  ["a sheet's name of 32 letters", bookOf({ ...sheet, name: "x".repeat(32) }), /no sheet of the name/],
  ["two sheets of one name", bookOf(sheet, { ...sheet, name: "PICTURES" }), /Two sheets/],
  ["a name like a cell", named("AB12"), /no name "AB12"/],
  ["a name like a row", named("R1"), /no name "R1"/],
  ["a cell twice", bookOf({ ...sheet, cells: [header, header] }), /written twice/],
  ["a header unlike its column", bookOf({ ...sheet, cells: [{ ...header, value: "b" }], tables: [table] }), /says "b"/],
  [
    "two tables over one another",
    bookOf({ ...sheet, cells: [header], tables: [table, { ...table, name: "T" }] }),
    /lies over/,
  ],
  [
    "a picture that is none",
    bookOf({ ...sheet, pictures: [{ bytes: new Uint8Array(40), box, alternative: "" }] }),
    /neither/,
  ],
])("%s is told before a file is made", (_, book, words) => {
  expect(() => packBook(book)).toThrow(words);
});

test("choices that fit into no validation are told", () => {
  const rule = { kind: "list", choices: ["a,b"] } as const;
  expect(() => packBook(bookOf({ ...sheet, validations: [{ area: box, rule }] }))).toThrow(/do not fit/);
});
