/** A picture in a drawing part, held by one cell (ECMA-376 part 1, 20.5.2.24), turned as its orientation wants. */
import type { Turned } from "../../picture-orientation.js";
import { element, RELATIONSHIPS } from "./element.js";

/** English metric units in a pixel at 96 dots an inch. */
const EMU = 9525;
/** Parts of a degree. */
const DEGREE = 60_000;

export const DRAWING_NAMESPACES = {
  "xmlns:xdr": "http://schemas.openxmlformats.org/drawingml/2006/spreadsheetDrawing",
  "xmlns:a": "http://schemas.openxmlformats.org/drawingml/2006/main",
  "xmlns:r": RELATIONSHIPS,
} as const;

export interface AnchoredPicture {
  /** The cell at its upper left corner, from 0, and how far inside that it begins, in pixels. */
  readonly row: number;
  readonly column: number;
  readonly offset: number;
  /** Pixels as seen, after turning. */
  readonly width: number;
  readonly height: number;
  readonly turned: Turned;
  /** Id of the relationship to its file. */
  readonly link: string;
  /** Unique in its drawing. */
  readonly id: number;
  readonly name: string;
  /** What it shows, for whoever cannot see it. */
  readonly alternative: string;
}

/** @param namespaces where it is put into a drawing that may call them otherwise */
export function anchorXml(picture: AnchoredPicture, namespaces: Readonly<Record<string, string>> = {}): string {
  const { row, column, offset, turned } = picture;
  const whole = (name: string, value: number): string => element(name, {}, String(value));
  const isOnItsSide = turned.degrees % 180 === 90;
  return element(
    "xdr:oneCellAnchor",
    namespaces,
    element(
      "xdr:from",
      {},
      whole("xdr:col", column),
      whole("xdr:colOff", offset * EMU),
      whole("xdr:row", row),
      whole("xdr:rowOff", offset * EMU),
    ),
    element("xdr:ext", { cx: picture.width * EMU, cy: picture.height * EMU }),
    isOnItsSide
      ? groupXml(picture)
      : pictureXml(picture, { x: 0, y: 0, cx: picture.width * EMU, cy: picture.height * EMU }),
    element("xdr:clientData"),
  );
}

interface Frame {
  readonly x: number;
  readonly y: number;
  readonly cx: number;
  readonly cy: number;
}

/**
 * A shape on its side: what an anchor's extent then means, the shape's own or the turned one's, programs do not agree on.
 * In a group the anchor is that of the group, as seen, and the frame within is the shape's own before it is turned.
 */
function groupXml(picture: AnchoredPicture): string {
  const [seenX, seenY] = [picture.width * EMU, picture.height * EMU];
  const own = { x: (seenX - seenY) / 2, y: (seenY - seenX) / 2, cx: seenY, cy: seenX };
  const place = { x: 0, y: 0 };
  const extent = { cx: seenX, cy: seenY };
  return element(
    "xdr:grpSp",
    {},
    element(
      "xdr:nvGrpSpPr",
      {},
      element("xdr:cNvPr", { id: picture.id, name: picture.name, descr: picture.alternative }),
      element("xdr:cNvGrpSpPr", {}, element("a:grpSpLocks", { noChangeAspect: true })),
    ),
    element(
      "xdr:grpSpPr",
      {},
      element(
        "a:xfrm",
        {},
        element("a:off", place),
        element("a:ext", extent),
        element("a:chOff", place),
        element("a:chExt", extent),
      ),
    ),
    pictureXml({ ...picture, id: picture.id + 1, name: `${picture.name} turned` }, roundedFrame(own)),
  );
}

const roundedFrame = ({ x, y, cx, cy }: Frame): Frame => ({ x: Math.round(x), y: Math.round(y), cx, cy });

function pictureXml({ turned, link, id, name, alternative }: AnchoredPicture, { x, y, cx, cy }: Frame): string {
  const transform = {
    rot: turned.degrees === 0 ? undefined : turned.degrees * DEGREE,
    flipH: turned.flipX || undefined,
    flipV: turned.flipY || undefined,
  };
  return element(
    "xdr:pic",
    {},
    element(
      "xdr:nvPicPr",
      {},
      element("xdr:cNvPr", { id, name, descr: alternative }),
      element("xdr:cNvPicPr", {}, element("a:picLocks", { noChangeAspect: true })),
    ),
    element(
      "xdr:blipFill",
      {},
      element("a:blip", { "r:embed": link }),
      element("a:stretch", {}, element("a:fillRect")),
    ),
    element(
      "xdr:spPr",
      {},
      element("a:xfrm", transform, element("a:off", { x, y }), element("a:ext", { cx, cy })),
      element("a:prstGeom", { prst: "rect" }, element("a:avLst")),
    ),
  );
}
