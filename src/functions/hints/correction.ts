import type { Hints } from "./words.js";

/** Of the correction and its bands. */
export const CORRECTION_HINTS: Hints = {
  "window-sum": (w) =>
    `Transmission ${w.number("window_transmission")} and reflectance of a window are at most 1 together.`,
  "window-transmission-needed": () => "A window that reflects does not let all through: give its transmission too.",
  "air-temp-needed": () => "The temperature of the air on the path is needed where a transmission of air is below 1.",
  "window-temp-needed": () => "The temperature of the window is needed where its transmission is below 1.",
  "outer-reflected-needed": () => "The reflected temperature on the camera's side is needed where the window reflects.",
  "surroundings-alone": (w) =>
    `No object gives this reading: with emissivity ${w.number("emissivity")} the surroundings alone would show ${w.temperature("temperature")}. Check reading, emissivity and reflected.`,
  "no-radiance": () => "So near to absolute zero nothing is radiated in this band: check value and units.",
  "beyond-temperatures": (w) =>
    `The object would be at ${w.temperature("temperature")}, beyond the ${w.temperature("most")} that is answered for. Check reading, emissivity, transmissions and the order of the arguments.`,
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
};
