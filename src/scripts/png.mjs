import { deflateSync } from "node:zlib";

const crcTable = Uint32Array.from({ length: 256 }, (_, n) => {
  let c = n;
  for (let bit = 0; bit < 8; bit++) c = c & 1 ? 0xedb88320 ^ (c >>> 1) : c >>> 1;
  return c;
});

function crc(bytes) {
  let c = 0xffffffff;
  for (const byte of bytes) c = crcTable[(c ^ byte) & 0xff] ^ (c >>> 8);
  return (c ^ 0xffffffff) >>> 0;
}

function chunk(type, data) {
  const body = Buffer.concat([Buffer.from(type, "latin1"), data]);
  const framed = Buffer.alloc(body.length + 8);
  framed.writeUInt32BE(data.length, 0);
  body.copy(framed, 4);
  framed.writeUInt32BE(crc(body), body.length + 4);
  return framed;
}

const SIGNATURE = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
/** Colour type of ISO/IEC 15948, 11.2.2. */
const [PALETTE, COLOUR_WITH_OPACITY] = [3, 6];

/** Eight bits a channel or an index; the rest is the one method that there is. */
function headOf(width, height, type) {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(width, 0);
  header.writeUInt32BE(height, 4);
  header.set([8, type, 0, 0, 0], 8);
  return chunk("IHDR", header);
}

/** Lines of so many bytes, each after the number of its filter: none. */
function pixels(bytes, stride) {
  const height = bytes.length / stride;
  const lines = Buffer.alloc((stride + 1) * height);
  for (let y = 0; y < height; y++) lines.set(bytes.subarray(y * stride, (y + 1) * stride), y * (stride + 1) + 1);
  return chunk("IDAT", deflateSync(lines, { level: 9 }));
}

const end = chunk("IEND", Buffer.alloc(0));

/** A PNG file of size × size pixels, four bytes each: red, green, blue, opacity (not multiplied in). */
export function encodePng(size, rgba) {
  return Buffer.concat([SIGNATURE, headOf(size, size, COLOUR_WITH_OPACITY), pixels(rgba, size * 4), end]);
}

/** A PNG file of colours from a palette of [red, green, blue], a byte a pixel. */
export function encodeIndexedPng(width, height, palette, indexes) {
  const colours = chunk("PLTE", Buffer.from(palette.flat()));
  return Buffer.concat([SIGNATURE, headOf(width, height, PALETTE), colours, pixels(indexes, width), end]);
}
