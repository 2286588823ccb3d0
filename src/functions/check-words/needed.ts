import { told } from "./words.js";
import type { WordsOfFindings } from "./words.js";

const CORRECT = "Without it the reading cannot be corrected.";
const COMPARED = "An exception is told by comparison: hot part, like parts, air.";
const AT_LOAD = "A rise says something only at a known load; without it nobody can tell next year what was seen.";

/** Why each column is needed, and where its value comes from. */
const NEEDS: Readonly<Record<string, readonly [why: string, todo: string]>> = {
  asset_id: [
    "Location, load and limit are looked up by it, and last year's reading is found by it.",
    "Type the asset.",
  ],
  status: [
    "What else the row must hold depends on it.",
    "Choose no exception, exception, partly seen or not inspected.",
  ],
  time: ["Images and currents are matched by it.", "Type the time of the look."],
  reason: ["What was not seen is reported with its reason.", "Say what stood in the way."],
  thermal_image: ["An exception is reported with its image.", "Type the image's number."],
  left: [COMPARED, "Type the reading of the left phase."],
  middle: [COMPARED, "Type the reading of the middle phase."],
  right: [COMPARED, "Type the reading of the right phase."],
  reading: [COMPARED, "Type the reading of the point."],
  reference: [COMPARED, "Type the reading of what it is compared with."],
  amps_left: [AT_LOAD, "Have the current read; type 0 for a phase without."],
  amps_middle: [AT_LOAD, "Have the current read; type 0 for a phase without."],
  amps_right: [AT_LOAD, "Have the current read; type 0 for a phase without."],
  load: [AT_LOAD, "Read the load, in the unit of its reference."],
  process_load: [AT_LOAD, "Ask the operator, or read it from the machine."],
  surrounding_air: ["The rise is taken over it.", "Measure the air at the item and say in air_taken where."],
  emissivity: [CORRECT, "Type it in the row, or give the asset's surface one."],
  reflected: [CORRECT, "Measure it with a reflector; type it in the row or in the job."],
  path_air: [
    "The air in front of the camera is not the enclosure's, and a correction needs it.",
    "Type it in the row or in the job.",
  ],
  distance: ["Transmission of the air and size of the spot hang on it.", "Type it in the row or in the job."],
  humidity: ["The transmission of the air hangs on it.", "Type it in the row or in the job, in per cent."],
  window_transmission: [
    "Through a window everything looks cooler than it is.",
    "Give the window its transmission, measured in the camera's band.",
  ],
  window_temp: ["A window radiates too.", "Measure the painted frame beside it."],
};

export const NEEDED_WORDS: WordsOfFindings = {
  needed: told(
    "is empty",
    ({ column }) => NEEDS[column]?.[0] ?? CORRECT,
    ({ column }) => NEEDS[column]?.[1] ?? "Type it in the row or in the job.",
  ),
};
