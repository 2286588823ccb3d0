import { budget } from "../core/uncertainty/budget.js";
import { BAND_ARGUMENT } from "./bands.js";
import { BUDGET } from "./budget.js";
import { CAMERA_UNCERTAINTY } from "./camera-uncertainty.js";
import type { ArgumentSpec, Cell, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { MONTE_CARLO } from "./monte-carlo.js";
import { RISE_UNCERTAINTY } from "./rise-uncertainty.js";
import { BUDGET_ARGUMENTS } from "./uncertainty-arguments.js";
import { readUncertaintyCall } from "./uncertainty-call.js";
import { fromSI, unitOf } from "./units.js";

const args: readonly ArgumentSpec[] = [...BUDGET_ARGUMENTS, BAND_ARGUMENT, UNITS_ARGUMENT];

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(UNCERTAINTY, inputs);
  if (excess) return [[excess]];
  const call = readUncertaintyCall(args, inputs);
  if (isCellError(call)) return [[call]];
  const unit = unitOf("difference", call.units);
  return Array.from({ length: call.rows }, (_, place): Cell[] => {
    const row = call.row(place);
    if (isCellError(row)) return [row];
    try {
      return [fromSI(budget(row.reading, row.number("coverage"), row.band).expanded, unit)];
    } catch (error) {
      return [call.thrown(error, place)];
    }
  });
}

const UNCERTAINTY: FunctionSpec = {
  name: "UNCERTAINTY",
  topic: "Uncertainty",
  summary: "Expanded uncertainty of corrected temperatures, one a row, from the uncertainties of what they rest on.",
  returns: "expanded uncertainty, a row a reading",
  args,
  shape: "set",
  example: { formula: "=GREY.UNCERTAINTY({58,0.85,22,0.98,20},{0.5,0.02,1,0.005,1})", shows: "2.04" },
  sources: ["jcgm-100-2008"],
  evaluate: guarded(evaluate),
};

export const uncertaintyFunctions: readonly FunctionSpec[] = [
  UNCERTAINTY,
  BUDGET,
  MONTE_CARLO,
  RISE_UNCERTAINTY,
  CAMERA_UNCERTAINTY,
];
