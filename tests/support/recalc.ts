/** Runs `greybody recalc` over workbooks made by a test, in a folder of its own. */
import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import path from "node:path";
import { strFromU8, unzipSync } from "fflate";
import { CLI } from "./calc.js";
import { runNode, type Outcome } from "./run.js";

export interface ReportCell {
  readonly sheet: string;
  readonly cell: string;
  readonly formula: string;
  readonly stored: unknown;
  readonly recalculated: unknown;
  readonly difference: number | null;
  readonly status: "same" | "changed" | "kept";
  readonly reason?: string;
}

export interface ReportFile {
  readonly file: string;
  readonly refused?: string;
  readonly cells: readonly ReportCell[];
  readonly summary: Readonly<Record<"formulas" | "same" | "changed" | "kept", number>>;
}

export class Folder {
  readonly path = mkdtempSync(path.join(tmpdir(), "greybody-recalc-"));

  at(name: string): string {
    return path.join(this.path, name);
  }

  put(name: string, bytes: Uint8Array): string {
    writeFileSync(this.at(name), bytes);
    return this.at(name);
  }

  read(name: string): Uint8Array {
    return new Uint8Array(readFileSync(this.at(name)));
  }

  get names(): string[] {
    return readdirSync(this.path).sort();
  }

  remove(): void {
    rmSync(this.path, { recursive: true, force: true });
  }
}

export function recalc(args: readonly string[]): Promise<Outcome> {
  return runNode([CLI, "recalc", ...args]);
}

export interface Recalculated {
  readonly outcome: Outcome;
  /** By file name. */
  readonly reports: ReadonlyMap<string, ReportFile>;
  readonly written: ReadonlyMap<string, Uint8Array>;
}

/** One run over all of them, into a folder, with a report. */
export async function recalcAll(
  books: Readonly<Record<string, Uint8Array>>,
  options: readonly string[] = [],
): Promise<Recalculated> {
  const folder = new Folder();
  try {
    const files = Object.entries(books).map(([name, bytes]) => folder.put(name, bytes));
    const out = folder.at("out");
    const report = folder.at("report.json");
    const outcome = await recalc([...files, "-o", `${out}/`, "--report", report, ...options]);
    const parsed = JSON.parse(readFileSync(report, "utf8")) as ReportFile | ReportFile[];
    const reports = new Map([parsed].flat().map((one) => [path.basename(one.file), one]));
    const written = new Map(readdirSync(out).map((name) => [name, new Uint8Array(readFileSync(path.join(out, name)))]));
    return { outcome, reports, written };
  } finally {
    folder.remove();
  }
}

/** The texts of a package's parts by name. */
export function textsOf(bytes: Uint8Array): Record<string, string> {
  return Object.fromEntries(Object.entries(unzipSync(bytes)).map(([name, part]) => [name, strFromU8(part)]));
}

/** What the report says of a cell. */
export function cellOf(report: ReportFile | undefined, sheet: string, cell: string): ReportCell | undefined {
  return report?.cells.find((one) => one.sheet === sheet && one.cell === cell);
}
