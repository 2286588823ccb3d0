/**
 * The same as scan.ts for a part in the form that nearly every program writes, several times as fast. What is met in any
 * other form, well-formed or not, is left to the XML reader: nothing is passed here that it would refuse.
 */
import { columnIndex } from "../../reference.js";
import { isTrue, readXml } from "../xml/read.js";
import { valueOf } from "./cells.js";
import type { CellSink, FileCell, FileRow, FormulaElement, ScannedSheet } from "./cells.js";

const OPEN = "<sheetData>";
const CLOSE = "</sheetData>";
/** What XML cannot hold, what it would change, and what ends a CDATA section that has none. */
const ODD = /[\u0000-\u0008\u000b-\u001f\ufffe\uffff]|\]\]>/;

const SPACE = /[ \t\n]*/y;
/** Excel writes t before cm, our own writer behind it. */
const CELL =
  /<c r="([A-Z]{1,3})([1-9]\d{0,6})"(?: s="\d+")?(?: cm="(\d+)")?(?: t="([a-zA-Z]+)")?(?: cm="(\d+)")?(?: vm="(\d+)")?(\/?)>/y;
const ROW = /<row r="([1-9]\d{0,6})"((?: [A-Za-z_][\w:]*="[^"<&\t\n]*")*) ?(\/?)>/y;
const FORMULA = /<f((?: [A-Za-z_][\w:]*="[^"<&\t\n]*")*)(\/?)>/y;
const ATTRIBUTE = / ([\w:]+)="([^"<&\t\n]*)"/g;
const VALUE = /<v(?: xml:space="preserve")?>([^<&]*)<\/v>/y;
const INLINE = /<is><t(?: xml:space="preserve")?>([^<]*)<\/t><\/is>/y;
const TEXT = /([^<]*)<\/f>/y;
const REFERENCE = /&(?:amp|lt|gt|quot|apos|#[1-9]\d{1,4}|#x[0-9a-fA-F]{2,4});/g;
const NAMED: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', apos: "'" };

/** Characters below the space that a reference may name: tab and ends of line. */
const LINE = new Set([9, 10, 13]);

/** Thrown where the form is another one. */
class Unusual extends Error {}

/** undefined where the part has to be read by the XML reader */
export function scanQuickly(
  part: string,
  text: string,
  sharedStrings: readonly string[],
  sink: CellSink,
): ScannedSheet | undefined {
  const start = text.indexOf(OPEN);
  const end = text.indexOf(CLOSE, start);
  if (start < 0 || end < 0 || text.includes(OPEN, start + 1) || text.includes(CLOSE, end + 1)) return undefined;
  if (ODD.test(text) || !isWellFormedAround(part, text.slice(0, start), text.slice(end + CLOSE.length)))
    return undefined;
  try {
    const rows = new Scan(text, end, sharedStrings, sink).rows(start + OPEN.length);
    return { rows, dataEnd: end, prefix: "" };
  } catch (error) {
    if (error instanceof Unusual) return undefined;
    throw error;
  }
}

/** What stands around the rows, read by the XML reader as if there were none. */
function isWellFormedAround(part: string, before: string, after: string): boolean {
  const path: string[] = [];
  let isInPlace = false;
  readXml(part, `${before}<sheetData/>${after}`, {
    open: ({ name }) => {
      if (name === "sheetData") isInPlace = path.length === 1 && path[0] === "worksheet";
      path.push(name);
    },
    close: () => path.pop(),
  });
  return isInPlace;
}

class Scan {
  private at = 0;

  constructor(
    private readonly text: string,
    private readonly end: number,
    private readonly sharedStrings: readonly string[],
    private readonly sink: CellSink,
  ) {}

  rows(from: number): FileRow[] {
    const rows: FileRow[] = [];
    this.at = from;
    for (;;) {
      this.space();
      if (this.at === this.end) return rows;
      const start = this.at;
      const [, number, attributes = "", slash] = this.take(ROW);
      const all = requireOnce(attributes, "r");
      const inside = this.at;
      const isSelfClosing = slash === "/";
      if (!isSelfClosing) this.cells();
      const close = isSelfClosing ? inside : this.at;
      if (!isSelfClosing) this.at += "</row>".length;
      rows.push({ row: Number(number) - 1, inside, close, start, isSelfClosing, isHidden: isTrue(all.get("hidden")) });
    }
  }

  /** Up to the closing tag of the row. */
  private cells(): void {
    for (;;) {
      this.space();
      if (this.text.startsWith("</row>", this.at)) return;
      this.sink.cell(this.cell());
    }
  }

  private cell(): FileCell {
    const start = this.at;
    const [, letters = "", digits, before, type, behind, vm, slash] = this.take(CELL);
    if (before !== undefined && behind !== undefined) throw new Unusual();
    const cm = before ?? behind;
    let formula: FormulaElement | undefined;
    let value: string | undefined;
    let inline: string | undefined;
    if (slash !== "/") {
      this.space();
      if (this.startsWith("<f")) formula = this.formula();
      this.space();
      if (this.startsWith("<v/>")) {
        value = "";
        this.at += 4;
      } else if (this.startsWith("<v")) value = this.value();
      else if (this.startsWith("<is>")) inline = decoded(this.take(INLINE)[1]!);
      this.space();
      if (!this.startsWith("</c>")) throw new Unusual();
      this.at += 4;
    }
    return {
      row: Number(digits) - 1,
      column: columnIndex(letters),
      value: valueOf({ type, value, inline, formula }, this.sharedStrings),
      type,
      formula,
      cellMetadata: cm === undefined ? 0 : Number(cm),
      valueMetadata: vm === undefined ? 0 : Number(vm),
      start,
      end: this.at,
    };
  }

  private value(): string {
    VALUE.lastIndex = this.at;
    const match = VALUE.exec(this.text);
    if (match) {
      this.at = VALUE.lastIndex;
      return match[1]!;
    }
    const open = this.text.startsWith("<v>", this.at) ? 3 : '<v xml:space="preserve">'.length;
    const close = this.text.indexOf("<", this.at + open);
    if ((open > 3 && !this.startsWith('<v xml:space="preserve">')) || !this.text.startsWith("</v>", close)) {
      throw new Unusual();
    }
    const value = decoded(this.text.slice(this.at + open, close));
    this.at = close + 4;
    return value;
  }

  private formula(): FormulaElement {
    const [, attributes = "", slash] = this.take(FORMULA);
    let kind: FormulaElement["kind"] = "normal";
    let ref: string | undefined;
    let sharedIndex: string | undefined;
    if (attributes !== "") {
      const all = requireOnce(attributes);
      const type = all.get("t");
      if (type === "array" || type === "shared" || type === "dataTable") kind = type;
      ref = all.get("ref");
      sharedIndex = all.get("si");
    }
    const text = slash === "/" ? "" : decoded(this.take(TEXT)[1]!);
    return { text, kind, ref, sharedIndex };
  }

  private take(pattern: RegExp): RegExpExecArray {
    pattern.lastIndex = this.at;
    const match = pattern.exec(this.text);
    if (!match) throw new Unusual();
    this.at = pattern.lastIndex;
    return match;
  }

  private startsWith(start: string): boolean {
    return this.text.startsWith(start, this.at);
  }

  private space(): void {
    if (this.text.charCodeAt(this.at) === 0x3c) return;
    SPACE.lastIndex = this.at;
    SPACE.exec(this.text);
    this.at = SPACE.lastIndex;
  }
}

/** Attributes by name; one that stands twice is not well-formed. */
function requireOnce(attributes: string, ...taken: string[]): Map<string, string> {
  const all = new Map<string, string>(taken.map((name) => [name, ""]));
  for (const [, name = "", value = ""] of attributes.matchAll(ATTRIBUTE)) {
    if (all.has(name)) throw new Unusual();
    all.set(name, value);
  }
  return all;
}

function decoded(text: string): string {
  if (!text.includes("&")) return text;
  let references = 0;
  const plain = text.replace(REFERENCE, (reference) => {
    references++;
    const name = reference.slice(1, -1);
    if (!name.startsWith("#")) return NAMED[name]!;
    const code = name.startsWith("#x") ? parseInt(name.slice(2), 16) : Number(name.slice(1));
    if ((code < 0x20 && !LINE.has(code)) || (code >= 0xd800 && code <= 0xdfff) || code >= 0xfffe) throw new Unusual();
    return String.fromCharCode(code);
  });
  if (references !== text.split("&").length - 1) throw new Unusual();
  return plain;
}
