/** Makes small workbook files as text, each shape as a test needs it: nothing of ours that writes files has a part in it. */
import { strToU8, zipSync } from "fflate";

export interface MadeSheet {
  readonly name: string;
  /** Rows, as they stand inside sheetData. */
  readonly rows: string;
  readonly state?: "hidden" | "veryHidden";
  /** Behind sheetData. */
  readonly after?: string;
  /** The element table of each table of the sheet, without its tableColumns' surroundings: whole parts. */
  readonly tables?: readonly string[];
}

export interface MadeWorkbook {
  readonly sheets: readonly MadeSheet[];
  /** Elements definedName. */
  readonly names?: string;
  readonly sharedStrings?: readonly string[];
  readonly is1904?: boolean;
  /** Strict namespaces of ISO/IEC 29500. */
  readonly isStrict?: boolean;
  /** Before the names of all elements of workbook and sheets, without colon. */
  readonly prefix?: string;
  /** Relationships name parts from the root of the package. */
  readonly isAbsolute?: boolean;
  /** cm="1" means a dynamic array. */
  readonly hasDynamicArrays?: boolean;
  readonly externalLink?: boolean;
  /** Further parts, or others in the place of the usual ones. */
  readonly parts?: Readonly<Record<string, string | Uint8Array>>;
  readonly level?: 0 | 1 | 6;
}

const HEAD = '<?xml version="1.0" encoding="UTF-8" standalone="yes"?>\n';
const OFFICE = "http://schemas.openxmlformats.org";
const TYPES = "application/vnd.openxmlformats-officedocument.spreadsheetml";

/** The parts of the workbook by name, in the order of the package. */
export function partsOf(made: MadeWorkbook): Record<string, string | Uint8Array> {
  const { sheets, prefix, isStrict = false, isAbsolute = false } = made;
  const p = prefix === undefined ? "" : `${prefix}:`;
  const spaces = isStrict
    ? {
        main: "http://purl.oclc.org/ooxml/spreadsheetml/main",
        r: "http://purl.oclc.org/ooxml/officeDocument/relationships",
      }
    : { main: `${OFFICE}/spreadsheetml/2006/main`, r: `${OFFICE}/officeDocument/2006/relationships` };
  const xmlns = `xmlns${prefix === undefined ? "" : `:${prefix}`}="${spaces.main}" xmlns:r="${spaces.r}"`;
  const from = isAbsolute ? "/xl/" : "";
  const relation = (id: string, kind: string, target: string, rest = ""): string =>
    `<Relationship Id="${id}" Type="${spaces.r}/${kind}" Target="${target}"${rest}/>`;
  const relations = (inside: string): string =>
    `${HEAD}<Relationships xmlns="${OFFICE}/package/2006/relationships">${inside}</Relationships>`;

  const parts: Record<string, string | Uint8Array> = {};
  const overrides: [string, string][] = [["xl/workbook.xml", `${TYPES}.sheet.main+xml`]];
  const links = sheets.map((_, i) => relation(`rId${i + 1}`, "worksheet", `${from}worksheets/sheet${i + 1}.xml`));
  const list = sheets.map(({ name, state }, i) => {
    const hidden = state === undefined ? "" : ` state="${state}"`;
    return `<${p}sheet name="${name}" sheetId="${i + 1}"${hidden} r:id="rId${i + 1}"/>`;
  });
  let tables = 0;
  for (const [i, sheet] of sheets.entries()) {
    const part = `xl/worksheets/sheet${i + 1}.xml`;
    overrides.push([part, `${TYPES}.worksheet+xml`]);
    parts[part] =
      `${HEAD}<${p}worksheet ${xmlns}><${p}sheetData>${sheet.rows}</${p}sheetData>${sheet.after ?? ""}</${p}worksheet>`;
    if (sheet.tables === undefined) continue;
    const own = sheet.tables.map((table, t) => {
      const name = `xl/tables/table${++tables}.xml`;
      parts[name] = HEAD + table;
      overrides.push([name, `${TYPES}.table+xml`]);
      return relation(`rId${t + 1}`, "table", `../tables/table${tables}.xml`);
    });
    parts[`xl/worksheets/_rels/sheet${i + 1}.xml.rels`] = relations(own.join(""));
  }
  if (made.sharedStrings) {
    overrides.push(["xl/sharedStrings.xml", `${TYPES}.sharedStrings+xml`]);
    links.push(relation("rIdS", "sharedStrings", `${from}sharedStrings.xml`));
    const items = made.sharedStrings.map((text) => `<si><t xml:space="preserve">${text}</t></si>`).join("");
    parts["xl/sharedStrings.xml"] = `${HEAD}<sst xmlns="${spaces.main}">${items}</sst>`;
  }
  if (made.hasDynamicArrays === true) {
    overrides.push(["xl/metadata.xml", `${TYPES}.sheetMetadata+xml`]);
    links.push(relation("rIdM", "sheetMetadata", `${from}metadata.xml`));
    parts["xl/metadata.xml"] = HEAD + METADATA;
  }
  let external = "";
  if (made.externalLink === true) {
    overrides.push(["xl/externalLinks/externalLink1.xml", `${TYPES}.externalLink+xml`]);
    links.push(relation("rIdX", "externalLink", `${from}externalLinks/externalLink1.xml`));
    parts["xl/externalLinks/externalLink1.xml"] =
      `${HEAD}<externalLink xmlns="${spaces.main}" xmlns:r="${spaces.r}"><externalBook r:id="rId1"/></externalLink>`;
    parts["xl/externalLinks/_rels/externalLink1.xml.rels"] = relations(
      relation("rId1", "externalLinkPath", "other.xlsx", ' TargetMode="External"'),
    );
    external = `<${p}externalReferences><${p}externalReference r:id="rIdX"/></${p}externalReferences>`;
  }
  const dates = made.is1904 === true ? `<${p}workbookPr date1904="1"/>` : "";
  const names = made.names === undefined ? "" : `<${p}definedNames>${made.names}</${p}definedNames>`;
  parts["xl/workbook.xml"] =
    `${HEAD}<${p}workbook ${xmlns}>${dates}<${p}sheets>${list.join("")}</${p}sheets>${external}${names}</${p}workbook>`;
  parts["xl/_rels/workbook.xml.rels"] = relations(links.join(""));
  parts["_rels/.rels"] = relations(relation("rId1", "officeDocument", `${isAbsolute ? "/" : ""}xl/workbook.xml`));
  const types = overrides.map(([part, type]) => `<Override PartName="/${part}" ContentType="${type}"/>`).join("");
  const head: Record<string, string | Uint8Array> = {
    "[Content_Types].xml":
      `${HEAD}<Types xmlns="${OFFICE}/package/2006/content-types">` +
      '<Default Extension="rels" ContentType="application/vnd.openxmlformats-package.relationships+xml"/>' +
      `<Default Extension="xml" ContentType="application/xml"/>${types}</Types>`,
  };
  return { ...head, ...parts, ...made.parts };
}

export function makeWorkbook(made: MadeWorkbook): Uint8Array {
  const parts = Object.entries(partsOf(made)).map(([name, contents]): [string, Uint8Array] => [
    name,
    typeof contents === "string" ? strToU8(contents) : contents,
  ]);
  return zipSync(Object.fromEntries(parts), { level: made.level ?? 6, mtime: new Date(1980, 0, 1) });
}

const METADATA =
  '<metadata xmlns="http://schemas.openxmlformats.org/spreadsheetml/2006/main" ' +
  'xmlns:xda="http://schemas.microsoft.com/office/spreadsheetml/2017/dynamicarray">' +
  '<metadataTypes count="1"><metadataType name="XLDAPR" minSupportedVersion="120000" copy="1" pasteAll="1" ' +
  'pasteValues="1" merge="1" splitFirst="1" rowColShift="1" clearFormats="1" clearComments="1" assign="1" coerce="1" ' +
  'cellMeta="1"/></metadataTypes><futureMetadata name="XLDAPR" count="1"><bk><extLst>' +
  '<ext uri="{bdbb8cdc-fa1e-496e-a857-3c3f30c029c3}"><xda:dynamicArrayProperties fDynamic="1" fCollapsed="0"/></ext>' +
  '</extLst></bk></futureMetadata><cellMetadata count="1"><bk><rc t="1" v="0"/></bk></cellMetadata></metadata>';
