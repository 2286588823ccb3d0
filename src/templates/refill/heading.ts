/** Lines above a sheet's content that somebody has added, such as that a demonstration is invented. */
import { type BookContents, type SheetContents, textOf } from "../contents.js";
import type { SheetDescription } from "../contract.js";
import { sameName } from "./which.js";

/** The file's sheet that a described one was: where its table or the first of its names stands, else the one of its name. */
export function sheetOf(sheet: SheetDescription, { sheets, tables, names }: BookContents): SheetContents | undefined {
  const named = (wanted: readonly (string | undefined)[]): string | undefined =>
    names.find(({ name }) => wanted.some((one) => one !== undefined && sameName(one, name)))?.sheet;
  const where =
    sheet.kind === "table"
      ? tables.find(({ name }) => sameName(name, sheet.tableName))?.sheet
      : sheet.kind === "form"
        ? named(sheet.fields.map(({ definedName }) => definedName))
        : sheet.kind === "free"
          ? named(sheet.cells.map(({ name }) => name))
          : undefined;
  return sheets.find(({ name }) => sameName(name, where ?? sheet.name));
}

const MOST_LINES = 12;

/** The description's heading with what else was written among its lines. */
export function headingOf(sheet: SheetDescription, contents: BookContents): readonly string[] {
  const file = sheetOf(sheet, contents);
  if (file === undefined) return sheet.heading;
  const table =
    sheet.kind === "table" ? contents.tables.find(({ name }) => sameName(name, sheet.tableName)) : undefined;
  const column = sheet.kind === "table" ? sheet.frozenColumns : 0;
  // The lines end above the groups of a table, else where a row has none.
  const end = table === undefined ? Math.min(file.rows, MOST_LINES) : table.headerRow - 2;
  const [title = "", ...rest] = sheet.heading;
  const lines = [title];
  let next = 0;
  const upTo = (at: number): void => {
    if (at < 0) return;
    lines.push(...rest.slice(next, at + 1));
    next = at + 1;
  };
  for (let row = 1; row < end; row++) {
    const { value, isWorkedOut } = file.at(row, column);
    const isText = typeof value === "string" && value.trim() !== "" && !value.startsWith("=");
    if (isWorkedOut) upTo(rest.findIndex((line, at) => at >= next && line.startsWith("=")));
    else if (!isText) break;
    else if (rest.includes(value)) upTo(rest.findIndex((line, at) => at >= next && line === value));
    else lines.push(value);
  }
  return [...lines, ...rest.slice(next)];
}

/** What stands on top of the file's first sheet. */
export function titleOf(first: SheetDescription | undefined, contents: BookContents): string | undefined {
  const file = first && sheetOf(first, contents);
  const cell = file?.at(0, first?.kind === "table" ? first.frozenColumns : 0);
  const text = cell?.isWorkedOut === false ? textOf(cell.value).trim() : "";
  return [text, contents.title ?? ""].find((one) => one !== "" && !one.startsWith("="));
}
