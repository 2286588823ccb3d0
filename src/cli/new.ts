import { existsSync } from "node:fs";
import { version } from "../../package.json";
import { CATALOGUE_NUMBER } from "../functions/catalogue-number.js";
import type { FunctionSpec } from "../functions/contract.js";
import type { Units } from "../functions/units.js";
import { writeDescribed } from "../host/file/write/book.js";
import type { BookDescription } from "../templates/contract.js";
import { criteriaChoices, newRoute, type RouteKind } from "../templates/new.js";
import { demoRoute } from "../templates/route/demo/route.js";
import { requirePlace, writeWhole } from "./recalc-write.js";
import { UsageError } from "./usage.js";

export interface NewOptions {
  readonly output?: string;
  readonly units: string;
  readonly rows?: number;
}

const PAPERS: Readonly<Record<Units, "A4" | "Letter">> = { C: "A4", F: "Letter" };
const DEMO = "demo-route";
/** Empty rows where none are asked for. */
const EMPTY_ROWS = 40;
const FILE_MODE = 0o644;

const route =
  (kind: RouteKind, title: string) =>
  (units: Units, rows: number): BookDescription =>
    newRoute({ kind, title, units, rows, criteria: criteriaChoices[kind][0] });

/** What can be made, by name. */
const TEMPLATES: Readonly<Record<string, (units: Units, rows: number) => BookDescription>> = {
  route: route("electrical", "Electrical route"),
  "mechanical-route": route("mechanical", "Mechanical route"),
  [DEMO]: (units) => demoRoute(units),
};

const templateNames = Object.keys(TEMPLATES);

/** `greybody new`: writes a workbook from a template; a file that is there already stays. */
export async function newWorkbook(name: string, options: NewOptions, specs: readonly FunctionSpec[]): Promise<string> {
  const template = Object.hasOwn(TEMPLATES, name) ? TEMPLATES[name] : undefined;
  if (template === undefined) throw new UsageError(`there is no template ${name}, only ${templateNames.join(", ")}.`);
  const units = (["C", "F"] as const).find((one) => one === options.units.toUpperCase());
  if (units === undefined) throw new UsageError(`--units ${options.units}: C or F.`);
  const file = options.output ?? `${name}.xlsx`;
  if (existsSync(file)) throw new UsageError(`${file} is there already: choose another name with -o.`);
  requirePlace(file);
  if (options.rows !== undefined && name === DEMO) throw new UsageError(`${DEMO} has rows of its own: no --rows.`);
  const marks = { GREYBODY_CATALOGUE: CATALOGUE_NUMBER, GREYBODY_VERSION: version };
  const bytes = await writeDescribed(template(units, options.rows ?? EMPTY_ROWS), specs, {
    paper: PAPERS[units],
    marks,
  });
  writeWhole(file, FILE_MODE, ({ put }) => {
    put(bytes);
  });
  return file;
}
