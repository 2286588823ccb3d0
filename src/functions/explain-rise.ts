import { explainRise } from "../core/audit/explain-rise.js";
import { GreybodyError } from "../core/errors.js";
import { TEMPERATURE } from "../core/limits.js";
import { LOAD, RISE } from "../core/loading/load.js";
import type { ArgumentSpec, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { SHOW_ARGUMENT, shown, TOLERANCE_ARGUMENT } from "./explain-shown.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { SURROUNDING_AIR } from "./load-arguments.js";
import { errorCell } from "./messages.js";
import { readOneCase } from "./one-case.js";
import { faultOfOurs } from "./prepare.js";
import { gridOf, readNumbers, readSingle } from "./read.js";
import { RISE_SLIP_WORDS } from "./slip-words.js";
import { unitOf } from "./units.js";
import type { Units } from "./units.js";

const STATED: ArgumentSpec = {
  name: "stated",
  quantity: "difference",
  help: "rise as the report states it",
  range: RISE,
};
const TEMPS: ArgumentSpec = {
  name: "temps",
  quantity: "temperature",
  help: "corrected temperatures: hot and reference, or the three phases",
  range: TEMPERATURE,
  whole: true,
};
const LOADS: ArgumentSpec = {
  name: "loads",
  quantity: "current",
  help: "a load for each temperature, and after them the load that the rise is brought to where it is not the largest",
  range: LOAD,
  whole: true,
};
const args: readonly ArgumentSpec[] = [
  STATED,
  TEMPS,
  LOADS,
  SURROUNDING_AIR,
  TOLERANCE_ARGUMENT,
  SHOW_ARGUMENT,
  UNITS_ARGUMENT,
];

/** The numbers of a row or a column in SI; a CellError where one of them is none. */
function readLine(spec: ArgumentSpec, input: Input, units: Units): number[] | CellError {
  const grid = gridOf(input);
  if (grid.length > 1 && (grid[0]?.length ?? 0) > 1) {
    const size = `${grid.length} × ${grid[0]?.length ?? 0}`;
    return { error: "#VALUE!", message: `${spec.name}: ${size} cells cannot be. Allowed: one row or one column.` };
  }
  const { values, faults } = readNumbers(spec, [grid.flat()], unitOf(spec.quantity, units), unitOf(spec.quantity, "C"));
  const [fault] = faults?.values() ?? [];
  return fault ?? [...values];
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(EXPLAIN_RISE, inputs);
  if (excess) return [[excess]];
  const call = readOneCase(args, inputs);
  if (isCellError(call)) return [[call]];
  const { units } = call;
  const temps = readLine(TEMPS, inputs[args.indexOf(TEMPS)], units);
  if (isCellError(temps)) return [[temps]];
  const all = readLine(LOADS, inputs[args.indexOf(LOADS)], units);
  if (isCellError(all)) return [[all]];
  const referenceLoad = all.length === temps.length + 1 ? all.at(-1) : undefined;
  const loads = referenceLoad === undefined ? all : all.slice(0, -1);
  const lines: Readonly<Record<string, readonly number[]>> = { temps, loads: all };
  try {
    const given = { temps, loads, surroundingAir: call.number("surrounding_air"), degrees: units };
    const explanation = explainRise(
      call.number("stated"),
      referenceLoad === undefined ? given : { ...given, referenceLoad },
      call.number("tolerance"),
    );
    const unit = unitOf("difference", units);
    return shown(call.text("show"), explanation, RISE_SLIP_WORDS, unit, unit);
  } catch (error) {
    return [[thrown(error, inputs, lines, units)]];
  }
}

/** What was thrown, told by the cell that it is about. */
function thrown(
  error: unknown,
  inputs: readonly Input[],
  lines: Readonly<Record<string, readonly number[]>>,
  units: Units,
): CellError {
  if (!(error instanceof GreybodyError)) return faultOfOurs(error);
  const spec = args.find((argument) => argument.name === error.argument);
  if (spec === undefined) return errorCell(error, undefined, undefined, unitOf("number", units), units);
  const input = inputs[args.indexOf(spec)];
  const unit = unitOf(spec.quantity, units);
  if (spec.whole !== true) return errorCell(error, spec, readSingle(spec, input), unit, units);
  const place = lines[spec.name]?.findIndex((value) => value === error.given) ?? -1;
  return errorCell(error, spec, place < 0 ? undefined : (gridOf(input).flat()[place] ?? null), unit, units);
}

export const EXPLAIN_RISE: FunctionSpec = {
  name: "EXPLAIN_RISE",
  topic: "What-if and audit",
  summary:
    "Which usual slips would give a stated rise from corrected temperatures and loads. Not seen from these: readings subtracted before they were corrected, one of the two not corrected, another air, a rated load for the expected one, a wind factor.",
  returns:
    "a table slip | gives | difference (stated − gives) | matches | chance (of a value drawn evenly within 20 K of the right one to match this line or one above)",
  args,
  shape: "table",
  example: {
    formula: "=GREY.EXPLAIN_RISE(17.5,{38,55,37},{62,41,60},25)",
    shows: "not adjusted for load, 17.5, yes, …",
  },
  sources: ["greybody-house"],
  evaluate: guarded(evaluate),
};
