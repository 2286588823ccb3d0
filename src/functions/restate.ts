import { completeSettings } from "../core/correction/settings.js";
import type { Settings } from "../core/correction/settings.js";
import { TEMPERATURE } from "../core/limits.js";
import { restate } from "../core/whatif/restate.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { readInputRows, rowError } from "./input-rows.js";
import type { InputRows } from "./input-rows.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { prepare, thrownCell } from "./prepare.js";
import type { Prepared } from "./prepare.js";
import { gridOf } from "./read.js";
import { SETTINGS_ARGUMENTS, settingsFrom } from "./settings-arguments.js";
import { singleUnits } from "./single-units.js";
import { fromSI, unitOf } from "./units.js";
import type { Units } from "./units.js";

/** Fewer columns are no settings: emissivity and reflected. */
const LEAST_COLUMNS = 2;

const settingsColumns = (name: string, help: string): ArgumentSpec => ({
  name,
  quantity: "table",
  help: `${help}: a column for each of CORRECTED's arguments two to ten, at least two; one row for all or one each`,
  whole: true,
  columns: SETTINGS_ARGUMENTS,
});

const REPORTED: ArgumentSpec = {
  name: "reported",
  quantity: "temperature",
  help: "temperature as it was reported, one or a column",
  range: TEMPERATURE,
};
const USED = settingsColumns("used", "the settings that the report was made with");
const RIGHT = settingsColumns("right", "the settings that are right");
const args: readonly ArgumentSpec[] = [REPORTED, USED, RIGHT, BAND_ARGUMENT, UNITS_ARGUMENT];

/** One range of settings, with the words that say which of the two a message is about. */
interface SettingsRange {
  readonly read: InputRows;
  readonly settings: (row: number) => Settings;
  readonly fault: (row: number) => CellError | undefined;
  readonly thrown: (error: unknown, row: number) => CellError;
}

function settingsRange(spec: ArgumentSpec, input: Input, units: Units): SettingsRange | CellError {
  const read = readInputRows(spec, input, units, LEAST_COLUMNS);
  if (isCellError(read)) return read;
  const place = (row: number): number => (read.rows === 1 ? 0 : row);
  const told = ({ error, message }: CellError): CellError => ({ error, message: `${spec.name}: ${message}` });
  return {
    read,
    settings: (row) => settingsFrom((name) => read.value(place(row), name)),
    fault: (row) => {
      const fault = read.fault(place(row));
      // What came in as an error goes out as it is.
      const incoming = fault !== undefined && (gridOf(input)[place(row)]?.includes(fault) ?? false);
      return fault && !incoming ? told(fault) : fault;
    },
    thrown: (error, row) => told(rowError(error, spec, input, place(row), units)),
  };
}

function misfit(counts: readonly (readonly [name: string, rows: number])[], rows: number): CellError | undefined {
  const odd = counts.find(([, own]) => own !== 1 && own !== rows);
  const most = counts.find(([, own]) => own === rows);
  if (!odd || !most) return undefined;
  const message = `${most[0]} has ${rows} rows, ${odd[0]} ${odd[1]}: give one row for all, or one each.`;
  return { error: "#VALUE!", message };
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(RESTATE, inputs);
  if (excess) return [[excess]];
  const units = singleUnits(args, inputs);
  if (isCellError(units)) return [[units]];
  const prepared = prepare(args, inputs, units);
  if (isCellError(prepared)) return [[prepared]];
  const { rows: given, columns } = prepared.shape;
  if (columns > 1) {
    const message = `GREY.RESTATE takes one reported temperature or one column of them; a range here has ${columns} columns.`;
    return [[{ error: "#VALUE!", message }]];
  }
  const used = settingsRange(USED, inputs[1], units);
  if (isCellError(used)) return [[used]];
  const right = settingsRange(RIGHT, inputs[2], units);
  if (isCellError(right)) return [[right]];
  const rows = Math.max(given, used.read.rows, right.read.rows);
  const counts = [["reported", given] as const, ["used", used.read.rows] as const, ["right", right.read.rows] as const];
  const fault = misfit(counts, rows);
  if (fault) return [[fault]];
  return Array.from({ length: rows }, (_, row) => [restated(prepared, used, right, row)]);
}

function restated(prepared: Prepared, used: SettingsRange, right: SettingsRange, row: number): Cell {
  const cell = prepared.count === 1 ? 0 : row;
  const fault = prepared.faults.get(cell) ?? used.fault(row) ?? right.fault(row);
  if (fault) return fault;
  const reported = prepared.numbers.get("reported") ?? NaN;
  const before = used.settings(row);
  try {
    completeSettings(before);
  } catch (error) {
    return used.thrown(error, row);
  }
  const after = right.settings(row);
  try {
    completeSettings(after);
  } catch (error) {
    return right.thrown(error, row);
  }
  try {
    const temp = typeof reported === "number" ? reported : (reported[cell] ?? NaN);
    return fromSI(restate(temp, before, after, prepared.bandAt(cell)), unitOf("temperature", prepared.units));
  } catch (error) {
    return thrownCell(error, args, prepared, cell);
  }
}

export const RESTATE: FunctionSpec = {
  name: "RESTATE",
  topic: "What-if and audit",
  summary: "A reported temperature under the right settings: back to the reading with those used, then forward again.",
  returns: "restated temperature, one a row",
  args,
  shape: "set",
  example: { formula: "=GREY.RESTATE(58,{0.95,20},{0.8,25,0.98,20})", shows: "63.8" },
  sources: ["iso-18434-1-2008"],
  evaluate: guarded(evaluate),
};
