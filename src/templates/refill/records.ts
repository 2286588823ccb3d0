/** Tables of a file row by row, by the keys of a description's columns: typed and worked-out ones. */
import type { Cell } from "../../functions/contract.js";
import type { BookContents } from "../contents.js";
import type { BookDescription } from "../contract.js";
import { sameName } from "./which.js";

export type RowRecord = Readonly<Record<string, Cell>>;

/** Nothing where the file has no such table. An empty text is an empty cell. */
export function recordsIn(contents: BookContents, book: BookDescription, tableName: string): RowRecord[] {
  const sheet = book.sheets.find((one) => one.kind === "table" && one.tableName === tableName);
  const table = contents.tables.find(({ name }) => sameName(name, tableName));
  const file = contents.sheets.find(({ name }) => name === table?.sheet);
  if (sheet?.kind !== "table" || table === undefined || file === undefined) return [];
  const places = [
    ...sheet.columns.map(({ key, header }) => ({ key, at: table.columns.find((one) => sameName(one.header, header)) })),
    ...sheet.computed.map(({ key, header }) => ({ key, at: table.beside.find((one) => sameName(one.header, header)) })),
  ];
  const records: RowRecord[] = [];
  for (let row = table.firstRow; row <= table.lastRow; row++) {
    const cells = places.map(({ key, at }): [string, Cell] => {
      const value = at === undefined ? null : file.at(row, at.column).value;
      return [key, value === "" ? null : value];
    });
    records.push(Object.fromEntries(cells));
  }
  return records;
}
