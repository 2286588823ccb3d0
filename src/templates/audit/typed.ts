/** What an auditor types or pastes of a client's report, in the words that AUDIT reads. */
import { column, foldedColumn, type Row } from "../route/columns.js";
import {
  AIR,
  CURRENT,
  DISTANCE,
  EMISSIVITY,
  HUMIDITY,
  READING,
  REFLECTED,
  WINDOW,
  WINDOW_REFLECTANCE,
  WINDOW_TRANSMISSION,
} from "../route/ranges.js";

const temperature = { measure: "temperature", format: "General", align: "right" } as const;
const difference = { measure: "difference", format: "General", align: "right" } as const;
const amps = { unit: "A", format: "General", range: CURRENT } as const;
const MORE = "More that the report gives";

export const CLAIM_COLUMNS = [
  column("item", "The report's row", 190),
  column("image", "The report's row", 84),
  column("stated_temp", "What it states", 84, {
    ...temperature,
    note: "Corrected temperature of the hot spot. Type the digits that are printed; a text such as '58.0 keeps its last zero.",
  }),
  column("stated_reference_temp", "What it states", 96, { ...temperature, note: "Of what it is compared with." }),
  column("stated_rise", "What it states", 76, difference),
  column("reference", "What it states", 88, {
    choices: ["similar", "ambient", "baseline"],
    note: "What the rise is over: similar is another phase or machine, ambient the surrounding air.",
  }),
  column("stated_rise_at_load", "What it states", 92, {
    ...difference,
    note: "Brought to reference_load, where the report projects.",
  }),
  column("stated_grade", "What it states", 96, { note: "A number from 0 to 4, or words that begin with one." }),
  column("apparent", "What it was read from", 84, {
    ...temperature,
    range: READING,
    note: "Reading of the hot spot, not corrected.",
  }),
  column("reference_apparent", "What it was read from", 92, { ...temperature, range: READING }),
  column("emissivity", "What it was read from", 84, { range: EMISSIVITY, format: "General" }),
  column("reflected", "What it was read from", 84, { ...temperature, range: REFLECTED }),
  column("surrounding_air", "What it was read from", 88, {
    ...temperature,
    range: AIR,
    note: "The air that the rise is over.",
  }),
  column("load", "What it was read from", 68, amps),
  column("reference_load", "What it was read from", 84, { ...amps, note: "Which the rise is brought to." }),
  foldedColumn("material", MORE, 130),
  foldedColumn("view", MORE, 72, { choices: ["direct", "indirect", "enclosed"], note: "Empty is direct." }),
  foldedColumn("access", MORE, 92, { choices: ["open cover", "window", "outdoor", "free"] }),
  foldedColumn("reading_is", MORE, 76, { choices: ["exact", "at least", "at most"], note: "Empty is exact." }),
  foldedColumn("date", MORE, 88, { format: "yyyy-mm-dd" }),
  foldedColumn("load_of_reference", MORE, 84, { ...amps, note: "Of what it is compared with." }),
  foldedColumn("rated_load", MORE, 72, amps),
  foldedColumn("exponent", MORE, 76, { format: "General", note: "Of the current, where the row has its own." }),
  foldedColumn("distance", MORE, 72, { measure: "distance", range: DISTANCE, format: "General" }),
  foldedColumn("humidity", MORE, 72, { unit: "%", range: HUMIDITY, format: "General" }),
  foldedColumn("path_air", MORE, 72, { ...temperature, range: AIR, note: "Air between camera and target." }),
  foldedColumn("air_transmission", MORE, 96, { format: "General", range: [0.01, 1] }),
  foldedColumn("window_transmission", MORE, 100, { format: "General", range: WINDOW_TRANSMISSION }),
  foldedColumn("window_temp", MORE, 84, { ...temperature, range: WINDOW }),
  foldedColumn("window_reflectance", MORE, 96, { format: "General", range: WINDOW_REFLECTANCE }),
  foldedColumn("outer_reflected", MORE, 92, { ...temperature, range: REFLECTED }),
  foldedColumn("room_air", MORE, 72, { ...temperature, range: AIR }),
];

/** One row of a report as it is typed, in metric units. */
export type ClaimRow = Row<(typeof CLAIM_COLUMNS)[number]["key"]>;
