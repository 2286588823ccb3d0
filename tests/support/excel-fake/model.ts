/** A workbook's cells as Excel keeps them, with as much calculation as one call of our functions needs. */
import { isCellError, type Grid, type Input } from "../../../src/functions/contract.js";
import { findFunction } from "../../../src/functions/catalogue.js";
import type { KeptMessages } from "../../../src/host/excel/messages.js";
import { fromExcel } from "../../../src/host/excel/values.js";
import { ExcelError } from "./client.js";

export type Value = number | string | boolean;

export interface Box {
  readonly sheet: SheetModel;
  readonly row: number;
  readonly column: number;
  readonly rows: number;
  readonly columns: number;
}

export interface TableModel {
  name: string;
  box: Box;
}

export interface ShapeModel {
  name: string;
  altTextDescription: string;
  left: number;
  top: number;
  width: number;
  height: number;
  rotation: number;
  lockAspectRatio: boolean;
  placement: string;
  readonly image: string;
}

export class SheetModel {
  shapes: ShapeModel[] = [];
  readonly inputs = new Map<string, Value>();
  readonly values = new Map<string, Value>();
  /** Where the formula stands that spilled into a cell. */
  readonly anchors = new Map<string, string>();
  readonly hidden = new Set<number>();

  constructor(public name: string) {}

  enter(row: number, column: number, given: unknown): void {
    const key = `${row},${column}`;
    this.inputs.delete(key);
    if (given === "" || given === null) return;
    if (typeof given === "string" && given.startsWith("=")) this.inputs.set(key, given);
    else if (typeof given === "string" && given.startsWith("'")) this.inputs.set(key, `\u0000${given.slice(1)}`);
    // What looks like a date or a number is taken for one.
    else if (typeof given === "string" && /^\d+-\d+$/.test(given)) this.inputs.set(key, 45_000);
    else if (typeof given === "string" && given.trim() !== "" && Number.isFinite(Number(given)))
      this.inputs.set(key, Number(given));
    else this.inputs.set(key, given as Value);
  }

  /** A spilled cell tells the formula of its anchor: whether Excel's does is not known, so the harder case is taken. */
  input(row: number, column: number): Value {
    const key = `${row},${column}`;
    const input = this.inputs.get(key) ?? this.inputs.get(this.anchors.get(key) ?? "") ?? "";
    return typeof input === "string" && input.startsWith("\u0000") ? input.slice(1) : input;
  }

  value(row: number, column: number): Value {
    return this.values.get(`${row},${column}`) ?? "";
  }

  used(): { row: number; column: number; rows: number; columns: number } | undefined {
    const places = [...this.values.keys()].map((key) => key.split(",").map(Number) as [number, number]);
    if (places.length === 0) return undefined;
    const [rows, columns] = [places.map(([row]) => row), places.map(([, column]) => column)];
    const [row, column] = [Math.min(...rows), Math.min(...columns)];
    return { row, column, rows: Math.max(...rows) - row + 1, columns: Math.max(...columns) - column + 1 };
  }
}

export class BookModel {
  sheets: SheetModel[] = [];
  tables: TableModel[] = [];
  readonly names = new Map<string, Box>();
  /** Names that mean a formula, no cells of a single range. */
  readonly formulas = new Map<string, { formula: string; visible: boolean }>();
  readonly settings = new Map<string, unknown>();
  active: { sheet: SheetModel; row: number; column: number };

  constructor(private readonly kept: KeptMessages) {
    const first = new SheetModel("Sheet1");
    this.sheets.push(first);
    this.active = { sheet: first, row: 0, column: 0 };
  }

  sheet(name: string): SheetModel | undefined {
    return this.sheets.find((sheet) => sheet.name.toLowerCase() === name.toLowerCase());
  }

  recalculate(): void {
    for (const sheet of this.sheets) {
      sheet.values.clear();
      sheet.anchors.clear();
      for (const [key, input] of sheet.inputs)
        if (typeof input !== "string" || !input.startsWith("="))
          sheet.values.set(key, typeof input === "string" ? input.replace("\u0000", "") : input);
    }
    for (const sheet of this.sheets)
      for (const [key, input] of sheet.inputs)
        if (typeof input === "string" && input.startsWith("=")) this.spill(sheet, key, input);
  }

  private spill(sheet: SheetModel, key: string, formula: string): void {
    const [row, column] = key.split(",").map(Number) as [number, number];
    const result = this.evaluate(formula, `'${sheet.name}'!${letter(column)}${row + 1}`);
    result.forEach((cells, r) => {
      cells.forEach((cell, c) => {
        const value = isCellError(cell) ? cell.error : (cell ?? 0);
        sheet.values.set(`${row + r},${column + c}`, value);
        sheet.anchors.set(`${row + r},${column + c}`, key);
      });
    });
  }

  /** One call of ours over numbers, texts, names and table columns; of anything else only that it was there. */
  private evaluate(formula: string, address: string): Grid {
    const [, name, inner] = /^=GREY\.(\w+)\(([^()]*)\)$/.exec(formula) ?? [];
    const spec = name === undefined ? undefined : findFunction(name);
    if (spec === undefined || inner === undefined) return [["not worked out by the fake"]];
    const result = spec.evaluate(inner === "" ? [] : inner.split(",").map((written) => this.argument(written.trim())));
    this.kept.keep(address, spec.name, result);
    return result;
  }

  private argument(written: string): Input {
    if (written === "") return undefined;
    if (/^".*"$/.test(written)) return written.slice(1, -1);
    if (Number.isFinite(Number(written))) return Number(written);
    const name = this.names.get(written);
    if (name !== undefined) return fromExcel(this.matrix(name));
    const [, table, header] = /^(\w+)\[(.+)\]$/.exec(written) ?? [];
    const { box } = this.tables.find((one) => one.name === table) ?? {};
    if (box === undefined) return { error: "#NAME?", message: "" };
    const at = Array.from({ length: box.columns }, (_, c) => box.sheet.value(box.row, box.column + c)).indexOf(
      header ?? "",
    );
    return fromExcel(
      this.matrix({ ...box, row: box.row + 1, rows: box.rows - 1, column: box.column + at, columns: 1 }),
    );
  }

  /** An empty cell of a range reaches a custom function as 0. */
  private matrix({ sheet, row, column, rows, columns }: Box): Value[][] {
    return Array.from({ length: rows }, (_, r) =>
      Array.from({ length: columns }, (_c, c) => sheet.values.get(`${row + r},${column + c}`) ?? 0),
    );
  }
}

/** What Excel refuses at once: parentheses that do not match. */
export function checkFormula(given: unknown): void {
  if (typeof given !== "string" || !given.startsWith("=")) return;
  const depth = [...given].reduce((open, char) => open + (char === "(" ? 1 : char === ")" ? -1 : 0), 0);
  if (depth !== 0) throw new ExcelError("InvalidArgument");
}

export function letter(column: number): string {
  return String.fromCharCode(65 + column);
}
