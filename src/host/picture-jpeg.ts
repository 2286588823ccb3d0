/**
 * A JPEG file as far as its pixels need it: what a camera wrote beside them (places, serial numbers, thumbnails, its own
 * data) is left out, and so is whatever follows the end of the image. ITU-T T.81, annex B; JFIF 1.02; Adobe's APP14.
 */
import { type Orientation, orientationIn } from "./picture-orientation.js";
import { PictureRefused } from "./picture-refused.js";

export interface PlainPicture {
  readonly kind: "jpeg" | "png";
  /** Pixels as stored. */
  readonly width: number;
  readonly height: number;
  readonly orientation: Orientation;
  /** The file without what does not belong to its pixels. */
  readonly bytes: Uint8Array;
}

const SOI = 0xd8;
const EOI = 0xd9;
const SOS = 0xda;
const APP0 = 0xe0;
const APP1 = 0xe1;
const APP14 = 0xee;
const COMMENT = 0xfe;
/** Baseline, extended and progressive Huffman: what every program shows. */
const FRAMES: ReadonlySet<number> = new Set([0xc0, 0xc1, 0xc2]);
/** Lossless, differential and arithmetic ones; C4, C8 and CC are no frames. */
const isOtherFrame = (marker: number): boolean =>
  marker >= 0xc3 && marker <= 0xcf && ![0xc4, 0xc8, 0xcc].includes(marker);
/** SOF, DHT, DAC, DQT, DNL, DRI: what decoding needs. */
const isNeeded = (marker: number): boolean => (marker >= 0xc0 && marker <= 0xcf) || [0xdb, 0xdc, 0xdd].includes(marker);
const standsAlone = (marker: number): boolean => marker === 0x01 || (marker >= 0xd0 && marker <= 0xd7);

const cutShort = (): PictureRefused =>
  new PictureRefused("The JPEG file is cut short: copy it from the camera or the card again.");

/** Segment by segment. @throws PictureRefused */
export function plainJpeg(bytes: Uint8Array): PlainPicture {
  const kept: Uint8Array[] = [Uint8Array.of(0xff, SOI)];
  let frame: { width: number; height: number } | undefined;
  let orientation: Orientation = 1;
  let hasExif = false;
  let hasScan = false;
  for (let at = 2; ;) {
    if (at + 2 > bytes.length) throw cutShort();
    if (bytes[at] !== 0xff) throw new PictureRefused("The JPEG file is damaged: a marker is missing.");
    const marker = bytes[at + 1]!;
    // Bytes of 255 may fill the place before a marker.
    if (marker === 0xff) {
      at++;
      continue;
    }
    if (marker === EOI) break;
    if (standsAlone(marker)) {
      at += 2;
      continue;
    }
    const end = segmentEnd(bytes, at);
    const body = bytes.subarray(at + 4, end);
    if (FRAMES.has(marker)) frame = frameOf(body);
    else if (isOtherFrame(marker))
      throw new PictureRefused(
        "The JPEG file is of a rare kind (lossless or arithmetic) that Excel does not show: save it as a plain JPEG or PNG.",
      );
    const exif = marker === APP1 && !hasExif ? exifIn(body) : undefined;
    if (exif !== undefined) {
      hasExif = true;
      orientation = orientationIn(exif);
    }
    if (marker === SOS) {
      if (frame === undefined) throw new PictureRefused("The JPEG file is damaged: it says nothing of its size.");
      const next = scanEnd(bytes, end);
      hasScan = true;
      kept.push(bytes.subarray(at, next));
      at = next;
      continue;
    }
    const own = keptSegment(marker, bytes.subarray(at, end), body);
    if (own !== undefined) kept.push(own);
    at = end;
  }
  if (frame === undefined || !hasScan) throw new PictureRefused("The JPEG file is damaged: there is no image in it.");
  kept.push(Uint8Array.of(0xff, EOI));
  return { kind: "jpeg", ...frame, orientation, bytes: joined(kept) };
}

function segmentEnd(bytes: Uint8Array, at: number): number {
  if (at + 4 > bytes.length) throw cutShort();
  const length = (bytes[at + 2]! << 8) | bytes[at + 3]!;
  if (length < 2) throw new PictureRefused("The JPEG file is damaged: a segment has no length.");
  if (at + 2 + length > bytes.length) throw cutShort();
  return at + 2 + length;
}

/** B.2.2: bits a sample, lines, samples a line. */
function frameOf(body: Uint8Array): { width: number; height: number } {
  if (body.length < 6) throw cutShort();
  if (body[0] !== 8)
    throw new PictureRefused(
      `The JPEG file has ${body[0]} bits a colour, which Excel does not show: save it as a plain JPEG or PNG.`,
    );
  const size = { height: (body[1]! << 8) | body[2]!, width: (body[3]! << 8) | body[4]! };
  if (size.width === 0 || size.height === 0)
    throw new PictureRefused("The JPEG file does not say how large its image is: open it and save it again.");
  return size;
}

const startsWith = (body: Uint8Array, text: string): boolean =>
  body.length >= text.length && [...text].every((char, i) => body[i] === char.charCodeAt(0));

function exifIn(body: Uint8Array): Uint8Array | undefined {
  return startsWith(body, "Exif\0\0") ? body.subarray(6) : undefined;
}

/** Of JFIF the head without its thumbnail; Adobe's APP14 says how colours are stored; tables and frames. */
function keptSegment(marker: number, segment: Uint8Array, body: Uint8Array): Uint8Array | undefined {
  if (marker === APP0 && startsWith(body, "JFIF\0") && body.length >= 14) {
    const head = new Uint8Array(18);
    head.set([0xff, APP0, 0, 16]);
    head.set(body.subarray(0, 12), 4);
    return head;
  }
  if (marker === APP14 && startsWith(body, "Adobe") && body.length >= 12) {
    const head = new Uint8Array(16);
    head.set([0xff, APP14, 0, 14]);
    head.set(body.subarray(0, 12), 4);
    return head;
  }
  if ((marker >= APP0 && marker <= 0xef) || marker === COMMENT) return undefined;
  return isNeeded(marker) ? segment : undefined;
}

/** Where the next marker stands: within a scan 255 is followed by 0 or by a restart marker (B.1.1.5). */
function scanEnd(bytes: Uint8Array, from: number): number {
  for (let at = from; at + 1 < bytes.length; at++) {
    if (bytes[at] !== 0xff) continue;
    const next = bytes[at + 1]!;
    if (next !== 0 && next !== 0xff && !(next >= 0xd0 && next <= 0xd7)) return at;
  }
  throw cutShort();
}

export function joined(pieces: readonly Uint8Array[]): Uint8Array {
  const bytes = new Uint8Array(pieces.reduce((sum, { length }) => sum + length, 0));
  let at = 0;
  for (const piece of pieces) {
    bytes.set(piece, at);
    at += piece.length;
  }
  return bytes;
}
