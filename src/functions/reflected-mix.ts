import { GreybodyError } from "../core/errors.js";
import { TEMPERATURE } from "../core/limits.js";
import { reflectedMix, SHARE } from "../core/measured/reflected.js";
import type { Band } from "../core/planck/band.js";
import { BAND_ARGUMENT, readBands } from "./bands.js";
import type { ArgumentSpec, Cell, CellError, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany, UNITS_ARGUMENT } from "./lift.js";
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
  help: "apparent temperatures of what is mirrored, such as sky and ground: a row a mix, or one column as one mix",
  range: TEMPERATURE,
  whole: true,
};
const SHARES: ArgumentSpec = {
  name: "shares",
  quantity: "fraction",
  help: "share of each in what is mirrored, in the shape of temps or one row for all mixes; 1 together",
  range: SHARE,
  whole: true,
};
const args: readonly ArgumentSpec[] = [TEMPS, SHARES, BAND_ARGUMENT, UNITS_ARGUMENT];

/** One of the two columns of parts, with the cells as they were typed. */
interface Parts extends NumberColumn {
  readonly cells: readonly Cell[];
}

function readParts(spec: ArgumentSpec, input: Input, units: Units): Parts {
  // A part may be absent where its sister is: what then lacks is told by the core.
  const column = readNumbers(
    { ...spec, optional: true },
    input,
    unitOf(spec.quantity, units),
    unitOf(spec.quantity, "C"),
  );
  return { ...column, cells: gridOf(input).flat() };
}

const size = ({ rows, columns }: { rows: number; columns: number }): string => `${rows} × ${columns}`;
const problem = (message: string): Grid => [[{ error: "#VALUE!", message }]];

function evaluateIn(inputs: readonly Input[], units: Units): Grid {
  const temps = readParts(TEMPS, inputs[0], units);
  const shares = readParts(SHARES, inputs[1], units);
  const oneMix = temps.columns === 1;
  const sharedRow = !oneMix && shares.rows === 1 && shares.columns === temps.columns;
  if (size(temps) !== size(shares) && !sharedRow) {
    return problem(
      `temps is ${size(temps)}, shares is ${size(shares)} cells: give both the same shape, a share for each temperature.`,
    );
  }
  const mixes = oneMix ? 1 : temps.rows;
  const parts = oneMix ? temps.rows : temps.columns;
  const bands = readBands(inputs[2]);
  if (bands.values.length > 1 && !(bands.columns === 1 && bands.rows === mixes)) {
    const rows = mixes === 1 ? "" : `, or one column with a row for each of the ${mixes} mixes`;
    return problem(`band is ${size(bands)} cells: give one band${rows}.`);
  }
  return Array.from({ length: mixes }, (_, mix) => {
    const k = bands.values.length > 1 ? mix : 0;
    const band = bands.faults?.get(k) ?? bands.values[k];
    return [mixAt(temps, mix * parts, shares, sharedRow ? 0 : mix * parts, parts, band, units)];
  });
}

function mixAt(
  temps: Parts,
  tempsFrom: number,
  shares: Parts,
  sharesFrom: number,
  parts: number,
  band: Band | CellError | undefined,
  units: Units,
): Cell {
  const columns = [
    { spec: TEMPS, column: temps, from: tempsFrom },
    { spec: SHARES, column: shares, from: sharesFrom },
  ];
  for (const { column, from } of columns) {
    for (let k = from; k < from + parts; k++) {
      const fault = column.faults?.get(k);
      if (fault) return fault;
    }
  }
  if (band === undefined || "error" in band) return band ?? faultOfOurs("no band");
  const given = (column: Parts, from: number): (number | undefined)[] =>
    Array.from(column.values.subarray(from, from + parts), (value) => (Number.isNaN(value) ? undefined : value));
  try {
    const mixed = reflectedMix({ temps: given(temps, tempsFrom), shares: given(shares, sharesFrom) }, band);
    return fromSI(mixed, unitOf("temperature", units));
  } catch (error) {
    if (!(error instanceof GreybodyError)) return faultOfOurs(error);
    const about = columns.find(({ spec }) => spec.name === error.argument);
    // The first cell of this mix that holds the value refused: an equal one would be refused for the same reason.
    const refused = about?.column.values.subarray(about.from, about.from + parts).indexOf(Number(error.given)) ?? -1;
    const cell = about && refused >= 0 ? about.column.cells[about.from + refused] : undefined;
    return errorCell(error, about?.spec, cell, unitOf(about?.spec.quantity ?? "number", units), units);
  }
}

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(REFLECTED_MIX, inputs);
  if (excess) return [[excess]];
  const units = singleUnits(args, inputs);
  return isCellError(units) ? [[units]] : evaluateIn(inputs, units);
}

export const REFLECTED_MIX: FunctionSpec = {
  name: "REFLECTED_MIX",
  topic: "Measured inputs",
  summary:
    "Reflected apparent temperature of surroundings at several temperatures, such as sky and ground: mixed in radiance, not in degrees.",
  returns: "reflected apparent temperature, one a mix",
  args,
  shape: "set",
  example: { formula: "=GREY.REFLECTED_MIX({-50,15},{0.5,0.5})", shows: "-10.6" },
  sources: ["iso-18434-1-2008"],
  evaluate: guarded(evaluate),
};
