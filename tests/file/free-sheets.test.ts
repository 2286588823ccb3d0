/** Free sheets through the writer: what a description puts where is what the file holds, and spills have their true extent. */
import { strFromU8 } from "fflate";
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import type { BookDescription } from "../../src/templates/contract.js";
import { fillFile } from "../support/fill-file.js";
import { all, brokenRules, type Node, partsOf, xmlOf } from "../support/package-rules.js";
import { Folder, recalc } from "../support/recalc.js";
import { Worked, workedOut } from "../support/worked.js";

const folder = new Folder();
afterAll(() => folder.remove());

const book: BookDescription = {
  title: "Free",
  sheets: [
    {
      kind: "table",
      name: "Data",
      heading: ["Data"],
      tableName: "DataList",
      frozenColumns: 1,
      columns: [
        { key: "item", header: "item", group: "g", width: 80 },
        { key: "rise", header: "rise", group: "g", width: 80, format: "0.0" },
      ],
      computed: [],
      rows: [
        ["a", 5],
        ["b", 25],
        ["c", 17],
        ["d", null],
      ],
    },
    {
      kind: "free",
      name: "Report",
      heading: ["Report", '="Items over 10: "&report_count'],
      widths: [80, 120, 120, 200],
      cells: [
        { row: 0, column: 0, value: "Count", look: "label" },
        {
          row: 0,
          column: 1,
          value: "=SUM((DataList[rise]>10)*1)",
          look: "computed",
          name: "report_count",
          format: "0",
        },
        {
          row: 2,
          column: 0,
          value: "=SORT(FILTER(HSTACK(DataList[item],DataList[rise]),DataList[rise]>10),2,-1)",
          size: { rows: 1, columns: 2 },
          look: "computed",
        },
        {
          row: 8,
          column: 1,
          size: { rows: 3, columns: 2 },
          look: "typed",
          name: "report_block",
          label: "Block",
          range: [0, 100],
        },
        { row: 12, column: 0, value: "=SUM(report_block)", look: "computed", across: 2 },
      ],
      print: { landscape: true, breaksBefore: [8], rowsNamed: "report_count" },
    },
  ],
};

test("the true extent of a spill, names, merges, breaks and the printed area are in the file", async () => {
  const done = await workedOut(book);
  expect(brokenRules(done.bytes)).toEqual([]);
  // Heading: 2 lines and an empty one, so that row 0 of the description is row 4. The spill was described as one row.
  expect(done.ranges.get("Report")?.get("A6")).toBe("A6:B7");
  expect(done.block("Report", "A6", "B7")).toEqual([
    ["b", 25],
    ["c", 17],
  ]);
  expect([done.cell("Report", "B4"), done.named("report_count"), done.cell("Report", "A16")]).toEqual([2, 2, 0]);
  expect(done.cell("Report", "A2")).toBe("Items over 10: 2");
  expect(done.names.get("report_block")).toBe("'Report'!$B$12:$C$14");
  expect(done.names.get("_xlnm.Print_Area")).toBe("'Report'!$A$1:INDEX('Report'!$D:$D,3+report_count)");
  const sheet = strFromU8(partsOf(done.bytes).get("xl/worksheets/sheet2.xml")!);
  expect(sheet).toContain('<mergeCell ref="A16:B16"/>');
  // A break stands after the eleventh row, before row 8 of the description.
  expect(sheet).toContain('<brk id="11"');
}, 60_000);

test("what is typed later makes the spill grow and shrink, in a file that was written and then filled in", async () => {
  const again = async (name: string, bytes: Uint8Array): Promise<Worked> => {
    const [from, to] = [folder.put(`${name}.xlsx`, bytes), folder.at(`${name}-done.xlsx`)];
    const { status, stdout } = await recalc(["--all", "-o", to, from]);
    expect([status, stdout.includes(" 0 kept")]).toEqual([0, true]);
    expect(brokenRules(folder.read(`${name}-done.xlsx`))).toEqual([]);
    return new Worked(folder.read(`${name}-done.xlsx`), book);
  };
  const { bytes: written, ranges } = await workedOut(book);
  expect(ranges.get("Report")?.get("A6")).toBe("A6:B7");
  const rows = (...rises: number[]) => rises.map((rise) => ({ rise }));
  const grown = await again("grown", fillFile(written, { names: {}, tables: { DataList: rows(5, 25, 17, 40) } }));
  expect(grown.ranges.get("Report")?.get("A6")).toBe("A6:B8");
  expect(grown.block("Report", "A6", "B9")).toEqual([
    ["d", 40],
    ["b", 25],
    ["c", 17],
    [null, null],
  ]);
  expect(grown.cell("Report", "A2")).toBe("Items over 10: 3");
  const less = await again("less", fillFile(grown.bytes, { names: {}, tables: { DataList: rows(5, 6, 17, 8) } }));
  expect(less.ranges.get("Report")?.get("A6")).toBe("A6:B6");
  expect(
    less
      .block("Report", "A6", "B8")
      .flat()
      .filter((value) => value !== null && value !== ""),
  ).toEqual(["c", 17]);
}, 90_000);

test("only what is typed is unlocked; grades keep their looks below a spill; a sheet with breaks is scaled to the page", () => {
  const parts = partsOf(
    packBook(
      describedBook(
        {
          title: "Looks",
          sheets: [
            {
              kind: "free",
              name: "Looks",
              heading: ["Looks"],
              widths: [718, 718],
              cells: [
                { row: 0, column: 0, look: "typed", range: [0, 5], choices: ["1", "2"], name: "looks_typed" },
                {
                  row: 1,
                  column: 0,
                  value: "=SEQUENCE(3)",
                  size: { rows: 3, columns: 1 },
                  look: "computed",
                  grade: true,
                },
              ],
              print: { breaksBefore: [3], repeatHeading: true },
            },
          ],
        },
        { paper: "A4" },
      ),
    ),
  );
  const sheet = xmlOf(parts, "xl/worksheets/sheet1.xml");
  const [protection] = all(sheet, "sheetProtection");
  expect(protection!.attributes).toMatchObject({ sheet: "1" });
  expect(Object.keys(protection!.attributes).filter((name) => /password|hash|salt/i.test(name))).toEqual([]);
  const styles = all(xmlOf(parts, "xl/styles.xml"), "cellXfs")[0]!.children;
  const unlocked = all(sheet, "c").filter(({ attributes }) => isUnlocked(styles[Number(attributes.s ?? 0)]!));
  expect(unlocked.map(({ attributes }) => attributes.r)).toEqual(["A3"]);
  // The block is A4 to A6; a spill that grows keeps its grades' looks well beyond.
  const areas = all(sheet, "conditionalFormatting").map(({ attributes }) => attributes.sqref);
  expect(new Set(areas)).toEqual(new Set(["A4:A506"]));
  // Twice the 718 pixels of A4 between its margins (210 mm - 20 mm at 96 pixels an inch): half the size, and a fifth
  // less for digits as wide as those of the widest usual font; no fit to pages.
  expect(all(sheet, "pageSetup")[0]!.attributes).toMatchObject({ scale: "41" });
  expect(all(sheet, "pageSetUpPr").filter(({ attributes }) => attributes.fitToPage === "1")).toEqual([]);
  expect(
    new Map(all(xmlOf(parts, "xl/workbook.xml"), "definedName").map((one) => [one.attributes.name, one.text])),
  ).toEqual(
    new Map([
      ["_xlnm.Print_Titles", "'Looks'!$1:$2"],
      ["looks_typed", "'Looks'!$A$3"],
    ]),
  );
});

function isUnlocked(style: Node): boolean {
  return all(style, "protection").some(({ attributes }) => attributes.locked === "0");
}
