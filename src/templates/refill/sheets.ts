/** Forms and free sheets of a description with what is typed in a file's: by defined name. */
import type { Cell } from "../../functions/contract.js";
import type { BookContents, NamedCells, ReadCell } from "../contents.js";
import type { FormSheet, FreeCell, FreeSheet } from "../contract.js";
import { isDay, quantityOf, taken } from "./cells.js";
import type { LeftOut } from "./left.js";
import type { Conversion } from "./table.js";
import { sameName } from "./which.js";

const isFormula = (value: unknown): boolean => typeof value === "string" && value.startsWith("=");

const WORKED_OUT = "Something was typed over a cell that the sheet works out: it is worked out again";

export function refillForm(
  sheet: FormSheet,
  metric: FormSheet,
  contents: BookContents,
  conversion: Conversion,
  left: LeftOut,
): FormSheet {
  const absent: string[] = [];
  const fields = sheet.fields.map((field, at) => {
    const { definedName, label, value, format } = field;
    if (definedName === undefined) return field;
    const cells = cellsNamed(definedName, contents);
    const cell = cells?.at(0, 0);
    const place = `${sheet.name}, ${label}`;
    if (isFormula(value)) {
      if (cell?.isWorkedOut === false && cell.value !== null) left.at(WORKED_OUT, place);
      return field;
    }
    if (cell === undefined) {
      absent.push(label);
      return field;
    }
    const dayShift = isDay(format) ? contents.dayShift : 0;
    const kind = { quantity: quantityOf(metric.fields[at]?.unit), ...conversion, dayShift };
    return { ...field, value: taken(cell, kind, place, left) };
  });
  const typed = sheet.fields.filter(({ definedName, value }) => definedName !== undefined && !isFormula(value)).length;
  if (absent.length === typed && typed > 0)
    left.say(`There is no sheet ${sheet.name} in the file: its values are those of a new workbook.`);
  else if (absent.length > 0) left.say(`${sheet.name}: the file has no ${absent.join(", ")}: as in a new workbook.`);
  return { ...sheet, fields };
}

export function refillFree(
  sheet: FreeSheet,
  metric: FreeSheet,
  contents: BookContents,
  conversion: Conversion,
  left: LeftOut,
): FreeSheet {
  const cells = sheet.cells.map((cell, at): FreeCell => {
    if (cell.name === undefined || (cell.look !== "typed" && !isFormula(cell.value))) return cell;
    const found = cellsNamed(cell.name, contents);
    const what = `${sheet.name}, ${cell.label ?? cell.name}`;
    if (cell.look !== "typed") {
      const anchor = found?.at(0, 0);
      if (anchor?.isWorkedOut === false && anchor.value !== null) left.at(WORKED_OUT, what);
      return cell;
    }
    if (found === undefined) {
      left.at("The file has no such cells: as in a new workbook", what);
      return cell;
    }
    const dayShift = isDay(cell.format) ? contents.dayShift : 0;
    const kind = { quantity: quantityOf(metric.cells[at]?.unit), ...conversion, dayShift };
    const { rows, columns } = cell.size ?? { rows: 1, columns: 1 };
    if (found.rows > rows || found.columns > columns)
      left.at(`Only the first ${rows} × ${columns} cells of a block were taken`, what);
    const values = trimmed(
      Array.from({ length: Math.min(rows, found.rows) }, (_, row) =>
        Array.from({ length: Math.min(columns, found.columns) }, (__, column) =>
          taken(found.at(row, column), kind, what, left),
        ),
      ),
    );
    return withValues(cell, values);
  });
  return { ...sheet, cells };
}

/** Without the empty rows and columns behind what stands in it. */
export function trimmed(values: readonly (readonly Cell[])[]): Cell[][] {
  const isFilled = (cell: Cell): boolean => cell !== null;
  const rows = values.reduce((most, row, at) => (row.some(isFilled) ? at + 1 : most), 0);
  const columns = Math.max(
    0,
    ...values.map((row) => row.reduce<number>((most, cell, at) => (isFilled(cell) ? at + 1 : most), 0)),
  );
  return values.slice(0, rows).map((row) => row.slice(0, columns));
}

/** A typed cell, or a block, with what stands in it. */
export function withValues(cell: FreeCell, values: readonly (readonly Cell[])[]): FreeCell {
  const rest: { -readonly [Key in keyof FreeCell]: FreeCell[Key] } = { ...cell };
  delete rest.values;
  delete rest.value;
  const [[first = null] = []] = values;
  if (first !== null) rest.value = first;
  return cell.size === undefined || values.length === 0 ? rest : { ...rest, values };
}

interface Named {
  readonly rows: number;
  readonly columns: number;
  /** From the first cell of the name. */
  readonly at: (row: number, column: number) => ReadCell;
}

function cellsNamed(wanted: string, { names, sheets }: BookContents): Named | undefined {
  const area: NamedCells | undefined = names.find(({ name }) => sameName(name, wanted));
  const sheet = area && sheets.find(({ name }) => sameName(name, area.sheet));
  if (area === undefined || sheet === undefined) return undefined;
  const { startRow, startColumn, endRow, endColumn } = area;
  return {
    rows: endRow - startRow + 1,
    columns: endColumn - startColumn + 1,
    at: (row, column) => sheet.at(startRow + row, startColumn + column),
  };
}
