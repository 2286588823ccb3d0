/** Findings as an audit workbook: the client's values in our columns, every verdict a living formula beside them. */
import type { Cell, Grid } from "../../functions/contract.js";
import { cellText } from "../../functions/check-names.js";
import { auditBook } from "../../templates/audit/book.js";
import { REPORT_LINES } from "../../templates/audit/report.js";
import type { BookDescription, NotesSheet, SheetDescription } from "../../templates/contract.js";
import { type Audited, mappingLines, shortened, textLines } from "./text.js";

/** Text of a client never becomes a formula: in a sheet it would begin with =. */
const inert = (cell: Cell): Cell =>
  typeof cell === "string" ? shortened(cell.startsWith("=") ? ` ${cell}` : cell, MOST_OF_CELL) : cell;

/** Excel takes a file for damaged where a text is longer. */
const MOST_OF_CELL = 32_767;

/** What cannot stand in a cell of text: a sheet keeps no error of another one. */
const typed = (cell: Cell): Cell =>
  typeof cell === "object" && cell !== null ? cell.error : cell === "" ? null : inert(cell);

export function auditWorkbook(audited: Audited, job: Grid): BookDescription {
  const { prepared, file, sheet } = audited;
  const { names, rows, units } = prepared;
  const empty = auditBook({
    title: "Audit",
    about: [
      `Of ${file.replaceAll("\\", "/").split("/").at(-1) ?? ""}${sheet === undefined ? "" : `, sheet ${sheet}`}, ${prepared.table.rows.length} rows.`,
    ],
    report: {},
    rows: rows.map(() => ({})),
    units,
  });
  const said = new Map(job.map(([name = null, value = null]) => [cellText(name), value]));
  // What the form has no line for is said in each row.
  const lines = new Set(REPORT_LINES.flatMap((line) => (typeof line === "string" ? [] : [line.name as string])));
  const forRows = new Map([...said].filter(([name]) => !lines.has(name)));
  const sheets = empty.sheets.map((one): SheetDescription => {
    if (one.kind === "table" && one.tableName === "ClaimList") {
      const columns = one.columns.map(({ key }) => ({ at: names.indexOf(key), forAll: forRows.get(key) ?? null }));
      const cellOf = (cells: readonly Cell[], { at, forAll }: (typeof columns)[number]): Cell =>
        typed(at < 0 ? null : (cells[at] ?? null)) ?? forAll;
      return { ...one, rows: rows.map((cells) => columns.map((column) => cellOf(cells, column))) };
    }
    if (one.kind !== "form") return one;
    const fields = one.fields.map((field) => {
      const value = said.get(field.definedName?.replace(/^report_/, "") ?? "");
      return value === undefined ? field : { ...field, value: typed(value) };
    });
    return { ...one, fields };
  });
  return { ...empty, sheets: [...sheets, mappingSheet(audited)] };
}

function mappingSheet({ prepared, records, file }: Audited): NotesSheet {
  return {
    kind: "notes",
    name: "Mapping",
    heading: ["Mapping"],
    lines: [
      `Which column of ${file.replaceAll("\\", "/").split("/").at(-1) ?? ""} was taken for which of ours. What is not taken is not in this workbook.`,
      ...mappingLines(prepared).map((line) => line.replaceAll(/\s+/g, " ")),
      ...prepared.notes.map((one) => `Note: ${one}.`),
      ...textLines(records).map((line) => `R${line.slice(1)}.`),
    ].map((line) => shortened(line, MOST_OF_CELL)),
  };
}
