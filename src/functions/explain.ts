import { explain } from "../core/audit/explain.js";
import { explainReport } from "../core/audit/report.js";
import { GreybodyError } from "../core/errors.js";
import { TEMPERATURE } from "../core/limits.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { SHOW_ARGUMENT, shown, TOLERANCE_ARGUMENT } from "./explain-shown.js";
import { readInputRows, rowError } from "./input-rows.js";
import type { InputRows } from "./input-rows.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { errorCell, notGivenCell } from "./messages.js";
import { readOneCase } from "./one-case.js";
import type { OneCase } from "./one-case.js";
import { faultOfOurs } from "./prepare.js";
import { gridOf, isBlank, isNoWord, readNumbers, readSingle } from "./read.js";
import { READING_ARGUMENTS, settingsFrom } from "./settings-arguments.js";
import { TEMPERATURE_SLIP_WORDS } from "./slip-words.js";
import { fromSI, unitOf } from "./units.js";

/** apparent, emissivity, reflected: the others have defaults. */
const LEAST_COLUMNS = 3;

const STATED: ArgumentSpec = {
  name: "stated",
  quantity: "temperature",
  help: "corrected temperature as the report states it",
  range: TEMPERATURE,
};
const SETTINGS: ArgumentSpec = {
  name: "settings",
  quantity: "table",
  help: "one row with CORRECTED's first ten arguments, at least apparent | emissivity | reflected",
  whole: true,
  columns: READING_ARGUMENTS,
};
const REPORT_STATED: ArgumentSpec = {
  ...STATED,
  help: "column of corrected temperatures as the report states them; empty ones are passed over",
  whole: true,
};
const REPORT_SETTINGS: ArgumentSpec = {
  ...SETTINGS,
  help: "a row for each, with CORRECTED's first ten arguments, at least apparent | emissivity | reflected",
};

const invalid = (message: string): CellError => ({ error: "#VALUE!", message });

function explainRow(stated: number, settings: InputRows, row: number, call: OneCase): ReturnType<typeof explain> {
  const given = {
    apparent: settings.value(row, "apparent"),
    settings: settingsFrom((name) => settings.value(row, name)),
    band: call.band,
    degrees: call.units,
  };
  return explain(stated, given, call.number("tolerance"));
}

/** What was thrown, told by the cell that it is about: of the settings, or an argument of the call. */
function thrown(
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
    const explanation = explainRow(call.number("stated"), settings, 0, call);
    const difference = unitOf("difference", call.units);
    return shown(call.text("show"), explanation, TEMPERATURE_SLIP_WORDS, unitOf("temperature", call.units), difference);
  } catch (error) {
    return [[thrown(error, EXPLAIN, inputs, 0, call)]];
  }
}

export const EXPLAIN: FunctionSpec = {
  name: "EXPLAIN",
  topic: "What-if and audit",
  summary:
    "Which usual slips would give a stated temperature from its reading and settings, and how often chance would look the same. Not seen from these: slips within the air's transmission, such as feet for metres.",
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

/** The rows that have something in them, by their place in the range. */
function filledRows(stated: Grid, settings: Grid): number[] {
  return [...stated.keys()].filter((row) => {
    const cell = stated[row]?.[0] ?? null;
    if (isBlank(cell)) return false;
    return !(isNoWord(cell) && (settings[row] ?? []).every(isNoWord));
  });
}

/** In a report of many rows a fault says where it is; an error that came in stays as it is. */
function inRow(fault: CellError, row: number, rows: number, came: boolean): CellError {
  return rows === 1 || came ? fault : { ...fault, message: `${fault.message} It is in row ${row + 1}.` };
}

function reportTable(
  inputs: readonly Input[],
  stated: Grid,
  settings: InputRows,
  filled: readonly number[],
  call: OneCase,
): Grid {
  const unit = unitOf("temperature", call.units);
  const numbers = readNumbers(REPORT_STATED, stated, unit, unitOf("temperature", "C"));
  const explained: ReturnType<typeof explain>[] = [];
  for (const row of filled) {
    const fault = numbers.faults?.get(row) ?? settings.fault(row);
    const cells = [...(stated[row] ?? []), ...(gridOf(inputs[1])[row] ?? [])];
    if (fault) return [[inRow(fault, row, stated.length, cells.includes(fault))]];
    try {
      explained.push(explainRow(numbers.values[row] ?? NaN, settings, row, call));
    } catch (error) {
      return [[inRow(thrown(error, EXPLAIN_REPORT, inputs, row, call), row, stated.length, false)]];
    }
  }
  const lines = explainReport(explained, call.number("tolerance"));
  const difference = unitOf("difference", call.units);
  return [
    ["slip", "rows explained", "rows", "median difference"],
    ...lines.map(({ key, explained: count, rows, median }): Cell[] => [
      TEMPERATURE_SLIP_WORDS[key],
      count,
      rows,
      median === undefined ? "" : fromSI(median, difference),
    ]),
  ];
}

function evaluateReport(inputs: readonly Input[]): Grid {
  const excess = tooMany(EXPLAIN_REPORT, inputs);
  if (excess) return [[excess]];
  const call = readOneCase(EXPLAIN_REPORT.args, inputs);
  if (isCellError(call)) return [[call]];
  const stated = gridOf(inputs[0]);
  const one = stated.flat().length === 1 ? readSingle(REPORT_STATED, inputs[0]) : null;
  if (isCellError(one)) return [[one]];
  if ((stated[0]?.length ?? 0) !== 1) {
    return [[invalid(`stated: ${stated[0]?.length ?? 0} columns cannot be. Allowed: one column.`)]];
  }
  const settings = readInputRows(REPORT_SETTINGS, inputs[1], call.units, LEAST_COLUMNS);
  if (isCellError(settings)) return [[settings]];
  if (settings.rows !== stated.length) {
    return [[invalid(`stated has ${stated.length} rows, settings ${settings.rows}: give a row of settings for each.`)]];
  }
  const filled = filledRows(stated, gridOf(inputs[1]));
  if (filled.length === 0) return [[notGivenCell(REPORT_STATED, false)]];
  return reportTable(inputs, stated, settings, filled, call);
}

export const EXPLAIN_REPORT: FunctionSpec = {
  name: "EXPLAIN_REPORT",
  topic: "What-if and audit",
  summary:
    "Which slip would explain a whole report: as stated, and the slips that explain rows which the settings as stated do not, best first.",
  returns:
    "a table slip | rows explained (of a slip: that as stated does not) | rows (of a slip: in which it would show) | median difference (stated − gives)",
  args: [REPORT_STATED, REPORT_SETTINGS, TOLERANCE_ARGUMENT, BAND_ARGUMENT, UNITS_ARGUMENT],
  shape: "table",
  example: {
    formula:
      '=GREY.EXPLAIN_REPORT({57.95;45.45;39.39},{56.49,0.95,25,1,25,0.55,25;44.5,0.95,25,1,25,0.55,25;38.71,0.95,25,1,25,0.55,25},,"8-14")',
    shows: "slip, rows explained, rows, median difference, window left out, 3, 3, …",
  },
  sources: ["greybody-house"],
  evaluate: guarded(evaluateReport),
};
