import { GreybodyError } from "../core/errors.js";
import { budget } from "../core/uncertainty/budget.js";
import type { Budget } from "../core/uncertainty/budget.js";
import { riseBetween } from "../core/uncertainty/rise.js";
import type { ThermometerAir } from "../core/uncertainty/rise.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { rowError } from "./input-rows.js";
import type { InputRows } from "./input-rows.js";
import { guarded, tooMany } from "./lift.js";
import { errorCell } from "./messages.js";
import { gridOf } from "./read.js";
import type { Column } from "./read.js";
import { HOT, readRiseCall, REFERENCE, RISE_ARGUMENTS, UNCERTAINTIES } from "./rise-call.js";
import type { RiseCall } from "./rise-call.js";
import { settingsFrom } from "./settings-arguments.js";
import { uncertaintiesFrom } from "./uncertainty-call.js";
import { fromSI, unitOf } from "./units.js";

const placeIn = (rows: number, row: number): number => (rows === 1 ? 0 : row);

/** What is wrong with a reading, with the argument that it stands in; an error that came in goes through as it is. */
function inArgument(fault: CellError, spec: ArgumentSpec, input: Input): CellError {
  if (gridOf(input).some((row) => row.includes(fault))) return fault;
  // A message begins with the argument it is about, or is a sentence of its own.
  const isNamed = spec.columns?.some(({ name }) => fault.message.startsWith(name)) === true;
  return { ...fault, message: `${spec.name}${isNamed ? "," : ":"} ${fault.message}` };
}

/** The single values of a row: the one of all, or its own. */
function single<Value>({ values, rows, faults }: Column<ArrayLike<Value>>, row: number): Value | CellError | undefined {
  return faults?.get(placeIn(rows, row)) ?? values[placeIn(values.length, row)];
}

/** The budget of one reading, or what stands against it. */
function budgetIn(call: RiseCall, spec: ArgumentSpec, rows: InputRows, row: number, uRow: number): Budget | CellError {
  const { inputs, uncertainties } = call;
  const place = placeIn(rows.rows, row);
  const input = inputs[RISE_ARGUMENTS.indexOf(spec)];
  const fault = rows.fault(place);
  if (fault) return inArgument(fault, spec, input);
  const uFault = uncertainties.fault(uRow);
  if (uFault) return uFault;
  const [coverage, band] = [single(call.coverage, row), single(call.band, row)];
  if (isCellError(coverage)) return coverage;
  if (band === undefined || isCellError(band)) return band ?? { error: "#VALUE!", message: "band: none is given." };
  const reading = {
    apparent: rows.value(place, "apparent"),
    settings: settingsFrom((name) => rows.value(place, name)),
    uncertainties: uncertaintiesFrom(uncertainties.row(uRow), [], []),
  };
  try {
    return budget(reading, coverage ?? NaN, band);
  } catch (error) {
    return thrown(error, call, row, spec, place, uRow);
  }
}

/** The air of a row, or what stands against it. */
function airIn({ reference, uncertainties }: RiseCall, row: number, isPair: boolean): ThermometerAir | CellError {
  const place = placeIn(reference.rows, row);
  const fault = reference.fault(place) ?? (isPair ? uncertainties.fault(1) : undefined);
  if (fault) return fault;
  // No thermometer is exact: 0 is an empty cell, as Excel hands it over, and stands for ±1 K like it.
  const standard = isPair ? uncertainties.value(1, "apparent_u") : NaN;
  return { temperature: reference.value(place, "reference"), ...(standard > 0 && { standard }) };
}

/** What a row shows for whatever was thrown: the cell meant, as it was typed. */
function thrown(
  error: unknown,
  { inputs, units }: RiseCall,
  row: number,
  reading: ArgumentSpec,
  place: number,
  uRow: number,
): CellError {
  const at = (spec: ArgumentSpec): Input => inputs[RISE_ARGUMENTS.indexOf(spec)];
  const name = error instanceof GreybodyError ? error.argument : undefined;
  const has = (spec: ArgumentSpec): boolean => spec.columns?.some((column) => column.name === name) === true;
  if (has(UNCERTAINTIES)) return rowError(error, UNCERTAINTIES, at(UNCERTAINTIES), uRow, units);
  if (has(reading)) return inArgument(rowError(error, reading, at(reading), place, units), reading, at(reading));
  const spec = RISE_ARGUMENTS.find((one) => one.name === name);
  if (!(error instanceof GreybodyError) || !spec) return rowError(error, reading, at(reading), place, units);
  const cells = spec.whole === true ? [] : gridOf(at(spec)).flat();
  const given = cells[placeIn(cells.length, row)] ?? undefined;
  return errorCell(error, spec, given === "" || given === 0 ? undefined : given, unitOf(spec.quantity, units), units);
}

function evaluateRow(call: RiseCall, row: number): Cell {
  const { hot, reference, uncertainties, isAir } = call;
  const isPair = hot.rows === 1 && uncertainties.rows === 2;
  const uRow = isPair ? 0 : placeIn(uncertainties.rows, row);
  const [relation, coverage] = [single(call.relation, row), single(call.coverage, row)];
  const one = budgetIn(call, HOT, hot, row, uRow);
  if (isCellError(one)) return one;
  const other = isAir ? airIn(call, row, isPair) : budgetIn(call, REFERENCE, reference, row, isPair ? 1 : uRow);
  if (isCellError(other)) return other;
  if (isCellError(relation)) return relation;
  try {
    const { expanded } = riseBetween(one, other, relation ?? "", Number(coverage));
    return fromSI(expanded, unitOf("difference", call.units));
  } catch (error) {
    return thrown(error, call, row, REFERENCE, placeIn(reference.rows, row), uRow);
  }
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(RISE_UNCERTAINTY, inputs);
  if (excess) return [[excess]];
  const call = readRiseCall(inputs);
  if (isCellError(call)) return [[call]];
  return Array.from({ length: call.hot.rows }, (_, row): Cell[] => [evaluateRow(call, row)]);
}

export const RISE_UNCERTAINTY: FunctionSpec = {
  name: "RISE_UNCERTAINTY",
  topic: "Uncertainty",
  summary:
    "Expanded uncertainty of a rise between two corrected temperatures, by how they belong together: what both share cancels.",
  returns: "expanded uncertainty of the rise, a row a pair",
  args: RISE_ARGUMENTS,
  shape: "set",
  example: {
    formula: '=GREY.RISE_UNCERTAINTY({68,0.95,25},{49,0.95,25},{1.155,0.0115,1.7},"same image, other surface")',
    shows: "1.4",
  },
  sources: ["jcgm-100-2008", "greybody-house"],
  evaluate: guarded(evaluate),
};
