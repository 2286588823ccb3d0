/** A route's table as the host port reads it, with only the columns that a test is about. */
import type { Cell } from "../../src/functions/contract.js";
import type { RowRecord, TableContent } from "../../src/host/port.js";

const typed = ["asset_id", "status", "left", "amps_left", "surrounding_air", "told_to", "emissivity"];

/** Body from the sheet's row 7 on; a column that no row names does not stand there. */
export function routeTable(rows: readonly Readonly<Record<string, Cell>>[], units: "C" | "F" = "C"): TableContent {
  const keys = [
    ...new Set([...typed, "remarks", "grade_found", "needs", "stops", "cautions", ...rows.flatMap(Object.keys)]),
  ];
  const columns = keys.map((key, column) => ({ key, header: key, computed: !typed.includes(key), column }));
  const empty: RowRecord = Object.fromEntries(keys.map((key) => [key, null]));
  return {
    table: {
      name: "Readings",
      sheet: "Route",
      headerRow: 5,
      firstRow: 6,
      lastRow: 5 + Math.max(1, rows.length),
      columns,
      units,
    },
    rows: rows.map((row) => ({ ...empty, ...row })),
  };
}
