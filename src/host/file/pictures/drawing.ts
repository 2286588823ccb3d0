/** A sheet's drawing part with our pictures taken out and put in; everybody else's stay as they are. */
import { ownPicture } from "../../picture-boxes.js";
import { attribute, localName } from "../xml/read.js";
import { appended, type Edit, edited, outline } from "./text.js";

export interface DrawingRest {
  /** Ids of relationships that nothing uses any more. */
  readonly unused: ReadonlySet<string>;
  /** The largest id of a shape that stays. */
  readonly lastId: number;
  /** The part with these anchors added. */
  readonly withAnchors: (anchors: readonly string[]) => string;
}

/** @param keeps the boxes whose pictures stay */
export function withoutOwn(part: string, text: string, keeps: ReadonlySet<string>): DrawingRest {
  const owners = new Map<number, string>();
  const links = new Map<number, Set<string>>();
  const ids = new Map<number, number>();
  const whole = outline(part, text, (tag, child) => {
    const local = localName(tag.name);
    if (local === "cNvPr") {
      const own = ownPicture(attribute(tag, "name") ?? "");
      if (own !== undefined && !owners.has(child)) owners.set(child, own.key);
      ids.set(child, Math.max(ids.get(child) ?? 0, Number(attribute(tag, "id")) || 0));
    }
    for (const [name, value] of Object.entries(tag.attributes))
      if (/^r:|:(?:embed|link|id|pict)$/.test(name)) links.set(child, (links.get(child) ?? new Set()).add(value));
  });
  const isGone = (child: number): boolean => {
    const key = owners.get(child);
    return key !== undefined && !keeps.has(key);
  };
  const gone = [...whole.children.keys()].filter(isGone);
  const stays = [...whole.children.keys()].filter((child) => !isGone(child));
  const used = new Set(stays.flatMap((child) => [...(links.get(child) ?? [])]));
  const cut = gone.map((child): Edit => {
    const { start, end } = whole.children[child]!;
    return { start, end, text: "" };
  });
  return {
    unused: new Set(gone.flatMap((child) => [...(links.get(child) ?? [])]).filter((id) => !used.has(id))),
    lastId: Math.max(1, ...stays.map((child) => ids.get(child) ?? 0)),
    withAnchors: (anchors) => edited(text, anchors.length === 0 ? cut : [...cut, appended(whole, anchors.join(""))]),
  };
}
