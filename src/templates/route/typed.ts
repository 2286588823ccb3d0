/** What a person types on the route sheet, in the order of the work; the folded columns only override the job's settings. */
import { column, foldedColumn, type Row } from "./columns.js";
import { SIMILAR_CHOICES } from "./uncertainty.js";
import { AIR, CURRENT, DISTANCE, EMISSIVITY, HUMIDITY, READING, REFLECTED, WIND, WINDOW } from "./ranges.js";

const SETTINGS = "Settings of this row";

export const READING_COLUMNS = [
  column("asset_id", "Where", 92, { note: "As in Assets: location, component and limits come from there." }),
  column("status", "Where", 104, {
    choices: ["no exception", "exception", "partly seen", "not inspected"],
    note: "Not inspected and partly seen need a reason.",
  }),
  column("reason", "Where", 150, { note: "Why it was not inspected, or what of it was not seen." }),
  column("thermal_image", "Images", 84),
  column("photo", "Images", 72),
  column("time", "Images", 56, { format: "hh:mm", note: "Of the thermal image." }),
  column("left", "As read", 60, {
    range: READING,
    measure: "temperature",
    format: "0.0",
    note: "What the camera shows for the left (or upper) phase, see readings_are in Job. Left, middle, right as you face it.",
  }),
  column("middle", "As read", 60, { range: READING, measure: "temperature", format: "0.0" }),
  column("right", "As read", 60, { range: READING, measure: "temperature", format: "0.0" }),
  column("reading_is", "As read", 76, {
    choices: ["exact", "at least", "at most"],
    note: "Empty is exact. At least: the hottest of the three stands at the upper end of the camera's range. At most: the coldest stands at the lower end.",
  }),
  column("amps_left", "Currents", 64, {
    range: CURRENT,
    unit: "A",
    format: "General",
    note: "0 is a phase without current; leave empty what was not read.",
  }),
  column("amps_middle", "Currents", 72, { range: CURRENT, unit: "A", format: "General" }),
  column("amps_right", "Currents", 68, { range: CURRENT, unit: "A", format: "General" }),
  column("amps_time", "Currents", 68, { format: "hh:mm", note: "When the currents were read; empty: with the image." }),
  column("surrounding_air", "Air", 84, {
    range: AIR,
    measure: "temperature",
    format: "0.0",
    note: "The air that the rise is over, at this item.",
  }),
  column("air_taken", "Air", 80, { choices: ["room", "enclosure", "outdoors"], note: "Empty is room." }),
  column("cause", "Done about it", 150, { note: "Probable cause. It needs knowledge beyond thermography." }),
  column("action", "Done about it", 170),
  column("told_to", "Done about it", 200, { note: "Who was told, and when: for what cannot wait for the report." }),
  column("due", "Done about it", 84, { format: "yyyy-mm-dd" }),
  foldedColumn("emissivity", SETTINGS, 76, {
    range: EMISSIVITY,
    format: "0.00",
    note: "Instead of the one for the asset's surface.",
  }),
  foldedColumn("reflected", SETTINGS, 68, {
    range: REFLECTED,
    measure: "temperature",
    format: "0.0",
    note: "Reflected apparent temperature, instead of the job's.",
  }),
  foldedColumn("distance", SETTINGS, 68, {
    range: DISTANCE,
    measure: "distance",
    format: "0.0",
    note: "Instead of the job's.",
  }),
  foldedColumn("humidity", SETTINGS, 68, { range: HUMIDITY, unit: "%", format: "0", note: "Instead of the job's." }),
  foldedColumn("path_air", SETTINGS, 68, {
    range: AIR,
    measure: "temperature",
    format: "0.0",
    note: "Air between camera and target, where it is neither surrounding_air nor the job's.",
  }),
  foldedColumn("window_temp", SETTINGS, 88, {
    range: WINDOW,
    measure: "temperature",
    format: "0.0",
    note: "Needed where the asset is seen through a window.",
  }),
  foldedColumn("outer_reflected", SETTINGS, 100, {
    range: REFLECTED,
    measure: "temperature",
    format: "0.0",
    note: "What the camera's side of the window mirrors, instead of the job's reflected.",
  }),
  foldedColumn("room_air", SETTINGS, 68, {
    range: AIR,
    measure: "temperature",
    format: "0.0",
    note: "Beside an air taken in the enclosure: then the rise is over the room's air.",
  }),
  foldedColumn("similar_is", SETTINGS, 150, {
    choices: SIMILAR_CHOICES,
    note: "How the similar component is seen, instead of the job's: what both share cancels in the uncertainty of the rise.",
  }),
  foldedColumn("wind", SETTINGS, 56, {
    range: WIND,
    measure: "speed",
    format: "0.0",
    note: "At the target, outdoors.",
  }),
  foldedColumn("hours_since_sun", SETTINGS, 100, {
    unit: "h",
    format: "0.0",
    note: "Hours since the sun last shone on it.",
  }),
  foldedColumn("minutes_since_load_change", SETTINGS, 120, { unit: "min", format: "0" }),
  foldedColumn("set_emissivity", SETTINGS, 96, {
    range: EMISSIVITY,
    format: "0.00",
    note: "What the camera was set to for this image, where the readings were corrected in it.",
  }),
  foldedColumn("set_reflected", SETTINGS, 88, { range: REFLECTED, measure: "temperature", format: "0.0" }),
];

/** One row of the route as it is typed, in metric units. */
export type Reading = Row<(typeof READING_COLUMNS)[number]["key"]>;
