import { AS_STATED } from "../core/audit/explain.js";
import { explainRise } from "../core/audit/explain-rise.js";
import type { RiseExplanation } from "../core/audit/explain-rise.js";
import { OTHER_READING } from "../core/audit/rise-slips.js";
import { GreybodyError } from "../core/errors.js";
import { TEMPERATURE } from "../core/limits.js";
import { LOAD, RISE } from "../core/loading/load.js";
import type { ArgumentSpec, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { SHOW_ARGUMENT, shown, TOLERANCE_ARGUMENT } from "./explain-shown.js";
import type { Telling } from "./explain-shown.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { SURROUNDING_AIR } from "./load-arguments.js";
import { errorCell } from "./messages.js";
import { readOneCase } from "./one-case.js";
import { faultOfOurs } from "./prepare.js";
import { gridOf, readNumbers, readSingle } from "./read.js";
import { RISE_SLIP_WORDS } from "./slip-words.js";
import { fewerDigitsOf } from "./stated-digits.js";
import { fromSI, readable, unitOf } from "./units.js";
import type { Unit, Units } from "./units.js";

type RiseKey = keyof typeof RISE_SLIP_WORDS;

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
    const digits = fewerDigitsOf(call.number("stated"), "difference", call, inputs[args.indexOf(TOLERANCE_ARGUMENT)]);
    return shown(call.text("show"), explanation, { ...told(explanation, unitOf("difference", units)), ...digits });
  } catch (error) {
    return [[thrown(error, inputs, lines, units)]];
  }
}

/** The words of a rise, with what this case has no answer or no single reference for. */
function told({ othersApart, notProjected }: RiseExplanation, unit: Unit): Omit<Telling<RiseKey>, "leftOut"> {
  const units = { unit, difference: unit };
  if (notProjected !== undefined) {
    const why = notProjected === 0 ? "a phase without current" : `${readable(notProjected * 100, 2)} % load`;
    const before = `${why}: not projected`;
    return { ...units, words: { ...RISE_SLIP_WORDS, [AS_STATED]: `as stated, ${before}` }, before };
  }
  if (othersApart === undefined) return { ...units, words: RISE_SLIP_WORDS };
  const mean = "hot − mean of the others";
  const lowest = "hot − lowest";
  const before = `no single reference, the others are ${readable(fromSI(othersApart, unit), 2)} ${unit.label} apart`;
  return {
    ...units,
    words: {
      ...RISE_SLIP_WORDS,
      [AS_STATED]: `as stated, one reading: ${mean}; ${before}`,
      [OTHER_READING]: `as stated, the other reading: ${lowest}`,
    },
    reproduced: { [AS_STATED]: `${mean}, no slip needed`, [OTHER_READING]: `${lowest}, no slip needed` },
    before,
  };
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
    "Which usual slips would give a stated rise. As stated: hot − mean of the others at one load, or hot − lowest where they differ. Not seen: two slips at once, subtracted before corrected, one alone corrected, another air, rated load, wind.",
  returns:
    "a table slip | gives | difference (stated − gives) | matches | chance (of a value drawn evenly within 20 K of the right one to match this line or one above). Where the others are more than 3 K and 15 % apart there is no single reference, and hot − lowest is no slip but the other reading; below 40 % of the load that rises are brought to nothing is projected, and slips that leave the load alone are still judged",
  args,
  shape: "table",
  example: {
    formula: "=GREY.EXPLAIN_RISE(17.5,{38,55,37},{62,41,60},25)",
    shows: "not adjusted for load, 17.5, yes, …",
  },
  sources: ["greybody-house"],
  evaluate: guarded(evaluate),
};
