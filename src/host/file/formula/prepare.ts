/** Turns a formula as a file holds it into one the engine can work out in its cell, and tells what it reads. */
import { NAMESPACE } from "../../../functions/describe.js";
import { resolveStructured } from "../../embedded/structured.js";
import type { TablePosition } from "../../embedded/structured.js";
import { plainNames } from "../../embedded/names.js";
import type { DefinedName } from "../package/workbook.js";
import { addressOf, areaOf, implicitCell } from "./areas.js";
import type { Area } from "./areas.js";
import { argumentContext, ARRAY, VALUE } from "./context.js";
import type { Context } from "./context.js";
import { moveFormula, segmentsOf, sheetName } from "./segments.js";
import type { Reference, Segment } from "./segments.js";
import { functionsIn, significant, treeOf } from "./tree.js";
import type { Expression, Item } from "./tree.js";
import { argumentsOf, isVolatile } from "./trusted.js";

/** What a formula may refer to. */
export interface FormulaBook {
  readonly sheets: readonly { readonly name: string; readonly rows: number; readonly columns: number }[];
  readonly names: readonly DefinedName[];
  readonly tables: readonly TablePosition[];
}

export interface FormulaCell {
  readonly sheet: number;
  readonly row: number;
  readonly column: number;
  /** Worked out for arrays: a legacy array formula or a dynamic array. */
  readonly isArray: boolean;
}

export interface PreparedFormula {
  /** Without "=", for the engine. */
  readonly text: string;
  readonly areas: readonly Area[];
  readonly isOurs: boolean;
  /** Why the engine's result would not be trusted; undefined where it is. */
  readonly distrust: string | undefined;
  readonly isVolatile: boolean;
}

const MOST_NAMES_DEEP = 12;

/** Prepares formulas of one workbook. */
export class Preparer {
  private readonly sheetIndex: ReadonlyMap<string, number>;

  constructor(private readonly book: FormulaBook) {
    this.sheetIndex = new Map(book.sheets.map(({ name }, i) => [name.toLowerCase(), i]));
  }

  readonly isSheet = (name: string): boolean => this.sheetIndex.has(name.toLowerCase());

  prepare(formula: string, cell: FormulaCell): PreparedFormula {
    const work = new Work(this.book, this.sheetIndex, cell);
    return work.prepare(formula);
  }
}

class Work {
  private readonly areas: Area[] = [];
  private distrust: string | undefined;

  constructor(
    private readonly book: FormulaBook,
    private readonly sheetIndex: ReadonlyMap<string, number>,
    private readonly cell: FormulaCell,
  ) {}

  private readonly isSheet = (name: string): boolean => this.sheetIndex.has(name.toLowerCase());

  prepare(formula: string): PreparedFormula {
    const segments = this.withoutNames(this.plain(formula), 0);
    const tree = treeOf(segments);
    if (!tree) return this.result(formula, [], "the formula cannot be taken apart");
    const functions = functionsIn(tree);
    this.judge(functions, segments);
    const text = this.write(tree, this.cell.isArray ? ARRAY : VALUE);
    return this.result(text, functions);
  }

  private result(text: string, functions: readonly string[], distrust = this.distrust): PreparedFormula {
    return {
      text: text.replace(/^=/, ""),
      areas: this.areas,
      isOurs: functions.some((name) => name.startsWith(`${NAMESPACE}.`)),
      distrust,
      isVolatile: functions.some(isVolatile),
    };
  }

  /** The first reason counts. */
  private doubt(reason: string): void {
    this.distrust ??= reason;
  }

  private judge(functions: readonly string[], segments: readonly Segment[]): void {
    for (const name of functions) {
      if (isVolatile(name)) this.doubt(`${name} is volatile`);
      else if (!name.startsWith(`${NAMESPACE}.`) && argumentsOf(name) === undefined) {
        this.doubt(`${name} is not among the functions that are trusted`);
      }
    }
    for (const segment of segments) {
      if (segment.kind === "other" && segment.token.kind === "sheet")
        this.doubt(`${segment.text} is not in this workbook`);
      else if (segment.text === "#" || segment.text === "@") this.doubt(`the operator ${segment.text} is not read`);
      else if (segment.kind === "other" && segment.token.kind === "bracket")
        this.doubt("a table it names is not found");
      else if (segment.kind === "other" && segment.token.kind === "unterminated")
        this.doubt("the formula does not end");
    }
  }

  /** Marks of the file taken away, structured references turned to addresses. */
  private plain(formula: string): string {
    const { row, column, sheet } = this.cell;
    const own = this.book.sheets[sheet]?.name ?? "";
    const table = this.book.tables.find((one) => {
      const [first, last] = [one.columns[0]?.column ?? 0, one.columns.at(-1)?.column ?? -1];
      const bottom = one.totalsRow ?? one.lastRow;
      return one.sheet === own && row >= one.headerRow && row <= bottom && column >= first && column <= last;
    });
    const place = { sheet: own, row, ...(table ? { table: table.name } : {}) };
    const { formula: resolved, unresolved } = resolveStructured(plainNames(formula), this.book.tables, place);
    const [missing] = unresolved;
    if (missing !== undefined && !missing.startsWith("[")) this.doubt(`${missing} is not found`);
    return resolved;
  }

  /** Defined names replaced by what they stand for; their relative references are meant from A1. */
  private withoutNames(formula: string, depth: number): Segment[] {
    const segments = segmentsOf(formula, this.isSheet);
    return segments.flatMap((segment, i): Segment[] => {
      if (segment.kind !== "other" || segment.token.kind !== "name") return [segment];
      const next = segments[i + 1];
      if (next?.kind === "other" && next.token.kind === "open") return [segment];
      if (/^(?:TRUE|FALSE)$/i.test(segment.text)) return [segment];
      const found = this.named(segment.text);
      if (!found) {
        this.doubt(`the name ${segment.text} is not defined`);
        return [segment];
      }
      if (depth >= MOST_NAMES_DEEP) {
        this.doubt(`the name ${segment.text} leads to itself`);
        return [segment];
      }
      const { row, column } = this.cell;
      const moved = moveFormula(this.plain(found.formula), row, column, this.isSheet);
      const inside = this.withoutNames(moved, depth + 1);
      if (inside.length === 1) return inside;
      return [...segmentsOf("(", this.isSheet), ...inside, ...segmentsOf(")", this.isSheet)];
    });
  }

  private named(name: string): DefinedName | undefined {
    const wanted = name.toLowerCase();
    const all = this.book.names.filter((one) => one.name.toLowerCase() === wanted);
    return all.find((one) => one.sheet === this.cell.sheet) ?? all.find((one) => one.sheet === undefined);
  }

  private write(expression: Expression, context: Context): string {
    const items = significant(expression);
    const intersection = this.intersectionOf(expression);
    if (intersection !== undefined) return intersection;
    const inner: Context = items.length === 1 ? context : { mode: context.operand, operand: context.operand };
    return expression.map((item) => this.writeItem(item, inner)).join("");
  }

  private writeItem(item: Item, context: Context): string {
    switch (item.kind) {
      case "reference":
        return this.writeReference(item.reference, item.text, context);
      case "call": {
        const args = item.args.map((arg, i) => this.write(arg, argumentContext(item.name.toUpperCase(), i, context)));
        return `${item.name}(${args.join(",")})`;
      }
      case "group":
        if (item.inside.length > 1) this.doubt("a union of ranges is not read");
        return `(${item.inside.map((one) => this.write(one, context)).join(",")})`;
      case "constant":
      case "other":
        return item.text;
    }
  }

  private writeReference(reference: Reference, text: string, { mode }: Context): string {
    const sheets = this.sheetsOf(reference);
    if (sheets === undefined) return text;
    const areas = sheets.map((sheet) => areaOf(reference, sheet));
    const [area] = areas;
    if (area === undefined) return text;
    if (areas.length > 1) {
      if (mode !== "R") this.doubt("a reference through several sheets stands where one is not read");
      this.areas.push(...areas);
      return areas.map((one) => this.address(one)).join(",");
    }
    const isSingle = area.startRow === area.endRow && area.startColumn === area.endColumn;
    if (mode === "V" && !isSingle) {
      const cell = implicitCell(area, this.cell);
      if (cell) this.areas.push(cell);
      return cell ? this.address(cell) : "#VALUE!";
    }
    this.areas.push(area);
    return this.address(area);
  }

  /** Two ranges with only a space between: what both have. */
  private intersectionOf(expression: Expression): string | undefined {
    const [first, second, ...rest] = significant(expression);
    if (first?.kind !== "reference" || second?.kind !== "reference" || rest.length > 0) return undefined;
    const [a, b] = [first, second].map(({ reference }) => {
      const [sheet, ...others] = this.sheetsOf(reference) ?? [];
      return sheet === undefined || others.length > 0 ? undefined : areaOf(reference, sheet);
    });
    if (a?.sheet === undefined || a.sheet !== b?.sheet) return undefined;
    const both: Area = {
      sheet: a.sheet,
      startRow: Math.max(a.startRow, b.startRow),
      endRow: Math.min(a.endRow, b.endRow),
      startColumn: Math.max(a.startColumn, b.startColumn),
      endColumn: Math.min(a.endColumn, b.endColumn),
    };
    if (both.startRow > both.endRow || both.startColumn > both.endColumn) return "#NULL!";
    this.areas.push(both);
    return this.address(both);
  }

  private readonly address = (area: Area): string => addressOf(area, this.cell.sheet, this.book.sheets);

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
