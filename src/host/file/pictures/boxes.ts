/** The boxes of a workbook, what number each shows, and which pictures of ours they hold already. */
import { type BoxPlace, boxesIn, ownPicture } from "../../picture-boxes.js";
import { keyOf, type LoadedBook } from "../recalc/load.js";
import type { SavedValue } from "../sheet/cells.js";
import { attribute, localName, readXml } from "../xml/read.js";

export interface FileBox extends BoxPlace {
  /** As text; "" where the box is not used. */
  readonly shown: string;
  /** What the picture shows that an earlier run put there. */
  readonly held: string | undefined;
}

export function readBoxes({ pack, facts, sheets }: LoadedBook): FileBox[] {
  const held = new Map<string, string>();
  for (const { part } of sheets.filter(({ isWorksheet }) => isWorksheet))
    for (const { kind, isExternal, target } of pack.relationships(part)) {
      if (kind !== "drawing" || isExternal || !pack.has(target)) continue;
      readXml(target, pack.text(target), {
        open: (tag) => {
          const own = localName(tag.name) === "cNvPr" ? ownPicture(attribute(tag, "name") ?? "") : undefined;
          if (own !== undefined && !held.has(own.key)) held.set(own.key, own.shown);
        },
      });
    }
  const order = new Map(sheets.map(({ name }, at) => [name, at]));
  // A page that was copied has the names again, for itself: the workbook's own are meant.
  const inOrder = boxesIn(facts.definedNames.filter(({ sheet }) => sheet === undefined)).sort(
    (a, b) =>
      (order.get(a.sheet) ?? 0) - (order.get(b.sheet) ?? 0) ||
      a.area.startRow - b.area.startRow ||
      a.area.startColumn - b.area.startColumn,
  );
  return inOrder.flatMap((box) => {
    const sheet = sheets[order.get(box.sheet) ?? -1];
    if (sheet?.isWorksheet !== true) return [];
    const value = sheet.cells.get(keyOf(box.numberAt.row, box.numberAt.column))?.value ?? null;
    return [{ ...box, shown: textOf(value), held: held.get(box.key) }];
  });
}

function textOf(value: SavedValue): string {
  return value === null ? "" : typeof value === "object" ? value.error : String(value).trim();
}
