/** The pictures of ours that a sheet holds: which box each stands in, its file, and how it is turned. */
import type { HeldPicture } from "../../../templates/contents.js";
import { base64Of } from "../../base64.js";
import { ownPicture } from "../../picture-boxes.js";
import { orientationOf } from "../../picture-orientation.js";
import type { WorkbookPackage } from "../package/package.js";
import type { LoadedSheet } from "../recalc/load.js";
import { attribute, localName, readXml } from "../xml/read.js";
import { pictureSize } from "../write/drawing.js";

/** Parts of a degree (ECMA-376 part 1, 20.1.10.3). */
const DEGREE = 60_000;

interface Found {
  key: string;
  shown: string;
  link: string;
  orientation: HeldPicture["orientation"];
}

export function heldPictures(pack: WorkbookPackage, { name, part }: LoadedSheet): HeldPicture[] {
  return pack
    .relationships(part)
    .filter(({ kind, isExternal, target }) => kind === "drawing" && !isExternal && pack.has(target))
    .flatMap(({ target: drawing }) => {
      const files = new Map(
        pack
          .relationships(drawing)
          .filter(({ kind, isExternal, target }) => kind === "image" && !isExternal && pack.has(target))
          .map(({ id, target }) => [id, target]),
      );
      return picturesIn(drawing, pack.text(drawing)).flatMap(({ key, shown, link, orientation }) => {
        const file = files.get(link);
        const bytes = file === undefined ? undefined : pack.bytes(file);
        // What the page could not draw and no file of ours could hold stays where it is.
        if (bytes === undefined || pictureSize(bytes) === undefined) return [];
        return [{ sheet: name, key, shown, base64: base64Of(bytes), orientation }];
      });
    });
}

/** A picture that lies on its side is a shape in a group: the name stands with the group, the turning with the shape. */
function picturesIn(part: string, text: string): Found[] {
  const found: Found[] = [];
  let depth = 0;
  let now: Found | undefined;
  let inPicture = false;
  readXml(part, text, {
    open: (tag) => {
      depth++;
      const local = localName(tag.name);
      if (depth === 2) now = undefined;
      if (local === "pic") inPicture = true;
      if (local === "cNvPr") {
        const own = ownPicture(attribute(tag, "name") ?? "");
        if (own !== undefined && now === undefined) found.push((now = { ...own, link: "", orientation: 1 }));
      }
      if (now === undefined) return;
      if (local === "blip") now.link = tag.attributes["r:embed"] ?? attribute(tag, "embed") ?? "";
      if (local === "xfrm" && inPicture) {
        const isSet = (name: string): boolean => ["1", "true"].includes(attribute(tag, name) ?? "");
        const degrees = Number(attribute(tag, "rot") ?? 0) / DEGREE;
        now.orientation = orientationOf({ degrees, flipX: isSet("flipH"), flipY: isSet("flipV") });
      }
    },
    close: (name) => {
      if (localName(name) === "pic") inPicture = false;
      depth--;
    },
  });
  return found;
}
