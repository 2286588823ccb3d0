/** What a part points to, and content types: read, and written with a few lines more or less. */
import type { WorkbookPackage } from "../package/package.js";
import { element, RELATIONSHIPS, XML_HEAD } from "../write/element.js";
import { relationshipsXml } from "../write/parts.js";
import { attribute, localName } from "../xml/read.js";
import { appended, type Edit, edited, outline, textToPatch } from "./text.js";

export interface Pointed {
  readonly id: string;
  readonly kind: "drawing" | "image";
  /** From the folder of the part that points. */
  readonly target: string;
}

export function relationsPart(part: string): string {
  const slash = part.lastIndexOf("/") + 1;
  return `${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`;
}

/** An id that none of these has. */
export function freeId(taken: ReadonlySet<string>): string {
  let number = taken.size + 1;
  while (taken.has(`rId${number}`)) number++;
  return `rId${number}`;
}

/** The text of a part's relationships with some added and some gone. */
export function changedRelations(
  pack: WorkbookPackage,
  part: string,
  added: readonly Pointed[],
  gone: ReadonlySet<string> = new Set(),
): string {
  const file = relationsPart(part);
  if (!pack.has(file)) return relationshipsXml(added);
  const text = textToPatch(pack, file);
  const whole = outline(file, text);
  const cut = whole.children
    .filter(({ tag }) => gone.has(attribute(tag, "Id") ?? ""))
    .map(({ start, end }): Edit => ({ start, end, text: "" }));
  const fresh = added.map(({ id, kind, target }) =>
    element(`${whole.prefix}Relationship`, { Id: id, Type: `${RELATIONSHIPS}/${kind}`, Target: target }),
  );
  return edited(text, fresh.length === 0 ? cut : [...cut, appended(whole, fresh.join(""))]);
}

const TYPES = "[Content_Types].xml";
const DRAWING = "application/vnd.openxmlformats-officedocument.drawing+xml";

/** The content types with those of new drawings and pictures; undefined where nothing is to be added. */
export function changedTypes(
  pack: WorkbookPackage,
  drawings: readonly string[],
  pictures: readonly string[],
  gone: ReadonlySet<string>,
): string | undefined {
  const text = textToPatch(pack, TYPES);
  const whole = outline(TYPES, text);
  const defaults = new Map(
    whole.children.flatMap(({ tag }) =>
      localName(tag.name) === "Default"
        ? [[(attribute(tag, "Extension") ?? "").toLowerCase(), attribute(tag, "ContentType") ?? ""] as const]
        : [],
    ),
  );
  const cut = whole.children
    .filter(({ tag }) => gone.has((attribute(tag, "PartName") ?? "/").slice(1)))
    .map(({ start, end }): Edit => ({ start, end, text: "" }));
  const first: string[] = [];
  const last: string[] = [];
  const override = (part: string, type: string): void =>
    void last.push(element(`${whole.prefix}Override`, { PartName: `/${part}`, ContentType: type }));
  for (const part of drawings) override(part, DRAWING);
  for (const part of pictures) {
    const extension = part.slice(part.lastIndexOf(".") + 1);
    const type = `image/${extension}`;
    if (!defaults.has(extension)) {
      defaults.set(extension, type);
      first.push(element(`${whole.prefix}Default`, { Extension: extension, ContentType: type }));
    } else if (defaults.get(extension) !== type) override(part, type);
  }
  const edits = [...cut];
  if (first.length > 0) edits.push({ start: whole.inside, end: whole.inside, text: first.join("") });
  if (last.length > 0) edits.push(appended(whole, last.join("")));
  return edits.length === 0 ? undefined : edited(text, edits);
}

/** A drawing with nothing in it yet. */
export const emptyDrawing = (namespaces: Readonly<Record<string, string>>): string =>
  `${XML_HEAD}${element("xdr:wsDr", namespaces, "")}`;
