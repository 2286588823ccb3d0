/** A PNG file as far as its pixels need it: texts, times, EXIF and whatever follows the end are left out. ISO/IEC 15948. */
import { crc32 } from "./file/zip/crc32.js";
import { joined, type PlainPicture } from "./picture-jpeg.js";
import { type Orientation, orientationIn } from "./picture-orientation.js";
import { PictureRefused } from "./picture-refused.js";

export const PNG_SIGNATURE = [0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a] as const;
const HEAD = 8;
/** Length, type and check sum of a chunk. */
const FRAME = 12;
/** What the colours of the pixels rest on. */
const KEPT: ReadonlySet<string> = new Set(["IHDR", "PLTE", "IDAT", "IEND", "tRNS", "gAMA", "cHRM", "sRGB", "sBIT"]);

const damaged = (what: string): PictureRefused =>
  new PictureRefused(`The PNG file is damaged (${what}): copy it again, or save it anew.`);

/** Chunk by chunk. @throws PictureRefused */
export function plainPng(bytes: Uint8Array): PlainPicture {
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
  const kept: Uint8Array[] = [bytes.subarray(0, HEAD)];
  let size: { width: number; height: number } | undefined;
  let orientation: Orientation = 1;
  let hasPixels = false;
  for (let at = HEAD; ;) {
    if (at + FRAME > bytes.length) throw new PictureRefused("The PNG file is cut short: copy it again.");
    const length = view.getUint32(at);
    const end = at + FRAME + length;
    if (end > bytes.length) throw new PictureRefused("The PNG file is cut short: copy it again.");
    const type = String.fromCharCode(...bytes.subarray(at + 4, at + 8));
    const body = bytes.subarray(at + 8, end - 4);
    if (crc32(bytes.subarray(at + 4, end - 4)) !== view.getUint32(end - 4)) throw damaged(`the check sum of ${type}`);
    if (size === undefined) {
      if (type !== "IHDR" || length !== 13) throw damaged("it does not begin with its size");
      size = { width: view.getUint32(at + 8), height: view.getUint32(at + 12) };
      if (size.width === 0 || size.height === 0) throw damaged("it has no size");
    }
    hasPixels ||= type === "IDAT";
    if (type === "eXIf") orientation = orientationIn(body);
    if (KEPT.has(type)) kept.push(bytes.subarray(at, end));
    // A capital first: without it nobody can decode the rest (5.4).
    else if (/^[A-Z]/.test(type)) throw new PictureRefused(`The PNG file has a part ${type} that is not known here.`);
    if (type === "IEND") break;
    at = end;
  }
  if (!hasPixels) throw damaged("there is no image in it");
  return { kind: "png", ...size, orientation, bytes: joined(kept) };
}
