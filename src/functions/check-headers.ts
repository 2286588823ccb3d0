import type { Finding } from "../core/check/hit.js";
import type { CheckColumn } from "./check-columns.js";
import { CHECK_COLUMNS } from "./check-columns.js";
import { cellText, columnNamed, jobLineNamed } from "./check-names.js";
import type { ArgumentSpec, Cell, CellError, Grid } from "./contract.js";
import { isCellError } from "./contract.js";
import { isNoWord } from "./read.js";

/** What each column of a route is read as. */
export interface Headers {
  readonly columns: readonly (CheckColumn | undefined)[];
  readonly findings: readonly Finding[];
  /** Places of columns that are told not to be read. */
  readonly unread: readonly number[];
}

const counts = (rows: number, columns: number): string =>
  `${rows} ${rows === 1 ? "row" : "rows"} by ${columns} ${columns === 1 ? "column" : "columns"}`;

/** Reads the header row of a route; a CellError where it is none, or does not fit the rows. */
export function readHeaders(spec: ArgumentSpec, grid: Grid, rows: Grid): Headers | CellError {
  const [names = []] = grid;
  const width = rows[0]?.length ?? 0;
  const error = grid.flat().find(isCellError);
  if (error) return error;
  if (grid.length !== 1 || names.length !== width) {
    const message =
      `${spec.name} has ${counts(grid.length, names.length)}, rows ${counts(rows.length, width)}: ` +
      "give one row of headers, as wide as the rows.";
    return { error: "#VALUE!", message };
  }
  const findings: Finding[] = [];
  const taken = new Set<string>();
  const known = names.map((cell) => (isNoWord(cell) ? undefined : columnNamed(cellText(cell))));
  if (known.every((one) => one?.name === undefined && one?.isPassedOver !== true)) return noneKnown(spec, names);
  const note = (id: string, column: string, values: Record<string, string>): void => {
    findings.push({ row: 0, id, kind: "caution", column, values });
  };
  const noteUnknown = (header: string, nearest = ""): void => {
    const line = jobLineNamed(header).name;
    note(line === undefined ? "not-read" : "line-in-rows", header, { nearest, name: line ?? "" });
  };
  const columns = known.map((one, c) => {
    const header = cellText(names[c]);
    const place = String(c + 1);
    if (!one) {
      if (rows.some((row) => !isNoWord(row[c] ?? null))) note("no-name", "", { place });
      return undefined;
    }
    const { name } = one;
    if (name === undefined) {
      if (!one.isPassedOver) noteUnknown(header, one.nearest);
      return undefined;
    }
    if (taken.has(name)) {
      note("name-twice", name, { place });
      return undefined;
    }
    taken.add(name);
    return CHECK_COLUMNS.find((column) => column.name === name);
  });
  const unread = columns.flatMap((column, c) => (column === undefined && known[c]?.isPassedOver !== true ? [c] : []));
  return { columns, findings, unread };
}

function noneKnown(spec: ArgumentSpec, names: readonly Cell[]): CellError {
  const typed = names.map((cell) => `"${isNoWord(cell) ? "" : cellText(cell)}"`).join(", ");
  const all = CHECK_COLUMNS.map(({ name }) => name).join(", ");
  return {
    error: "#VALUE!",
    message: `${spec.name}: none of ${typed} is a name that is read. There are, in any order, ${all}.`,
  };
}
