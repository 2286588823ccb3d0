/** Which template a workbook is made from: by what it says of itself, else by the tables and names it has. */
import type { Units } from "../../functions/units.js";
import { type BookContents, textOf } from "../contents.js";
import type { BookDescription } from "../contract.js";
import { type Template, templates } from "../registry.js";

/** So much of a template's headers and names has to be there. */
const ENOUGH = 0.6;

/** @throws NotOurs where it is none of the templates' workbooks */
export function templateOf(contents: BookContents): Template {
  const { template: name } = contents;
  if (name !== undefined) {
    const named = templates.find((one) => one.name === name);
    if (named !== undefined) return named;
    throw new NotOurs(
      `The workbook says that it was made from a template "${name}", which this version of Greybody does not have.`,
    );
  }
  const scored = templates
    .map((template) => ({ template, share: shareOf(template.empty({ units: "C", rows: 1 }), contents) }))
    .sort((one, other) => other.share - one.share);
  const best = scored[0];
  if (best !== undefined && best.share >= ENOUGH) return best.template;
  throw new NotOurs(
    "This is a workbook, but none that Greybody made: it has no table of a route, an audit or another of its templates.",
  );
}

/** A workbook that no template of ours made; the message is a whole sentence for a person. */
export class NotOurs extends Error {
  constructor(message: string) {
    super(message);
    this.name = "NotOurs";
  }
}

/** As the workbook says, else by the units above its headers and behind its named cells. */
export function unitsIn({ units, tables, names, sheets }: BookContents): Units {
  if (units !== undefined) return units;
  const isF = (text: string): boolean => text.trim() === "°F";
  const behind = names.some(({ sheet: on, startRow, endColumn }) => {
    const sheet = sheets.find(({ name }) => sameName(name, on));
    return sheet !== undefined && isF(textOf(sheet.at(startRow, endColumn + 1).value));
  });
  return behind || tables.some(({ columns }) => columns.some(({ above }) => isF(above))) ? "F" : "C";
}

export function sameName(one: string, other: string): boolean {
  return one.trim().toLowerCase() === other.trim().toLowerCase();
}

/** How much of what is typed into the template's workbooks this one has. */
function shareOf(book: BookDescription, { tables, names }: BookContents): number {
  let [all, found] = [0, 0];
  const hasName = (wanted: string): boolean => names.some(({ name }) => sameName(name, wanted));
  const count = (there: boolean): void => {
    all++;
    if (there) found++;
  };
  for (const sheet of book.sheets) {
    if (sheet.kind === "table") {
      const table = tables.find(({ name }) => sameName(name, sheet.tableName));
      for (const { header } of sheet.columns)
        count(table?.columns.some((column) => sameName(column.header, header)) === true);
    } else if (sheet.kind === "form") {
      for (const { definedName } of sheet.fields) if (definedName !== undefined) count(hasName(definedName));
    } else if (sheet.kind === "free") {
      for (const { name, look } of sheet.cells) if (look === "typed" && name !== undefined) count(hasName(name));
    }
  }
  return all === 0 ? 0 : found / all;
}
