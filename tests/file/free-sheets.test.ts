/** Free sheets through the writer: what a description puts where is what the file holds, and spills have their true extent. */
import { strFromU8 } from "fflate";
import type { BookDescription } from "../../src/templates/contract.js";
import { brokenRules, partsOf } from "../support/package-rules.js";
import { workedOut } from "../support/worked.js";

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
