/** Reads the XML of a package: well-formed or refused, without a document type, with the place of every tag in the text. */
import { SaxesParser } from "saxes";
import { FileRefused } from "../refusal.js";
import { ZIP_LIMITS } from "../zip/limits.js";

/** An element as it is met: its name with prefix, its attributes with theirs. */
export interface Tag {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly isSelfClosing: boolean;
}

export interface XmlHandlers {
  /** `end` is the place after the tag's ">". */
  readonly open?: (tag: Tag, end: number) => void;
  /** `end` is the place after the closing tag's ">"; for a self-closing tag that of the tag itself. */
  readonly close?: (name: string, end: number) => void;
  /** Text with its references resolved; may come in pieces. CDATA too. */
  readonly text?: (text: string) => void;
}

/** The encoding that the declaration of a part names. */
const DECLARED = /^(?:\u00ef\u00bb\u00bf)?<\?xml[^>]*?\sencoding\s*=\s*["']([^"']*)/;

const decodeUtf8 = new TextDecoder("utf-8", { fatal: true, ignoreBOM: true });

/**
 * The text of a part. What is not UTF-8 is decoded for reading only: `isUtf8` tells whether it can be patched.
 * @throws FileRefused where it is no text
 */
export function decodeXml(part: string, bytes: Uint8Array): { text: string; isUtf8: boolean } {
  try {
    if (bytes[0] === 0xff && bytes[1] === 0xfe)
      return { text: new TextDecoder("utf-16le", { fatal: true }).decode(bytes), isUtf8: false };
    if (bytes[0] === 0xfe && bytes[1] === 0xff)
      return { text: new TextDecoder("utf-16be", { fatal: true }).decode(bytes), isUtf8: false };
    const [, encoding = "utf-8"] = DECLARED.exec(String.fromCharCode(...bytes.subarray(0, 200))) ?? [];
    // What is neither of these is UTF-8 all the same, or it would not be decoded: some programs declare UTF-16 and write UTF-8.
    if (/^(?:iso-8859|windows)-\d+$/i.test(encoding))
      return { text: new TextDecoder(encoding, { fatal: true }).decode(bytes), isUtf8: false };
    return { text: decodeUtf8.decode(bytes), isUtf8: true };
  } catch {
    throw new FileRefused(`The part ${part} is not readable text.`);
  }
}

/**
 * Goes through the XML of a part.
 * @throws FileRefused where it is not well-formed, has a document type or entities of its own
 */
export function readXml(part: string, text: string, { open, close, text: onText }: XmlHandlers): void {
  const parser = new SaxesParser({ xmlns: false, position: false });
  parser.on("error", (error) => {
    throw new FileRefused(`The part ${part} is not well-formed XML (${error.message}).`);
  });
  parser.on("doctype", () => {
    throw new FileRefused(`The part ${part} has a document type, which no workbook needs: not read.`);
  });
  let depth = 0;
  parser.on("opentag", (tag) => {
    if (++depth > ZIP_LIMITS.depth) {
      throw new FileRefused(`The part ${part} has elements nested deeper than ${ZIP_LIMITS.depth} levels: not read.`);
    }
    open?.(tag, parser.position);
  });
  parser.on("closetag", ({ name }) => {
    depth--;
    close?.(name, parser.position);
  });
  if (onText) {
    parser.on("text", onText);
    parser.on("cdata", onText);
  }
  parser.write(text).close();
}

/** The name without its prefix. */
export function localName(name: string): string {
  const colon = name.indexOf(":");
  return colon < 0 ? name : name.slice(colon + 1);
}

/** An attribute by its local name, whatever its prefix; undefined where absent. */
export function attribute({ attributes }: Tag, local: string): string | undefined {
  const own = attributes[local];
  if (own !== undefined) return own;
  const name = Object.keys(attributes).find((key) => localName(key) === local);
  return name === undefined ? undefined : attributes[name];
}

const TRUE = new Set(["1", "true", "on"]);

/** A boolean attribute as the schema writes it. */
export function isTrue(value: string | undefined): boolean {
  return value !== undefined && TRUE.has(value);
}

/** Text of a workbook's string with its escapes: _x000D_ is a carriage return (ECMA-376, 22.9.2.19, ST_Xstring). */
export function decodeXstring(text: string): string {
  return text.includes("_x")
    ? text.replace(/_x([0-9A-Fa-f]{4})_/g, (_, hex: string) => String.fromCharCode(parseInt(hex, 16)))
    : text;
}

/** The same backwards, for what XML 1.0 cannot hold and for text that would read as an escape. */
export function encodeXstring(text: string): string {
  return text
    .replace(/_(?=x[0-9A-Fa-f]{4}_)/g, "_x005F_")
    .replace(
      /[\u0000-\u0008\u000b\u000c\u000d\u000e-\u001f\ufffe\uffff]/g,
      (c) => `_x${c.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}_`,
    );
}

/** Text as it stands between tags. */
export function escapeText(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

/** Text as it stands between double quotes. */
export function escapeAttribute(text: string): string {
  return escapeText(text)
    .replaceAll('"', "&quot;")
    .replaceAll("\n", "&#10;")
    .replaceAll("\t", "&#9;")
    .replaceAll("\r", "&#13;");
}
