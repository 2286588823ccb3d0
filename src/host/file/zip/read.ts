/**
 * Reads the container of a workbook: what is in it and where, without expanding anything that is not asked for.
 * Source: PKWARE APPNOTE.TXT 6.3, as ISO/IEC 29500-2 annex C restricts it (no encryption, methods 0 and 8, no splitting).
 */
import { FileRefused } from "../refusal.js";
import { PLAIN_CODEC } from "./codec.js";
import type { Codec } from "./codec.js";
import { crc32 } from "./crc32.js";
import { megabytes, ZIP_LIMITS } from "./limits.js";

/** One entry as the central directory has it. */
export interface ZipEntry {
  readonly name: string;
  /** 0 stored, 8 deflated. */
  readonly method: number;
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
  /** The entry from its local header up to the next, for copying as it is. */
  readonly segment: Uint8Array;
  /** Its record in the central directory, for copying as it is but for the offset. */
  readonly record: Uint8Array;
  /** Its packed bytes. */
  readonly packed: Uint8Array;
}

const LOCAL = 0x04034b50;
const CENTRAL = 0x02014b50;
const END = 0x06054b50;
const END_SIZE = 22;
const LOCAL_SIZE = 30;
const CENTRAL_SIZE = 46;
/** Compound files: Excel's own encryption, and .xls. */
const COMPOUND = [0xd0, 0xcf, 0x11, 0xe0];

const viewOf = (bytes: Uint8Array): DataView => new DataView(bytes.buffer, bytes.byteOffset, bytes.byteLength);
const damaged = (what: string): FileRefused => new FileRefused(`The file is damaged: ${what}.`);

function findEnd(view: DataView): number {
  // A comment may follow the record, 65,535 bytes at most.
  const least = Math.max(0, view.byteLength - END_SIZE - 0xffff);
  for (let at = view.byteLength - END_SIZE; at >= least; at--) {
    if (view.getUint32(at, true) === END && at + END_SIZE + view.getUint16(at + 20, true) <= view.byteLength) return at;
  }
  throw damaged("it has no directory of a zip package; it may have been cut short on its way");
}

function refuseForeign(bytes: Uint8Array): void {
  if (bytes.length === 0) throw new FileRefused("The file is empty.");
  if (bytes.length > ZIP_LIMITS.fileBytes) {
    throw new FileRefused(
      `The file has ${megabytes(bytes.length)}; at most ${megabytes(ZIP_LIMITS.fileBytes)} are read. Split it.`,
    );
  }
  if (COMPOUND.every((byte, i) => bytes[i] === byte)) {
    throw new FileRefused(
      "The file is encrypted with a password or in the old .xls format: open it in Excel and save it as .xlsx without a password.",
    );
  }
  if (bytes[0] !== 0x50 || bytes[1] !== 0x4b) {
    throw new FileRefused("The file is not an Excel workbook (.xlsx): it is not a zip package.");
  }
}

/** A name that cannot be a part of a package: it climbs out of it, or names a place on a disk. */
function requireInside(name: string): void {
  const plain = name.replaceAll("\\", "/");
  if (plain.startsWith("/") || /^[a-z]:/i.test(plain) || plain.split("/").includes("..") || name.includes("\0")) {
    throw new FileRefused(`The package names a part outside itself ("${name.slice(0, 80)}"): not read.`);
  }
}

const decoder = new TextDecoder("utf-8");

/**
 * The entries of a package in the order of its directory.
 * @throws FileRefused where it is no zip, encrypted, damaged, beyond the limits, has a name twice or one that climbs out
 */
export function readZip(bytes: Uint8Array): ZipEntry[] {
  refuseForeign(bytes);
  const view = viewOf(bytes);
  const end = findEnd(view);
  const count = view.getUint16(end + 10, true);
  const size = view.getUint32(end + 12, true);
  const start = view.getUint32(end + 16, true);
  if (count === 0xffff || size === 0xffffffff || start === 0xffffffff) {
    throw new FileRefused("The package is in the zip64 form for very large files, which is not read. Save it smaller.");
  }
  if (count > ZIP_LIMITS.entries) {
    throw new FileRefused(`The package has ${count} parts; at most ${ZIP_LIMITS.entries} are read.`);
  }
  if (count === 0) throw new FileRefused("The package is empty: no workbook in it.");
  if (start + size > end) throw damaged("its directory does not fit into it");
  const heads = readDirectory(bytes, view, { start, end: start + size, count });
  const offsets = heads.map((head) => head.offset).sort((a, b) => a - b);
  const after = new Map(offsets.map((offset, i) => [offset, offsets[i + 1] ?? start]));
  if (after.size !== heads.length) throw damaged("two of its parts lie in the same place");
  return heads.map((head) => locate(bytes, view, head, after.get(head.offset) ?? start));
}

interface Head {
  readonly name: string;
  readonly rawName: Uint8Array;
  readonly method: number;
  readonly crc: number;
  readonly packedSize: number;
  readonly size: number;
  readonly offset: number;
  readonly record: Uint8Array;
}

function readDirectory(
  bytes: Uint8Array,
  view: DataView,
  { start, end, count }: { start: number; end: number; count: number },
): Head[] {
  const heads: Head[] = [];
  const seen = new Set<string>();
  let at = start;
  for (let i = 0; i < count; i++) {
    if (at + CENTRAL_SIZE > end || view.getUint32(at, true) !== CENTRAL) throw damaged("its directory cannot be read");
    const flags = view.getUint16(at + 8, true);
    const method = view.getUint16(at + 10, true);
    const lengths = [28, 30, 32].map((field) => view.getUint16(at + field, true));
    const [nameLength = 0] = lengths;
    const length = CENTRAL_SIZE + lengths.reduce((sum, one) => sum + one, 0);
    if (at + length > end) throw damaged("its directory cannot be read");
    const rawName = bytes.subarray(at + CENTRAL_SIZE, at + CENTRAL_SIZE + nameLength);
    const name = decoder.decode(rawName);
    requireInside(name);
    if (flags & 1) throw new FileRefused(`The part ${name} is encrypted: save the workbook without a password.`);
    if (method !== 0 && method !== 8) throw new FileRefused(`The part ${name} is packed in a way that is not read.`);
    // Names of parts are told apart without regard to case (ISO/IEC 29500-2, 6.2.2).
    const key = name.toLowerCase();
    if (seen.has(key)) throw damaged(`two of its parts bear the name ${name}`);
    seen.add(key);
    const [crc, packedSize, size] = [16, 20, 24].map((field) => view.getUint32(at + field, true));
    const offset = view.getUint32(at + 42, true);
    if ([packedSize, size, offset].includes(0xffffffff)) {
      throw new FileRefused(
        "The package is in the zip64 form for very large files, which is not read. Save it smaller.",
      );
    }
    const record = bytes.subarray(at, at + length);
    heads.push({ name, rawName, method, crc: crc!, packedSize: packedSize!, size: size!, offset, record });
    at += length;
  }
  return heads;
}

/** Finds the packed bytes of an entry and holds its local header against the directory. */
function locate(bytes: Uint8Array, view: DataView, head: Head, next: number): ZipEntry {
  const { name, rawName, method, crc, packedSize, size, offset, record } = head;
  if (offset + LOCAL_SIZE > next || view.getUint32(offset, true) !== LOCAL) {
    throw damaged(`the part ${name} is not where its directory says`);
  }
  const nameLength = view.getUint16(offset + 26, true);
  const from = offset + LOCAL_SIZE + nameLength + view.getUint16(offset + 28, true);
  const own = bytes.subarray(offset + LOCAL_SIZE, offset + LOCAL_SIZE + nameLength);
  if (own.length !== rawName.length || own.some((byte, i) => byte !== rawName[i])) {
    throw damaged(`the part ${name} bears another name where it lies`);
  }
  if (from + packedSize > next) throw damaged(`the part ${name} is cut short or lies over another`);
  if (method === 0 && packedSize !== size) throw damaged(`the part ${name} has another size than its directory says`);
  const packed = bytes.subarray(from, from + packedSize);
  return { name, method, crc, packedSize, size, segment: bytes.subarray(offset, next), record, packed };
}

/**
 * The bytes of an entry, expanded and checked.
 * @throws FileRefused where they do not agree with the directory or would be too many
 */
export function expand(entry: ZipEntry, codec: Codec = PLAIN_CODEC): Uint8Array {
  const { name, size, packed, packedSize } = entry;
  if (size > ZIP_LIMITS.partBytes || (size > ZIP_LIMITS.ratioFrom && size > packedSize * ZIP_LIMITS.ratio)) {
    throw new FileRefused(
      `The part ${name} would expand to ${megabytes(size)}; at most ${megabytes(ZIP_LIMITS.partBytes)} and ${ZIP_LIMITS.ratio} times its packed size are read.`,
    );
  }
  const bytes = entry.method === 0 ? packed : inflate(entry, codec);
  if (bytes.length !== size) throw damaged(`the part ${name} has another size than its directory says`);
  if (crc32(bytes) !== entry.crc) throw damaged(`the part ${name} fails its checksum`);
  return bytes;
}

function inflate({ name, packed, size }: ZipEntry, codec: Codec): Uint8Array {
  try {
    // One byte more than promised: what does not fit is not expanded, and then the size tells.
    return codec.inflate(packed, size + 1);
  } catch {
    throw damaged(`the part ${name} cannot be expanded`);
  }
}
