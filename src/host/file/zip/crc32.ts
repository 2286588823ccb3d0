/** Eight tables, so that eight bytes are taken at a time: table k is for a byte with k more behind it. */
const TABLES = tables();

function tables(): readonly Uint32Array[] {
  const first = Uint32Array.from({ length: 256 }, (_, byte) => {
    let value = byte;
    for (let bit = 0; bit < 8; bit++) value = value & 1 ? (value >>> 1) ^ 0xedb88320 : value >>> 1;
    return value;
  });
  const all = [first];
  for (let k = 1; k < 8; k++) all.push(all[k - 1]!.map((value) => first[value & 0xff]! ^ (value >>> 8)));
  return all;
}

/** CRC-32 as zip keeps it of every part (APPNOTE 4.4.7). */
export function crc32(bytes: Uint8Array): number {
  const [a, b, c, d, e, f, g, h] = TABLES as [
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
    Uint32Array,
  ];
  let crc = 0xffffffff;
  let i = 0;
  for (const end = bytes.length - 7; i < end; i += 8) {
    crc ^= bytes[i]! | (bytes[i + 1]! << 8) | (bytes[i + 2]! << 16) | (bytes[i + 3]! << 24);
    crc =
      h[crc & 0xff]! ^
      g[(crc >>> 8) & 0xff]! ^
      f[(crc >>> 16) & 0xff]! ^
      e[crc >>> 24]! ^
      d[bytes[i + 4]!]! ^
      c[bytes[i + 5]!]! ^
      b[bytes[i + 6]!]! ^
      a[bytes[i + 7]!]!;
  }
  for (; i < bytes.length; i++) crc = a[(crc ^ bytes[i]!) & 0xff]! ^ (crc >>> 8);
  return (crc ^ 0xffffffff) >>> 0;
}
