import { existsSync } from "node:fs";
import { version } from "../../package.json";
import type { FunctionSpec } from "../functions/contract.js";
import type { Units } from "../functions/units.js";
import { writeDescribed } from "../host/file/write/book.js";
import { marksOf } from "../host/file/write/marks.js";
import type { BookDescription } from "../templates/contract.js";
import { type Template, templates } from "../templates/registry.js";
import { requirePlace, writeWhole } from "./recalc-write.js";
import { DEMO, templateNames } from "./templates-text.js";
import { UsageError } from "./usage.js";

export interface NewOptions {
  readonly output?: string;
  /** C or F; where absent C, or what the last route has. */
  readonly units?: string;
  readonly rows?: number;
  readonly title?: string;
  /** The last route, for the next one. */
  readonly from?: string;
  /** Survey date of the next one. */
  readonly date?: string;
}

const PAPERS: Readonly<Record<Units, "A4" | "Letter">> = { C: "A4", F: "Letter" };
/** Empty rows where none are asked for. */
const EMPTY_ROWS = 40;
const FILE_MODE = 0o644;

/** `greybody new`: writes a workbook from a template; a file that is there already stays. */
export async function newWorkbook(name: string, options: NewOptions, specs: readonly FunctionSpec[]): Promise<string> {
  const isDemo = name.startsWith(DEMO);
  const template = templates.find((one) => one.name === (isDemo ? name.slice(DEMO.length) : name));
  if (template === undefined || (isDemo && template.demo === undefined))
    throw new UsageError(`there is no template ${name}, only ${templateNames.join(", ")}.`);
  const units = unitsOf(options.units ?? "C");
  const file = options.output ?? `${name}.xlsx`;
  requireNew(file);
  if (options.date !== undefined) throw new UsageError("--date goes with --from: it says what is overdue by then.");
  if (options.rows !== undefined && isDemo) throw new UsageError(`${name} has rows of its own: no --rows.`);
  if (options.title !== undefined && isDemo) throw new UsageError(`${name} has a title of its own: no --title.`);
  await writeBook(file, isDemo ? template.demo!(units) : emptyBook(template, units, options), units, specs);
  return file;
}

/** @throws UsageError */
export function unitsOf(given: string): Units {
  const units = (["C", "F"] as const).find((one) => one === given.toUpperCase());
  if (units === undefined) throw new UsageError(`--units ${given}: C or F.`);
  return units;
}

export function requireNew(file: string): void {
  if (existsSync(file)) throw new UsageError(`${file} is there already: choose another name with -o.`);
  requirePlace(file);
}

function emptyBook(template: Template, units: Units, options: NewOptions): BookDescription {
  const { rows = template.rows?.usual ?? EMPTY_ROWS, title } = options;
  const most = template.rows?.most ?? rows;
  if (rows > most) throw new UsageError(`${template.name} has room for at most ${most} rows.`);
  return template.empty({ units, rows, ...(title === undefined ? {} : { title }) });
}

/** Writes a description with the names by which a workbook tells what made it. */
export async function writeBook(
  file: string,
  book: BookDescription,
  units: Units,
  specs: readonly FunctionSpec[],
): Promise<void> {
  const bytes = await writeDescribed(book, specs, { paper: PAPERS[units], marks: marksOf(book, version) });
  writeWhole(file, FILE_MODE, ({ put }) => {
    put(bytes);
  });
}
