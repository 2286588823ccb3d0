/** A workbook's package: its parts, what points to what, and what each holds. The same book gives the same bytes. */
import { strToU8 } from "fflate";
import { crc32 } from "../zip/crc32.js";
import { writeZip } from "../zip/write.js";
import { drawingXml, pictureSize } from "./drawing.js";
import { ordinary } from "./looks.js";
import type { WrittenBook, WrittenPicture, WrittenSheet } from "./model.js";
import type { Link } from "./parts.js";
import { appPropertiesXml, contentTypesXml, corePropertiesXml, metadataXml, relationshipsXml } from "./parts.js";
import { requireSound } from "./require-sound.js";
import { sheetXml } from "./sheet.js";
import { SharedStrings } from "./strings.js";
import { Styles } from "./styles.js";
import { tableXml } from "./table.js";
import { themeXml } from "./theme.js";
import { workbookXml } from "./workbook.js";

const SPREADSHEET = "application/vnd.openxmlformats-officedocument.spreadsheetml";
const OFFICE = "application/vnd.openxmlformats-officedocument";
const PACKAGE = "application/vnd.openxmlformats-package";
const CORE_PROPERTIES = "http://schemas.openxmlformats.org/package/2006/relationships/metadata/core-properties";

/** The parts of a package as they are found. */
class Parts {
  private readonly contents = new Map<string, Uint8Array>();
  private readonly types: { name: string; type: string }[] = [];
  private readonly defaults = new Map([
    ["rels", `${PACKAGE}.relationships+xml`],
    ["xml", "application/xml"],
  ]);
  private readonly media = new Map<string, string>();

  add(name: string, type: string, xml: string): void {
    this.types.push({ name, type });
    this.contents.set(name, strToU8(xml));
  }

  link(part: string, links: readonly Link[]): void {
    if (links.length === 0) return;
    const slash = part.lastIndexOf("/") + 1;
    this.contents.set(`${part.slice(0, slash)}_rels/${part.slice(slash)}.rels`, strToU8(relationshipsXml(links)));
  }

  /** The part of a picture; the same bytes are embedded once. */
  picture({ bytes }: WrittenPicture): string {
    const key = `${bytes.length} ${crc32(bytes)}`;
    const known = this.media.get(key);
    if (known !== undefined && isSame(this.contents.get(known), bytes)) return known;
    const kind = pictureSize(bytes)?.kind ?? "png";
    const count = [...this.contents.keys()].filter((name) => name.startsWith("xl/media/")).length;
    const name = `xl/media/image${count + 1}.${kind}`;
    this.defaults.set(kind, `image/${kind}`);
    this.contents.set(name, bytes);
    this.media.set(key, name);
    return name;
  }

  zip(): Uint8Array {
    const types = strToU8(contentTypesXml(this.defaults, this.types));
    const entries = [{ name: "[Content_Types].xml", contents: types }];
    for (const [name, contents] of this.contents) entries.push({ name, contents: Uint8Array.from(contents) });
    return writeZip(entries);
  }
}

function isSame(a: Uint8Array | undefined, b: Uint8Array): boolean {
  return a?.length === b.length && a.every((byte, i) => byte === b[i]);
}

/**
 * The bytes of an .xlsx file. Formulas have no saved values yet.
 * @throws Error where the description is at fault: names that Excel does not take, cells or tables that overlap
 */
export function packBook(book: WrittenBook): Uint8Array {
  requireSound(book);
  const parts = new Parts();
  const styles = new Styles(ordinary);
  const strings = new SharedStrings();
  parts.link("", [
    { id: "rId1", kind: "officeDocument", target: "xl/workbook.xml" },
    { id: "rId2", kind: CORE_PROPERTIES, target: "docProps/core.xml" },
    { id: "rId3", kind: "extended-properties", target: "docProps/app.xml" },
  ]);
  parts.add("docProps/core.xml", `${PACKAGE}.core-properties+xml`, corePropertiesXml(book.title));
  parts.add("docProps/app.xml", `${OFFICE}.extended-properties+xml`, appPropertiesXml());
  const links: Link[] = book.sheets.map((_, at) => ({
    id: `rId${at + 1}`,
    kind: "worksheet",
    target: `worksheets/sheet${at + 1}.xml`,
  }));
  const sheetIds = links.map(({ id }) => id);
  for (const [kind, target] of [
    ["theme", "theme/theme1.xml"],
    ["styles", "styles.xml"],
    ["sharedStrings", "sharedStrings.xml"],
    ["sheetMetadata", "metadata.xml"],
  ] as const)
    links.push({ id: `rId${links.length + 1}`, kind, target });
  parts.add("xl/workbook.xml", `${SPREADSHEET}.sheet.main+xml`, workbookXml(book, sheetIds));
  parts.link("xl/workbook.xml", links);
  let tables = 0;
  book.sheets.forEach((sheet, at) => {
    tables = addSheet(parts, { sheet, at, tables, styles, strings });
  });
  parts.add("xl/theme/theme1.xml", `${OFFICE}.theme+xml`, themeXml());
  parts.add("xl/styles.xml", `${SPREADSHEET}.styles+xml`, styles.xml());
  parts.add("xl/sharedStrings.xml", `${SPREADSHEET}.sharedStrings+xml`, strings.xml());
  parts.add("xl/metadata.xml", `${SPREADSHEET}.sheetMetadata+xml`, metadataXml());
  return parts.zip();
}

interface SheetWork {
  readonly sheet: WrittenSheet;
  readonly at: number;
  /** Tables of the sheets before. */
  readonly tables: number;
  readonly styles: Styles;
  readonly strings: SharedStrings;
}

/** Gives the number of tables so far. */
function addSheet(parts: Parts, { sheet, at, tables, styles, strings }: SheetWork): number {
  const part = `xl/worksheets/sheet${at + 1}.xml`;
  const links: Link[] = sheet.tables.map((_, i) => ({
    id: `rId${i + 1}`,
    kind: "table",
    target: `../tables/table${tables + i + 1}.xml`,
  }));
  const tableIds = links.map(({ id }) => id);
  const drawing = sheet.pictures.length === 0 ? undefined : `rId${links.length + 1}`;
  if (drawing !== undefined) links.push({ id: drawing, kind: "drawing", target: `../drawings/drawing${at + 1}.xml` });
  const xml = sheetXml(sheet, { styles, strings, tables: tableIds, drawing, isFirst: at === 0 });
  parts.add(part, `${SPREADSHEET}.worksheet+xml`, xml);
  parts.link(part, links);
  sheet.tables.forEach((table, i) => {
    const number = tables + i + 1;
    parts.add(`xl/tables/table${number}.xml`, `${SPREADSHEET}.table+xml`, tableXml(table, number));
  });
  if (drawing !== undefined) {
    const name = `xl/drawings/drawing${at + 1}.xml`;
    const files = sheet.pictures.map((picture) => parts.picture(picture));
    const unique = [...new Set(files)];
    const idOf = (file: string): string => `rId${unique.indexOf(file) + 1}`;
    parts.add(name, `${OFFICE}.drawing+xml`, drawingXml(sheet, files.map(idOf)));
    parts.link(
      name,
      unique.map((file) => ({ id: idOf(file), kind: "image", target: `../media/${file.slice("xl/media/".length)}` })),
    );
  }
  return tables + sheet.tables.length;
}
