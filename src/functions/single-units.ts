import type { ArgumentSpec, CellError, Input } from "./contract.js";
import { UNITS_ARGUMENT, unitsOf } from "./lift.js";
import { readTexts } from "./read.js";
import { unitOf } from "./units.js";
import type { Units } from "./units.js";

/** The one system of units of a call whose ranges are taken whole; a CellError where it names none, or both. */
export function singleUnits(args: readonly ArgumentSpec[], inputs: readonly Input[]): Units | CellError {
  const { faults } = readTexts(UNITS_ARGUMENT, inputs[args.indexOf(UNITS_ARGUMENT)], unitOf("text", "C"));
  const [fault] = faults?.values() ?? [];
  if (fault) return fault;
  const [units = "C", second] = unitsOf(args, inputs);
  return second ? { error: "#VALUE!", message: "units: one call takes one system of units, C or F." } : units;
}
