/** The quick way through a sheet's text gives what the XML reader gives, or leaves the text to it: held against it over spoilt texts. */
import fc from "fast-check";
import { scanQuickly } from "../../src/host/file/sheet/scan-quick.js";
import { scanSheet } from "../../src/host/file/sheet/scan.js";
import type { FileCell, ScannedSheet } from "../../src/host/file/sheet/cells.js";

const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
const STRINGS = ["zero", "one"];
const ROWS =
  '<row r="1" spans="1:4" hidden="1" x:y="0.25"><c r="A1" s="3"><v>58</v></c><c r="B1" t="s"><v>1</v></c>\n' +
  '<c r="C1" s="2" t="str"><f>A1&amp;"&lt;x"</f><v xml:space="preserve"> a&#10;b_x000D_</v></c><c r="D1"/></row>' +
  '<row r="2"><c r="A2" t="b"><f t="shared" ref="A2:A3" si="0">A1=1</f><v>0</v></c><c r="B2" t="e"><v>#N/A</v></c></row>' +
  '<row r="3"><c r="A3" t="b"><f t="shared" si="0"/><v>0</v></c><c r="B3" cm="1"><f t="array" ref="B3:B4">A1:A2</f><v>1.5E-3</v></c>' +
  '<c r="C3" s="1" cm="1" t="str"><f t="array" ref="C3">"x"</f><v>x</v></c><c r="D3" t="str" cm="1"><f>"y"</f><v>y</v></c></row>' +
  '<row r="4"/><row r="5" ><c r="A5" t="inlineStr"><is><t>x &amp; y</t></is></c><c r="B5" vm="2"><v/></c><c r="C5"><f/><v></v></c></row>';
const sheet = (rows: string): string =>
  `<?xml version="1.0"?>\n<worksheet xmlns="${MAIN}"><dimension ref="A1"/><sheetData>${rows}</sheetData><pageMargins left="1"/></worksheet>`;

interface Found {
  readonly cells: readonly FileCell[];
  readonly scanned: ScannedSheet | undefined;
}

function quick(text: string): Found | undefined {
  const cells: FileCell[] = [];
  const scanned = scanQuickly("sheet", text, STRINGS, { cell: (cell) => cells.push(cell), reset: () => undefined });
  return scanned && { cells, scanned };
}

/** The XML reader alone: a comment behind the rows is what the quick way does not take, and moves nothing before it. */
function slow(text: string): Found {
  const end = text.lastIndexOf("</sheetData>");
  const cells: FileCell[] = [];
  const commented = `${text.slice(0, end)}<!---->${text.slice(end)}`;
  const sink = { cell: (cell: FileCell) => cells.push(cell), reset: () => (cells.length = 0) };
  const scanned = scanSheet("sheet", commented, STRINGS, sink);
  return { cells, scanned: { ...scanned, dataEnd: scanned.dataEnd - "<!---->".length } };
}

test("the usual form is taken, and read as the XML reader reads it", () => {
  const found = quick(sheet(ROWS));
  expect(found).toBeDefined();
  expect(found?.cells).toHaveLength(13);
  expect(found).toEqual(slow(sheet(ROWS)));
});

test.each([
  ["a comment", '<row r="1"><!-- a --></row>'],
  ["CDATA", '<row r="1"><c r="A1"><v><![CDATA[1]]></v></c></row>'],
  ["single quotes", "<row r='1'/>"],
  ["no address", '<row r="1"><c><v>1</v></c></row>'],
  ["an element of another kind", '<row r="1"><c r="A1"><v>1</v><extLst/></c></row>'],
  ["a carriage return", '<row r="1">\r\n</row>'],
])("%s is left to it", (_, rows) => {
  expect(quick(sheet(rows))).toBeUndefined();
  expect(() => slow(sheet(rows))).not.toThrow();
});

test("an attribute on both sides of the type is no XML, and is not taken", () => {
  const rows = '<row r="1"><c r="A1" cm="1" t="str" cm="1"><f>1</f><v>1</v></c></row>';
  expect(quick(sheet(rows))).toBeUndefined();
  expect(() => slow(sheet(rows))).toThrow();
});

test("a spoilt text is never taken where the XML reader refuses it, nor read otherwise", () => {
  const piece = fc.constantFrom(
    ..."<>&\"'/= :;1A\n".split(""),
    ...[
      "<c",
      "</c>",
      "<v>",
      "</v>",
      "<f>",
      "</f>",
      "<row",
      "</row>",
      "]]>",
      "&amp;",
      "&#0;",
      "&#x1;",
      "&x;",
      ' t="s"',
      ' r="B2"',
      "<is>",
      "<!--",
      "<?a?>",
      "\u0001",
      "\ufffe",
      "</sheetData>",
      "<sheetData>",
    ],
  );
  const change = fc.tuple(fc.nat({ max: ROWS.length - 1 }), fc.nat({ max: 4 }), piece);
  let taken = 0;
  fc.assert(
    fc.property(fc.array(change, { minLength: 1, maxLength: 3 }), (changes) => {
      let rows = ROWS;
      for (const [at, length, put] of changes) rows = rows.slice(0, at) + put + rows.slice(at + length);
      const text = sheet(rows);
      const found = quick(text);
      if (!found) return;
      taken++;
      expect(found).toEqual(slow(text));
    }),
    { numRuns: 30000, seed: 20261126 },
  );
  expect(taken).toBeGreaterThan(300);
});
