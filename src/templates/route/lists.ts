/** The lists behind the route: assets, windows, surfaces. */
import { column, foldedColumn, type Row } from "./columns.js";
import { EMISSIVITY_HALF, TRANSMISSION_HALF } from "./uncertainty.js";
import { CURRENT, EMISSIVITY, READING, WINDOW, WINDOW_REFLECTANCE, WINDOW_TRANSMISSION } from "./ranges.js";

export const ASSET_COLUMNS = [
  column("asset_id", "Asset", 84, { note: "Unique." }),
  column("order", "Asset", 52, { format: "0", note: "On the route: critical and hot first." }),
  column("location", "Asset", 160),
  column("component", "Asset", 210),
  column("surface", "How it is seen", 150, { note: "Of the spot that is read; its emissivity stands in Surfaces." }),
  column("view", "How it is seen", 72, { choices: ["direct", "indirect", "enclosed"], note: "Empty is direct." }),
  column("access", "How it is seen", 92, { choices: ["open cover", "window", "outdoor", "free"] }),
  column("window_id", "How it is seen", 84, { note: "As in Windows." }),
  column("target_size", "How it is seen", 84, {
    measure: "size",
    format: "General",
    note: "Smallest width of the spot that is read.",
  }),
  column("rated_A", "Load and limit", 72, { range: CURRENT, format: "0" }),
  column("expected_max_A", "Load and limit", 104, {
    range: CURRENT,
    format: "0",
    note: "Highest current expected in the year: a rise is projected to it.",
  }),
  column("permitted_rise", "Load and limit", 96, {
    measure: "difference",
    format: "0",
    note: "At rated_A, from the part's standard.",
  }),
  column("permitted_temp", "Load and limit", 100, { measure: "temperature", format: "0" }),
  column("limit_from", "Load and limit", 400, {
    note: "Part, standard and edition that the two come from: check yours.",
  }),
  column("settling", "Load and limit", 68, {
    unit: "min",
    format: "0",
    note: "After a change of load: some 30 for a panel, 60 for a motor, 240 for a dry transformer, 600 for one in oil (from memory).",
  }),
  column("criticality", "Priority", 76, { choices: ["1", "2", "3"], note: "3 = worst." }),
  column("physical_condition", "Priority", 120, { choices: ["1", "2", "3"], note: "3 = worst." }),
  column("environment", "Priority", 88, { choices: ["1", "2", "3"], note: "3 = worst." }),
  foldedColumn("last_survey", "Last time", 88, { format: "yyyy-mm-dd" }),
  foldedColumn("last_rise", "Last time", 72, { measure: "difference", format: "0.0" }),
  foldedColumn("last_over", "Last time", 76, {
    choices: ["similar", "air", "like", "baseline"],
    note: "What that rise was over.",
  }),
  foldedColumn("last_amps", "Last time", 72, { unit: "A", format: "0" }),
  foldedColumn("last_grade", "Last time", 80),
  foldedColumn("repaired", "Last time", 150),
  foldedColumn("next_due", "Last time", 88, { format: "yyyy-mm-dd" }),
];
export type Asset = Row<(typeof ASSET_COLUMNS)[number]["key"]>;

export const WINDOW_COLUMNS = [
  column("window_id", "Window", 84, { note: "Unique." }),
  column("where", "Window", 200),
  column("transmission", "Measured", 96, {
    range: WINDOW_TRANSMISSION,
    format: "0.00",
    note: "In the band of the camera in use: it is no constant of the window.",
  }),
  column("transmission_half", "Measured", 120, TRANSMISSION_HALF),
  column("reflectance", "Measured", 88, { range: WINDOW_REFLECTANCE, format: "0.00" }),
  column("band", "Measured", 76, { unit: "µm" }),
  column("method", "Measured", 350),
  column("date", "Measured", 88, { format: "yyyy-mm-dd" }),
  column("target_temp", "Measured", 92, { range: READING, measure: "temperature", format: "0" }),
  column("window_temp", "Measured", 92, { range: WINDOW, measure: "temperature", format: "0" }),
];
export type WindowEntry = Row<(typeof WINDOW_COLUMNS)[number]["key"]>;

export const SURFACE_COLUMNS = [
  column("surface", "Surface", 170, { note: "Unique; Assets name it." }),
  column("emissivity", "Surface", 84, {
    range: EMISSIVITY,
    format: "0.00",
    note: "In the camera's band. Below 0.6 the uncertainty is wide; below 0.3 there is no temperature to be had.",
  }),
  column("emissivity_half", "Surface", 110, EMISSIVITY_HALF),
  column("known_from", "Surface", 110, { choices: ["measured", "handbook", "assumed"] }),
  column("remark", "Surface", 520),
];
export type Surface = Row<(typeof SURFACE_COLUMNS)[number]["key"]>;
