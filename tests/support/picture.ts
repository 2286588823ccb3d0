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
