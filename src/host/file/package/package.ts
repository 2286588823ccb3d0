/** A workbook's package: its parts by name and by relationship, found as ISO/IEC 29500-2 says and not by where they usually lie. */
import { FileRefused } from "../refusal.js";
import { attribute, decodeXml, localName, readXml } from "../xml/read.js";
import { PLAIN_CODEC } from "../zip/codec.js";
import type { Codec } from "../zip/codec.js";
import { megabytes, ZIP_LIMITS } from "../zip/limits.js";
import { expand, readZip } from "../zip/read.js";
import type { ZipEntry } from "../zip/read.js";
import { writeZip } from "../zip/write.js";

export interface Relationship {
  readonly id: string;
  /** The last step of its type, such as "worksheet". Transitional and strict types end alike. */
  readonly kind: string;
  /** Name of the part it points to, without a leading slash; for what lies outside, the address as written. */
  readonly target: string;
  readonly isExternal: boolean;
}

const CONTENT_TYPES = "[Content_Types].xml";

export class WorkbookPackage {
  private readonly entries: readonly ZipEntry[];
  private readonly byName: ReadonlyMap<string, ZipEntry>;
  private readonly texts = new Map<string, string>();
  private readBytes = 0;

  /** @throws FileRefused where it is no package that may be read */
  constructor(
    bytes: Uint8Array,
    private readonly codec: Codec = PLAIN_CODEC,
  ) {
    this.entries = readZip(bytes);
    this.byName = new Map(this.entries.map((entry) => [entry.name.toLowerCase(), entry]));
    if (!this.has(CONTENT_TYPES)) {
      throw new FileRefused("The package has no list of content types: it is not an Excel workbook.");
    }
  }

  get names(): readonly string[] {
    return this.entries.map((entry) => entry.name);
  }

  has(part: string): boolean {
    return this.byName.has(part.toLowerCase());
  }

  /** Bytes of a part when expanded, as the package says; 0 where it is absent. */
  size(part: string): number {
    return this.byName.get(part.toLowerCase())?.size ?? 0;
  }

  /** The bytes of a part. @throws FileRefused where it is absent, damaged or too large */
  bytes(part: string): Uint8Array {
    const entry = this.byName.get(part.toLowerCase());
    if (!entry) throw new FileRefused(`The package has no part ${part}: it is damaged.`);
    this.readBytes += entry.size;
    if (this.readBytes > ZIP_LIMITS.totalBytes) {
      throw new FileRefused(
        `The parts of the workbook expand to more than ${megabytes(ZIP_LIMITS.totalBytes)}, the most that is read.`,
      );
    }
    return expand(entry, this.codec);
  }

  /** The text of an XML part, kept for the next time. */
  text(part: string): string {
    const key = part.toLowerCase();
    let text = this.texts.get(key);
    const size = this.size(part);
    if (size > ZIP_LIMITS.otherPartBytes) {
      throw new FileRefused(
        `The part ${part} would expand to ${megabytes(size)}; at most ${megabytes(ZIP_LIMITS.otherPartBytes)} are read of it.`,
      );
    }
    if (text === undefined) this.texts.set(key, (text = decodeXml(part, this.bytes(part)).text));
    return text;
  }

  /** Lets go of a part's text. */
  forget(part: string): void {
    this.texts.delete(part.toLowerCase());
  }

  /** What a part, or "" for the package itself, points to. */
  relationships(part: string): readonly Relationship[] {
    const slash = part.lastIndexOf("/");
    const [folder, name] = slash < 0 ? ["", part] : [part.slice(0, slash + 1), part.slice(slash + 1)];
    const file = `${folder}_rels/${name}.rels`;
    if (!this.has(file)) return [];
    const found: Relationship[] = [];
    readXml(file, this.text(file), {
      open: (tag) => {
        if (localName(tag.name) !== "Relationship") return;
        const type = attribute(tag, "Type") ?? "";
        const target = attribute(tag, "Target") ?? "";
        const isExternal = attribute(tag, "TargetMode") === "External";
        found.push({
          id: attribute(tag, "Id") ?? "",
          kind: type.slice(type.lastIndexOf("/") + 1),
          target: isExternal ? target : resolvePart(folder, target),
          isExternal,
        });
      },
    });
    return found;
  }

  /** The content type of a part, or undefined. */
  contentType(part: string): string | undefined {
    const key = `/${part}`.toLowerCase();
    const extension = part.slice(part.lastIndexOf(".") + 1).toLowerCase();
    let byExtension: string | undefined;
    let own: string | undefined;
    readXml(CONTENT_TYPES, this.text(CONTENT_TYPES), {
      open: (tag) => {
        const type = attribute(tag, "ContentType");
        if (localName(tag.name) === "Override" && attribute(tag, "PartName")?.toLowerCase() === key) own = type;
        if (localName(tag.name) === "Default" && attribute(tag, "Extension")?.toLowerCase() === extension)
          byExtension = type;
      },
    });
    return own ?? byExtension;
  }

  /** The package with some parts' contents replaced, new or gone; everything else byte for byte as it came, in the same order. */
  write(changed: ReadonlyMap<string, Uint8Array>, gone: ReadonlySet<string> = new Set()): Uint8Array {
    const byKey = new Map([...changed].map(([part, contents]) => [part.toLowerCase(), contents]));
    const without = new Set([...gone].map((part) => part.toLowerCase()));
    const kept = this.entries.filter(({ name }) => !without.has(name.toLowerCase()));
    const fresh = [...changed].filter(([part]) => !this.has(part));
    return writeZip(
      [
        ...kept.map((entry) => {
          const contents = byKey.get(entry.name.toLowerCase());
          return contents ? { entry, contents } : { entry };
        }),
        ...fresh.map(([name, contents]) => ({ name, contents })),
      ],
      this.codec,
    );
  }
}

/** A target as its part is called: relative to the folder of the part that points, or from the root. */
function resolvePart(folder: string, target: string): string {
  const whole = target.startsWith("/") ? target : `/${folder}${target}`;
  const steps: string[] = [];
  for (const step of whole.split("/")) {
    if (step === "..") {
      if (steps.length === 0)
        throw new FileRefused(`A relationship leads out of the package ("${target.slice(0, 80)}").`);
      steps.pop();
    } else if (step !== "." && step !== "") steps.push(step);
  }
  return steps.join("/");
}
