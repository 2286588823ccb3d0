/** Puts new saved values into the text of a worksheet part and leaves every other character as it is. */
import { columnLetters } from "../../embedded/structured.js";
import { encodeXstring, escapeText } from "../xml/read.js";
import type { FileCell, FileRow, SavedValue } from "./cells.js";

/** A cell of the sheet and the value it is to hold; null for none. A new extent goes into the attribute ref of its f. */
export interface Patch {
  readonly row: number;
  readonly column: number;
  readonly value: SavedValue;
  /** Where the cell stands in the text; undefined for one that the part does not have yet. */
  readonly cell: FileCell | undefined;
  /** Another range of an array formula. */
  readonly extent?: string | undefined;
}

/** The text to work on and where its rows are. */
export interface SheetText {
  readonly text: string;
  readonly prefix: string;
  readonly rows: readonly FileRow[];
  readonly dataEnd: number;
  /** The cells of the part by row, to find the place of a new one. */
  readonly cellsOf: (row: number) => readonly FileCell[];
}

interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** Among edits of one place. */
  readonly order: number;
}

/** The text of a part with these values, in pieces: of a large one there is no second copy. */
export function patchSheet(sheet: SheetText, patches: readonly Patch[]): string[] {
  const { text } = sheet;
  const edits = [...changedCells(sheet, patches), ...newCells(sheet, patches)];
  edits.sort((a, b) => a.start - b.start || a.order - b.order);
  const pieces: string[] = [];
  let at = 0;
  for (const edit of edits) {
    pieces.push(text.slice(at, edit.start), edit.text);
    at = edit.end;
  }
  pieces.push(text.slice(at));
  return pieces;
}

function changedCells({ text, prefix }: SheetText, patches: readonly Patch[]): Edit[] {
  const edits: Edit[] = [];
  for (const { cell, value, extent } of patches) {
    if (!cell) continue;
    const { start, end, type } = cell;
    const number = typeof value === "number" && type === undefined && extent === undefined && cell.valueMetadata === 0;
    const place = number ? numberPlace(text, start, end) : undefined;
    // Behind new cells that come before this one in its row.
    const order = Infinity;
    if (place) edits.push({ ...place, text: numberText(value as number), order });
    else edits.push({ start, end, text: patchCell(text.slice(start, end), prefix, value, extent), order });
  }
  return edits;
}

const CELL_END = "</v></c>";

/** Where the number of a cell stands that is written in the usual way; only that is replaced then. */
function numberPlace(text: string, start: number, end: number): { start: number; end: number } | undefined {
  if (!text.endsWith(CELL_END, end)) return undefined;
  const close = end - CELL_END.length;
  const open = text.lastIndexOf("<", close - 1);
  // A comment or a CDATA section in it is not the usual way.
  const isPlain = open > start && text.startsWith("<v>", open) && text.indexOf(">", open + 3) > close;
  return isPlain ? { start: open + 3, end: close } : undefined;
}

/** Cells that a result has grown into: each in its row before the next one, rows that are absent made. */
function newCells(sheet: SheetText, patches: readonly Patch[]): Edit[] {
  const { prefix, rows, dataEnd, text } = sheet;
  const byRow = new Map<number, Patch[]>();
  for (const patch of patches) {
    if (patch.cell || patch.value === null) continue;
    byRow.set(patch.row, [...(byRow.get(patch.row) ?? []), patch]);
  }
  return [...byRow].flatMap(([row, own]): Edit[] => {
    const cells = [...own].sort((a, b) => a.column - b.column);
    const there = rows.find((one) => one.row === row);
    if (there && !there.isSelfClosing) {
      return cells.map((patch) => {
        const next = sheet.cellsOf(row).find((cell) => cell.column > patch.column);
        const place = next?.start ?? there.close;
        return { start: place, end: place, text: cellText(patch, prefix), order: patch.column };
      });
    }
    const inside = cells.map((patch) => cellText(patch, prefix)).join("");
    if (there) {
      const opening = text.slice(there.start, there.close).replace(/\s*\/>$/, ">");
      return [{ start: there.start, end: there.close, text: `${opening}${inside}</${prefix}row>`, order: 0 }];
    }
    const next = rows.find((one) => one.row > row);
    const place = next?.start ?? dataEnd;
    if (place < 0) return [];
    const made = `<${prefix}row r="${row + 1}">${inside}</${prefix}row>`;
    return [{ start: place, end: place, text: made, order: row }];
  });
}

function cellText({ row, column, value }: Patch, prefix: string): string {
  return patchCell(`<${prefix}c r="${columnLetters(column)}${row + 1}"/>`, prefix, value);
}

/** How a value is written: the attribute t and the contents of v. */
function written(value: SavedValue): { type: string | undefined; text: string | undefined } {
  if (value === null) return { type: undefined, text: undefined };
  if (typeof value === "number") return { type: undefined, text: numberText(value) };
  if (typeof value === "boolean") return { type: "b", text: value ? "1" : "0" };
  if (typeof value === "string") return { type: "str", text: escapeText(encodeXstring(value)) };
  return { type: "e", text: escapeText(value.error) };
}

/** The shortest text that gives the same double; Excel writes exponents with a capital E. */
export function numberText(value: number): string {
  return String(Object.is(value, -0) ? 0 : value).replace("e", "E");
}

const OPEN_TAG = /^<[^>"']*(?:"[^"]*"[^>"']*|'[^']*'[^>"']*)*>/;
const TYPE_ATTRIBUTE = /\s+t\s*=\s*(?:"[^"]*"|'[^']*')/;
/** Points to what more there is to the old value, such as which error #VALUE! stands for. */
const VALUE_METADATA = /\s+vm\s*=\s*(?:"[^"]*"|'[^']*')/;

/** What may hold tags that are none: comments, CDATA sections, processing instructions. */
const HIDING = /<!--[\s\S]*?-->|<!\[CDATA\[[\s\S]*?\]\]>|<\?[\s\S]*?\?>/g;
/** No text of XML holds this character. */
const HIDDEN = "\u0000";

/** One element c with another value. What stands between its parts stays. */
function patchCell(cell: string, prefix: string, value: SavedValue, extent?: string): string {
  const hidden: string[] = [];
  const plain = cell.replace(HIDING, (piece) => `${HIDDEN}${hidden.push(piece) - 1}${HIDDEN}`);
  const patched = patchPlain(plain, prefix, value, extent);
  if (hidden.length === 0) return patched;
  return patched
    .split(HIDDEN)
    .map((piece, i) => (i % 2 === 0 ? piece : hidden[Number(piece)]!))
    .join("");
}

function patchPlain(cell: string, prefix: string, value: SavedValue, extent?: string): string {
  const { type, text } = written(value);
  const opening = OPEN_TAG.exec(cell)?.[0] ?? "";
  const isSelfClosing = opening.endsWith("/>");
  const inside = isSelfClosing ? "" : cell.slice(opening.length, cell.lastIndexOf("</"));
  const closing = isSelfClosing ? `</${prefix}c>` : cell.slice(cell.lastIndexOf("</"));
  const open = isSelfClosing ? `${opening.slice(0, -2).trimEnd()}>` : opening;
  const tag = retyped(open.replace(VALUE_METADATA, ""), type);
  return tag + revalued(extent === undefined ? inside : extended(inside, prefix, extent), prefix, text) + closing;
}

/** An opening tag with another attribute t, in its place where it had one. */
function retyped(opening: string, type: string | undefined): string {
  const had = TYPE_ATTRIBUTE.exec(opening);
  if (had) {
    const [old] = had;
    const quote = old.at(-1) ?? '"';
    const fresh = type === undefined ? "" : ` t=${quote}${type}${quote}`;
    return opening.slice(0, had.index) + fresh + opening.slice(had.index + old.length);
  }
  return type === undefined ? opening : `${opening.slice(0, -1)} t="${type}">`;
}

/** The contents of a cell with another range in the attribute ref of its f. */
function extended(inside: string, prefix: string, extent: string): string {
  return inside.replace(new RegExp(`(<${prefix}f\\b[^>]*?\\sref\\s*=\\s*)(["'])[^"']*\\2`), `$1$2${extent}$2`);
}

const elements = new Map<string, RegExp>();

/** Matches a whole element of this name. */
function elementOf(name: string): RegExp {
  let known = elements.get(name);
  if (!known) {
    known = new RegExp(`<${name}(?:\\s[^>]*?)?(?:/>|>[\\s\\S]*?</${name}\\s*>)`);
    elements.set(name, known);
  }
  return known;
}

/** The contents of a cell with another v: in the place of the old v or is, else behind the formula. */
function revalued(inside: string, prefix: string, text: string | undefined): string {
  const element = (name: string): RegExp => elementOf(prefix + name);
  const space = text !== undefined && /^\s|\s$|\n/.test(text) ? ' xml:space="preserve"' : "";
  const fresh = text === undefined ? "" : `<${prefix}v${space}>${text}</${prefix}v>`;
  const formula = element("f").exec(inside);
  const after = formula ? formula.index + formula[0].length : 0;
  const [before, rest] = [inside.slice(0, after), inside.slice(after)];
  const old = element("v").exec(rest) ?? element("is").exec(rest);
  if (!old) return before + fresh + rest;
  const kept = rest.slice(0, old.index) + fresh + rest.slice(old.index + old[0].length);
  // A cell may hold both, v and is: one value is enough.
  const inline = element("is").exec(kept);
  return before + (inline ? kept.slice(0, inline.index) + kept.slice(inline.index + inline[0].length) : kept);
}
