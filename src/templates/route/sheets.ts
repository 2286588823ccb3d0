/** Sheets that every route is made of, whatever is inspected on it. */
import { cautions } from "../../functions/cautions.js";
import type { NotesSheet, TableSheet } from "../contract.js";
import { cellsOf, type Column, type Computed, describe, describeComputed, type Row } from "./columns.js";
import type { SheetUnits } from "./sheet-units.js";

export const ARITHMETIC = "Arithmetic only: a qualified person decides. See the sheet Cautions.";

export function tableSheet<Key extends string>(
  name: string,
  tableName: string,
  heading: readonly string[],
  columns: readonly Column<Key>[],
  rows: readonly Row<Key>[],
  units: SheetUnits,
  { computed = [], frozenColumns = 1 }: { computed?: readonly Computed[]; frozenColumns?: number } = {},
): TableSheet {
  return {
    kind: "table",
    name,
    heading,
    tableName,
    columns: columns.map((one) => describe(one, units)),
    rows: cellsOf(columns, rows, units),
    computed: computed.map((one) => describeComputed(one, units)),
    frozenColumns,
  };
}

export const cautionsSheet: NotesSheet = {
  kind: "notes",
  name: "Cautions",
  heading: ["Cautions"],
  lines: cautions.map(({ title, text }, index) => `${index + 1}. ${title}. ${text}`),
};
