/**
 * Formulas as people and descriptions write them, made into what the engine is given: A1 ranges only, and only
 * numbers that it reads as numbers.
 */
import { normaliseLiterals } from "../../host/embedded/literals.js";
import { plainNames } from "../../host/embedded/names.js";
import { type ResolvedFormula, resolveStructured, type TablePosition } from "../../host/embedded/structured.js";
import { isCall, tokenize } from "../../host/tokens.js";
import { cellAddress, type CellPlace, quoteSheet } from "./a1.js";
import { type BookLayout, type ColumnPlace, type TableLayout, tableSheets } from "./layout.js";

/** The first and last body row of a table as it stands now. */
export interface BodyRows {
  readonly firstRow: number;
  readonly lastRow: number;
}
export type BodyRowsOf = (table: TableLayout) => BodyRows;

/** Resolves table columns (by key or header) and defined names; what cannot be found is listed and stands as #REF!. */
export function resolveFormula(
  formula: string,
  place: { readonly sheetName: string; readonly row: number },
  layout: BookLayout,
  rowsOf: BodyRowsOf,
): ResolvedFormula {
  const tables = tableSheets(layout);
  const own = tables.find((table) => table.name === place.sheetName);
  const resolved = resolveStructured(
    resolveNames(plainNames(formula), place.sheetName, layout),
    tables.map((table) => tablePosition(table, rowsOf(table))),
    { sheet: place.sheetName, row: place.row, ...(own === undefined ? {} : { table: own.sheet.tableName }) },
  );
  return { ...resolved, formula: normaliseLiterals(resolved.formula) };
}

function tablePosition(table: TableLayout, rows: BodyRows): TablePosition {
  const named = (place: ColumnPlace) => ({ names: [place.column.key, place.column.header], column: place.index });
  return {
    name: table.sheet.tableName,
    sheet: table.name,
    headerRow: rows.firstRow - 1,
    firstRow: rows.firstRow,
    lastRow: rows.lastRow,
    columns: table.columns.filter((place) => place.computed === undefined).map(named),
    beside: table.columns.filter((place) => place.computed !== undefined).map(named),
  };
}

/** The defined name of a form's field, a free cell or a block becomes its cells. */
function resolveNames(formula: string, sheetName: string, layout: BookLayout): string {
  const tokens = tokenize(formula);
  return tokens
    .map((token, at) => {
      const place =
        token.kind === "name" && !isCall(tokens, at) ? layout.names.get(token.text.toLowerCase()) : undefined;
      if (place === undefined || tokens[at - 1]?.kind === "sheet" || tokens[at + 1]?.kind === "bracket")
        return token.text;
      const fixed = (at: CellPlace): string => cellAddress(at).replace(/^([A-Z]+)(\d+)$/, "$$$1$$$2");
      const address = fixed(place) + (place.end === undefined ? "" : `:${fixed(place.end)}`);
      return place.sheetName === sheetName ? address : `${quoteSheet(place.sheetName)}!${address}`;
    })
    .join("");
}
