/** Finds the cells of a worksheet part: values, formulas, and where each cell that a recalculation may change stands in the text. */
import { columnIndex } from "../../reference.js";
import { attribute, isTrue, localName, readXml } from "../xml/read.js";
import type { Tag } from "../xml/read.js";
import { valueOf } from "./cells.js";
import type { CellSink, FileCell, FileRow, FormulaElement, ScannedSheet } from "./cells.js";
import { scanQuickly } from "./scan-quick.js";

const REFERENCE = /^([A-Za-z]{1,3})([1-9]\d{0,6})$/;
const KINDS = new Set(["array", "shared", "dataTable"]);

interface Draft {
  row: number;
  column: number;
  type: string | undefined;
  cellMetadata: number;
  valueMetadata: number;
  start: number;
  formula:
    | { text: string; kind: FormulaElement["kind"]; ref: string | undefined; sharedIndex: string | undefined }
    | undefined;
  value: string | undefined;
  inline: string | undefined;
}

/**
 * Goes once through the part. Only elements of the sheet's own namespace count: an f of an extension is no formula of a cell.
 * @throws FileRefused where the XML is not well-formed
 */
export function scanSheet(part: string, text: string, sharedStrings: readonly string[], sink: CellSink): ScannedSheet {
  const quick = scanQuickly(part, text, sharedStrings, sink);
  if (quick) return quick;
  sink.reset();
  const rows: FileRow[] = [];
  let dataEnd = -1;
  let openRow: Omit<FileRow, "close"> | undefined;
  let prefix: string | undefined;
  let row = -1;
  let column = -1;
  let cell: Draft | undefined;
  let into: "f" | "v" | "t" | undefined;
  // Phonetic runs of an inline string are a reading aid, not text.
  let phonetic = 0;

  const place = (tag: Tag): void => {
    const match = REFERENCE.exec(attribute(tag, "r") ?? "");
    // A cell without an address stands beside the last one (ECMA-376, 18.3.1.4: r is optional).
    column = match ? columnIndex(match[1] ?? "") : column + 1;
    if (match) row = Number(match[2]) - 1;
  };
  const opened = (tag: Tag, end: number): void => {
    prefix ??= tag.name.slice(0, tag.name.length - localName(tag.name).length);
    switch (tag.name.startsWith(prefix) ? tag.name.slice(prefix.length) : "") {
      case "row": {
        const given = Number(attribute(tag, "r"));
        row = Number.isInteger(given) && given > 0 ? given - 1 : row + 1;
        column = -1;
        openRow = {
          row,
          inside: end,
          start: text.lastIndexOf("<", end - 1),
          isSelfClosing: tag.isSelfClosing,
          isHidden: isTrue(attribute(tag, "hidden")),
        };
        break;
      }
      case "c":
        place(tag);
        cell = {
          row,
          column,
          type: attribute(tag, "t"),
          cellMetadata: Number(attribute(tag, "cm") ?? 0),
          valueMetadata: Number(attribute(tag, "vm") ?? 0),
          start: text.lastIndexOf("<", end - 1),
          formula: undefined,
          value: undefined,
          inline: undefined,
        };
        break;
      case "f":
        if (cell) {
          const kind = attribute(tag, "t") ?? "";
          cell.formula = {
            text: "",
            kind: KINDS.has(kind) ? (kind as FormulaElement["kind"]) : "normal",
            ref: attribute(tag, "ref"),
            sharedIndex: attribute(tag, "si"),
          };
          into = "f";
        }
        break;
      case "v":
        if (cell) {
          cell.value ??= "";
          into = "v";
        }
        break;
      case "is":
        if (cell) cell.inline ??= "";
        break;
      case "rPh":
        phonetic++;
        break;
      case "t":
        if (cell?.inline !== undefined && phonetic === 0) into = "t";
        break;
      default:
    }
  };
  const closed = (name: string, end: number): void => {
    switch (name.startsWith(prefix ?? "") ? name.slice((prefix ?? "").length) : "") {
      case "f":
      case "v":
      case "t":
        into = undefined;
        break;
      case "rPh":
        phonetic--;
        break;
      case "row":
        if (openRow) rows.push({ ...openRow, close: openRow.isSelfClosing ? end : text.lastIndexOf("<", end - 1) });
        openRow = undefined;
        break;
      case "sheetData":
        dataEnd = text.lastIndexOf("<", end - 1);
        break;
      case "c":
        if (cell) sink.cell(finished(cell, end, sharedStrings));
        cell = undefined;
        break;
      default:
    }
  };
  const heard = (piece: string): void => {
    if (!cell || into === undefined) return;
    if (into === "f" && cell.formula) cell.formula.text += piece;
    else if (into === "v") cell.value = (cell.value ?? "") + piece;
    else if (into === "t") cell.inline = (cell.inline ?? "") + piece;
  };
  readXml(part, text, { open: opened, close: closed, text: heard });
  return { rows, dataEnd, prefix: prefix ?? "" };
}

function finished(draft: Draft, end: number, sharedStrings: readonly string[]): FileCell {
  const { row, column, type, cellMetadata, valueMetadata, start, formula } = draft;
  return { row, column, value: valueOf(draft, sharedStrings), type, formula, cellMetadata, valueMetadata, start, end };
}
