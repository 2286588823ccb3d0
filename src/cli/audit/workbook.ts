/** Findings as an audit workbook: the client's values in our columns, every verdict a living formula beside them. */
import type { Cell, Grid } from "../../functions/contract.js";
import { cellText } from "../../functions/check-names.js";
import { auditBook } from "../../templates/audit/book.js";
import type { BookDescription, NotesSheet, SheetDescription } from "../../templates/contract.js";
import { mappingLines, type Audited } from "./text.js";

/** Text of a client never becomes a formula: in a sheet it would begin with =. */
const inert = (cell: Cell): Cell => (typeof cell === "string" && cell.startsWith("=") ? ` ${cell}` : cell);

/** What cannot stand in a cell of text: a sheet keeps no error of another one. */
const typed = (cell: Cell): Cell =>
  typeof cell === "object" && cell !== null ? cell.error : cell === "" ? null : inert(cell);

export function auditWorkbook(audited: Audited, job: Grid): BookDescription {
  const { prepared, file, sheet, table } = audited;
  const { names, rows, units } = prepared;
  const empty = auditBook({
    title: "Audit",
    about: [
      `Of ${file.replaceAll("\\", "/").split("/").at(-1) ?? ""}${sheet === undefined ? "" : `, sheet ${sheet}`}, ${table.rows.length} rows.`,
    ],
    report: {},
    rows: rows.map(() => ({})),
    units,
  });
  const sheets = empty.sheets.map((one): SheetDescription => {
    if (one.kind === "table" && one.tableName === "ClaimList") {
      const at = one.columns.map(({ key }) => names.indexOf(key));
      return { ...one, rows: rows.map((cells) => at.map((c) => (c < 0 ? null : typed(cells[c] ?? null)))) };
    }
    if (one.kind !== "form") return one;
    const said = new Map(job.map(([name = null, value = null]) => [`report_${cellText(name)}`, value]));
    const fields = one.fields.map((field) => {
      const value = field.definedName === undefined ? undefined : said.get(field.definedName);
      return value === undefined ? field : { ...field, value: typed(value) };
    });
    return { ...one, fields };
  });
  return { ...empty, sheets: [...sheets, mappingSheet(audited)] };
}

function mappingSheet({ prepared, records, file }: Audited): NotesSheet {
  const texts = records.flatMap(({ row, understood, unread }) => [
    ...understood.map((one) => `Row ${row}: ${one}.`),
    ...unread.map((one) => `Row ${row}: not read: ${one}.`),
  ]);
  return {
    kind: "notes",
    name: "Mapping",
    heading: ["Mapping"],
    lines: [
      `Which column of ${file.replaceAll("\\", "/").split("/").at(-1) ?? ""} was taken for which of ours. What is not taken is not in this workbook.`,
      ...mappingLines(prepared).map((line) => line.replaceAll(/\s+/g, " ")),
      ...prepared.added.map((one) => `Added: ${one}.`),
      ...new Set(texts),
    ],
  };
}
