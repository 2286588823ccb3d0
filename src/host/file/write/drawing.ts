/** Pictures of a sheet: one drawing part, each picture as large as its box of cells allows (ECMA-376 part 1, 20.5). */
import { fitted, PICTURE_MARGIN } from "../../picture-boxes.js";
import { isOnItsSide, turnedBy } from "../../picture-orientation.js";
import { element, XML_HEAD } from "./element.js";
import type { Area, WrittenPicture, WrittenSheet } from "./model.js";
import { anchorXml, DRAWING_NAMESPACES } from "./picture-anchor.js";

const DEFAULT_WIDTH = 64;

export interface PictureSize {
  readonly kind: "png" | "jpeg";
  readonly width: number;
  readonly height: number;
}

/**
 * What a picture's file says of its size in pixels; nothing else of it is read. PNG: ISO/IEC 15948, 11.2.2; JPEG: ITU-T T.81, B.2.2.
 * Undefined where it is neither.
 */
export function pictureSize(bytes: Uint8Array): PictureSize | undefined {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const isPng = bytes.length >= 24 && [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a].every((b, i) => bytes[i] === b);
  if (isPng) return sized("png", view.getUint32(16), view.getUint32(20));
  if (bytes[0] !== 0xff || bytes[1] !== 0xd8) return undefined;
  for (let at = 2; at + 9 <= bytes.length;) {
    if (bytes[at] !== 0xff) return undefined;
    const marker = bytes[at + 1]!;
    // Filling bytes, and markers that stand alone.
    if (marker === 0xff) at++;
    else if (marker === 0x01 || (marker >= 0xd0 && marker <= 0xd8)) at += 2;
    else if (marker >= 0xc0 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker))
      return sized("jpeg", view.getUint16(at + 7), view.getUint16(at + 5));
    else at += 2 + view.getUint16(at + 2);
  }
  return undefined;
}

function sized(kind: PictureSize["kind"], width: number, height: number): PictureSize | undefined {
  return width > 0 && height > 0 ? { kind, width, height } : undefined;
}

/** @param ids ids of the relationships to the pictures' files, in their order */
export function drawingXml(sheet: WrittenSheet, ids: readonly string[]): string {
  const anchors = sheet.pictures.map((picture, at) => pictureXml(sheet, picture, ids[at] ?? "", at + 1));
  return XML_HEAD + element("xdr:wsDr", DRAWING_NAMESPACES, ...anchors);
}

function pictureXml(
  sheet: WrittenSheet,
  { bytes, box, alternative, name, orientation = 1 }: WrittenPicture,
  link: string,
  number: number,
): string {
  const size = pictureSize(bytes);
  if (size === undefined) throw new Error("A picture is neither a PNG nor a JPEG file.");
  const seen = isOnItsSide(orientation) ? { width: size.height, height: size.width } : size;
  return anchorXml({
    row: box.startRow,
    column: box.startColumn,
    offset: PICTURE_MARGIN,
    ...fitted(seen, boxSize(sheet, box)),
    turned: turnedBy(orientation),
    link,
    // A turned picture is a shape within a group: two ids.
    id: 2 * number,
    name: name ?? `Picture ${number}`,
    alternative,
  });
}

function boxSize(sheet: WrittenSheet, box: Area): { width: number; height: number } {
  let [width, height] = [0, 0];
  for (let column = box.startColumn; column <= box.endColumn; column++)
    width += sheet.columns.find((one) => one.column === column)?.width ?? DEFAULT_WIDTH;
  for (let row = box.startRow; row <= box.endRow; row++) height += sheet.rowHeights.get(row) ?? sheet.rowHeight;
  return { width, height };
}
