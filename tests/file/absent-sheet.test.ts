/** A workbook that names a sheet whose part is not in the package is damaged, not empty. */
import { WorkbookPackage } from "../../src/host/file/package/package.js";
import { readWorkbook } from "../../src/host/file/package/workbook.js";
import { writeZip } from "../../src/host/file/zip/write.js";

const TYPE = "http://schemas.openxmlformats.org/officeDocument/2006/relationships";
const link = (id: string, kind: string, target: string): string =>
  `<Relationships><Relationship Id="${id}" Type="${TYPE}/${kind}" Target="${target}"/></Relationships>`;

const parts: Readonly<Record<string, string>> = {
  "[Content_Types].xml": "<Types/>",
  "_rels/.rels": link("r1", "officeDocument", "xl/workbook.xml"),
  "xl/workbook.xml": '<workbook xmlns:r="r"><sheets><sheet name="One" sheetId="1" r:id="r1"/></sheets></workbook>',
  "xl/_rels/workbook.xml.rels": link("r1", "worksheet", "worksheets/sheet1.xml"),
};
const packed = (more: Readonly<Record<string, string>> = {}): WorkbookPackage => {
  const entries = Object.entries({ ...parts, ...more });
  return new WorkbookPackage(
    writeZip(entries.map(([name, text]) => ({ name, contents: new TextEncoder().encode(text) }))),
  );
};

test("refused, by the name of the part", () => {
  expect(() => readWorkbook(packed())).toThrow("The package has no part xl/worksheets/sheet1.xml");
});

test("with the part it is read", () => {
  const [sheet] = readWorkbook(packed({ "xl/worksheets/sheet1.xml": "<worksheet/>" })).sheets;
  expect(sheet).toMatchObject({ name: "One", isWorksheet: true });
});
