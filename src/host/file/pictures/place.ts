/** Puts pictures into the boxes of a workbook: drawing, relationships, content types and media are added, no cell is touched. */
import { strToU8 } from "fflate";
import { type BoxPlace, fitted, PICTURE_MARGIN, pictureName } from "../../picture-boxes.js";
import type { PlainPicture } from "../../picture-jpeg.js";
import { isOnItsSide, turnedBy } from "../../picture-orientation.js";
import type { WorkbookPackage } from "../package/package.js";
import { type LoadedBook } from "../recalc/load.js";
import { FileRefused } from "../refusal.js";
import { element } from "../write/element.js";
import { anchorXml, DRAWING_NAMESPACES } from "../write/picture-anchor.js";
import { localName } from "../xml/read.js";
import { megabytes, ZIP_LIMITS } from "../zip/limits.js";
import { type DrawingRest, withoutOwn } from "./drawing.js";
import { SheetGeometry } from "./geometry.js";
import { Media } from "./media.js";
import { changedRelations, changedTypes, emptyDrawing, freeId, type Pointed, relationsPart } from "./relations.js";
import { appended, edited, outline, textToPatch } from "./text.js";

export interface Placement {
  readonly box: BoxPlace;
  /** What the box shows. */
  readonly shown: string;
  readonly picture: PlainPicture;
}

const STRICT = "http://purl.oclc.org/ooxml/";
/** What stands behind the drawing in a worksheet (ECMA-376 part 1, 18.3.1.99). */
const BEHIND = new Set(
  "drawingHF legacyDrawing legacyDrawingHF picture oleObjects controls webPublishItems tableParts extLst".split(" "),
);

/**
 * The workbook with these pictures; ours that stood there are gone, but for the boxes named by `keeps`.
 * @throws FileRefused
 */
export function placePictures(
  { pack, facts, sheets }: LoadedBook,
  placements: readonly Placement[],
  keeps: ReadonlySet<string>,
): Uint8Array {
  const work = new Work(
    pack,
    new Media(
      pack,
      placements.map(({ picture }) => picture),
    ),
  );
  for (const { name, part, isWorksheet } of sheets)
    if (isWorksheet)
      work.sheet(
        part,
        placements.filter(({ box }) => box.sheet === name),
        keeps,
      );
  if (work.isIdle) return pack.write(new Map());
  if (pack.text(facts.part).includes(STRICT))
    throw new FileRefused('The workbook is saved as "Strict Open XML": save it as an ordinary .xlsx first.');
  const bytes = work.finish();
  if (bytes.length > ZIP_LIMITS.fileBytes)
    throw new FileRefused(
      `With these pictures the workbook has ${megabytes(bytes.length)}; at most ${megabytes(ZIP_LIMITS.fileBytes)} can be opened again: save the pictures smaller.`,
    );
  return bytes;
}

class Work {
  private readonly changed = new Map<string, Uint8Array>();
  private readonly drawings: string[] = [];
  /** Relationships that are gone, by the part that had them. */
  private readonly cut = new Map<string, ReadonlySet<string>>();

  constructor(
    private readonly pack: WorkbookPackage,
    private readonly media: Media,
  ) {}

  get isIdle(): boolean {
    return this.changed.size === 0;
  }

  sheet(part: string, placements: readonly Placement[], keeps: ReadonlySet<string>): void {
    const links = this.pack.relationships(part);
    const own = links.find(
      ({ kind, isExternal, target }) => kind === "drawing" && !isExternal && this.pack.has(target),
    );
    if (own === undefined && placements.length === 0) return;
    const text = textToPatch(this.pack, part);
    const drawing = own?.target ?? this.freeDrawing();
    const old = own === undefined ? emptyDrawing(DRAWING_NAMESPACES) : textToPatch(this.pack, drawing);
    const rest = withoutOwn(drawing, old, keeps);
    const { anchors, pointed } = this.anchors(drawing, placements, rest, new SheetGeometry(part, text));
    const fresh = rest.withAnchors(anchors);
    if (fresh === old) return;
    this.put(drawing, fresh);
    this.cut.set(drawing, rest.unused);
    this.put(relationsPart(drawing), changedRelations(this.pack, drawing, pointed, rest.unused));
    if (own !== undefined) return;
    this.drawings.push(drawing);
    const id = freeId(new Set(links.map((link) => link.id)));
    const target = `/${drawing}`;
    this.put(relationsPart(part), changedRelations(this.pack, part, [{ id, kind: "drawing", target }]));
    this.put(part, withDrawing(part, text, id));
  }

  finish(): Uint8Array {
    const gone = this.media.orphans(this.cut);
    for (const [part, contents] of this.media.fresh) this.changed.set(part, contents);
    const types = changedTypes(this.pack, this.drawings, [...this.media.fresh.keys()], gone);
    if (types !== undefined) this.put("[Content_Types].xml", types);
    return this.pack.write(this.changed, gone);
  }

  private put(part: string, text: string): void {
    this.changed.set(part, strToU8(text));
  }

  private freeDrawing(): string {
    let number = 1;
    const name = (): string => `xl/drawings/drawing${number}.xml`;
    while (this.pack.has(name()) || this.drawings.includes(name())) number++;
    return name();
  }

  private anchors(
    drawing: string,
    placements: readonly Placement[],
    rest: DrawingRest,
    geometry: SheetGeometry,
  ): { anchors: string[]; pointed: Pointed[] } {
    const known = this.pack.has(drawing) ? this.pack.relationships(drawing) : [];
    const taken = new Set(known.map(({ id }) => id));
    const pointed = new Map<string, Pointed>();
    let { lastId } = rest;
    const anchors = placements.map(({ box, shown, picture }) => {
      const part = this.media.part(picture);
      let link = known.find(({ id, target }) => target === part && !rest.unused.has(id))?.id ?? pointed.get(part)?.id;
      if (link === undefined) {
        link = freeId(taken);
        taken.add(link);
        pointed.set(part, { id: link, kind: "image", target: `/${part}` });
      }
      const { width, height, orientation } = picture;
      const seen = isOnItsSide(orientation) ? { width: height, height: width } : { width, height };
      // A turned picture is a shape within a group: two ids.
      lastId += 2;
      return anchorXml(
        {
          row: box.area.startRow,
          column: box.area.startColumn,
          offset: PICTURE_MARGIN,
          ...fitted(seen, geometry.size(box.area)),
          turned: turnedBy(orientation),
          link,
          id: lastId - 1,
          name: pictureName(box.key, shown),
          alternative: `${box.kind} ${shown}`,
        },
        DRAWING_NAMESPACES,
      );
    });
    return { anchors, pointed: [...pointed.values()] };
  }
}

/** A worksheet that points to its drawing, at the place that its schema has for it. */
function withDrawing(part: string, text: string, id: string): string {
  const whole = outline(part, text);
  const names = whole.children.map(({ tag }) => localName(tag.name));
  const data = names.indexOf("sheetData");
  const at = names.findIndex((name, i) => i > data && (BEHIND.has(name) || name === "AlternateContent"));
  const { "xmlns:r": namespace } = DRAWING_NAMESPACES;
  const xml = element(`${whole.prefix}drawing`, { "xmlns:r": namespace, "r:id": id });
  const before = whole.children[at];
  return edited(text, [before ? { start: before.start, end: before.start, text: xml } : appended(whole, xml)]);
}
