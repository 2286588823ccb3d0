/** Where in a client's sheet the table begins: titles above it, a line of units below its headers, two lines of headers. */
import { cellText } from "../check-names.js";
import type { Cell, Grid } from "../contract.js";
import { isUnitText } from "./header-tokens.js";
import { headerKey, mapHeaders } from "./map-headers.js";

export interface ClientRow {
  /** From 1, as the sheet or the file counts. */
  readonly line: number;
  readonly cells: readonly Cell[];
}

export interface ClientTable {
  readonly headers: readonly string[];
  /** Of a line of its own below the headers. */
  readonly units: readonly (string | undefined)[];
  readonly headerLine: number;
  /** Rows that hold anything. */
  readonly rows: readonly ClientRow[];
  /** Columns of ours that its headers were found to be; a doubtful one counts for a tenth. */
  readonly known: number;
}

/** Lines in which a table's headers are looked for. */
const MOST_LINES = 60;

/**
 * Headers of a line; with the line above, whose groups stretch over the columns to their right. Where only the line above
 * has a text of its own, its cell reaches down.
 */
function headersOf(line: readonly Cell[], above: readonly Cell[] | undefined): string[] {
  let group = "";
  return line.map((cell, c) => {
    const over = cellText(above?.[c]);
    group = over || group;
    const own = cellText(cell);
    if (above === undefined) return own;
    return own === "" ? over : `${group} ${own}`.trim();
  });
}

/** Less than a header that is taken, and more than none. */
const DOUBTFUL = 0.1;

function countKnown(headers: readonly string[], wanted: ReadonlySet<string>): number {
  const columns = headers.map((header) => ({ header, unit: undefined, cells: [], told: undefined }));
  return mapHeaders(columns).reduce((known, { header, column, why = "" }) => {
    if (column !== undefined || wanted.has(headerKey(header))) return known + 1;
    return why.startsWith("doubtful") ? known + DOUBTFUL : known;
  }, 0);
}

/**
 * @param wanted headers that were named, by headerKey
 * @returns undefined where no line holds a header that is known
 */
export function findTable(grid: Grid, wanted: ReadonlySet<string>): ClientTable | undefined {
  let best: { headers: string[]; line: number; known: number } | undefined;
  for (const [line, cells] of grid.slice(0, MOST_LINES).entries()) {
    for (const above of line === 0 ? [undefined] : [undefined, grid[line - 1]]) {
      const headers = headersOf(cells, above);
      if (headers.filter((one) => one !== "").length < 2) continue;
      const known = countKnown(headers, wanted);
      if (known > (best?.known ?? 0)) best = { headers, line, known };
    }
  }
  if (best === undefined) return undefined;
  const { headers, line, known } = best;
  const below = grid[line + 1] ?? [];
  const texts = below.map(cellText).filter((text) => text !== "");
  const hasUnits = texts.length > 0 && texts.every(isUnitText);
  const rows = grid
    .map((cells, at) => ({ line: at + 1, cells }))
    .slice(line + (hasUnits ? 2 : 1))
    .filter(({ cells }) => cells.some((cell) => cellText(cell) !== ""))
    // A table of several pages has its headers on each.
    .filter(({ cells }) => !isRepeated(cells, grid[line] ?? []));
  return {
    headers,
    units: headers.map((_, c) => (hasUnits ? cellText(below[c]) || undefined : undefined)),
    headerLine: line + 1,
    rows,
    known,
  };
}

function isRepeated(cells: readonly Cell[], headers: readonly Cell[]): boolean {
  const texts = headers.map(cellText);
  return texts.every((text, c) => text === cellText(cells[c])) && texts.some((text) => text !== "");
}
