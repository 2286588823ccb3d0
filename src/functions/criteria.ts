import { criteriaNamed, DEFAULT_CRITERIA, REFERENCE_KINDS } from "../core/severity/criteria.js";
import { ownCriteria } from "../core/severity/own-criteria.js";
import type { OwnCriteriaRow } from "../core/severity/own-criteria.js";
import { BUILT_IN_CRITERIA } from "../data/criteria.js";
import type { CriteriaSet } from "../data/criteria.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany } from "./lift.js";
import { thrownPlainly } from "./messages.js";
import { numberOf, readOwnTable, singleCell, textOf, wordsOf } from "./own-table.js";
import { provenanceInWords } from "./provenance.js";
import { isNoWord, readSingle } from "./read.js";
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

/** Against a limit an edge is a share, which no unit changes. */
const isShare = (row: readonly Cell[]): boolean => textOf(row[0]).trim().toLowerCase() === "limit";

/** A row of words only. One that names a reference or has an edge is a row of the table, whatever else it lacks. */
function isHeading([reference, grade, , edge]: readonly Cell[]): boolean {
  const named = REFERENCE_KINDS.some((kind) => kind === textOf(reference).trim().toLowerCase());
  return !named && Number.isNaN(numberOf(grade)) && Number.isNaN(numberOf(edge));
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
  const single = singleCell(input);
  if (isCellError(single)) return single;
  if (single !== undefined) return criteriaNamed(isNoWord(single) ? DEFAULT_CRITERIA : textOf(single));
  const unit = unitOf("difference", units);
  return readOwnTable(CRITERIA_ARGUMENT, input, {
    isHeading,
    build: (rows) => ownCriteria(rows.map((row) => readRow(row, unit))),
    about: (key, row) => {
      const column = COLUMNS[key] ?? 0;
      return { column, unit: column === COLUMNS["criteria-edge"] && !isShare(row) ? unit : unitOf("number", units) };
    },
  });
}

function readRow(row: readonly Cell[], unit: Unit): OwnCriteriaRow {
  const [reference, grade, bound, edge, words, action] = row;
  return {
    reference: textOf(reference),
    grade: numberOf(grade),
    bound: textOf(bound),
    edge: isShare(row) ? numberOf(edge) : toSI(numberOf(edge), unit),
    words: wordsOf(words),
    action: wordsOf(action),
  };
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
    const wanted = criteriaNamed(textOf(given));
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
