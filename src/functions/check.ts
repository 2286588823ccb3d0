import { checkRoute } from "../core/check/check.js";
import { PHASES, RowFacts } from "../core/check/facts.js";
import type { Finding, Kind } from "../core/check/hit.js";
import { KINDS } from "../core/check/hit.js";
import { CHECK_COLUMNS, JOB_LINES } from "./check-columns.js";
import { readHeaders } from "./check-headers.js";
import { readJob } from "./check-job.js";
import { readNamed } from "./check-read.js";
import { CAUTION_WORDS } from "./check-words/cautions.js";
import { IMPLAUSIBLE_WORDS } from "./check-words/implausible.js";
import { NEEDED_WORDS } from "./check-words/needed.js";
import { STOP_WORDS } from "./check-words/stops.js";
import { ROUTE_WORDS } from "./check-words/whole-route.js";
import type { WordsOfFindings } from "./check-words/words.js";
import { say, wordsOf } from "./check-words/words.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { notGivenCell } from "./messages.js";
import { gridOf, isBlank, isNoWord, readSingle, readTexts } from "./read.js";
import { unitOf } from "./units.js";
import type { Units } from "./units.js";

const HEADERS: ArgumentSpec = {
  name: "headers",
  quantity: "table",
  help: "one row of column names, in any order; a unit in brackets does no harm",
  whole: true,
};
const ROWS: ArgumentSpec = {
  name: "rows",
  quantity: "table",
  help: 'the route, a row each, as wide as headers; of a sheet IF(ref="","",ref), since Excel hands an empty cell over as 0',
  whole: true,
  columns: CHECK_COLUMNS,
};
const JOB: ArgumentSpec = {
  name: "job",
  quantity: "table",
  help: "what holds for every row: two columns name | value, the names those of our Job sheet",
  optional: true,
  whole: true,
  columns: JOB_LINES,
  columnsAre: "names",
};
const SHOW: ArgumentSpec = {
  name: "show",
  quantity: "text",
  help: "text: one text a row; findings: a table of all, those of the whole route first",
  optional: true,
  default: "text",
  choices: ["text", "findings"],
};
const TABLE_HEADER = ["row", "column", "kind", "what", "why", "what to do"] as const;

/** Of a rule without words, which a test does not let be. */
const UNTOLD = { what: "", why: "", todo: "" };

/** What each rule says. */
export const CHECK_WORDS: WordsOfFindings = {
  ...NEEDED_WORDS,
  ...STOP_WORDS,
  ...IMPLAUSIBLE_WORDS,
  ...CAUTION_WORDS,
  ...ROUTE_WORDS,
};

/** A word of an argument that takes one value; a CellError where it is none. */
function oneWord(spec: ArgumentSpec, input: Input): string | CellError {
  const cell = readSingle(spec, input);
  if (isCellError(cell)) return cell;
  const { values, faults } = readTexts(spec, cell, unitOf("text", "C"));
  return faults?.get(0) ?? values[0] ?? "";
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(CHECK, inputs);
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
  const rows = gridOf(rowsInput);
  const [[only = null] = []] = rows;
  if (rows.length === 1 && rows[0]?.length === 1 && isCellError(only)) return [[only]];
  const headers = readHeaders(HEADERS, gridOf(headersInput), rows);
  if (isCellError(headers)) return [[headers]];
  const system: Units = units === "F" ? "F" : "C";
  const job = readJob(JOB, jobInput, system);
  if (isCellError(job)) return [[job]];

  const read = rows.map((cells, r) => readNamed(headers.columns, cells, system, r + 1));
  const has = (name: string): boolean => headers.columns.some((column) => column?.name === name);
  const isOfPoints = has("reading") && !PHASES.some(has);
  // Of our route only what is typed: the lists and what is looked up in them were not handed over.
  const isWithoutLists = job.isOfOurRoute && headers.columns.every((one) => one?.from === undefined);
  const route = {
    ...{ job: job.named, band: job.band, isOfPoints, isWithoutLists },
    transmissions: new Map<string, number | undefined>(),
  };
  const filled = read.flatMap(({ named, isEmpty }, r) => (isEmpty ? [] : [new RowFacts(r + 1, named, route)]));
  // A row that holds nothing but what is not read is not calm either.
  const first = filled[0]?.number ?? rows.findIndex((row) => headers.unread.some((c) => !isNoWord(row[c] ?? null))) + 1;
  const unreadable = read.flatMap(({ findings, isEmpty }) => (isEmpty ? [] : findings));
  const lists: readonly Finding[] = isWithoutLists
    ? [{ row: 0, id: "without-lists", kind: "caution", column: "surface", values: {} }]
    : [];
  const findings = checkRoute(filled, job.named, [...headers.findings, ...job.findings, ...lists, ...unreadable]);
  return show === "findings" ? table(findings, system) : texts(findings, filled, first, rows.length, system);
}

function table(findings: readonly Finding[], units: Units): Grid {
  const lines = findings.map((finding): Cell[] => {
    const w = wordsOf(finding, units);
    const { what, why, todo } = CHECK_WORDS[finding.id] ?? UNTOLD;
    return [finding.row, finding.column, finding.kind, say(what, w), say(why, w), say(todo, w)];
  });
  return [TABLE_HEADER, ...lines];
}

/**
 * One text a row. What stops the whole route stops each of its readings, so it stands there too; whatever else there is of
 * the whole route begins the first row that holds anything, so that empty means that nothing is wrong.
 * @param first that row, from 1; 0 where there is none
 */
function texts(
  findings: readonly Finding[],
  filled: readonly RowFacts[],
  first: number,
  count: number,
  units: Units,
): Grid {
  const ofRoute = findings.filter(({ row }) => row === 0);
  const stops = ofRoute.filter(({ kind }) => kind === "stop");
  const ofRow = new Map<number, Finding[]>(
    filled.map(({ number, isMeasured }) => [number, isMeasured ? [...stops] : []]),
  );
  for (const finding of findings) ofRow.get(finding.row)?.push(finding);
  const untold = ofRoute.filter((finding) => ofRow.get(first)?.includes(finding) !== true);
  return Array.from({ length: count }, (_, r) => {
    const own = textOf(ofRow.get(r + 1) ?? [], units);
    return [r + 1 === first ? [ofRouteInShort(untold, units), own].filter(Boolean).join(" ") : own];
  });
}

/** More than so many findings of the whole route are counted in a row's text, not told. */
const MOST_TOLD = 2;

function ofRouteInShort(findings: readonly Finding[], units: Units): string {
  if (findings.length === 0) return "";
  if (findings.length > MOST_TOLD) return `${findings.length} findings for the whole route: show "findings".`;
  return told("Route", findings, units);
}

/** "Stop: this; that.", without a point after a question. */
function told(head: string, findings: readonly Finding[], units: Units): string {
  const what = findings.map((finding) => say((CHECK_WORDS[finding.id] ?? UNTOLD).what, wordsOf(finding, units)));
  const whole = `${head}: ${what.join("; ")}`;
  return whole.endsWith("?") ? whole : `${whole}.`;
}

function textOf(findings: readonly Finding[], units: Units): string {
  return KINDS.flatMap((kind) => {
    const own = findings.filter((finding) => finding.kind === kind);
    return own.length === 0 ? [] : [sentence(kind, own, units)];
  }).join(" ");
}

/** "Needed: time, amps_left." "Stop: wind 8 m/s at the target." */
function sentence(kind: Kind, findings: readonly Finding[], units: Units): string {
  const head = kind.charAt(0).toUpperCase() + kind.slice(1);
  if (kind === "needed") return `${head}: ${findings.map(({ column }) => column).join(", ")}.`;
  return told(head, findings, units);
}

export const CHECK: FunctionSpec = {
  name: "CHECK",
  topic: "Trend and plan",
  summary:
    "What a route still needs, what stops a grade, what is implausible and what calls for caution, row by row; empty where nothing does.",
  returns: 'one text a row; with show "findings" a table row | column | kind | what | why | what to do',
  args: [HEADERS, ROWS, JOB, SHOW, UNITS_ARGUMENT],
  shape: "set",
  example: {
    formula: '=GREY.CHECK({"asset_id","status","time","wind"},{"MSB-Q3","partly seen",0.37,8})',
    shows: "Needed: reason. Stop: wind 8 m/s at the target.",
  },
  sources: ["greybody-house", "nfpa-70b-2023", "neta-ats-2003"],
  evaluate: guarded(evaluate),
};
