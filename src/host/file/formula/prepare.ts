/** Turns a formula as a file holds it into one the engine can work out in its cell, and tells what it reads. */
import { NAMESPACE } from "../../../functions/describe.js";
import { resolveStructured } from "../../embedded/structured.js";
import { plainNames } from "../../embedded/names.js";
import type { DefinedName } from "../package/workbook.js";
import type { Area } from "./areas.js";
import type { FormulaBook, FormulaCell } from "./book.js";
import { ARRAY, VALUE } from "./context.js";
import { Places } from "./places.js";
import { moveFormula, segmentsOf, sheetName } from "./segments.js";
import type { Segment } from "./segments.js";
import { functionsIn, onlyItem, treeOf } from "./tree.js";
import type { Expression } from "./tree.js";
import { givesArray, isVolatile } from "./trusted.js";
import { Writer } from "./write.js";

export type { FormulaBook, FormulaCell };

export interface PreparedFormula {
  /** Without "=", for the engine. */
  readonly text: string;
  readonly areas: readonly Area[];
  readonly isOurs: boolean;
  /** Why the engine's result would not be trusted; undefined where it is. */
  readonly distrust: string | undefined;
  readonly isVolatile: boolean;
  /** Functions that it calls, in capitals. */
  readonly functions?: readonly string[];
  /** Areas that must hold rising numbers for its result to be trusted. */
  readonly rising?: readonly Area[];
  /** Areas in which it looks for a value; undefined for what is no plain range. */
  readonly searched?: readonly (Area | undefined)[];
  /** Areas whose cells stand in arithmetic: texts in them are read as numbers. */
  readonly operands?: readonly Area[];
  /** It gives an array of which its cell shows the first value. */
  readonly showsFirst?: boolean;
}

const MOST_NAMES_DEEP = 12;
/** A range that is the same from every cell, as most names stand for: nothing in it has to be moved. */
const ABSOLUTE = /^(?:'[^'[\]]+'|\w+)!\$[A-Z]{1,3}\$\d+(?::\$[A-Z]{1,3}\$\d+)?$/;

/** Defined names by their text in lower case: the same may stand for other things on other sheets. */
type NamesByText = Map<string, DefinedName[]>;

/** Prepares formulas of one workbook. */
export class Preparer {
  private readonly sheetIndex: ReadonlyMap<string, number>;
  private readonly names: NamesByText = new Map();

  constructor(private readonly book: FormulaBook) {
    this.sheetIndex = new Map(book.sheets.map(({ name }, i) => [name.toLowerCase(), i]));
    for (const one of book.names) {
      const key = one.name.toLowerCase();
      const alike = this.names.get(key);
      if (alike) alike.push(one);
      else this.names.set(key, [one]);
    }
  }

  readonly isSheet = (name: string): boolean => this.sheetIndex.has(name.toLowerCase());

  prepare(formula: string, cell: FormulaCell): PreparedFormula {
    const work = new Work(this.book, this.sheetIndex, this.names, cell);
    return work.prepare(formula);
  }
}

/** Names that LET and LAMBDA of a formula give, as a file marks them. */
const OWN_NAME = /_xlpm\.([\p{L}_][\p{L}\p{N}_.]*)/giu;

class Work {
  /** In lower case. */
  private ownNames: ReadonlySet<string> = new Set();
  private distrust: string | undefined;
  private readonly writer: Writer;

  constructor(
    private readonly book: FormulaBook,
    private readonly sheetIndex: ReadonlyMap<string, number>,
    private readonly names: NamesByText,
    private readonly cell: FormulaCell,
  ) {
    const doubt = (reason: string): void => this.doubt(reason);
    this.writer = new Writer(new Places(book, sheetIndex, cell, doubt), book.is1904 === true, doubt);
  }

  private readonly isSheet = (name: string): boolean => this.sheetIndex.has(name.toLowerCase());

  prepare(formula: string): PreparedFormula {
    this.ownNames = new Set([...formula.matchAll(OWN_NAME)].map(([, name = ""]) => name.toLowerCase()));
    const segments = this.withoutNames(this.plain(formula), 0);
    const tree = treeOf(segments);
    if (!tree) {
      this.doubt("the formula cannot be taken apart");
      return this.result(formula, [], []);
    }
    const functions = functionsIn(tree);
    this.judge(functions, segments);
    const text = this.writer.write(tree, this.cell.isArray ? ARRAY : VALUE);
    return this.result(text, functions, tree);
  }

  private result(text: string, functions: readonly string[], tree: Expression): PreparedFormula {
    const root = onlyItem(tree);
    return {
      text,
      areas: this.writer.places.areas,
      isOurs: functions.some((name) => name.startsWith(`${NAMESPACE}.`)),
      distrust: this.distrust,
      isVolatile: functions.some(isVolatile),
      functions,
      rising: this.writer.rising,
      searched: this.writer.searched,
      operands: this.writer.operands,
      showsFirst: !this.cell.isArray && root?.kind === "call" && givesArray(root.name.toUpperCase()),
    };
  }

  /** The first reason counts. */
  private doubt(reason: string): void {
    this.distrust ??= reason;
  }

  private judge(functions: readonly string[], segments: readonly Segment[]): void {
    for (const name of functions) {
      if (isVolatile(name)) this.doubt(`${name} is volatile`);
    }
    for (const segment of segments) {
      if (segment.kind === "other" && segment.token.kind === "sheet") this.doubt(this.foreign(segment.text));
      else if (segment.text === "#" || segment.text === "@") this.doubt(`the operator ${segment.text} is not read`);
      else if (segment.kind === "other" && segment.token.kind === "bracket")
        this.doubt("a table it names is not found");
      else if (segment.kind === "other" && segment.token.kind === "unterminated")
        this.doubt("the formula does not end");
    }
  }

  /** A sheet before something that is no address. */
  private foreign(written: string): string {
    const isHere = this.isSheet(sheetName(written.slice(0, -1)));
    return isHere ? `the name behind ${written} is not read` : `${written} is not in this workbook`;
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
      if (/^(?:TRUE|FALSE)$/i.test(segment.text) || this.ownNames.has(segment.text.toLowerCase())) return [segment];
      const found = this.named(segment.text);
      if (!found) {
        this.doubt(`the name ${segment.text} is not defined`);
        return [segment];
      }
      if (depth >= MOST_NAMES_DEEP) {
        this.doubt(`the name ${segment.text} leads to itself`);
        return [segment];
      }
      const inside = this.inside(found, depth);
      if (inside.length === 1) return inside;
      return [...segmentsOf("(", this.isSheet), ...inside, ...segmentsOf(")", this.isSheet)];
    });
  }

  private inside(name: DefinedName, depth: number): Segment[] {
    if (ABSOLUTE.test(name.formula)) {
      const only = segmentsOf(name.formula, this.isSheet);
      if (only.length === 1 && only[0]?.kind !== "other") return only;
    }
    const { row, column } = this.cell;
    return this.withoutNames(moveFormula(this.plain(name.formula), row, column, this.isSheet), depth + 1);
  }

  private named(name: string): DefinedName | undefined {
    const all = this.names.get(name.toLowerCase()) ?? [];
    return all.find((one) => one.sheet === this.cell.sheet) ?? all.find((one) => one.sheet === undefined);
  }
}
