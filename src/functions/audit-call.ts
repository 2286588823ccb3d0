/** AUDIT: four verdicts on whatever a client's report states, a row each. */
import { AUDIT_COLUMNS, AUDIT_JOB_LINES } from "./audit-columns.js";
import { auditColumn, auditReport, type AuditedReport } from "./audit-report.js";
import { AUDIT_SHOWN, auditCells, auditFindings, auditLines } from "./audit-shown.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { cellText } from "./check-names.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { notGivenCell } from "./messages.js";
import { gridOf, isBlank, isNoWord, readSingle, readTexts } from "./read.js";
import { unitOf, type Units } from "./units.js";

const HEADERS: ArgumentSpec = {
  name: "headers",
  quantity: "table",
  help: "one row of column names, in any order; what is no name of ours is not read",
  whole: true,
};
const ROWS: ArgumentSpec = {
  name: "rows",
  quantity: "table",
  help: 'the report, a row each, as wide as headers; of a sheet IF(ref="","",ref), since Excel hands an empty cell over as 0',
  whole: true,
  columns: AUDIT_COLUMNS,
};
const JOB: ArgumentSpec = {
  name: "job",
  quantity: "table",
  help: "what the report says for all rows: two columns name | value",
  optional: true,
  whole: true,
  columns: AUDIT_JOB_LINES,
  columnsAre: "names",
};
const SHOW: ArgumentSpec = {
  name: "show",
  quantity: "text",
  help: "a table, or one column",
  optional: true,
  default: "table",
  choices: AUDIT_SHOWN,
};

function oneWord(spec: ArgumentSpec, input: Input): string | CellError {
  const cell = readSingle(spec, input);
  if (isCellError(cell)) return cell;
  const { values, faults } = readTexts(spec, cell, unitOf("text", "C"));
  return faults?.get(0) ?? values[0] ?? "";
}

function invalid(message: string): Grid {
  return [[{ error: "#VALUE!", message }]];
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(AUDIT, inputs);
  if (excess) return [[excess]];
  const [headersInput, rowsInput, jobInput, showInput, unitsInput] = inputs;
  for (const [spec, input] of [
    [HEADERS, headersInput],
    [ROWS, rowsInput],
  ] as const) {
    if (!Array.isArray(input) && (input === undefined || isBlank(input as Cell))) return [[notGivenCell(spec, false)]];
  }
  const units = oneWord(UNITS_ARGUMENT, unitsInput);
  if (isCellError(units)) return [[units]];
  const show = oneWord(SHOW, showInput);
  if (isCellError(show)) return [[show]];
  const [headers, rows] = [gridOf(headersInput), gridOf(rowsInput)];
  const passedOn = [...headers.flat(), ...(rows.length === 1 && rows[0]?.length === 1 ? rows.flat() : [])].find(
    isCellError,
  );
  if (passedOn) return [[passedOn]];
  const [names = []] = headers;
  const width = rows[0]?.length ?? 0;
  if (headers.length !== 1 || names.length !== width)
    return invalid(
      `headers has ${names.length} columns in ${headers.length} rows, rows ${width}: give one row of headers, as wide as the rows.`,
    );
  if (names.every((name) => auditColumn(name) === undefined)) {
    const typed = names.map((cell) => `"${isNoWord(cell) ? "" : cellText(cell)}"`).join(", ");
    return invalid(
      `headers: none of ${typed} is a name that is read. There are, in any order, ${AUDIT_COLUMNS.map(({ name }) => name).join(", ")}.`,
    );
  }
  const job = jobOf(jobInput);
  if (isCellError(job)) return [[job]];
  const report = remembered(names, rows, job, units === "F" ? "F" : "C");
  if (show === "table") return auditLines(report);
  return show === "findings" ? auditFindings(report) : auditCells(report, show);
}

function jobOf(input: Input): Grid | CellError {
  const grid = gridOf(input);
  const [[only = null] = []] = grid;
  if (grid.length === 1 && grid[0]?.length === 1) {
    if (isCellError(only)) return only;
    if (isNoWord(only)) return [];
  }
  if (grid[0]?.length === 2) return grid;
  const width = grid[0]?.length ?? 0;
  return {
    error: "#VALUE!",
    message: `${JOB.name}: ${width} ${width === 1 ? "column" : "columns"} cannot be. Allowed: two columns name | value.`,
  };
}

/**
 * A sheet asks for one report a dozen times, a column each: the last ones are kept by what they were made from. The result
 * is the same as if they were not.
 */
const KEPT = 3;
const kept: { readonly key: string; readonly report: AuditedReport }[] = [];

function remembered(headers: readonly Cell[], rows: Grid, job: Grid, units: Units): AuditedReport {
  const key = JSON.stringify([headers, rows, job, units]);
  const known = kept.find((one) => one.key === key);
  if (known !== undefined) return known.report;
  const report = auditReport(headers, rows, job, units);
  kept.unshift({ key, report });
  kept.length = Math.min(kept.length, KEPT);
  return report;
}

export const AUDIT: FunctionSpec = {
  name: "AUDIT",
  topic: "What-if and audit",
  summary:
    "What a client's report states, worked out again from its own readings: is the number reproduced, is the method sound, does the grade follow, what does it change. Slips are possibilities.",
  returns:
    'a table row | what | stated | recomputed | difference | tolerance | number | method | grade | consequence | missing | slips | formula; with show a column of it a row each, or "findings" of the whole report',
  args: [HEADERS, ROWS, JOB, SHOW, UNITS_ARGUMENT],
  shape: "set",
  example: {
    formula:
      '=GREY.AUDIT({"apparent","reference_apparent","emissivity","reflected","reference","stated_rise"},{58,45,0.6,22,"similar",13},,"number")',
    shows: "method: subtracted before corrected would give it",
  },
  sources: ["greybody-house"],
  evaluate: guarded(evaluate),
};
