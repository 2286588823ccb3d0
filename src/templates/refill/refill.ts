/** A file's typed cells in a new workbook of its template: everything that is worked out is described anew. */
import type { Units } from "../../functions/units.js";
import { type BookContents, type SheetContents, textOf } from "../contents.js";
import type { BookDescription, NotesSheet, SheetDescription } from "../contract.js";
import type { Template } from "../registry.js";
import { headingOf, sheetOf, titleOf } from "./heading.js";
import { LeftOut } from "./left.js";
import { refillForm, refillFree } from "./sheets.js";
import { withPictures } from "./pictures.js";
import { refillTable } from "./table.js";
import { sameName, templateOf, unitsIn } from "./which.js";

export interface Refilled {
  readonly book: BookDescription;
  readonly template: Template;
  /** The units that the file was in. */
  readonly from: Units;
  /** What could not be taken over, a sentence each. */
  readonly left: readonly string[];
}

/** The notes that a book made from another one brings along. */
export const CARRIED_OVER = "Carried over";

/**
 * @param units of the new workbook, where they are not the file's: its numbers are converted
 * @throws NotOurs where no template of ours made the file
 */
export function refill(contents: BookContents, units?: Units): Refilled {
  const template = templateOf(contents);
  const from = unitsIn(contents);
  const conversion = { from, to: units ?? from };
  const one = template.empty({ units: "C", rows: 1 });
  const title = titleOf(one.sheets[0], contents);
  const options = { rows: rowsIn(one, contents), ...(title === undefined ? {} : { title }) };
  const empty = template.empty({ ...options, units: conversion.to });
  const metric = template.empty({ ...options, units: "C" });
  const left = new LeftOut();
  const refilled = (sheet: SheetDescription, at: number): SheetDescription => {
    const same = metric.sheets[at]!;
    if (sheet.kind === "table" && same.kind === "table") return refillTable(sheet, same, contents, conversion, left);
    if (sheet.kind === "form" && same.kind === "form") return refillForm(sheet, same, contents, conversion, left);
    if (sheet.kind === "free" && same.kind === "free")
      return withPictures(refillFree(sheet, same, contents, conversion, left), contents);
    return sheet;
  };
  const ours = empty.sheets.map((sheet) => sheetOf(sheet, contents));
  const sheets = empty.sheets.map((sheet, at) => ({
    ...refilled(sheet, at),
    heading: headingOf(sheet, contents),
  }));
  const notes = tellOtherSheets(contents, ours, left);
  return { book: { ...empty, sheets: [...sheets, ...notes] }, template, from, left: left.all };
}

/** As many as the file's table, or else the block, has from which the template takes its first. */
function rowsIn({ sheets }: BookDescription, { tables, names }: BookContents): number {
  const first = sheets.find((sheet) => sheet.kind === "table");
  if (first !== undefined) {
    const table = tables.find(({ name }) => sameName(name, first.tableName));
    return table === undefined ? 1 : Math.max(1, table.lastRow - table.firstRow + 1);
  }
  const block = sheets
    .flatMap((sheet) => (sheet.kind === "free" ? sheet.cells : []))
    .find(({ look, size, name }) => look === "typed" && size !== undefined && name !== undefined);
  const area = block && names.find(({ name }) => sameName(name, block.name!));
  return area === undefined ? 1 : area.endRow - area.startRow + 1;
}

/** Sheets that the template does not have; the notes of a book made from another one are kept. */
function tellOtherSheets(
  { sheets, held }: BookContents,
  ours: readonly (SheetContents | undefined)[],
  left: LeftOut,
): NotesSheet[] {
  const notes: NotesSheet[] = [];
  for (const sheet of sheets) {
    const others = sheet.pictures - held.filter((one) => sameName(one.sheet, sheet.name)).length;
    if (others > 0) left.at("Pictures are not taken over", `${sheet.name} (${others})`);
    if (sheet.hasComments) left.at("Comments are not taken over", sheet.name);
    if (ours.includes(sheet)) continue;
    if (sheet.name === CARRIED_OVER) notes.push(notesOf(sheet));
    else if (sheet.rows > 0) left.at("A sheet is not one of the template's and was left out", sheet.name);
  }
  return notes;
}

function notesOf(sheet: SheetContents): NotesSheet {
  const lines: string[] = [];
  for (let row = 0; row < sheet.rows; row++) {
    const text = textOf(sheet.at(row, 0).value);
    if (text !== "") lines.push(text.startsWith("=") ? ` ${text}` : text);
  }
  return { kind: "notes", name: sheet.name, heading: [lines[0] ?? sheet.name], lines: lines.slice(1) };
}
