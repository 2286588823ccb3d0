/** The point whose visits are compared: over what, at which load, against which limit. */
import type { FormSheet } from "../contract.js";
import { formSheet, type Line, type ValuesOf } from "../route/form.js";
import { AIR, CURRENT, REFLECTED } from "../route/ranges.js";
import type { SheetUnits } from "../route/sheet-units.js";

export const OVER = ["similar", "ambient"] as const;

const half = { range: [0, 50] } as const;

const POINT_LINES = [
  "Point",
  { name: "asset_id", label: "Asset id" },
  { name: "point", label: "Point" },
  { name: "site", label: "Site" },
  "What is compared",
  {
    name: "over",
    label: "Rise is over",
    choices: OVER,
    note: "Similar: the reference reading. Ambient: the surrounding air. Visits over the other are not used.",
  },
  {
    name: "common_load",
    label: "Common load",
    range: CURRENT,
    format: "General",
    note: "In the unit of current. Empty: the largest expected maximum of the visits.",
  },
  {
    name: "load_used",
    label: "Common load, as used",
    format: "General",
    start:
      '=IF(ISNUMBER(trend_common_load),trend_common_load,IF(COUNT(Visits[expected_max])=0,"",MAX(Visits[expected_max])))',
  },
  {
    name: "minimum_load",
    label: "Least load projected from",
    start: 0.4,
    range: [0.1, 1],
    format: "0 %",
    note: "Share of the common load: NFPA 70B-2023, 7.4.5.",
  },
  {
    name: "exponent_low",
    label: "Exponent, low",
    start: 1.6,
    range: [1, 2.5],
    format: "0.0",
    note: "Laminar free convection.",
  },
  { name: "exponent", label: "Exponent, central", start: 1.8, range: [1, 2.5], format: "0.0" },
  {
    name: "exponent_high",
    label: "Exponent, high",
    start: 2,
    range: [1, 2.5],
    format: "0.0",
    note: "Heat of the current squared, carried off in proportion to the rise.",
  },
  {
    name: "limit",
    label: "Limit of the rise",
    measure: "difference",
    range: [0, 1000],
    format: "0.0",
    note: "At the common load: agreed with the owner, or of a standard: =GREY.LIMITS() lists some. Empty: no date is told.",
  },
  {
    name: "coverage",
    label: "Coverage probability",
    start: 0.95,
    range: [0.5, 0.999],
    format: "0 %",
    note: "Of ± U and of the span of dates.",
  },
  "Readings",
  {
    name: "readings_are",
    label: "Readings are",
    start: "apparent",
    choices: ["apparent", "corrected already"],
    note: "Apparent: corrected here with the emissivity of their row.",
  },
  {
    name: "reflected",
    label: "Reflected",
    measure: "temperature",
    range: REFLECTED,
    format: "0.0",
    note: "Where a visit has none of its own.",
  },
  {
    name: "air_transmission",
    label: "Transmission of the air",
    start: 1,
    range: [0.01, 1],
    format: "0.000",
    note: "1 close by. A number, or a formula such as =GREY.AIR_TRANSMISSION(10,20,50).",
  },
  {
    name: "path_air",
    label: "Air on the path",
    measure: "temperature",
    range: AIR,
    format: "0.0",
    note: "Needed where its transmission is below 1.",
  },
  { name: "band", label: "Spectral band", start: "7.5-14", unit: "µm", note: "Text such as 7.5-14." },
  "Uncertainty of a visit, half-widths",
  {
    name: "accuracy",
    label: "Camera",
    measure: "difference",
    start: 2,
    ...half,
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
  { name: "reflected_half", label: "Reflected", measure: "difference", start: 3, ...half, format: "0.0" },
  {
    name: "relation",
    label: "Part and similar are",
    start: "on other surfaces",
    choices: ["on other surfaces", "on the same surface", "in two images"],
    note: "Of one image unless it says two: what both share cancels in the rise.",
  },
] as const satisfies readonly Line[];

export type PointValues = ValuesOf<typeof POINT_LINES>;

export function pointForm(heading: readonly string[], values: PointValues, units: SheetUnits): FormSheet {
  return formSheet("Point", heading, POINT_LINES, values, units, "trend");
}

/** The relation as RISE_UNCERTAINTY calls it. */
export const RELATION =
  'IF(trend_relation="in two images","two images","same image, "&IF(trend_relation="on the same surface","same surface","other surface"))';
