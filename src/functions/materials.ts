import { emissivityIn, middleOf } from "../core/materials/emissivity.js";
import type { FoundEmissivity } from "../core/materials/emissivity.js";
import { MATERIALS as ALL } from "../data/emissivity.js";
import type { EmissivityColumn, EmissivityRange, Material } from "../data/emissivity.js";
import { BAND_ARGUMENT } from "./bands.js";
import type { Cell, FunctionSpec, Grid, Input } from "./contract.js";
import { isCellError } from "./contract.js";
import { defineCells, guarded, tooMany } from "./lift.js";
import { provenanceInWords } from "./provenance.js";
import { searchArgument, searchTable } from "./search-table.js";

const SHOWS = ["value", "low", "high", "source"] as const;
const sourceOf = (range: EmissivityRange): string => provenanceInWords(range, range.also);

function shown(found: FoundEmissivity, show: string): number | string {
  const { range, totalForLong, material } = found;
  switch (show) {
    case "low":
      return range.low;
    case "high":
      return range.high;
    case "source": {
      const stands = totalForLong ? "total emissivity, which stands for the long wave here: " : "";
      return [stands + sourceOf(range), ...(material.note === undefined ? [] : [material.note])].join("; ");
    }
    default:
      // The middle of two decimals has three: what floating point adds is no figure of a source.
      return Number(middleOf(found).toFixed(4));
  }
}

const EMISSIVITY = defineCells({
  name: "EMISSIVITY",
  topic: "Measured inputs",
  summary:
    "Emissivity of a material in the camera's band, as tables have it: the middle of its range. Bare metal has none: measure it.",
  returns: "emissivity, an estimate: show its source before you rely on it; or what show names",
  args: [
    { name: "material", quantity: "text", help: "material and state by its name in GREY.MATERIALS, in any case" },
    BAND_ARGUMENT,
    {
      name: "show",
      quantity: "text",
      help: "value (middle of the range), its low or high end, or source: where it is from and how far that can be trusted. Some ranges are from memory: only source and GREY.MATERIALS say which",
      optional: true,
      default: "value",
      choices: SHOWS,
    },
  ],
  result: "fraction",
  cell: (values) => shown(emissivityIn(values.text("material"), values.band()), values.text("show")),
  example: { formula: '=GREY.EMISSIVITY("copper, oxidised")', shows: "0.65" },
  sources: ["bramson-1968", "wolfe-zissis-1978"],
});

const COLUMNS: readonly (readonly [EmissivityColumn, string])[] = [
  ["total", "total"],
  ["long", "long wave"],
  ["short", "short wave"],
];
const HEADER = [
  "material",
  "kind",
  ...COLUMNS.flatMap(([, words]) => [`${words} low`, `${words} high`]),
  "value",
  "note",
  "source",
];

/** Sources by the columns they are for, those of one source together. */
function sourcesOf({ ranges }: Material): string {
  const columns = new Map<string, string[]>();
  for (const range of ranges) {
    const words = COLUMNS.find(([column]) => column === range.band)?.[1] ?? "";
    columns.set(sourceOf(range), [...(columns.get(sourceOf(range)) ?? []), words]);
  }
  return [...columns].map(([source, names]) => `${names.join(", ")}: ${source}`).join(". ");
}

function rowOf(one: Material): Cell[] {
  const ends = COLUMNS.flatMap(([column]): Cell[] => {
    const range = one.ranges.find(({ band }) => band === column);
    return range ? [range.low, range.high] : ["", ""];
  });
  const value = one.kind === "bare metal" || one.measure === true ? "measure it" : "middle of the range";
  return [one.material, one.kind, ...ends, value, one.note ?? "", sourcesOf(one)];
}

const SEARCH = searchArgument("a material, its kind or its note");

function evaluate(inputs: readonly Input[]): Grid {
  const excess = tooMany(MATERIALS, inputs);
  if (excess) return [[excess]];
  const rows = ALL.map((one) => ({
    name: one.material,
    found: [one.kind, one.note ?? ""].join(" "),
    cells: rowOf(one),
  }));
  const table = searchTable(SEARCH, inputs[0], HEADER, rows);
  return isCellError(table) ? [[table]] : table;
}

const MATERIALS: FunctionSpec = {
  name: "MATERIALS",
  topic: "Measured inputs",
  summary: "Emissivities of materials from low to high, all wavelengths, 8–14 µm and 2–5 µm, each with its source.",
  returns: "a table",
  args: [SEARCH],
  shape: "table",
  example: { formula: '=GREY.MATERIALS("copper black")', shows: "material, kind, total low, total high, …" },
  sources: ["bramson-1968", "wolfe-zissis-1978", "wolfe-1965"],
  evaluate: guarded(evaluate),
};

export const materialFunctions: readonly FunctionSpec[] = [EMISSIVITY, MATERIALS];
