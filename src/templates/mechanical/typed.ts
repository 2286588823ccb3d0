/** What a person types on a mechanical route: one row a point of a machine, in the order of the work. */
import { column, foldedColumn, type Row } from "../route/columns.js";
import { ASSET_COLUMNS } from "../route/lists.js";
import { READING } from "../route/ranges.js";
import { READING_COLUMNS } from "../route/typed.js";

const SETTINGS = "Settings of this row";

/** As on the electrical route. */
const shared = (group: string, except: readonly string[] = []) =>
  READING_COLUMNS.filter((one) => one.group === group && !except.includes(one.key));

export const POINT_READING_COLUMNS = [
  ...shared("Where"),
  ...shared("Images"),
  column("reading", "As read", 68, {
    range: READING,
    measure: "temperature",
    format: "0.0",
    note: "What the camera shows for the point, see readings_are in Job. Always the same spot of the housing.",
  }),
  column("reference", "As read", 76, {
    range: READING,
    measure: "temperature",
    format: "0.0",
    note: "What it is compared with, of the same kind of surface and in the same image: the like machine's point or the opposite end. Empty: the reading of the row that Assets names as like.",
  }),
  column("reading_is", "As read", 76, {
    choices: ["exact", "at least", "at most"],
    note: "Empty is exact. At least, at most: the reading stands at the upper, the lower end of the camera's range.",
  }),
  column("process_load", "Running", 80, {
    unit: "%",
    format: "0",
    note: "Load of the machine as its process counts it, 0 to 150: 80 is 80 %. Nothing is projected by it, it says what may be compared.",
  }),
  column("last_greased", "Running", 112, {
    format: "yyyy-mm-dd hh:mm",
    note: "Day and, where known, time. For some two days fresh grease alone makes a bearing warmer.",
  }),
  ...shared("Air"),
  ...shared("Done about it"),
  foldedColumn("speed", SETTINGS, 64, { unit: "1/min", format: "0", note: "As found, where it is not the usual one." }),
  ...shared(SETTINGS, ["room_air"]),
];

/** One row as it is typed, in metric units. */
export type PointReading = Row<(typeof POINT_READING_COLUMNS)[number]["key"]>;

/** Kinds of points; what is no bearing takes no grease of its own. */
const POINTS = ["drive end", "non-drive end", "coupling", "gearbox", "belt", "seal", "stator frame", "other"] as const;

/** What a permitted temperature is one of; only that of the surface that is seen may be compared with a reading. */
const LIMIT_KINDS = ["this surface", "bearing metal", "oil", "winding"] as const;

/** As an electrical route's list has them. */
const ofAssets = (...keys: readonly (typeof ASSET_COLUMNS)[number]["key"][]) =>
  ASSET_COLUMNS.filter(({ key }) => keys.includes(key));

export const POINT_COLUMNS = [
  column("asset_id", "Point", 92, { note: "Unique: one for each point of a machine." }),
  column("order", "Point", 52, { format: "0", note: "On the route." }),
  column("location", "Point", 160),
  column("machine", "Point", 180),
  column("point", "Point", 112, { choices: POINTS }),
  column("like", "Compared with", 92, {
    note: "asset_id of the same point of a like machine, or of the opposite end: its reading on this route is the reference.",
  }),
  column("baseline_rise", "Compared with", 92, {
    measure: "difference",
    format: "0.0",
    note: "Rise over air of this very point when it was known to be sound. Rises are compared, never temperatures.",
  }),
  column("baseline_load", "Compared with", 96, { unit: "%", format: "0", note: "Process load then." }),
  column("baseline_date", "Compared with", 96, { format: "yyyy-mm-dd" }),
  column("permitted_temp", "Limit", 104, {
    measure: "temperature",
    format: "0",
    note: "Your own, from the maker or the plant: no standard has one for every bearing.",
  }),
  column("limit_is_of", "Limit", 108, {
    choices: LIMIT_KINDS,
    note: "Only a limit of the surface that is seen is used: metal and oil inside are hotter, and a frame is never judged by its winding's class.",
  }),
  column("limit_from", "Limit", 260, { note: "Where it is written: document and edition." }),
  column("surface", "How it is seen", 150, { note: "Of the spot that is read; its emissivity stands in Surfaces." }),
  column("view", "How it is seen", 72, {
    choices: ["direct", "indirect", "enclosed"],
    note: "Empty is direct: the housing itself. A guard in front is indirect, a closed cover enclosed: no grade.",
  }),
  column("access", "How it is seen", 92, { choices: ["free", "guard opening", "window", "outdoor"] }),
  column("window_id", "How it is seen", 84, { note: "As in Windows." }),
  column("target_size", "How it is seen", 84, {
    measure: "size",
    format: "General",
    note: "Smallest width of the spot that is read.",
  }),
  column("usual_speed", "Running", 88, { unit: "1/min", format: "0" }),
  column("settling", "Running", 68, {
    unit: "min",
    format: "0",
    note: "After a start or a change of load: some 60 for a motor (from memory).",
  }),
  ...ofAssets("criticality", "physical_condition", "environment", "last_survey", "last_rise", "last_over"),
  foldedColumn("last_load", "Last time", 72, { unit: "%", format: "0" }),
  ...ofAssets("last_grade", "repaired", "next_due"),
];
export type Point = Row<(typeof POINT_COLUMNS)[number]["key"]>;
