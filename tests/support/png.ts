import { inflateSync } from "node:zlib";

export interface Png {
  readonly width: number;
  readonly height: number;
  /** Red, green, blue and opacity of a pixel. */
  readonly at: (x: number, y: number) => number[];
}

/** Reads a PNG of 8-bit colour with opacity whose lines are not filtered, as ours are; throws on any other. */
export function decodePng(file: Buffer): Png {
  expect(file.subarray(0, 8)).toEqual(Buffer.from([0x89, 0x50, 0x4e, 0x47, 0x0d, 0x0a, 0x1a, 0x0a]));
  const chunks: { type: string; data: Buffer }[] = [];
  for (let at = 8; at < file.length;) {
    const length = file.readUInt32BE(at);
    chunks.push({ type: file.toString("latin1", at + 4, at + 8), data: file.subarray(at + 8, at + 8 + length) });
    at += length + 12;
  }
  expect(chunks.map(({ type }) => type)).toEqual(["IHDR", "IDAT", "IEND"]);
  const [header, image] = chunks;
  const [width, height] = [header!.data.readUInt32BE(0), header!.data.readUInt32BE(4)];
  expect([...header!.data.subarray(8)]).toEqual([8, 6, 0, 0, 0]);
  const lines = inflateSync(image!.data);
  const stride = width * 4 + 1;
  expect(lines).toHaveLength(stride * height);
  for (let y = 0; y < height; y++) expect(lines[y * stride]).toBe(0);
  return { width, height, at: (x, y) => [...lines.subarray(y * stride + 1 + x * 4, y * stride + 5 + x * 4)] };
}
