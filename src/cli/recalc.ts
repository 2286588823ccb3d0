import { existsSync, mkdirSync, readFileSync, realpathSync, statSync } from "node:fs";
import path from "node:path";
import { deflateRawSync, inflateRawSync } from "node:zlib";
import type { FunctionSpec } from "../functions/contract.js";
import type { CellReport } from "../host/file/recalc/changes.js";
import { recalculateFile } from "../host/file/recalc/file.js";
import { FileRefused } from "../host/file/refusal.js";
import type { Codec } from "../host/file/zip/codec.js";
import { megabytes, ZIP_LIMITS } from "../host/file/zip/limits.js";
import { Output } from "./output.js";
import { Progress } from "./recalc-progress.js";
import { differenceLine, keptLines, printable, summaryLine } from "./recalc-text.js";
import type { Summary } from "./recalc-text.js";
import { requirePlace, writeWhole } from "./recalc-write.js";
import type { Pieces } from "./recalc-write.js";
import { UsageError } from "./usage.js";

export interface RecalcOptions {
  readonly output?: string;
  readonly inPlace?: boolean;
  readonly check?: boolean;
  readonly all?: boolean;
  readonly volatile?: boolean;
  readonly tolerance?: number;
  readonly report?: string;
}

/** What the report says of one file. */
interface FileReport {
  readonly file: string;
  /** Why the file was not taken. */
  readonly refused?: string;
  readonly cells: readonly CellReport[];
  readonly summary: Summary;
}

const NOTHING: Summary = { formulas: 0, same: 0, changed: 0, kept: 0 };

/** This moment in local time, as a workbook counts days. */
function serialNow(): number {
  const now = new Date();
  return (now.getTime() - now.getTimezoneOffset() * 60_000) / 86_400_000 + 25_569;
}

/** Zlib is there in node, and quicker; what is large is packed with less care. */
export const CODEC: Codec = {
  deflate: (contents) => deflateRawSync(contents, { level: contents.length > 2 ** 23 ? 3 : 6 }),
  inflate: (packed, most) => inflateRawSync(packed, { maxOutputLength: most }),
};

/** Differing cells that a terminal shows of a file. */
const MOST_SHOWN = 40;

/**
 * `greybody recalc`: works the formulas of workbooks out again and writes their saved values, or with --check only
 * compares. A file that is not taken is told in one line and stops none of the others.
 * @returns exit status: 0 done, 1 differences found by --check, 2 a file was not taken
 */
export async function recalc(
  files: readonly string[],
  options: RecalcOptions,
  specs: readonly FunctionSpec[],
): Promise<number> {
  const targets = targetsOf(files, options);
  const output = new Output();
  const reports: FileReport[] = [];
  let status = 0;
  for (const [i, file] of files.entries()) {
    const progress = new Progress();
    try {
      const found = await one(file, targets[i], options, specs, progress);
      progress.clear();
      for (const line of found.lines) await output.line(line);
      if (options.report !== undefined) reports.push(found.report);
      if (options.check === true && found.report.summary.changed > 0) status = Math.max(status, 1);
    } catch (error) {
      progress.clear();
      status = 2;
      const refused = printable(reasonOf(error));
      process.stderr.write(`greybody: ${printable(file)}: ${refused}\n`);
      reports.push({ file, refused, cells: [], summary: NOTHING });
    }
    await output.flush();
  }
  if (options.report !== undefined) writeReport(options.report, reports);
  return status;
}

async function one(
  file: string,
  target: string | undefined,
  options: RecalcOptions,
  specs: readonly FunctionSpec[],
  progress: Progress,
): Promise<{ report: FileReport; lines: string[] }> {
  const { bytes, mode } = contents(file);
  const { all, tolerance, check: isCheck = false, report } = options;
  const {
    cells,
    counts,
    formulas,
    bytes: fresh,
  } = await recalculateFile(bytes, specs, {
    all,
    tolerance,
    isCheck,
    codec: CODEC,
    clock: options.volatile === true ? { now: serialNow() } : undefined,
    isListed: (status) => report !== undefined || status === "kept" || (isCheck && status === "changed"),
    onProgress: (done, of) => progress.show(file, done, of),
  });
  const summary = { formulas, ...counts };
  const lines = options.check === true ? differenceLines(cells, summary) : [];
  let outcome = summary.changed === 0 ? "no difference" : "nothing written";
  if (target !== undefined) {
    const isInPlace = options.inPlace === true;
    if (isInPlace && fresh === bytes) outcome = "nothing to write";
    else {
      writeWhole(target, existsSync(target) ? statSync(target).mode : mode, ({ put }) => put(fresh));
      outcome = isInPlace ? "written in place" : `written to ${target}`;
    }
  }
  lines.push(summaryLine(file, summary, outcome), ...keptLines(cells));
  return { report: { file, cells, summary }, lines };
}

function differenceLines(cells: readonly CellReport[], { changed }: Summary): string[] {
  const most = process.stdout.isTTY ? MOST_SHOWN : Infinity;
  const lines: string[] = [];
  for (const cell of cells) if (cell.status === "changed" && lines.length < most) lines.push(differenceLine(cell));
  if (changed > lines.length) lines.push(`  and ${changed - lines.length} more: --report FILE.json has them all`);
  return lines;
}

export function contents(file: string): { bytes: Uint8Array; mode: number } {
  const facts = statSync(file);
  if (!facts.isFile()) throw new FileRefused("It is not a file.");
  if (facts.size > ZIP_LIMITS.fileBytes) {
    throw new FileRefused(
      `The file has ${megabytes(facts.size)}; at most ${megabytes(ZIP_LIMITS.fileBytes)} are read. Split it.`,
    );
  }
  return { bytes: readFileSync(file), mode: facts.mode };
}

export function reasonOf(error: unknown): string {
  if (error instanceof FileRefused) return error.message;
  const { message, code, syscall } = error as NodeJS.ErrnoException;
  if (code === "ENOENT" && syscall === "stat") return "There is no such file.";
  if (code === "EACCES" || code === "EPERM") return `The system does not permit it (${message}).`;
  if (syscall !== undefined) return message;
  return `The file cannot be worked through (${message}). Nothing was written.`;
}

/** Where each file is written to; undefined where nothing is. */
function targetsOf(files: readonly string[], options: RecalcOptions): (string | undefined)[] {
  const { output, inPlace = false, check = false, report } = options;
  const given = [output !== undefined && "-o", inPlace && "--in-place", check && "--check"].filter(Boolean);
  if (given.length === 0) {
    throw new UsageError(
      "recalc needs to know where to write: -o OUT.xlsx, or --in-place, or --check to compare only.",
    );
  }
  if (given.length > 1) throw new UsageError(`recalc takes only one of ${given.join(" and ")}.`);
  if (report !== undefined) {
    requirePlace(report);
    requireOther(report, files, "--report");
  }
  if (check) return files.map(() => undefined);
  if (inPlace) return files.map((file) => (existsSync(file) ? realpathSync(file) : file));
  const targets = outputs(files, output!);
  const names = new Set(targets.map((target) => target.toLowerCase()));
  if (names.size < targets.length)
    throw new UsageError("two of the files bear one name: they would be written over each other.");
  for (const target of targets) requireOther(target, files, "-o");
  if (report !== undefined) requireOther(report, targets, "--report");
  return targets.map((target) => (existsSync(target) ? realpathSync(target) : target));
}

function outputs(files: readonly string[], output: string): string[] {
  const isFolder = existsSync(output) && statSync(output).isDirectory();
  if (files.length === 1 && !isFolder && !/[/\\]$/.test(output)) {
    requirePlace(output);
    requireEnding(files[0]!, output);
    return [output];
  }
  if (!isFolder && existsSync(output))
    throw new UsageError(`of several files -o names a folder, and ${output} is a file.`);
  mkdirSync(output, { recursive: true });
  return files.map((file) => path.join(output, path.basename(file)));
}

const ENDINGS = new Set([".xlsx", ".xlsm", ".xltx", ".xltm"]);

/** What a workbook is stands in it and in its name: where the two differ Excel does not open it. */
export function requireEnding(file: string, output: string): void {
  const [is, wanted] = [file, output].map((one) => path.extname(one).toLowerCase());
  if (is !== wanted && ENDINGS.has(is!) && ENDINGS.has(wanted!))
    throw new UsageError(`-o ${output}: a workbook ${is} stays one, Excel would not open it as ${wanted}.`);
}

/** Never over one of the files read, whatever path or link it is named by. */
export function requireOther(target: string, files: readonly string[], option: string): void {
  if (!existsSync(target)) return;
  const { dev, ino } = statSync(target);
  const same = files.find((file) => {
    if (path.resolve(file) === path.resolve(target)) return true;
    if (!existsSync(file)) return false;
    const facts = statSync(file);
    return facts.dev === dev && facts.ino === ino;
  });
  if (same === undefined) return;
  const advice = option === "-o" ? "Use --in-place to write over it." : "Name another one.";
  throw new UsageError(`${option} ${target} is the file ${same} itself. ${advice}`);
}

/** One file's report by itself, of several a list. Cell by cell, since all at once may be too long for one text. */
function writeReport(target: string, reports: readonly FileReport[]): void {
  const place = existsSync(target) ? realpathSync(target) : target;
  const mode = existsSync(target) ? statSync(target).mode : 0o644;
  writeWhole(place, mode, ({ put }) => {
    if (reports.length !== 1) put("[");
    for (const [i, report] of reports.entries()) {
      if (i > 0) put(",\n");
      putReport(put, report);
    }
    put(reports.length === 1 ? "\n" : "]\n");
  });
}

const FULL = 1 << 16;

function putReport(put: Pieces["put"], { file, refused, cells, summary }: FileReport): void {
  const head = JSON.stringify({ file, ...(refused === undefined ? {} : { refused }), cells: 0 });
  let text = `${head.slice(0, -2)}[`;
  for (const [i, cell] of cells.entries()) {
    text += `${i > 0 ? "," : ""}\n${JSON.stringify(cell)}`;
    if (text.length < FULL) continue;
    put(text);
    text = "";
  }
  put(`${text}],\n"summary":${JSON.stringify(summary)}}`);
}
