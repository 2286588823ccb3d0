/** A box against another box, or against the air: difference, its uncertainty and its grade. */
import type { FreeCell } from "../contract.js";
import { at, headers } from "../report/free.js";
import { uncertaintyInWords } from "../route/grade.js";
import { given } from "../route/formula.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { call, RELATION, SETTINGS } from "./form.js";
import { BOX_RESULTS, BOXES } from "./statistics.js";

export const DIFFERENCES = 6;
const TAKEN = ["maximum", "mean"] as const;
const AIR = "air";

export interface Difference {
  readonly box: string;
  readonly taken: (typeof TAKEN)[number];
  /** A box's name, or "air". */
  readonly reference: string;
  readonly referenceTaken?: (typeof TAKEN)[number];
}

export function differenceCells(top: number, units: SheetUnits, differences: readonly Difference[]): FreeCell[] {
  const degrees = units.label("temperature");
  const kelvin = units.label("difference");
  return [
    at(top - 2, 0, "Differences", "subheading"),
    ...["box", "taken (empty: maximum)", "reference box, or air", "taken"].map((label, column) =>
      at(top - 1, column, label, "typedHeader"),
    ),
    ...headers(top - 1, [degrees, `reference, ${degrees}`, `difference, ${kelvin}`, `± U, ${kelvin}`], 4),
    at(top - 1, 8, "grade", "header", { across: 3 }),
    at(top - 1, 11, "± U 95 %, edge inside", "header", { across: 2 }),
    ...Array.from({ length: DIFFERENCES }, (_, i) => line(top + i, i + 1, units, differences[i])).flat(),
  ];
}

function line(row: number, number: number, units: SheetUnits, given: Difference | undefined): FreeCell[] {
  const name = (what: string): string => `grid_pair_${number}_${what}`;
  const [hot, reference, rise, u] = ["temp", "reference_temp", "difference", "u"].map(name);
  const numeric = { format: "0.0", align: "right" } as const;
  const over = `IF(${name("reference")}="${AIR}","ambient","similar")`;
  const grade = (show: string): string =>
    `GREY.GRADE(${rise},${over},grid_criteria,"direct","${show}",,${units.argument})`;
  return [
    at(row, 0, given?.box, "typed", { name: name("box") }),
    at(row, 1, given?.taken, "typed", { name: name("taken"), choices: TAKEN }),
    at(row, 2, given?.reference, "typed", { name: name("reference") }),
    at(row, 3, given?.referenceTaken, "typed", { name: name("reference_taken"), choices: TAKEN }),
    at(row, 4, `=${resultOf(name("box"), name("taken"))}`, "computed", { name: hot!, ...numeric }),
    at(
      row,
      5,
      `=IF(${name("reference")}="${AIR}",IF(grid_surrounding_air="","",grid_surrounding_air),${resultOf(name("reference"), name("reference_taken"))})`,
      "computed",
      { name: reference!, ...numeric },
    ),
    at(row, 6, `=IF(ISNUMBER(${hot})*ISNUMBER(${reference}),${hot}-${reference},"")`, "computed", {
      name: rise!,
      ...numeric,
    }),
    at(row, 7, uncertainty(hot!, reference!, rise!, name("reference"), units), "computed", { name: u!, ...numeric }),
    at(
      row,
      8,
      `=IF(ISNUMBER(${rise}),IFERROR(${grade("grade")}&" of 4: "&${grade("words")},"no grade: colder than its reference"),${refusal(name)})`,
      "computed",
      { across: 3, grade: true },
    ),
    at(
      row,
      11,
      uncertaintyInWords({ rise: rise!, u: u!, more: "0", call: grade }, `1-ISNUMBER(${u})`, units),
      "computed",
      { across: 2 },
    ),
  ];
}

/** The number of a box by its name, "" where there is none. */
function resultOf(box: string, taken: string): string {
  const place = (what: (typeof BOX_RESULTS)[number]): number => BOX_RESULTS.indexOf(what) + 1;
  const taking = `IF(${taken}="mean",${place("mean")},${place("maximum")})`;
  const found = Array.from({ length: BOXES }, (_, i) => i + 1).reduceRight(
    (rest, i) => `IF(${box}=grid_box_${i}_name,INDEX(grid_box_${i},1,${taking}),${rest})`,
    '""',
  );
  return `IF(${box}="","",LET(found,${found},IF(ISNUMBER(found),found,"")))`;
}

function refusal(name: (what: string) => string): string {
  return (
    `IF(${name("box")}="","",IF(${name("temp")}="","no corrected box of that name",` +
    `IF(${name("reference")}="","needs a reference: a box, or ${AIR}",IF(${name("reference")}="${AIR}","needs the surrounding air in Settings","no corrected reference box of that name"))))`
  );
}

function uncertainty(hot: string, reference: string, rise: string, over: string, units: SheetUnits): string {
  const row = (temp: string): string => `HSTACK(${[call("APPARENT", temp, units), ...SETTINGS].join(",")})`;
  const camera = `GREY.CAMERA_UNCERTAINTY(${call("APPARENT", hot, units)},${given("grid_accuracy")},${given("grid_accuracy_percent")},${units.argument})`;
  const u = `HSTACK(${camera},grid_emissivity_half/SQRT(3),grid_reflected_half/SQRT(3))`;
  const of = (second: string, relation: string): string =>
    `GREY.RISE_UNCERTAINTY(${row(hot)},${second},${u},${relation},,grid_band,${units.argument})`;
  return `=IF(ISNUMBER(${rise}),IFERROR(IF(${over}="${AIR}",${of(reference, '"air by thermometer"')},${of(row(reference), RELATION)}),""),"")`;
}
