/** XML as text: elements with their attributes in the order given, everything escaped on the way. */
import { encodeXstring, escapeAttribute, escapeText } from "../xml/read.js";

export const XML_HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';

export const MAIN = "http://schemas.openxmlformats.org/spreadsheetml/2006/main";
export const RELATIONSHIPS = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";

type Attributes = Readonly<Record<string, string | number | boolean | undefined>>;

/** An element; what is undefined is left out, true and false are 1 and 0. `inside` is XML already. */
export function element(name: string, attributes: Attributes = {}, ...inside: readonly string[]): string {
  const own = Object.entries(attributes)
    .filter(([, value]) => value !== undefined)
    .map(([key, value]) => ` ${key}="${escapeAttribute(String(typeof value === "boolean" ? Number(value) : value))}"`)
    .join("");
  return inside.length === 0 ? `<${name}${own}/>` : `<${name}${own}>${inside.join("")}</${name}>`;
}

/** A list with its count, or nothing where it is empty. */
export function counted(name: string, items: readonly string[]): string {
  return items.length === 0 ? "" : element(name, { count: items.length }, ...items);
}

/** Text of a workbook between tags, with the escapes of ST_Xstring. */
export function xstring(text: string): string {
  return escapeText(encodeXstring(text));
}

/** An element that holds a workbook's text; leading, trailing and doubled spaces are kept. */
export function textElement(name: string, text: string): string {
  const keeps = /^\s|\s$|\s\s|\n/.test(text);
  return element(name, keeps ? { "xml:space": "preserve" } : {}, xstring(text));
}
