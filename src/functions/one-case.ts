/** Reads what a function is called with that answers for one case: one value an argument, ranges taken whole apart. */
import type { Band } from "../core/planck/band.js";
import { DEFAULT_BAND } from "../core/planck/band.js";
import { readBands } from "./bands.js";
import type { ArgumentSpec, CellError, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { UNITS_ARGUMENT } from "./lift.js";
import { readNumbers, readSingle, readTexts } from "./read.js";
import { singleUnits } from "./single-units.js";
import { unitOf } from "./units.js";
import type { Units } from "./units.js";

export interface OneCase {
  readonly units: Units;
  /** In SI; NaN is not given. */
  readonly number: (name: string) => number;
  readonly text: (name: string) => string;
  readonly band: Band;
}

const severalBands = (count: number): CellError => ({
  error: "#VALUE!",
  message: `band: one value is wanted, here are ${count} cells.`,
});

/** A CellError where some argument has no usable value; the ranges that are taken whole are passed over. */
export function readOneCase(args: readonly ArgumentSpec[], inputs: readonly Input[]): OneCase | CellError {
  const units = singleUnits(args, inputs);
  if (isCellError(units)) return units;
  const numbers = new Map<string, number>();
  const texts = new Map<string, string>();
  let band = DEFAULT_BAND;
  for (const [i, spec] of args.entries()) {
    if (spec.whole === true || spec === UNITS_ARGUMENT) continue;
    if (spec.quantity === "band") {
      const { values, faults } = readBands(inputs[i]);
      const [fault] = faults?.values() ?? [];
      if (fault) return fault;
      if (values.length > 1) return severalBands(values.length);
      band = values[0] ?? DEFAULT_BAND;
      continue;
    }
    const cell = readSingle(spec, inputs[i]);
    const unit = unitOf(spec.quantity, units);
    const column =
      spec.quantity === "text"
        ? readTexts(spec, cell, unit)
        : readNumbers(spec, cell, unit, unitOf(spec.quantity, "C"));
    const [fault] = column.faults?.values() ?? [];
    if (fault) return fault;
    const [value] = column.values;
    if (typeof value === "number") numbers.set(spec.name, value);
    else texts.set(spec.name, value ?? "");
  }
  return {
    units,
    number: (name) => numbers.get(name) ?? NaN,
    text: (name) => texts.get(name) ?? "",
    band,
  };
}
