/** An audited report as cells: a line for each stated value, the findings, or one column a row each. */
import { type RowAudit, type StatedLine } from "../core/audit/verdict/audit.js";
import type { AuditedReport, AuditedRow } from "./audit-report.js";
import { temperatureFormula } from "./audit-formula.js";
import {
  consequenceWords,
  gradeWords,
  methodWords,
  numberWords,
  slipsText,
  unitFor,
  valueWords,
} from "./audit-words.js";
import { findingWords } from "./audit-finding-words.js";
import type { Cell, Grid } from "./contract.js";
import { fromSI, unitOf, type Units } from "./units.js";

const NUMBERS = {
  temp: "temperature",
  rise: "rise",
  rise_at_load: "rise at load",
} as const satisfies Record<string, StatedLine["what"]>;
const TEXTS = ["number", "method", "grade", "consequence", "slips", "missing", "formula", "verdict", "values"] as const;

export const AUDIT_SHOWN: readonly string[] = [
  "table",
  "findings",
  ...TEXTS,
  ...Object.keys(NUMBERS).flatMap((name) => [name, `${name}_tolerance`]),
];

const HEADER = [
  "row",
  "what",
  "stated",
  "recomputed",
  "difference",
  "tolerance",
  "number",
  "method",
  "grade",
  "consequence",
  "missing",
  "slips",
  "formula",
] as const;

/** A difference has its unit without the offset. */
const asDifference = (si: number | undefined, units: Units): Cell =>
  si === undefined ? "" : fromSI(si, unitOf("difference", units));

/** Without the last binary digits that the way to SI and back has changed. */
const asTyped = (cell: Cell): Cell => (typeof cell === "number" ? Number(cell.toPrecision(12)) : cell);

/** One line of a row as the table has it. */
function lineCells({ row, audit, unread }: AuditedRow, line: StatedLine, units: Units): Cell[] {
  const { what, stated, number } = line;
  const unit = unitFor(what, units);
  const value = (si: number | undefined): Cell => (si === undefined ? "" : fromSI(si, unit));
  return [
    row,
    what,
    asTyped(value(stated)),
    value(number?.recomputed),
    asDifference(number?.difference, units),
    asDifference(number?.tolerance, units),
    number === undefined ? "" : numberWords(number, what, units),
    methodWords(audit!.method),
    gradeText({ unread }, audit!),
    consequenceText({ unread }, audit!, units),
    [...new Set<string>([...(number?.missing ?? []), ...unread])].join(", "),
    number === undefined ? "" : slipsText(number, what, units),
    what === "temperature" ? temperatureFormula(audit!.claim, units) : "",
  ];
}

export function auditLines({ rows, units }: AuditedReport): Grid {
  const lines = rows.flatMap((row) => (row.audit?.lines ?? []).map((line) => lineCells(row, line, units)));
  return [HEADER, ...lines];
}

export function auditFindings({ findings, notRead }: AuditedReport): Grid {
  const lines = findings.map(findingWords).map(({ what, why, todo }): Cell[] => [what, why, todo]);
  // A value stands with its name, in quotation marks or as one that cannot be.
  const isValue = (text: string): boolean => /"| cannot be$/.test(text);
  const unread = notRead.map((text): Cell[] => [
    `not read: ${text}`,
    isValue(text) ? "The value is none that is read." : "It is no name that is read.",
    isValue(text) ? "Correct it, or leave it." : "Rename it, or leave it.",
  ]);
  return [["what", "why", "what to do"], ...lines, ...unread];
}

/** One column; calm in rows that hold nothing. */
export function auditCells({ rows, units }: AuditedReport, show: string): Grid {
  return rows.map((row) => [row.audit === undefined ? "" : cellOf(row, row.audit, show, units)]);
}

function cellOf(row: AuditedRow, audit: RowAudit, show: string, units: Units): Cell {
  const ofNumber = Object.entries(NUMBERS).find(([name]) => show === name || show === `${name}_tolerance`);
  if (ofNumber !== undefined) {
    const [name, what] = ofNumber;
    const number = audit.lines.find((line) => line.what === what)?.number;
    if (number === undefined) return "";
    if (show !== name) return asDifference(number.tolerance, units);
    return number.recomputed === undefined ? "" : fromSI(number.recomputed, unitFor(what, units));
  }
  switch (show) {
    case "number":
      return ofLines(audit, (line) => (line.number === undefined ? "" : numberWords(line.number, line.what, units)));
    case "slips":
      return ofLines(audit, (line) => (line.number === undefined ? "" : slipsText(line.number, line.what, units)));
    case "missing":
      return [...new Set<string>([...audit.lines.flatMap(({ number }) => number?.missing ?? []), ...row.unread])].join(
        ", ",
      );
    case "method":
      return audit.lines.length === 0 ? "" : methodWords(audit.method);
    case "grade":
      return gradeText(row, audit);
    case "consequence":
      return audit.lines.length === 0 ? "" : consequenceText(row, audit, units);
    case "values":
      return audit.lines
        .map((line) => valueWords(line, units))
        .filter((words) => words !== "")
        .join("; ");
    case "formula":
      return temperatureFormula(audit.claim, units);
    default:
      return row.standing;
  }
}

function consequenceText({ unread }: Pick<AuditedRow, "unread">, { consequence }: RowAudit, units: Units): string {
  const words = consequenceWords(consequence, units);
  const isStated = unread.some((one) => one.startsWith("stated_grade "));
  return isStated ? words.replace("no grade stated", "stated grade not judged") : words;
}

/** A grade in words that are none of the criteria's is stated all the same. */
function gradeText({ unread }: Pick<AuditedRow, "unread">, { grade }: RowAudit): string {
  if (grade !== undefined) return gradeWords(grade);
  const typed = unread.find((one) => one.startsWith("stated_grade "));
  return typed === undefined ? "" : `not judged: ${typed.slice("stated_grade ".length)}`;
}

/** With the value's name in front where a row states several. */
function ofLines({ lines }: RowAudit, words: (line: StatedLine) => string): string {
  const told = lines.flatMap((line) => {
    const text = words(line);
    return text === "" ? [] : [{ what: line.what, text }];
  });
  const [only] = told;
  return told.length === 1 && only !== undefined
    ? only.text
    : told.map(({ what, text }) => `${what}: ${text}`).join("; ");
}
