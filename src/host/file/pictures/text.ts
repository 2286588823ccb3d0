/** An XML part of a package to be changed in a few places of its text, the rest left as it stands. */
import type { WorkbookPackage } from "../package/package.js";
import { FileRefused } from "../refusal.js";
import { decodeXml, localName, readXml, type Tag } from "../xml/read.js";

/** An element and where it stands in the text of its part. */
export interface Placed {
  readonly tag: Tag;
  readonly start: number;
  readonly end: number;
}

export interface Outline {
  readonly text: string;
  readonly root: Tag;
  /** Prefix of the root's name with its colon, or "". */
  readonly prefix: string;
  readonly children: readonly Placed[];
  /** Where a last child is put; undefined where the root closes itself. */
  readonly close: number | undefined;
  /** After the root's opening tag. */
  readonly inside: number;
}

/** @throws FileRefused where it is not in UTF-8, the encoding of every program that writes workbooks */
export function textToPatch(pack: WorkbookPackage, part: string): string {
  const { text, isUtf8 } = decodeXml(part, pack.bytes(part));
  if (!isUtf8) throw new FileRefused(`The part ${part} is not in UTF-8: save the workbook in Excel first.`);
  return text;
}

/** @param each is told of every element, however deep, and of the child of the root that it stands in */
export function outline(
  part: string,
  text: string,
  each: (tag: Tag, child: number) => void = () => undefined,
): Outline {
  let root: Tag | undefined;
  let inside = 0;
  let close: number | undefined;
  let depth = 0;
  let start = 0;
  let open: Tag | undefined;
  const children: Placed[] = [];
  readXml(part, text, {
    open: (tag, end) => {
      depth++;
      const from = text.lastIndexOf("<", end - 1);
      if (depth === 1) [root, inside] = [tag, end];
      if (depth === 2) [open, start] = [tag, from];
      if (depth > 1) each(tag, children.length);
    },
    close: (_name, end) => {
      if (depth === 2 && open) children.push({ tag: open, start, end });
      if (depth === 1 && root?.isSelfClosing !== true) close = text.lastIndexOf("<", end - 1);
      depth--;
    },
  });
  if (root === undefined) throw new FileRefused(`The part ${part} is empty: it is damaged.`);
  const prefix = root.name.slice(0, root.name.length - localName(root.name).length);
  return { text, root, prefix, children, close, inside };
}

export interface Edit {
  readonly start: number;
  readonly end: number;
  readonly text: string;
}

/** Edits that do not overlap, in any order. */
export function edited(text: string, edits: readonly Edit[]): string {
  let [result, at] = ["", 0];
  for (const { start, end, text: fresh } of [...edits].sort((a, b) => a.start - b.start || a.end - b.end)) {
    result += text.slice(at, start) + fresh;
    at = end;
  }
  return result + text.slice(at);
}

/** Puts children behind the last one. */
export function appended({ text, root, close, inside }: Outline, xml: string): Edit {
  if (close !== undefined) return { start: close, end: close, text: xml };
  const slash = text.lastIndexOf("/", inside);
  return { start: slash, end: inside, text: `>${xml}</${root.name}>` };
}
