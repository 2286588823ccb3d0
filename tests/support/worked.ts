/** A description as the file writer makes it and `recalc` works it out: values by sheet and address, by name, by column. */
import { describedBook } from "../../src/host/file/write/described.js";
import { packBook } from "../../src/host/file/write/package.js";
import { tableInfo } from "../../src/host/described-table.js";
import type { BookDescription } from "../../src/templates/contract.js";
import { Folder, recalc } from "./recalc.js";
import { all, partsOf, xmlOf } from "./package-rules.js";

export type Value = number | string | boolean | null;

export class Worked {
  private readonly sheets = new Map<string, Map<string, Value>>();
  /** Each spill's range by its first cell, by sheet. */
  readonly ranges = new Map<string, Map<string, string>>();
  readonly names: ReadonlyMap<string, string>;

  constructor(
    readonly bytes: Uint8Array,
    private readonly book: BookDescription,
  ) {
    const parts = partsOf(bytes);
    const strings = all(xmlOf(parts, "xl/sharedStrings.xml"), "si").map((item) =>
      all(item, "t")
        .map(({ text }) => text)
        .join(""),
    );
    const workbook = xmlOf(parts, "xl/workbook.xml");
    this.names = new Map(all(workbook, "definedName").map(({ attributes, text }) => [attributes.name!, text]));
    all(workbook, "sheet").forEach(({ attributes }, at) => {
      const values = new Map<string, Value>();
      const ranges = new Map<string, string>();
      for (const cell of all(xmlOf(parts, `xl/worksheets/sheet${at + 1}.xml`), "c")) {
        const formula = cell.children.find(({ name }) => name === "f");
        if (formula?.attributes.ref !== undefined) ranges.set(cell.attributes.r!, formula.attributes.ref);
        const raw = cell.children.find(({ name }) => name === "v")?.text;
        if (raw === undefined) continue;
        const kind = cell.attributes.t;
        values.set(
          cell.attributes.r!,
          kind === "s"
            ? (strings[Number(raw)] ?? "")
            : kind === "str" || kind === "e"
              ? raw
              : kind === "b"
                ? raw === "1"
                : Number(raw),
        );
      }
      this.sheets.set(attributes.name!, values);
      this.ranges.set(attributes.name!, ranges);
    });
  }

  /** Null where the cell is empty or not there. */
  cell(sheet: string, address: string): Value {
    return this.sheets.get(sheet)?.get(address) ?? null;
  }

  /** Of the first cell of a defined name. */
  named(name: string): Value {
    const [, sheet, address] = /^'(.+)'!([^:]+)/.exec(this.names.get(name) ?? "") ?? [];
    return this.cell(sheet ?? "", (address ?? "").replaceAll("$", ""));
  }

  /** A column of a table's sheet, typed or computed, by its key; as many rows as the description has. */
  column(tableName: string, key: string): Value[] {
    for (const sheet of this.book.sheets) {
      if (sheet.kind !== "table" || sheet.tableName !== tableName) continue;
      const { columns, firstRow, lastRow } = tableInfo(sheet.name, sheet);
      const column = columns.find((one) => one.key === key)?.column;
      if (column === undefined) break;
      const letters = lettersOf(column);
      return Array.from({ length: lastRow - firstRow + 1 }, (_, i) =>
        this.cell(sheet.name, `${letters}${firstRow + 1 + i}`),
      );
    }
    throw new Error(`no column ${tableName}[${key}]`);
  }

  /** Rows of values from a cell to another, both included. */
  block(sheet: string, from: string, to: string): Value[][] {
    const [first, last] = [from, to].map((address) => /^([A-Z]+)(\d+)$/.exec(address)!);
    const [c0, c1] = [first, last].map((match) => numberOf(match![1]!));
    const [r0, r1] = [first, last].map((match) => Number(match![2]));
    return Array.from({ length: r1! - r0! + 1 }, (_, r) =>
      Array.from({ length: c1! - c0! + 1 }, (__, c) => this.cell(sheet, `${lettersOf(c0! + c)}${r0! + r}`)),
    );
  }

  /** Every error value of the workbook, by sheet and address. */
  errors(): string[] {
    return [...this.sheets].flatMap(([sheet, cells]) =>
      [...cells].flatMap(([address, value]) =>
        typeof value === "string" && /^#(N\/A|[A-Z0/]+[!?])$/.test(value) ? [`${sheet}!${address} ${value}`] : [],
      ),
    );
  }
}

function lettersOf(column: number): string {
  let [letters, rest] = ["", column + 1];
  for (; rest > 0; rest = Math.floor((rest - 1) / 26)) letters = String.fromCharCode(65 + ((rest - 1) % 26)) + letters;
  return letters;
}

function numberOf(letters: string): number {
  return [...letters].reduce((sum, letter) => sum * 26 + letter.charCodeAt(0) - 64, 0) - 1;
}

/** @throws where a formula cannot be worked out */
export async function workedOut(book: BookDescription): Promise<Worked> {
  const folder = new Folder();
  try {
    const [from, to] = [folder.put("in.xlsx", packBook(describedBook(book))), folder.at("out.xlsx")];
    const { status, stdout, stderr } = await recalc(["--all", "-o", to, from]);
    if (status !== 0 || !stdout.includes(" 0 kept")) throw new Error(`recalc: ${stdout} ${stderr}`);
    return new Worked(folder.read("out.xlsx"), book);
  } finally {
    folder.remove();
  }
}
