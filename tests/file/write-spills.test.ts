/** Written spills through a recalculation: from one cell to their size, and on as their table grows. */
import { strFromU8, strToU8, zipSync } from "fflate";
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import { blankSheet } from "../../src/host/file/write/sheet-base.js";
import type { BookDescription } from "../../src/templates/contract.js";
import { all, brokenRules, type Node, partsOf, xmlOf } from "../support/package-rules.js";
import { Folder, recalc } from "../support/recalc.js";

const folder = new Folder();
afterAll(() => folder.remove());

async function recalculated(name: string, bytes: Uint8Array): Promise<Uint8Array> {
  const [from, to] = [folder.put(`${name}.xlsx`, bytes), folder.at(`${name}-done.xlsx`)];
  const { status, stdout, stderr } = await recalc(["--all", "-o", to, from]);
  expect({ status, stderr }).toEqual({ status: 0, stderr: "" });
  expect(stdout).toContain(" 0 kept");
  return folder.read(`${name}-done.xlsx`);
}

const sheetOf = (bytes: Uint8Array): Node => xmlOf(partsOf(bytes), "xl/worksheets/sheet1.xml");
const valueOf = (sheet: Node, address: string): string | undefined => {
  const cell = all(sheet, "c").find(({ attributes }) => attributes.r === address);
  return cell?.children.find(({ name }) => name === "v")?.text;
};
const rangeOf = (sheet: Node, address: string): string | undefined =>
  all(sheet, "c").find(({ attributes }) => attributes.r === address)?.children[0]?.attributes.ref;

test("a spill that is written as one cell takes what it needs, and what reads the whole of it sees it", async () => {
  const bytes = packBook({
    title: "Spills",
    names: [],
    sheets: [
      {
        ...blankSheet("Spills", "A4"),
        cells: [
          { row: 0, column: 0, formula: "=SUM(A3#)" },
          { row: 2, column: 0, formula: "=SEQUENCE(4)", spill: { rows: 1, columns: 1 } },
          { row: 2, column: 1, formula: "=LET(twice,A3#*2,HSTACK(twice,twice+1))", spill: { rows: 1, columns: 1 } },
        ],
      },
    ],
  });
  const done = await recalculated("spills", bytes);
  expect(brokenRules(done)).toEqual([]);
  const sheet = sheetOf(done);
  expect([rangeOf(sheet, "A3"), rangeOf(sheet, "B3")]).toEqual(["A3:A6", "B3:C6"]);
  // 1 + 2 + 3 + 4; twice 4; and one more.
  expect(["A1", "A6", "B6", "C6"].map((address) => valueOf(sheet, address))).toEqual(["10", "4", "8", "9"]);
}, 60_000);

const route: BookDescription = {
  title: "Growth",
  sheets: [
    {
      kind: "table",
      name: "Route",
      heading: ["Growth"],
      tableName: "Readings",
      frozenColumns: 1,
      columns: [
        { key: "a", header: "a", group: "In", width: 60, format: "0" },
        { key: "b", header: "b c", group: "In", width: 60, format: "0" },
      ],
      rows: [
        [1, 10],
        [2, 20],
      ],
      computed: [
        { key: "sum", header: "sum", group: "Out", width: 60, format: "0", formula: "=[a]+[b]" },
        { key: "twice", header: "twice", group: "Out", width: 60, format: "0", formula: "=[sum]*2" },
      ],
    },
  ],
};

test("what stands beside a table grows with it", async () => {
  const parts = new Map(partsOf(packBook(describedBook(route))));
  // Header in row 4, two rows below it: a program fills in a third.
  const table = strFromU8(parts.get("xl/tables/table1.xml")!);
  parts.set("xl/tables/table1.xml", strToU8(table.replaceAll("A4:B6", "A4:B7")));
  const sheet = strFromU8(parts.get("xl/worksheets/sheet1.xml")!);
  const row = '<row r="7"><c r="A7"><v>3</v></c><c r="B7"><v>30</v></c></row>';
  parts.set("xl/worksheets/sheet1.xml", strToU8(sheet.replace("</sheetData>", `${row}</sheetData>`)));
  const done = sheetOf(await recalculated("growth", zipSync(Object.fromEntries(parts))));
  expect([rangeOf(done, "D5"), rangeOf(done, "E5")]).toEqual(["D5:D7", "E5:E7"]);
  expect(["D5", "D7", "E6", "E7"].map((address) => valueOf(done, address))).toEqual(["11", "33", "44", "66"]);
}, 60_000);
