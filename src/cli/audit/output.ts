/** Findings as JSON and CSV. */
import { printable } from "../recalc-text.js";
import type { AuditRecord, Findings } from "./records.js";
import type { Audited } from "./text.js";

/** @returns the layout that the README gives */
export function auditJson({ file, sheet, prepared, records, findings }: Audited): string {
  const { mapping, units, notes } = prepared;
  const report = {
    file,
    ...(sheet === undefined ? {} : { sheet }),
    units,
    mapping: mapping.map(({ header, column = null, unit = null, how = null, over = null, why = null }) => ({
      header,
      column,
      unit,
      how,
      over,
      why,
    })),
    notes,
    rows: records,
    report_findings: findings,
  };
  return `${JSON.stringify(report, undefined, 1)}\n`;
}

const COLUMNS = [
  "row",
  "line",
  "item",
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
  "verdict",
  "reproduced",
  "understood",
  "unread",
] as const satisfies readonly (keyof AuditRecord)[];

/** More than a reading is known to; a sheet of fourteen digits says less. */
const DECIMALS = 3;

/** What a sheet would take for a formula has an apostrophe before it, as OWASP's page on CSV injection advises. */
function asText(text: string): string {
  // A sheet of another region may part fields at other marks than commas.
  const inner = printable(text).replaceAll(/([;|]["'\s]*)(?=[=+\-@＝＋－＠])/gu, "$1'");
  const safe = /^\s*[=+\-@＝＋－＠]/u.test(inner) ? `'${inner}` : inner;
  return /[",']/.test(safe) || safe !== safe.trim() ? `"${safe.replaceAll('"', '""')}"` : safe;
}

function field(value: AuditRecord[(typeof COLUMNS)[number]]): string {
  if (value === null) return "";
  if (typeof value === "number") return String(Number(value.toFixed(DECIMALS)));
  if (typeof value === "boolean") return value ? "yes" : "no";
  return asText(typeof value === "string" ? value : value.join("; "));
}

/** A line for each stated value, then, after an empty line, what holds for the whole report. */
export function auditCsv({ records, findings }: Audited): string {
  const lines = [COLUMNS.join(","), ...records.map((one) => COLUMNS.map((name) => field(one[name])).join(","))];
  const whole = findings.map(({ what, why, what_to_do }: Findings) => [what, why, what_to_do].map(asText).join(","));
  if (whole.length > 0) lines.push("", "of the whole report,why,what_to_do", ...whole);
  return `\uFEFF${lines.join("\r\n")}\r\n`;
}
