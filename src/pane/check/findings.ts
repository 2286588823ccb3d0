/** What a route lacks and what speaks against it: one finding each, from its computed columns, worst first. */
import type { CellAt, ColumnInfo, FieldInfo, RowRecord, TableContent, TableInfo } from "../../host/port.js";
import { isCellError } from "../../functions/contract.js";
import { foundGrade, isFilled, nameOf, words } from "../route.js";
import { columnOfNeed, fieldOfNeed, whyNeeded } from "./needs.js";

export interface Finding {
  readonly at: CellAt;
  /** From 0, in the table's body; -1 where it is of no row. */
  readonly row: number;
  /** How it is found: "Row 14, MSB-Q3". */
  readonly where: string;
  readonly what: string;
  readonly why: string;
  /** 0 is the worst. */
  readonly rank: number;
}

/** An error first, then what a danger hangs on, what stops a grade, what is missing, what calls for care. */
const ranks = { error: 0, tell: 1, stop: 2, need: 3, caution: 4 } as const;

/** @param fields the job's: what every row lacks is typed there once */
export function findingsOf({ table, rows }: TableContent, fields: readonly FieldInfo[]): Finding[] {
  const found = rows.flatMap((row, index) => (isFilled(row, table) ? findingsOfRow(table, row, index, fields) : []));
  const grade = (finding: Finding): number => foundGrade(rows[finding.row] ?? {}) ?? -1;
  return found.sort((one, other) => one.rank - other.rank || grade(other) - grade(one) || one.row - other.row);
}

export function findingsOfRow(
  table: TableInfo,
  row: RowRecord,
  index: number,
  fields: readonly FieldInfo[],
): Finding[] {
  const where = `Row ${String(table.firstRow + index + 1)}${nameOf(row) === "" ? "" : `, ${words(row.asset_id)}`}`;
  const make = (key: string, what: string, why: string, rank: number): Finding => ({
    at: { sheet: table.sheet, row: table.firstRow + index, column: columnIndex(table, key) },
    row: index,
    where,
    what,
    why,
    rank,
  });
  const found = [
    ...errors(table, row).map(({ key, header, message }) =>
      make(key, `${header} shows an error`, message, ranks.error),
    ),
    ...list(row.needs, ", ").map((need) =>
      need.startsWith("told_to")
        ? make("told_to", "Nobody has been told", "A grade 4 is told to the person responsible at once.", ranks.tell)
        : withPlace(make(columnOfNeed(need), `Needs ${need}`, whyNeeded(need), ranks.need), emptyField(need, fields)),
    ),
    ...list(row.stops, "; ").map((stop) => {
      const { head, tail } = halves(stop);
      return make(columnOfStop(table, stop), head, tail ?? "No grade is taken from this row.", ranks.stop);
    }),
    ...list(row.cautions, "; ").map((caution) => {
      const { head, tail } = halves(caution);
      return make("remarks", head, tail ?? "Calls for care; the numbers stand.", ranks.caution);
    }),
  ];
  return found.sort((one, other) => one.rank - other.rank);
}

function emptyField(need: string, fields: readonly FieldInfo[]): FieldInfo | undefined {
  const name = fieldOfNeed(need);
  return name === undefined ? undefined : fields.find((field) => field.name === name && field.value === null);
}

function withPlace(finding: Finding, field: FieldInfo | undefined): Finding {
  return field === undefined ? finding : { ...finding, at: field.at };
}

function errors(table: TableInfo, row: RowRecord): { key: string; header: string; message: string }[] {
  return table.columns.flatMap(({ key, header }) => {
    const cell = row[key];
    return cell !== undefined && isCellError(cell) ? [{ key, header, message: cell.message }] : [];
  });
}

function list(cell: RowRecord[string] | undefined, separator: string): string[] {
  return words(cell)
    .split(separator)
    .filter((part) => part !== "");
}

/** "currents differ by 12 %: compared at the largest" as what and why, each with a capital. */
function halves(clause: string): { head: string; tail: string | undefined } {
  const at = clause.indexOf(": ");
  if (at < 0) return { head: sentence(clause), tail: undefined };
  return { head: sentence(clause.slice(0, at)), tail: `${sentence(clause.slice(at + 2))}.` };
}

function sentence(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

/** What cannot be begins with the column's own key. */
function columnOfStop(table: TableInfo, stop: string): string {
  const first = stop.split(" ")[0] ?? "";
  return table.columns.some(({ key, computed }) => key === first && !computed) ? first : "remarks";
}

function columnIndex(table: TableInfo, key: string): number {
  const column = (name: string): ColumnInfo | undefined => table.columns.find((one) => one.key === name);
  return (column(key) ?? column("remarks") ?? column("asset_id"))?.column ?? 0;
}
