/** Names that CHECK reads: columns of a route and lines of its job, as our own sheets and functions call them. */
import { COLUMN_LIMITS } from "../core/check/limits.js";
import type { ArgumentSpec, Quantity } from "./contract.js";

/** A column of a route or a line of its job. */
export interface CheckColumn extends ArgumentSpec {
  /** Not typed in the row: one that has nothing else is empty. Words in place of a number that is worked out are the sheet's own. */
  readonly from?: "looked up" | "worked out";
}

type More = Partial<Pick<CheckColumn, "choices" | "zeroIsBlank" | "from">>;

function column(name: string, quantity: Quantity, help: string, more: More = {}): CheckColumn {
  // The days that a sheet can count are no help to anybody.
  const range = quantity === "date" ? undefined : COLUMN_LIMITS[name];
  return { name, quantity, help, optional: true, ...(range && { range }), ...more };
}

const NOT_ZERO: More = { zeroIsBlank: true };
const LOOKED_UP: More = { from: "looked up" };
const WORKED_OUT: More = { from: "worked out" };
const PHASES = ["left", "middle", "right"] as const;
const temperature = (name: string, help: string, more?: More): CheckColumn => column(name, "temperature", help, more);
const fraction = (name: string, help: string, more: More = NOT_ZERO): CheckColumn =>
  column(name, "fraction", help, more);
const minutes = (name: string, help: string): CheckColumn => column(name, "number", `minutes ${help}`);
const word = (name: string, help: string, choices?: readonly string[], more: More = {}): CheckColumn =>
  column(name, "text", help, { ...(choices && { choices }), ...more });

/** In the order of our route sheet; then what it looks up or works out; a sheet may have them in any order. */
export const CHECK_COLUMNS: readonly CheckColumn[] = [
  word("asset_id", "the item that was looked at"),
  word("status", "what came of it", ["no exception", "exception", "partly seen", "not inspected"]),
  word("reason", "why it was not inspected, or what of it was not seen"),
  word("thermal_image", "number of the thermal image"),
  column("date", "date", "day of the reading, where it is not the job's", NOT_ZERO),
  column("time", "date", "time of the thermal image"),
  ...PHASES.map((phase) => temperature(phase, `reading of the ${phase} phase`)),
  temperature("reading", "reading of a single point, in place of three phases"),
  temperature("reference", "reading of what a single point is compared with"),
  word("reading_is", "whether the reading stands at an end of the camera's range", ["exact", "at least", "at most"]),
  ...PHASES.map((phase) => column(`amps_${phase}`, "current", `current of the ${phase} phase; 0 is no current`)),
  column("load", "current", "load of a single point, in the unit of reference_load"),
  column("process_load", "percent", "load of a machine, as its process counts it"),
  column("amps_time", "date", "time at which the currents were read, where it is not that of the image"),
  temperature("surrounding_air", "air that the rise is over"),
  word("air_taken", "where that air was taken", ["room", "enclosure", "outdoors"]),
  temperature("room_air", "air of the room, beside one taken in the enclosure"),
  fraction("emissivity", "emissivity of the surface"),
  temperature("reflected", "reflected apparent temperature"),
  word("reflected_method", "how the reflected temperature was found", ["reflector", "direct", "assumed"]),
  column("distance", "distance", "from the camera to the target", NOT_ZERO),
  column("humidity", "percent", "relative humidity of the air on the path", NOT_ZERO),
  temperature("path_air", "air between camera and target"),
  temperature("window_temp", "temperature of the window"),
  word("window_temp_from", "how the window's temperature was found", ["measured", "assumed"]),
  temperature("outer_reflected", "reflected apparent temperature on the camera's side of a window"),
  column("wind", "speed", "wind at the target"),
  column("hours_since_sun", "number", "hours since the sun last shone on the target"),
  minutes("minutes_since_load_change", "from the last change of load to the reading"),
  minutes("minutes_door_open", "from the opening of door or cover to the reading"),
  minutes("minutes_camera_out", "from taking the camera out of the vehicle to the reading"),
  word("readings_are", "what the camera shows", ["apparent", "corrected in the camera"]),
  fraction("set_emissivity", "emissivity set in the camera"),
  temperature("set_reflected", "reflected temperature set in the camera"),
  temperature("set_air_temp", "air temperature set in the camera"),
  column("set_distance", "distance", "distance set in the camera", NOT_ZERO),
  column("set_humidity", "percent", "humidity set in the camera", NOT_ZERO),
  fraction("set_air_transmission", "transmission of air set in the camera"),
  fraction("set_window_transmission", "transmission of a window set in the camera"),
  temperature("set_window_temp", "temperature of a window set in the camera"),
  word("view", "how the part is seen", ["direct", "indirect", "enclosed"], LOOKED_UP),
  word("access", "what stands between", ["open cover", "guard opening", "window", "outdoor", "free"], LOOKED_UP),
  word("equipment", "kind of equipment", ["panel", "motor", "dry transformer", "oil transformer"], LOOKED_UP),
  word("surface", "surface of the spot that is read", undefined, LOOKED_UP),
  word("material", "its material, where surface does not say", undefined, LOOKED_UP),
  word("known_from", "where its emissivity comes from", ["measured", "handbook", "assumed"], LOOKED_UP),
  column("target_size", "length", "smallest width of the spot that is read", { ...NOT_ZERO, ...LOOKED_UP }),
  column("ifov", "angle", "angle of one pixel", { ...NOT_ZERO, ...LOOKED_UP }),
  column("expected_max_A", "current", "highest current expected in the year", { ...NOT_ZERO, ...LOOKED_UP }),
  column("reference_load", "current", "load that a single point's is compared with", { ...NOT_ZERO, ...LOOKED_UP }),
  word("like", "the like machine, or the opposite end, that a single point is compared with", undefined, LOOKED_UP),
  column("baseline_rise", "difference", "rise of a single point when it was known to be sound", LOOKED_UP),
  column("settling", "number", "minutes that its temperature takes to settle", { ...NOT_ZERO, ...LOOKED_UP }),
  word("window_id", "the window it is seen through", undefined, LOOKED_UP),
  fraction("window_transmission", "transmission of that window", { ...NOT_ZERO, ...LOOKED_UP }),
  fraction("window_reflectance", "reflectance of that window", LOOKED_UP),
  fraction("emissivity_used", "where the row has no emissivity of its own", { ...NOT_ZERO, ...WORKED_OUT }),
  temperature("reflected_used", "where the row has no reflected of its own", WORKED_OUT),
  temperature("path_air_used", "where the row has no path_air of its own", WORKED_OUT),
  fraction("air_transmission", "transmission of the air", { ...NOT_ZERO, ...WORKED_OUT }),
  column("spot_margin", "number", "target over three pixels", { ...NOT_ZERO, ...WORKED_OUT }),
  ...PHASES.map((phase) =>
    temperature(`corrected_${phase}`, `corrected temperature of the ${phase} phase`, WORKED_OUT),
  ),
  temperature("corrected_reading", "corrected temperature of a single point", WORKED_OUT),
  temperature("corrected_reference", "corrected temperature of its reference", WORKED_OUT),
  column("rise_similar", "difference", "rise over a similar component", WORKED_OUT),
  column("rise_air", "difference", "rise over the surrounding air", WORKED_OUT),
  column("share_of_limit", "number", "share of the permitted rise", WORKED_OUT),
  column("rise_U", "difference", "expanded uncertainty of the rise", { ...NOT_ZERO, ...WORKED_OUT }),
  column("rise_U_similar", "difference", "the same of the one over similar", { ...NOT_ZERO, ...WORKED_OUT }),
  column("rise_U_air", "difference", "the same of the one over air", { ...NOT_ZERO, ...WORKED_OUT }),
];

/** A column as a line of the job, where it is typed whatever the sheet does with it. */
function named(wanted: string): CheckColumn {
  const found = CHECK_COLUMNS.find(({ name }) => name === wanted);
  if (!found) throw new Error(`There is no column ${wanted}.`);
  const { name, quantity, help, choices, zeroIsBlank = false } = found;
  return column(name, quantity, help, { zeroIsBlank, ...(choices && { choices }) });
}

/** Lines of the job, with "job_" in front or without. */
export const JOB_LINES: readonly CheckColumn[] = [
  column("date", "date", "day of the survey", NOT_ZERO),
  word("criteria", "table of criteria"),
  column("band", "band", "the camera's spectral band"),
  named("ifov"),
  temperature("range_from", "lower end of the camera's range"),
  temperature("range_to", "upper end of the camera's range"),
  column("calibrated", "date", "day of the camera's calibration", NOT_ZERO),
  column("calibration_days", "number", "days to the next calibration", NOT_ZERO),
  temperature("check_source", "field check: the known source"),
  temperature("check_reading", "field check: what the camera showed"),
  column("check_error", "difference", "field check: error"),
  named("minutes_camera_out"),
  fraction("emissivity", "where a row has none"),
  temperature("reflected", "indoors, where a row has none"),
  named("reflected_method"),
  temperature("reflected_outdoors", "outdoors, where a row has none"),
  named("path_air"),
  named("humidity"),
  named("distance"),
  column("pressure", "pressure", "pressure of the air", NOT_ZERO),
  named("readings_are"),
  ...CHECK_COLUMNS.flatMap(({ name }) => (name.startsWith("set_") ? [named(name)] : [])),
  fraction("minimum_load", "least load that is projected from"),
  column("exponent_high", "number", "high exponent of the current", NOT_ZERO),
  ...["u_similar", "u_similar_low", "u_air", "u_air_low"].map((name) =>
    column(name, "difference", "expanded uncertainty of a rise", NOT_ZERO),
  ),
];
