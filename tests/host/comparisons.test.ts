/** Ranges are compared cell by cell: 0 is not empty, also when a column has been compared before. */
import type { ComputedColumn } from "../../src/templates/contract.js";
import { workOut } from "../support/book/worked.js";

test('a range against ""', async () => {
  const column = (key: string, formula: string): ComputedColumn => ({
    key,
    header: key,
    group: "",
    width: 60,
    formula,
  });
  const [[sheet] = []] = await workOut([
    {
      title: "Test",
      sheets: [
        {
          kind: "table",
          name: "Values",
          heading: [],
          tableName: "Numbers",
          columns: [{ key: "n", header: "n", group: "", width: 60 }],
          rows: [[0], [null], [5], ["x"]],
          computed: [
            column("first", '=IF([n]="","empty","given")'),
            column("second", '=IF([n]="","empty","given")'),
            column("zero", '=IF([first]="given",0,"")'),
            column("third", '=IF([zero]="","empty","given")'),
            column("fourth", '=IF([zero]="","empty","given")'),
          ],
          frozenColumns: 0,
        },
      ],
    },
  ]);
  const expected = ["given", "empty", "given", "given"];
  for (const key of ["first", "second", "third", "fourth"]) expect(sheet?.columns[key]).toEqual(expected);
});
