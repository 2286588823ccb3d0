/** What described sheets have alike, whatever stands on them. */
import type { Cell } from "../../../functions/contract.js";
import type { CellStyle, PrintSetup, Validation, WrittenCell, WrittenSheet } from "./model.js";

/** Turns a description's cell into a written one; formulas are resolved on the way. */
export type Put = (row: number, column: number, cell: Cell | undefined, style: CellStyle) => WrittenCell;

const ROW_HEIGHT = 24;
const TITLE_HEIGHT = 32;
const FOOT = "Arithmetic only: a qualified person decides; local codes and licensed practice govern.";

export interface SheetBase {
  readonly put: Put;
  readonly headings: readonly WrittenCell[];
  readonly paper: PrintSetup["paper"];
}

/** What all sheets have alike. */
export function blankSheet(name: string, paper: PrintSetup["paper"]): WrittenSheet {
  return {
    name,
    cells: [],
    columns: [],
    rowHeights: new Map([[0, TITLE_HEIGHT]]),
    rowHeight: ROW_HEIGHT,
    frozen: { rows: 0, columns: 0 },
    tables: [],
    validations: [],
    conditionals: [],
    pictures: [],
    isProtected: false,
    print: {
      landscape: false,
      paper,
      pagesWide: 1,
      repeatedRows: 0,
      repeatedColumns: 0,
      foot: { left: FOOT, right: name.length > 40 ? "" : name },
    },
  };
}

/** Choices ask whether something else is meant, since the agreed word may be another; limits let nothing else in. */
export function validationsOf(
  {
    choices,
    range,
    label,
    unit,
  }: { choices?: readonly string[]; range?: readonly [number, number]; label: string; unit?: string },
  area: Validation["area"],
): Validation[] {
  if (choices !== undefined) {
    const text = `${label} is usually one of: ${choices.join(", ")}. Keep what you typed?`;
    return [{ area, rule: { kind: "list", choices }, refusal: { title: "Not in the list", text } }];
  }
  if (range === undefined) return [];
  const [low, high] = range;
  const measured = unit === undefined ? "" : ` ${unit}`;
  const text = `${label}: a number from ${low} to ${high}${measured}, without words or signs. Leave the cell empty where it is not known.`;
  return [{ area, rule: { kind: "between", low, high }, strict: true, refusal: { title: "This cannot be", text } }];
}
