import { explain } from "../core/audit/explain.js";
import type { TemperatureCase } from "../core/audit/temperature-case.js";
import { GreybodyError } from "../core/errors.js";
import { TEMPERATURE } from "../core/limits.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { ArgumentSpec, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { SHOW_ARGUMENT, shown, TOLERANCE_ARGUMENT } from "./explain-shown.js";
import { readInputRows, rowError } from "./input-rows.js";
import type { InputRows } from "./input-rows.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { errorCell } from "./messages.js";
import { readOneCase } from "./one-case.js";
import type { OneCase } from "./one-case.js";
import { faultOfOurs } from "./prepare.js";
import { gridOf } from "./read.js";
import { READING_ARGUMENTS, settingsFrom } from "./settings-arguments.js";
import { TEMPERATURE_SLIP_WORDS } from "./slip-words.js";
import { fewerDigitsOf } from "./stated-digits.js";
import { unitOf } from "./units.js";

/** apparent, emissivity, reflected: the others have defaults. */
export const LEAST_COLUMNS = 3;

export const STATED: ArgumentSpec = {
  name: "stated",
  quantity: "temperature",
  help: "corrected temperature as the report states it",
  range: TEMPERATURE,
};
export const SETTINGS: ArgumentSpec = {
  name: "settings",
  quantity: "table",
  help: "one row with CORRECTED's first ten arguments, at least apparent | emissivity | reflected",
  whole: true,
  columns: READING_ARGUMENTS,
};
export const invalid = (message: string): CellError => ({ error: "#VALUE!", message });

export function caseOf(settings: InputRows, row: number, { band, units }: OneCase): TemperatureCase {
  return {
    apparent: settings.value(row, "apparent"),
    settings: settingsFrom((name) => settings.value(row, name)),
    band,
    degrees: units,
  };
}

/** What was thrown, told by the cell that it is about: of the settings, or an argument of the call. */
export function thrown(
  error: unknown,
  spec: FunctionSpec,
  inputs: readonly Input[],
  row: number,
  { units }: OneCase,
): CellError {
  if (!(error instanceof GreybodyError)) return faultOfOurs(error);
  const place = spec.args.findIndex((argument) => argument.name === error.argument);
  const own = spec.args[place];
  if (own === undefined) {
    const settings = spec.args.findIndex((argument) => argument.columns !== undefined);
    return rowError(error, SETTINGS, inputs[settings], row, units);
  }
  const given = gridOf(inputs[place])[own.whole === true ? row : 0]?.[0] ?? null;
  return errorCell(error, own, given, unitOf(own.quantity, units), units);
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(EXPLAIN, inputs);
  if (excess) return [[excess]];
  const call = readOneCase(EXPLAIN.args, inputs);
  if (isCellError(call)) return [[call]];
  const settings = readInputRows(SETTINGS, inputs[1], call.units, LEAST_COLUMNS);
  if (isCellError(settings)) return [[settings]];
  if (settings.rows !== 1) {
    return [[invalid(`settings: ${settings.rows} rows cannot be. Allowed: one row; EXPLAIN_REPORT takes many.`)]];
  }
  const fault = settings.fault(0);
  if (fault) return [[fault]];
  try {
    const stated = call.number("stated");
    return shown(call.text("show"), explain(stated, caseOf(settings, 0, call), call.number("tolerance")), {
      words: TEMPERATURE_SLIP_WORDS,
      unit: unitOf("temperature", call.units),
      difference: unitOf("difference", call.units),
      ...fewerDigitsOf(stated, "temperature", call, inputs[EXPLAIN.args.indexOf(TOLERANCE_ARGUMENT)]),
    });
  } catch (error) {
    return [[thrown(error, EXPLAIN, inputs, 0, call)]];
  }
}

export const EXPLAIN: FunctionSpec = {
  name: "EXPLAIN",
  topic: "What-if and audit",
  summary:
    "Which usual slips would give a stated temperature from its reading and settings, and how often chance would. Not seen: two slips at once, rows interchanged, slips within the air's transmission, such as feet for metres.",
  returns:
    "a table slip | gives | difference (stated − gives) | matches | chance (of a value drawn evenly within 20 K of the right one to match this line or one above)",
  args: [STATED, SETTINGS, TOLERANCE_ARGUMENT, BAND_ARGUMENT, SHOW_ARGUMENT, UNITS_ARGUMENT],
  shape: "table",
  example: {
    formula: '=GREY.EXPLAIN(57.95,{56.49,0.95,25,1,25,0.55,25},,"8-14")',
    shows: "as stated, 80.0, window left out, 58.0, yes, …",
  },
  sources: ["greybody-house"],
  evaluate: guarded(evaluate),
};
