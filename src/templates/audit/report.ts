/** What a client's report says for all of its rows. */
import type { FormSheet } from "../contract.js";
import { formSheet, type Line, type ValuesOf } from "../route/form.js";
import { AIR, DISTANCE, EMISSIVITY, HUMIDITY, REFLECTED } from "../route/ranges.js";
import type { SheetUnits } from "../route/sheet-units.js";

const date = "yyyy-mm-dd";
const degrees = { measure: "temperature", format: "0.0" } as const;

export const REPORT_LINES = [
  "Report",
  { name: "number", label: "Report number" },
  { name: "client", label: "Client" },
  { name: "site", label: "Site" },
  { name: "author", label: "Made by" },
  { name: "date", label: "Survey date", format: date, note: "Dates before it are told." },
  { name: "auditor", label: "Audited by" },
  "How it grades",
  {
    name: "criteria",
    label: "Criteria",
    start: "NETA-100.18",
    choices: ["NETA-100.18", "house"],
    note: "As the report says. =GREY.CRITERIA() lists the sets and their sources.",
  },
  { name: "criteria_edition", label: "Edition" },
  {
    name: "grades_count",
    label: "Which way it counts",
    choices: ["4 = worst", "1 = worst"],
    note: "Ask. Empty: the rows themselves tell, where they can.",
  },
  {
    name: "exponent",
    label: "Exponent of the current",
    format: "0.0",
    note: "Where the report names one for all rows.",
  },
  {
    name: "minimum_load",
    label: "Least load that is projected from",
    start: 0.4,
    format: "0 %",
    note: "NFPA 70B-2023, 7.4.5.",
  },
  "Camera",
  {
    name: "band",
    label: "Spectral band",
    unit: "µm",
    note: "Text such as 7.5-14; empty: 7.5-14, and 8-14 counts for the tolerance.",
  },
  { name: "calibrated", label: "Calibrated on", format: date },
  { name: "calibration_days", label: "Calibration interval", unit: "d", start: 365, format: "0" },
  "Where a row has none of its own",
  { name: "emissivity", label: "Emissivity", range: EMISSIVITY, format: "0.00" },
  { name: "reflected", label: "Reflected", range: REFLECTED, ...degrees },
  { name: "distance", label: "Distance", measure: "distance", range: DISTANCE, format: "0.0" },
  { name: "humidity", label: "Humidity", unit: "%", range: HUMIDITY, format: "0" },
  { name: "path_air", label: "Air between camera and target", range: AIR, ...degrees },
  { name: "pressure", label: "Pressure of the air", unit: "kPa", range: [30, 120], format: "0.0" },
  { name: "air_transmission", label: "Transmission of the air", range: [0.01, 1], format: "0.000" },
  { name: "surrounding_air", label: "Surrounding air", range: AIR, ...degrees },
  "Printed digits",
  {
    name: "stated_to",
    label: "Stated values are printed to",
    measure: "difference",
    format: "General",
    note: "Such as 0.1 or 1. Empty: as many digits as stand in the column.",
  },
  { name: "inputs_to", label: "Readings are printed to", measure: "difference", format: "General" },
] as const satisfies readonly Line[];

export type ReportValues = ValuesOf<typeof REPORT_LINES>;

export function reportForm(heading: readonly string[], values: ReportValues, units: SheetUnits): FormSheet {
  return formSheet("Report", heading, REPORT_LINES, values, units, "report");
}

/** Lines that AUDIT reads, by their own names; the others are for people. */
const READ = [
  "date",
  "criteria",
  "grades_count",
  "exponent",
  "minimum_load",
  "band",
  "calibrated",
  "calibration_days",
  "emissivity",
  "reflected",
  "distance",
  "humidity",
  "path_air",
  "pressure",
  "air_transmission",
  "surrounding_air",
  "stated_to",
  "inputs_to",
] as const satisfies readonly (keyof ReportValues)[];

/** The two columns name | value that AUDIT takes. */
export const JOB_ARGUMENT = `HSTACK({${READ.map((name) => `"${name}"`).join(";")}},TRANSPOSE(HSTACK(${READ.map(
  (name) => `IF(report_${name}="","",report_${name})`,
).join(",")})))`;
