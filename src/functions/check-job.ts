import type { Finding } from "../core/check/hit.js";
import { Named } from "../core/check/named.js";
import { GreybodyError } from "../core/errors.js";
import type { Band } from "../core/planck/band.js";
import { DEFAULT_BAND } from "../core/planck/band.js";
import { criteriaNamed } from "../core/severity/criteria.js";
import { readBands } from "./bands.js";
import type { CheckColumn } from "./check-columns.js";
import { JOB_LINES } from "./check-columns.js";
import { cellText, columnNamed, isOnlyOurs, JOB_NAMES, jobLineNamed, plainName } from "./check-names.js";
import type { KnownName } from "./check-names.js";
import { readNamed } from "./check-read.js";
import type { ArgumentSpec, Cell, CellError, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { gridOf, isBlank, isNoWord } from "./read.js";
import type { Units } from "./units.js";

export interface Job {
  readonly named: Named;
  readonly band: Band;
  readonly findings: readonly Finding[];
  /** The Job sheet of one of our routes, beside which stand the lists of assets and surfaces. */
  readonly isOfOurRoute: boolean;
}

const caution = (id: string, column: string, values: Record<string, string>): Finding => ({
  row: 0,
  id,
  kind: "caution",
  column,
  values,
});

/** Reads a job's two columns name | value; a CellError where they are none. */
export function readJob(spec: ArgumentSpec, input: Input, units: Units): Job | CellError {
  const grid = gridOf(input);
  const [[only = null] = []] = grid;
  if (grid.length === 1 && grid[0]?.length === 1) {
    if (isCellError(only)) return only;
    if (isNoWord(only)) return { named: new Named(new Map()), band: DEFAULT_BAND, findings: [], isOfOurRoute: false };
  }
  if (grid[0]?.length !== 2) {
    const width = grid[0]?.length ?? 0;
    const message = `${spec.name}: ${width} ${width === 1 ? "column" : "columns"} cannot be. Allowed: two columns name | value.`;
    return { error: "#VALUE!", message };
  }
  const findings: Finding[] = [];
  const columns: CheckColumn[] = [];
  let isOfOurRoute = false;
  const values: Cell[] = [];
  for (const [place, [name = null, value = null]] of grid.entries()) {
    if (isCellError(name)) return name;
    // Headings between the lines, and the one above them, have no value.
    if (isNoWord(name) || isBlank(value) || (place === 0 && isHeading(name, value))) continue;
    const header = cellText(name);
    const known = jobLineNamed(header);
    isOfOurRoute ||= isOnlyOurs(header);
    const line = JOB_LINES.find((one) => one.name === known.name);
    if (line === undefined) {
      if (!known.isPassedOver) findings.push(unknownLine(header, known));
    } else if (columns.includes(line)) {
      findings.push(caution("name-twice", `job_${line.name}`, { place: String(place + 1) }));
    } else {
      columns.push(line);
      values.push(value);
    }
  }
  const read = readNamed(columns, values, units, 0);
  const { band, faults } = bandOf(read.named.text("band"));
  return {
    named: read.named,
    band,
    isOfOurRoute,
    findings: [...findings, ...read.findings, ...faults, ...criteriaFault(read.named)],
  };
}

/** What belongs into the rows is told so; the job has another setting of a like name, which would be the wrong one. */
function unknownLine(header: string, { nearest = "" }: KnownName): Finding {
  const column = columnNamed(header).name;
  if (column === undefined) return caution("job-not-read", header, { nearest, names: JOB_NAMES.join(", ") });
  return caution(column.startsWith("window_") ? "window-in-job" : "column-in-job", header, { name: column });
}

const isHeading = (name: Cell, value: Cell): boolean =>
  plainName(cellText(name)) === "name" && plainName(cellText(value)) === "value";

function bandOf(typed: string | undefined): { band: Band; faults: readonly Finding[] } {
  if (typed === undefined) return { band: DEFAULT_BAND, faults: [] };
  const [band] = readBands(typed).values;
  return band === undefined
    ? { band: DEFAULT_BAND, faults: [caution("no-band", "job_band", { typed })] }
    : { band, faults: [] };
}

/** The workbook's own range, which the job only names: no rule that needs its edges is asked then. */
const isOwnCriteria = (typed: string): boolean => /^own\b/i.test(typed.trim());

function criteriaFault(job: Named): readonly Finding[] {
  const typed = job.text("criteria");
  if (typed === undefined || isOwnCriteria(typed)) return [];
  try {
    criteriaNamed(typed);
    return [];
  } catch (error) {
    if (error instanceof GreybodyError) return [caution("no-criteria", "job_criteria", { typed })];
    throw error;
  }
}
