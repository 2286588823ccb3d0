/** What is typed of an exception's repair, in the order in which it comes about. */
import { type Column, column, foldedColumn, type Row } from "../route/columns.js";
import { AIR, CURRENT, EMISSIVITY, READING, REFLECTED } from "../route/ranges.js";
import type { FollowUpKind } from "./kind.js";

const FOUND = "As found";
const LEFT = "As left";
const U = "Settings and uncertainty of this row";
export const degrees = { measure: "temperature", format: "0.0" } as const;
export const kelvin = { measure: "difference", format: "0.0" } as const;
const date = { format: "yyyy-mm-dd" } as const;

type Key =
  | "asset_id"
  | "found_on"
  | "grade_found"
  | "rise_found"
  | "over"
  | "load_found"
  | "repair_date"
  | "repair_found"
  | "work_order"
  | "left_date"
  | "left_hot"
  | "left_reference"
  | "left_load"
  | "left_reference_load"
  | "left_air"
  | "closed_on"
  | "closed_by"
  | "left_emissivity"
  | "left_reflected"
  | "u_found"
  | "u_left";

export function followUpColumns({ references, loadUnit, projects }: FollowUpKind): Column<Key>[] {
  const load = { unit: loadUnit, format: "General", range: projects ? CURRENT : ([0, 150] as const) } as const;
  return [
    column("asset_id", FOUND, 92, { note: "As in Assets." }),
    column("found_on", FOUND, 88, date),
    column("grade_found", FOUND, 230, { note: "With its words, as the exceptions list shows it." }),
    column("rise_found", FOUND, 72, { ...kelvin, note: "The rise that was judged, at the load found." }),
    column("over", FOUND, 76, { choices: references, note: "What both rises are over." }),
    column("load_found", FOUND, 76, load),
    column("repair_date", "Repair", 88, date),
    column("repair_found", "Repair", 220, { note: "What was found when it was opened." }),
    column("work_order", "Repair", 92),
    column("left_date", LEFT, 88, date),
    column("left_hot", LEFT, 72, {
      ...degrees,
      range: READING,
      note: "Corrected, as found was. With left_emissivity it is taken as the camera's apparent reading and corrected here.",
    }),
    column("left_reference", LEFT, 84, {
      ...degrees,
      range: READING,
      note: "Of what it is compared with, where that is not the air.",
    }),
    column("left_load", LEFT, 72, load),
    column("left_reference_load", LEFT, 96, { ...load, note: "Of what it is compared with; empty: alike." }),
    column("left_air", LEFT, 72, { ...degrees, range: AIR, note: "Surrounding air, where the rise is over it." }),
    column("closed_on", "Closed", 88, { ...date, note: "By whoever is responsible: the numbers only advise." }),
    column("closed_by", "Closed", 130),
    foldedColumn("left_emissivity", U, 88, { range: EMISSIVITY, format: "0.00" }),
    foldedColumn("left_reflected", U, 84, {
      ...degrees,
      range: REFLECTED,
      note: "Beside left_emissivity; empty is the job's.",
    }),
    foldedColumn("u_found", U, 72, {
      ...kelvin,
      note: "Expanded uncertainty (95 %) of the rise found; empty: the one typed in Job, else the usual one at an emissivity of 0.85.",
    }),
    foldedColumn("u_left", U, 72, { ...kelvin, note: "The same of the rise as left." }),
  ];
}

export type FollowUp = Row<Key>;
