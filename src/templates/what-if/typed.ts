/** What is typed of each reading. */
import { column, foldedColumn, type Row } from "../route/columns.js";
import { AIR, CURRENT, READING } from "../route/ranges.js";
import { OVER } from "./form.js";
import { type Setting, SETTINGS, type SettingKey } from "./settings.js";

const degrees = { measure: "temperature", format: "0.0" } as const;

export const READING_COLUMNS = [
  column("item", "Where", 200),
  column("apparent", "As read", 84, {
    ...degrees,
    range: READING,
    note: "The camera's reading with emissivity and transmission at 1.",
  }),
  column("reference_apparent", "As read", 92, {
    ...degrees,
    header: "reference",
    range: READING,
    note: "Reading of a similar component, corrected with the same settings.",
  }),
  column("surrounding_air", "As read", 96, {
    ...degrees,
    range: AIR,
    note: "Empty: the one of Settings. Not the air on the path.",
  }),
  column("over", "As read", 76, { choices: OVER, note: "What the rise is over. Empty: as Settings say." }),
  column("load", "Load", 60, { range: CURRENT, format: "General" }),
  column("reference_load", "Load", 84, {
    range: CURRENT,
    format: "General",
    note: "In the unit of load, such as the highest expected.",
  }),
  column("remark", "Load", 200),
  ...SETTINGS.map(({ key, label, measure, range, format }: Setting) =>
    foldedColumn(key as SettingKey, "Settings of this row alone", 92, {
      range,
      format,
      ...(measure === undefined ? {} : { measure }),
      note: `${label}. Empty: the one of Settings.`,
    }),
  ),
] as const;

export type WhatIfRow = Row<(typeof READING_COLUMNS)[number]["key"]>;
