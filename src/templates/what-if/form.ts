/** What holds for every row that has nothing of its own, and which setting is varied. */
import type { FormSheet } from "../contract.js";
import { type Field, formSheet, type Line, type ValuesOf } from "../route/form.js";
import { CRITERIA_CHOICES } from "../route/job.js";
import { AIR } from "../route/ranges.js";
import type { SheetUnits } from "../route/sheet-units.js";
import { type Setting, type SettingKey, SETTINGS, TEMPERATURES, VARIED } from "./settings.js";

export const OVER = ["similar", "ambient"] as const;

const SPAN_UNIT = `IF(${TEMPERATURES.map((key) => `(whatif_varied="${key}")`).join("+")}>0,UNIT,"a fraction")`;

const settingLines: readonly Field[] = SETTINGS.map(({ key, ...rest }: Setting) => ({ name: key, ...rest }));

const before = [
  "What is varied",
  {
    name: "varied",
    label: "Setting",
    choices: VARIED,
    note: "The only one that runs from … to; the others stay as given.",
  },
  { name: "from", label: "From", format: "General" },
  {
    name: "to",
    label: "To",
    format: "General",
    note: "Eleven steps from one to the other: results need not rise or fall all the way.",
  },
  { name: "span_unit", label: "From and to are" },
  {
    name: "row",
    label: "Row shown on Span",
    start: 1,
    format: "0",
    range: [1, 100_000],
    note: "Counted on the sheet Readings, the first is 1.",
  },
  "Settings where a row has none of its own",
] as const satisfies readonly Line[];

const after = [
  { name: "band", label: "Spectral band", start: "7.5-14", unit: "µm", note: "Text such as 7.5-14." },
  "Grades",
  {
    name: "criteria",
    label: "Criteria",
    start: CRITERIA_CHOICES[0],
    choices: CRITERIA_CHOICES,
    note: "Direct view, at the load found. =GREY.CRITERIA() lists the sets and their sources.",
  },
  {
    name: "over",
    label: "Rise is over",
    choices: OVER,
    note: "Where a row does not say: similar, the reference reading; ambient, the surrounding air.",
  },
  { name: "surrounding_air", label: "Surrounding air", measure: "temperature", range: AIR, format: "0.0" },
  {
    name: "minimum_load",
    label: "Least load projected from",
    start: 0.4,
    range: [0.1, 1],
    format: "0 %",
    note: "Share of the reference load: NFPA 70B-2023, 7.4.5.",
  },
  { name: "exponent_low", label: "Exponent, low", start: 1.6, range: [1, 2.5], format: "0.0" },
  { name: "exponent", label: "Exponent, central", start: 1.8, range: [1, 2.5], format: "0.0" },
  { name: "exponent_high", label: "Exponent, high", start: 2, range: [1, 2.5], format: "0.0" },
  "Uncertainty at the given settings, half-widths",
  {
    name: "accuracy",
    label: "Camera",
    measure: "difference",
    start: 2,
    range: [0, 20],
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
    label: "Part and similar are",
    start: "on other surfaces",
    choices: ["on other surfaces", "on the same surface", "in two images"],
    note: "Of one image unless it says two: what both share cancels in the rise.",
  },
] as const satisfies readonly Line[];

export type WhatIfValues = ValuesOf<typeof before> &
  ValuesOf<typeof after> &
  Readonly<Partial<Record<SettingKey, number>>>;

export function whatIfForm(heading: readonly string[], values: WhatIfValues, units: SheetUnits): FormSheet {
  const unit = `=IF(whatif_varied="","",${SPAN_UNIT.replace("UNIT", `"${units.label("temperature")}"`)})`;
  return formSheet(
    "Settings",
    heading,
    [...before, ...settingLines, ...after],
    { ...values, span_unit: unit },
    units,
    "whatif",
  );
}

/** The relation as RISE_UNCERTAINTY calls it. */
export const RELATION =
  'IF(whatif_relation="in two images","two images","same image, "&IF(whatif_relation="on the same surface","same surface","other surface"))';
