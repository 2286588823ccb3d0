/** A result that grows into rows where another stands at its right: both are saved, each cell once. */
import type { BookDescription } from "../../src/templates/contract.js";
import { brokenRules } from "../support/package-rules.js";
import { workedOut } from "../support/worked.js";

const book: BookDescription = {
  title: "Beside",
  sheets: [
    {
      kind: "free",
      name: "Two",
      heading: ["Two"],
      widths: [80, 80, 80],
      cells: [
        { row: 0, column: 0, value: "=SEQUENCE(4,2)", size: { rows: 1, columns: 2 }, look: "label" },
        { row: 0, column: 2, value: '="n"&SEQUENCE(4)', size: { rows: 4, columns: 1 }, look: "label" },
      ],
    },
  ],
};

test("what grows at the left leaves what is saved at the right", async () => {
  const done = await workedOut(book);
  expect(brokenRules(done.bytes)).toEqual([]);
  expect(done.block("Two", "A3", "C6")).toEqual([
    [1, 2, "n1"],
    [3, 4, "n2"],
    [5, 6, "n3"],
    [7, 8, "n4"],
  ]);
}, 60_000);
