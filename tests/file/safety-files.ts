/** Files that no program of good will writes, each with what the refusal says. */
import { strToU8, zipSync } from "fflate";
import { makeWorkbook, partsOf } from "../support/workbook-file.js";

/** The minimal standard generator of Park and Miller (1988). */
export function generatorOf(seed: number): () => number {
  let state = seed;
  return () => (state = (state * 48271) % 2147483647) / 2147483647;
}

const book = (rows: string): Uint8Array => makeWorkbook({ sheets: [{ name: "S", rows }] });
const withParts = (parts: Record<string, string | Uint8Array>): Uint8Array =>
  makeWorkbook({ sheets: [{ name: "S", rows: "" }], parts });
const sheet = (text: string): Uint8Array => withParts({ "xl/worksheets/sheet1.xml": text });
const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";

/** Turns the little-endian number at a place in the directory's record of the last entry into another. */
function inDirectory(bytes: Uint8Array, field: number, size: 2 | 4, value: number): Uint8Array {
  const copy = bytes.slice();
  const view = new DataView(copy.buffer);
  let at = -1;
  for (let i = 0; i + 4 <= copy.length; i++) if (view.getUint32(i, true) === 0x02014b50) at = i;
  if (size === 2) view.setUint16(at + field, value, true);
  else view.setUint32(at + field, value, true);
  return copy;
}

/** Zeros pack a thousand to one; made once. */
const zeros = (megabytes: number): Uint8Array => new Uint8Array(megabytes * 2 ** 20).fill(0x20);

interface SpoiltFile {
  readonly make: () => Uint8Array;
  readonly says: RegExp;
}

export const SPOILT: Readonly<Record<string, SpoiltFile>> = {
  empty: { make: () => new Uint8Array(0), says: /is empty/ },
  "a text": { make: () => strToU8("temperature;58,0\n"), says: /not an Excel workbook/ },
  "a zip of something else": { make: () => zipSync({ "a.txt": strToU8("a") }), says: /not an Excel workbook/ },
  "cut in half": {
    make: () => {
      const bytes = book("<row/>");
      return bytes.slice(0, bytes.length / 2);
    },
    says: /cut short/,
  },
  "a bomb: 20 MB of blanks in a sheet": {
    make: () => sheetOf(zeros(20)),
    says: /would expand to 20 MB/,
  },
  "a bomb below the ratio: 15 MB in each of four sheets": {
    make: () => {
      const blank = zeros(15);
      const names = Array.from({ length: 4 }, (_, i) => ({ name: `S${i}`, rows: "" }));
      const made = partsOf({ sheets: names });
      const head = strToU8(`<worksheet xmlns="${MAIN}">`);
      const tail = strToU8("<sheetData/></worksheet>");
      const text = new Uint8Array(head.length + blank.length + tail.length);
      text.set(head);
      text.set(blank, head.length);
      text.set(tail, head.length + blank.length);
      return zipSync(
        Object.fromEntries(
          Object.entries(made).map(([name, part]) => [
            name,
            name.startsWith("xl/worksheets/") ? text : strToU8(part as string),
          ]),
        ),
        { level: 1 },
      );
    },
    says: /more than \d+ MB/,
  },
  "a size in the directory that is not the part's": {
    make: () => inDirectory(book("<row/>"), 24, 4, 0x7fffffff),
    says: /2048 MB|another size|damaged/,
  },
  "two entries in one place": {
    make: () => {
      const bytes = withParts({ "y.xml": "<a/>", "z.xml": "<a/>" });
      const view = new DataView(bytes.buffer, bytes.byteOffset);
      const offsets: number[] = [];
      for (let i = 0; i + 4 <= bytes.length; i++) if (view.getUint32(i, true) === 0x02014b50) offsets.push(i + 42);
      return inDirectory(bytes, 42, 4, view.getUint32(offsets.at(-2)!, true));
    },
    says: /same place|another name/,
  },
  "a name that climbs": { make: () => withParts({ "../../outside.xml": "<a/>" }), says: /outside itself/ },
  "a name with backslashes that climbs": {
    make: () => withParts({ "..\\outside.xml": "<a/>" }),
    says: /outside itself/,
  },
  "a name from the root": { make: () => withParts({ "/etc/x": "<a/>" }), says: /outside itself/ },
  "a relationship that climbs": {
    make: () =>
      withParts({
        "xl/_rels/workbook.xml.rels":
          '<Relationships xmlns="http://schemas.openxmlformats.org/package/2006/relationships"><Relationship Id="rId1" Type="http://schemas.openxmlformats.org/officeDocument/2006/relationships/worksheet" Target="../../../etc/passwd"/></Relationships>',
      }),
    says: /out of the package/,
  },
  "a document type": {
    make: () => sheet(`<!DOCTYPE a [<!ENTITY b "c">]><worksheet xmlns="${MAIN}"/>`),
    says: /document type/,
  },
  "an entity of its own": {
    make: () => book("<row r='1'><c r='A1' t='str'><v>&b;</v></c></row>"),
    says: /not well-formed/,
  },
  "a sheet that ends early": {
    make: () => sheet(`<worksheet xmlns="${MAIN}"><sheetData><row r="1">`),
    says: /not well-formed/,
  },
  "a sheet that is no text": {
    make: () => withParts({ "xl/worksheets/sheet1.xml": Uint8Array.of(0xff, 0xc0, 0x00, 0xd8) }),
    says: /not readable text|not well-formed/,
  },
  "tags crossed": { make: () => book('<row r="1"><c r="A1"></row></c>'), says: /not well-formed/ },
  "an attribute twice": { make: () => book('<row r="1" r="1"/>'), says: /not well-formed/ },
  "a cell beyond the last column": {
    make: () => book('<row r="1"><c r="ZZZ1"><v>1</v></c></row>'),
    says: /beyond the last row or column/,
  },
  "a cell beyond the last row": {
    make: () => book('<row r="1"><c r="A9999999"><v>1</v></c></row>'),
    says: /beyond the last row or column/,
  },
  "a million levels": { make: () => book("<a>".repeat(100_000)), says: /deeper than 100/ },
  "an attribute of 30 MB that never ends": {
    make: () => book(`<row r="1" x="${"y".repeat(30_000_000)}`),
    says: /not well-formed|expand/,
  },
  "a workbook without sheets' parts": { make: () => withParts({ "xl/workbook.xml": "<workbook/>" }), says: /\./ },
};

function sheetOf(text: Uint8Array): Uint8Array {
  return zipSync({
    ...Object.fromEntries(
      Object.entries(partsOf({ sheets: [{ name: "S", rows: "" }] })).map(([name, part]) => [
        name,
        strToU8(part as string),
      ]),
    ),
    "xl/worksheets/sheet1.xml": [text, { level: 1 }],
  });
}
