/** A table part (ECMA-376 part 1, 18.5.1.2): no style of its own, since the cells carry their looks. */
import { element, MAIN, XML_HEAD } from "./element.js";
import type { WrittenTable } from "./model.js";
import { areaName } from "./place.js";
import { encodeXstring } from "../xml/read.js";

/** @param id from 1, of no other table in the workbook */
export function tableXml({ name, area, columns, withoutButton = [] }: WrittenTable, id: number): string {
  const ref = areaName(area);
  const items = columns.map((column, at) => element("tableColumn", { id: at + 1, name: encodeXstring(column) }));
  return (
    XML_HEAD +
    element(
      "table",
      { xmlns: MAIN, id, name, displayName: name, ref, totalsRowShown: false },
      element(
        "autoFilter",
        { ref },
        ...withoutButton.map((colId) => element("filterColumn", { colId, hiddenButton: true })),
      ),
      element("tableColumns", { count: items.length }, ...items),
      element("tableStyleInfo", {
        showFirstColumn: false,
        showLastColumn: false,
        showRowStripes: false,
        showColumnStripes: false,
      }),
    )
  );
}
