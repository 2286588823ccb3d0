/** What a workbook says of itself: its sheets, names, date system, and where its strings and metadata lie. */
import { FileRefused } from "../refusal.js";
import { attribute, isTrue, localName, readXml } from "../xml/read.js";
import type { WorkbookPackage } from "./package.js";

export interface SheetEntry {
  readonly name: string;
  /** Name of its part. */
  readonly part: string;
  readonly state: "visible" | "hidden" | "veryHidden";
  /** A worksheet with cells; chart sheets, dialog sheets and macro sheets are none. */
  readonly isWorksheet: boolean;
}

export interface DefinedName {
  readonly name: string;
  readonly formula: string;
  /** Index of the sheet it is for, or undefined where it is the workbook's. */
  readonly sheet: number | undefined;
  readonly isHidden: boolean;
}

export interface WorkbookFacts {
  readonly part: string;
  readonly sheets: readonly SheetEntry[];
  readonly definedNames: readonly DefinedName[];
  /** Days count from 1 January 1904. */
  readonly is1904: boolean;
  /** Circular references are meant to be worked out step by step. */
  readonly isIterative: boolean;
  readonly sharedStrings: string | undefined;
  readonly metadata: string | undefined;
  /** Other workbooks that it refers to, in the order of their numbers [1], [2] … */
  readonly externalLinks: readonly string[];
}

const BINARY = "sheet.binary";

/** @throws FileRefused where there is no workbook of the kind that is read */
export function readWorkbook(pack: WorkbookPackage): WorkbookFacts {
  const main = pack.relationships("").find(({ kind }) => kind === "officeDocument");
  if (!main) throw new FileRefused("The package says nothing of a workbook: it is not an Excel workbook.");
  if (pack.contentType(main.target)?.includes(BINARY) === true || main.target.endsWith(".bin")) {
    throw new FileRefused("The workbook is in the binary form (.xlsb): open it in Excel and save it as .xlsx.");
  }
  if (!pack.has(main.target)) throw new FileRefused(`The package has no workbook part (${main.target} is absent).`);
  const links = pack.relationships(main.target);
  const byId = new Map(links.map((link) => [link.id, link]));
  const partOf = (kind: string): string | undefined => {
    const link = links.find((one) => one.kind === kind && !one.isExternal);
    return link && pack.has(link.target) ? link.target : undefined;
  };
  const sheets: SheetEntry[] = [];
  const definedNames: DefinedName[] = [];
  const externalLinks: string[] = [];
  let is1904 = false;
  let isIterative = false;
  let root = "";
  let name: { name: string; sheet: number | undefined; isHidden: boolean; formula: string } | undefined;
  readXml(main.target, pack.text(main.target), {
    open: (tag) => {
      const local = localName(tag.name);
      root ||= local;
      if (local === "sheet") {
        const link = byId.get(tag.attributes["r:id"] ?? attribute(tag, "id") ?? "");
        const state = attribute(tag, "state");
        if (link?.kind === "worksheet" && !pack.has(link.target)) {
          throw new FileRefused(`The package has no part ${link.target}, a sheet of the workbook: it is damaged.`);
        }
        sheets.push({
          name: attribute(tag, "name") ?? "",
          part: link?.target ?? "",
          state: state === "hidden" || state === "veryHidden" ? state : "visible",
          isWorksheet: link?.kind === "worksheet",
        });
      } else if (local === "definedName") {
        const sheet = attribute(tag, "localSheetId");
        name = {
          name: attribute(tag, "name") ?? "",
          sheet: sheet === undefined ? undefined : Number(sheet),
          isHidden: isTrue(attribute(tag, "hidden")),
          formula: "",
        };
      } else if (local === "workbookPr") is1904 ||= isTrue(attribute(tag, "date1904"));
      // An extension may have elements of the same names, which say nothing of it.
      else if (local === "calcPr") isIterative ||= isTrue(attribute(tag, "iterate"));
      else if (local === "externalReference") {
        externalLinks.push(byId.get(attribute(tag, "id") ?? "")?.target ?? "");
      }
    },
    text: (text) => {
      if (name) name.formula += text;
    },
    close: (tag) => {
      if (localName(tag) !== "definedName" || !name) return;
      definedNames.push(name);
      name = undefined;
    },
  });
  if (root !== "workbook" || sheets.length === 0) {
    throw new FileRefused(`The part ${main.target} is not a workbook with sheets.`);
  }
  return {
    part: main.target,
    sheets,
    definedNames,
    is1904,
    isIterative,
    sharedStrings: partOf("sharedStrings"),
    metadata: partOf("sheetMetadata"),
    externalLinks,
  };
}
