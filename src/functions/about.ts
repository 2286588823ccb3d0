import packageFile from "../../package.json";
import {
  BOLTZMANN_CONSTANT,
  FIRST_RADIATION_CONSTANT,
  PLANCK_CONSTANT,
  SECOND_RADIATION_CONSTANT,
  SPEED_OF_LIGHT,
  STEFAN_BOLTZMANN_CONSTANT,
} from "../core/constants.js";
import { nearestByWord } from "../core/nearest.js";
import { METHODS } from "../data/methods.js";
import { REFERENCES } from "../data/references.js";
import { dataLines } from "./about-data.js";
import type { Line } from "./about-data.js";
import type { ArgumentSpec, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { guarded, tooMany } from "./lift.js";
import { isNoWord, readSingle } from "./read.js";

const HEADER = ["what", "value", "unit", "source"] as const;

/** Keys of the bibliography as they stand in a cell. */
export function sourcesInWords(keys: readonly string[]): string {
  return keys.map((key) => REFERENCES[key]?.short ?? key).join("; ");
}

const constant = (what: string, value: number, unit: string): Line => [
  what,
  value,
  unit,
  sourcesInWords(["codata-2018"]),
];

function lines(): Line[] {
  return [
    ["version", packageFile.version, "", "Greybody"],
    ...METHODS.map(({ method, how, sources }): Line => [method, how, "", sourcesInWords(sources)]),
    constant("Planck constant h", PLANCK_CONSTANT, "J·s"),
    constant("speed of light c", SPEED_OF_LIGHT, "m/s"),
    constant("Boltzmann constant k", BOLTZMANN_CONSTANT, "J/K"),
    constant("first radiation constant c1L", FIRST_RADIATION_CONSTANT, "W·m²/sr"),
    constant("second radiation constant c2", SECOND_RADIATION_CONSTANT, "m·K"),
    constant("Stefan-Boltzmann constant", STEFAN_BOLTZMANN_CONSTANT, "W/(m²·K⁴)"),
    ...dataLines(),
  ];
}

const WHAT: ArgumentSpec = {
  name: "what",
  quantity: "text",
  help: "one line of the table by its name, or a part of it; the whole table where left out",
  optional: true,
};

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(ABOUT, inputs);
  if (excess) return [[excess]];
  const given = readSingle(WHAT, inputs[0]);
  if (isCellError(given)) return [[given]];
  const all = lines();
  if (isNoWord(given)) return [HEADER, ...all];
  const wanted = String(given).trim().toLowerCase();
  const found = all.filter(([what]) => what.toLowerCase().includes(wanted));
  if (found.length > 0) return [HEADER, ...found];
  const names = all.map(([what]) => what);
  const near = nearestByWord(wanted, names);
  const advice = near.length > 0 ? `Near it: ${near.join("; ")}.` : "GREY.ABOUT() shows all that there is.";
  return [[{ error: "#N/A", message: `what: nothing here is called "${String(given)}". ${advice}` }]];
}

export const ABOUT: FunctionSpec = {
  name: "ABOUT",
  topic: "Help",
  summary: "Version, methods, constants, rules and figures, each with its source.",
  returns: "a table what | value | unit | source",
  args: [WHAT],
  shape: "table",
  example: {
    formula: '=GREY.ABOUT("second radiation")',
    shows: "what, value, unit, source, second radiation constant c2, 0.014387768775, …",
  },
  sources: ["codata-2018"],
  evaluate: guarded(evaluate),
};
