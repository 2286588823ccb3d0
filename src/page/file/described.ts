/** The open book described again from the grid: what is typed in it, and in words what a file would not hold. */
import type { Cell, Grid } from "../../functions/contract.js";
import type { BookDescription, FreeCell, FreeSheet, SheetDescription } from "../../templates/contract.js";
import { textOf } from "../../templates/contents.js";
import { taken } from "../../templates/refill/cells.js";
import { LeftOut } from "../../templates/refill/left.js";
import { trimmed, withValues } from "../../templates/refill/sheets.js";
import type { SheetRange } from "../../host/embedded/grid-access.js";
import type { Box } from "../book/a1.js";
import { freeBox } from "../book/free-box.js";
import {
  type FormLayout,
  formColumns,
  type FreeLayout,
  type NotesLayout,
  type SheetLayout,
  type TableLayout,
} from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import { boxesNow } from "../book/pictures.js";
import { tellOutside } from "./outside.js";

export interface Described {
  readonly book: BookDescription;
  /** What cannot be saved, a sentence each. */
  readonly left: readonly string[];
}

type Cells = (range: SheetRange) => Grid;

const isFormula = (value: unknown): boolean => typeof value === "string" && value.startsWith("=");
/** In the page's own units and days already. */
const PLAIN = { quantity: undefined, from: "C", to: "C", dayShift: 0 } as const;

export function describeOpenBook(live: LiveBook, cells: Cells): Described {
  const left = new LeftOut();
  const reader = new GridReader(live, cells, left);
  const sheets = live.layout.sheets.map((sheet): SheetDescription => ({
    ...described(sheet, live, reader),
    heading: headingOf(sheet, reader),
  }));
  tellOutside(live, left);
  return { book: { ...live.layout.book, sheets }, left: left.all };
}

function described(sheet: SheetLayout, live: LiveBook, reader: GridReader): SheetDescription {
  switch (sheet.kind) {
    case "table":
      return tableOf(sheet, live, reader);
    case "form":
      return formOf(sheet, reader);
    case "free":
      return { ...freeOf(sheet, reader), ...picturesOf(sheet, live, reader.left) };
    case "notes":
      return notesOf(sheet, reader);
  }
}

class GridReader {
  constructor(
    private readonly live: LiveBook,
    private readonly cells: Cells,
    readonly left: LeftOut,
  ) {}

  /** The typed cells of a box, a row each; `what` names one for messages. */
  typed({ id, name }: SheetLayout, box: Box, what: (row: number, column: number) => string): Cell[][] {
    const sheet = this.live.worksheet(id);
    return this.cells({ sheet: name, ...box }).map((row, r) =>
      row.map((value, c) => {
        const [atRow, atColumn] = [box.startRow + r, box.startColumn + c];
        const raw = sheet.getCellRaw(atRow, atColumn);
        const isWorkedOut = typeof raw?.f === "string" && raw.f !== "";
        return taken({ value, isWorkedOut }, PLAIN, `${name}, ${what(atRow, atColumn)}`, this.left);
      }),
    );
  }

  one(sheet: SheetLayout, row: number, column: number, what: string): Cell {
    return this.typed(
      sheet,
      { startRow: row, endRow: row, startColumn: column, endColumn: column },
      () => what,
    )[0]![0]!;
  }
}

function tableOf(table: TableLayout, live: LiveBook, reader: GridReader): SheetDescription {
  const { firstRow, lastRow } = live.rowsOf(table);
  const box = { startRow: firstRow, endRow: lastRow, startColumn: 0, endColumn: table.lastTyped };
  const header = (column: number): string => table.sheet.columns[column]?.header ?? "";
  const rows = reader.typed(table, box, (row, column) => `${header(column)} in row ${String(row + 1)}`);
  return { ...table.sheet, rows };
}

function formOf(form: FormLayout, reader: GridReader): SheetDescription {
  const fields = form.sheet.fields.map((field, line) =>
    field.definedName === undefined || isFormula(field.value)
      ? field
      : { ...field, value: reader.one(form, form.firstFieldRow + line, formColumns.value, field.label) },
  );
  return { ...form.sheet, fields };
}

function notesOf(notes: NotesLayout, reader: GridReader): SheetDescription {
  const first = notes.sheet.heading.length + 1;
  const lines = notes.sheet.lines.map((_, at) => textOf(reader.one(notes, first + at, 0, "a line")));
  return { ...notes.sheet, lines };
}

function freeOf({ sheet, first, ...place }: FreeLayout, reader: GridReader): FreeSheet {
  const cells = sheet.cells.map((cell): FreeCell => {
    if (cell.look !== "typed") return cell;
    const box = cell.size === undefined ? { ...freeBox(cell, first), endColumn: cell.column } : freeBox(cell, first);
    const what = cell.label ?? cell.name ?? "a typed cell";
    return withValues(cell, trimmed(reader.typed({ sheet, first, ...place }, box, () => what)));
  });
  return { ...sheet, cells };
}

/** Of a picture whose number no box asks for any more nobody would know what it shows. */
function picturesOf(free: FreeLayout, live: LiveBook, left: LeftOut): Partial<FreeSheet> {
  const { pictures } = free.sheet;
  if (pictures === undefined) return {};
  const now = boxesNow(live, free);
  const kept = new Set(now.flatMap(({ kind, shown }) => (shown === undefined ? [] : [`${kind} ${shown}`])));
  for (const { kind, shown } of pictures)
    if (shown !== undefined && !kept.has(`${kind} ${shown}`))
      left.at("A picture is not saved, since no exception has its number any more", `${kind} ${shown}`);
  return { pictures: now };
}

/** Words above a sheet may be written anew; what is worked out there stays. */
function headingOf(sheet: SheetLayout, reader: GridReader): string[] {
  const beside = sheet.kind === "table" ? sheet.sheet.frozenColumns : 0;
  return sheet.sheet.heading.map((line, row) => {
    if (isFormula(line)) return line;
    const now = reader.one(sheet, row, beside, "a line above");
    return typeof now === "string" ? now : line;
  });
}
