/** What a terminal shows of an audit: what was taken for what, what is not reproduced, and what holds for all of it. */
import type { PreparedReport } from "../../functions/claims/prepare.js";
import type { AuditedReport } from "../../functions/audit-report.js";
import { unitFor } from "../../functions/audit-words.js";
import { readable, type Units } from "../../functions/units.js";
import { QUANTITIES } from "../../core/audit/verdict/claim.js";
import { printable } from "../recalc-text.js";
import { type AuditRecord, type Findings, statedUnread } from "./records.js";

export interface Audited {
  readonly file: string;
  readonly sheet?: string;
  readonly others: readonly string[];
  readonly prepared: PreparedReport;
  readonly report: AuditedReport;
  readonly records: readonly AuditRecord[];
  readonly findings: readonly Findings[];
}

const count = (number: number, word: string): string => `${number} ${word}${number === 1 ? "" : "s"}`;

/** Each header with what it was taken for, or why it was not. */
export function mappingLines({ mapping }: PreparedReport): string[] {
  const width = mapping.reduce((so, { header }) => Math.min(44, Math.max(so, oneLine(header).length + 2)), 0);
  const ours = mapping.filter(({ how }) => how === "our name");
  const lines = mapping
    .filter((one) => !ours.includes(one))
    .map(({ header, column, unit, how, over, why }) => {
      const name = `"${oneLine(header)}"`.padEnd(width);
      if (column === undefined) return `${name}  not taken: ${why ?? ""}${advice(header, why)}`;
      const more = [unit, over === undefined ? undefined : `over ${over}`]
        .filter((one) => one !== undefined)
        .join(", ");
      return `${name}  ${column}${more === "" ? "" : ` (${more})`}, by ${how === "as told" ? "--map" : (how ?? "name")}`;
    });
  if (ours.length > 0) lines.unshift(`by our own names: ${ours.map(({ column }) => column).join(", ")}`);
  return lines;
}

/** How a doubtful one is taken. */
function advice(header: string, why: string | undefined): string {
  const first = /^doubtful: may be (\w+)/.exec(why ?? "")?.[1];
  return first === undefined ? "" : ` (--map "${oneLine(header)}=${first}" takes it)`;
}

const oneLine = (text: string): string => shortened(printable(text.replaceAll(/\s+/g, " ")), MOST_OF_HEADER);

/** Somebody may have pasted a whole page into a cell. */
const MOST_OF_LINE = 4000;
const MOST_OF_HEADER = 200;
const MOST_WORDS = 8;

export const shortened = (text: string, most: number): string =>
  text.length > most ? `${text.slice(0, most - 1).replace(/[\ud800-\udbff]$/, "")}…` : text;

/** "43.1 °C stated, 42.6 recomputed, tolerance 0.1". */
function numbersText({ what, stated, recomputed, difference, tolerance }: AuditRecord, units: Units): string {
  if (stated === null) return "";
  const quantity = QUANTITIES.find((one) => one === what);
  const label = quantity === undefined ? "" : unitFor(quantity, units).label;
  const unit = label === "" ? "" : ` ${label}`;
  const said = `${what} ${readable(stated)}${unit} stated`;
  if (recomputed === null) return said;
  const digits = tolerance !== null && tolerance < 0.095 ? 2 : 1;
  const apart = difference === null ? "" : `, difference ${difference.toFixed(digits).replace(/^-(0\.0+)$/, "$1")}`;
  const within = tolerance === null ? "" : `, tolerance ${tolerance.toFixed(2)}`;
  return `${said}, ${recomputed.toFixed(digits)} recomputed${apart}${within}`;
}

function rowLines(records: readonly AuditRecord[], units: Units): string[] {
  const [first] = records;
  if (first === undefined) return [];
  const item = first.item === "" ? "" : `, ${first.item}`;
  return [
    `row ${first.row} (line ${first.line})${item}`,
    ...records
      .filter(
        ({ what, stated, number }) => what !== "grade" && what !== "not read" && (stated !== null || number !== ""),
      )
      .map((one) => `  ${[numbersText(one, units), one.number].filter((text) => text !== "").join(": ")}`),
    ...statedUnread(first).map((one) => `  not read: ${one}`),
    ...records.flatMap(({ slips }) => slips.map((slip) => `    ${slip}`)),
    ...(first.method === "" || first.method === "sound" ? [] : [`  method: ${first.method}`]),
    ...(first.grade === "" ? [] : [`  ${gradeText(records)}: ${first.grade}`]),
    ...(first.consequence === "" ? [] : [`  consequence: ${first.consequence}`]),
  ];
}

function gradeText(records: readonly AuditRecord[]): string {
  const stated = records.find(({ what }) => what === "grade")?.stated;
  return stated === undefined || stated === null ? "grade" : `grade ${stated} stated`;
}

/** Rows that somebody must look at. */
const isTold = ({ verdict, method, consequence }: AuditRecord): boolean =>
  (verdict !== "reproduced" && verdict !== "nothing stated") ||
  (method !== "" && method !== "sound") ||
  consequence.startsWith("grade changed");

/** From the gravest on: of a row that was audited twice the graver one counts. */
const VERDICTS = ["not reproduced", "not read", "cannot be reproduced", "reproduced", "nothing stated"] as const;

const verdictOf = (group: readonly AuditRecord[]) =>
  VERDICTS.find((one) => group.some(({ verdict }) => verdict === one));

/** "8 rows: 5 reproduced, 2 not reproduced, 1 not read". */
function countsText(groups: readonly (readonly AuditRecord[])[]): string {
  const verdicts = groups.map(verdictOf);
  const parts = [...VERDICTS].reverse().flatMap((one) => {
    const number = verdicts.filter((verdict) => verdict === one).length;
    return number > 0 || one === "reproduced" || one === "not reproduced" ? [`${number} ${one}`] : [];
  });
  return `${count(groups.length, "row")}: ${parts.join(", ")}`;
}

/** Words of grades that nobody can judge until it is said what they mean. */
function gradeAdvice(records: readonly AuditRecord[]): string[] {
  const words = new Set(records.flatMap(({ grade }) => /^not judged: "(.*)": no word/s.exec(grade)?.[1] ?? []));
  const [first] = words;
  if (first === undefined) return [];
  const all = [...words].slice(0, MOST_WORDS).map((word) => `"${oneLine(word)}"`);
  return [
    `Grades in words that the criteria do not have: ${all.join(", ")}. --grade "${oneLine(first)}=4" says what one means (4 = worst).`,
  ];
}

/** Records of one client's row that were audited together. */
function grouped(records: readonly AuditRecord[]): AuditRecord[][] {
  const groups: AuditRecord[][] = [];
  for (const one of records) {
    const last = groups.at(-1);
    if (last?.[0]?.row === one.row) last.push(one);
    else groups.push([one]);
  }
  return groups;
}

/** Of texts in a column that say no more than a number with its unit the first stands for all. */
export function textLines(records: readonly AuditRecord[]): string[] {
  const plain = new Map<string, { first: string; count: number }>();
  const told: string[] = [];
  for (const [first] of grouped(records)) {
    if (first === undefined) continue;
    const row = `row ${first.row} (line ${first.line})`;
    for (const one of first.understood) {
      const [column = ""] = one.split(" ");
      const known = plain.get(column);
      if (/, (?:at |±)/.test(one)) told.push(`${row}: ${one}`);
      else if (known === undefined) plain.set(column, { first: `${row}: ${one}`, count: 0 });
      else known.count++;
    }
    told.push(...first.unread.map((one) => `${row}: not read: ${one}`));
  }
  const more = [...plain.values()].map(
    (one) => `${one.first}${one.count === 0 ? "" : ` and ${one.count} more of its column`}`,
  );
  return [...more, ...told];
}

export function auditText(audited: Audited): string[] {
  const { file, sheet, others, prepared, report, records, findings } = audited;
  const { table, units, unitsFrom, notes } = prepared;
  const groups = grouped(records);
  const told = groups.filter((group) => group.some(isTold));
  const place = sheet === undefined ? "" : `, sheet ${sheet}`;
  const texts = textLines(records);
  const section = (title: string, lines: readonly string[]): string[] =>
    lines.length === 0 ? [] : [title, ...lines.map((line) => `  ${line}`)];
  return [
    `${file}${place}: headers in line ${table.headerLine}, ${count(table.rows.length, "row")}, in ${units === "C" ? "°C" : "°F"} (${unitsFrom})`,
    ...(others.length > 0 ? [`other sheets: ${others.join(", ")} (--sheet takes one of them)`] : []),
    ...section("What was taken for what", [...mappingLines(prepared), ...notes.map((one) => `note: ${one}`)]),
    ...section("Readings as text", texts),
    ...section(
      "Not reproduced, with a defect, or of another grade",
      told.flatMap((group) => rowLines(group, units)),
    ),
    ...section(
      "The whole report",
      findings.flatMap(({ what, why, what_to_do }) => [what, `  ${why} ${what_to_do}`]),
    ),
    ...(report.notRead.length > 0 ? [`not read: ${report.notRead.join(", ")}`] : []),
    ...gradeAdvice(records),
    `${countsText(groups)}; ${count(findings.length, "finding")} of the whole report`,
    "A slip is a possibility: it would give the number, nothing is proved by it.",
  ].map((line) => shortened(printable(line), MOST_OF_LINE));
}
