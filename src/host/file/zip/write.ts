/** Writes a package: entries that did not change byte for byte as they came, changed and new ones packed anew. */
import { PLAIN_CODEC } from "./codec.js";
import type { Codec } from "./codec.js";
import { crc32 } from "./crc32.js";
import type { ZipEntry } from "./read.js";

/** An entry as it came, an entry with other contents, or a new one. */
export type Written =
  | { readonly entry: ZipEntry; readonly contents?: Uint8Array }
  | { readonly name: string; readonly contents: Uint8Array };

const LOCAL_SIZE = 30;
const CENTRAL_SIZE = 46;
/** 1 January 1980: a file is the same whenever it is made. */
const NO_DATE = 0x00210000;
const UTF8_NAME = 0x0800;
const ZIP64_FIELD = 1;

interface Piece {
  readonly bytes: readonly Uint8Array[];
  readonly length: number;
  readonly record: (offset: number) => Uint8Array;
}

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);

function copied({ segment, record }: ZipEntry): Piece {
  return {
    bytes: [segment],
    length: segment.length,
    record: (offset) => {
      const own = record.slice();
      viewOf(own).setUint32(42, offset, true);
      return own;
    },
  };
}

/** The extra fields of a header but for sizes in the zip64 form, which would contradict the new ones. */
function extraWithout64(extra: Uint8Array): Uint8Array {
  const view = viewOf(extra);
  const kept: number[] = [];
  for (let at = 0; at + 4 <= extra.length;) {
    const length = 4 + view.getUint16(at + 2, true);
    if (view.getUint16(at, true) !== ZIP64_FIELD) kept.push(...extra.subarray(at, at + length));
    at += length;
  }
  return Uint8Array.from(kept);
}

/** Fields that a local header and a record of the directory have alike. */
interface Fields {
  readonly name: Uint8Array;
  readonly flags: number;
  readonly method: number;
  readonly date: number;
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
}

function putFields(view: DataView, at: number, f: Fields): void {
  view.setUint16(at, 20, true);
  view.setUint16(at + 2, f.flags, true);
  view.setUint16(at + 4, f.method, true);
  view.setUint32(at + 6, f.date, true);
  view.setUint32(at + 10, f.crc, true);
  view.setUint32(at + 14, f.packedSize, true);
  view.setUint32(at + 18, f.size, true);
  view.setUint16(at + 22, f.name.length, true);
}

function packed(
  fields: Omit<Fields, "crc" | "packedSize" | "size">,
  contents: Uint8Array,
  codec: Codec,
  old?: Uint8Array,
): Piece {
  const data = fields.method === 0 ? contents : codec.deflate(contents);
  const all: Fields = { ...fields, crc: crc32(contents), packedSize: data.length, size: contents.length };
  const local = new Uint8Array(LOCAL_SIZE + fields.name.length);
  const view = viewOf(local);
  view.setUint32(0, 0x04034b50, true);
  putFields(view, 4, all);
  local.set(fields.name, LOCAL_SIZE);
  return {
    bytes: [local, data],
    length: local.length + data.length,
    record: (offset) => recordOf(all, offset, old),
  };
}

function recordOf(fields: Fields, offset: number, old: Uint8Array | undefined): Uint8Array {
  const extraAt = CENTRAL_SIZE + fields.name.length;
  const extra = old
    ? extraWithout64(old.subarray(extraAt, extraAt + viewOf(old).getUint16(30, true)))
    : new Uint8Array(0);
  const comment = old ? old.subarray(extraAt + viewOf(old).getUint16(30, true)) : new Uint8Array(0);
  const record = new Uint8Array(extraAt + extra.length + comment.length);
  // System that made it and attributes stay as they were.
  if (old) record.set(old.subarray(0, CENTRAL_SIZE));
  const view = viewOf(record);
  view.setUint32(0, 0x02014b50, true);
  if (!old) view.setUint16(4, 20, true);
  putFields(view, 6, fields);
  view.setUint16(30, extra.length, true);
  view.setUint16(32, comment.length, true);
  view.setUint32(42, offset, true);
  record.set(fields.name, CENTRAL_SIZE);
  record.set(extra, extraAt);
  record.set(comment, extraAt + extra.length);
  return record;
}

function pieceOf(written: Written, codec: Codec): Piece {
  if (!("entry" in written)) {
    const name = new TextEncoder().encode(written.name);
    return packed({ name, flags: UTF8_NAME, method: 8, date: NO_DATE }, written.contents, codec);
  }
  const { entry, contents } = written;
  if (!contents) return copied(entry);
  const view = viewOf(entry.record);
  const name = entry.record.subarray(CENTRAL_SIZE, CENTRAL_SIZE + view.getUint16(28, true));
  const flags = view.getUint16(8, true) & UTF8_NAME;
  return packed({ name, flags, method: entry.method, date: view.getUint32(12, true) }, contents, codec, entry.record);
}

/** The package of these entries, in this order. */
export function writeZip(entries: readonly Written[], codec: Codec = PLAIN_CODEC): Uint8Array {
  const pieces = entries.map((entry) => pieceOf(entry, codec));
  const bytes: Uint8Array[] = [];
  const records: Uint8Array[] = [];
  let offset = 0;
  for (const piece of pieces) {
    bytes.push(...piece.bytes);
    records.push(piece.record(offset));
    offset += piece.length;
  }
  const size = records.reduce((sum, record) => sum + record.length, 0);
  const end = new Uint8Array(22);
  const view = viewOf(end);
  view.setUint32(0, 0x06054b50, true);
  view.setUint16(8, records.length, true);
  view.setUint16(10, records.length, true);
  view.setUint32(12, size, true);
  view.setUint32(16, offset, true);
  const whole = new Uint8Array(offset + size + end.length);
  let at = 0;
  for (const part of [...bytes, ...records, end]) {
    whole.set(part, at);
    at += part.length;
  }
  return whole;
}
