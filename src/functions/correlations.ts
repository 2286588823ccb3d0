/** Reads the argument `correlations`: rows of name | name | r, a header or not, empty rows passed over. */
import { correlationMatrix } from "../core/uncertainty/correlation.js";
import type { Correlation } from "../core/uncertainty/correlation.js";
import { argumentOf, INPUT_NAMES } from "../core/uncertainty/inputs.js";
import type { InputName } from "../core/uncertainty/inputs.js";
import type { Cell, CellError, Grid, Input } from "./contract.js";
import { numberOf, readOwnTable, singleCell, wordsOf } from "./own-table.js";
import { gridOf, isNoWord } from "./read.js";
import { isCellError } from "./contract.js";
import { CORRELATIONS_ARGUMENT } from "./uncertainty-arguments.js";
import { unitOf } from "./units.js";

const COLUMNS = 3;

/** The input that a cell names, or undefined. */
function inputNamed(cell: Cell | undefined): InputName | undefined {
  const word = wordsOf(cell).toLowerCase().replace(/\s+/g, "_");
  return INPUT_NAMES.find((name) => argumentOf(name) === word);
}

/** What is no name is handed on: the core says so by its row. */
const nameIn = (cell: Cell | undefined): InputName => inputNamed(cell) ?? (wordsOf(cell) as InputName);

function build(rows: Grid): Correlation<InputName>[] {
  const correlations = rows.map(([one, other, r]) => ({ one: nameIn(one), other: nameIn(other), r: numberOf(r) }));
  correlationMatrix(INPUT_NAMES, correlations);
  return correlations;
}

export function readCorrelations(input: Input): readonly Correlation<InputName>[] | CellError {
  const single = singleCell(input);
  if (isCellError(single)) return single;
  if (single !== undefined && isNoWord(single)) return [];
  const width = gridOf(input)[0]?.length ?? 0;
  if (width !== COLUMNS) {
    const said =
      single === undefined ? `${width} columns` : typeof single === "string" ? `"${single}"` : String(single);
    const message = `correlations: ${said} cannot be. Allowed: a range of three columns, name | name | r.`;
    return { error: "#VALUE!", message };
  }
  return readOwnTable(CORRELATIONS_ARGUMENT, input, {
    isHeading: ([one, other, r]) =>
      Number.isNaN(numberOf(r)) && inputNamed(one) === undefined && inputNamed(other) === undefined,
    build,
    about: (key, [one]) => ({
      column: key === "correlation-range" ? 2 : key === "correlation-name" && inputNamed(one) !== undefined ? 1 : 0,
      unit: unitOf("number", "C"),
    }),
  });
}
