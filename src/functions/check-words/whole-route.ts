import { told } from "./words.js";
import type { WordsOfFindings } from "./words.js";

const meant = (nearest: string): string => (nearest === "" ? "" : `: was ${nearest} meant?`);

export const ROUTE_WORDS: WordsOfFindings = {
  "not-read": told(
    ({ column, text }) => `not read: ${column}${meant(text("nearest"))}`,
    "Nothing is checked in it.",
    'Give the column its name; =GREY.CHECK("?","?") lists those that are read.',
  ),
  "job-not-read": told(
    ({ column, text }) => `not read in the job: ${column}${meant(text("nearest"))}`,
    ({ text }) => `Nothing is checked with it. A job has ${text("names")}.`,
    "Give it one of these names, or leave it out.",
  ),
  "column-in-job": told(
    ({ column }) => `not read in the job: ${column} is a column of the rows`,
    "It differs from row to row, so no line of the job stands for it.",
    ({ text }) => `Give the rows a column ${text("name")}.`,
  ),
  "window-in-job": told(
    ({ column }) => `not read in the job: ${column} is a column of the rows`,
    "Each window has its own, and what the camera was set to (set_window_transmission) is another thing.",
    ({ text }) => `Give the rows a column ${text("name")}; on our route it stands on the sheet Windows, by window_id.`,
  ),
  "without-lists": told(
    "what the lists of assets and surfaces hold was not handed over",
    "Emissivity, view, expected load, like and limit stand there: without them each view counts as direct, and no emissivity or reference is asked for.",
    "Give headers and rows from asset_id to the last column on the right, not the table alone.",
  ),
  "line-in-rows": told(
    ({ column }) => `not read in the rows: ${column} is a line of the job`,
    "It holds for the whole route.",
    ({ text }) => `Give it in the job: ${text("name")} | value.`,
  ),
  "no-name": told(
    ({ text }) => `not read: column ${text("place")}, which has no name`,
    "Nothing is checked in it.",
    "Give the column a name.",
  ),
  "name-twice": told(
    ({ column, text }) => `not read: column ${text("place")}, a second ${column}`,
    "Only the first of two columns of one name is read.",
    "Leave one of them out.",
  ),
  "field-check": told(
    ({ difference }) => `field check: ${difference("error")} off`,
    "More than the camera may be off: every temperature of the route is in doubt.",
    "Let the camera settle and check again; else have it looked after before more readings are taken.",
  ),
  "same-emissivity": told(
    ({ number }) =>
      `emissivity ${number("emissivity")} on ${number("rows", 7)} exceptions, ${number("materials", 4)} surfaces`,
    "One number for every surface is the camera's start-up setting, not a measurement.",
    "Give each surface its own.",
  ),
  "reflected-is-air": told(
    ({ number }) => `reflected equals the air on ${number("rows", 7)} rows with emissivity below 0.9`,
    "Ambient temperature is not reflected apparent temperature.",
    "Measure it with a reflector where the emissivity is low.",
  ),
  "round-loads": told(
    ({ number, text }) =>
      text("how") === "full"
        ? `all ${number("rows", 7)} loads stand at 100 %`
        : `all currents of ${number("rows", 7)} rows are round`,
    "Loads that are read are not all round: guessed, or taken from the plates?",
    "Have them read with the images.",
  ),
  "no-criteria": told(
    ({ text }) => `criteria "${text("typed")}" is no table of ours`,
    "Edges within the uncertainty are not looked for.",
    "=GREY.CRITERIA() lists the tables.",
  ),
  "no-band": told(
    ({ text }) => `band "${text("typed")}" cannot be read`,
    "Temperatures are worked out for 7.5-14 µm instead.",
    'Type it as text, such as "7.5-14".',
  ),
};
