/** A description's formula as Excel reads it: typed columns by their table, computed ones by their spill. */
import { columnLetters } from "./embedded/structured.js";
import type { TableInfo } from "./port.js";
import { tokenize } from "./tokens.js";

export interface ExcelFormula {
  readonly formula: string;
  /** Columns that no table has, as written. */
  readonly unresolved: readonly string[];
}

/** @param ownTable the table that a bare [column] means */
export function excelFormula(
  formula: string,
  tables: readonly TableInfo[],
  ownTable: string | undefined,
): ExcelFormula {
  const unresolved: string[] = [];
  const tokens = tokenize(formula);
  let written = "";
  for (let at = 0; at < tokens.length; at++) {
    const token = tokens[at]!;
    const bracket = tokens[at + 1];
    if (token.kind === "name" && bracket?.kind === "bracket") {
      written += reference(token.text, bracket.text);
      at++;
    } else written += token.kind === "bracket" ? reference(ownTable, token.text) : token.text;
  }
  return { formula: written, unresolved };

  function reference(tableName: string | undefined, bracket: string): string {
    const key = bracket.slice(1, -1).toLowerCase();
    const table = tables.find(({ name }) => name.toLowerCase() === tableName?.toLowerCase());
    const column = table?.columns.find((one) => one.key.toLowerCase() === key || one.header.toLowerCase() === key);
    if (table !== undefined && column !== undefined) {
      if (!column.computed) return `${table.name}[${quoteHeader(column.header)}]`;
      return `${quoteSheet(table.sheet)}!${fixed(table.firstRow, column.column)}#`;
    }
    // Excel's own forms ([#Headers], [[a]:[b]], [@a]) are Excel's to read.
    if (table === undefined || /^[^#@[]+$/.test(key)) unresolved.push(`${tableName ?? ""}${bracket}`);
    return `${tableName ?? ""}${bracket}`;
  }
}

function quoteSheet(name: string): string {
  return `'${name.replaceAll("'", "''")}'`;
}

function quoteHeader(header: string): string {
  return /^\w[\w ]*$/.test(header) ? header : `[${header}]`;
}

function fixed(row: number, column: number): string {
  return `$${columnLetters(column)}$${row + 1}`;
}
