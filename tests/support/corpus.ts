/** Real workbooks of other projects, beside the checkout: read where they lie, by their terms never copied into the project. */
import { unzipSync, zipSync } from "fflate";
import { existsSync, readFileSync } from "node:fs";
import path from "node:path";

export const folder = path.join(process.env.GREYBODY_SHARED ?? "", "data/xlsx");
export const isThere = existsSync(path.join(folder, "index.json"));

export interface CorpusFile {
  readonly file: string;
  readonly kind: "good" | "bad";
  readonly formulas: number;
  /** A right recalculation gives every saved value again. */
  readonly recalc_equal?: boolean | null;
  /** Which saved values are right. */
  readonly compare?: "all" | "listed" | "none";
  /** "Sheet!A1" */
  readonly not_compared?: readonly string[];
}

export function corpus(kind: CorpusFile["kind"]): readonly CorpusFile[] {
  if (!isThere) return [];
  const index = JSON.parse(readFileSync(path.join(folder, "index.json"), "utf8")) as CorpusFile[];
  return index.filter((one) => one.kind === kind);
}

export const read = (file: string): Uint8Array => new Uint8Array(readFileSync(path.join(folder, file)));

const CELL = /<((?:\w+:)?)c\b(?:[^>"']|"[^"]*"|'[^']*')*(?<!\/)>[^]*?<\/\1c>/g;
const VALUE = /<((?:\w+:)?)(v|is)\b[^>]*(?:\/>|>[^]*?<\/\1\2>)/g;
const TYPE = /(<(?:\w+:)?c\b[^>]*?)\s+t=(?:"[^"]*"|'[^']*')/;

const EMPTY = /<((?:\w+:)?)c r=(?:"[^"]*"|'[^']*')><\/\1c>/g;

/** A part without what a recalculation may change: the saved values and their types, and cells that hold nothing else. */
export const withoutValues = (xml: string): string =>
  xml.replace(CELL, (cell) => cell.replace(TYPE, "$1").replace(VALUE, "")).replace(EMPTY, "");

/** A copy of the workbook, in memory, whose formula cells have no saved value. */
export function stripped(bytes: Uint8Array): Uint8Array {
  const parts = unzipSync(bytes);
  const decoder = new TextDecoder();
  for (const [name, contents] of Object.entries(parts)) {
    if (!/sheet[^/]*\.xml$/i.test(name)) continue;
    const xml = decoder.decode(contents);
    const bare = xml.replace(CELL, (cell) =>
      /<(?:\w+:)?f\b/.test(cell) ? cell.replace(TYPE, "$1").replace(VALUE, "") : cell,
    );
    if (bare !== xml) parts[name] = new TextEncoder().encode(bare);
  }
  return zipSync(parts, { level: 1 });
}
