import type { TablePosition } from "../../embedded/structured.js";
import { parseReference } from "../../reference.js";
import { attribute, decodeXstring, localName, readXml } from "../xml/read.js";

/** A table of a sheet by its part, or undefined where the part says nothing that can be placed. */
export function readTable(part: string, text: string, sheet: string): TablePosition | undefined {
  let name = "";
  let ref = "";
  let headerRows = 1;
  let totalsRows = 0;
  const columns: string[] = [];
  readXml(part, text, {
    open: (tag) => {
      const local = localName(tag.name);
      // An extension of the table has an element table of its own.
      if (local === "table" && ref === "") {
        name = attribute(tag, "displayName") ?? attribute(tag, "name") ?? "";
        ref = attribute(tag, "ref") ?? "";
        headerRows = Number(attribute(tag, "headerRowCount") ?? 1);
        totalsRows = Number(attribute(tag, "totalsRowCount") ?? 0);
      } else if (local === "tableColumn") columns.push(decodeXstring(attribute(tag, "name") ?? ""));
    },
  });
  const range = parseReference(ref);
  if (!range || name === "") return undefined;
  return {
    name,
    sheet,
    headerRow: range.startRow,
    firstRow: range.startRow + headerRows,
    lastRow: range.endRow - totalsRows,
    ...(totalsRows > 0 ? { totalsRow: range.endRow } : {}),
    columns: columns.map((column, i) => ({ names: columnNames(column), column: range.startColumn + i })),
  };
}

/** A line break in a header is written in formulas as one character, in the part as one or two. */
function columnNames(column: string): readonly string[] {
  const names = new Set([column, column.replaceAll("\r\n", "\n"), column.replaceAll(/\r?\n/g, " ")]);
  return [...names];
}
