import { told } from "./words.js";
import type { WordsOfFindings } from "./words.js";

export const IMPLAUSIBLE_WORDS: WordsOfFindings = {
  "load-too-high": told(
    ({ percent }) => `load ${percent("ratio")} of the expected maximum`,
    "More than the most of the year: a slip, or an overload that is a finding of its own.",
    "Check the current and the asset's expected_max_A.",
  ),
  "load-in-other-unit": told(
    ({ number }) => `load ${number("load", 6)} against ${number("reference", 6)}: per cent against fraction?`,
    "No load is so many times its reference, or so small a part of it and still read.",
    "Give load and reference in one unit.",
  ),
  minus: told(
    ({ column, typed }) => `${column} ${typed()}: a minus where there can be none`,
    "Nothing is worked out from it.",
    "Type it without the minus.",
  ),
  "humidity-fraction": told(
    ({ column, typed }) => `${column} ${typed()}`,
    "Air as dry as that does not occur in the open: a fraction typed for per cent?",
    "Type per cent: 50 for half.",
  ),
  "transmission-above-one": told(
    ({ column, number }) => `${column} ${number("value", 6)} is above 1`,
    "Nothing lets more through than comes: per cent typed for a fraction?",
    "Type a fraction from 0 to 1.",
  ),
  "out-of-range": told(
    ({ column, typed, allowed }) => `${column} ${typed()} cannot be${allowed()}`,
    "Nothing is worked out from it.",
    "Check the value, its unit and its column.",
  ),
  "window-sum": told(
    ({ number }) => `transmission and reflectance of the window come to ${number("sum", 4)}`,
    "Together they are 1 at most; what is left the window radiates itself.",
    "Measure the window again, in the camera's band.",
  ),
  "metal-too-black": told(
    ({ number, text }) => `emissivity ${number("emissivity")} on ${text("surface")}`,
    "No metal is as black as that, polished or oxidised.",
    "Check emissivity and surface; a coating is a surface of its own.",
  ),
  "below-reflected": told(
    ({ temperature }) => `reads ${temperature("reading")}, below its reflected ${temperature("reflected")}`,
    "A part hotter than its surroundings cannot read below what it mirrors.",
    "Check reflected, its method and the reading.",
  ),
  "graded-no-exception": told(
    ({ difference, text, number, fahrenheit }) =>
      `status no exception, rise ${difference("rise")}${text("asRead") && " as read"} over ${text("over")} = grade ${number("grade")} by ${text("criteria")}${fahrenheit()}`,
    "By the job's criteria it is one, also at the low end of its uncertainty; grade 1 is not asked about.",
    "Set the status to exception, or say in remarks why it is none; check readings and their unit.",
  ),
  "no-such-day": told(
    ({ column, number, day }) =>
      `${column} ${number("value", 12)} cannot be${number("value") === "0" ? "" : ` (${day("value")})`}: 1980 to 2199`,
    "A number or a time typed for a date? Nothing is worked out from it.",
    "Type a date of the sheet, or as 2026-03-11; a time of day as 08:52.",
  ),
  "per-cent-for-fraction": told(
    ({ column, number, allowed }) => `${column} ${number("value")} cannot be${allowed()}; ${number("hundredth")}?`,
    "Per cent typed for a fraction? Nothing is worked out from it.",
    ({ number }) => `Type ${number("hundredth")} where ${number("value")} % is meant.`,
  ),
  "air-above-reference": told(
    ({ temperature }) => `air ${temperature("air")} above the cool part's ${temperature("reference")}`,
    "A part that carries current is not colder than the air around it.",
    "Check where the air was taken, the unit, and the emissivity.",
  ),
  "image-twice": told(
    ({ text, number }) => `image ${text("image")} stands in row ${number("other", 7)} too`,
    "One image shows one item: one of the two rows has the wrong evidence.",
    "Check the numbers against the camera's clock.",
  ),
  "date-before-job": told(
    ({ day }) => `${day("day")} is before the survey of ${day("job")}`,
    "A reading of another survey, or a camera whose clock is wrong.",
    "Check the date, and the camera's clock.",
  ),
  "currents-late": told(
    ({ number }) => `currents read ${number("minutes")} min from the image`,
    "The load may have been another.",
    "Read the currents while the image is taken.",
  ),
  "colder-than-reference": told(
    ({ temperature }) => `reading ${temperature("hot")} is colder than its reference ${temperature("reference")}`,
    "References swapped, an unloaded part, or wet or sky-cooled: no rise to grade.",
    "Check which of the two is which.",
  ),
  "no-choice": told(
    ({ column, text }) => `${column} "${text("typed")}" is none of: ${text("choices")}`,
    "It is read as if it were empty.",
    "Choose one of the words.",
  ),
};
