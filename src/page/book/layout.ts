/** Where everything in a described workbook stands: pure arithmetic over the description, no grid. */
import type {
  BookDescription,
  ColumnDescription,
  ComputedColumn,
  FormSheet,
  FreeSheet,
  NotesSheet,
  TableSheet,
} from "../../templates/contract.js";
import type { Box, CellPlace } from "./a1.js";
import { freeBox } from "./free-box.js";

export interface BookLayout {
  readonly book: BookDescription;
  readonly sheets: readonly SheetLayout[];
  /** Form fields and free cells or blocks by defined name (lower case). */
  readonly names: ReadonlyMap<string, NamedPlace>;
}

/** A cell, or the first of a block whose last cell is `end`. */
export type NamedPlace = CellPlace & { readonly sheetName: string; readonly end?: CellPlace };

export type SheetLayout = FormLayout | TableLayout | NotesLayout | FreeLayout;

interface SheetPlace {
  /** The grid's id of the sheet. */
  readonly id: string;
  readonly name: string;
}

export interface FormLayout extends SheetPlace {
  readonly kind: "form";
  readonly sheet: FormSheet;
  readonly firstFieldRow: number;
}

export interface NotesLayout extends SheetPlace {
  readonly kind: "notes";
  readonly sheet: NotesSheet;
}

export interface FreeLayout extends SheetPlace {
  readonly kind: "free";
  readonly sheet: FreeSheet;
  /** The sheet's row that the description calls 0. */
  readonly first: number;
}

export interface ColumnPlace {
  readonly column: ColumnDescription;
  readonly index: number;
  /** Present where the sheet works the column out. */
  readonly computed?: ComputedColumn;
}

export interface TableLayout extends SheetPlace {
  readonly kind: "table";
  readonly sheet: TableSheet;
  readonly tableId: string;
  readonly groupRow: number;
  readonly headerRow: number;
  /** Body rows when the book is opened; afterwards the live table knows. */
  readonly firstRow: number;
  readonly lastRow: number;
  readonly columns: readonly ColumnPlace[];
  readonly lastTyped: number;
  /** The narrow empty column between table and spills. */
  readonly gap: number;
  readonly lastColumn: number;
}

/** Columns of a form sheet. */
export const formColumns = { label: 0, value: 1, unit: 2, note: 3 } as const;

/** @param edition another number for each book that is opened in place of the last: no sheet of it bears the id of an old one */
export function layOut(book: BookDescription, edition = 1): BookLayout {
  const sheets = book.sheets.map((sheet, index): SheetLayout => {
    const place: SheetPlace = { id: `sheet-${String(edition)}-${String(index + 1)}`, name: sheet.name };
    if (sheet.kind === "form") return { ...place, kind: "form", sheet, firstFieldRow: sheet.heading.length + 1 };
    if (sheet.kind === "notes") return { ...place, kind: "notes", sheet };
    if (sheet.kind === "free") return { ...place, kind: "free", sheet, first: sheet.heading.length + 1 };
    return tableLayout(place, sheet);
  });
  const names = new Map<string, NamedPlace>();
  for (const form of sheets) {
    if (form.kind === "free") nameFree(form, names);
    if (form.kind !== "form") continue;
    form.sheet.fields.forEach((field, line) => {
      if (field.definedName === undefined) return;
      names.set(field.definedName.toLowerCase(), {
        sheetName: form.name,
        row: form.firstFieldRow + line,
        column: formColumns.value,
      });
    });
  }
  return { book, sheets, names };
}

function nameFree({ name: sheetName, sheet, first }: FreeLayout, names: Map<string, NamedPlace>): void {
  for (const cell of sheet.cells) {
    if (cell.name === undefined) continue;
    const { startRow: row, startColumn: column, endRow, endColumn }: Box = freeBox(cell, first);
    const isOne = cell.size === undefined;
    names.set(cell.name.toLowerCase(), {
      sheetName,
      row,
      column,
      ...(isOne ? {} : { end: { row: endRow, column: endColumn } }),
    });
  }
}

function tableLayout(place: SheetPlace, sheet: TableSheet): TableLayout {
  const groupRow = sheet.heading.length;
  const headerRow = groupRow + 1;
  const gap = sheet.columns.length;
  const columns: ColumnPlace[] = sheet.columns.map((column, index) => ({ column, index }));
  sheet.computed.forEach((computed, offset) => columns.push({ column: computed, index: gap + 1 + offset, computed }));
  return {
    ...place,
    kind: "table",
    sheet,
    tableId: `table-${sheet.tableName}`,
    groupRow,
    headerRow,
    firstRow: headerRow + 1,
    // A table always has one body row, or nothing could be typed into it.
    lastRow: headerRow + Math.max(1, sheet.rows.length),
    columns,
    lastTyped: gap - 1,
    gap,
    lastColumn: gap + sheet.computed.length,
  };
}

export function tableSheets(layout: BookLayout): TableLayout[] {
  return layout.sheets.filter((sheet): sheet is TableLayout => sheet.kind === "table");
}

/** The description of what stands in a column of a table sheet, or undefined (the gap, the free space at the right). */
export function columnAt(layout: TableLayout, column: number): ColumnPlace | undefined {
  return layout.columns.find((place) => place.index === column);
}
