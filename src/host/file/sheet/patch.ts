/** Puts new saved values into the text of a worksheet part and leaves every other character as it is. */
import { encodeXstring, escapeText } from "../xml/read.js";
import type { FileCell, SavedValue } from "./scan.js";

/** A cell and the value it is to hold; null for none. */
export interface Patch {
  readonly cell: FileCell;
  readonly value: SavedValue;
}

/** The text of a part with these cells' saved values; the cells are those that the part's scan found. */
export function patchSheet(text: string, prefix: string, patches: readonly Patch[]): string {
  const ordered = [...patches].sort((a, b) => a.cell.start - b.cell.start);
  const pieces: string[] = [];
  let at = 0;
  for (const { cell, value } of ordered) {
    pieces.push(text.slice(at, cell.start), patchCell(text.slice(cell.start, cell.end), prefix, value));
    at = cell.end;
  }
  pieces.push(text.slice(at));
  return pieces.join("");
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
function numberText(value: number): string {
  return String(Object.is(value, -0) ? 0 : value).replace("e", "E");
}

const OPEN_TAG = /^<[^>"']*(?:"[^"]*"[^>"']*|'[^']*'[^>"']*)*>/;
const TYPE_ATTRIBUTE = /\s+t\s*=\s*(?:"[^"]*"|'[^']*')/;

/** One element c with another value. What stands between its parts stays. */
function patchCell(cell: string, prefix: string, value: SavedValue): string {
  const { type, text } = written(value);
  const opening = OPEN_TAG.exec(cell)?.[0] ?? "";
  const isSelfClosing = opening.endsWith("/>");
  const inside = isSelfClosing ? "" : cell.slice(opening.length, cell.lastIndexOf("</"));
  const closing = isSelfClosing ? `</${prefix}c>` : cell.slice(cell.lastIndexOf("</"));
  const tag = retyped(isSelfClosing ? `${opening.slice(0, -2).trimEnd()}>` : opening, type);
  return tag + revalued(inside, prefix, text) + closing;
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

/** The contents of a cell with another v: in the place of the old v or is, else behind the formula. */
function revalued(inside: string, prefix: string, text: string | undefined): string {
  const element = (name: string): RegExp =>
    new RegExp(`<${prefix}${name}(?:\\s[^>]*?)?(?:/>|>[\\s\\S]*?</${prefix}${name}\\s*>)`);
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
