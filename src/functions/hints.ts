/** How a hint's values are written in the units of the sheet. */
export interface HintWords {
  readonly temperature: (name: string) => string;
  readonly difference: (name: string) => string;
  readonly number: (name: string) => string;
  /** A fraction as per cent, close enough to tell it from a limit that it misses. */
  readonly percent: (name: string) => string;
  /** A length in the sheet's unit, from metres. */
  readonly length: (name: string) => string;
  readonly pressure: (name: string) => string;
}

/** What each hint key of the core says to the person at the sheet. */
export const HINTS: Readonly<Record<string, (w: HintWords) => string>> = {
  "per-cent": (w) => `A fraction is wanted, not per cent: ${w.number("meant")}? Or the arguments are out of order.`,
  "zero-or-empty": () =>
    'Nothing passes at 0. Excel hands an empty cell over as 0: write IF(ref="","",ref), or leave the argument out.',
  "absolute-zero": () => "Nothing is at or below absolute zero: check value and units.",
  "not-a-number": () => "A number is wanted, with a point for decimals and nothing else in the cell.",
  "other-minus": () => "The sign in front is not a plain minus (-): type the number again.",
  "window-sum": (w) =>
    `Transmission ${w.number("window_transmission")} and reflectance of a window are at most 1 together.`,
  "window-transmission-needed": () => "A window that reflects does not let all through: give its transmission too.",
  "air-temp-needed": () => "The temperature of the air on the path is needed where a transmission of air is below 1.",
  "window-temp-needed": () => "The temperature of the window is needed where its transmission is below 1.",
  "outer-reflected-needed": () => "The reflected temperature on the camera's side is needed where the window reflects.",
  "surroundings-alone": (w) =>
    `No object gives this reading: with emissivity ${w.number("emissivity")} the surroundings alone would show ${w.temperature("temperature")}. Check reading, emissivity and reflected.`,
  "no-radiance": () => "So near to absolute zero nothing is radiated in this band: check value and units.",
  "beyond-numbers": () =>
    "So little of the object gets through that no number holds its temperature: check emissivity and transmissions.",
  "band-wavelengths": () => "A band is two wavelengths in µm, shorter first, such as 7.5-14.",
  "band-order": () => "The shorter wavelength comes first, such as 7.5-14.",
  "band-response-wavelength": (w) =>
    `Row ${w.number("row")} of the response table: a wavelength is a number from 0.7 to 20, in µm.`,
  "band-response": (w) => `Row ${w.number("row")} of the response table: a response is a number from 0 to 1e12.`,
  "band-rising": (w) => `Row ${w.number("row")} of the response table: wavelengths rise from row to row.`,
  "band-empty": () => "A response table has at least two rows and somewhere a response clearly above 0.",
  "band-date": () => "Excel read the band as a date: format the cell as text.",
  bound: () => "A bound is not a reading: take it again in the camera's next range, or say so apart.",
  "air-band": () => "The transmission of air is known for bands within 3.0 to 14.7 µm.",
  "air-band-narrow": () => "So narrow a band holds nothing: its two wavelengths are all but the same.",
  "air-outside-fit": (w) =>
    `In air of ${w.temperature("air_temp")} the path may be ${w.length("short")} at most; ${w.temperature("from")} to ${w.temperature("to")} allow ${w.length("long")}.`,
  "pressure-unit": (w) => `Pressure is in kPa: was ${w.pressure("meant")} meant?`,
  "humidity-fraction": (w) => `Humidity is in per cent: ${w.number("meant")}?`,
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
  "share-of-limit": () => "Against a limit the rise is its share of the permitted rise, such as 0.9.",
  "reference-not-in-criteria": (w) =>
    `${w.number("criteria")} has no column for "${w.number("reference")}", only ${w.number("has")}.`,
  "enclosed-not-graded": () =>
    "An enclosed part is not seen, and what is not seen is not graded: nothing ties the temperature of a door to what is behind it.",
  "view-not-in-criteria": (w) =>
    `${w.number("criteria")} is for ${w.number("has")} views only: ${
      w.number("view") === "indirect"
        ? "an indirect view hides most of a rise; take a table made for it, such as house-indirect."
        : "its edges are far too low for a part seen directly."
    }`,
  "colder-than-reference": (w) =>
    `Colder than its reference (${w.number("reference")}): references swapped, an unloaded or open phase, wet or sky-cooled, or air taken elsewhere.`,
  "exponents-swapped": (w) => `The low exponent is at most the high one, here ${w.number("exponent_high")}.`,
  "criteria-empty": () => "The range has no rows: reference | grade | from or above | lower edge | words | action.",
  "criteria-reference": (w) => `Row ${w.number("row")} of the criteria: the first column names the reference.`,
  "criteria-bound": (w) => `Row ${w.number("row")} of the criteria: the third column is "from" or "above".`,
  "criteria-grade": (w) =>
    `Row ${w.number("row")} of the criteria: a grade is a whole number from 1 to 4, 4 the worst.`,
  "criteria-edge": (w) => `Row ${w.number("row")} of the criteria: the lower edge is a number from 0 up.`,
  "criteria-words": (w) => `Row ${w.number("row")} of the criteria has no words: no grade is shown without them.`,
  "criteria-edge-order": (w) =>
    `Row ${w.number("row")} of the criteria: within a reference lower edges rise from row to row.`,
  "criteria-grade-order": (w) =>
    `Row ${w.number("row")} of the criteria: within a reference grades rise from row to row.`,
};
