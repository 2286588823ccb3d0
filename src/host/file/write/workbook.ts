/** The workbook part (ECMA-376 part 1, 18.2.27): sheets, names, and how it is opened. */
import { element, MAIN, RELATIONSHIPS, xstring, XML_HEAD } from "./element.js";
import type { WrittenBook, WrittenSheet } from "./model.js";
import { fixedAreaName, sheetPrefix } from "./place.js";
import { storedFormula } from "./stored-formula.js";

/** Excel's own number of its present way of calculating: with a lower one it works everything out anew when it opens a file, and without the add-in every saved number would turn into #NAME?. From memory. */
const CALCULATION = 191029;

/** @param sheetIds ids of the relationships to the sheets */
export function workbookXml({ sheets, names }: WrittenBook, sheetIds: readonly string[]): string {
  const entries = sheets.map(({ name }, at) => element("sheet", { name, sheetId: at + 1, "r:id": sheetIds[at] }));
  const own = names.map(({ name, formula, hidden }) => ({
    name,
    xml: element("definedName", { name, hidden: hidden === true ? true : undefined }, xstring(storedFormula(formula))),
  }));
  const titles = sheets.flatMap((sheet, at) => {
    const printed = { "_xlnm.Print_Area": sheet.print.area ?? "", "_xlnm.Print_Titles": printTitles(sheet) };
    return Object.entries(printed).flatMap(([name, formula]) =>
      formula === "" ? [] : [{ name, xml: element("definedName", { name, localSheetId: at }, xstring(formula)) }],
    );
  });
  const sorted = [...titles, ...own].sort((a, b) => (a.name.toLowerCase() < b.name.toLowerCase() ? -1 : 1));
  const named = sorted.map(({ xml }) => xml);
  return (
    XML_HEAD +
    element(
      "workbook",
      { xmlns: MAIN, "xmlns:r": RELATIONSHIPS },
      element("workbookPr", { defaultThemeVersion: 124226 }),
      element(
        "bookViews",
        {},
        element("workbookView", { xWindow: 0, yWindow: 0, windowWidth: 28800, windowHeight: 15000, tabRatio: 800 }),
      ),
      element("sheets", {}, ...entries),
      named.length === 0 ? "" : element("definedNames", {}, ...named),
      element("calcPr", { calcId: CALCULATION }),
    )
  );
}

/** Columns and rows that stand on every printed page. */
function printTitles({ name, print: { repeatedRows, repeatedColumns } }: WrittenSheet): string {
  const columns = fixedAreaName({ startRow: 0, endRow: 0, startColumn: 0, endColumn: repeatedColumns - 1 });
  const letters = columns.replaceAll(/\$\d+/g, "").split(":");
  const parts = [
    repeatedColumns === 0 ? "" : `${sheetPrefix(name)}${letters[0] ?? ""}:${letters.at(-1) ?? ""}`,
    repeatedRows === 0 ? "" : `${sheetPrefix(name)}$1:$${repeatedRows}`,
  ];
  return parts.filter((part) => part !== "").join(",");
}
