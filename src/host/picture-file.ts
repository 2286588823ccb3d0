/** Whether a file is a picture that goes into a report, and what of it does: told by what it holds, never by its name. */
import { plainJpeg, type PlainPicture } from "./picture-jpeg.js";
import { plainPng, PNG_SIGNATURE } from "./picture-png.js";
import { PictureRefused } from "./picture-refused.js";

/** Beyond these a picture is refused: a report is mailed, and opened on what people have. */
const PICTURE_LIMITS = { bytes: 32 * 2 ** 20, pixels: 100_000_000 } as const;

const ADVICE = "save it as JPEG or PNG.";

/** Endings of what is looked at in a folder; what a file is, its contents say. */
export const isPictureName = (name: string): boolean =>
  /\.(?:jpe?g|jfif|jpe|png|heic|heif|avif|tiff?|webp|bmp|gif|dng)$/i.test(name);

/** So that a huge file need not be read first. @throws PictureRefused */
export function requirePictureBytes(size: number): void {
  if (size === 0) throw new PictureRefused("The file is empty.");
  if (size > PICTURE_LIMITS.bytes)
    throw new PictureRefused(
      `The file has ${Math.round(size / 2 ** 20)} MB; at most ${PICTURE_LIMITS.bytes / 2 ** 20} MB are taken: save it smaller.`,
    );
}

/** @throws PictureRefused */
export function plainPicture(bytes: Uint8Array): PlainPicture {
  requirePictureBytes(bytes.length);
  const picture = read(bytes);
  const { width, height } = picture;
  if (width * height > PICTURE_LIMITS.pixels)
    throw new PictureRefused(
      `The picture has ${width} × ${height} pixels; at most ${PICTURE_LIMITS.pixels / 1e6} million are taken: save it smaller.`,
    );
  return picture;
}

function read(bytes: Uint8Array): PlainPicture {
  if (begins(bytes, [0xff, 0xd8, 0xff])) return plainJpeg(bytes);
  if (begins(bytes, PNG_SIGNATURE)) return plainPng(bytes);
  const other = otherKind(bytes);
  throw new PictureRefused(
    other === undefined
      ? `The file is neither JPEG nor PNG: ${ADVICE}`
      : `The file is ${other}, not JPEG or PNG: ${ADVICE}`,
  );
}

const begins = (bytes: Uint8Array, start: readonly number[], at = 0): boolean =>
  start.every((byte, i) => bytes[at + i] === byte);
const ascii = (text: string): number[] => [...text].map((char) => char.charCodeAt(0));

function otherKind(bytes: Uint8Array): string | undefined {
  if (begins(bytes, ascii("ftyp"), 4)) {
    const brand = String.fromCharCode(...bytes.subarray(8, 12));
    if (/^(?:heic|heix|hevc|hevx|heim|heis|mif1|msf1)$/.test(brand)) return "HEIC (as phones save photos)";
    return brand.startsWith("avi") ? "AVIF" : "a film or another container";
  }
  if (begins(bytes, [0x49, 0x49, 42, 0]) || begins(bytes, [0x4d, 0x4d, 0, 42])) return "TIFF or a raw image";
  if (begins(bytes, ascii("RIFF")) && begins(bytes, ascii("WEBP"), 8)) return "WebP";
  if (begins(bytes, ascii("GIF8"))) return "GIF";
  return begins(bytes, ascii("BM")) ? "BMP" : undefined;
}
