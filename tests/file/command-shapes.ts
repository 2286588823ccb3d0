/** Workbooks of each shape, as command-shapes.test.ts runs them. */
import type { MadeWorkbook } from "../support/workbook-file.js";

export interface Shape {
  /** The workbook with what its cells hold; stale values come in, the right ones are to come out. */
  readonly book: (...values: string[]) => MadeWorkbook;
  readonly stale: readonly string[];
  readonly right: readonly string[];
}

const one = (rows: (...values: string[]) => string, more: Partial<MadeWorkbook> = {}) => {
  return (...values: string[]): MadeWorkbook => ({ sheets: [{ name: "Data", rows: rows(...values) }], ...more });
};
export const INPUTS = '<c r="A1"><v>80</v></c><c r="B1"><v>90</v></c><c r="C1"><v>40</v></c>';
const v = (value: string): string => `<v>${value}</v>`;
export const SHARE = "_xldudf_GREY_SHARE_OF_LIMIT";

const three = (formula: (row: number) => string) => {
  return (...values: string[]): string =>
    [80, 65, 90]
      .map(
        (temp, i) => `<row r="${i + 1}"><c r="A${i + 1}"><v>${temp}</v></c>${formula(i + 1)}${v(values[i]!)}</c></row>`,
      )
      .join("");
};

export const SHAPES: Readonly<Record<string, Shape>> = {
  stored: {
    book: one((a) => `<row r="1">${INPUTS}<c r="D1"><f>${SHARE}(A1,B1,C1)</f>${v(a)}</c></row>`),
    stale: ["7"],
    right: ["0.8"],
  },
  prefixed: {
    book: one((a) => `<row r="1">${INPUTS}<c r="D1"><f>_xlfn.${SHARE}(A1,B1,C1)</f>${v(a)}</c></row>`),
    stale: ["7"],
    right: ["0.8"],
  },
  plain: {
    book: one((a) => `<row r="1">${INPUTS}<c r="D1"><f>GREY.SHARE_OF_LIMIT(A1,B1,C1)</f>${v(a)}</c></row>`),
    stale: ["7"],
    right: ["0.8"],
  },
  dependent: {
    book: one(
      (a, b) =>
        `<row r="1">${INPUTS}<c r="D1"><f>${SHARE}(A1,B1,C1)</f>${v(a)}</c><c r="E1"><f>D1*100</f>${v(b)}</c></row>`,
    ),
    stale: ["7", "700"],
    right: ["0.8", "80"],
  },
  shared: {
    book: one(
      three(
        (r) =>
          `<c r="B${r}"><f t="shared"${r === 1 ? ' ref="B1:B3"' : ""} si="0"${r === 1 ? `>${SHARE}(A1,90,40)</f>` : "/>"}`,
      ),
    ),
    stale: ["1", "1", "1"],
    right: ["0.8", "0.5", "1"],
  },
  "legacy array": {
    book: one(three((r) => `<c r="B${r}">${r === 1 ? `<f t="array" ref="B1:B3">${SHARE}(A1:A3,90,40)</f>` : ""}`)),
    stale: ["9", "0.5", "9"],
    right: ["0.8", "0.5", "1"],
  },
  "dynamic array": {
    book: one(
      three((r) => `<c r="B${r}"${r === 1 ? ` cm="1"><f t="array" ref="B1:B3">${SHARE}(A1:A3,90,40)</f>` : ">"}`),
      { hasDynamicArrays: true },
    ),
    stale: ["9", "9", "9"],
    right: ["0.8", "0.5", "1"],
  },
  table: {
    book: (a, b, total) => ({
      sheets: [
        {
          name: "Data",
          rows:
            '<row r="1"><c r="A1" t="inlineStr"><is><t>temp</t></is></c><c r="B1" t="inlineStr"><is><t>share</t></is></c></row>' +
            `<row r="2"><c r="A2"><v>80</v></c><c r="B2"><f>${SHARE}(Readings[[#This Row],[temp]],90,40)</f>${v(a)}</c></row>` +
            `<row r="3"><c r="A3"><v>65</v></c><c r="B3"><f>${SHARE}(Readings[[#This Row],[temp]],90,40)</f>${v(b)}</c></row>` +
            `<row r="4"><c r="B4"><f>SUBTOTAL(109,Readings[share])</f>${v(total)}</c></row>`,
          after: '<tableParts count="1"><tablePart r:id="rId1"/></tableParts>',
          tables: [
            '<table xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" id="1" name="Readings" displayName="Readings" ref="A1:B4" totalsRowCount="1">' +
              '<autoFilter ref="A1:B3"/><tableColumns count="2"><tableColumn id="1" name="temp"/><tableColumn id="2" name="share" totalsRowFunction="sum">' +
              `<calculatedColumnFormula>${SHARE}(Readings[[#This Row],[temp]],90,40)</calculatedColumnFormula></tableColumn></tableColumns></table>`,
          ],
        },
      ],
    }),
    stale: ["7", "7", "14"],
    right: ["0.8", "0.5", "1.3"],
  },
  names: {
    book: one((a) => `<row r="1">${INPUTS}<c r="D1"><f>${SHARE}(A1,Limit,Data!$C$1)</f>${v(a)}</c></row>`, {
      names: '<definedName name="Limit">Data!$B$1</definedName>',
    }),
    stale: ["7"],
    right: ["0.8"],
  },
  "other sheets, hidden": {
    book: (a, b) => ({
      sheets: [
        { name: "One", rows: `<row r="1">${INPUTS}</row>`, state: "hidden" },
        { name: "Two's", rows: '<row r="1"><c r="A1"><v>20</v></c></row>', state: "veryHidden" },
        {
          name: "Sum",
          rows: `<row r="1"><c r="A1"><f>${SHARE}(One!A1,One!B1,'Two''s'!A1*2)</f>${v(a)}</c><c r="B1"><f>SUM('One:Two''s'!A1)*A1</f>${v(b)}</c></row>`,
        },
      ],
    }),
    stale: ["7", "7"],
    right: ["0.8", "80"],
  },
  // 80 days after the epoch of that system; the result is a number of days all the same.
  "1904": {
    book: one((a) => `<row r="1">${INPUTS}<c r="D1"><f>${SHARE}(A1,B1,C1)</f>${v(a)}</c></row>`, { is1904: true }),
    stale: ["7"],
    right: ["0.8"],
  },
  "inline strings": {
    book: one(
      (a) =>
        `<row r="1"><c r="A1" t="inlineStr"><is><t>80</t></is></c><c r="D1"><f>${SHARE}(A1,90,40)</f>${v(a)}</c></row>`,
    ),
    stale: ["7"],
    right: ["0.8"],
  },
  "shared strings": {
    book: one((a) => `<row r="1"><c r="A1" t="s"><v>1</v></c><c r="D1"><f>${SHARE}(A1,90,40)</f>${v(a)}</c></row>`, {
      sharedStrings: ["no", "80"],
    }),
    stale: ["7"],
    right: ["0.8"],
  },
  strict: {
    book: one((a) => `<row r="1">${INPUTS}<c r="D1"><f>${SHARE}(A1,B1,C1)</f>${v(a)}</c></row>`, { isStrict: true }),
    stale: ["7"],
    right: ["0.8"],
  },
  prefix: {
    book: one(
      (a) =>
        `<x:row r="1"><x:c r="A1"><x:v>80</x:v></x:c><x:c r="D1" s="0"><x:f>${SHARE}(A1,90,40)</x:f><x:v>${a}</x:v></x:c></x:row>`,
      { prefix: "x" },
    ),
    stale: ["7"],
    right: ["0.8"],
  },
  "absolute part names": {
    book: one((a) => `<row r="1">${INPUTS}<c r="D1"><f>${SHARE}(A1,B1,C1)</f>${v(a)}</c></row>`, { isAbsolute: true }),
    stale: ["7"],
    right: ["0.8"],
  },
  "other type": {
    book: one((a) => `<row r="1"><c r="A1"><v>30</v></c>${a}</row>`),
    stale: ['<c r="B1" s="0"><f>_xldudf_GREY_GRADE(A1,"similar",,,"grade")&amp;""</f><v>7</v></c>'],
    right: ['<c r="B1" s="0" t="str"><f>_xldudf_GREY_GRADE(A1,"similar",,,"grade")&amp;""</f><v>4</v></c>'],
  },
  "no value": {
    book: one((a) => `<row r="1">${INPUTS}<c r="D1"><f>${SHARE}(A1,B1,C1)</f>${a}</c></row>`),
    stale: [""],
    right: ["<v>0.8</v>"],
  },
  "in any order, with blanks": {
    book: one(
      (a) =>
        `\n <row r="2">\n  <c r="B2"><f>${SHARE}(A1,90,40)</f><v>${a}</v></c>\n </row>\n <row r="1"><c r='A1'><v>80</v></c></row>\n`,
    ),
    stale: ["7"],
    right: ["0.8"],
  },
  grows: {
    book: one((a) => a, { hasDynamicArrays: true }),
    stale: [
      `<row r="1"><c r="A1"><v>80</v></c><c r="B1" cm="1"><f t="array" ref="B1">${SHARE}(A1:A3,90,40)</f><v>9</v></c></row><row r="2"><c r="A2"><v>65</v></c><c r="D2"><v>1</v></c></row>`,
    ],
    right: [
      `<row r="1"><c r="A1"><v>80</v></c><c r="B1" cm="1"><f t="array" ref="B1:B2">${SHARE}(A1:A3,90,40)</f><v>0.8</v></c></row><row r="2"><c r="A2"><v>65</v></c><c r="B2"><v>0.5</v></c><c r="D2"><v>1</v></c></row>`,
    ].map((text) =>
      text.replace('ref="B1:B2"', 'ref="B1:B3"').replace(/$/, '<row r="3"><c r="B3" t="e"><v>#VALUE!</v></c></row>'),
    ),
  },
  shrinks: {
    book: one((a) => a, { hasDynamicArrays: true }),
    stale: [
      `<row r="1"><c r="A1"><v>80</v></c><c r="B1" cm="1"><f t="array" ref="B1:B3">${SHARE}(A1:A2,90,40)</f><v>9</v></c></row><row r="2"><c r="A2"><v>65</v></c><c r="B2"><v>9</v></c></row><row r="3"><c r="B3"><v>9</v></c><c r="E3"><f>COUNT(B1:B3)</f><v>3</v></c></row>`,
    ],
    right: [
      `<row r="1"><c r="A1"><v>80</v></c><c r="B1" cm="1"><f t="array" ref="B1:B2">${SHARE}(A1:A2,90,40)</f><v>0.8</v></c></row><row r="2"><c r="A2"><v>65</v></c><c r="B2"><v>0.5</v></c></row><row r="3"><c r="B3"></c><c r="E3"><f>COUNT(B1:B3)</f><v>2</v></c></row>`,
    ],
  },
  blocked: {
    book: one((a) => a, { hasDynamicArrays: true }),
    stale: [
      `<row r="1"><c r="A1"><v>80</v></c><c r="B1" cm="1"><f t="array" ref="B1">${SHARE}(A1:A2,90,40)</f><v>9</v></c></row><row r="2"><c r="A2"><v>65</v></c><c r="B2"><v>1</v></c><c r="E2"><f>B2+SUMPRODUCT(--ISERROR(B1))</f><v>1</v></c></row>`,
    ],
    right: [
      `<row r="1"><c r="A1"><v>80</v></c><c r="B1" cm="1" t="e"><f t="array" ref="B1">${SHARE}(A1:A2,90,40)</f><v>#VALUE!</v></c></row><row r="2"><c r="A2"><v>65</v></c><c r="B2"><v>1</v></c><c r="E2"><f>B2+SUMPRODUCT(--ISERROR(B1))</f><v>2</v></c></row>`,
    ],
  },
};
