import { agreement } from "../core/uncertainty/agreement.js";
import { budget } from "../core/uncertainty/budget.js";
import { BAND_ARGUMENT } from "./bands.js";
import { budgetTable } from "./budget-table.js";
import type { ArgumentSpec, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import { BUDGET_ARGUMENTS } from "./uncertainty-arguments.js";
import { readUncertaintyCall } from "./uncertainty-call.js";

const args: readonly ArgumentSpec[] = [...BUDGET_ARGUMENTS, BAND_ARGUMENT, UNITS_ARGUMENT];

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(BUDGET, inputs);
  if (excess) return [[excess]];
  const call = readUncertaintyCall(args, inputs);
  if (isCellError(call)) return [[call]];
  if (call.rows > 1) {
    const message = `inputs: ${call.rows} rows cannot be. Allowed: one row, the budget of one reading.`;
    return [[{ error: "#VALUE!", message }]];
  }
  const row = call.row(0);
  if (isCellError(row)) return [[row]];
  const { reading, band } = row;
  const coverage = row.number("coverage");
  try {
    const found = budget(reading, coverage, band);
    return budgetTable(found, agreement(found, reading, coverage, band), reading, coverage, call.units);
  } catch (error) {
    return [[call.thrown(error, 0)]];
  }
}

export const BUDGET: FunctionSpec = {
  name: "BUDGET",
  topic: "Uncertainty",
  summary:
    "Uncertainty budget of one corrected temperature: what each input adds, what was taken as exact, what comes out.",
  returns: "a table: the inputs, then combined and expanded uncertainty, corrected temperature, and a check by drawing",
  args,
  shape: "table",
  example: {
    formula: "=GREY.BUDGET({58,0.85,22,0.98,20},{0.5,0.02,1,0.005,1})",
    shows: "expanded uncertainty, 2.04, K",
  },
  sources: ["jcgm-100-2008", "jcgm-101-2008"],
  evaluate: guarded(evaluate),
};
