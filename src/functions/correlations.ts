/** Reads the argument `correlations`: rows of name | name | r, a header or not, empty rows passed over. */
import type { GreybodyError } from "../core/errors.js";
import type { Correlation } from "../core/uncertainty/correlation.js";
import { argumentOf, INPUT_NAMES } from "../core/uncertainty/inputs.js";
import type { InputName } from "../core/uncertainty/inputs.js";
import type { Cell, CellError, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { plainNumber } from "./numbers.js";
import { gridOf, isNoWord } from "./read.js";
import { tableError } from "./table-errors.js";
import { CORRELATIONS_ARGUMENT } from "./uncertainty-arguments.js";
import { unitOf } from "./units.js";

const COLUMNS = 3;

/** The input of that name, or undefined. */
function inputNamed(cell: Cell | undefined): InputName | undefined {
  if (typeof cell !== "string") return undefined;
  const word = cell.trim().toLowerCase().replace(/\s+/g, "_");
  return INPUT_NAMES.find((name) => argumentOf(name) === word);
}

const numberIn = (cell: Cell | undefined): number =>
  typeof cell === "number" ? cell : typeof cell === "string" ? (plainNumber(cell) ?? NaN) : NaN;

/** Words only, none of which names an input. */
const isHeading = ([one, other, r]: readonly Cell[]): boolean =>
  Number.isNaN(numberIn(r)) && inputNamed(one) === undefined && inputNamed(other) === undefined;

/** The rows that say something, by their places in the range. */
function placesIn(grid: Grid): number[] {
  const filled = grid.flatMap((row, place) => (row.every(isNoWord) ? [] : [place]));
  return filled.filter((place, i) => i > 0 || filled.length === 1 || !isHeading(grid[place] ?? []));
}

/** What the core shall check: a name that is none is handed on, for the core to say so by its row. */
export function readCorrelations(input: Input): readonly Correlation<InputName>[] | CellError {
  const grid = gridOf(input);
  const incoming = grid.flat().find(isCellError);
  if (incoming) return incoming;
  const places = placesIn(grid);
  if (places.length > 0 && grid[0]?.length !== COLUMNS) {
    const [[only = null] = []] = grid;
    const said = grid.length === 1 && grid[0]?.length === 1 ? JSON.stringify(only) : `${grid[0]?.length ?? 0} columns`;
    return {
      error: "#VALUE!",
      message: `correlations: ${said} cannot be. Allowed: a range of three columns, name | name | r.`,
    };
  }
  return places.map((place) => {
    const [one, other, r] = grid[place] ?? [];
    return { one: nameOf(one), other: nameOf(other), r: numberIn(r) };
  });
}

const nameOf = (cell: Cell | undefined): InputName =>
  inputNamed(cell) ?? ((typeof cell === "string" ? cell : "") as InputName);

/** What a cell shows for the core's error about a row of the correlations. */
export function correlationError(error: GreybodyError, input: Input): CellError {
  const grid = gridOf(input);
  return tableError(error, CORRELATIONS_ARGUMENT, grid, placesIn(grid), (key, [one]) => ({
    column: key === "correlation-range" ? 2 : key === "correlation-name" && inputNamed(one) !== undefined ? 1 : 0,
    unit: unitOf("number", "C"),
  }));
}
