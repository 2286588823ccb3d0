/** Names that AUDIT reads: what a client's report states and gives, a row each, and what holds for all of it. */
import { NUMBERINGS } from "../core/audit/verdict/grade.js";
import { REFERENCE_KINDS, VIEWS } from "../core/severity/criteria.js";
import type { CheckColumn } from "./check-columns.js";
import { CHECK_COLUMNS } from "./check-columns.js";
import type { Quantity } from "./contract.js";

type More = Partial<Pick<CheckColumn, "choices" | "zeroIsBlank">>;
const NOT_ZERO: More = { zeroIsBlank: true };

const column = (name: string, quantity: Quantity, help: string, more: More = {}): CheckColumn => ({
  name,
  quantity,
  help,
  optional: true,
  ...more,
});
const temperature = (name: string, help: string): CheckColumn => column(name, "temperature", help);
const word = (name: string, help: string, choices?: readonly string[]): CheckColumn =>
  column(name, "text", help, choices === undefined ? {} : { choices });

/** As CHECK has it, so that one word means one thing. */
function asInRoute(name: string): CheckColumn {
  const found = CHECK_COLUMNS.find((one) => one.name === name);
  if (found === undefined) throw new Error(`There is no column ${name}.`);
  const { quantity, help, choices, zeroIsBlank } = found;
  return column(name, quantity, help, { ...(choices && { choices }), ...(zeroIsBlank && { zeroIsBlank }) });
}

const WITH_REFERENCE = REFERENCE_KINDS.filter((kind) => kind !== "limit");

/** What is worked out again, and held to the digits that are printed. */
export const STATED_COLUMNS: readonly CheckColumn[] = [
  temperature("stated_temp", "corrected temperature of the hot spot, as the report states it"),
  temperature("stated_reference_temp", "corrected temperature of what it is compared with, as stated"),
  column("stated_rise", "difference", "rise over its reference, as stated"),
  column("stated_rise_at_load", "difference", "rise brought to reference_load, as stated"),
  word("stated_grade", "grade as stated: a number, or words that begin with one"),
];

/** Printed measurements, whose last digit counts for the tolerance. */
export const MEASURED_NAMES = [
  "apparent",
  "reference_apparent",
  "surrounding_air",
  "room_air",
  "load",
  "load_of_reference",
  "reference_load",
  "rated_load",
];

export const AUDIT_COLUMNS: readonly CheckColumn[] = [
  word("item", "what was looked at"),
  word("image", "number of the thermal image"),
  column("date", "date", "day of the reading", NOT_ZERO),
  ...STATED_COLUMNS,
  word("reference", "what the rise is over", WITH_REFERENCE),
  temperature("apparent", "reading of the hot spot, not corrected"),
  temperature("reference_apparent", "reading of what it is compared with, not corrected"),
  word("reading_is", "whether the reading stands at an end of the camera's range", ["exact", "at least", "at most"]),
  asInRoute("emissivity"),
  asInRoute("reflected"),
  asInRoute("distance"),
  asInRoute("humidity"),
  asInRoute("path_air"),
  asInRoute("air_transmission"),
  asInRoute("window_transmission"),
  asInRoute("window_temp"),
  asInRoute("window_reflectance"),
  asInRoute("outer_reflected"),
  temperature("surrounding_air", "air that the rise is over"),
  temperature("room_air", "air of the room, where the other was taken in the enclosure"),
  column("load", "current", "load at the time of the reading"),
  column("load_of_reference", "current", "load of what it is compared with"),
  column("reference_load", "current", "load that the rise is brought to", NOT_ZERO),
  column("rated_load", "current", "rated load", NOT_ZERO),
  column("exponent", "number", "exponent of the current", NOT_ZERO),
  word("material", "surface or material that was read"),
  word("view", "how the part is seen", VIEWS),
  asInRoute("access"),
];

export const AUDIT_JOB_LINES: readonly CheckColumn[] = [
  column("date", "date", "day of the survey", NOT_ZERO),
  word("criteria", "table of criteria that the report grades by"),
  column("band", "band", "the camera's spectral band, where the report says it"),
  word("grades_count", "which way the report counts its grades", NUMBERINGS),
  column("exponent", "number", "exponent of the current, for rows that have none", NOT_ZERO),
  column("minimum_load", "fraction", "least load that is projected from", NOT_ZERO),
  column("calibrated", "date", "day of the camera's calibration", NOT_ZERO),
  column("calibration_days", "number", "days to the next calibration", NOT_ZERO),
  column("stated_to", "difference", "last digit of what is stated, such as 0.1", NOT_ZERO),
  column("inputs_to", "difference", "last digit of the readings, such as 0.1", NOT_ZERO),
  ...[
    "reference",
    "emissivity",
    "reflected",
    "distance",
    "humidity",
    "path_air",
    "air_transmission",
    "surrounding_air",
    "view",
  ].map((name) => AUDIT_COLUMNS.find((one) => one.name === name)!),
  column("pressure", "pressure", "pressure of the air", NOT_ZERO),
];
