/** What RISE_UNCERTAINTY is called with. */
import { TEMPERATURE } from "../core/limits.js";
import type { Band } from "../core/planck/band.js";
import { RELATIONS } from "../core/uncertainty/rise.js";
import { BAND_ARGUMENT, readBands } from "./bands.js";
import type { ArgumentSpec, CellError, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { readInputRows } from "./input-rows.js";
import type { InputRows } from "./input-rows.js";
import { UNITS_ARGUMENT } from "./lift.js";
import { gridOf, readNumbers, readTexts } from "./read.js";
import type { Column } from "./read.js";
import { COVERAGE_ARGUMENT, INPUTS_ARGUMENT, LEAST_COLUMNS, UNCERTAINTIES_ARGUMENT } from "./uncertainty-arguments.js";
import { singleUnits } from "./single-units.js";
import { unitOf } from "./units.js";
import type { Units } from "./units.js";

export const HOT: ArgumentSpec = {
  ...INPUTS_ARGUMENT,
  name: "hot",
  help: "the hot readings: a row each, a column for each of CORRECTED's first ten arguments, at least three",
};
export const REFERENCE: ArgumentSpec = {
  ...INPUTS_ARGUMENT,
  name: "reference",
  help: "what the rise is over: one row for all or one each, columns as those of hot; or one column, the air's temperature by thermometer",
};
/** The air's temperature where the reference is one column. */
const AIR: ArgumentSpec = {
  ...REFERENCE,
  columns: [{ name: "reference", quantity: "temperature", help: "temperature of the air", range: TEMPERATURE }],
};
export const UNCERTAINTIES: ArgumentSpec = {
  ...UNCERTAINTIES_ARGUMENT,
  help: "standard uncertainties (k = 1) of these columns, one row for all or one each; for a single pair also two rows, the hot one's and the reference's; air by thermometer is ±1 K, else what the second row begins with above 0",
};
const RELATION: ArgumentSpec = {
  name: "relation",
  quantity: "text",
  help: "how both belong together: what they share cancels, but of readings above 100 °C the camera's gain does not; no default",
  choices: RELATIONS,
};
export const RISE_ARGUMENTS: readonly ArgumentSpec[] = [
  HOT,
  REFERENCE,
  UNCERTAINTIES,
  RELATION,
  COVERAGE_ARGUMENT,
  BAND_ARGUMENT,
  UNITS_ARGUMENT,
];
export interface RiseCall {
  readonly inputs: readonly Input[];
  readonly units: Units;
  readonly hot: InputRows;
  readonly reference: InputRows;
  /** Whether the reference is an air's temperature. */
  readonly isAir: boolean;
  readonly uncertainties: InputRows;
  readonly relation: Column<ArrayLike<string | undefined>>;
  readonly coverage: Column<ArrayLike<number>>;
  readonly band: Column<ArrayLike<Band | undefined>>;
}

const invalid = (message: string): CellError => ({ error: "#VALUE!", message });

/** Reads the call; a CellError where the whole of it has no answer. */
export function readRiseCall(inputs: readonly Input[]): RiseCall | CellError {
  const units = singleUnits(RISE_ARGUMENTS, inputs);
  if (isCellError(units)) return units;
  const at = (spec: ArgumentSpec): Input => inputs[RISE_ARGUMENTS.indexOf(spec)];
  const hot = readInputRows(HOT, at(HOT), units, LEAST_COLUMNS);
  if (isCellError(hot)) return hot;
  const isAir = (gridOf(at(REFERENCE))[0]?.length ?? 0) === 1;
  const reference = readInputRows(isAir ? AIR : REFERENCE, at(REFERENCE), units, isAir ? 1 : LEAST_COLUMNS);
  if (isCellError(reference)) return reference;
  const uncertainties = readInputRows(UNCERTAINTIES, at(UNCERTAINTIES), units, LEAST_COLUMNS);
  if (isCellError(uncertainties)) return uncertainties;
  const metric = unitOf("fraction", "C");
  const relation = readTexts(RELATION, at(RELATION), metric);
  const coverage = readNumbers(COVERAGE_ARGUMENT, at(COVERAGE_ARGUMENT), metric, metric);
  const band = readBands(at(BAND_ARGUMENT));
  const call = { inputs, units, hot, reference, isAir, uncertainties, relation, coverage, band };
  return misfit(call) ?? call;
}

function misfit({ hot, reference, uncertainties, relation, coverage, band }: RiseCall): CellError | undefined {
  const told = (name: string, rows: number): CellError =>
    invalid(
      `hot has ${hot.rows} ${hot.rows === 1 ? "row" : "rows"}, ${name} ${rows}: give one row for all, or one for each row of hot.`,
    );
  if (reference.rows !== 1 && reference.rows !== hot.rows) return told("reference", reference.rows);
  const pair = hot.rows === 1 && uncertainties.rows === 2;
  if (!pair && uncertainties.rows !== 1 && uncertainties.rows !== hot.rows)
    return told("uncertainties", uncertainties.rows);
  for (const [name, column] of [
    ["relation", relation],
    ["coverage", coverage],
    ["band", band],
  ] as const) {
    if (column.values.length === 1 || (column.columns === 1 && column.rows === hot.rows)) continue;
    return invalid(
      `${name} is ${column.rows} × ${column.columns} cells: give one value, or one column with a row for each row of hot.`,
    );
  }
  return undefined;
}
