/** `greybody audit`: a client's table, whatever its headers, worked out again row by row. */
import { existsSync, realpathSync } from "node:fs";
import path from "node:path";
import { knownCriteria } from "../../core/audit/verdict/grade.js";
import { nearest } from "../../core/nearest.js";
import { CRITERIA_NAMES, REFERENCE_KINDS } from "../../core/severity/criteria.js";
import { AUDIT_COLUMNS, AUDIT_JOB_LINES } from "../../functions/audit-columns.js";
import { auditReport } from "../../functions/audit-report.js";
import type { ClientTable } from "../../functions/claims/find-table.js";
import { headerKey, type MappedHeader, type Told } from "../../functions/claims/map-headers.js";
import { prepareReport } from "../../functions/claims/prepare.js";
import { cellText } from "../../functions/check-names.js";
import { dayOf } from "../../functions/days.js";
import { plainNumber } from "../../functions/numbers.js";
import type { Cell, FunctionSpec, Grid } from "../../functions/contract.js";
import { requireNew, unitsOf, writeBook } from "../new.js";
import { contents, reasonOf } from "../recalc.js";
import { printable } from "../recalc-text.js";
import { writeWhole } from "../recalc-write.js";
import { UsageError } from "../usage.js";
import { type ClientReport, readReport } from "./input.js";
import { auditCsv, auditJson } from "./output.js";
import { recordsOf, reportFindings } from "./records.js";
import { type Audited, auditText } from "./text.js";
import { auditWorkbook } from "./workbook.js";

export interface AuditOptions {
  readonly output?: string;
  /** "Client header=our_column". */
  readonly map?: readonly string[];
  /** "name=value", for all rows. */
  readonly job?: readonly string[];
  /** "word=number", what the report's words for grades mean. */
  readonly grade?: readonly string[];
  readonly sheet?: string;
  readonly units?: string;
}

const KINDS = [".xlsx", ".csv", ".json"] as const;
const FILE_MODE = 0o644;
const NONE = "none";

/** @returns exit status: 0 everything is reproduced, 1 something is not */
export async function audit(file: string, options: AuditOptions, specs: readonly FunctionSpec[]): Promise<number> {
  const told = toldMapping(options.map ?? []);
  const job = toldJob(options.job ?? []);
  const units = options.units === undefined ? undefined : unitsOf(options.units);
  const kind = kindOf(file, options.output);
  const client = opened(file, new Set(told.keys()), options.sheet);
  requireHeaders(told, client.table);
  const own = units ?? client.units;
  const prepared = prepareReport(client.table, {
    told,
    isText: client.isText,
    grades: toldGrades(options.grade ?? []),
    ...(own === undefined ? {} : { units: own }),
  });
  requireOnce(prepared.mapping);
  const { names, rows } = prepared;
  if (!names.some((name) => name.startsWith("stated_"))) {
    const headers = prepared.mapping.map(({ header }) => `"${header}"`).join(", ");
    throw new UsageError(
      printable(
        `${file}: none of ${headers} was found to be what a report states: name it, such as --map "Client header=stated_temp".`,
      ),
    );
  }
  if (rows.length === 0) throw new UsageError(printable(`${file}: no row stands below its headers.`));
  const lines = [...client.job.filter(([name]) => !job.some(([own]) => own === name)), ...job];
  const report = auditReport(names, rows, lines, prepared.units);
  const audited: Audited = {
    file,
    ...(client.sheet === undefined ? {} : { sheet: client.sheet }),
    others: client.others,
    prepared,
    report,
    records: recordsOf(report, prepared),
    findings: reportFindings(report, prepared),
  };
  if (options.output !== undefined) await write(options.output, kind!, audited, lines, specs);
  const text = auditText(audited);
  if (lacksReference(names, lines))
    text.push(
      "No row says what its rise is over: --job reference=similar (or ambient, baseline) says it for all of them.",
    );
  if (options.output !== undefined) text.push(`${printable(options.output)} written`);
  process.stdout.write(`${text.join("\n")}\n`);
  return report.rows.every(({ isReproduced }) => isReproduced) ? 0 : 1;
}

function lacksReference(names: readonly string[], job: Grid): boolean {
  const isAsked = names.includes("stated_rise") || names.includes("stated_grade");
  return isAsked && !names.includes("reference") && !job.some(([name]) => name === "reference");
}

function opened(file: string, wanted: ReadonlySet<string>, sheet: string | undefined): ClientReport {
  try {
    return readReport(contents(file).bytes, wanted, sheet);
  } catch (error) {
    throw new UsageError(`${printable(file)}: ${printable(reasonOf(error))}`);
  }
}

/** @throws UsageError before any work is done */
function kindOf(file: string, output: string | undefined): (typeof KINDS)[number] | undefined {
  if (output === undefined) return undefined;
  const kind = KINDS.find((one) => one === path.extname(output).toLowerCase());
  if (kind === undefined) throw new UsageError(`-o ${output}: findings are written as ${KINDS.join(", ")}.`);
  if (existsSync(output) && existsSync(file) && realpathSync(output) === realpathSync(file))
    throw new UsageError(`-o ${output} is the report itself, which stays as it is: choose another name.`);
  requireNew(output);
  return kind;
}

async function write(
  output: string,
  kind: (typeof KINDS)[number],
  audited: Audited,
  job: Grid,
  specs: readonly FunctionSpec[],
): Promise<void> {
  if (kind === ".xlsx") return writeBook(output, auditWorkbook(audited, job), audited.prepared.units, specs);
  const text = kind === ".json" ? auditJson(audited) : auditCsv(audited);
  writeWhole(output, FILE_MODE, ({ put }) => put(text));
}

/** A client's header may hold "=": ours never does. */
function parted(option: string, text: string, form: string): [name: string, value: string] {
  const at = text.lastIndexOf("=");
  if (at <= 0) throw new UsageError(`${option} "${text}": write ${form}.`);
  return [text.slice(0, at).trim(), text.slice(at + 1).trim()];
}

function toldMapping(texts: readonly string[]): Map<string, Told> {
  const told = new Map<string, Told>();
  for (const text of texts) {
    const [header, target] = parted("--map", text, '"Client header=our_column"');
    const [name = "", over] = target.split(":");
    const known = AUDIT_COLUMNS.find((one) => one.name === name);
    if (known === undefined && name !== NONE)
      throw new UsageError(
        `--map "${text}": there is no column ${name}${meant(name)}. There are ${AUDIT_COLUMNS.map((one) => one.name).join(", ")}, and ${NONE} to leave it out.`,
      );
    const kind = REFERENCE_KINDS.find((one) => one === over);
    if (over !== undefined && (name !== "stated_rise" || kind === undefined))
      throw new UsageError(`--map "${text}": only stated_rise says what it is over, as in stated_rise:ambient.`);
    told.set(headerKey(header), { column: known?.name, ...(kind === undefined ? {} : { over: kind }) });
  }
  return told;
}

function meant(name: string): string {
  const [near] = nearest(
    name,
    AUDIT_COLUMNS.map((one) => one.name),
    1,
  );
  return near === undefined ? "" : ` (${near}?)`;
}

function toldJob(texts: readonly string[]): Grid {
  return texts.map((text): Cell[] => {
    const at = text.indexOf("=");
    if (at <= 0) throw new UsageError(`--job "${text}": write name=value, such as criteria=house.`);
    const name = text.slice(0, at).trim();
    if (!AUDIT_JOB_LINES.some((one) => one.name === name))
      throw new UsageError(
        `--job "${text}": there is no line ${name}. There are ${AUDIT_JOB_LINES.map((one) => one.name).join(", ")}.`,
      );
    const value = text.slice(at + 1).trim();
    if (name === "criteria" && knownCriteria(value) === undefined)
      throw new UsageError(`--job "${text}": there are no criteria ${value}, only ${CRITERIA_NAMES.join(", ")}.`);
    const day = AUDIT_JOB_LINES.find((one) => one.name === name)?.quantity === "date" ? dayOf(value) : undefined;
    return [name, day ?? plainNumber(value) ?? value];
  });
}

function toldGrades(texts: readonly string[]): Map<string, number> {
  return new Map(
    texts.map((text) => {
      const [word, grade] = parted("--grade", text, '"word=number", such as "Serious=4"');
      if (!/^[0-4]$/.test(grade)) throw new UsageError(`--grade "${text}": a grade is a whole number from 0 to 4.`);
      return [word.toLowerCase(), Number(grade)] as const;
    }),
  );
}

function requireHeaders(told: ReadonlyMap<string, Told>, { headers }: ClientTable): void {
  const known = new Set(headers.map((one) => headerKey(cellText(one))));
  const absent = [...told.keys()].find((header) => !known.has(header));
  if (absent === undefined) return;
  const list = headers.filter((one) => one !== "").map((one) => `"${one}"`);
  throw new UsageError(printable(`--map "${absent}=…": the report has no such header, only ${list.join(", ")}.`));
}

/** What is told goes into a column of ours once: a second one would silently take the place of the first. */
function requireOnce(mapping: readonly MappedHeader[]): void {
  const seen = new Map<string, string>();
  for (const { header, column, over = "", how } of mapping) {
    if (column === undefined || how !== "as told") continue;
    const first = seen.get(`${column}:${over}`);
    if (first !== undefined)
      throw new UsageError(
        printable(
          `--map: both "${first}" and "${header}" would be ${column}: name one alone, by a header that no other column has.`,
        ),
      );
    seen.set(`${column}:${over}`, header);
  }
}
