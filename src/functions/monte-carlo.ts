import { SEED } from "../core/uncertainty/generator/xoshiro.js";
import { monteCarlo } from "../core/uncertainty/monte-carlo.js";
import { DEFAULT_DRAWS, DEFAULT_SEED, DRAWN_COVERAGE, DRAWS } from "../core/uncertainty/propagate.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
import {
  CORRELATIONS_ARGUMENT,
  COVERAGE_ARGUMENT,
  DISTRIBUTIONS_ARGUMENT,
  INPUTS_ARGUMENT,
  UNCERTAINTIES_ARGUMENT,
} from "./uncertainty-arguments.js";
import { readUncertaintyCall } from "./uncertainty-call.js";
import type { UncertaintyCall } from "./uncertainty-call.js";
import { fromSI, unitOf } from "./units.js";

/** Draws of one call, all its rows together: some seconds of work. */
const MOST_TOGETHER = DRAWS.max;
const RESULTS = ["temperature", "difference", "temperature", "temperature", "fraction"] as const;

const args: readonly ArgumentSpec[] = [
  INPUTS_ARGUMENT,
  UNCERTAINTIES_ARGUMENT,
  {
    name: "draws",
    quantity: "number",
    help: `draws for each row, a whole number; rows × draws ${MOST_TOGETHER.toLocaleString("en-US")} at most`,
    optional: true,
    default: DEFAULT_DRAWS,
    range: DRAWS,
    zeroIsBlank: true,
  },
  {
    name: "seed",
    quantity: "number",
    help: "whole number the draws begin with: the same gives the same result, for each row anew",
    optional: true,
    default: DEFAULT_SEED,
    range: SEED,
    zeroIsBlank: true,
  },
  { ...COVERAGE_ARGUMENT, range: DRAWN_COVERAGE },
  DISTRIBUTIONS_ARGUMENT,
  CORRELATIONS_ARGUMENT,
  BAND_ARGUMENT,
  UNITS_ARGUMENT,
];

const every = (cell: CellError): Cell[] => RESULTS.map(() => cell);

/** What stands against a call that would take too long. */
function tooManyDraws(call: UncertaintyCall): CellError | undefined {
  let together = 0;
  for (let place = 0; place < call.rows; place++) {
    const row = call.row(place);
    const draws = isCellError(row) ? NaN : row.number("draws");
    if (draws > 0) together += draws;
  }
  if (call.rows === 1 || together <= MOST_TOGETHER) return undefined;
  const fit = Math.floor(MOST_TOGETHER / call.rows);
  const told = `draws: ${call.rows} rows make ${together} draws together. Allowed: ${MOST_TOGETHER}.`;
  const way =
    fit >= DRAWS.min ? `${fit} draws a row fit.` : `Fewer rows in one call: ${MOST_TOGETHER / DRAWS.min} at most.`;
  return { error: "#VALUE!", message: `${told} ${way}` };
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(MONTE_CARLO, inputs);
  if (excess) return [[excess]];
  const call = readUncertaintyCall(args, inputs);
  if (isCellError(call)) return [[call]];
  const tooLong = tooManyDraws(call);
  if (tooLong) return [[tooLong]];
  return Array.from({ length: call.rows }, (_, place) => evaluateRow(call, place));
}

function evaluateRow(call: UncertaintyCall, place: number): Cell[] {
  const row = call.row(place);
  if (isCellError(row)) return every(row);
  try {
    const options = { draws: row.number("draws"), seed: row.number("seed"), coverage: row.number("coverage") };
    const { mean, standardDeviation, low, high, rejected } = monteCarlo(row.reading, row.band, options);
    return [mean, standardDeviation, low, high, rejected].map((si, i) =>
      fromSI(si, unitOf(RESULTS[i] ?? "number", call.units)),
    );
  } catch (error) {
    return every(call.thrown(error, place));
  }
}

export const MONTE_CARLO: FunctionSpec = {
  name: "MONTE_CARLO",
  topic: "Uncertainty",
  summary:
    "Corrected temperatures from draws of their inputs, a row a reading. Where first order fails, as at a low emissivity, report the interval: mean and standard deviation hang on the tail there.",
  returns:
    "a row a reading: mean, standard deviation, low and high end of the interval with as many draws below as above, share of draws rejected",
  args,
  shape: "set",
  example: {
    formula: "=GREY.MONTE_CARLO({58,0.85,22,0.98,20},{0.5,0.02,1,0.005,1})",
    shows: "64.2, 1.0, 62.2, 66.2, 0",
  },
  sources: ["jcgm-101-2008", "blackman-vigna-2018"],
  evaluate: guarded(evaluate),
};
