/** A whole report audited: what the function AUDIT, the sheet and the command line show, from one computation. */
import { auditRow, type RowAudit, type Standing, standingOf } from "../core/audit/verdict/audit.js";
import { knownCriteria, NUMBERINGS, type Numbering } from "../core/audit/verdict/grade.js";
import { findingsOf, numberingOf, type ReportFinding } from "../core/audit/verdict/whole-report.js";
import { inRange } from "../core/errors.js";
import { type Named } from "../core/check/named.js";
import { DEFAULT_BAND, type Band } from "../core/planck/band.js";
import { AUDIT_COLUMNS, AUDIT_JOB_LINES } from "./audit-columns.js";
import { decimalsByColumn, LIMITS, type ReadClaim, readClaim } from "./audit-read.js";
import { readBands } from "./bands.js";
import type { CheckColumn } from "./check-columns.js";
import { cellText, plainName } from "./check-names.js";
import { readNamed } from "./check-read.js";
import type { Cell, Grid } from "./contract.js";
import { isBlank, isNoWord } from "./read.js";
import type { Units } from "./units.js";

export interface AuditedRow {
  /** From 1, as the rows were given. */
  readonly row: number;
  /** Undefined where nothing stands in the row. */
  readonly audit: RowAudit | undefined;
  readonly unread: readonly string[];
  /** Texts that were read as numbers or choices, and as which. */
  readonly understood: readonly string[];
  /** The row all in all. */
  readonly standing: Standing | "not read" | "nothing stated";
  readonly isReproduced: boolean;
}

export interface AuditedReport {
  readonly rows: readonly AuditedRow[];
  readonly findings: readonly ReportFinding[];
  /** Headers and job lines that are not read. */
  readonly notRead: readonly string[];
  readonly units: Units;
}

export function auditColumn(header: Cell): CheckColumn | undefined {
  const wanted = isNoWord(header) ? "" : plainName(cellText(header));
  return AUDIT_COLUMNS.find(({ name }) => name.toLowerCase() === wanted);
}

/**
 * @param headers our column names; what is none of them is not read
 * @param job rows name | value
 */
export function auditReport(headers: readonly Cell[], rows: Grid, job: Grid, units: Units): AuditedReport {
  const taken = new Set<string>();
  const columns = headers.map((header) => {
    const column = auditColumn(header);
    if (column === undefined || taken.has(column.name)) return undefined;
    taken.add(column.name);
    return column;
  });
  const notRead = headers.flatMap((header, c) =>
    columns[c] === undefined && !isNoWord(header) ? [cellText(header)] : [],
  );
  const lines = readAuditJob(job, units);
  const reading = {
    columns,
    decimals: decimalsByColumn(rows, headers.length),
    units,
    job: lines.named,
    band: lines.band,
  };
  const read = rows.map((cells, r) => readClaim(cells, r + 1, reading));
  const filled = read.filter(({ isEmpty }) => !isEmpty);
  const said = NUMBERINGS.find((one) => one === lines.named.text("grades_count"));
  const numbering = said ?? numberingOf(filled.map(({ claim }) => claim));
  const audited = read.map((one) => auditedRow(one, numbering));
  const known = audited.flatMap(({ audit }) => (audit === undefined ? [] : [audit]));
  const calibrated = lines.named.raw("calibrated");
  const days = lines.named.raw("calibration_days") ?? 365;
  const day = lines.named.raw("date");
  return {
    rows: audited,
    findings: findingsOf(known, said, {
      ...(day === undefined ? {} : { job: day }),
      ...(calibrated === undefined ? {} : { calibratedUntil: calibrated + days }),
    }),
    notRead: [...notRead, ...lines.notRead],
    units,
  };
}

function auditedRow(read: ReadClaim, numbering: Numbering | undefined): AuditedRow {
  const { claim, unread, understood, statedUnread, isEmpty } = read;
  const row = { row: claim.row, unread, understood };
  if (isEmpty) return { ...row, audit: undefined, standing: "nothing stated", isReproduced: true };
  const audit = auditRow(claim, numbering);
  const isNotRead = statedUnread.length > 0;
  const found = audit.lines.length > 0 ? standingOf(audit) : unread.length > 0 ? "not read" : "nothing stated";
  // What is stated and cannot be read may be right or wrong.
  const standing = isNotRead && found === "reproduced" ? "not read" : found;
  const isRight = !isNotRead && standing !== "not reproduced" && standing !== "cannot be reproduced";
  return { ...row, audit, standing, isReproduced: isRight };
}

function readAuditJob(job: Grid, units: Units): { named: Named; band: Band; notRead: string[] } {
  const columns: CheckColumn[] = [];
  const values: Cell[] = [];
  const notRead: string[] = [];
  for (const [name = null, value = null] of job) {
    if (isNoWord(name) || isBlank(value)) continue;
    const wanted = plainName(cellText(name)).replace(/^job_/, "");
    const line = AUDIT_JOB_LINES.find((one) => one.name.toLowerCase() === wanted);
    if (line === undefined || columns.includes(line)) {
      if (line === undefined && wanted !== "name") notRead.push(cellText(name));
      continue;
    }
    columns.push(line);
    values.push(value);
  }
  const { named, findings } = readNamed(columns, values, units, 0);
  const typed = named.text("band");
  const band = typed === undefined ? undefined : readBands(typed).values[0];
  notRead.push(...findings.map(({ column, values: said = {} }) => `${column} "${String(said.typed ?? "")}"`));
  if (typed !== undefined && band === undefined) notRead.push(`band "${typed}"`);
  const criteria = named.text("criteria");
  if (criteria !== undefined && knownCriteria(criteria) === undefined) notRead.push(`criteria "${criteria}"`);
  for (const [at, { name }] of columns.entries()) {
    const [value, limits] = [named.raw(name), LIMITS[name]];
    if (value !== undefined && limits !== undefined && !inRange(value, limits))
      notRead.push(`job_${name} ${cellText(values[at])} cannot be`);
  }
  return { named, band: band ?? DEFAULT_BAND, notRead };
}
