/**
 * What Excel demands of a workbook's package, beside being well-formed; without it Excel offers to repair the file.
 * ECMA-376 part 1: 12.3 (parts), 18.2.5 (names), 18.3.1.32 and .33 (validations), 18.3.1.40 (formulas), 18.3.1.99 (order of a
 * worksheet's elements, from the schema), 18.5.1.2 (tables), 18.8 (styles); ISO/IEC 29500-2, 9.3 and 10.1. Lengths and
 * characters of sheet names, and that a header cell bears its column's name, from memory of what Excel says.
 */
import { SaxesParser, type SaxesTagPlain } from "saxes";
import { strFromU8, unzipSync } from "fflate";
import { parseReference } from "../../src/host/reference.js";

export interface Node {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Node[];
  text: string;
}

function parse(xml: string): Node {
  const root: Node = { name: "", attributes: {}, children: [], text: "" };
  const open = [root];
  const parser = new SaxesParser({ xmlns: false });
  parser.on("error", (error) => {
    throw error;
  });
  parser.on("opentag", ({ name, attributes }: SaxesTagPlain) => {
    const node: Node = { name, attributes, children: [], text: "" };
    open.at(-1)!.children.push(node);
    open.push(node);
  });
  parser.on("text", (text) => (open.at(-1)!.text += text));
  parser.on("closetag", () => void open.pop());
  parser.write(xml).close();
  return root.children[0]!;
}

export function all({ children }: Node, name: string): Node[] {
  return children.flatMap((child) => [...(child.name === name ? [child] : []), ...all(child, name)]);
}

export type Parts = ReadonlyMap<string, Uint8Array>;

export const partsOf = (bytes: Uint8Array): Parts => new Map(Object.entries(unzipSync(bytes)));
export const xmlOf = (parts: Parts, name: string): Node => parse(strFromU8(parts.get(name)!));

const ORDER = (
  "sheetPr dimension sheetViews sheetFormatPr cols sheetData sheetCalcPr sheetProtection protectedRanges scenarios " +
  "autoFilter sortState dataConsolidate customSheetViews mergeCells phoneticPr conditionalFormatting dataValidations " +
  "hyperlinks printOptions pageMargins pageSetup headerFooter rowBreaks colBreaks customProperties cellWatches " +
  "ignoredErrors smartTags drawing legacyDrawing legacyDrawingHF picture oleObjects controls webPublishItems tableParts extLst"
).split(" ");

/** Every rule that is broken, in words. */
export function brokenRules(bytes: Uint8Array): string[] {
  const parts = partsOf(bytes);
  const broken: string[] = [];
  const demand = (holds: boolean, words: string): void => {
    if (!holds) broken.push(words);
  };
  for (const name of parts.keys()) if (/\.(?:xml|rels)$/.test(name)) parse(strFromU8(parts.get(name)!));
  checkPackage(parts, demand);
  const workbook = xmlOf(parts, "xl/workbook.xml");
  const sheetNames = all(workbook, "sheet").map(({ attributes }) => attributes.name ?? "");
  for (const name of sheetNames)
    demand(name.length <= 31 && name !== "" && !/[[\]:*?/\\]|^'|'$/.test(name), `the sheet's name ${name}`);
  demand(isUnique(sheetNames), "sheets' names are unique");
  checkNames(workbook, parts, demand);
  for (const name of parts.keys()) if (/^xl\/worksheets\/[^/]+\.xml$/.test(name)) checkSheet(parts, name, demand);
  return broken;
}

type Demand = (holds: boolean, words: string) => void;

const isUnique = (names: readonly string[]): boolean =>
  new Set(names.map((name) => name.toLowerCase())).size === names.length;

/** Every part has a content type and is reached; every target is there. */
function checkPackage(parts: Parts, demand: Demand): void {
  const types = xmlOf(parts, "[Content_Types].xml");
  const overrides = new Set(all(types, "Override").map(({ attributes }) => attributes.PartName));
  const defaults = new Set(all(types, "Default").map(({ attributes }) => attributes.Extension));
  for (const name of overrides) demand(parts.has((name ?? "/").slice(1)), `content type of ${name}, which is absent`);
  const reached = new Set<string>();
  for (const name of parts.keys()) {
    if (name === "[Content_Types].xml") continue;
    const extension = name.slice(name.lastIndexOf(".") + 1);
    demand(overrides.has(`/${name}`) || defaults.has(extension), `${name} has a content type`);
    demand(extension !== "xml" || overrides.has(`/${name}`), `${name} has a content type of its own`);
    if (!name.endsWith(".rels")) continue;
    const folder = name.replace(/_rels\/[^/]+$/, "");
    const links = all(xmlOf(parts, name), "Relationship");
    demand(isUnique(links.map(({ attributes }) => attributes.Id ?? "")), `${name}: ids are unique`);
    for (const { attributes } of links) {
      const target = new URL(attributes.Target ?? "", `file:///${folder}`).pathname.slice(1);
      demand(parts.has(target), `${name} points to ${target}`);
      reached.add(target);
    }
  }
  for (const name of parts.keys()) demand(/\.rels$|^\[/.test(name) || reached.has(name), `something points to ${name}`);
}

function checkNames(workbook: Node, parts: Parts, demand: Demand): void {
  const names = all(workbook, "definedName").map(({ attributes }) => attributes);
  for (const { name = "" } of names)
    demand(
      /^[\p{L}_\\][\p{L}\p{N}_.\\]*$/u.test(name) &&
        !parseReference(name) &&
        !/^[RC]$/i.test(name) &&
        name.length < 256,
      `the name ${name}`,
    );
  const ids: string[] = [];
  const tables: string[] = [];
  for (const part of parts.keys()) {
    if (!part.startsWith("xl/tables/")) continue;
    const { attributes } = xmlOf(parts, part);
    ids.push(attributes.id ?? "");
    tables.push(attributes.displayName ?? "");
  }
  demand(isUnique(ids), "tables' ids are unique");
  const whole = names.filter(({ localSheetId }) => localSheetId === undefined).map(({ name = "" }) => name);
  demand(isUnique([...tables, ...whole]), "names of tables and of the workbook are unique");
  const local = names.map(({ name = "", localSheetId = "-" }) => `${localSheetId} ${name}`);
  demand(isUnique(local), "names are unique in their sheet");
}

function checkSheet(parts: Parts, part: string, demand: Demand): void {
  const sheet = xmlOf(parts, part);
  const places = sheet.children.map(({ name }) => ORDER.indexOf(name));
  demand(!places.includes(-1), `${part}: known elements only`);
  demand(
    places.every((place, i) => i === 0 || place >= places[i - 1]!),
    `${part}: elements in order: ${sheet.children.map(({ name }) => name).join(" ")}`,
  );
  const styles = xmlOf(parts, "xl/styles.xml");
  const count = (list: string): number => all(styles, list)[0]?.children.length ?? 0;
  const [xfs, dxfs] = [count("cellXfs"), count("dxfs")];
  const strings = all(xmlOf(parts, "xl/sharedStrings.xml"), "si").length;
  const cells = new Map(all(sheet, "c").map((cell) => [cell.attributes.r ?? "", cell]));
  demand(cells.size === all(sheet, "c").length, `${part}: each cell once`);
  let last = [-1, -1];
  for (const [address, cell] of cells) {
    const at = parseReference(address)!;
    const isAfter = at.startRow > last[0]! || (at.startRow === last[0] && at.startColumn > last[1]!);
    demand(isAfter, `${part}!${address}: cells in order`);
    last = [at.startRow, at.startColumn];
    demand(Number(cell.attributes.s ?? 0) < xfs, `${part}!${address}: a style that is there`);
    const value = all(cell, "v")[0]?.text;
    if (cell.attributes.t === "s") demand(Number(value) < strings, `${part}!${address}: a string that is there`);
    const [formula] = all(cell, "f");
    demand((formula?.text.length ?? 0) <= 8192, `${part}!${address}: formula not too long`);
    demand(
      cell.attributes.cm === undefined || formula?.attributes.t === "array",
      `${part}!${address}: a dynamic array`,
    );
    if (formula?.attributes.t === "array") {
      const range = parseReference(formula.attributes.ref ?? "");
      demand(range?.startRow === at.startRow && range.startColumn === at.startColumn, `${part}!${address}: its range`);
    }
  }
  for (const rule of all(sheet, "cfRule"))
    demand(Number(rule.attributes.dxfId) < dxfs, `${part}: a look that is there`);
  checkLists(sheet, part, demand);
  checkTables(parts, part, cells, demand);
}

function checkLists(sheet: Node, part: string, demand: Demand): void {
  for (const list of ["dataValidations", "cols", "tableParts"])
    for (const node of all(sheet, list)) {
      const { count } = node.attributes;
      demand(count === undefined || Number(count) === node.children.length, `${part}: count of ${list}`);
      demand(node.children.length > 0, `${part}: ${list} is not empty`);
    }
  for (const { attributes, children } of all(sheet, "dataValidation")) {
    for (const { text } of children) demand(text.length <= 255, `${part}: validation of ${attributes.sqref}: ${text}`);
    for (const [key, most] of Object.entries({ errorTitle: 32, error: 255, promptTitle: 32, prompt: 255 }))
      demand((attributes[key] ?? "").length <= most, `${part}: ${key} of ${attributes.sqref}`);
  }
  for (const { text } of all(sheet, "oddFooter")) demand(text.length <= 255, `${part}: foot`);
}

/** Header cells bear the names of their columns; a table lies on cells. */
function checkTables(parts: Parts, part: string, cells: ReadonlyMap<string, Node>, demand: Demand): void {
  const strings = all(xmlOf(parts, "xl/sharedStrings.xml"), "si").map((one) => all(one, "t")[0]?.text);
  const rels = part.replace("worksheets/", "worksheets/_rels/") + ".rels";
  if (!parts.has(rels)) return;
  for (const { attributes } of all(xmlOf(parts, rels), "Relationship")) {
    if (!attributes.Type?.endsWith("/table")) continue;
    const table = xmlOf(parts, attributes.Target!.replace("../", "xl/"));
    const range = parseReference(table.attributes.ref ?? "")!;
    const columns = all(table, "tableColumn");
    demand(columns.length === range.endColumn - range.startColumn + 1, `${part}: width of a table`);
    demand(isUnique(columns.map((column) => column.attributes.name ?? "")), `${part}: columns of a table`);
    const [first] = table.attributes.ref!.split(":");
    const headers = [...cells].filter(([address]) => address.replace(/\D/g, "") === first!.replace(/\D/g, ""));
    const said = headers.slice(0, columns.length).map(([, cell]) => strings[Number(all(cell, "v")[0]?.text)]);
    demand(
      JSON.stringify(said) === JSON.stringify(columns.map(({ attributes: { name } }) => name)),
      `${part}: headers`,
    );
  }
}
