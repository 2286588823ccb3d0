import type { Hints } from "./words.js";

/** Of load and rise. */
export const LOAD_HINTS: Hints = {
  "no-current": () => "No current on this phase: heat that does not come from the current does not follow it.",
  "load-below-minimum": (w) =>
    `${w.percent("ratio")} load: not projected. The least is ${w.percent("minimum_load")} of the reference load; take the reading again at a higher load.`,
  "per-cent-against-fraction": (w) =>
    `${w.number("load")} is ${w.number("ratio")} times its reference: per cent against a fraction, or amperes against per cent?`,
  "factor-too-large": (w) =>
    `${w.percent("ratio")} load: the factor would be ${w.number("factor")}, more than ${w.number("most")}. Take the reading again at a higher load.`,
  "negative-rise": (w) =>
    `A rise of ${w.difference("rise")} is colder than the air: no rise to project. References swapped, no load, or air taken elsewhere?`,
  "overload-needs-maximum": (w) =>
    `${w.percent("ratio")} of the rated load: a permitted rise says nothing above it. Give maximum_temp.`,
  "hot-air-needs-maximum": (w) =>
    `Air of ${w.temperature("surrounding_air")} is above the ${w.temperature("most")} that the permitted rise is meant for. Give maximum_temp.`,
  "limit-not-above-air": (w) =>
    `The limit of ${w.temperature("limit")} is not above the air of ${w.temperature("surrounding_air")}: nothing is left for the part.`,
  "phases-do-not-fit": (w) =>
    `${w.number("temps")} temperatures, ${w.number("loads")} loads: a load for each temperature.`,
  phase: (w) => `Phase ${w.number("phase")} of the set has none.`,
  "rise-below-floor": (w) =>
    `The hot part is ${w.difference("rise")} over the air; below ${w.difference("floor")} no relative rise is given. Take the reading again at a higher load.`,
  "normal-below-air": (w) =>
    `The sound part (${w.temperature("normal")}) is colder than the air (${w.temperature("surrounding_air")}) by more than ${w.difference("most")}: check both.`,
  "hot-below-normal": (w) =>
    `The hot part (${w.temperature("hot")}) is colder than the sound one (${w.temperature("normal")}): swapped?`,
  "loads-differ": (w) =>
    `The loads differ by ${w.percent("difference")}; relative rise is for like loads, within ${w.percent("most")}.`,
  "exponents-swapped": (w) => `The low exponent is at most the high one, here ${w.number("exponent_high")}.`,
};
