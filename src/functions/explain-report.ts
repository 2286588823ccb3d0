import { explain, rangeOfReading } from "../core/audit/explain.js";
import { SLACK, TOLERANCE } from "../core/audit/judge.js";
import { explainReport } from "../core/audit/report.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { caseOf, invalid, LEAST_COLUMNS, SETTINGS, STATED, thrown } from "./explain.js";
import { TOLERANCE_ARGUMENT } from "./explain-shown.js";
import { readInputRows } from "./input-rows.js";
import type { InputRows } from "./input-rows.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { notGivenCell } from "./messages.js";
import { readOneCase } from "./one-case.js";
import type { OneCase } from "./one-case.js";
import { gridOf, isBlank, isNoWord, readNumbers, readSingle } from "./read.js";
import { REPORT_WORDS } from "./slip-words.js";
import { inWords, digitsOfReport, tenthsOfReadings, toleranceLeftOut } from "./stated-digits.js";
import type { StatedDigits } from "./stated-digits.js";
import { fromSI, readable, unitOf } from "./units.js";
import type { Unit } from "./units.js";

const REPORT_STATED: ArgumentSpec = {
  ...STATED,
  help: "column of corrected temperatures as the report states them; empty ones are passed over",
  whole: true,
};
const REPORT_SETTINGS: ArgumentSpec = {
  ...SETTINGS,
  help: "a row for each, with CORRECTED's first ten arguments, at least apparent | emissivity | reflected",
};
const REPORT_TOLERANCE: ArgumentSpec = {
  ...TOLERANCE_ARGUMENT,
  help: "how far stated and given may lie apart: half the last digit stated; left out, 0.5 or 0.25 where all are whole or half degrees",
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

/** A line of its own under the table: whoever reads it sees that the numbers were not held to decimals they do not have. */
function toleranceTaken(digits: StatedDigits, taken: number, ofReading: StatedDigits | undefined, unit: Unit): string {
  const half = `${readable(fromSI(taken, unit), 3)} ${unit.label}`;
  const also = ofReading && `, and what half a digit of the readings (${inWords(ofReading)}) makes`;
  return `all stated to ${inWords(digits)}: tolerance ${half} taken, as none is given${also ?? ""}`;
}

/** The same of rows that the readings' own rounding would explain. */
function openRows(open: readonly boolean[], tenths: StatedDigits, tolerance: number, unit: Unit): string {
  const count = open.filter(Boolean).length;
  const rows = count === 1 ? "1 row is" : `${count} rows are`;
  const wide = Math.ceil(fromSI(tolerance, unit) * 100) / 100;
  return `${rows} as stated if the readings were rounded to ${inWords(tenths)}: give tolerance ${readable(wide, 3)}`;
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
  const temps = filled.map((row) => numbers.values[row] ?? NaN);
  const digits = digitsOfReport(temps, call.units);
  const leftOut = toleranceLeftOut(inputs[EXPLAIN_REPORT.args.indexOf(REPORT_TOLERANCE)]);
  const given = call.number("tolerance");
  const taken = leftOut && digits ? Math.max(given, digits.step / 2) : given;
  // Where the report has no decimals the readings that it prints have lost theirs too, unless one of them shows some.
  const readings = filled.map((row) => settings.value(row, "apparent"));
  const ofReading = taken > given ? digitsOfReport(readings, call.units) : undefined;
  // What was read to tenths tells a corrected temperature no better than that: such a row accuses nobody.
  const tenths = leftOut && ofReading === undefined ? tenthsOfReadings(readings, call.units) : undefined;
  const open: boolean[] = [];
  let widest = 0;
  const explained: ReturnType<typeof explain>[] = [];
  for (const row of filled) {
    const fault = numbers.faults?.get(row) ?? settings.fault(row);
    const cells = [...(stated[row] ?? []), ...(gridOf(inputs[1])[row] ?? [])];
    if (fault) return [[inRow(fault, row, stated.length, cells.includes(fault))]];
    try {
      const one = caseOf(settings, row, call);
      const tolerance =
        ofReading === undefined
          ? taken
          : Math.min(taken + rangeOfReading(one, ofReading.step / 2), TOLERANCE.max ?? Infinity);
      const explanation = explain(numbers.values[row] ?? NaN, one, tolerance);
      const ofTenths = tenths === undefined ? 0 : rangeOfReading(one, tenths.step / 2);
      const {
        reproduced,
        lines: [own],
      } = explanation;
      const isOpen = !reproduced && Math.abs(own?.difference ?? Infinity) <= tolerance + ofTenths + SLACK;
      if (isOpen) widest = Math.max(widest, tolerance + ofTenths);
      open.push(isOpen);
      explained.push(explanation);
    } catch (error) {
      return [[inRow(thrown(error, EXPLAIN_REPORT, inputs, row, call), row, stated.length, false)]];
    }
  }
  const lines = explainReport(explained, digits?.step, open);
  const difference = unitOf("difference", call.units);
  return [
    ["slip", "rows explained", "rows", "median difference", "by chance"],
    ...lines.map(({ key, explained: count, rows, median, byChance }): Cell[] => [
      REPORT_WORDS[key],
      count,
      rows,
      median === undefined ? "" : fromSI(median, difference),
      Number(readable(byChance, 2)),
    ]),
    ...(tenths && widest > 0 ? [[openRows(open, tenths, widest, difference), "", "", "", ""]] : []),
    ...(digits && taken > given ? [[toleranceTaken(digits, taken, ofReading, difference), "", "", "", ""]] : []),
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
    "Which slip would explain a whole report: as stated, and the slips that explain rows which the settings as stated do not, best first, with the rows that chance would explain. Not seen: two slips at once, rows interchanged.",
  returns:
    "a table slip | rows explained (of a slip: that as stated does not) | rows (of a slip: in which it would show) | median difference (stated − gives) | by chance (rows that any slip would explain if the numbers not as stated were drawn evenly within 20 K; as stated: of all rows, by itself). Where the tolerance was taken from the digits a last line says so",
  args: [REPORT_STATED, REPORT_SETTINGS, REPORT_TOLERANCE, BAND_ARGUMENT, UNITS_ARGUMENT],
  shape: "table",
  example: {
    formula:
      '=GREY.EXPLAIN_REPORT({57.95;45.45;39.39},{56.49,0.95,25,1,25,0.55,25;44.5,0.95,25,1,25,0.55,25;38.71,0.95,25,1,25,0.55,25},,"8-14")',
    shows: "slip, rows explained, rows, median difference, by chance, window left out, 3, 3, …",
  },
  sources: ["greybody-house"],
  evaluate: guarded(evaluateReport),
};
