import { parseSpecifier, type RowItem, type Specifier } from "./specifier.js";
import { tokenize, type Token } from "../tokens.js";

/** A column that can be named: its header and, where a template describes it, its key. */
export interface NamedColumn {
  readonly names: readonly string[];
  /** 0-based column of the sheet. */
  readonly column: number;
}

/** Where a table stands. Rows are 0-based rows of the sheet. */
export interface TablePosition {
  readonly name: string;
  readonly sheet: string;
  readonly headerRow: number;
  readonly firstRow: number;
  /** Below firstRow where the table has no row. */
  readonly lastRow: number;
  readonly totalsRow?: number;
  /** In sheet order, adjoining. */
  readonly columns: readonly NamedColumn[];
  /** Computed columns that stand beside the table, row by row: found by name, no part of Table or Table[#All]. */
  readonly beside?: readonly NamedColumn[];
}

/** The cell whose formula is read: its sheet, its 0-based row, and the table that a bare [column] or [@column] means. */
export interface FormulaPlace {
  readonly sheet: string;
  readonly row: number;
  readonly table?: string;
}

export interface ResolvedFormula {
  /** With A1 references only; what could not be found stands there as #REF!, a row outside the table as #VALUE!. */
  readonly formula: string;
  /** The references that could not be resolved, as written. */
  readonly unresolved: readonly string[];
}

/**
 * Rewrites structured references to absolute A1 ranges: Table[Col], Table[[#This Row],[Col]], Table[@Col],
 * Table[#All], Table[[#Headers],[A]:[B]], Table[], Table alone, and the same without the table's name where the
 * formula's own table is known. Names are compared without case; 'x in brackets is the character x.
 *
 * Why: the engine keeps the old range of a structured reference when its table grows, so it is shown A1 only.
 */
export function resolveStructured(
  formula: string,
  tables: readonly TablePosition[],
  place: FormulaPlace,
): ResolvedFormula {
  const tokens = tokenize(formula);
  const unresolved: string[] = [];
  let resolved = "";
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    const next = tokens[at + 1];
    if (token.kind === "name" && next?.kind === "bracket") {
      resolved += range(token.text, next.text);
      at++;
    } else if (token.kind === "bracket") resolved += range(undefined, token.text);
    else if (
      token.kind === "name" &&
      next?.kind !== "open" &&
      findTable(tables, token.text) !== undefined &&
      isFree(tokens, at)
    ) {
      resolved += range(token.text, "[]");
    } else resolved += token.text;
  }
  return { formula: resolved, unresolved };

  function range(tableName: string | undefined, bracket: string): string {
    const table = findTable(tables, tableName ?? place.table);
    const specifier = parseSpecifier(bracket);
    const found = table && specifier ? address(table, specifier, place) : "#REF!";
    if (found === "#REF!") unresolved.push(`${tableName ?? ""}${bracket}`);
    return found;
  }
}

/** A1 letters of a 0-based column: 0 → A, 26 → AA. */
export function columnLetters(column: number): string {
  const rest = Math.floor(column / 26) - 1;
  return (rest >= 0 ? columnLetters(rest) : "") + String.fromCharCode(65 + (column % 26));
}

function findTable(tables: readonly TablePosition[], name: string | undefined): TablePosition | undefined {
  const wanted = name?.toLowerCase();
  return tables.find((table) => table.name.toLowerCase() === wanted);
}

/** A table's name that belongs to no sheet and to no range operator. */
function isFree(tokens: readonly Token[], at: number): boolean {
  return tokens[at - 1]?.kind !== "sheet" && tokens[at - 1]?.text !== ":" && tokens[at + 1]?.text !== ":";
}

function address(table: TablePosition, specifier: Specifier, place: FormulaPlace): string {
  const rows = rowSpan(table, specifier.items, place);
  const columns = columnSpan(table, specifier);
  if (typeof rows === "string") return rows;
  if (columns === undefined) return "#REF!";
  const from = `$${columnLetters(columns[0])}$${rows[0] + 1}`;
  const to = `$${columnLetters(columns[1])}$${rows[1] + 1}`;
  return `${sheetPrefix(table.sheet, place.sheet)}${from === to ? from : `${from}:${to}`}`;
}

function rowSpan(
  table: TablePosition,
  items: readonly RowItem[],
  place: FormulaPlace,
): [number, number] | "#REF!" | "#VALUE!" {
  const spans = (items.length === 0 ? (["data"] as const) : items).map((item) => itemRows(table, item, place));
  const wrong = spans.find((span) => typeof span === "string");
  if (wrong !== undefined) return wrong;
  const rows = spans.flat() as number[];
  return [Math.min(...rows), Math.max(...rows)];
}

function itemRows(table: TablePosition, item: RowItem, place: FormulaPlace): [number, number] | "#REF!" | "#VALUE!" {
  const { headerRow, firstRow, lastRow, totalsRow } = table;
  switch (item) {
    case "all":
      return [headerRow, totalsRow ?? lastRow];
    case "headers":
      return [headerRow, headerRow];
    case "totals":
      return totalsRow === undefined ? "#REF!" : [totalsRow, totalsRow];
    case "this row":
      return place.sheet === table.sheet && place.row >= firstRow && place.row <= lastRow
        ? [place.row, place.row]
        : "#VALUE!";
    case "data":
      return lastRow < firstRow ? "#REF!" : [firstRow, lastRow];
  }
}

function columnSpan(table: TablePosition, specifier: Specifier): [number, number] | undefined {
  const { columns } = table;
  if (specifier.from === undefined) {
    const first = columns[0];
    const last = columns[columns.length - 1];
    return first && last && [first.column, last.column];
  }
  const from = findColumn(table, specifier.from);
  const to = specifier.to === undefined ? from : findColumn(table, specifier.to);
  if (from === undefined || to === undefined) return undefined;
  return [Math.min(from, to), Math.max(from, to)];
}

function findColumn(table: TablePosition, name: string): number | undefined {
  const wanted = name.toLowerCase();
  const all = [...table.columns, ...(table.beside ?? [])];
  return all.find(({ names }) => names.some((own) => own.toLowerCase() === wanted))?.column;
}

function sheetPrefix(sheet: string, from: string): string {
  if (sheet === from) return "";
  return /^[A-Za-z_][A-Za-z_]*$/.test(sheet) ? `${sheet}!` : `'${sheet.replaceAll("'", "''")}'!`;
}
