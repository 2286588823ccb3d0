/** Whether what the engine gave for a formula may stand in the place of a saved value. */
import type { Cell, Grid } from "../../../functions/contract.js";
import { isCellError } from "../../../functions/contract.js";
import type { Area } from "../formula/areas.js";
import { isWhole } from "../formula/places.js";
import { mayGive, mayHideErrors } from "../formula/trusted.js";
import { isReadOtherwise } from "../worksheet/coerce.js";
import { isDoubted } from "../worksheet/functions.js";
import type { SavedValue } from "../sheet/cells.js";
import type { LoadedBook } from "./load.js";
import { comparesNearlyEqual } from "./nearly-equal.js";
import type { FormulaNode } from "./nodes.js";

/** What the functions told while a formula was worked out. */
export interface Heard {
  readonly doubt?: string;
  readonly soughtNothing: boolean;
}

type ValueAt = (sheet: number, row: number, column: number) => Cell;

export class Trust {
  /** Areas that are known to hold rising numbers, or not to. */
  private readonly rising = new Map<string, boolean>();
  private readonly doubtful = new Map<string, boolean>();
  private readonly withNothing = new Map<string, boolean>();

  constructor(
    private readonly book: LoadedBook,
    private readonly valueAt: ValueAt,
  ) {}

  /** Why a formula is not worked out, of what it reads. */
  before({ prepared }: FormulaNode, reads: readonly FormulaNode[]): string | undefined {
    const unordered = prepared.rising?.find((area) => !this.isRising(area));
    if (unordered) return "it looks for the nearest value where not all are rising numbers";
    const isTold = prepared.operands?.some((area) => this.holdsDoubtful(area)) === true;
    if (isTold) return "it reckons with a text that may stand for a number, a date or a time";
    if (comparesNearlyEqual(prepared.text, prepared.areas, this.valueAt)) {
      return "it compares numbers that differ only in their last digits, which a worksheet takes for equal";
    }
    if (prepared.functions?.includes("SUBTOTAL") !== true) return undefined;
    if (reads.some((other) => other.prepared.functions?.includes("SUBTOTAL"))) return "SUBTOTAL over subtotals";
    const hidden = prepared.areas.some((area) => this.hidesRows(area));
    return hidden ? "SUBTOTAL over hidden rows" : undefined;
  }

  /** Why the result of a formula is not trusted: a value in it is doubted, or nothing that it reads or calls explains its error. */
  after({ prepared, cell }: FormulaNode, result: Grid, heard: Heard): string | undefined {
    const { functions = [], areas, text } = prepared;
    if (heard.doubt !== undefined && (prepared.isOurs || mayHideErrors(functions) || isDoubted(result))) {
      return heard.doubt;
    }
    if (heard.soughtNothing && prepared.searched?.some((area) => !area || this.holdsNothing(area)) !== false) {
      return "a lookup of nothing";
    }
    const language = ofLanguage(cell.value, result[0]?.[0] ?? null, text);
    if (language !== undefined) return language;
    for (const value of result.flat()) {
      if (!isCellError(value)) continue;
      const { error } = value;
      if (text.includes(error)) continue;
      const isOurs = prepared.isOurs && error !== "#NAME?";
      const mayBe = mayGive(error, functions) && !(error === "#REF!" && areas.some(isWhole));
      if (isOurs || mayBe || this.find(areas, (one) => isCellError(one) && one.error === error)) continue;
      if (error === "#VALUE!" && (text.includes('"') || this.find(areas, (one) => typeof one === "string"))) continue;
      return `nothing explains the ${error} that the engine gives`;
    }
    return undefined;
  }

  private find(areas: readonly Area[], test: (cell: Cell) => boolean): boolean {
    return areas.some((area) => {
      const { sheet, startRow, startColumn } = area;
      const [endRow, endColumn] = this.usedEnd(area);
      for (let r = startRow; r <= endRow; r++) {
        for (let c = startColumn; c <= endColumn; c++) if (test(this.valueAt(sheet, r, c))) return true;
      }
      return false;
    });
  }

  private usedEnd({ sheet, endRow, endColumn }: Area): [number, number] {
    const { rows = 0, columns = 0 } = this.book.sheets[sheet] ?? {};
    return [Math.min(endRow, rows - 1), Math.min(endColumn, columns - 1)];
  }

  private holdsNothing(area: Area): boolean {
    return once(this.withNothing, area, () => this.find([area], (cell) => cell === 0 || cell === ""));
  }

  private holdsDoubtful(area: Area): boolean {
    const look = (): boolean => this.find([area], (cell) => typeof cell === "string" && isReadOtherwise(cell));
    return once(this.doubtful, area, look);
  }

  private isRising(area: Area): boolean {
    return once(this.rising, area, () => this.hasRising(area));
  }

  private hasRising(area: Area): boolean {
    let last = -Infinity;
    const isBroken = this.find([area], (cell) => {
      // Empty cells at the end of a whole column come after all numbers.
      if (cell === null && isWhole(area)) return false;
      if (typeof cell !== "number" || cell < last) return true;
      last = cell;
      return false;
    });
    return !isBroken;
  }

  private hidesRows({ sheet, startRow, endRow }: Area): boolean {
    const rows = this.book.sheets[sheet]?.hiddenRows ?? [];
    return rows.some((row) => row >= startRow && row <= endRow);
  }
}

const SEPARATORS = /[.,'\s\u00a0\u202f]/g;
const withoutSeparators = (text: string): string => text.replace(SEPARATORS, "");

/** A saved text that Excel of another language has made: with another decimal sign, or with its names of months and days. */
function ofLanguage(saved: SavedValue, fresh: Cell, formula: string): string | undefined {
  if (typeof saved !== "string" || typeof fresh !== "string" || saved === "" || saved === fresh) return undefined;
  const makesText = formula.includes("TEXT(");
  if (makesText && /\d/.test(saved) && withoutSeparators(saved) === withoutSeparators(fresh)) {
    return "the signs in its numbers are those of another language";
  }
  const hasNames = /"[^"]*(?:mmm|ddd)[^"]*"/i.test(formula);
  return makesText && hasNames ? "names of months and days are those of the language of Excel" : undefined;
}

/** What an area holds no longer changes once a formula that reads it is worked out: it is looked through once. */
function once(known: Map<string, boolean>, area: Area, look: () => boolean): boolean {
  const { sheet, startRow, startColumn, endRow, endColumn } = area;
  const key = [sheet, startRow, startColumn, endRow, endColumn].join();
  let answer = known.get(key);
  if (answer === undefined) known.set(key, (answer = look()));
  return answer;
}
