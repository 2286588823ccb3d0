import { GreybodyError } from "../core/errors.js";
import { TEMPERATURE } from "../core/limits.js";
import { LOAD, REFERENCE_LOAD } from "../core/loading/load.js";
import { phaseRise } from "../core/loading/phase-rise.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { EXPONENT_ARGUMENT, MINIMUM_LOAD_ARGUMENT, SURROUNDING_AIR } from "./load-arguments.js";
import { errorCell } from "./messages.js";
import { faultOfOurs } from "./prepare.js";
import { gridOf, readNumbers } from "./read.js";
import type { NumberColumn } from "./read.js";
import { singleUnits } from "./single-units.js";
import { fromSI, unitOf } from "./units.js";
import type { Units } from "./units.js";

const TEMPS: ArgumentSpec = {
  name: "temps",
  quantity: "temperature",
  help: "corrected temperatures of the phases: a row a set, or one column as one set",
  range: TEMPERATURE,
  whole: true,
};
const LOADS: ArgumentSpec = {
  name: "loads",
  quantity: "current",
  help: "loads of the phases, in the shape of temps; 0 is a phase without current",
  range: LOAD,
  whole: true,
};
const COMMON_LOAD: ArgumentSpec = {
  name: "common_load",
  quantity: "current",
  help: "load the rises are brought to; the largest of each set where left out",
  optional: true,
  range: REFERENCE_LOAD,
  zeroIsBlank: true,
};
const SET_ARGUMENTS: readonly ArgumentSpec[] = [SURROUNDING_AIR, COMMON_LOAD, EXPONENT_ARGUMENT, MINIMUM_LOAD_ARGUMENT];
const args: readonly ArgumentSpec[] = [TEMPS, LOADS, ...SET_ARGUMENTS, UNITS_ARGUMENT];

/** Cells of a phase that may be absent: the phase then has no answer, its sisters do. */
const absentable = (spec: ArgumentSpec): ArgumentSpec => ({ ...spec, optional: true });

const size = ({ rows, columns }: { rows: number; columns: number }): string => `${rows} × ${columns}`;

function misfit(temps: NumberColumn, loads: NumberColumn): CellError {
  return {
    error: "#VALUE!",
    message: `temps is ${size(temps)}, loads is ${size(loads)} cells: give both the same shape, a load for each temperature.`,
  };
}

/** What the arguments that hold for a whole set are in one set, or the fault that spoils it. */
function setValues(columns: readonly NumberColumn[], set: number): { values: number[] } | { fault: CellError } {
  const values: number[] = [];
  for (const column of columns) {
    const k = column.values.length === 1 ? 0 : set;
    const fault = column.faults?.get(k);
    if (fault) return { fault };
    values.push(column.values[k] ?? NaN);
  }
  return { values };
}

function evaluateIn(inputs: readonly Input[], units: Units): Grid {
  const read = (spec: ArgumentSpec): NumberColumn =>
    readNumbers(
      spec,
      inputs[args.findIndex((one) => one.name === spec.name)],
      unitOf(spec.quantity, units),
      unitOf(spec.quantity, "C"),
    );
  const temps = read(absentable(TEMPS));
  const loads = read(absentable(LOADS));
  if (size(temps) !== size(loads)) return [[misfit(temps, loads)]];
  const oneSet = temps.columns === 1;
  const sets = oneSet ? 1 : temps.rows;
  const phases = oneSet ? temps.rows : temps.columns;
  const columns = SET_ARGUMENTS.map(read);
  for (const [i, column] of columns.entries()) {
    if (column.values.length === 1 || (column.values.length === sets && column.columns === 1)) continue;
    const rows = sets === 1 ? "" : `, or one column with a row for each of the ${sets} sets`;
    const message = `${SET_ARGUMENTS[i]?.name ?? ""} is ${size(column)} cells: give one value${rows}.`;
    return [[{ error: "#VALUE!", message }]];
  }
  const answers = Array.from({ length: sets }, (_, set) =>
    evaluateSet(inputs, temps, loads, columns, set, phases, units),
  );
  return oneSet ? (answers[0] ?? []).map((cell) => [cell]) : answers;
}

function evaluateSet(
  inputs: readonly Input[],
  temps: NumberColumn,
  loads: NumberColumn,
  columns: readonly NumberColumn[],
  set: number,
  phases: number,
  units: Units,
): Cell[] {
  const from = set * phases;
  const faultAt = (k: number): CellError | undefined => temps.faults?.get(k) ?? loads.faults?.get(k);
  const every = (cell: Cell): Cell[] => Array.from({ length: phases }, (_, i) => faultAt(from + i) ?? cell);
  const held = setValues(columns, set);
  if ("fault" in held) return every(held.fault);
  const [surroundingAir = NaN, commonLoad = NaN, exponent = NaN, minimumLoad = NaN] = held.values;
  const show = (error: GreybodyError, k?: number): CellError => {
    const spec = args.find((one) => one.name === error.argument);
    const grid = gridOf(inputs[spec ? args.indexOf(spec) : 0]);
    const width = grid[0]?.length ?? 1;
    const cell = spec?.whole === true ? k : grid.length === 1 ? 0 : set * width;
    const given = spec && cell !== undefined ? (grid[Math.floor(cell / width)]?.[cell % width] ?? null) : undefined;
    return errorCell(error, spec, given, unitOf(spec?.quantity ?? "number", units), units);
  };
  const phase = (values: Float64Array): (number | undefined)[] =>
    Array.from(values.subarray(from, from + phases), (value) => (Number.isNaN(value) ? undefined : value));
  // A load that cannot be read leaves the largest of its set unknown, and with it every phase.
  const badLoad = Array.from({ length: phases }, (_, i) => loads.faults?.get(from + i)).find(
    (fault) => fault !== undefined,
  );
  if (badLoad && Number.isNaN(commonLoad)) return every(badLoad);
  try {
    const rises = phaseRise({
      temps: phase(temps.values),
      loads: phase(loads.values),
      surroundingAir,
      exponent,
      minimumLoad,
      ...(Number.isNaN(commonLoad) ? {} : { commonLoad }),
    });
    const unit = unitOf("difference", units);
    return rises.map(
      (rise, i) => faultAt(from + i) ?? (typeof rise === "number" ? fromSI(rise, unit) : show(rise, from + i)),
    );
  } catch (error) {
    return every(error instanceof GreybodyError ? show(error) : faultOfOurs(error));
  }
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(PHASE_RISE, inputs);
  if (excess) return [[excess]];
  const units = singleUnits(args, inputs);
  return isCellError(units) ? [[units]] : evaluateIn(inputs, units);
}

export const PHASE_RISE: FunctionSpec = {
  name: "PHASE_RISE",
  topic: "Load",
  summary:
    "Rise of each phase over the same air, brought to one load: what may be compared where phases carry unequal currents.",
  returns: "rises, in the shape of temps",
  args,
  shape: "set",
  example: { formula: "=GREY.PHASE_RISE({38,55,37},{62,41,60},25,62,1.6)", shows: "13.0, 58.1, 12.6" },
  sources: ["ieee-c37-010"],
  evaluate: guarded(evaluate),
};
