import { told } from "./words.js";
import type { WordsOfFindings } from "./words.js";

const BOUND = "It stands at an end of the camera's range: the temperature is not known, so neither is its grade.";
const AGAIN = "Take it again in the next range; until then report it as a bound, never as a reference or a trend.";

export const STOP_WORDS: WordsOfFindings = {
  "spot-too-small": told(
    ({ number }) => `target only ${number("margin")} times 3 pixels at this distance`,
    "The reading is mixed with what lies around the target: a hot screw reads too cold.",
    "Go nearer as far as it is safe, or take a longer lens; check distance, ifov and target_size.",
  ),
  "reading-at-least": told("reading is at least so much", BOUND, AGAIN),
  "reading-at-most": told("reading is at most so much", BOUND, AGAIN),
  "camera-settings-unknown": told(
    ({ text }) => `corrected in the camera, ${text("missing")} not known`,
    "It cannot be taken back to the apparent temperature, so not be corrected with what is right.",
    ({ text }) => `Type ${text("missing")} in the row or in the job, as the camera was set; never guess them.`,
  ),
  "called-apparent": told(
    ({ text, number }) => `readings called apparent, but ${text("set")} is ${number("value")}`,
    "What the camera has corrected would be corrected once more.",
    "Set readings_are to corrected in the camera, or put right what was set.",
  ),
  "corrected-twice": told(
    ({ text, temperature }) =>
      `corrected twice: ${temperature("typed")} comes of correcting the camera's own result ${text("reading")}`,
    ({ temperature }) => `Taken back and corrected once it is ${temperature("right")}.`,
    "Take the reading back with what was set (APPARENT) before it is corrected (CORRECTED).",
  ),
  "no-current": told(
    ({ text }) => `no grade without ${text("missing")}`,
    "The criteria are for the load found: at a small load a bad joint looks sound.",
    "Have the currents of all phases read, at the same load.",
  ),
  "load-below-least": told(
    ({ percent, number }) =>
      number("ratio") === "0" ? "no current" : `load only ${percent("ratio")} of the expected maximum`,
    ({ percent }) => `Below ${percent("least")} a rise is not projected, and a small one proves nothing.`,
    "Look again at a higher load.",
  ),
  "calibration-out": told(
    ({ day }) => `the camera's calibration ran out on ${day("until")}`,
    "On the day of the reading nobody vouched for it.",
    "Have the camera calibrated and read again; until then report what was seen as indications.",
  ),
  "outside-camera-range": told(
    ({ temperature, text }) =>
      `reading ${temperature("reading")} outside the camera's range ${text("end")} ${temperature("limit")}`,
    "Outside its range a camera shows a number that looks like any other.",
    "Take it again in the range that holds it; check the range in the job.",
  ),
  "wind-too-strong": told(
    ({ speed }) => `wind ${speed("wind")} at the target`,
    ({ speed }) => `Above ${speed("most")} it carries off so much heat that a rise says nothing.`,
    "Come back on a calm day.",
  ),
  "cell-error": told(
    ({ column, text }) => `${column} shows ${text("typed")}`,
    ({ text }) => text("message") || "What hangs on it cannot be checked.",
    "Mend the cell; the row is checked without it.",
  ),
  "no-number": told(
    ({ column, text }) => `${column} "${text("typed")}" is no number`,
    "Nothing can be worked out from it.",
    "Type a number with a point and nothing else; beyond the camera's range say so in reading_is.",
  ),
  "no-day": told(
    ({ column, text }) => `${column} "${text("typed")}" is no date or time that can be read`,
    "Images and currents are matched by it.",
    "Type a date or a time of the sheet, or as 2026-03-11, 08:52.",
  ),
};
