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

/** A PNG file of size × size pixels, four bytes each: red, green, blue, opacity (not multiplied in). */
export function encodePng(size, rgba) {
  const header = Buffer.alloc(13);
  header.writeUInt32BE(size, 0);
  header.writeUInt32BE(size, 4);
  // Eight bits a channel, colour with opacity; the rest is the one method that there is.
  header.set([8, 6, 0, 0, 0], 8);
  const stride = size * 4;
  const lines = Buffer.alloc((stride + 1) * size);
  for (let y = 0; y < size; y++) lines.set(rgba.subarray(y * stride, (y + 1) * stride), y * (stride + 1) + 1);
  const signature = Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]);
  return Buffer.concat([
    signature,
    chunk("IHDR", header),
    chunk("IDAT", deflateSync(lines, { level: 9 })),
    chunk("IEND", Buffer.alloc(0)),
  ]);
}
