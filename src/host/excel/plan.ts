/** Where a description's sheets stand in Excel: pure arithmetic. Above a table: group names, units, headers. */
import type { BookDescription, FormField, SheetDescription } from "../../templates/contract.js";
import type { Cell } from "../../functions/contract.js";
import type { TableInfo } from "../port.js";
import { excelFormula } from "../described-formula.js";
import { isFormula, tableInfo, tableOn } from "../described-table.js";
import type { Memory } from "./memory.js";

export interface SheetPlan<Sheet = SheetDescription> {
  /** The name it will have. */
  readonly name: string;
  readonly sheet: Sheet;
  /** The row under the heading and one empty row. */
  readonly first: number;
}

export interface BookPlan {
  readonly sheets: readonly SheetPlan[];
  readonly tables: readonly TableInfo[];
  readonly memory: Memory;
  /** Columns that formulas name and no table has. */
  readonly unresolved: readonly string[];
}

/** @param taken names of sheets that are there already */
export function planBook(book: BookDescription, taken: readonly string[]): BookPlan {
  const names = new Set(taken.map((name) => name.toLowerCase()));
  const sheets = book.sheets.map((sheet): SheetPlan => {
    const name = freeName(sheet.name, names);
    names.add(name.toLowerCase());
    return { name, sheet, first: sheet.heading.length + 1 };
  });
  const tables = sheets.flatMap(({ name, sheet }) => (sheet.kind === "table" ? [tableInfo(name, sheet)] : []));
  const unresolved = sheets.flatMap(({ name, sheet }) => {
    const formulas = [...formulasOf(sheet), ...sheet.heading];
    return formulas
      .filter(isFormula)
      .flatMap((formula) =>
        excelFormula(formula, tables, tableOn(tables, name)).unresolved.map((at) => `${name}: ${at}`),
      );
  });
  return { sheets, tables, memory: memoryOf(sheets, tables), unresolved };
}

function formulasOf(sheet: SheetDescription): readonly Cell[] {
  if (sheet.kind === "table") return [...sheet.computed.map(({ formula }) => formula), ...sheet.rows.flat()];
  return sheet.kind === "free" ? sheet.cells.map(({ value = null }) => value) : [];
}

function memoryOf(sheets: readonly SheetPlan[], tables: readonly TableInfo[]): Memory {
  const fields = sheets.flatMap(({ sheet }) =>
    fieldsOf(sheet).flatMap(({ definedName, label, unit }) =>
      definedName === undefined ? [] : [[definedName, { label, ...(unit === undefined ? {} : { unit }) }] as const],
    ),
  );
  return {
    tables: Object.fromEntries(tables.map(({ name, columns }) => [name, columns])),
    fields: Object.fromEntries(fields),
  };
}

/** Fields of a form, and the named cells and blocks of a free sheet. */
function fieldsOf(sheet: SheetDescription): readonly Pick<FormField, "definedName" | "label" | "unit">[] {
  if (sheet.kind === "form") return sheet.fields;
  if (sheet.kind !== "free") return [];
  return sheet.cells.map(({ name, label = "", unit }) => ({
    label,
    ...(name === undefined ? {} : { definedName: name }),
    ...(unit === undefined ? {} : { unit }),
  }));
}

function freeName(name: string, taken: ReadonlySet<string>): string {
  for (let count = 1; ; count++) {
    const tried = count === 1 ? name : `${name} ${count}`;
    if (!taken.has(tried.toLowerCase())) return tried;
  }
}
