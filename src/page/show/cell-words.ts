/** What can be said of a cell in words: for the status line, the hover card and a screen reader. */
import { freeCellAt } from "../book/free.js";
import { plainMessage } from "../../host/plain-messages.js";
import { cellAddress, type CellPlace } from "../book/a1.js";
import { formColumns } from "../book/layout.js";
import type { LiveBook } from "../book/live.js";
import { plainNumber } from "./fitting.js";
import type { Messages } from "./messages.js";
import { columnTitle } from "./tints.js";

export interface CellWords {
  readonly address: string;
  /** The heading of its column with the unit, or the label of its line. */
  readonly header: string | undefined;
  /** As the cell shows it; a number without a format with all its digits. */
  readonly value: string;
  /** Why it shows an error. */
  readonly message: string | undefined;
  /** What may be typed there, where the description says. */
  readonly hint: string | undefined;
}

export function cellWords(book: LiveBook, messages: Messages, sheetId: string, place: CellPlace): CellWords {
  const worksheet = book.worksheet(sheetId);
  // A grade is told with its words, never as a bare number.
  const isGrade = book.bodyColumn(sheetId, place)?.computed?.grade === true;
  const number = isGrade ? undefined : plainNumber(book, sheetId, place.row, place.column);
  const shown = number ?? worksheet.getCell(place.row, place.column)?.v;
  const value = shown === undefined || shown === null ? "" : String(shown);
  const isError = /^#(?:[A-Z]+[!?]|N\/A|DIV\/0!)$/.test(value);
  return {
    address: cellAddress(place),
    header: headerOf(book, sheetId, place),
    value,
    message: isError ? (messages.at(sheetId, place.row, place.column) ?? plainMessage(value)) : undefined,
    hint: hintOf(book, sheetId, place, value),
  };
}

/** The choices of a cell, where the description gives any. */
export function choicesAt(book: LiveBook, sheetId: string, place: CellPlace): readonly string[] | undefined {
  const sheet = book.sheet(sheetId);
  if (sheet?.kind === "form") {
    return place.column === formColumns.value
      ? sheet.sheet.fields[place.row - sheet.firstFieldRow]?.choices
      : undefined;
  }
  if (sheet?.kind === "free") return freeCellAt(sheet, place)?.choices;
  if (sheet?.kind !== "table") return undefined;
  // The row below the last is where the next item is typed.
  const above = { row: place.row - 1, column: place.column };
  const column = book.bodyColumn(sheetId, place) ?? book.bodyColumn(sheetId, above);
  return column?.computed === undefined ? column?.column.choices : undefined;
}

function headerOf(book: LiveBook, sheetId: string, place: CellPlace): string | undefined {
  const column = book.bodyColumn(sheetId, place);
  if (column !== undefined) return columnTitle(column);
  const sheet = book.sheet(sheetId);
  if (sheet?.kind === "free") return freeCellAt(sheet, place)?.label;
  if (sheet?.kind !== "form" || place.column !== formColumns.value) return undefined;
  const field = sheet.sheet.fields[place.row - sheet.firstFieldRow];
  return field?.unit === undefined ? field?.label : `${field.label}, ${field.unit}`;
}

function hintOf(book: LiveBook, sheetId: string, place: CellPlace, value: string): string | undefined {
  const choices = choicesAt(book, sheetId, place);
  if (choices !== undefined) {
    if (value === "" || choices.includes(value)) return "Alt+↓ shows the choices.";
    return `Not one of the choices: ${choices.join(", ")}. Alt+↓ shows them.`;
  }
  return book.bodyColumn(sheetId, place)?.column.note;
}
