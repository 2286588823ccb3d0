/** What is typed of each visit. */
import { column, foldedColumn, type Row } from "../route/columns.js";
import { AIR, CURRENT, EMISSIVITY, READING, REFLECTED } from "../route/ranges.js";
import { OVER } from "./form.js";

const degrees = { measure: "temperature", format: "0.0" } as const;

export const VISIT_COLUMNS = [
  column("date", "Visit", 92, { format: "yyyy-mm-dd" }),
  column("hot", "As read", 72, { ...degrees, range: READING }),
  column("reference", "As read", 84, {
    ...degrees,
    range: READING,
    note: "Of the similar component, where the rise is over one.",
  }),
  column("surrounding_air", "As read", 96, {
    ...degrees,
    range: AIR,
    note: "By thermometer, where the rise is over the air.",
  }),
  column("over", "As read", 76, { choices: OVER, note: "Empty: as the sheet Point says." }),
  column("current", "Load", 72, { range: CURRENT, unit: "A", format: "General" }),
  column("expected_max", "Load", 84, {
    range: CURRENT,
    unit: "A",
    format: "General",
    note: "Highest current expected in service.",
  }),
  column("emissivity", "Taken with", 84, { range: EMISSIVITY, format: "0.00" }),
  column("camera", "Taken with", 110, { note: "Serial number, or whatever tells one from another." }),
  column("remark", "Taken with", 220),
  foldedColumn("reading_is", "More of this visit", 76, {
    choices: ["exact", "at least", "at most"],
    note: "Empty is exact. A reading at the end of the camera's range is no point of a trend.",
  }),
  foldedColumn("reflected", "More of this visit", 84, {
    ...degrees,
    range: REFLECTED,
    note: "Empty: the one of Point.",
  }),
] as const;

export type Visit = Row<(typeof VISIT_COLUMNS)[number]["key"]>;
