/** Where the references of one formula lead, and which cells it reads. */
import { addressOf, areaOf, implicitCell } from "./areas.js";
import type { Area } from "./areas.js";
import type { FormulaBook, FormulaCell } from "./book.js";
import type { Context } from "./context.js";
import { MOST_COLUMNS, MOST_ROWS, sheetName } from "./segments.js";
import type { Reference } from "./segments.js";

/** A whole column or row. */
export const isWhole = ({ startRow, endRow, startColumn, endColumn }: Area): boolean =>
  (startRow === 0 && endRow === MOST_ROWS - 1) || (startColumn === 0 && endColumn === MOST_COLUMNS - 1);

export class Places {
  /** Every area that the formula reads. */
  readonly areas: Area[] = [];

  constructor(
    private readonly book: FormulaBook,
    private readonly sheetIndex: ReadonlyMap<string, number>,
    private readonly cell: FormulaCell,
    private readonly doubt: (reason: string) => void,
  ) {}

  /** The one area of a reference, or undefined where it has several or none. */
  areaOf(reference: Reference): Area | undefined {
    const [sheet, ...others] = this.sheetsOf(reference) ?? [];
    return sheet === undefined || others.length > 0 ? undefined : areaOf(reference, sheet);
  }

  /** A reference as the engine is to read it in a place of the formula. */
  write(reference: Reference, text: string, context: Context): string {
    const areas = (this.sheetsOf(reference) ?? []).map((sheet) => areaOf(reference, sheet));
    const [area] = areas;
    if (area === undefined) return text;
    if (areas.length === 1) return this.writeArea(area, context);
    if (context.mode !== "R") this.doubt("a reference through several sheets stands where one is not read");
    return areas.map((one) => this.read(one)).join(",");
  }

  /** An area, or the one cell of it that is meant where one value is wanted. */
  writeArea(area: Area, { mode }: Context): string {
    const isSingle = area.startRow === area.endRow && area.startColumn === area.endColumn;
    if (mode !== "V" || isSingle) return this.read(area);
    const cell = implicitCell(area, this.cell);
    return cell ? this.read(cell) : "#VALUE!";
  }

  /** The address of an area that the formula reads. */
  read(area: Area): string {
    this.areas.push(area);
    return addressOf(area, this.cell.sheet, this.book.sheets);
  }

  /** Two ranges with only a space between: what both have. */
  intersection(first: Reference, second: Reference, context: Context): string {
    const [a, b] = [this.areaOf(first), this.areaOf(second)];
    if (!a || a.sheet !== b?.sheet) {
      this.doubt("an intersection of ranges of several sheets is not read");
      return "#NULL!";
    }
    const both: Area = {
      sheet: a.sheet,
      startRow: Math.max(a.startRow, b.startRow),
      endRow: Math.min(a.endRow, b.endRow),
      startColumn: Math.max(a.startColumn, b.startColumn),
      endColumn: Math.min(a.endColumn, b.endColumn),
    };
    const isEmpty = both.startRow > both.endRow || both.startColumn > both.endColumn;
    return isEmpty ? "#NULL!" : this.writeArea(both, context);
  }

  private sheetsOf({ sheet, lastSheet }: Reference): number[] | undefined {
    if (sheet === undefined) return [this.cell.sheet];
    const find = (written: string): number | undefined => this.sheetIndex.get(sheetName(written).toLowerCase());
    const first = find(sheet);
    const last = lastSheet === undefined ? first : find(lastSheet);
    if (first === undefined || last === undefined) {
      this.doubt(`${sheet}! is not in this workbook`);
      return undefined;
    }
    const [from, to] = [Math.min(first, last), Math.max(first, last)];
    return Array.from({ length: to - from + 1 }, (_, i) => from + i);
  }
}
