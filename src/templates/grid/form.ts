/** The settings that the whole block is corrected with, and what its boxes are judged by. */
import type { FormSheet } from "../contract.js";
import { formSheet, type Line, type ValuesOf } from "../route/form.js";
import { CRITERIA_CHOICES } from "../route/job.js";
import {
  AIR,
  DISTANCE,
  EMISSIVITY,
  HUMIDITY,
  READING,
  REFLECTED,
  WINDOW,
  WINDOW_REFLECTANCE,
  WINDOW_TRANSMISSION,
} from "../route/ranges.js";
import { clause, joined } from "../route/formula.js";
import type { SheetUnits } from "../route/sheet-units.js";

const degrees = { measure: "temperature", format: "0.0" } as const;

const LINES = [
  "Image",
  { name: "image", label: "Image number" },
  { name: "subject", label: "What it shows" },
  { name: "date", label: "Taken on", format: "yyyy-mm-dd" },
  "Settings, one for all readings",
  {
    name: "needs",
    label: "Still needed",
    note: "Before that nothing is corrected. Readings are apparent: the camera at emissivity 1.",
  },
  { name: "emissivity", label: "Emissivity", range: EMISSIVITY, format: "0.00" },
  {
    name: "reflected",
    label: "Reflected",
    range: REFLECTED,
    ...degrees,
    note: "Reflected apparent temperature: not the air, though indoors often close to it.",
  },
  { name: "distance", label: "Distance", measure: "distance", start: 1, range: DISTANCE, format: "0.0" },
  { name: "path_air", label: "Air on the path", range: AIR, ...degrees },
  { name: "humidity", label: "Humidity", unit: "%", start: 50, range: HUMIDITY, format: "0" },
  { name: "pressure", label: "Air pressure", unit: "kPa", start: 101.325, range: [70, 105], format: "0.0" },
  {
    name: "air_transmission",
    label: "Transmission of the air",
    range: [0.01, 1],
    format: "0.000",
    note: "Empty: worked out of the four lines above.",
  },
  { name: "transmission_used", label: "Transmission, as used", format: "0.000" },
  {
    name: "window_transmission",
    label: "Window, transmission",
    start: 1,
    range: WINDOW_TRANSMISSION,
    format: "0.00",
    note: "1 where there is no window.",
  },
  { name: "window_temp", label: "Window, temperature", range: WINDOW, ...degrees },
  {
    name: "window_reflectance",
    label: "Window, reflectance",
    start: 0,
    range: WINDOW_REFLECTANCE,
    format: "0.00",
    note: "On the camera's side.",
  },
  {
    name: "outer_reflected",
    label: "Outer reflected",
    range: REFLECTED,
    ...degrees,
    note: "Reflected on the camera's side: needed where the window reflects.",
  },
  { name: "band", label: "Spectral band", start: "7.5-14", unit: "µm", note: "Text such as 7.5-14." },
  "Boxes",
  { name: "above", label: "Count what is above", range: READING, ...degrees, note: "Of the corrected temperatures." },
  {
    name: "criteria",
    label: "Criteria",
    start: CRITERIA_CHOICES[0],
    choices: CRITERIA_CHOICES,
    note: "Direct view, at the load found. =GREY.CRITERIA() lists the sets and their sources.",
  },
  {
    name: "surrounding_air",
    label: "Surrounding air",
    range: AIR,
    ...degrees,
    note: "By thermometer: what a difference to air is over.",
  },
  "Uncertainty of a difference, half-widths",
  {
    name: "accuracy",
    label: "Camera",
    measure: "difference",
    start: 2,
    range: [0, 50],
    format: "0.0",
    note: "Or the per cent below, whichever is more.",
  },
  { name: "accuracy_percent", label: "Camera, of the reading", unit: "%", start: 2, range: [0, 20], format: "0.0" },
  {
    name: "emissivity_half",
    label: "Emissivity",
    start: 0.02,
    range: [0, 0.5],
    format: "0.00",
    note: "Of a surface below 0.9 rather 0.05.",
  },
  { name: "reflected_half", label: "Reflected", measure: "difference", start: 3, range: [0, 50], format: "0.0" },
  {
    name: "relation",
    label: "Boxes that are compared are",
    start: "on other surfaces",
    choices: ["on other surfaces", "on the same surface"],
    note: "Both of this image: what they share cancels in their difference.",
  },
] as const satisfies readonly Line[];

export type GridValues = ValuesOf<typeof LINES>;

export function gridForm(heading: readonly string[], values: GridValues, units: SheetUnits): FormSheet {
  return formSheet("Settings", heading, LINES, { ...values, ...worked(units) }, units, "grid");
}

function worked(units: SheetUnits): Readonly<Record<string, string>> {
  const missing = (condition: string, words: string): string => clause(condition, `"${words}"`, ", ");
  const lacks = (name: string): string => `(1-ISNUMBER(grid_${name}))`;
  const air = "ISNUMBER(grid_distance)*ISNUMBER(grid_path_air)*ISNUMBER(grid_humidity)";
  return {
    needs: joined(
      [
        missing(lacks("emissivity"), "emissivity"),
        missing(lacks("reflected"), "reflected"),
        missing(
          `${lacks("transmission_used")}*(1-${air})`,
          "distance and air on the path (or a transmission of the air)",
        ),
        missing(
          `${lacks("transmission_used")}*${air}`,
          "another distance or air: no transmission can be told for these",
        ),
        missing(`(ISNUMBER(grid_air_transmission)*(grid_air_transmission<1))*${lacks("path_air")}`, "air on the path"),
        missing(
          `(ISNUMBER(grid_window_transmission)*(grid_window_transmission<1))*${lacks("window_temp")}`,
          "window temperature",
        ),
        missing(
          `(ISNUMBER(grid_window_reflectance)*(grid_window_reflectance>0))*${lacks("outer_reflected")}`,
          "outer reflected",
        ),
      ],
      ", ",
    ),
    transmission_used:
      `=IF(ISNUMBER(grid_air_transmission),grid_air_transmission,IF(${air},` +
      `IFERROR(GREY.AIR_TRANSMISSION(grid_distance,grid_path_air,grid_humidity,IF(grid_pressure="","",grid_pressure),,grid_band,${units.argument}),""),""))`,
  };
}

/** CORRECTED's arguments two to nine, and the last two. */
export const SETTINGS = [
  "grid_emissivity",
  "grid_reflected",
  "grid_transmission_used",
  given("path_air"),
  given("window_transmission"),
  given("window_temp"),
  given("window_reflectance"),
  given("outer_reflected"),
] as const;

function given(name: string): string {
  return `IF(grid_${name}="","",grid_${name})`;
}

export function call(name: "CORRECTED" | "APPARENT", of: string, units: SheetUnits): string {
  return `GREY.${name}(${[of, ...SETTINGS].join(",")},,grid_band,${units.argument})`;
}

/** The relation as RISE_UNCERTAINTY calls it. */
export const RELATION = '"same image, "&IF(grid_relation="on the same surface","same surface","other surface")';
