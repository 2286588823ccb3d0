/**
 * Expanded uncertainty (95 %) of a row's rises, worked out from the row's own settings: what the camera is good for by Job, the
 * emissivity by the row's surface, reflected, air and window. A figure typed in Job replaces it.
 */
import { KNOWN_LESS, KNOWN_WELL, REFLECTED_HALF } from "../../core/audit/verdict/consequence.js";
import type { Computed } from "./columns.js";
import type { Line } from "./form.js";
import { fromAssets, fromWindows, given, is } from "./formula.js";
import type { SheetUnits } from "./sheet-units.js";

const WORKING = { group: "Working", folded: true, width: 84 } as const;

/** How a similar component may be seen, and what RISE_UNCERTAINTY calls that; the first where nothing is said. */
const SIMILAR_IS = {
  "on another surface": "same image, other surface",
  "on the same surface": "same image, same surface",
  "in another image": "two images",
} as const;
export const SIMILAR_CHOICES = Object.keys(SIMILAR_IS) as readonly (keyof typeof SIMILAR_IS)[];

/** Half-width of a window's transmission where Windows has none: as of a measurement over some 20 K (trade.md 5.2.10). */
const WINDOW_HALF = 0.05;
/** Of its temperature: the painted face beside the frame is as close to it (trade.md 5.2.10). */
const WINDOW_TEMP_HALF = 5;
const HALF = "Half-width: what it may be off to either side.";

/** Lines of Job. */
export const UNCERTAINTY_LINES = [
  "Uncertainty of a rise, expanded (95 %)",
  {
    name: "similar_is",
    label: "Similar component is seen",
    start: "on another surface",
    choices: SIMILAR_CHOICES,
    note: "Where a row says nothing else: what both share cancels. Phases are rarely one surface, a lug and its insulation never.",
  },
  {
    name: "reflected_half",
    label: "What reflected may be off",
    measure: "difference",
    range: [0, 50],
    start: REFLECTED_HALF,
    format: "0.0",
    note: `${HALF} The camera's stands above, an emissivity's in Surfaces, a window's in Windows.`,
  },
  {
    name: "air_half",
    label: "What the air takes, ±",
    unit: "%",
    range: [0, 100],
    start: 20,
    format: "0",
    note: "Of what is reckoned: model, distance and humidity. 20 % is our own judgement.",
  },
  {
    name: "u_similar_typed",
    label: "Typed: over similar, ± U",
    measure: "difference",
    range: [0, 100],
    format: "0.00",
    note: "In place of what is worked out for each row. Usually empty.",
  },
  {
    name: "u_air_typed",
    label: "Typed: over air, ± U",
    measure: "difference",
    range: [0, 100],
    format: "0.00",
    note: "The same of a rise over air, and of what is taken from it.",
  },
] as const satisfies readonly Line[];

/** Typed columns of Surfaces and Windows. */
export const EMISSIVITY_HALF = {
  range: [0, 0.5],
  format: "0.00",
  note: `${HALF} Empty: ${KNOWN_WELL.half}, of an emissivity below ${KNOWN_WELL.from} ${KNOWN_LESS}.`,
} as const;
export const TRANSMISSION_HALF = {
  range: [0, 0.5],
  format: "0.00",
  note: `${HALF} Empty: ${WINDOW_HALF}.`,
} as const;

/** The reading as an apparent temperature, which is what a camera's accuracy is of. */
export function apparentOf(reading: string, units: SheetUnits): string {
  const set = (name: string): string => `IF([${name}]<>"",[${name}],${given(`job_${name}`)})`;
  return (
    `IF(job_readings_are="apparent",${reading},IF(job_readings_are="corrected in the camera",IFERROR(GREY.APPARENT(${reading},${set("set_emissivity")},${set("set_reflected")},` +
    `job_set_air_transmission,${given("job_set_air_temp")},job_set_window_transmission,${given("job_set_window_temp")},,,,job_band,${units.argument}),""),""))`
  );
}

/** A row of inputs a row, as CORRECTED takes them. */
function inputs(apparent: string): string {
  return (
    `HSTACK(${apparent},[emissivity_used],[reflected_used],[air_transmission],[path_air_used],[window_transmission],` +
    `${given("[window_temp]")},[window_reflectance],IF([outer_reflected]<>"",[outer_reflected],${given("job_reflected")}))`
  );
}

/** Their standard uncertainties; what is empty counts as exact. */
function uncertainties(apparent: string, units: SheetUnits): string {
  const ifRead = (value: string): string => `IF(${apparent}="","",${value})`;
  return `HSTACK(${[
    "[camera_u]",
    "[emissivity_u]",
    ifRead(`IF(ISNUMBER(job_reflected_half),job_reflected_half,${units.from("difference", REFLECTED_HALF)})/SQRT(3)`),
    `IF(ISNUMBER([air_transmission]),(1-[air_transmission])*IF(ISNUMBER(job_air_half),job_air_half,20)/100/SQRT(3),"")`,
    ifRead('""'),
    "[window_u]",
    `IF([window_u]="","",${units.from("difference", WINDOW_TEMP_HALF)}/SQRT(3))`,
  ].join(",")})`;
}

/** Standard uncertainties of what differs by row: camera, emissivity, window. */
export function inputUncertainties(hot: string, units: SheetUnits): Computed[] {
  return [
    {
      key: "camera_u",
      ...WORKING,
      measure: "difference",
      format: "0.00",
      note: "Standard uncertainty of the reading, by the accuracy in Job.",
      formula: `=IFERROR(GREY.CAMERA_UNCERTAINTY(${hot},${given("job_accuracy")},${given("job_accuracy_percent")},${units.argument}),"")`,
    },
    emissivityUncertainty(),
    {
      key: "window_u",
      ...WORKING,
      format: "0.000",
      note: "Standard uncertainty of the window's transmission.",
      formula: `=IF([window]="","",LET(half,${fromWindows("transmission_half")},IF(ISNUMBER(half),half,${WINDOW_HALF})/SQRT(3)))`,
    },
  ];
}

/** By the surface; of a row's own emissivity by its height. */
function emissivityUncertainty(): Computed {
  const usual = `IF(${is("[emissivity_used]", `>=${KNOWN_WELL.from}`)},${KNOWN_WELL.half},${KNOWN_LESS})`;
  const ofSurface = `XLOOKUP(${fromAssets("surface", '"none"')},SurfaceList[surface],${given("SurfaceList[emissivity_half]")},"")`;
  return {
    key: "emissivity_u",
    ...WORKING,
    format: "0.000",
    note: "Standard uncertainty: half-width over √3.",
    formula: `=IF(ISNUMBER([emissivity_used]),LET(half,IF([emissivity]<>"","",${ofSurface}),IF(ISNUMBER(half),half,${usual})/SQRT(3)),"")`,
  };
}

/** A typed figure of Job, else what is worked out, where `measured` is a rise; "" where neither can be. */
function unlessTyped(typed: string, rise: string, workedOut: string): string {
  return `=IF(${rise}="","",IF(ISNUMBER(${typed}),${typed},IFERROR(${workedOut},"")))`;
}

const difference = { measure: "difference", format: "0.00", align: "right" } as const;

/** Over similar, both read by the camera. */
export function riseUncertainty(hot: string, reference: string, units: SheetUnits): string {
  const choice = 'IF([similar_is]<>"",[similar_is],job_similar_is)';
  const [another, same, other] = Object.entries(SIMILAR_IS);
  const relation = `IF(${choice}="${same![0]}","${same![1]}",IF(${choice}="${other![0]}","${other![1]}","${another![1]}"))`;
  return `GREY.RISE_UNCERTAINTY(${inputs(hot)},${inputs(reference)},${uncertainties(hot, units)},${relation},,job_band,${units.argument})`;
}

export function similarUncertainty(workedOut: string): Computed {
  return {
    key: "rise_U_similar",
    ...WORKING,
    ...difference,
    note: "Expanded uncertainty (95 %) of the rise over similar.",
    formula: unlessTyped("job_u_similar_typed", "[similar]", workedOut),
  };
}

/** @param rise the column that is over air, in brackets */
export function airUncertainty(hot: string, air: string, rise: string, units: SheetUnits): Computed {
  return {
    key: "rise_U_air",
    ...WORKING,
    ...difference,
    note: "Expanded uncertainty (95 %) of the rise over air; its thermometer: ± 1 K.",
    formula: unlessTyped(
      "job_u_air_typed",
      rise,
      `GREY.RISE_UNCERTAINTY(${inputs(hot)},${air},${uncertainties(hot, units)},"air by thermometer",,job_band,${units.argument})`,
    ),
  };
}

/** Of the reading alone, where it is compared with one of another row: the two share nothing then. */
export function readingUncertainty(hot: string, units: SheetUnits): Computed {
  return {
    key: "reading_U",
    ...WORKING,
    ...difference,
    note: "Expanded uncertainty of the corrected temperature.",
    formula: `=IF(${hot}="","",IFERROR(GREY.UNCERTAINTY(${inputs(hot)},${uncertainties(hot, units)},,,,,job_band,${units.argument}),""))`,
  };
}
