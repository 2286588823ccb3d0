/** Parts that no usual program writes: nothing in them is written twice, torn, or told wrongly. Values by hand: (80 − 40)/(90 − 40) = 0.8, of 65 0.5, of 90 1. */
import { recalcAll, textsOf, type Recalculated } from "../support/recalc.js";
import { makeWorkbook, type MadeWorkbook } from "../support/workbook-file.js";
import { INPUTS, SHARE } from "./command-shapes.js";

const F = `${SHARE}(A1,B1,C1)`;
const COLUMN = `${SHARE}(A1:A3,90,40)`;
const below = (inRow2: string, inRow3 = ""): string =>
  `<row r="2"><c r="A2"><v>65</v></c>${inRow2}</row><row r="3"><c r="A3"><v>90</v></c>${inRow3}</row>`;

interface Found {
  /** What stands in sheetData. */
  readonly rows: string;
  readonly cells: readonly string[];
}

const books: Record<string, Uint8Array> = {};
let run: Recalculated;
beforeAll(async () => (run = await recalcAll(books)));

/** The name of a workbook that goes along in the one run. */
function made(rows: string, more: Partial<MadeWorkbook> = {}): string {
  const name = `${Object.keys(books).length}.xlsx`;
  books[name] = makeWorkbook({ sheets: [{ name: "Data", rows }], hasDynamicArrays: true, ...more });
  return name;
}

function found(name: string): Found {
  const text = textsOf(run.written.get(name)!)["xl/worksheets/sheet1.xml"] ?? "";
  return {
    rows: /<sheetData>([\s\S]*)<\/sheetData>/.exec(text)?.[1] ?? text,
    cells: run.reports
      .get(name)!
      .cells.map(({ cell, status, reason, recalculated: value }) =>
        status === "kept" ? `${cell} kept: ${reason}` : `${cell} ${JSON.stringify(value)}`,
      ),
  };
}

describe("what may hold tags that are none", () => {
  test.each(
    [
      [`<f>${F}</f><v><![CDATA[</v>]]></v>`, ' t="str"', `<f>${F}</f><v>0.8</v>`],
      [`<!-- <f>x</f><v>3</v> --><f>${F}</f><v>7</v>`, "", `<!-- <f>x</f><v>3</v> --><f>${F}</f><v>0.8</v>`],
      [`<f>${F}</f><!-- <v>3</v> --><v>7</v>`, "", `<f>${F}</f><!-- <v>3</v> --><v>0.8</v>`],
      [`<f>${F}</f><v>7<!-- <v>--></v>`, "", `<f>${F}</f><v>0.8</v>`],
      [`<?x <v>1</v>?><f>${F}</f><v>7</v>`, "", `<?x <v>1</v>?><f>${F}</f><v>0.8</v>`],
      [
        `<f><![CDATA[IF(A1<B1,${F},"</f><v>")]]></f><v>7</v>`,
        "",
        `<f><![CDATA[IF(A1<B1,${F},"</f><v>")]]></f><v>0.8</v>`,
      ],
    ].map(([inside, type, right]) => [inside, made(`<row r="1">${INPUTS}<c r="D1"${type}>${inside}</c></row>`), right]),
  )("%s", (_, name = "", right = "") => {
    expect(found(name).rows).toBe(`<row r="1">${INPUTS}<c r="D1">${right}</c></row>`);
  });
});

const withMetadata = made(`<row r="1">${INPUTS}<c r="D1" t="e" vm="1"><f>${F}</f><v>#VALUE!</v></c></row>`);
test("what the old error stood for is taken away with it", () => {
  expect(found(withMetadata).rows).toContain(`<c r="D1"><f>${F}</f><v>0.8</v></c>`);
});

describe("two in one place: neither is touched", () => {
  const TAKEN = "kept: another cell or result stands in its cells";
  const array = `<row r="1">${INPUTS}<c r="D1"><f t="array" ref="D1:D3">${COLUMN}</f><v>7</v></c></row>`;
  test.each(
    [
      ["formulas", `<row r="1">${INPUTS}<c r="D1"><f>${F}</f><v>7</v></c><c r="D1"><f>${F}</f><v>8</v></c></row>`, 2],
      ["a formula and a value", `<row r="1">${INPUTS}<c r="D1"><f>${F}</f><v>7</v></c><c r="D1"><v>8</v></c></row>`, 1],
      [
        "arrays",
        array + below(`<c r="D2"><f t="array" ref="D2:D3">${COLUMN}</f><v>7</v></c>`, '<c r="D3"><v>7</v></c>'),
        2,
      ],
      ["a formula in an array", array + below(`<c r="D2"><f>${F}</f><v>7</v></c>`, '<c r="D3"><v>7</v></c>'), 2],
      [
        "results that grow into each other",
        `<row r="1">${INPUTS}<c r="D1" cm="1"><f t="array" ref="D1">${COLUMN}</f><v>7</v></c></row>` +
          below(`<c r="C2" cm="1"><f t="array" ref="C2">${SHARE}(A1:C1,95,10)</f><v>7</v></c>`),
        2,
      ],
    ].map(([title, before, count]) => ({ title, before, count, name: made(String(before)) })),
  )("$title", ({ before, count, name }) => {
    const { rows, cells } = found(name);
    expect(rows).toBe(before);
    expect(cells).toHaveLength(Number(count));
    for (const cell of cells) expect(cell).toContain(TAKEN);
  });
});

const astray = `<row r="1">${INPUTS}<c r="D1"><f t="array" ref="C1:D1">${SHARE}(A1,90,40)</f><v>7</v></c></row>`;
const astrayBook = made(astray);
test("an array that does not begin in its cell is told and leaves what was typed", () => {
  expect(found(astrayBook)).toEqual({
    rows: astray,
    cells: ["D1 kept: its array does not begin in its cell"],
  });
});

const readers = made(
  `<row r="1">${INPUTS}<c r="E1"><f>${SHARE}(G3*80,90,40)</f><v>9</v></c><c r="F1"><f>G3*10</f><v>0</v></c>` +
    `<c r="G1" cm="1"><f t="array" ref="G1">${COLUMN}</f><v>7</v></c></row>${below("")}`,
);
test("what reads a cell that a result grows into comes after it, wherever it stands", () => {
  const { cells } = found(readers);
  expect([...cells].sort()).toEqual(["E1 0.8", "F1 10", "G1 0.8", "G2 0.5", "G3 1"]);
});

const itself = made(
  `<row r="1">${INPUTS}<c r="D1" cm="1"><f t="array" ref="D1">${COLUMN}+SUM(D3:D5)</f><v>7</v></c></row>${below("")}`,
);
test("a result that grows into what it reads leads back to itself", () => {
  expect(found(itself).cells).toEqual(["D1 kept: it leads back to itself"]);
});

const followers = made(
  `<row r="1">${INPUTS}<c r="D1"><f t="shared" si="0"/><v>7</v></c></row>` +
    below(`<c r="D2"><f t="shared" ref="D1:D2" si="0">${SHARE}(A2,90,40)</f><v>7</v></c>`),
);
test("followers before the cell that has their shared formula", () => {
  const { cells } = found(followers);
  expect(cells).toEqual(["D1 0.8", "D2 0.5"]);
});

const scoped = made(`<row r="1">${INPUTS}<c r="D1"><f>${SHARE}(Data!N,90,40)</f><v>7</v></c></row>`, {
  names: '<definedName name="N" localSheetId="0">Data!$A$1</definedName>',
});
test("a sheet that is in the workbook is not said to be in another one", () => {
  const { cells } = found(scoped);
  expect(cells).toEqual(["D1 kept: the name behind Data! is not read"]);
});

const text =
  '<?xml version="1.0" encoding="ISO-8859-1"?><worksheet xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main">' +
  `<sheetData><row r="1"><c r="A1" t="str"><v>80 \u00c2\u00b0</v></c><c r="B1"><f>${SHARE}(80,90,40)</f><v>7</v></c></row></sheetData></worksheet>`;
const latin = made("", {
  parts: { "xl/worksheets/sheet1.xml": Uint8Array.from(text, (one) => one.charCodeAt(0)) },
});
test("a sheet in another encoding is read by it and left as it is", () => {
  const { cells } = found(latin);
  expect(cells).toEqual(["B1 kept: its sheet is not written in UTF-8"]);
});

const wide = Array.from(
  { length: 300 },
  (_, i) => `<row r="${i + 1}"><c r="A${i + 1}"><f t="array" ref="A${i + 1}:XFD${i + 1}">1</f><v>1</v></c></row>`,
);
const wideBook = made(wide.join(""));
test("arrays that say they fill whole sheets are refused, not laid out", () => {
  expect(run.reports.get(wideBook)?.refused).toMatch(/take up more than 4000000 cells/);
});

const totals = Array.from(
  { length: 6500 },
  (_, i) =>
    `<row r="${i + 1}"><c r="A${i + 1}"><f>1+1</f><v>2</v></c><c r="B${i + 1}"><f>SUM(A$1:A${i + 1})</f><v>2</v></c></row>`,
);
const totalsBook = made(totals.join(""));
test("running totals over more formulas than there is memory for are refused", () => {
  expect(run.reports.get(totalsBook)?.refused).toMatch(/more than 20000000 times/);
});
