/** The picture files within a workbook: each content once, and none that nothing shows any more. */
import type { PlainPicture } from "../../picture-jpeg.js";
import type { WorkbookPackage } from "../package/package.js";
import { crc32 } from "../zip/crc32.js";

export class Media {
  /** New parts. */
  readonly fresh = new Map<string, Uint8Array>();
  private readonly parts = new Map<PlainPicture, string>();
  private readonly shown = new Set<string>();

  constructor(
    private readonly pack: WorkbookPackage,
    pictures: readonly PlainPicture[],
  ) {
    for (const picture of pictures) if (!this.parts.has(picture)) this.parts.set(picture, this.place(picture));
  }

  part(picture: PlainPicture): string {
    const part = this.parts.get(picture)!;
    this.shown.add(part);
    return part;
  }

  /** Named after what it holds: the same picture finds its part again. */
  private place({ kind, bytes }: PlainPicture): string {
    const sum = crc32(bytes).toString(16).padStart(8, "0");
    for (let more = 0; ; more++) {
      const part = `xl/media/greybody-${sum}-${bytes.length}${more === 0 ? "" : `-${more}`}.${kind}`;
      const there = this.fresh.get(part) ?? (this.pack.has(part) ? this.pack.bytes(part) : undefined);
      if (there === undefined) this.fresh.set(part, bytes);
      if (there === undefined || isSame(there, bytes)) return part;
    }
  }

  /** Pictures that only relationships pointed to which are gone. @param cut ids by the part that had them */
  orphans(cut: ReadonlyMap<string, ReadonlySet<string>>): Set<string> {
    const lost = new Set<string>();
    const used = new Set(this.shown);
    for (const name of this.pack.names) {
      const [, folder = "", file] = /^(.*?)_rels\/([^/]*)\.rels$/.exec(name) ?? [];
      if (file === undefined) continue;
      const gone = cut.get(folder + file) ?? new Set();
      for (const { id, kind, target, isExternal } of this.pack.relationships(folder + file))
        if (isExternal) continue;
        else if (!gone.has(id)) used.add(target);
        else if (kind === "image") lost.add(target);
    }
    return new Set([...lost].filter((target) => !used.has(target) && this.pack.has(target)));
  }
}

function isSame(a: Uint8Array, b: Uint8Array): boolean {
  return a.length === b.length && a.every((byte, i) => byte === b[i]);
}
