/** The job of a mechanical route: the electrical one's without what currents need, with what grease and references need. */
import { OWN_CRITERIA } from "../common/criteria.js";
import type { FormSheet } from "../contract.js";
import { formSheet, type Line, type ValuesOf } from "../route/form.js";
import { JOB_LINES } from "../route/job.js";
import type { SheetUnits } from "../route/sheet-units.js";

/** The one set that is meant for machines: the others are for electrical parts, or historic. */
export const MECHANICAL_CRITERIA = ["house-mechanical"] as const;

const own = [
  {
    name: "criteria",
    label: "Criteria, over like and baseline",
    start: MECHANICAL_CRITERIA[0],
    choices: [...MECHANICAL_CRITERIA, OWN_CRITERIA],
    note: 'No standard has a table for bearings, couplings and gearboxes: these numbers are ours. =GREY.CRITERIA("house-mechanical") shows them.',
  },
  "After greasing",
  {
    name: "grease_hours",
    label: "Fresh for",
    unit: "h",
    start: 48,
    format: "0",
    note: "As long as this after greasing, a rise up to the next figure is not graded.",
  },
  {
    name: "grease_rise",
    label: "Rise that grease alone may bring",
    measure: "difference",
    start: 17,
    format: "0.0",
    note: "A lubrication magazine has 14 to 17 K, as it is quoted. A limit of your own stands all the same.",
  },
  "Comparing",
  {
    name: "load_apart",
    label: "Process loads alike within",
    unit: "points",
    start: 10,
    format: "0",
    note: "Common practice. Further apart a row says so: compare with care.",
  },
] as const satisfies readonly Line[];

const nameOf = (line: Line): string => (typeof line === "string" ? line : line.name);

/** What belongs to currents and switchgear alone. */
const electrical = new Set([
  "criteria_edition",
  "criteria_indirect",
  "Load",
  "minimum_load",
  "exponent_low",
  "exponent",
  "exponent_high",
  "arc_flash_study",
]);

const labels: Readonly<Record<string, string>> = {
  operating_state: "Steady, at the usual load and speed; motors at least an hour after the start.",
  criteria_limit: "For a limit of your own in Assets.",
  assistant: "Knows the machines; supplied by the end user. Guards stay on.",
};

const lines: readonly Line[] = [
  ...JOB_LINES.filter((line: Line) => !electrical.has(nameOf(line))).flatMap((line: Line): readonly Line[] => {
    const note = labels[nameOf(line)];
    if (nameOf(line) === "criteria") return [own[0]];
    // Before what is known of the readings: what is known of the machines.
    if (line === "Uncertainty of a rise, expanded (95 %)") return [...own.slice(1), line];
    return typeof line === "string" || note === undefined ? [line] : [{ ...line, note }];
  }),
];

export type MechanicalJob = ValuesOf<typeof JOB_LINES> & ValuesOf<typeof own>;

export function mechanicalJobSheet(heading: readonly string[], values: MechanicalJob, units: SheetUnits): FormSheet {
  return formSheet("Job", heading, lines, values, units);
}
