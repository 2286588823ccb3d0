/** Arguments of the functions that give uncertainties; how they are read stands in uncertainty-call.ts. */
import { COVERAGE } from "../core/uncertainty/coverage.js";
import {
  argumentOf,
  DISTRIBUTIONS,
  FRACTION_UNCERTAINTY,
  FREEDOM,
  INPUT_NAMES,
  isTemperature,
  TEMPERATURE_UNCERTAINTY,
  uncertaintyOf,
} from "../core/uncertainty/inputs.js";
import type { InputName } from "../core/uncertainty/inputs.js";
import type { ArgumentSpec } from "./contract.js";
import { READING_ARGUMENTS } from "./settings-arguments.js";

/** Fewer columns are no reading: apparent, emissivity, reflected. */
export const LEAST_COLUMNS = 3;

/** Without its default, which the core puts in its place: so a budget can tell what was not given. */
function withoutDefault(spec: ArgumentSpec): ArgumentSpec {
  return Object.fromEntries(Object.entries(spec).filter(([key]) => key !== "default")) as unknown as ArgumentSpec;
}

export const INPUTS_ARGUMENT: ArgumentSpec = {
  name: "inputs",
  quantity: "table",
  help: "a row a reading, a column for each of CORRECTED's first ten arguments, at least three",
  whole: true,
  columns: READING_ARGUMENTS.map(withoutDefault),
};

/** The uncertainty of one input; in °F that of a temperature is a difference. */
function uncertaintyColumn(name: InputName): ArgumentSpec {
  const temperature = isTemperature(name);
  return {
    name: uncertaintyOf(name),
    quantity: temperature ? "difference" : "fraction",
    help: `uncertainty of ${argumentOf(name)}; exact where empty or 0`,
    optional: true,
    range: temperature ? TEMPERATURE_UNCERTAINTY : FRACTION_UNCERTAINTY,
  };
}

export const UNCERTAINTIES_ARGUMENT: ArgumentSpec = {
  name: "uncertainties",
  quantity: "table",
  help: "the columns of inputs, one row for all or one each: standard uncertainties (k = 1), or half-widths where the distribution is rectangular or triangular; empty or 0 is exact",
  whole: true,
  columns: INPUT_NAMES.map(uncertaintyColumn),
};

export const COVERAGE_ARGUMENT: ArgumentSpec = {
  name: "coverage",
  quantity: "fraction",
  help: "coverage probability of what comes out",
  optional: true,
  default: 0.95,
  range: COVERAGE,
  zeroIsBlank: true,
};

export const DISTRIBUTIONS_ARGUMENT: ArgumentSpec = {
  name: "distributions",
  quantity: "text",
  help: "distribution of each column of uncertainties, one for each or one for all",
  optional: true,
  default: "normal",
  choices: DISTRIBUTIONS,
  whole: true,
};

export const FREEDOM_ARGUMENT: ArgumentSpec = {
  name: "freedom",
  quantity: "number",
  help: "degrees of freedom of each column of uncertainties, one for each or one for all; infinite where left out, and of the result wherever inputs go together",
  optional: true,
  range: FREEDOM,
  zeroIsBlank: true,
  whole: true,
};

export const CORRELATIONS_ARGUMENT: ArgumentSpec = {
  name: "correlations",
  quantity: "table",
  help: "inputs that go together, a range name | name | r such as reflected | air_temp | 0.5",
  optional: true,
  whole: true,
};

/** What UNCERTAINTY and BUDGET take before band and units. */
export const BUDGET_ARGUMENTS: readonly ArgumentSpec[] = [
  INPUTS_ARGUMENT,
  UNCERTAINTIES_ARGUMENT,
  COVERAGE_ARGUMENT,
  DISTRIBUTIONS_ARGUMENT,
  FREEDOM_ARGUMENT,
  CORRELATIONS_ARGUMENT,
];
