/** The job sheet: what holds for the whole route. */
import { OWN_CRITERIA } from "../common/criteria.js";
import type { FormSheet } from "../contract.js";
import { formSheet, type Line, type ValuesOf } from "./form.js";
import { AIR, DISTANCE, EMISSIVITY, HUMIDITY, REFLECTED, WINDOW, WINDOW_TRANSMISSION } from "./ranges.js";
import { UNCERTAINTY_LINES } from "./uncertainty.js";
import type { SheetUnits } from "./sheet-units.js";

const date = "yyyy-mm-dd";
const degrees = { measure: "temperature", format: "0.0" } as const;

/** Tables of criteria that a route's direct views may be graded by. */
export const CRITERIA_CHOICES = ["NETA-100.18", "house"] as const;

export const JOB_LINES = [
  "Job",
  { name: "id", label: "Job id" },
  { name: "client", label: "Client" },
  { name: "site", label: "Site" },
  { name: "date", label: "Survey date", format: date },
  {
    name: "operating_state",
    label: "Operating state",
    note: "As high and as steady a load as the site can give; at least 40 % of the normal load.",
  },
  "Criteria",
  {
    name: "criteria",
    label: "Criteria, direct view",
    start: CRITERIA_CHOICES[0],
    choices: [...CRITERIA_CHOICES, OWN_CRITERIA],
    note: "Agreed before the survey. =GREY.CRITERIA() lists the sets and their sources; own ones stand on the sheet Criteria.",
  },
  {
    name: "criteria_edition",
    label: "Edition",
    note: "Of the document that was agreed: check the numbers against your copy. Not told beside own criteria.",
  },
  {
    name: "criteria_limit",
    label: "Criteria, share of limit",
    start: "house-limit",
    choices: ["house-limit", OWN_CRITERIA],
  },
  {
    name: "criteria_indirect",
    label: "Criteria, indirect view",
    start: "house-indirect",
    choices: ["house-indirect"],
    note: "No table for direct views is used on what is seen indirectly.",
  },
  "People",
  { name: "thermographer", label: "Thermographer" },
  { name: "certificate", label: "Certificate, category" },
  { name: "certificate_until", label: "Certificate valid until", format: date },
  {
    name: "assistant",
    label: "Qualified assistant",
    note: "Opens covers and reads currents; supplied by the end user.",
  },
  "Camera",
  { name: "camera", label: "Imager, model" },
  { name: "camera_serial", label: "Serial number" },
  { name: "band", label: "Spectral band", start: "7.5-14", unit: "µm", note: "Text such as 7.5-14." },
  { name: "lens", label: "Lens" },
  {
    name: "ifov",
    label: "IFOV",
    unit: "mrad",
    format: "0.00",
    note: "Angle of one pixel; the smallest target is three pixels wide.",
  },
  { name: "range_from", label: "Range, from", ...degrees },
  {
    name: "range_to",
    label: "Range, to",
    ...degrees,
    note: "A reading at its end needs reading_is: at least; one beyond it has no grade. For readings that are apparent.",
  },
  {
    name: "accuracy",
    label: "Accuracy",
    measure: "difference",
    start: 2,
    format: "0.0",
    note: "Or the per cent below, whichever is more.",
  },
  { name: "accuracy_percent", label: "Accuracy, of the reading", unit: "%", start: 2, format: "0.0" },
  { name: "calibrated", label: "Calibrated on", format: date },
  { name: "calibration_days", label: "Calibration interval", unit: "d", start: 365, format: "0" },
  { name: "check_source", label: "Field check, source", ...degrees, note: "Temperature of a known source on the day." },
  { name: "check_reading", label: "Field check, reading", ...degrees },
  {
    name: "check_error",
    label: "Field check, error",
    measure: "difference",
    format: "0.0",
    start: '=IF(ISNUMBER(job_check_source)*ISNUMBER(job_check_reading),job_check_reading-job_check_source,"")',
  },
  "Settings where a row has none of its own",
  {
    name: "reflected",
    range: REFLECTED,
    label: "Reflected, indoors",
    ...degrees,
    note: "Reflected apparent temperature: not the air, though indoors often close to it.",
  },
  {
    name: "reflected_method",
    label: "Found by",
    choices: ["reflector", "direct", "assumed"],
    note: "Assumed: the air of the enclosure.",
  },
  {
    name: "reflected_outdoors",
    range: REFLECTED,
    label: "Reflected, outdoors",
    ...degrees,
    note: "Upward faces mirror the sky, seen from below the ground.",
  },
  { name: "path_air", range: AIR, label: "Air between camera and target", ...degrees },
  { name: "humidity", range: HUMIDITY, label: "Humidity", unit: "%", start: 50, format: "0" },
  { name: "distance", range: DISTANCE, label: "Distance", measure: "distance", start: 1, format: "0.0" },
  { name: "pressure", label: "Air pressure", unit: "kPa", start: 101.325, format: "0.0" },
  "What was set in the camera",
  {
    name: "readings_are",
    label: "Readings are",
    start: "apparent",
    choices: ["apparent", "corrected in the camera"],
    note: "Apparent: emissivity and transmission were at 1. Else the readings are first taken back with what was set.",
  },
  { name: "set_emissivity", range: EMISSIVITY, label: "Set emissivity", format: "0.00" },
  { name: "set_reflected", range: REFLECTED, label: "Set reflected", ...degrees },
  { name: "set_air_transmission", label: "Set air transmission", start: 1, format: "0.000" },
  { name: "set_air_temp", range: AIR, label: "Set air temperature", ...degrees },
  {
    name: "set_window_transmission",
    range: WINDOW_TRANSMISSION,
    label: "Set window transmission",
    start: 1,
    format: "0.00",
  },
  { name: "set_window_temp", range: WINDOW, label: "Set window temperature", ...degrees },
  "Load",
  {
    name: "minimum_load",
    label: "Least load that is projected from",
    start: 0.4,
    format: "0 %",
    note: "Share of the expected maximum: NFPA 70B-2023, 7.4.5.",
  },
  {
    name: "exponent_low",
    label: "Exponent of the current, low",
    start: 1.6,
    format: "0.0",
    note: "Laminar free convection.",
  },
  {
    name: "exponent",
    label: "Exponent, central",
    start: 1.8,
    format: "0.0",
    note: "For limits and for phases with unequal currents.",
  },
  {
    name: "exponent_high",
    label: "Exponent, high",
    start: 2,
    format: "0.0",
    note: "Heat of the current squared, carried off in proportion to the rise.",
  },
  ...UNCERTAINTY_LINES,
  "Safety plan",
  { name: "permit", label: "Permit number" },
  { name: "arc_flash_study", label: "Arc-flash study of", format: date },
  { name: "escort", label: "Escort" },
] as const satisfies readonly Line[];

/** What a job knows, by field, in metric units. */
export type JobValues = ValuesOf<typeof JOB_LINES>;

export function jobSheet(heading: readonly string[], values: JobValues, units: SheetUnits): FormSheet {
  return formSheet("Job", heading, JOB_LINES, values, units);
}
