/** Workbooks of ours read back: what was typed into them is described again, whatever a spreadsheet program made of the file. */
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";
import { readContents } from "../../src/host/file/read/contents.js";
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import type { BookDescription, FreeCell, SheetDescription } from "../../src/templates/contract.js";
import { refill } from "../../src/templates/refill/refill.js";
import { templates } from "../../src/templates/registry.js";

const bytesOf = (book: BookDescription, marks: Record<string, string> = {}): Uint8Array =>
  packBook(describedBook(book, { marks }));
const marked = (book: BookDescription): Uint8Array =>
  bytesOf(book, { GREYBODY_TEMPLATE: book.template!.name, GREYBODY_UNITS: book.template!.units });

/** A file with parts changed as text: the pattern has to be there. */
function changed(bytes: Uint8Array, part: string, ...changes: [from: string | RegExp, to: string][]): Uint8Array {
  const parts = unzipSync(bytes);
  let text = strFromU8(parts[part]!);
  for (const [from, to] of changes) {
    const before = text;
    text = text.replace(from, to);
    if (text === before) throw new Error(`${part} has no ${String(from)}`);
  }
  return zipSync({ ...parts, [part]: strToU8(text) });
}

const rowsOf = (book: BookDescription, tableName: string): readonly (readonly unknown[])[] => {
  const sheet = book.sheets.find((one) => one.kind === "table" && one.tableName === tableName);
  if (sheet?.kind !== "table") throw new Error(`no table ${tableName}`);
  return sheet.rows;
};
/** A demo's block may be drawn by a formula: of what is typed only values are read back. */
const typedOnly = (cell: FreeCell): FreeCell =>
  cell.look === "typed" && typeof cell.value === "string" && cell.value.startsWith("=")
    ? { ...cell, value: undefined as never }
    : cell;
const field = (book: BookDescription, name: string): unknown =>
  book.sheets
    .flatMap((sheet) => (sheet.kind === "form" ? sheet.fields : []))
    .find(({ definedName }) => definedName === name)?.value;

describe.each(
  templates.flatMap((template) =>
    (["C", "F"] as const).flatMap((units) => [
      [`${template.name}, empty, ${units}`, template, template.empty({ title: "A title", units, rows: 3 })] as const,
      ...(template.demo === undefined
        ? []
        : [[`${template.name}, demo, ${units}`, template, template.demo(units)] as const]),
    ]),
  ),
)("%s", (_, template, book) => {
  test("comes back as it was described", () => {
    const { book: again, left, template: found } = refill(readContents(marked(book)));
    expect(left).toEqual([]);
    expect(found.name).toBe(template.name);
    expect(again.title).toBe(book.title);
    expect(again.template).toEqual(book.template);
    // A table without rows has one empty one: nothing could be typed into it otherwise.
    const filled = (sheet: SheetDescription): SheetDescription =>
      sheet.kind === "table" && sheet.rows.length === 0
        ? { ...sheet, rows: [sheet.columns.map(() => null)] }
        : sheet.kind === "form"
          ? { ...sheet, fields: sheet.fields.map((one) => (one.value === "" ? { ...one, value: null } : one)) }
          : sheet.kind === "free"
            ? { ...sheet, cells: sheet.cells.map(typedOnly) }
            : sheet;
    expect(again.sheets.map(({ name }) => name)).toEqual(book.sheets.map(({ name }) => name));
    again.sheets.forEach((sheet, at) => expect(sheet).toEqual(filled(book.sheets[at]!)));
  });

  test("is known without its names, too", () => {
    const { template: found, from } = refill(readContents(bytesOf(book)));
    expect([found.name, from]).toEqual([template.name, book.template!.units]);
  });
});

/** A route of two rows by hand: asset, status, left; the first sheet of the book. */
function route(units: "C" | "F" = "C"): BookDescription {
  const book = templates[0]!.empty({ title: "Three", units, rows: 3 });
  return {
    ...book,
    sheets: book.sheets.map((sheet) => {
      if (sheet.kind !== "table" || sheet.tableName !== "Readings") return sheet;
      const row = (cells: Record<string, number | string>) => sheet.columns.map(({ key }) => cells[key] ?? null);
      const rows = [
        row({ asset_id: "A-1", status: "exception", left: 104, due: 45_000 }),
        row({ asset_id: "A-2", status: "no exception", left: 41 }),
        row({}),
      ];
      return { ...sheet, rows };
    }),
  };
}
const cellsOf = (book: BookDescription, key: string): unknown[] => {
  const sheet = book.sheets.find((one) => one.kind === "table" && one.tableName === "Readings");
  if (sheet?.kind !== "table") throw new Error("no Readings");
  const at = sheet.columns.findIndex((column) => column.key === key);
  return rowsOf(book, "Readings").map((row) => row[at]);
};
const SHEET = "xl/worksheets/sheet1.xml";

test("a renamed sheet, another sheet, a renamed column, an error, a formula and a value typed over one", () => {
  const plain = changed(
    marked(route()),
    "xl/workbook.xml",
    [/<sheet name="Route"/, '<sheet name="Monday"'],
    [/<sheet name="Windows"/, '<sheet name="Behind glass"'],
  );
  const text = strFromU8(unzipSync(plain)[SHEET]!);
  // A-1's left is a number 104: its cell, and the anchor of the first worked-out column.
  const [, left] = /<c r="(G\d+)"[^>]*><v>104<\/v>/.exec(text)!;
  const [, second] = /<c r="(G\d+)"[^>]*><v>41<\/v>/.exec(text)!;
  const file = changed(
    changed(
      plain,
      SHEET,
      [new RegExp(`<c r="${left!}"([^>]*)><v>104</v></c>`), `<c r="${left!}"$1 t="e"><v>#DIV/0!</v></c>`],
      [new RegExp(`<c r="${second!}"([^>]*)><v>41</v></c>`), `<c r="${second!}"$1><f>40+1</f><v>41</v></c>`],
    ),
    "xl/tables/table1.xml",
    [/name="reason"/, 'name="why"'],
  );
  const { book, left: told } = refill(readContents(file));
  expect(cellsOf(book, "asset_id")).toEqual(["A-1", "A-2", null]);
  expect(cellsOf(book, "left")).toEqual([null, 41, null]);
  // Under its own name again: formulas and words of the template name its sheets.
  expect(book.sheets[0]!.name).toBe("Route");
  expect(told).toEqual([
    "The table Readings of the file has no column reason: left empty.",
    expect.stringMatching(/^An error stands in a cell that is typed.*: Route, left in row \d+ \(#DIV\/0!\)\.$/),
    expect.stringMatching(/^A formula stands in a cell that is typed: its value.*: Route, left in row \d+\.$/),
  ]);
});

test("a copy of the sheet Job, whose cells bear the same names for that sheet alone, is not taken for it", () => {
  const book = marked(route());
  const [, sheet, cell] = /<definedName name="job_id">'([^']+)'!([^<]+)</.exec(
    strFromU8(unzipSync(book)["xl/workbook.xml"]!),
  )!;
  const number = route().sheets.findIndex(({ name }) => name === sheet);
  // Excel puts them before the workbook's own; here the copy's means the cell below.
  const below = cell!.replace(/\d+$/, (row) => String(Number(row) + 1));
  const file = changed(
    changed(book, "xl/workbook.xml", [
      /<definedName name="job_id">/,
      `<definedName name="job_id" localSheetId="1">'${sheet!}'!${below}</definedName><definedName name="job_id">`,
    ]),
    `xl/worksheets/sheet${number + 1}.xml`,
    [
      new RegExp(`<c r="${below.replaceAll("$", "")}"([^>]*)/>`),
      `<c r="${below.replaceAll("$", "")}"$1 t="inlineStr"><is><t>of the copy</t></is></c>`,
    ],
  );
  const { book: again } = refill(readContents(file));
  expect([field(again, "job_id"), field(again, "job_client")]).toEqual([null, "of the copy"]);
});

test("a text that begins with = stays text, and is told", () => {
  // As Excel keeps what is typed with an apostrophe before it.
  const strings = changed(marked(route()), "xl/sharedStrings.xml", [/<t>A-2<\/t>/, "<t>=1+1</t>"]);
  const { book, left } = refill(readContents(strings));
  expect(cellsOf(book, "asset_id")).toEqual(["A-1", " =1+1", null]);
  expect(left).toEqual([expect.stringMatching(/^A text that begins with = was given a space.*row \d+\.$/)]);
});

test("days of a workbook that counts from 1904 are days as others count them", () => {
  const file = changed(marked(route()), "xl/workbook.xml", ["<workbookPr ", '<workbookPr date1904="1" ']);
  const { book } = refill(readContents(file));
  // 1904-01-01 is day 1462 as Excel otherwise counts (ECMA-376 part 1, 18.17.4.1).
  expect(cellsOf(book, "due")).toEqual([45_000 + 1462, null, null]);
  expect(cellsOf(book, "left")).toEqual([104, 41, null]);
});

test("°F become °C where that is asked for, and nothing else does", () => {
  const { book, from, left } = refill(readContents(marked(route("F"))), "C");
  // (104 − 32)/1.8 = 40; (41 − 32)/1.8 = 5.
  expect(cellsOf(book, "left")).toEqual([40, 5, null]);
  expect(cellsOf(book, "due")).toEqual([45_000, null, null]);
  expect([from, book.template]).toEqual(["F", { name: "route", units: "C" }]);
  // Job's default of 2 K stands in the file as 3.6 °F, one metre as 3.28 ft (rounded there): 3.28 × 0.3048 = 1.00.
  expect([field(book, "job_accuracy"), field(book, "job_distance")]).toEqual([2, 1]);
  expect(left).toEqual([]);
});

test("a workbook that is none of ours, and one from a template that is not known, are told apart", () => {
  const foreign = packBook(
    describedBook({ title: "x", sheets: [{ kind: "notes", name: "N", heading: ["N"], lines: ["1"] }] }),
  );
  expect(() => refill(readContents(foreign))).toThrow("none that Greybody made");
  expect(() => refill(readContents(bytesOf(route(), { GREYBODY_TEMPLATE: "tomorrow" })))).toThrow('"tomorrow"');
});

test("a block that was pasted comes back cell by cell, a hole in it too, in the other unit where asked", () => {
  const grid = templates.find(({ name }) => name === "grid")!;
  const values = [
    [50, null, 68],
    [null, 41, "n/a"],
  ];
  const withBlock = (book: BookDescription): BookDescription => ({
    ...book,
    sheets: book.sheets.map((sheet) =>
      sheet.kind === "free"
        ? {
            ...sheet,
            cells: sheet.cells.map((cell) => (cell.name === "grid_readings" ? { ...cell, value: 50, values } : cell)),
          }
        : sheet,
    ),
  });
  const blockOf = (book: BookDescription): FreeCell | undefined =>
    book.sheets
      .flatMap((sheet) => (sheet.kind === "free" ? sheet.cells : []))
      .find(({ name }) => name === "grid_readings");
  const contents = readContents(marked(withBlock(grid.empty({ units: "F", rows: 6 }))));
  const same = blockOf(refill(contents).book)!;
  expect([same.value, same.values, same.size]).toEqual([50, values, { rows: 6, columns: 8 }]);
  // (50 − 32)/1.8 = 10, (68 − 32)/1.8 = 20, (41 − 32)/1.8 = 5.
  expect(blockOf(refill(contents, "C").book)!.values).toEqual([
    [10, null, 20],
    [null, 5, "n/a"],
  ]);
});
