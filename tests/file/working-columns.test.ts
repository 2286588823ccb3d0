import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import type { FreeSheet } from "../../src/templates/contract.js";
import { all, partsOf, xmlOf } from "../support/package-rules.js";

const sheet: FreeSheet = {
  kind: "free",
  name: "Pages",
  heading: ["Pages"],
  widths: [500, 540],
  cells: [
    { row: 0, column: 0, value: "what is read", look: "label" },
    { row: 0, column: 3, value: "={1,2}", size: { rows: 1, columns: 2 }, look: "muted" },
  ],
  print: { landscape: true, breaksBefore: [1] },
};

test("what only formulas read is folded away, and a page fits the paper also where digits are wider", () => {
  const page = xmlOf(partsOf(packBook(describedBook({ title: "Pages", sheets: [sheet] }))), "xl/worksheets/sheet1.xml");
  const hidden = all(page, "col").filter(({ attributes }) => attributes.hidden === "1");
  expect(hidden.map(({ attributes }) => attributes.min)).toEqual(["4", "5"]);
  // 1040 px of columns are as wide as A4 allows; digits of 8.5 px in place of 7 make them a fifth wider.
  expect(Number(all(page, "pageSetup")[0]!.attributes.scale)).toBeLessThanOrEqual(100 / (8.5 / 7));
});
