import { GreybodyError } from "../core/errors.js";
import { criteriaNamed, DEFAULT_CRITERIA, REFERENCE_KINDS } from "../core/severity/criteria.js";
import { ownCriteria } from "../core/severity/own-criteria.js";
import type { OwnCriteriaRow } from "../core/severity/own-criteria.js";
import { BUILT_IN_CRITERIA } from "../data/criteria.js";
import type { CriteriaSet } from "../data/criteria.js";
import type { Provenance } from "../data/provenance.js";
import { REFERENCES } from "../data/references.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany } from "./lift.js";
import { thrownPlainly } from "./messages.js";
import { plainNumber } from "./numbers.js";
import { gridOf, isNoWord, readSingle } from "./read.js";
import { tableError } from "./table-errors.js";
import { toSI, unitOf } from "./units.js";
import type { Unit, Units } from "./units.js";

export const CRITERIA_ARGUMENT: ArgumentSpec = {
  name: "criteria",
  quantity: "table",
  help: "name of a built-in table of criteria, or a range reference | grade | from or above | lower edge | words | action",
  optional: true,
  default: DEFAULT_CRITERIA,
  whole: true,
};

const isEmpty = (row: readonly Cell[]): boolean => row.every(isNoWord);
const text = (cell: Cell | undefined): string =>
  typeof cell === "string" ? cell : cell === null || cell === undefined || isCellError(cell) ? "" : String(cell);
const number = (cell: Cell | undefined): number =>
  typeof cell === "number" ? cell : typeof cell === "string" ? (plainNumber(cell) ?? NaN) : NaN;

/** Against a limit an edge is a share, which no unit changes. */
const isShare = (row: readonly Cell[]): boolean => text(row[0]).trim().toLowerCase() === "limit";

/** A row of words only. One that names a reference or has an edge is a row of the table, whatever else it lacks. */
function isHeading([reference, grade, , edge]: readonly Cell[]): boolean {
  const named = REFERENCE_KINDS.some((kind) => kind === text(reference).trim().toLowerCase());
  return !named && Number.isNaN(number(grade)) && Number.isNaN(number(edge));
}

/** Columns of a workbook's own table that a fault in it is about, by the key of the core's hint. */
const COLUMNS: Readonly<Record<string, number>> = {
  "criteria-grade": 1,
  "criteria-grade-order": 1,
  "criteria-bound": 2,
  "criteria-edge": 3,
  "criteria-edge-order": 3,
  "criteria-words": 4,
};

/**
 * Reads the argument `criteria`: a built-in name, or the workbook's own range, header or not, empty rows passed over.
 * @throws INVALID "criteria" for a name that is none
 */
export function readCriteria(input: Input, units: Units): CriteriaSet | CellError {
  const grid = gridOf(input);
  const [[single = null] = []] = grid;
  const incoming = grid.flat().find(isCellError);
  if (incoming) return incoming;
  if (grid.length === 1 && grid[0]?.length === 1)
    return criteriaNamed(isNoWord(single) ? DEFAULT_CRITERIA : text(single));
  const filled = grid.flatMap((row, place) => (isEmpty(row) ? [] : [place]));
  const places = filled.filter((place, i) => i > 0 || !isHeading(grid[place]!));
  const unit = unitOf("difference", units);
  try {
    return ownCriteria(places.map((place) => readRow(grid[place]!, unit)));
  } catch (error) {
    if (!(error instanceof GreybodyError)) throw error;
    return tableError(error, CRITERIA_ARGUMENT, grid, places, (key, row) => {
      const column = COLUMNS[key] ?? 0;
      return { column, unit: column === COLUMNS["criteria-edge"] && !isShare(row) ? unit : unitOf("number", units) };
    });
  }
}

function readRow(row: readonly Cell[], unit: Unit): OwnCriteriaRow {
  const [reference, grade, bound, edge, words, action] = row;
  return {
    reference: text(reference),
    grade: number(grade),
    bound: text(bound),
    edge: isShare(row) ? number(edge) : toSI(number(edge), unit),
    words: text(words),
    action: text(action),
  };
}

/** Source, place and edition of a row as they stand in a cell; what was not read in the document itself says so. */
export function provenanceInWords({ source, locator, edition, evidence }: Provenance): string {
  const short = REFERENCES[source]?.short ?? source;
  if (evidence === "own") return `${short}: ${locator}`;
  const trust =
    evidence === "read"
      ? ""
      : ` (${evidence === "memory" ? "from memory" : evidence === "secondary" ? "read where quoted" : evidence})`;
  return `numbers cited from ${short}, ${locator}, ${edition}${trust}; check your edition`;
}

const NAME: ArgumentSpec = {
  name: "name",
  quantity: "text",
  help: "name of a table of criteria; a list of all where left out",
  optional: true,
};

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(CRITERIA, inputs);
  if (excess) return [[excess]];
  const given = readSingle(NAME, inputs[0]);
  if (isCellError(given)) return [[given]];
  if (isNoWord(given)) {
    return [
      ["criteria", "views", "what it is"],
      ...BUILT_IN_CRITERIA.map(({ name, views, about }) => [name, views.join(", "), about]),
    ];
  }
  try {
    const wanted = criteriaNamed(text(given));
    const set = BUILT_IN_CRITERIA.find(({ name }) => name === wanted.name);
    const header = ["reference", "grade", "from or above", "lower edge", "words", "action", "unit of edge", "source"];
    const rows = (set?.rows ?? []).map((row): Cell[] => [
      row.reference,
      row.grade,
      row.bound,
      row.edge,
      row.words,
      row.action,
      row.reference === "limit" ? "share of limit" : "K",
      provenanceInWords(row),
    ]);
    return [header, ...rows];
  } catch (error) {
    return [[thrownPlainly(error, NAME, given)]];
  }
}

export const CRITERIA: FunctionSpec = {
  name: "CRITERIA",
  topic: "Severity",
  summary:
    "A built-in table of criteria with its sources, in the columns that GRADE takes; without a name, the list of tables.",
  returns: "a table",
  args: [NAME],
  shape: "table",
  example: { formula: '=GREY.CRITERIA("house-limit")', shows: "reference, grade, from or above, lower edge, …" },
  sources: ["neta-ats-2003", "greybody-house"],
  evaluate: guarded(evaluate),
};
