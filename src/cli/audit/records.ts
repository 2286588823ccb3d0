/** An audited report by the client's rows: a record for each value that it states, as JSON, CSV and the terminal have it. */
import type { ReportFinding } from "../../core/audit/verdict/whole-report.js";
import type { PreparedReport } from "../../functions/claims/prepare.js";
import type { AuditedReport, AuditedRow } from "../../functions/audit-report.js";
import { auditLines } from "../../functions/audit-shown.js";
import { findingWords } from "../../functions/audit-finding-words.js";
import { cellText } from "../../functions/check-names.js";
import type { Cell } from "../../functions/contract.js";

export interface AuditRecord {
  /** Of the client's table, from 1. */
  readonly row: number;
  /** Of the sheet or the file, from 1. */
  readonly line: number;
  readonly item: string;
  readonly what: string;
  readonly stated: number | null;
  readonly recomputed: number | null;
  /** Stated less recomputed. */
  readonly difference: number | null;
  readonly tolerance: number | null;
  readonly number: string;
  readonly method: string;
  readonly grade: string;
  readonly consequence: string;
  readonly missing: readonly string[];
  readonly slips: readonly string[];
  readonly formula: string;
  /** The row all in all. */
  readonly verdict: AuditedRow["standing"];
  readonly reproduced: boolean;
  /** Texts that were read as numbers or choices, and as which. */
  readonly understood: readonly string[];
  readonly unread: readonly string[];
}

export interface Findings {
  readonly what: string;
  readonly why: string;
  readonly what_to_do: string;
}

const parts = (text: string, mark: string): string[] => (text === "" ? [] : text.split(mark));
const numberOf = (cell: Cell | undefined): number | null => (typeof cell === "number" ? cell : null);

export function recordsOf(report: AuditedReport, { table, names, rows, sources }: PreparedReport): AuditRecord[] {
  const [header = [], ...lines] = auditLines(report);
  const at = (name: string): number => header.indexOf(name);
  const byRow = new Map<number, Cell[][]>();
  for (const line of lines) {
    const row = Number(line[at("row")]);
    byRow.set(row, [...(byRow.get(row) ?? []), [...line]]);
  }
  const item = Math.max(names.indexOf("item"), -1);
  return report.rows.flatMap((audited, r): AuditRecord[] => {
    const source = sources[r]!;
    const { audit, unread, understood, standing, isReproduced: reproduced } = audited;
    const base = {
      row: source + 1,
      line: table.rows[source]!.line,
      item: item < 0 ? "" : cellText(rows[r]?.[item]),
      verdict: standing,
      reproduced,
      understood,
      unread,
    };
    // A row that states two rises stands twice, its temperatures once.
    const isSecond = sources[r - 1] === source;
    const all = byRow.get(audited.row) ?? [];
    const own = isSecond ? all.filter((line) => !cellText(line[at("what")]).endsWith("temperature")) : all;
    if (own.length === 0) {
      const notRead = statedUnread(base);
      return [{ ...base, ...NOTHING, ...(notRead.length > 0 && { what: NOT_READ, number: NOT_READ }) }];
    }
    return own.map((line) => {
      const text = (name: string): string => cellText(line[at(name)]);
      const number = (name: string): number | null => numberOf(line[at(name)]);
      return {
        ...base,
        what: text("what"),
        stated: number("stated"),
        recomputed: number("recomputed"),
        difference: number("difference"),
        tolerance: number("tolerance"),
        number: text("number"),
        method: text("method"),
        grade: text("grade"),
        consequence: text("consequence"),
        missing: audit?.lines.find((one) => one.what === text("what"))?.number?.missing ?? [],
        slips: parts(text("slips"), "; "),
        formula: text("formula"),
      };
    });
  });
}

/** What a row states and nobody can hold against anything. */
export function statedUnread({ reproduced, unread }: Pick<AuditRecord, "reproduced" | "unread">): string[] {
  return reproduced ? [] : unread.filter((one) => one.startsWith("stated_"));
}

const NOT_READ = "not read";

const NOTHING = {
  what: "nothing stated",
  stated: null,
  recomputed: null,
  difference: null,
  tolerance: null,
  number: "",
  method: "",
  grade: "",
  consequence: "",
  missing: [],
  slips: [],
  formula: "",
};

/** What holds for the whole report, with its rows as the client counts them. */
export function reportFindings({ findings }: AuditedReport, { sources }: PreparedReport): Findings[] {
  return findings.map((finding) => {
    const { what, why, todo } = findingWords(byClientRows(finding, sources));
    return { what, why, what_to_do: todo };
  });
}

function byClientRows(finding: ReportFinding, sources: readonly number[]): ReportFinding {
  if (!("rows" in finding) || typeof finding.rows === "number") return finding;
  const rows = [...new Set(finding.rows.map((row) => (sources[row - 1] ?? row - 1) + 1))];
  return { ...finding, rows } as ReportFinding;
}
