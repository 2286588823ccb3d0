/** What is typed of a view before the trip. */
import { column, foldedColumn, type Row } from "./columns.js";
import { DISTANCE, EMISSIVITY, READING, REFLECTED, WINDOW, WINDOW_REFLECTANCE, WINDOW_TRANSMISSION } from "./ranges.js";

const MORE = "More of this view";
const degrees = { measure: "temperature", format: "0.0" } as const;
const HALF_NOTE = "Half-width: what it may be off to either side.";

export const PLAN_COLUMNS = [
  column("what", "View", 220, { note: "What will be looked at, and from where." }),
  column("over", "View", 76, { note: "What its rise will be over." }),
  column("distance", "View", 76, {
    measure: "distance",
    range: DISTANCE,
    format: "0.0",
    note: "From where one may stand. Empty: the one of Job.",
  }),
  column("target_size", "View", 84, {
    measure: "size",
    range: [0.1, 10_000],
    format: "General",
    note: "Smallest width of the spot that is to be read.",
  }),
  column("emissivity", "Surface, window", 80, { range: EMISSIVITY, format: "0.00" }),
  column("window_transmission", "Surface, window", 104, {
    range: WINDOW_TRANSMISSION,
    format: "0.00",
    note: "In the camera's band. Empty: no window.",
  }),
  column("window_temp", "Surface, window", 84, { ...degrees, range: WINDOW, note: "Needed with a window." }),
  column("expected_temp", "Expected", 84, {
    ...degrees,
    range: READING,
    note: "Corrected temperature of a part worth finding.",
  }),
  column("expected_rise", "Expected", 84, {
    measure: "difference",
    range: [0, 1000],
    format: "0.0",
    note: "Its rise over what it will be compared with.",
  }),
  foldedColumn("similar_is", MORE, 150, {
    choices: ["on another surface", "on the same surface", "in another image"],
    note: "How part and similar component will be seen: what both share cancels. Empty: on another surface.",
  }),
  foldedColumn("reflected", MORE, 80, { ...degrees, range: REFLECTED, note: "Empty: reflected indoors of Job." }),
  foldedColumn("window_reflectance", MORE, 96, {
    range: WINDOW_REFLECTANCE,
    format: "0.00",
    note: "On the camera's side. Empty: 0.",
  }),
  foldedColumn("emissivity_half", MORE, 96, {
    range: [0, 0.5],
    format: "0.00",
    note: `${HALF_NOTE} Empty: 0.02, of an emissivity below 0.9 0.05.`,
  }),
  foldedColumn("reflected_half", MORE, 88, {
    measure: "difference",
    range: [0, 50],
    format: "0.0",
    note: `${HALF_NOTE} Empty: 3 K.`,
  }),
  foldedColumn("window_half", MORE, 96, {
    range: [0, 0.5],
    format: "0.00",
    note: "Half-width of the window's transmission. Empty: it counts as exact, and the uncertainty is too small.",
  }),
];

/** A view as it is typed, in metric units. */
export type PlannedView = Row<(typeof PLAN_COLUMNS)[number]["key"]>;

/** True where a row holds anything that was typed. */
export const PLANNED = `(${["what", "distance", "target_size", "emissivity", "expected_temp", "expected_rise"].map((key) => `([${key}]<>"")`).join("+")}>0)`;
