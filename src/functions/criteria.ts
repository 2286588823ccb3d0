import { criteriaNamed, DEFAULT_CRITERIA } from "../core/severity/criteria.js";
import { ownCriteria } from "../core/severity/own-criteria.js";
import type { OwnCriteriaRow } from "../core/severity/own-criteria.js";
import { BUILT_IN_CRITERIA } from "../data/criteria.js";
import type { CriteriaSet } from "../data/criteria.js";
import type { Provenance } from "../data/provenance.js";
import { REFERENCES } from "../data/references.js";
import { beginCall } from "./arena.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany } from "./lift.js";
import { thrownPlainly } from "./messages.js";
import { plainNumber } from "./numbers.js";
import { gridOf, isBlank } from "./read.js";
import { toSI, unitOf } from "./units.js";
import type { Units } from "./units.js";

export const CRITERIA_ARGUMENT: ArgumentSpec = {
  name: "criteria",
  quantity: "table",
  help: "name of a built-in table of criteria, or a range reference | grade | from or above | lower edge | words | action",
  optional: true,
  default: DEFAULT_CRITERIA,
  whole: true,
};

const isEmpty = (row: readonly Cell[]): boolean => row.every((cell) => isBlank(cell) || cell === 0);
const text = (cell: Cell | undefined): string =>
  typeof cell === "string" ? cell : cell === null || cell === undefined || isCellError(cell) ? "" : String(cell);
const number = (cell: Cell | undefined): number =>
  typeof cell === "number" ? cell : typeof cell === "string" ? (plainNumber(cell) ?? NaN) : NaN;

/**
 * Reads the argument `criteria`: a built-in name, or the workbook's own range, header or not, empty rows passed over.
 * @throws INVALID "criteria"
 */
export function readCriteria(input: Input, units: Units): CriteriaSet | CellError {
  const grid = gridOf(input);
  const [[single = null] = []] = grid;
  const incoming = grid.flat().find(isCellError);
  if (incoming) return incoming;
  if (grid.length === 1 && grid[0]?.length === 1)
    return criteriaNamed(isBlank(single) ? DEFAULT_CRITERIA : text(single));
  const header = Number.isNaN(number(grid[0]?.[1]));
  const unit = unitOf("difference", units);
  const rows: OwnCriteriaRow[] = [];
  for (const row of header ? grid.slice(1) : grid) {
    if (isEmpty(row)) continue;
    const [reference, grade, bound, edge, words, action] = row;
    // Against a limit the edge is a share, which no unit changes.
    const isShare = text(reference).trim().toLowerCase() === "limit";
    rows.push({
      reference: text(reference),
      grade: number(grade),
      bound: text(bound),
      edge: isShare ? number(edge) : toSI(number(edge), unit),
      words: text(words),
      action: text(action),
    });
  }
  return ownCriteria(rows, header ? 2 : 1);
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
  beginCall();
  const excess = tooMany(CRITERIA, inputs);
  if (excess) return [[excess]];
  const [[given = null] = []] = gridOf(inputs[0]);
  if (isCellError(given)) return [[given]];
  if (isBlank(given)) {
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
    return [[thrownPlainly(error, { ...NAME, name: "name" }, given)]];
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
