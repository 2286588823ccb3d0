import { deflateSync } from "node:zlib";
import { crc32 } from "../../src/host/file/zip/crc32.js";

function chunk(type: string, data: Buffer): Buffer {
  const framed = Buffer.alloc(data.length + 12);
  framed.writeUInt32BE(data.length, 0);
  framed.write(type, 4, "latin1");
  data.copy(framed, 8);
  framed.writeUInt32BE(crc32(framed.subarray(4, data.length + 8)), data.length + 8);
  return framed;
}

/** A grey PNG file (ISO/IEC 15948). */
export function png(width: number, height: number): Uint8Array {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header[8] = 8;
  const lines = deflateSync(Buffer.alloc((width + 1) * height, 160).fill(0, 0, 1));
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  const all = [signature, chunk("IHDR", header), chunk("IDAT", lines), chunk("IEND", Buffer.alloc(0))];
  return new Uint8Array(Buffer.concat(all));
}

/** The beginning of a JPEG file (ITU-T T.81, B.2.2): a segment of an application, a filling byte, then the frame's header. */
export function jpegHead(width: number, height: number): Uint8Array {
  const frame = [0xff, 0xc2, 0, 17, 8, height >> 8, height & 255, width >> 8, width & 255, 3];
  return Uint8Array.from([0xff, 0xd8, 0xff, 0xe1, 0, 4, 1, 2, 0xff, ...frame, ...Array.from({ length: 9 }, () => 1)]);
}

/**
 * A baseline JPEG of 48 × 32 pixels, grey, its upper left corner red and its lower right one blue: drawn once on a canvas
 * in Chromium (toDataURL, quality 0.5), and its colour profile (APP2) cut out by hand.
 */
const PLAIN_JPEG =
  "/9j/4AAQSkZJRgABAQAAAQABAAD/2wBDABALDA4MChAODQ4SERATGCgaGBYWGDEjJR0oOjM9PDkzODdASFxOQERXRTc4UG1RV19iZ2hnPk1x" +
  "eXBkeFxlZ2P/2wBDARESEhgVGC8aGi9jQjhCY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2NjY2P/wAAR" +
  "CAAgADADASIAAhEBAxEB/8QAFgABAQEAAAAAAAAAAAAAAAAAAAcF/8QAFBABAAAAAAAAAAAAAAAAAAAAAP/EABYBAQEBAAAAAAAAAAAAAAAA" +
  "AAAEBv/EABQRAQAAAAAAAAAAAAAAAAAAAAD/2gAMAwEAAhEDEQA/AMcBE0ymALWZAAAAAAS0BoEb/9k=";

export const plainJpegFile = (): Uint8Array => new Uint8Array(Buffer.from(PLAIN_JPEG, "base64"));

/** A segment of a JPEG file (ITU-T T.81, B.1.1.4): its length counts itself. */
export function segment(marker: number, body: Uint8Array | string): Uint8Array {
  const data = Buffer.from(body as string, "latin1");
  const length = data.length + 2;
  return new Uint8Array(Buffer.concat([Buffer.from([0xff, marker, length >> 8, length & 255]), data]));
}

/** The plain JPEG with segments put in behind its JFIF head, and bytes behind its end. */
export function jpegWith(segments: readonly Uint8Array[], behind: Uint8Array = new Uint8Array(0)): Uint8Array {
  const plain = plainJpegFile();
  const head = 2 + 2 + 16;
  return new Uint8Array(Buffer.concat([plain.subarray(0, head), ...segments, plain.subarray(head), behind]));
}

/** A directory of TIFF 6.0, section 2: a camera's name (tag 271), then the orientation (tag 274, one SHORT). */
export function tiffWith(orientation: number, order: "II" | "MM" = "II", type = 3, count = 1): Uint8Array {
  const bytes = Buffer.alloc(8 + 2 + 2 * 12 + 4);
  const isLittle = order === "II";
  const short = (value: number, at: number): void =>
    void (isLittle ? bytes.writeUInt16LE(value, at) : bytes.writeUInt16BE(value, at));
  const long = (value: number, at: number): void =>
    void (isLittle ? bytes.writeUInt32LE(value, at) : bytes.writeUInt32BE(value, at));
  bytes.write(order, 0, "latin1");
  short(42, 2);
  long(8, 4);
  short(2, 8);
  short(271, 10);
  short(2, 12);
  long(4, 14);
  bytes.write("SN7", 18, "latin1");
  short(274, 22);
  short(type, 24);
  long(count, 26);
  short(orientation, 30);
  return new Uint8Array(bytes);
}

/** APP1 as EXIF 2.32, 4.7.2 has it. */
export const exif = (tiff: Uint8Array): Uint8Array =>
  segment(0xe1, new Uint8Array(Buffer.concat([Buffer.from("Exif\0\0", "latin1"), tiff])));

/** A PNG with chunks put in before its image. */
export function pngWith(
  width: number,
  height: number,
  chunks: readonly (readonly [string, string | Uint8Array])[],
): Uint8Array {
  const plain = png(width, height);
  // Signature, then 13 bytes in a chunk of 25.
  const head = 8 + 25;
  const extra = chunks.map(([type, body]) => chunk(type, Buffer.from(body as string, "latin1")));
  return new Uint8Array(Buffer.concat([plain.subarray(0, head), ...extra, plain.subarray(head)]));
}
